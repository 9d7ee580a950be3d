// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/damage.h"

#include <limits>

#include "cases/problem.h"
#include "tests/handbook/close.h"

namespace splicewright
{
namespace
{

SnCurve fat80() { return normal_curve(Megapascal{80}, 1.35, Provenance::from_memory); }

Spectrum mixed_spectrum()
{
    return {{Megapascal{300}, 200}, {Megapascal{110}, 3e4}, {Megapascal{25}, 6e6}, {Megapascal{0}, 1e9}};
}

// Blocks whose lives on the curve are 5e4, 2e5 and 1e6: 0.2 + 0.25 + 0.2 = 0.65.
TEST(MinerSum, ThreeBlocksOfKnownLivesAddUp)
{
    const SnCurve curve = fat80();
    const auto range_of = [&](double life) { return allowable_range(curve, life, Amplitude::variable); };
    const Spectrum spectrum{{range_of(5e4), 1e4}, {range_of(2e5), 5e4}, {range_of(1e6), 2e5}};
    EXPECT_TRUE(close(miner_sum(spectrum, curve, Amplitude::variable), 0.65, round_off(0.65)));
}

TEST(StressScale, ScaledSpectrumMeetsTheLimit)
{
    for (const SnCurve& curve : {fat80(), shear_curve(Megapascal{100}, 1.0, Provenance::from_memory)})
        for (const Amplitude amplitude : {Amplitude::constant, Amplitude::variable})
            for (const double limit : {1e-6, 0.2, 0.5, 1.0, 30.0})
            {
                const double scale = stress_scale_at_limit(mixed_spectrum(), curve, amplitude, limit);
                Spectrum scaled = mixed_spectrum();
                for (StressCycles& block : scaled) block.range = scale * block.range;
                EXPECT_TRUE(close(miner_sum(scaled, curve, amplitude), limit,
                                  relative(1e-10, limit, "scale to 1e-12, slope at most 22")));
            }
}

// One block: the scale is the allowable range over the range, by inverting the curve.
TEST(StressScale, SingleBlockIsTheRatioOfRanges)
{
    const Spectrum one{{Megapascal{90}, 4e5}};
    const double expected = allowable_range(fat80(), 4e5 / 0.5, Amplitude::constant) / Megapascal{90};
    EXPECT_TRUE(close(stress_scale_at_limit(one, fat80(), Amplitude::constant, 0.5), expected, round_off(expected)));
}

TEST(StressScale, UtilisationIsLinearInStress)
{
    Spectrum twice = mixed_spectrum();
    for (StressCycles& block : twice) block.range = 2.0 * block.range;
    const double once = fatigue_utilisation(mixed_spectrum(), fat80(), Amplitude::variable, 0.5).utilisation;
    EXPECT_TRUE(close(fatigue_utilisation(twice, fat80(), Amplitude::variable, 0.5).utilisation, 2 * once,
                      relative(1e-11, 2 * once, "scale to 1e-12")));
}

TEST(StressScale, HoldsForHugeAndTinyRanges)
{
    for (const double range : {1e-9, 1e-3, 1e6, 1e12})
    {
        const Spectrum spectrum{{Megapascal{range}, 1e5}};
        const double scale = stress_scale_at_limit(spectrum, fat80(), Amplitude::variable, 0.5);
        const double allowed = allowable_range(fat80(), 2e5, Amplitude::variable).value();
        EXPECT_TRUE(close(scale * range, allowed, relative(1e-11, allowed, "scale to 1e-12")));
    }
}

TEST(StressScale, NoCyclesIsNoDemand)
{
    const double infinity = std::numeric_limits<double>::infinity();
    for (const Spectrum& empty : {Spectrum{}, Spectrum{{Megapascal{0}, 1e6}}, Spectrum{{Megapascal{100}, 0}}})
    {
        const FatigueUtilisation none = fatigue_utilisation(empty, fat80(), Amplitude::variable, 0.5);
        EXPECT_EQ(none.stress_scale, infinity);
        EXPECT_EQ(none.utilisation, 0);
        EXPECT_EQ(none.damage, 0);
        EXPECT_FALSE(none.extrapolated);
    }
}

TEST(FatigueUtilisation, FlagsLivesBelowTheCurve)
{
    EXPECT_TRUE(fatigue_utilisation({{Megapascal{600}, 1}}, fat80(), Amplitude::variable, 0.5).extrapolated);
    EXPECT_FALSE(fatigue_utilisation({{Megapascal{60}, 1}}, fat80(), Amplitude::variable, 0.5).extrapolated);
}

TEST(StressScale, NegativeAndUnboundedInputIsABrokenPromise)
{
    EXPECT_THROW(miner_sum({{Megapascal{-1}, 1}}, fat80(), Amplitude::variable), BrokenPromise);
    EXPECT_THROW(miner_sum({{Megapascal{std::nan("")}, 1}}, fat80(), Amplitude::variable), BrokenPromise);
    EXPECT_THROW(stress_scale_at_limit(mixed_spectrum(), fat80(), Amplitude::variable, 0), BrokenPromise);
}

TEST(SquaresInteraction, UsesHalfWhenNotProportional)
{
    const Interaction together = squares_interaction(0.6, 0.8, Phase::proportional).value;
    EXPECT_TRUE(close(together.utilisation, 1.0, round_off(1)));
    const Interaction apart = squares_interaction(0.6, 0.8, Phase::non_proportional).value;
    EXPECT_TRUE(close(apart.utilisation, std::sqrt(2.0), round_off(1.4)));
    EXPECT_EQ(apart.limit, 0.5);
}

TEST(SquaresInteraction, NeverLeavesNormalStressOut)
{
    const double joined = std::sqrt((0.01 * 0.01 + 0.9 * 0.9) / 0.5);
    EXPECT_TRUE(close(squares_interaction(0.01, 0.9, Phase::non_proportional).value.utilisation, joined, round_off(1)));
    EXPECT_EQ(squares_interaction(0, 0.9, Phase::non_proportional).value.utilisation, 0.9);
}

TEST(SquaresInteraction, NeglectsShearBelowFifteenPercentOfNormal)
{
    EXPECT_EQ(squares_interaction(0.9, 0.13, Phase::non_proportional).value.utilisation, 0.9);
    EXPECT_NE(squares_interaction(0.9, 0.13, Phase::non_proportional).value.note.find("shear neglected"),
              std::string::npos);
    EXPECT_GT(squares_interaction(0.9, 0.14, Phase::non_proportional).value.utilisation, 1.2);
    EXPECT_EQ(squares_interaction(0, 0, Phase::non_proportional).value.utilisation, 0);
}

TEST(EurocodeInteraction, UtilisationIsTheStressFactorToTheLimit)
{
    const Interaction both = eurocode_interaction(0.9, 0.7).value;
    EXPECT_TRUE(close(both.sum, 0.9 * 0.9 * 0.9 + 0.7 * 0.7 * 0.7 * 0.7 * 0.7, round_off(0.9)));
    const double v = both.utilisation;
    EXPECT_TRUE(close(eurocode_interaction(0.9 / v, 0.7 / v).value.sum, 1, relative(1e-12, 1, "factor to 1e-14")));
    EXPECT_TRUE(close(eurocode_interaction(0.4, 0).value.utilisation, 0.4, round_off(0.4)));
    EXPECT_EQ(eurocode_interaction(0, 0).value.utilisation, 0);
}

// On single-slope curves with equal counts the rule is the sum of two Miner sums.
TEST(EurocodeInteraction, IsTheSumOfTwoDamages)
{
    const SnCurve normal = normal_curve(Megapascal{71}, 1.35, Provenance::from_memory);
    const SnCurve shear = shear_curve(Megapascal{100}, 1.35, Provenance::from_memory);
    const Spectrum sigma{{Megapascal{60}, 2e6}}, tau{{Megapascal{50}, 2e6}};
    const double damages = miner_sum(sigma, normal, Amplitude::variable) + miner_sum(tau, shear, Amplitude::variable);
    EXPECT_TRUE(close(eurocode_interaction(60 * 1.35 / 71, 50 * 1.35 / 100).value.sum, damages, round_off(damages)));
}

}  // namespace
}  // namespace splicewright
