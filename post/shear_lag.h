// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "post/sourced.h"

namespace splicewright
{

// A bar and a sleeve around it, joined over a length by a thin layer; torque enters the bar at x = 0 and leaves through
// the sleeve at x = length. Bar and sleeve twist as rods, the layer only shears.
struct TubularLap
{
    double bar_stiffness = 0, sleeve_stiffness = 0;  // G J, N*mm^2, above 0
    Millimetre layer_radius, layer_thickness, length;
    Megapascal layer_shear_modulus;
    NewtonMillimetre torque;
};

struct LapState
{
    NewtonMillimetre bar_torque;
    Megapascal layer_shear;
};

// With k^2 = 2 pi r^3 (G_layer/t) (1/GJ_bar + 1/GJ_sleeve), b = GJ_bar/(GJ_bar + GJ_sleeve):
//   T_bar/T = b + [(1-b) sinh k(L-x) - b sinh kx]/sinh kL
//   shear = T k/(2 pi r^2 sinh kL) [(1-b) cosh k(L-x) + b cosh kx]
// Source: [AdamsPeppiatt1977]; derived again from the equilibrium of both rods.
Sourced<LapState> lap_state(const TubularLap& lap, Millimetre x);

}  // namespace splicewright
