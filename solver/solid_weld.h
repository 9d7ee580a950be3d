// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "solver/solid_level.h"

namespace splicewright
{

// Force of the weld on the sleeve of one side, the largest of the brackets, from the harmonics 0 and 1 of the forces
// around the ring: what the meridian model has. Only for a weld that goes all round.
WeldForce solid_weld_force(const Case& asked, const SolidLevel& level, Side side);

// Forces through weld metal that has no notch radius, for each bracket: "plug-edge.N" on the bar; of sleeve welds that
// do not go all round "weld-end.N", the last leg length of the weld, and "throat.S", places a leg length apart along
// the weld, each over one leg length. Forces on the bar or on the sleeve.
std::vector<WeldMetalForce> weld_metal_forces(const Case& asked, const SolidLevel& level, const SolidBracket& bracket);

}  // namespace splicewright
