// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "solver/solid_fields.h"

namespace splicewright
{

// The solid model in straight tetrahedra between as few points as show it: all corners, and of the middles of edges
// those where a straight line between the corners would not do. A middle that is left out lies halfway, with the mean
// of their values.
struct ViewSolid
{
    std::vector<int> point;                   // [n] into the fields: the corners, then the middles that are kept
    std::vector<std::array<int, 2>> middle;   // [n middles] the two corners that each stands between
    std::vector<std::array<int, 4>> element;  // corners
    // [n elements] what lies behind face k of `solid_face.h`, two bits each from the lowest: 0 the same part, 1
    // nothing, 2 an unfused face, 3 another part that is one with it (on one side of it only).
    std::vector<std::uint8_t> sides;
    std::vector<std::array<int, 2>> edge;  // outside_edges, between corners

    [[nodiscard]] int corners() const { return static_cast<int>(point.size() - middle.size()); }
};

// share: what a straight line may miss at the middle of an edge, of the largest von Mises stress, of the largest
// movement under any of the loads, and of the largest radius.
ViewSolid view_solid(const SolidFields& fields, double share);

// Rigid movement of the joint taken off: that which fits the points near z = 0 best, or near the end nearest to it.
Eigen::Matrix3Xf seen_from_the_joint(const SolidFields& fields, const Eigen::Matrix3Xf& displacement);

}  // namespace splicewright
