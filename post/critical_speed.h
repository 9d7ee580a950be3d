// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/section_strength.h"
#include "post/sourced.h"

namespace splicewright
{

// One length of a rotor between two bearings.
struct RotorLength
{
    RoundSection section;
    Millimetre length;
    Megapascal elastic_modulus;
    double density = 0;  // tonne/mm^3; 0: stiff but massless
};

struct RotorMass
{
    Millimetre at;  // from the left bearing
    Tonne mass;
};

// First bending critical speed of a rotor simply supported at both ends: first natural frequency of a thin beam.
// Cubic beam elements with consistent mass, and one more break at each mass; exact to 1e-5 with 16 elements in all.
// Left out: shear and rotary inertia (lower it by (pi d/L)^2/4 or so), gyroscopic stiffening (raises it), soft
// bearings and joints (lower it). Expects lengths and moduli above 0 and some mass.
// Source: [Timoshenko1955] article on whirling of shafts; the elements: theory, Rayleigh-Ritz with cubic shapes.
Sourced<RadianPerSecond> first_critical_speed(const std::vector<RotorLength>& rotor,
                                              const std::vector<RotorMass>& masses, int elements_per_length = 16);

// Lower bound from the critical speeds of the parts, each alone: 1/w^2 = sum 1/w_i^2.
// Source: [Shigley2011] sec. 7-6, Dunkerley.
RadianPerSecond combined_critical_speed(const std::vector<RadianPerSecond>& parts);

}  // namespace splicewright
