// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/shear_lag.h"

#include <cmath>
#include <numbers>

#include "cases/problem.h"

// Legend: r radius of the layer mm, T torque N*mm, k decay 1/mm, b share of the bar far inside.

namespace splicewright
{

Sourced<LapState> lap_state(const TubularLap& lap, Millimetre x)
{
    EXPECTS(lap.bar_stiffness > 0 && lap.sleeve_stiffness > 0 && lap.layer_shear_modulus.value() > 0);
    EXPECTS(lap.layer_radius.value() > 0 && lap.layer_thickness.value() > 0);
    EXPECTS(x.value() >= 0 && x <= lap.length && lap.length.value() > 0);
    const double pi = std::numbers::pi, r = lap.layer_radius.value(), T = lap.torque.value();
    const double k = std::sqrt(2 * pi * r * r * r * lap.layer_shear_modulus.value() / lap.layer_thickness.value() *
                               (1 / lap.bar_stiffness + 1 / lap.sleeve_stiffness));
    const double b = lap.bar_stiffness / (lap.bar_stiffness + lap.sleeve_stiffness);
    const double behind = k * x.value(), ahead = k * (lap.length - x).value(), whole = k * lap.length.value();
    LapState state;
    state.bar_torque =
        NewtonMillimetre{T * (b + ((1 - b) * std::sinh(ahead) - b * std::sinh(behind)) / std::sinh(whole))};
    state.layer_shear =
        Megapascal{T * k / (2 * pi * r * r * std::sinh(whole)) * ((1 - b) * std::cosh(ahead) + b * std::cosh(behind))};
    return {state, "Adams & Peppiatt 1977 [AdamsPeppiatt1977]; derived again", Provenance::derived};
}

}  // namespace splicewright
