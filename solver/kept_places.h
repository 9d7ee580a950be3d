// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <optional>

#include "solver/surface_stress.h"

namespace splicewright
{

// Distance from where a held slit begins, mm: nearer the stress has no limit, so it is no number of the shaft but one
// of the mesh. Judgement: the reference notch radius.
constexpr double clear_of_held_slit = 1;

// Places of one chain without those at the outer ends of a butt zone: outermost z that counts, mm from the joint,
// [left, right].
SurfacePlaces clear_places(const SurfacePlaces& places, const std::array<double, 2>& outermost);

// Saint-Venant: what a notch or an end disturbs has died out this many diameters away.
constexpr double undisturbed_diameters = 0.6;

// Length at both ends of a plain stretch that does not count, mm: that many diameters, and never all of it. Nothing for
// a stretch too short to be a plain bar.
std::optional<double> end_margin(double length, double diameter, double free_of_ends);

// Places of one chain without those nearer to its ends than `free_of_ends` local diameters; none of a short chain. The
// stretch that is left begins and ends at places of its own, wherever the mesh has its.
SurfacePlaces kept_places(const SurfacePlaces& places, double free_of_ends);

}  // namespace splicewright
