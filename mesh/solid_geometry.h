// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"
#include "mesh/outline.h"

namespace splicewright
{

// The solid before meshing: what of it is a body of revolution, as a meridian section swept around the axis, and what
// is not. Axes: z along the shaft, joint at z = 0, y = 0 the cut plane of the half lap; angles from x towards y.
//
//          y
//          ^      left bar, its tongue
//   _______|_______________________
//          |                       | land (end of the tongue)
//          |                       (  lap-corner.right: rounded, re-entrant in the right bar
//   -------+-----------------------------> z      the lap: y = 0, |z| < h/2, unfused where r < land radius
//      )                                            lap-corner.left: re-entrant in the left bar
//      | land       right bar, its tongue
//   ___|___________________________

struct SolidPoint
{
    double x = 0, y = 0, z = 0;
};

// How far around the axis a region of the section is swept.
struct Sweep
{
    double start = 0;        // rad
    double extent = 0;       // rad; full_turn: a closed ring
    int weld_end_after = 0;  // number N of the site weld-end.N at its end, N - 1 at its start; 0: none
};
constexpr double full_turn = 2 * std::numbers::pi;

// A half lap whose faces are not fused throughout.
struct LapShape
{
    double half_length = 0, corner_radius = 0;
    double fused_from = 0;  // radius from which the faces are fused; beyond the bars: nowhere
    double outer = 0;       // radius beyond both bars
};

// A round hole of the sleeve with weld metal in it, its axis radial.
struct PlugShape
{
    double z = 0, angle = 0, radius = 0;
    double bar_radius = 0;      // where the weld metal stands
    double outer = 0;           // radius beyond the sleeve
    std::optional<double> top;  // radius up to which it is filled; absent: flush with the sleeve
    std::string sleeve, name;   // region that it lies in, site "plug-edge.N"
};

// As built: the right bar out of line, the outside of the sleeve still straight and in line with the left bar.
// Every point moves across the axis, by the whole way inside the bars and by less in the sleeve's wall.
struct OutOfLine
{
    double offset = 0, tilt = 0, angle = 0;  // mm, rad, rad
    double blend_half = 0;                   // |z| over which offset and tilt come in
    double sleeve_end = 0;                   // z of the weld's toe, 0: no sleeve
    double bar_radius = 0, sleeve_radius = 0;
    [[nodiscard]] SolidPoint moved(SolidPoint straight) const;
};

struct SolidGeometry
{
    Outline section;              // in the half plane of z and r; regions named after the metal that they are made of
    std::vector<Sweep> sweep;     // of each region of the section
    std::optional<LapShape> lap;  // then the region "bars" is parted into the two bars
    std::vector<PlugShape> plugs;
    std::optional<OutOfLine> out_of_line;
    std::vector<std::string> regions;  // names, for SolidMesh::regions: "bar.S", "sleeve.S", "fillet.S", "plug"
    double least_length = 0;           // mm, shorter edges of the section were closed up
};

// Pure function of the case; every valid case has one.
// What the solid does not show of a scenario stands in section.absent_sites with its reason.
SolidGeometry solid_geometry(const Case& asked, const Scenario& scenario);

// The region that a point inside the solid belongs to; -1 outside. Points on a face between two regions: either.
int region_at(const SolidGeometry& geometry, SolidPoint where);

// Of the half lap: whether a point of the bars lies on the left bar's side.
bool is_left_of_lap(const LapShape& lap, SolidPoint where);

// Distance of a point from the stepped face of the lap, its ends not ended, mm.
double distance_from_lap(const LapShape& lap, SolidPoint where);

}  // namespace splicewright
