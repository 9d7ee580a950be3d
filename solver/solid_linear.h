// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <cstdint>
#include <vector>

#include "solver/solid_blocks.h"
#include "solver/solid_operator.h"

namespace splicewright
{

// The same body with linear tetrahedra over the corner nodes: the level below the quadratic one.
// The displacement of a middle node is there the mean of its two corners.
struct LinearLevel
{
    std::int64_t n_nodes = 0;
    std::vector<std::array<std::int32_t, 2>> parents;  // [n layout nodes] of a corner twice itself
    std::vector<std::int64_t> child_starts;            // [n_nodes + 1] into children
    std::vector<std::int32_t> children;                // layout nodes: first the corner, then the middles of its edges
    std::vector<std::int32_t> corners;                 // [n_nodes] layout node
    std::vector<int> held;                             // [n_nodes] held freedoms, as HeldNode::freedoms
    Eigen::Matrix3Xd places;                           // [3, n_nodes] mm
    BlockMatrix<double, 3, 3> K;                       // N/mm; held freedoms have a diagonal entry only
};

LinearLevel linear_level(SolidTeam& team, const SolidMesh& mesh, const SolidLayout& layout,
                         const std::vector<ElasticConstants>& steel, const std::vector<LayoutSpring>& springs,
                         const std::vector<HeldNode>& held);

}  // namespace splicewright
