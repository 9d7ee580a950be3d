// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>

#include "post/crack_growth.h"
#include "post/making_steel.h"
#include "post/rated_curves.h"
#include "post/strength_limits.h"
#include "post/weld_places.h"

namespace splicewright
{
namespace
{

constexpr double round_off = 1e-9;

// Reversed bending alone, far above the knees, and torque alone.
Case bent(double couple, double count)
{
    Case asked;
    asked.load.peak_bending = asked.load.running_bending = NewtonMillimetre{couple};
    asked.load.revolutions = count;
    return asked;
}

Case twisted(double torque, double count)
{
    Case asked;
    asked.load.peak_torque = NewtonMillimetre{torque};
    asked.load.blocks = {{"", NewtonMillimetre{0}, NewtonMillimetre{torque}, count}};
    return asked;
}

const WeldUnitStress unit{0.5, 0.25, 0, 0, 0};  // MPa per N*mm
constexpr double count = 1e5, couple = 300, torque = 200;

double use(const Case& asked, InteractionRule rule, const char* site)
{
    const WeldCurves curves =
        rule == InteractionRule::squares
            ? WeldCurves{normal_curve(Megapascal{63}, 1.35, Provenance::from_memory),
                         shear_curve(Megapascal{80}, 1.35, Provenance::from_memory), rule}
            : WeldCurves{eurocode_normal_curve(Megapascal{63}, 1.35), eurocode_shear_curve(Megapascal{80}, 1.35), rule};
    return weld_row(asked, {site, "", "", ""}, unit, curves).demand;
}

// By hand: range times factors over the class, times the root of the cycles over 2e6 and the allowed sum.
double bending_use(double factor, double sum)
{
    return 2 * couple * 0.25 * factor / 63 * std::cbrt(count / (sum * 2e6));
}
double torque_use(double factor, double sum) { return torque * 0.5 * factor / 80 * std::pow(count / (sum * 2e6), 0.2); }

TEST(Rating, LeavesTheClassesAsTheyAreWhenNothingIsAsked)
{
    EXPECT_NEAR(use(bent(couple, count), InteractionRule::squares, "bar-toe.left"), bending_use(1.35, 0.5), round_off);
    EXPECT_NEAR(use(twisted(torque, count), InteractionRule::cubes_and_fifths, "bar-toe.left"), torque_use(1.35, 1),
                round_off);
}

TEST(Rating, PartialFactorDividesTheClass)
{
    Case asked = bent(couple, count);
    asked.rating.partial_factor = 1.15;
    EXPECT_NEAR(use(asked, InteractionRule::squares, "root.left"), bending_use(1.15, 0.5), round_off);
    EXPECT_NEAR(use(asked, InteractionRule::cubes_and_fifths, "root.left"), bending_use(1.15, 1), round_off);
}

// 99.9 % lies 3.09 standard deviations of 0.2 below the mean, 1.09 below the class: 10^(1.09 0.2/m) more stress counts.
TEST(Rating, SurvivalMovesTheLineByItsStandardDeviation)
{
    Case asked = bent(couple, count);
    asked.rating.survival = 0.999;
    const double slope_3 = std::pow(10, 1.09 * 0.2 / 3), slope_5 = std::pow(10, 1.09 * 0.2 / 5);
    EXPECT_NEAR(use(asked, InteractionRule::squares, "root.left"), bending_use(1.35 * slope_3, 0.5), round_off);
    asked = twisted(torque, count);
    asked.rating.survival = 0.999;
    EXPECT_NEAR(use(asked, InteractionRule::squares, "root.left"), torque_use(1.35 * slope_5, 0.5), round_off);
    asked.rating.survival = 0.977;  // that of the classes
    EXPECT_NEAR(use(asked, InteractionRule::squares, "root.left"), torque_use(1.35, 0.5), round_off);
    // 95 % lies 1.64 below the mean, 0.36 above the class.
    asked.rating.survival = 0.95;
    EXPECT_NEAR(use(asked, InteractionRule::squares, "root.left"), torque_use(1.35 / std::pow(10, 0.36 * 0.2 / 5), 0.5),
                round_off);
}

// Fully reversed, R = -1: f(R) = 0.4 + 1.2 by IIW; 1 + 0.6 of the two halves by EN 1993-1-9, of a range of 2.
TEST(Rating, StressReliefCountsInReversedBending)
{
    Case asked = bent(couple, count);
    asked.rating.relief = StressRelief::stress_relieved;
    EXPECT_NEAR(use(asked, InteractionRule::squares, "bar-toe.left"), bending_use(1.35 / 1.6, 0.5), round_off);
    EXPECT_NEAR(use(asked, InteractionRule::cubes_and_fifths, "bar-toe.left"), bending_use(1.35 * 0.8, 1), round_off);
    asked.load.axial = Newton{1};  // tension: its mean is not counted, so no relief either
    EXPECT_NEAR(use(asked, InteractionRule::squares, "bar-toe.left"), bending_use(1.35, 0.5), round_off);
}

// By hand from f(R) = 1.2 - 0.4 R and 0.9 - 0.4 R; source: [Hobbacher2016] 3.5.1, from memory.
TEST(RRatio, FactorIsThatOfItsCase)
{
    struct Row
    {
        double R, relieved, unconstrained;
    };
    for (const Row& row :
         {Row{-1, 1.6, 1.3}, Row{-0.5, 1.4, 1.1}, Row{-0.25, 1.3, 1}, Row{0, 1.2, 1}, Row{0.5, 1, 1}, Row{0.8, 1, 1}})
    {
        EXPECT_NEAR(r_ratio_factor(StressRelief::stress_relieved, row.R), row.relieved, round_off) << row.R;
        EXPECT_NEAR(r_ratio_factor(StressRelief::unconstrained, row.R), row.unconstrained, round_off) << row.R;
        EXPECT_EQ(r_ratio_factor(StressRelief::none, row.R), 1) << row.R;
    }
}

// Two blocks, R = -0.4 and 0: ranges over 1.36 and 1.2, damages added against 80/1.35 with slope 5; their means of 75
// and 225 differ by more than a tenth of the range, so that the sum allowed is 0.2.
TEST(RRatio, IsThatOfEachTorqueBlockInShear)
{
    Case asked;
    asked.load.peak_torque = NewtonMillimetre{450};
    asked.load.blocks = {{"", NewtonMillimetre{-100}, NewtonMillimetre{250}, 5e4},
                         {"", NewtonMillimetre{0}, NewtonMillimetre{450}, 1e4}};
    const auto expected = [](double f_first, double f_second, double sum)
    {
        const auto damage = [](double range, double count) { return count / 2e6 * std::pow(range * 1.35 / 80, 5); };
        return std::pow((damage(0.5 * 350 / f_first, 5e4) + damage(0.5 * 450 / f_second, 1e4)) / sum, 0.2);
    };
    const auto squares = InteractionRule::squares, fifths = InteractionRule::cubes_and_fifths;
    EXPECT_NEAR(use(asked, squares, "bar-toe.left"), expected(1, 1, 0.2), round_off);
    asked.rating.relief = StressRelief::stress_relieved;
    EXPECT_NEAR(use(asked, squares, "bar-toe.left"), expected(1.36, 1.2, 0.2), round_off);
    EXPECT_NEAR(use(asked, fifths, "bar-toe.left"), expected(1, 1, 1), round_off);
    asked.rating.relief = StressRelief::unconstrained;
    EXPECT_NEAR(use(asked, squares, "bar-toe.left"), expected(1.06, 1, 0.2), round_off);
    asked.load.axial = Newton{1};
    EXPECT_NEAR(use(asked, squares, "bar-toe.left"), expected(1, 1, 0.2), round_off);
    // The larger torque may be the negative one: -450 to 100 has R = -0.2222, f = 1.2889.
    asked.load.axial = {};
    asked.rating.relief = StressRelief::stress_relieved;
    asked.load.blocks = {{"", NewtonMillimetre{-450}, NewtonMillimetre{100}, 1e4}};
    EXPECT_NEAR(use(asked, squares, "root.right"),
                0.5 * 550 / (1.2 + 0.4 * 100 / 450) * 1.35 / 80 * std::pow(1e4 / 1e6, 0.2), round_off);
}

TEST(RRatio, OfTheWeakerCaseIsNotCountedByTheOtherRule)
{
    Case asked = bent(couple, count);
    asked.rating.relief = StressRelief::unconstrained;
    EXPECT_NEAR(use(asked, InteractionRule::squares, "bar-toe.left"), bending_use(1.35 / 1.3, 0.5), round_off);
    EXPECT_NEAR(use(asked, InteractionRule::cubes_and_fifths, "bar-toe.left"), bending_use(1.35, 1), round_off);
}

TEST(Rating, MisalignmentRaisesTheNormalStressOfToesAndButt)
{
    Case asked = bent(couple, count);
    asked.rating.misalignment_factor = 1.2;
    for (const char* site : {"bar-toe.left", "sleeve-toe.right", "butt-surface", "land-edge"})
        EXPECT_NEAR(use(asked, InteractionRule::squares, site), bending_use(1.35 * 1.2, 0.5), round_off) << site;
    for (const char* site : {"root.left", "sleeve-mid", "bar.right"})
        EXPECT_NEAR(use(asked, InteractionRule::squares, site), bending_use(1.35, 0.5), round_off) << site;
    asked = twisted(torque, count);
    asked.rating.misalignment_factor = 1.2;
    EXPECT_NEAR(use(asked, InteractionRule::squares, "bar-toe.left"), torque_use(1.35, 0.5), round_off);
}

TEST(Rating, IsToldInTheNoteOfItsRow)
{
    Case asked = bent(couple, count);
    asked.rating = {0.999, 1.15, "safe life, low consequence", StressRelief::stress_relieved, 1.1};
    const WeldCurves curves{normal_curve(Megapascal{63}, 1.35, Provenance::from_memory),
                            shear_curve(Megapascal{80}, 1.35, Provenance::from_memory), InteractionRule::squares};
    const CheckRow row = weld_row(asked, {"bar-toe.left", "", "", ""}, unit, curves);
    for (const char* part : {"partial factor 1.15", "survival 99.9 %", "times 1.6", "normal stress times 1.1"})
        EXPECT_NE(row.note.find(part), std::string::npos) << part << " in " << row.note;
    EXPECT_EQ(row.provenance, Provenance::judgement);
}

// Joined stresses count no relief, and survival and partial factor as the others.
TEST(Rating, OfJoinedStressesCountsNoRelief)
{
    Case asked = twisted(torque, count);
    asked.rating = {0.999, 1.15, "safe life, low consequence", StressRelief::stress_relieved, 1.1};
    const SnCurve curve = normal_curve(Megapascal{80}, 1.35, Provenance::from_memory);
    const CheckRow row = equivalent_row(asked, {"bar-toe.left", "", "", ""}, unit, Equivalent::first_principal, curve);
    const double factor = 1.15 * std::pow(10, 1.09 * 0.2 / 3);
    EXPECT_NEAR(row.demand, torque * 0.5 * factor / 80 * std::cbrt(count / 1e6), round_off);
}

Case solid_splice(double diameter_mm, double sleeve_mm)
{
    Case asked;
    for (const Side side : both_sides)
    {
        asked.bar[index(side)] = Bar{};
        asked.bar[index(side)]->sections = {{Millimetre{100}, Millimetre{diameter_mm}, Millimetre{0}}};
    }
    asked.joint = Joint{};
    asked.sleeve = Sleeve{};
    asked.sleeve->outer_diameter = asked.sleeve->end_diameter = Millimetre{sleeve_mm};
    return asked;
}

TEST(Size, OfASolidBarIsItsDiameterAndOfATubeItsWall)
{
    Case asked = solid_splice(40, 54);
    EXPECT_EQ(size_at(asked, "bar-toe.left"), 40);
    EXPECT_EQ(size_at(asked, "butt-surface"), 40);
    EXPECT_EQ(size_at(asked, "sleeve-toe.left"), 7);
    EXPECT_EQ(wall_at(asked, "bar-toe.left"), 20);
    for (auto& bar : asked.bar) bar->bore = Millimetre{30};
    EXPECT_EQ(size_at(asked, "bar-toe.left"), 5);
    EXPECT_EQ(size_at(asked, "butt-surface"), 5);
}

// 12 sqrt(27) - 20 = 42.354 falls with (25/B)^0.25 over 25 mm, 20 MPa sqrt(m) stay; by hand for 40 mm.
TEST(Toughness, FallsWithTheSizeOverTheReference)
{
    constexpr double root_thousand = 31.6227766, in_digits = 0.05;
    EXPECT_NEAR(toughness_of({}, 20).value, 62.3538 * root_thousand, in_digits);
    EXPECT_NEAR(toughness_of({}, 40).value, (42.3538 * 0.889140 + 20) * root_thousand, in_digits);
    EXPECT_EQ(toughness_of({}, 40).provenance, Provenance::judgement);
    Material stated;
    stated.toughness_provenance = Provenance::stated;
    stated.toughness = 3000;
    EXPECT_EQ(toughness_of(stated, 40).value, 3000);
    EXPECT_EQ(toughness_of(stated, 40).provenance, Provenance::stated);
}

TEST(Limits, OfATypicalStrengthAreAJudgement)
{
    Material steel;
    steel.name = "4140";
    steel.yield = Megapascal{690};
    steel.provenance = Provenance::secondary;
    EXPECT_EQ(yield_of(steel).provenance, Provenance::secondary);
    steel.strength_kind = StrengthKind::typical;
    EXPECT_EQ(yield_of(steel).provenance, Provenance::judgement);
    EXPECT_NE(yield_of(steel).whose.find("typical, no minimum"), std::string::npos);
    EXPECT_EQ(yield_of(steel).stress, Megapascal(690));
}

// Source: [ISO15614-1] with the groups of ISO/TR 15608, from memory.
TEST(HardnessLimit, GoesByTheGroupOfTheSteel)
{
    Material steel;
    steel.yield = Megapascal{355};
    steel.condition = "normalised";
    steel.composition.C = 0.18;
    EXPECT_EQ(hardness_limit(steel).value, 380);
    steel.composition.C = 0.46;
    EXPECT_EQ(hardness_limit(steel).value, 380);
    EXPECT_EQ(hardness_limit(steel).provenance, Provenance::judgement);
    steel.condition = "quenched and tempered, 16 to 40 mm";
    steel.yield = Megapascal{430};
    EXPECT_EQ(hardness_limit(steel).value, 450);
    steel.yield = Megapascal{350};
    EXPECT_EQ(hardness_limit(steel).value, 380);
}

}  // namespace
}  // namespace splicewright
