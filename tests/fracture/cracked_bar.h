// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "mesh/size_field.h"
#include "solver/stress_intensity.h"
#include "solver/tip_integral.h"

namespace splicewright::sample
{

constexpr ElasticConstants crack_steel{210000, 0.3};

// Plain bar of radius b with a crack at z = 0, half length given: its two halves are fused only outside radius a (an
// internal, penny-shaped crack), or only inside it (an external ring crack). Tip "land-edge".
enum class RingCrack
{
    internal,
    external,
};
CrackedSection cracked_bar(RingCrack crack, double a, double b, double half_length);

// Bar of radius R inside a tube of outer radius D, one body for z > 0 and separate for z < 0 (slit at r = R), where
// only the bar is loaded. Tip "root.right" looks to z > 0.
CrackedSection slit_bar(double R, double D, double half_length);

// The tip of such a section, for tip_integral.
CrackTip tip_of(const CrackedSection& section);

// Elements on the reach of the tip, gently growing away from it.
MeshSize fine_at_tip(double elements);

// Uniform shear stress of 1 MPa across the axis (stress xz) on all outer surfaces of a bar with an internal crack:
// harmonic 1, where the right half moves to x > 0.
UnitSolution uniform_shear(const Mesh& mesh, const std::vector<ElasticConstants>& steel);

}  // namespace splicewright::sample
