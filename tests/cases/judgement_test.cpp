// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

std::string judged(const std::string& lines) { return fmt::format("{}[judgement]\n{}\n", sound_splice_text(), lines); }

TEST(Judgement, IsAsTheClassesHaveItWhenAbsentOrEmpty)
{
    for (const std::string& text : {sound_splice_text(), judged("")})
    {
        const Rating rating = accepted(text).rating;
        EXPECT_FALSE(rating.survival.has_value());
        EXPECT_EQ(rating.partial_factor, 1.35);
        EXPECT_EQ(rating.relief, StressRelief::none);
        EXPECT_EQ(rating.misalignment_factor, 1);
    }
    EXPECT_NE(default_of(accepted(sound_splice_text()), "judgement").find("survival 97.7 %"), std::string::npos);
    const Case empty = accepted(judged(""));
    for (const char* key : {"survival", "partial_factor", "r_ratio_enhancement", "misalignment_factor"})
        EXPECT_NE(default_of(empty, fmt::format("judgement.{}", key)), "") << key;
}

TEST(Judgement, IsReadAsWritten)
{
    const Rating rating = accepted(judged("survival = \"99.9 %\"\npartial_factor = 1.5\nr_ratio_enhancement = "
                                          "\"Stress  relieved\"\nmisalignment_factor = 1.2"))
                              .rating;
    EXPECT_NEAR(*rating.survival, 0.999, 1e-15);
    EXPECT_EQ(rating.partial_factor, 1.5);
    EXPECT_EQ(rating.partial_factor_name, "stated");
    EXPECT_EQ(rating.relief, StressRelief::stress_relieved);
    EXPECT_EQ(rating.misalignment_factor, 1.2);
}

// Source: [Eurocode3Fatigue2005] table 3.1, from memory.
TEST(Judgement, KnowsTheClassesOfThePartialFactor)
{
    const auto factor = [](const char* name)
    { return accepted(judged(fmt::format("partial_factor = \"{}\"", name))).rating.partial_factor; };
    EXPECT_EQ(factor("safe life, high consequence"), 1.35);
    EXPECT_EQ(factor("safe life, low consequence"), 1.15);
    EXPECT_EQ(factor("damage tolerant, high consequence"), 1.15);
    EXPECT_EQ(factor("damage tolerant, low consequence"), 1.0);
}

TEST(Judgement, RefusesWhatIsOutOfRangeOrUnknown)
{
    expect_only_problem(judged("survival = \"50 %\""), "judgement.survival", "between 90 % and 99.99 %", "97.7 %");
    expect_only_problem(judged("survival = \"100 %\""), "judgement.survival", "between 90 % and 99.99 %", "97.7 %");
    expect_only_problem(judged("survival = 97.7"), "judgement.survival", "a share in quotes", "\"97.7 %\"");
    expect_only_problem(judged("partial_factor = 0.9"), "judgement.partial_factor", "between 1 and 3",
                        "partial_factor = \"safe life, high consequence\"");
    expect_only_problem(judged("partial_factor = \"safe life, hihg consequence\""), "judgement.partial_factor",
                        "must be one of", "partial_factor = \"safe life, high consequence\"");
    expect_only_problem(judged("partial_factor = true"), "judgement.partial_factor", "must be", "partial_factor = ...");
    expect_only_problem(judged("r_ratio_enhancement = \"stress releived\""), "judgement.r_ratio_enhancement",
                        "must be one of", "\"stress relieved\"");
    expect_only_problem(judged("misalignment_factor = 0.5"), "judgement.misalignment_factor", "between 1 and 3",
                        "misalignment_factor = ...");
    expect_only_problem(judged("survivle = \"99 %\""), "judgement.survivle", "unknown key", "judgement.survival");
}

TEST(Judgement, IsToldAsACautionWhereItAsksForLess)
{
    EXPECT_TRUE(
        has_caution(accepted(judged("partial_factor = \"damage tolerant, low consequence\"")), "partial factor"));
    EXPECT_TRUE(has_caution(accepted(judged("survival = \"95 %\"")), "survival asked for is 95 %"));
    EXPECT_TRUE(has_caution(accepted(judged("r_ratio_enhancement = \"unconstrained\"")), "without constraint"));
    EXPECT_TRUE(has_caution(accepted(judged("r_ratio_enhancement = \"stress relieved\"")), "furnace"));
    const Case stricter = accepted(judged("partial_factor = 1.5\nsurvival = \"99 %\""));
    EXPECT_FALSE(has_caution(stricter, "partial factor"));
    EXPECT_FALSE(has_caution(stricter, "survival asked"));
}

// Quantiles of the normal distribution, as tables print them.
TEST(Judgement, DeviationsAreThoseOfTheNormalDistribution)
{
    EXPECT_EQ(deviations_below_mean(0.977), 2.0);
    EXPECT_EQ(deviations_below_mean(0.5), 0.0);
    EXPECT_EQ(deviations_below_mean(0.90), 1.28);
    EXPECT_EQ(deviations_below_mean(0.95), 1.64);
    EXPECT_EQ(deviations_below_mean(0.99), 2.33);
    EXPECT_EQ(deviations_below_mean(0.999), 3.09);
    EXPECT_EQ(deviations_below_mean(0.9999), 3.72);
}

}  // namespace
}  // namespace splicewright
