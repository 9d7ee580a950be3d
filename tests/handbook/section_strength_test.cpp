// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/section_strength.h"

#include <numbers>

#include "cases/problem.h"
#include "tests/handbook/close.h"

namespace splicewright
{
namespace
{

using std::numbers::pi;

const RoundSection solid60{Millimetre{60}, Millimetre{0}};
const RoundSection hollow60{Millimetre{60}, Millimetre{40}};
const ParallelMember bar50{{Millimetre{50}, Millimetre{0}}, Megapascal{210000}, 0.3};
const ParallelMember sleeve70{{Millimetre{70}, Millimetre{50}}, Megapascal{210000}, 0.3};
const NewtonMillimetre two_kilonewton_metre{2e6};

TEST(RoundSection, SolidBarFollowsTheTextbookForms)
{
    EXPECT_TRUE(
        close(surface_shear(solid60, two_kilonewton_metre).value.value(), 16 * 2e6 / (pi * 216000), round_off(47)));
    EXPECT_TRUE(close(surface_bending_stress(solid60, NewtonMillimetre{1e6}).value.value(), 32e6 / (pi * 216000),
                      round_off(47)));
    EXPECT_TRUE(close(axial_stress(solid60, Newton{50000}).value.value(), 4 * 50000 / (pi * 3600), round_off(17)));
    EXPECT_TRUE(close(surface_shear(solid60, two_kilonewton_metre).value.value(), 47.15702018, printed_decimals(8)));
    EXPECT_TRUE(close(axial_stress(solid60, Newton{50000}).value.value(), 17.68388257, printed_decimals(8)));
}

// Section 60/40: J = pi (60^4 - 40^4)/32 = 1 021 017.6 mm^4.
TEST(RoundSection, HollowBarFollowsTheTextbookForms)
{
    EXPECT_TRUE(close(surface_shear(hollow60, two_kilonewton_metre).value.value(), 58.76490206, printed_decimals(8)));
    EXPECT_TRUE(
        close(surface_bending_stress(hollow60, NewtonMillimetre{1e6}).value.value(), 58.76490206, printed_decimals(8)));
    EXPECT_TRUE(close(axial_stress(hollow60, Newton{50000}).value.value(), 31.83098862, printed_decimals(8)));
}

TEST(RoundSection, BoreAsLargeAsTheBarIsABrokenPromise)
{
    EXPECT_THROW(section_area({Millimetre{20}, Millimetre{20}}), BrokenPromise);
    EXPECT_THROW(section_area({Millimetre{20}, Millimetre{-1}}), BrokenPromise);
}

TEST(Twist, SumsOverTheSteps)
{
    const Megapascal G = shear_modulus(Megapascal{210000}, 0.3);
    EXPECT_TRUE(close(G.value(), 80769.230769, printed_decimals(6)));
    const auto part = [&](double diameter, double length) {
        return TwistedLength{{Millimetre{diameter}, Millimetre{0}}, Millimetre{length}, G};
    };
    // The check's G is printed to seven digits.
    const Allowance of_modulus = relative(1e-7, 0.0178, "shear modulus printed to seven digits");
    EXPECT_TRUE(close(twist({part(40, 200), part(60, 300), part(50, 250)}, NewtonMillimetre{1e6}).value.value(),
                      0.01781614678, of_modulus));
    EXPECT_TRUE(close(twist({part(60, 500)}, two_kilonewton_metre).value.value(), 0.009730813687, of_modulus));
    const TwistedLength hollow{hollow60, Millimetre{500}, G};
    EXPECT_TRUE(close(twist({hollow}, two_kilonewton_metre).value.value(), 0.0121260909, of_modulus));
}

TEST(YieldTorque, SolidBarGainsAThirdFromFirstYieldToFullPlasticity)
{
    const Megapascal yield{600};
    const double first = first_yield_torque(solid60, yield).value.value();
    EXPECT_TRUE(close(fully_plastic_torque(solid60, yield).value.value() / first, 4.0 / 3, round_off(1.3)));
    EXPECT_TRUE(
        close(surface_shear(solid60, NewtonMillimetre{first}).value.value() * std::sqrt(3.0), 600, round_off(600)));
}

// A tube of thin wall yields everywhere at once.
TEST(YieldTorque, ThinTubeHasHardlyAnyReserve)
{
    const RoundSection tube{Millimetre{60}, Millimetre{59.9}};
    const Megapascal yield{600};
    const double gain = fully_plastic_torque(tube, yield).value.value() / first_yield_torque(tube, yield).value.value();
    EXPECT_GT(gain, 1.0);
    // Wall over radius is 1/600: the gain is half of it.
    EXPECT_TRUE(close(gain, 1 + 0.5 / 600, {1e-5, "first order in wall over radius"}));
}

TEST(YieldTorque, PlasticTorqueIsTheIntegralOfTheFlowStress)
{
    const double tau = 600 / std::sqrt(3.0);
    double sum = 0;
    constexpr int n_rings = 2000;
    for (int ring = 0; ring < n_rings; ++ring)
    {
        const double width = 10.0 / n_rings, radius = 20 + (ring + 0.5) * width;
        sum += tau * 2 * pi * radius * radius * width;
    }
    EXPECT_TRUE(close(fully_plastic_torque(hollow60, Megapascal{600}).value.value(), sum,
                      relative(1e-7, sum, "midpoint rule with 2000 rings")));
}

TEST(SleeveShare, FollowsStiffness)
{
    const StiffnessShare share = sleeve_share(sleeve70, bar50).value;
    EXPECT_TRUE(close(share.torsion * 3e6, 2219075.385, printed_decimals(3)));
    EXPECT_TRUE(close(share.bending, 0.7396917951, printed_decimals(10)));
    EXPECT_TRUE(close(share.axial, 0.4897959184, printed_decimals(10)));
    EXPECT_TRUE(close(surface_shear(sleeve70.section, NewtonMillimetre{share.torsion * 3e6}).value.value(), 44.54482372,
                      printed_decimals(8)));
    EXPECT_TRUE(close(surface_shear(bar50.section, NewtonMillimetre{(1 - share.torsion) * 3e6}).value.value(),
                      31.81773123, printed_decimals(8)));
}

TEST(SleeveShare, SoftEndWeldsTakeTorqueOffTheSleeve)
{
    const Allowance of_modulus = relative(1e-7, 0.66, "shear modulus printed to seven digits");
    EXPECT_TRUE(
        close(torsion_share_with_end_welds(sleeve70, bar50, Millimetre{120}, 5e9).value, 0.6591469663, of_modulus));
    EXPECT_TRUE(close(torsion_share_with_end_welds(sleeve70, bar50, Millimetre{120}, 1e30).value,
                      sleeve_share(sleeve70, bar50).value.torsion, round_off(0.74)));
}

}  // namespace
}  // namespace splicewright
