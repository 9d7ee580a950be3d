// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <utility>
#include <vector>

#include "post/drawn_section.h"
#include "post/revolve.h"
#include "solver/solid_fields.h"

namespace splicewright
{

// The solid model as pictures show it: its skin, and what a plane cuts of it. Values are the largest von Mises stress
// over a turn of the bending, MPa. Quadratic faces are drawn in flat triangles, elements cut in flat tetrahedra, both
// through their own nodes.

// normal . x <= offset stays.
struct HalfSpace
{
    Eigen::Vector3d normal{0, 0, 1};  // unit
    double offset = 0;                // mm
};
// A convex part of space; what is shown may have several, which do not overlap.
using Piece = std::vector<HalfSpace>;

// The skin, with normals out of the metal; with `times` the outside alone, moved by so many times its displacement. The
// pieces are those of the body as it was.
ShadedSurface solid_surface(const SolidFields& fields, const std::vector<SolidSkinFace>& skin,
                            const std::vector<Piece>& pieces, double times = 0);

using SpaceSegment = std::pair<Eigen::Vector3d, Eigen::Vector3d>;

// Where a plane cuts the metal behind it, as far as it lies in one of the pieces; seen from the side of its normal.
struct SolidCut
{
    ShadedSurface surface;
    std::vector<SpaceSegment> outline, unfused, elements;  // elements: edges of the mesh
};
SolidCut solid_cut(const SolidFields& fields, const std::vector<SolidSkinFace>& skin, const HalfSpace& plane,
                   const std::vector<Piece>& pieces);

// The cut by the half plane at an angle around the axis, in its z and r. Vertices carry the worst stress only.
struct SolidSection
{
    DrawnSection section;
    std::vector<Segment> outlines, unfused, elements;
    Window whole;
};
SolidSection solid_section(const SolidFields& fields, const std::vector<SolidSkinFace>& skin, double around_rad);

// The angle of a half plane through a place, turned a little into the metal there: faces of the mesh that end in the
// plane, as that of a weld does, would be cut in themselves.
constexpr double beside_faces_rad = 0.004;
double angle_in_metal(const SolidFields& fields, const Eigen::Vector3d& place);

// Two corners of a body, mm.
struct SolidExtent
{
    double left = 0, right = 0, radius = 0;
};
SolidExtent solid_extent(const SolidFields& fields);

}  // namespace splicewright
