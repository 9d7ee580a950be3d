// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/machine_design.h"

#include <limits>
#include <numbers>

#include "cases/problem.h"
#include "tests/handbook/close.h"

namespace splicewright
{
namespace
{

// The formulas are coherent in any units: with inch, lbf and psi in the house fields they give psi.
EquivalentStress shaft_stress(double diameter, double bending_alternating, double bending_mean,
                              double torque_alternating, double torque_mean)
{
    const double W = std::numbers::pi * diameter * diameter * diameter;
    FluctuatingStress stress;
    stress.normal_alternating = Megapascal{32 * bending_alternating / W};
    stress.normal_mean = Megapascal{32 * bending_mean / W};
    stress.shear_alternating = Megapascal{16 * torque_alternating / W};
    stress.shear_mean = Megapascal{16 * torque_mean / W};
    return equivalent_stress(stress);
}

// Source: [Shigley2008] problem 7-1: Kf 2.2, Kfs 1.8, Se 30, Sut 100 kpsi; Goodman 1.073 in, Gerber 1.016 in for n = 2.
TEST(ShaftSafety, PublishedDiametersGiveTheAskedSafetyOfTwo)
{
    const Megapascal endurance{30000}, tensile{100000};
    const auto stress = [](double diameter)
    { return shaft_stress(diameter, 2.2 * 600, 2.2 * 500, 1.8 * 400, 1.8 * 300); };
    // The diameter is printed to a thousandth; the safety factor goes with its cube.
    const Allowance printed = relative(3 * 0.0005 / 1.016, 2, "diameter printed to 0.001 in");
    EXPECT_TRUE(close(goodman_safety(stress(1.073), endurance, tensile).value, 2, printed));
    EXPECT_TRUE(close(gerber_safety(stress(1.016), endurance, tensile).value, 2, printed));
    const Allowance ten_digits = relative(1e-6, 2, "diameter to seven digits");
    EXPECT_TRUE(close(goodman_safety(stress(1.072843948), endurance, tensile).value, 2, ten_digits));
    EXPECT_TRUE(close(gerber_safety(stress(1.015724), endurance, tensile).value, 2, ten_digits));
}

// Source: [Shigley2011] example 7-1: printed Goodman 1.63 (recalled) and Gerber 1.87 from A and B rounded on the way.
TEST(ShaftSafety, ExampleWithReversedBendingAndSteadyTorque)
{
    const EquivalentStress stress = shaft_stress(1.1, 1.58 * 1260, 0, 0, 1.37 * 1100);
    EXPECT_TRUE(
        close(goodman_safety(stress, Megapascal{29300}, Megapascal{105000}).value, 1.625763622, printed_decimals(9)));
    EXPECT_TRUE(
        close(gerber_safety(stress, Megapascal{29300}, Megapascal{105000}).value, 1.862790322, printed_decimals(9)));
}

TEST(MeanStressRules, GoodmanAndGerberOfOneCycle)
{
    const EquivalentStress stress{Megapascal{150}, Megapascal{100}};
    EXPECT_TRUE(
        close(goodman_safety(stress, Megapascal{250}, Megapascal{600}).value, 1.304347826, printed_decimals(9)));
    EXPECT_TRUE(close(gerber_safety(stress, Megapascal{250}, Megapascal{600}).value, 1.554756169, printed_decimals(9)));
    EXPECT_TRUE(close(goodman_reversed(stress, Megapascal{600})->value(), 180, round_off(180)));
    EXPECT_FALSE(goodman_reversed({Megapascal{10}, Megapascal{600}}, Megapascal{600}).has_value());
}

TEST(MeanStressRules, LimitsWithoutAmplitudeOrMean)
{
    const EquivalentStress mean_only{Megapascal{0}, Megapascal{300}}, reversed_only{Megapascal{125}, Megapascal{0}};
    EXPECT_TRUE(close(gerber_safety(mean_only, Megapascal{250}, Megapascal{600}).value, 2, round_off(2)));
    EXPECT_TRUE(close(gerber_safety(reversed_only, Megapascal{250}, Megapascal{600}).value, 2, round_off(2)));
    EXPECT_TRUE(std::isinf(goodman_safety({}, Megapascal{250}, Megapascal{600}).value));
}

// Machined, 1000 MPa, 28 mm, 99 %: k_a = 4.51 x 1000^-0.265 = 0.7231, k_b = 1.24 x 28^-0.107 = 0.8681.
TEST(Marin, FactorsOfAMachinedBar)
{
    const EnduranceLimit limit = *endurance_limit({Megapascal{1000}, Millimetre{28}}).value;
    EXPECT_TRUE(close(limit.surface, 0.7231, printed_decimals(4)));
    EXPECT_TRUE(close(limit.size, 0.8681, printed_decimals(4)));
    EXPECT_EQ(limit.load, 1.0);
    EXPECT_EQ(limit.reliability, 0.814);
    EXPECT_TRUE(close(limit.limit.value(), 0.7231 * 0.8681 * 0.814 * 500, {0.03, "factors rounded to four decimals"}));
}

// As-forged at 1000 MPa: 0.282 by the 9th edition.
TEST(Marin, ForgedSurfaceFollowsTheNinthEdition)
{
    EnduranceQuery query{Megapascal{1000}, Millimetre{20}};
    query.surface = SurfaceFinish::forged;
    EXPECT_TRUE(close(endurance_limit(query).value->surface, 0.282, printed_decimals(3)));
}

// The fit for hot-rolled bars, 57.7 S^-0.718, is 2.6 at 74 MPa: no surface is better than a polished one.
TEST(Marin, SurfaceNeverRaisesTheLimitOfAWeakSteel)
{
    EnduranceQuery query{Megapascal{74}, Millimetre{20}};
    for (const SurfaceFinish finish :
         {SurfaceFinish::ground, SurfaceFinish::machined, SurfaceFinish::hot_rolled, SurfaceFinish::forged})
    {
        query.surface = finish;
        EXPECT_EQ(endurance_limit(query).value->surface, 1);
    }
}

TEST(Marin, SpecimenLimitStopsAtSevenHundred)
{
    EXPECT_EQ(endurance_limit({Megapascal{1400}, Millimetre{20}}).value->specimen.value(), 700);
    EXPECT_EQ(endurance_limit({Megapascal{1800}, Millimetre{20}}).value->specimen.value(), 700);
}

TEST(Marin, DiameterOutsideTheFitHasNoAnswer)
{
    EXPECT_FALSE(endurance_limit({Megapascal{800}, Millimetre{2}}).value.has_value());
    EXPECT_FALSE(endurance_limit({Megapascal{800}, Millimetre{300}}).value.has_value());
}

// The inch form of the fits, Sut in kpsi and sqrt(in), from the book's page.
TEST(NotchSensitivity, MetricFitsAreTheInchFitsConverted)
{
    for (double kpsi = 55; kpsi <= 240; kpsi += 20)
    {
        const double S = kpsi, inch_radius = 0.11;
        const double bending = 0.246 - 3.08e-3 * S + 1.51e-5 * S * S - 2.67e-8 * S * S * S;
        const double torsion = 0.190 - 2.51e-3 * S + 1.35e-5 * S * S - 2.67e-8 * S * S * S;
        const Megapascal tensile{6.894757 * kpsi};
        const Millimetre radius{25.4 * inch_radius};
        // Coefficients printed to three digits, large terms of both signs.
        const Allowance three_digits{0.006, "coefficients printed to three digits"};
        EXPECT_TRUE(close(*notch_sensitivity(tensile, radius, NotchLoad::bending).value.q,
                          1 / (1 + bending / std::sqrt(inch_radius)), three_digits));
        if (tensile.value() > 1500) continue;  // where the torsion fit ends
        EXPECT_TRUE(close(*notch_sensitivity(tensile, radius, NotchLoad::torsion).value.q,
                          1 / (1 + torsion / std::sqrt(inch_radius)), three_digits));
    }
}

TEST(NotchSensitivity, OutsideTheFitHasNoAnswer)
{
    EXPECT_FALSE(notch_sensitivity(Megapascal{339}, Millimetre{1}, NotchLoad::bending).value.q.has_value());
    EXPECT_FALSE(notch_sensitivity(Megapascal{1701}, Millimetre{1}, NotchLoad::bending).value.q.has_value());
    EXPECT_FALSE(notch_sensitivity(Megapascal{1501}, Millimetre{1}, NotchLoad::torsion).value.q.has_value());
    for (double tensile = 340; tensile <= 1500; tensile += 20)
        EXPECT_LT(*notch_sensitivity(Megapascal{tensile}, Millimetre{0.1}, NotchLoad::torsion).value.q, 1) << tensile;
    EXPECT_NE(notch_sensitivity(Megapascal{1701}, Millimetre{1}, NotchLoad::bending).value.absent_because, "");
    EXPECT_EQ(fatigue_notch_factor(2.5, 0), 1);
    EXPECT_EQ(fatigue_notch_factor(2.5, 1), 2.5);
}

const ShaftSnLine line900{Megapascal{900}, Megapascal{270}, 0.9};

// a = (0.9 Sut)^2/Se, b = -log10(0.9 Sut/Se)/3, N = (amplitude/a)^(1/b).
TEST(ShaftSnLine, MatchesTheTextbookConstants)
{
    const double a = 810.0 * 810 / 270, b = -std::log10(3.0) / 3;
    for (const double amplitude : {200.0, 270.0, 400.0, 810.0})
    {
        const double expected = std::pow(amplitude / a, 1 / b);
        EXPECT_TRUE(close(shaft_cycles(line900, Megapascal{amplitude}), expected, round_off(expected)));
    }
    EXPECT_TRUE(close(shaft_cycles(line900, Megapascal{270}), 1e6, round_off(1e6)));
    EXPECT_TRUE(close(shaft_cycles(line900, Megapascal{810}), 1e3, round_off(1e3)));
    EXPECT_TRUE(close(shaft_cycles(line900, Megapascal{900}), 1, relative(1e-10, 1, "slope 65")));
}

TEST(ShaftSnLine, FallsStrictlyAndWithoutAJump)
{
    double before = shaft_cycles(line900, Megapascal{0});
    for (double amplitude = 20; amplitude < 1200; amplitude *= 1.01)
    {
        const double now = shaft_cycles(line900, Megapascal{amplitude});
        EXPECT_LT(now, before);
        before = now;
    }
    EXPECT_TRUE(close(shaft_cycles(line900, Megapascal{810 * (1 + 1e-12)}), 1e3,
                      relative(1e-9, 1e3, "slope 65 over 1e-12 of amplitude")));
}

// The curve fit at the ends of its range in the inch form: 0.9 at 70 kpsi, 0.78 at 200 kpsi.
TEST(ThousandCycleShare, FallsWithStrength)
{
    EXPECT_EQ(thousand_cycle_share(Megapascal{450}).value, 0.9);
    EXPECT_TRUE(close(*thousand_cycle_share(Megapascal{1379}).value, 0.78, printed_decimals(2)));
    EXPECT_FALSE(thousand_cycle_share(Megapascal{1500}).value.has_value());
}

// Blocks with lives 5e4, 2e5, 1e6 (just above Se): 0.65.
TEST(ShaftMinerSum, ThreeBlocksOfKnownLivesAddUp)
{
    const double slope = 3 / std::log10(3.0);
    const auto block = [&](double life, double count) {
        return StressBlock{{Megapascal{270 * std::pow(1e6 / life, 1 / slope)}, Megapascal{0}}, count};
    };
    EXPECT_TRUE(
        close(shaft_miner_sum({block(5e4, 1e4), block(2e5, 5e4), block(1e6, 2e5)}, line900), 0.65, round_off(0.65)));
}

TEST(ShaftMinerSum, EndlessLifeUntilOneBlockExceedsTheLimit)
{
    const StressBlock small{{Megapascal{200}, Megapascal{0}}, 1e7}, large{{Megapascal{300}, Megapascal{0}}, 1};
    EXPECT_EQ(shaft_miner_sum({small}, line900), 0);
    const double both = shaft_miner_sum({small, large}, line900);
    EXPECT_GT(both, 1e7 / shaft_cycles(line900, Megapascal{200}));
    EXPECT_TRUE(std::isinf(shaft_miner_sum({{{Megapascal{1}, Megapascal{900}}, 1}}, line900)));
}

TEST(ShaftFatigue, ScaledBlocksMeetTheLimit)
{
    const std::vector<StressBlock> blocks{{{Megapascal{180}, Megapascal{180}}, 4000},
                                          {{Megapascal{100}, Megapascal{20}}, 2e5}};
    for (const double limit : {0.1, 0.5, 1.0})
    {
        const ShaftFatigue fatigue = shaft_fatigue(blocks, line900, limit).value;
        std::vector<StressBlock> scaled = blocks;
        for (StressBlock& block : scaled)
            block.stress = {fatigue.stress_scale * block.stress.alternating, fatigue.stress_scale * block.stress.mean};
        EXPECT_TRUE(close(shaft_miner_sum(scaled, line900), limit, relative(1e-9, limit, "scale to 1e-12")));
        EXPECT_TRUE(close(fatigue.utilisation * fatigue.stress_scale, 1, round_off(1)));
    }
}

// Many cycles: the limit is the Goodman line itself, where the sum leaps.
TEST(ShaftFatigue, ManyCyclesAreHeldToTheEnduranceLimit)
{
    const StressBlock rotating{{Megapascal{150}, Megapascal{100}}, 1e9};
    const double safety = goodman_safety(rotating.stress, line900.endurance, line900.tensile).value;
    EXPECT_TRUE(close(shaft_fatigue({rotating}, line900, 1.0).value.stress_scale, safety,
                      relative(1e-11, safety, "scale to 1e-12")));
}

TEST(ShaftFatigue, OneCycleIsHeldToTheTensileStrength)
{
    // Reversed amplitude a s/(1 - m s/Sut) = Sut at s = Sut/(a + m): one cycle.
    const StressBlock once{{Megapascal{100}, Megapascal{200}}, 1};
    const ShaftFatigue fatigue = shaft_fatigue({once}, line900, 1.0).value;
    EXPECT_TRUE(close(fatigue.stress_scale, 3, relative(1e-11, 3, "scale to 1e-12")));
    EXPECT_FALSE(fatigue.low_cycle);
    EXPECT_TRUE(shaft_fatigue({{{Megapascal{820}, Megapascal{0}}, 1}}, line900, 1.0).value.low_cycle);
}

TEST(ShaftFatigue, NoAlternatingStressIsNoDemand)
{
    const ShaftFatigue none = shaft_fatigue({{{Megapascal{0}, Megapascal{300}}, 1e6}}, line900, 1.0).value;
    EXPECT_EQ(none.stress_scale, std::numeric_limits<double>::infinity());
    EXPECT_EQ(none.utilisation, 0);
    EXPECT_EQ(shaft_fatigue({}, line900, 1.0).value.utilisation, 0);
}

}  // namespace
}  // namespace splicewright
