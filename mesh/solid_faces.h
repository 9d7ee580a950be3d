// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "mesh/solid_geometry.h"

namespace splicewright
{

// A surface that faces of the solid lie on, with the part of it that is meant.
struct FaceShape
{
    enum class Kind
    {
        revolved,  // of a curve of the section
        plane,     // through `origin`, normal `direction`
        cylinder,  // around the line through `origin` along `direction`
    };
    Kind kind = Kind::revolved;
    std::string name;         // as in the outline; "land", "lap", "lap-corner.S", "butt", "weld-end.N", "plug-edge.N"
    bool unfused = false;     // where two bodies meet on it
    bool is_section = false;  // a fused face that is listed although metal lies on both sides
    OutlinePoint start, end;  // of a revolved curve
    std::optional<OutlinePoint> centre;
    SolidPoint origin, direction;  // direction: unit
    double radius = 0;             // of a cylinder
    // What of the surface is meant, mm.
    double z_low = -1e9, z_high = 1e9, r_low = -1e9, r_high = 1e9, y_low = -1e9, y_high = 1e9;
    std::optional<double> angle;  // of a half plane through the axis, rad
};

// Every surface that a face of the solid can lie on.
std::vector<FaceShape> face_shapes(const SolidGeometry& geometry);

// Distance of a point from the surface; infinite beyond the part that is meant, mm.
double distance_from(const FaceShape& shape, SolidPoint where);

// The nearest point of the surface to a point near it.
SolidPoint projected(const FaceShape& shape, SolidPoint where);

// Middle of an edge whose ends lie on these surfaces: on all of them, and in the middle in between.
SolidPoint middle_on(const std::vector<const FaceShape*>& shapes, SolidPoint a, SolidPoint b);

}  // namespace splicewright
