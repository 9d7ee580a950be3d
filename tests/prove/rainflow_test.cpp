// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/rainflow.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <utility>

#include "cases/chance.h"
#include "cases/problem.h"

namespace splicewright
{
namespace
{

// Source: [ASTM-E1049] 5.4.4, fig. 6.
TEST(Rainflow, GivesTheStandardsTable)
{
    const std::vector<RainflowCycle> printed{{3, -0.5, 0.5}, {4, -1, 0.5}, {4, 1, 1},  {8, 1, 0.5},
                                             {9, 0.5, 0.5},  {8, 0, 0.5},  {6, 1, 0.5}};
    const std::vector<RainflowCycle> found = rainflow({-2, 1, -3, 5, -1, 3, -4, 4, -2});
    EXPECT_TRUE(std::is_permutation(found.begin(), found.end(), printed.begin(), printed.end()));
}

TEST(Rainflow, SeesOnlyTurningPoints)
{
    const std::vector<RainflowCycle> peaks = rainflow({0, 5, -3, 2, -4});
    EXPECT_EQ(rainflow({0, 2, 2, 5, 5, 1, -3, -3, 0, 2, 1.5, -4}), peaks);
}

TEST(Rainflow, OfAStillOrRisingHistoryIsAtMostHalfACycle)
{
    EXPECT_TRUE(rainflow({}).empty());
    EXPECT_TRUE(rainflow({7, 7, 7}).empty());
    EXPECT_EQ(rainflow({1, 2, 5}), (std::vector<RainflowCycle>{{4, 3, 0.5}}));
}

TEST(Rainflow, OfEvenCyclesCountsEachOnce)
{
    std::vector<double> history{0};
    for (int i = 0; i < 10; ++i) history.insert(history.end(), {100, 0});
    double count = 0;
    for (const RainflowCycle& cycle : rainflow(history))
    {
        EXPECT_EQ(cycle.range, 100);
        count += cycle.count;
    }
    EXPECT_EQ(count, 10);
}

// Every turning point begins one half cycle, and the largest range of the history is always among them.
TEST(Rainflow, LosesNoTurningPointAndNotTheLargestRange)
{
    Chance chance(5);
    for (int trial = 0; trial < 50; ++trial)
    {
        std::vector<double> history;
        for (int i = 0; i < 200; ++i) history.push_back((i % 2 == 0 ? 1 : -1) * chance.between(0.1, 10));
        double count = 0, most = 0;
        for (const RainflowCycle& cycle : rainflow(history))
        {
            count += cycle.count;
            most = std::max(most, cycle.range);
        }
        const auto [low, high] = std::minmax_element(history.begin(), history.end());
        EXPECT_EQ(count, 199.0 / 2);
        EXPECT_EQ(most, *high - *low);
    }
}

TEST(RainflowCounter, RemembersOnlyWhatIsStillOpen)
{
    RainflowCounter counter;
    double closed = 0;
    for (int i = 0; i < 1000; ++i)
        for (const RainflowCycle& cycle : counter.next(i % 2 == 0 ? 10 : -10)) closed += cycle.count;
    EXPECT_LE(counter.rest().size(), 2U);
    EXPECT_EQ(closed + 0.5 * static_cast<double>(counter.rest().size()), 999.0 / 2);
}

using Counts = std::map<std::pair<double, double>, double>;  // by range and mean

void add(Counts& counts, const std::vector<RainflowCycle>& cycles, double times = 1)
{
    for (const RainflowCycle& cycle : cycles) counts[{cycle.range, cycle.mean}] += times * cycle.count;
}

// The rule as the standard words it, on a whole list: X the last range, Y the one before it, S the start.
// Source: [ASTM-E1049] 5.4.4.
Counts by_three_points(const std::vector<double>& history)
{
    std::vector<double> turns;
    for (const double sample : history)
    {
        const std::size_t n = turns.size();
        if (n > 0 && sample == turns[n - 1]) continue;
        const bool goes_on = n > 1 && (sample > turns[n - 1]) == (turns[n - 1] > turns[n - 2]);
        if (goes_on) turns.back() = sample;
        else turns.push_back(sample);
    }
    Counts counts;
    const auto count = [&](double a, double b, double many) { counts[{std::abs(a - b), (a + b) / 2}] += many; };
    std::vector<double> open;
    for (const double turn : turns)
    {
        open.push_back(turn);
        while (open.size() >= 3)
        {
            const std::size_t n = open.size();
            const double X = std::abs(open[n - 1] - open[n - 2]), Y = std::abs(open[n - 2] - open[n - 3]);
            if (X < Y) break;
            const bool holds_start = n == 3;
            count(open[n - 3], open[n - 2], holds_start ? 0.5 : 1);
            if (holds_start) open.erase(open.begin());
            else open.erase(open.end() - 3, open.end() - 1);
        }
    }
    for (std::size_t i = 0; i + 1 < open.size(); ++i) count(open[i], open[i + 1], 0.5);
    return counts;
}

// Whole numbers, so that equal ranges meet and sums are exact.
std::vector<double> random_history(Chance& chance)
{
    std::vector<double> history;
    const std::size_t n_samples = 1 + chance.below(60);
    for (std::size_t i = 0; i < n_samples; ++i) history.push_back(std::round(chance.between(-8, 8)));
    return history;
}

TEST(RainflowCounter, CountsAsTheRuleOfThreePoints)
{
    Chance chance(11);
    for (int trial = 0; trial < 2000; ++trial)
    {
        const std::vector<double> history = random_history(chance);
        Counts found;
        add(found, rainflow(history));
        EXPECT_EQ(found, by_three_points(history)) << trial;
    }
}

TEST(RainflowCounter, SeamGivesWhatTheRepeatedHistoryGives)
{
    Chance chance(12);
    for (int trial = 0; trial < 2000; ++trial)
    {
        const std::vector<double> history = random_history(chance);
        const int repeats = 2 + static_cast<int>(chance.below(4));
        RainflowCounter counter;
        Counts found;
        for (const double sample : history) add(found, counter.next(sample), repeats);
        add(found, counter.seam(), repeats - 1);
        add(found, counter.rest());
        std::vector<double> whole;
        for (int run = 0; run < repeats; ++run) whole.insert(whole.end(), history.begin(), history.end());
        EXPECT_EQ(found, by_three_points(whole)) << trial;
    }
}

TEST(RainflowCounter, RefusesWhatIsNoNumber)
{
    RainflowCounter counter;
    EXPECT_THROW(counter.next(std::numeric_limits<double>::quiet_NaN()), BrokenPromise);
}

}  // namespace
}  // namespace splicewright
