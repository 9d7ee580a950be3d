// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/weld_line.h"

#include <numbers>

#include "tests/handbook/close.h"

namespace splicewright
{
namespace
{

const double root_half = 1 / std::numbers::sqrt2;
const FilletWeld equal_legs{Millimetre{8}, Millimetre{8}, Millimetre{50}};
const FilletWeld unequal_legs{Millimetre{9}, Millimetre{6}, Millimetre{50}};

TEST(FilletWeld, ThroatOfEqualLegsIsLegOverRootTwo)
{
    EXPECT_TRUE(close(throat(equal_legs).value(), 8 * root_half, round_off(5.6)));
    EXPECT_TRUE(close(throat_mean_radius(equal_legs).value(), 27, round_off(27)));
}

// Triangle (0,0), (9,0), (0,6): foot of the height at t (6,9)/sqrt 117 = (2.769, 4.154).
TEST(FilletWeld, ThroatOfUnequalLegsIsTheHeightOfTheTriangle)
{
    EXPECT_TRUE(close(throat(unequal_legs).value(), 54 / std::sqrt(117.0), round_off(5)));
    EXPECT_TRUE(close(throat_mean_radius(unequal_legs).value(), 25 + 0.5 * 54 * 9 / 117.0, round_off(27)));
}

// The handbook takes the line at the bar's surface and 0.707 for 1/sqrt 2.
TEST(RingWeld, LineStressesMatchTheHandbookCase)
{
    const RingLoad load{NewtonMillimetre{3e6}, NewtonMillimetre{1e6}, Newton{50000}};
    const RingThroatStress stress = ring_throat_stress(Millimetre{25}, Millimetre{0.707 * 8}, load).value;
    EXPECT_TRUE(close(stress.torsion.value(), 135.0678442, printed_decimals(7)));
    EXPECT_TRUE(close(stress.bending.value(), 90.04522947, printed_decimals(8)));
    // The handbook rounds 2 x 0.707 to 1.414, which is the same number.
    EXPECT_TRUE(close(stress.axial.value(), 56.27826842, printed_decimals(8)));
    EXPECT_TRUE(close(std::hypot(stress.torsion.value(), stress.bending.value() + stress.axial.value()), 199.1328415,
                      printed_decimals(7)));
}

// Leg 10 mm on a 50 mm shaft at 80 MPa: a textbook prints 2.22 kN m.
TEST(RingWeld, TorqueCapacityMatchesTheTextbook)
{
    const RingLoad unit{NewtonMillimetre{1}, NewtonMillimetre{0}, Newton{0}};
    const double per_torque = ring_throat_stress(Millimetre{25}, Millimetre{0.707 * 10}, unit).value.torsion.value();
    EXPECT_TRUE(close(80 / per_torque, 2221106.006, printed_decimals(3)));
}

// 2500 N m at 140 MPa on 50 mm asks for a throat of 4.547 mm.
TEST(RingWeld, StressAtTheNeededThroatIsThePermittedOne)
{
    const RingLoad load{NewtonMillimetre{2.5e6}, NewtonMillimetre{0}, Newton{0}};
    EXPECT_TRUE(close(ring_throat_stress(Millimetre{25}, Millimetre{4.547284088}, load).value.torsion.value(), 140,
                      relative(1e-9, 140, "throat printed to ten digits")));
}

TEST(RingWeld, LineForceTimesThroatIsTheStress)
{
    const RingLoad load{NewtonMillimetre{3e6}, NewtonMillimetre{1e6}, Newton{-50000}};
    const LineForce force = ring_line_force(Millimetre{25}, load).value;
    const RingThroatStress stress = ring_throat_stress(Millimetre{25}, Millimetre{5}, load).value;
    EXPECT_TRUE(close(force.tangential / 5, stress.torsion.value(), round_off(150)));
    EXPECT_TRUE(
        close(std::abs(force.outward) / 5, stress.bending.value() + std::abs(stress.axial.value()), round_off(150)));
}

TEST(ThroatPlane, EqualLegsResolveAtFortyFiveDegrees)
{
    const double a = 8 * root_half;
    const ThroatPlaneStress pull = throat_plane_stress(equal_legs, {100, 0, 0}).value;
    EXPECT_TRUE(close(pull.normal.value(), 100 * root_half / a, round_off(12)));
    EXPECT_TRUE(close(pull.shear_across.value(), 100 * root_half / a, round_off(12)));
    EXPECT_EQ(pull.shear_along.value(), 0);

    // A radial force outward on the sleeve presses the throat plane together and shears it outward.
    const ThroatPlaneStress lift = throat_plane_stress(equal_legs, {0, 100, 0}).value;
    EXPECT_TRUE(close(lift.normal.value(), -100 * root_half / a, round_off(12)));
    EXPECT_TRUE(close(lift.shear_across.value(), 100 * root_half / a, round_off(12)));

    EXPECT_TRUE(close(throat_plane_stress(equal_legs, {0, 0, 100}).value.shear_along.value(), 100 / a, round_off(18)));
}

// Against dot products with the corners of the triangle: root (0,0), bar toe (9,0), sleeve toe (0,6).
TEST(ThroatPlane, UnequalLegsResolveByDotProducts)
{
    const double side = std::sqrt(117.0), a = 54 / side;
    const ThroatPlaneStress stress = throat_plane_stress(unequal_legs, {70, 40, 30}).value;
    EXPECT_TRUE(close(stress.normal.value(), (9 * 70 - 6 * 40) / side / a, round_off(10)));
    EXPECT_TRUE(close(stress.shear_across.value(), (6 * 70 + 9 * 40) / side / a, round_off(15)));
    const double resultant = std::hypot(stress.normal.value(), stress.shear_across.value(), stress.shear_along.value());
    EXPECT_TRUE(close(resultant * a, std::hypot(70, 40, 30), round_off(86)));
}

// A worked example: throat 5 mm, length 100 mm, 10 kN across a 45 degree throat, S355 with fu 470 MPa.
TEST(Eurocode, DirectionalMethodMatchesTheWorkedExample)
{
    const FilletWeld weld{Millimetre{5 * std::numbers::sqrt2}, Millimetre{5 * std::numbers::sqrt2}, Millimetre{50}};
    const ThroatPlaneStress stress = throat_plane_stress(weld, {10000 / 100.0, 0, 0}).value;
    EXPECT_TRUE(close(stress.normal.value(), 14.14213562, printed_decimals(8)));
    const Sourced<WeldCheck> check = directional_check(stress, Megapascal{470}, correlation_factor("S355J2").value);
    EXPECT_TRUE(close(check.value.demand.value(), 28.28427125, printed_decimals(8)));
    EXPECT_TRUE(close(check.value.capacity.value(), 417.7777778, printed_decimals(7)));
    EXPECT_TRUE(close(check.value.utilisation, 0.06770171309, printed_decimals(11)));
    EXPECT_NE(check.value.note.find("outside"), std::string::npos);
}

TEST(Eurocode, PurePullIsHeldToNineTenths)
{
    // With normal stress alone the equivalent is the normal stress: 470/(0.8 x 1.25) > 0.9 x 470/1.25.
    const ThroatPlaneStress pull{Megapascal{100}, Megapascal{0}, Megapascal{0}};
    const WeldCheck check = directional_check(pull, Megapascal{470}, 0.8).value;
    EXPECT_TRUE(close(check.capacity.value(), 338.4, round_off(338.4)));
    EXPECT_TRUE(close(check.utilisation, 100 / 338.4, round_off(0.3)));
}

// Design shear strengths derived for the table: fu/(sqrt 3 beta_w 1.25), one decimal.
TEST(Eurocode, SimplifiedMethodHasTheTabulatedStrengths)
{
    struct Row
    {
        const char* grade;
        double tensile, strength;
    };
    for (const Row& row : {Row{"S235", 360, 207.8}, Row{"S275", 430, 233.7}, Row{"S355", 490, 251.5},
                           Row{"S420", 520, 240.2}, Row{"S460", 540, 249.4}})
    {
        const WeldCheck check =
            simplified_check(equal_legs, {0, 0, 100}, Megapascal{row.tensile}, correlation_factor(row.grade).value)
                .value;
        EXPECT_TRUE(close(check.capacity.value(), row.strength, printed_decimals(1))) << row.grade;
        EXPECT_TRUE(close(check.demand.value(), 100 / throat(equal_legs).value(), round_off(18)));
    }
}

// For shear along the weld the two methods agree: sqrt(3) tau against fu/(beta gamma).
TEST(Eurocode, MethodsAgreeInPureTorsion)
{
    const LineForce torsion{0, 0, 250};
    const double directional =
        directional_check(throat_plane_stress(equal_legs, torsion).value, Megapascal{500}, 1.0).value.utilisation;
    EXPECT_TRUE(close(simplified_check(equal_legs, torsion, Megapascal{500}, 1.0).value.utilisation, directional,
                      round_off(directional)));
}

TEST(Eurocode, SteelOutsideTheTableGetsItsLeastFavourableFactorAndSaysSo)
{
    const Sourced<double> shaft = correlation_factor("C45 +QT");
    EXPECT_EQ(shaft.value, 1.0);
    EXPECT_EQ(shaft.provenance, Provenance::judgement);
    EXPECT_EQ(correlation_factor("S3550").provenance, Provenance::judgement);
    EXPECT_EQ(correlation_factor("S355 tube").value, 0.9);
}

}  // namespace
}  // namespace splicewright
