// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <map>
#include <string>
#include <vector>

#include "mesh/outline.h"

namespace splicewright
{

// A place where the stress has no limit, and the element size there.
struct FineSpot
{
    OutlinePoint place;
    double size = 0;  // mm
};

// How fine a mesh is asked for.
struct MeshSize
{
    double elements_per_quarter_turn = 8;  // of a notch arc
    double tangent_factor = 0.4;   // element size where a notch arc leaves the plain surface, over that on the arc
    double growth = 0.4;           // element size gained per mm of distance from a notch
    double sections_per_wall = 2;  // elements across the thinnest wall nearby
    double elements_per_tip_reach = 24;   // of a sharp crack tip, see tip_reach
    std::map<std::string, double> finer;  // by curve name: factor on elements_per_quarter_turn
    std::vector<FineSpot> spots;
};

// Edge length of elements, mm, at a point of the section: from each notch arc it grows linearly with distance,
// capped by a fraction of the wall of the region.
class SizeField
{
public:
    SizeField(const Outline& outline, const MeshSize& size);
    [[nodiscard]] double at(OutlinePoint where) const;  // mm

private:
    struct Arc
    {
        OutlinePoint centre, start, end;
        double radius = 0, size = 0;
    };
    struct Wall  // a region's band of radii
    {
        double z_low = 0, z_high = 0, r_low = 0, r_high = 0, size = 0;
    };
    std::vector<Arc> arcs_;
    std::vector<FineSpot> spots_;  // ends of notch arcs, crack tips and those asked for
    std::vector<Wall> walls_;
    double growth_ = 0;
};

}  // namespace splicewright
