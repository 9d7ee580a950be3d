// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "post/sourced.h"

namespace splicewright
{

// Residual unbalance of a rigid rotor against a balance quality grade, such as G 16 for drive shafts.

// Offset of the mass centre that the grade permits: grade/speed. Expects both above 0.
// Source: [ISO21940-11], from memory: verify.
Sourced<Millimetre> permissible_eccentricity(double grade_mm_per_s, RadianPerSecond speed);

// The same as an unbalance: eccentricity times mass, tonne*mm; 1 tonne*mm is 1e6 g*mm.
// Source: [ISO21940-11], from memory: verify.
Sourced<double> permissible_unbalance(double grade_mm_per_s, RadianPerSecond speed, Tonne mass);

// The grade, mm/s, that a rotor whose mass centre runs off the axis has: eccentricity times speed; both >= 0.
double balance_grade(Millimetre eccentricity, RadianPerSecond speed);

}  // namespace splicewright
