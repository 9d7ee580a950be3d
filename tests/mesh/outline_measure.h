// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "mesh/mesh.h"
#include "mesh/outline.h"

namespace splicewright::sample
{

// Area and first moment about the axis of one region, mm^2 and mm^3, by walking its boundary (arcs exact).
struct Measure
{
    double area = 0, moment = 0;
};
Measure measure_of(const Outline& outline, const OutlineRegion& region);
Measure measure_of(const Mesh& mesh, int region);

// Largest area, mm^2, that can lie between the arcs of a region and the parabolas of the elements on them.
// A parabola through both ends and the middle of an arc of half angle a misses a^5/30 (1 + O(a^2)) R^2 of its segment.
double area_allowance(const Outline& outline, const OutlineRegion& region, const Mesh& mesh);

}  // namespace splicewright::sample
