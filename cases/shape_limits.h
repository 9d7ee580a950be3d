// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "cases/quantity.h"

namespace splicewright
{

// Diameters at the joint that differ by less count as equal: no blend is made.
constexpr Millimetre equal_diameters{0.02};

// Lengths that differ by less are the same; conversion between inches and millimetres rounds in the 13th digit.
constexpr Millimetre same_length{1e-6};

// Radius of the fictitious notches at roots and at the land edge, which need room in the metal.
// Source: [Fricke2012] effective notch stress, reference radius 1 mm for walls of 5 mm and more.
constexpr Millimetre reference_notch_radius{1.0};
constexpr Millimetre small_notch_radius{0.05};  // of the same method for walls below 5 mm

// A press of 0.2 % of the diameter strains most steels to their yield. Derived: strain = interference / diameter.
constexpr double greatest_press_share = 0.002;

// Depth of a fused ring that leaves room for the notch at the land's edge.
constexpr Millimetre least_penetration{2.5};

// Half of the length beside the joint that is drawn as the butt weld's surface when the blend is shorter.
constexpr Millimetre least_butt_zone{2.0};

}  // namespace splicewright
