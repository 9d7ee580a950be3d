// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/rainflow.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>

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
    EXPECT_EQ(counter.rest().size(), 2U);
    EXPECT_EQ(closed + 1, 999.0 / 2);
}

TEST(RainflowCounter, RefusesWhatIsNoNumber)
{
    RainflowCounter counter;
    EXPECT_THROW(counter.next(std::numeric_limits<double>::quiet_NaN()), BrokenPromise);
}

}  // namespace
}  // namespace splicewright
