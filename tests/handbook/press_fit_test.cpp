// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/press_fit.h"

#include "cases/problem.h"
#include "tests/handbook/close.h"

namespace splicewright
{
namespace
{

PressFit steel_fit()
{
    PressFit fit;
    fit.diameter = Millimetre{50};
    fit.sleeve_outer_diameter = Millimetre{100};
    fit.interference = Millimetre{0.05};
    fit.bar_modulus = fit.sleeve_modulus = Megapascal{210000};
    return fit;
}

// p = E delta (c^2 - b^2)/(2 b c^2) for one steel and a solid bar.
TEST(PressFit, OneSteelSolidBarMatchesTheClosedForm)
{
    const PressFitStress stress = press_fit_stress(steel_fit()).value;
    EXPECT_TRUE(close(stress.pressure.value(), 78.75, round_off(78.75)));
    EXPECT_TRUE(close(stress.sleeve_hoop_at_bore.value(), 131.25, round_off(131.25)));
    EXPECT_TRUE(close(stress.sleeve_hoop_outside.value(), 52.5, round_off(52.5)));
    EXPECT_TRUE(close(stress.sleeve_von_mises_at_bore.value(), 183.75, round_off(183.75)));
    EXPECT_TRUE(close(stress.bar_hoop_at_surface.value(), -78.75, round_off(78.75)));
    EXPECT_TRUE(close(slip_torque(steel_fit(), Millimetre{60}, 0.12).value.value(), 2226603.793, printed_decimals(3)));
}

// The two radial displacements, from the stresses by Hooke's law, must close the interference.
TEST(PressFit, StressesOfUnlikeHollowPartsCloseTheInterference)
{
    PressFit fit = steel_fit();
    fit.bar_bore = Millimetre{20};
    fit.bar_modulus = Megapascal{70000};
    fit.bar_poisson = 0.33;
    fit.sleeve_poisson = 0.29;
    const PressFitStress stress = press_fit_stress(fit).value;
    const double out =
        25 / 210000.0 * (stress.sleeve_hoop_at_bore.value() - 0.29 * stress.sleeve_radial_at_bore.value());
    const double in = 25 / 70000.0 * (stress.bar_hoop_at_surface.value() - 0.33 * stress.bar_radial_at_surface.value());
    EXPECT_TRUE(close(out - in, 0.025, round_off(0.025)));
    // Balance of half of each ring: the mean hoop force equals pressure times radius. Thick-cylinder hoop stress is
    // A + B/r^2, with A and B from its two ends.
    const auto ring_force = [](double r1, double hoop1, double r2, double hoop2)
    {
        const double B = (hoop1 - hoop2) / (1 / (r1 * r1) - 1 / (r2 * r2));
        const double A = hoop1 - B / (r1 * r1);
        return A * (r2 - r1) + B * (1 / r1 - 1 / r2);
    };
    const double carried = stress.pressure.value() * 25;
    EXPECT_TRUE(close(ring_force(25, stress.sleeve_hoop_at_bore.value(), 50, stress.sleeve_hoop_outside.value()),
                      carried, round_off(carried)));
    EXPECT_TRUE(close(ring_force(10, stress.bar_hoop_at_bore.value(), 25, stress.bar_hoop_at_surface.value()), -carried,
                      round_off(carried)));
}

TEST(PressFit, WithoutInterferenceNothingPresses)
{
    PressFit fit = steel_fit();
    fit.interference = Millimetre{0};
    EXPECT_EQ(press_fit_stress(fit).value.pressure.value(), 0);
    fit.interference = Millimetre{-0.01};
    EXPECT_THROW(press_fit_stress(fit), BrokenPromise);
}

}  // namespace
}  // namespace splicewright
