// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <map>
#include <set>
#include <utility>

#include "mesh/mesh.h"

namespace splicewright
{

// Corner and middle nodes of the three edges of a six-node triangle: first, middle, last.
inline constexpr std::array<std::array<int, 3>, 3> triangle_edges{{{0, 3, 1}, {1, 4, 2}, {2, 5, 0}}};

using EdgeKey = std::pair<int, int>;  // end nodes, the smaller first
EdgeKey edge_key(int a, int b);

// An edge of the mesh with the triangles that have it.
struct EdgeUse
{
    std::array<int, 3> node{};   // first, middle, last as its first triangle walks it
    int triangle = 0, side = 0;  // first triangle
    int n_triangles = 0;
    bool between_regions = false;
};
std::map<EdgeKey, EdgeUse> edge_uses(const Mesh& mesh);

// Edges of the faces that touch without being joined, on both sides.
std::set<EdgeKey> unfused_edges(const Mesh& mesh);

bool on_axis(const Mesh& mesh, const EdgeUse& edge);

}  // namespace splicewright
