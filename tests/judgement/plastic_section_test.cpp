// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "post/section_strength.h"

namespace splicewright
{
namespace
{

constexpr double round_off = 1e-12;
constexpr double pi = std::numbers::pi;
const RoundSection solid{Millimetre{30}, Millimetre{0}}, tube{Millimetre{40}, Millimetre{28}};
constexpr Megapascal yield{400};

TEST(PlasticBending, IsTheYieldTimesTheFirstMomentOfBothHalves)
{
    // Midpoint sum of yield |y| dA over the tube in thin strips, 2 (outer chord - inner chord) wide.
    constexpr int strips = 200000;
    double sum = 0;
    for (int i = 0; i < strips; ++i)
    {
        const double y = 20 * (i + 0.5) / strips;
        const double chord = 2 * (std::sqrt(400 - y * y) - std::sqrt(std::max(0.0, 196 - y * y)));
        sum += 2 * yield.value() * y * chord * 20 / strips;
    }
    const double expected = fully_plastic_bending(tube, yield).value.value();
    EXPECT_NEAR(sum, expected, 1e-6 * expected);  // the sum's own error at the chord's steep ends
}

TEST(PlasticBending, OfASolidBarIsSixteenOverThreePiOfFirstYield)
{
    const double ratio = fully_plastic_bending(solid, yield).value / first_yield_bending(solid, yield).value;
    EXPECT_NEAR(ratio, 16 / (3 * pi), round_off);
}

TEST(PlasticUtilisation, IsExactForEachLoadAlone)
{
    const NewtonMillimetre torque = fully_plastic_torque(solid, yield).value;
    EXPECT_NEAR(plastic_utilisation(solid, yield, {torque, {}, {}}).value, 1, round_off);
    EXPECT_NEAR(plastic_utilisation(solid, yield, {{}, fully_plastic_bending(solid, yield).value, {}}).value, 1,
                round_off);
    EXPECT_NEAR(plastic_utilisation(solid, yield, {{}, {}, Newton{-400 * 225 * pi}}).value, 1, round_off);
}

TEST(PlasticUtilisation, OfAThinTubeIsVonMisesOverYield)
{
    constexpr double radius = 50, wall = 0.01, sigma = 120, tau = 150;
    const RoundSection thin{Millimetre{2 * radius + wall}, Millimetre{2 * radius - wall}};
    const SectionLoad load{
        NewtonMillimetre{tau * 2 * pi * radius * radius * wall}, {}, Newton{sigma * 2 * pi * radius * wall}};
    const double expected = std::sqrt(sigma * sigma + 3 * tau * tau) / yield.value();
    EXPECT_NEAR(plastic_utilisation(thin, yield, load).value, expected, 1e-7 * expected);  // (wall/radius)^2
}

}  // namespace
}  // namespace splicewright
