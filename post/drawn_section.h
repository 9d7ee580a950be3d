// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "post/sheet.h"
#include "solver/stress_field.h"

namespace splicewright
{

using StressColumn = Eigen::Matrix<double, 6, 1>;  // rr tt zz rt tz rz, MPa

// A point of the meridian section as pictures show it.
struct DrawnVertex
{
    Eigen::Vector2d place;  // [z, r] mm
    StressColumn steady;    // MPa, does not depend on theta
    StressColumn bending;   // MPa, amplitude over theta
    double worst = 0;       // MPa, greatest von Mises stress over theta
};

// The meridian section in straight triangles: four for each six-node triangle, through its own nodes, so that every
// value shown is a value of the field.
struct DrawnSection
{
    std::vector<DrawnVertex> vertex;
    std::vector<std::array<int, 3>> triangle;  // counter-clockwise in (z, r)
    std::vector<std::array<int, 2>> skin;      // free outer edges, material on the left; without axis and unfused faces
};

// A rectangle of the meridian plane, mm. `left` to `right` along z, `bottom` to `top` along r.
using Window = Box;

// Angles at which the worst von Mises stress is sought, all around: torsion and bending shears add on one side only.
constexpr int n_worst_angles = 36;

double von_mises_at(const DrawnVertex& vertex, double theta_rad);
DrawnSection drawn_section(const SolvedFields& fields, const CombinedLoad& load);
// The part inside the window; cut edges at its left and right join the skin.
DrawnSection clipped(const DrawnSection& section, const Window& window);

// Straight pieces of the meridian plane, mm.
using Segment = std::pair<Eigen::Vector2d, Eigen::Vector2d>;
std::vector<Segment> region_outlines(const Mesh& mesh);  // free edges and edges between regions
std::vector<Segment> unfused_faces(const Mesh& mesh);    // slit, land: one of each pair of coincident faces
std::vector<Segment> mesh_edges(const Mesh& mesh);
std::vector<Segment> clipped(const std::vector<Segment>& segments, const Window& window);

Window extent(const Mesh& mesh);

struct FieldPeak
{
    Eigen::Vector2d place{0, 0};  // [z, r] mm
    double value = 0;             // MPa
};
// The greatest worst-angle von Mises stress of the section; of places within a thousandth of it the one nearest to
// `near`, since a plain bar has its peak all along.
FieldPeak peak(const DrawnSection& section, const Eigen::Vector2d& near);

}  // namespace splicewright
