// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/shear_lag.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace splicewright
{
namespace
{

const TubularLap lap{
    4e10, 9e10, Millimetre{20}, Millimetre{0.3}, Millimetre{80}, Megapascal{900}, NewtonMillimetre{1e6}};

TEST(ShearLag, BringsTheWholeTorqueFromTheBarToTheSleeve)
{
    EXPECT_NEAR(lap_state(lap, Millimetre{0}).value.bar_torque.value(), 1e6, 1e-6);  // round-off
    EXPECT_NEAR(lap_state(lap, Millimetre{80}).value.bar_torque.value(), 0, 1e-6);
}

// dT_bar/dx = -2 pi r^2 shear, by central differences of step 0.01 mm.
TEST(ShearLag, LayerTakesWhatTheBarLoses)
{
    for (const double x : {5.0, 30.0, 70.0})
    {
        const double slope = (lap_state(lap, Millimetre{x + 0.01}).value.bar_torque -
                              lap_state(lap, Millimetre{x - 0.01}).value.bar_torque)
                                 .value() /
                             0.02;
        const double shear = lap_state(lap, Millimetre{x}).value.layer_shear.value();
        EXPECT_NEAR(-slope, 2 * std::numbers::pi * 400 * shear, 1e-5 * std::abs(slope));
    }
}

// The layer's shear is its modulus times the slip over its thickness, and the slip grows with the difference of twist.
TEST(ShearLag, SlipFollowsTheTwistOfBothRods)
{
    const double x = 30, h = 0.01;
    const auto shear = [](double at) { return lap_state(lap, Millimetre{at}).value.layer_shear.value(); };
    const double bar = lap_state(lap, Millimetre{x}).value.bar_torque.value();
    const double twist_difference = (1e6 - bar) / 9e10 - bar / 4e10;
    EXPECT_NEAR((shear(x + h) - shear(x - h)) / (2 * h), 900 / 0.3 * 20 * twist_difference, 1e-4 * std::abs(shear(x)));
}

}  // namespace
}  // namespace splicewright
