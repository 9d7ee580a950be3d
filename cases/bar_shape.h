// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "cases/case.h"

namespace splicewright
{

// Lengths along a bar that rules and drawing share, mm from the joint outward.

// Axial length that a fillet takes on the smaller section beside a step.
//   radius                              for a step at least as high as the radius (a quarter circle)
//   sqrt(radius^2 - (radius - step)^2)  for a lower step (the arc ends on the larger section's edge)
double fillet_extent(double radius, double step_height);

// Half of the width of a groove at the surface: the radius, or half the chord when it is shallower.
double groove_half_width(const Groove& groove);

// Where section `number` (from 0) begins and ends, and the part of it that is plain cylinder.
struct SectionSpan
{
    double begin = 0, end = 0;
    double plain_begin = 0, plain_end = 0;  // without the fillets at its ends
};
SectionSpan section_span(const Bar& bar, std::size_t number);

double length_of(const Bar& bar);

// Half of the length beside the joint that the butt weld's surface takes: half of the blend, or the least zone.
double butt_half_length(const Joint& joint);
// The same, or half of the half lap where that is longer.
double joint_half_length(const Joint& joint);

// Distance from the joint to the sleeve's end on that side.
double sleeve_reach(const Sleeve& sleeve, Side side);

// Axial length that the rounding of the toe takes on the bar beyond the weld's leg.
//   radius tan(turn / 2), turn = angle between the bar's surface and the weld's face
double toe_tangent_on_bar(const SleeveWeld& weld);

// Throat of a sleeve weld: the height of the triangle of its legs, and the radius of its middle, mm.
struct WeldThroat
{
    double size = 0, radius = 0;
};
WeldThroat weld_throat(const Case& asked, Side side);

}  // namespace splicewright
