// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "cases/case.h"
#include "mesh/outline.h"
#include "mesh/solid_geometry.h"

namespace splicewright
{

// Steps from the outline of the meridian model to the section that is swept into a solid.

constexpr const char* joined_bars = "bars";  // name of both bars of a half lap, drawn as one

// Both bars as one region; the curves between them go.
void join_bars(Outline& section);

// Curves too short for tetrahedra beside a bar of that radius are closed up, so that their ends meet; sites that
// vanish with them are told in absent_sites. Returns the length below which that was done, mm.
double close_up_short_curves(Outline& section);

// Parts the fillet of one side from what stays where the weld is open: shallow wedges of bar and sleeve under the weld
// belong to the weld metal where there is one (its penetration), and to bar and sleeve where there is none. Without
// them the metal under the rounded toe would run out to nothing.
void open_weld(SolidGeometry& geometry, const SleeveWeld& weld, Side side);

// Whether a point of the half plane lies in a region. Exact but for round-off.
bool is_inside(const Outline& section, const OutlineRegion& region, OutlinePoint where);

}  // namespace splicewright
