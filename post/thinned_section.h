// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "solver/stress_field.h"

namespace splicewright
{

// The meridian section in straight triangles between as few nodes as show it: all corners, and of the middles of edges
// those where a straight line between the corners would not do.
struct ThinnedSection
{
    std::vector<int> node;                     // [n] region node
    std::vector<std::array<int, 3>> triangle;  // into node, counter-clockwise in (z, r)
    std::vector<int> region;                   // [n_triangles] mesh region
    // Edges into node, material of their triangle on the left.
    std::vector<std::array<int, 2>> skin;     // all free ones but the axis, with both sides of unfused faces
    std::vector<std::array<int, 2>> outline;  // free edges and edges between regions, each once; no unfused faces
    std::vector<std::array<int, 2>> unfused;  // one side of each unfused face
};

// What a straight line may miss at the middle of an edge, as a share: of the peak von Mises stress `peak` (MPa) under
// the loads together, and of the largest displacement of each load.
struct Thinning
{
    double share = 0;
    double peak = 0;
};

ThinnedSection thinned(const SolvedFields& fields, const CombinedLoad& load, const Thinning& allowed);

}  // namespace splicewright
