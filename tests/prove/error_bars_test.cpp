// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/error_bars.h"

#include <gtest/gtest.h>

#include "cases/random_case.h"

namespace splicewright
{
namespace
{

BarTrial trial(BarVerdict verdict, double bar_pct, double off_pct)
{
    return {"kind", "number", "case", bar_pct, off_pct, 0, verdict};
}

BarTrial only_trial(const BarredNumber& tested, const BarredNumber& reference)
{
    return bar_trials("case", {tested}, {reference}).at(0);
}

TEST(BarTrial, ComparesTheDifferenceFromTheReferenceWithTheBar)
{
    const BarredNumber reference{"kind", "number", 100, 0.1, 100};
    EXPECT_EQ(only_trial({"kind", "number", 101, 2, 100}, reference).verdict, BarVerdict::within);
    EXPECT_EQ(only_trial({"kind", "number", 103, 2, 100}, reference).verdict, BarVerdict::beyond);
    EXPECT_DOUBLE_EQ(only_trial({"kind", "number", 103, 2, 100}, reference).off_pct, 3);
}

TEST(BarTrial, LeavesOutWhatTheReferenceCannotTell)
{
    const BarredNumber poor{"kind", "number", 100, 1, 100};
    EXPECT_EQ(only_trial({"kind", "number", 101, 2, 100}, poor).verdict, BarVerdict::left_out);
    // A difference far above the reference's own bar is a miss all the same.
    EXPECT_EQ(only_trial({"kind", "number", 110, 2, 100}, poor).verdict, BarVerdict::beyond);
}

TEST(BarTrial, JudgesSmallNumbersAgainstTheWholeAndDropsUnloadedOnes)
{
    EXPECT_DOUBLE_EQ(only_trial({"kind", "number", 1.1, 1, 100}, {"kind", "number", 1, 0, 100}).off_pct, 2);
    EXPECT_TRUE(bar_trials("case", {{"kind", "number", 0.02, 0, 100}}, {{"kind", "number", 0.01, 0, 100}}).empty());
}

TEST(BarTally, CountsSharesAndTakesTheMedianRatio)
{
    const std::vector<BarTrial> trials{trial(BarVerdict::within, 2, 1), trial(BarVerdict::within, 9, 3),
                                       trial(BarVerdict::beyond, 1, 2), trial(BarVerdict::left_out, 1, 9)};
    const BarTally all = tally(trials, "");
    EXPECT_EQ(all.n_compared(), 3);
    EXPECT_EQ(all.n_left_out, 1);
    EXPECT_DOUBLE_EQ(all.share_within(), 2.0 / 3);
    EXPECT_DOUBLE_EQ(all.median_ratio, 2);  // of 0.5, 2 and 3
    EXPECT_EQ(tally(trials, "another kind").n_compared(), 0);
}

TEST(ErrorBars, OfExactBodiesHoldInEveryNumber)
{
    for (const BarredCase& exact : exact_cases({1}))
    {
        const BarTally all = tally(exact.answers.front().trials, "");
        EXPECT_GE(all.n_compared(), 10) << exact.name;
        EXPECT_EQ(all.n_beyond, 0) << exact.name;
    }
}

// The goal of 19 in 20 is for docs/error-bars.md, which has more cases. Six cases are some forty independent fields
// of three and more numbers each: 9 in 10 leaves room for three of them to miss together.
TEST(ErrorBars, HoldInNineOfTenNumbersOfEightCases)
{
    std::vector<BarTrial> trials;
    for (const std::uint64_t seed : {1U, 7U, 11U, 12U, 14U, 16U, 17U, 18U})
    {
        const BarredCase done = barred_case("case", random_case_text(seed), {1});
        EXPECT_EQ(done.failure, "");
        if (done.answers.empty()) continue;
        const std::vector<BarTrial>& more = done.answers.front().trials;
        trials.insert(trials.end(), more.begin(), more.end());
    }
    const BarTally all = tally(trials, "");
    EXPECT_GT(all.n_compared(), 100);
    EXPECT_GE(all.share_within(), 0.9);
    EXPECT_LT(all.median_ratio, 8);  // a bar that is always huge would pass the line above
}

}  // namespace
}  // namespace splicewright
