// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <cstdint>
#include <vector>

#include "solver/solid_operator.h"
#include "solver/solid_system.h"

namespace splicewright
{

// Pairs of nodes whose distance along a direction is given: B u = openings, one row for each pair, +direction at
// `second` and -direction at `first`. The iteration stays where B u is right because all that it adds is projected to
// B u = 0; one preconditioner serves any set of pairs. Pairs that share nodes form one small group.
class SolidHold
{
public:
    SolidHold() = default;
    SolidHold(const SolidLayout& layout, const std::vector<HeldPair>& pairs, const std::vector<HeldNode>& held);

    [[nodiscard]] bool empty() const { return groups_.empty(); }

    // The part of the node values that moves no pair, in place. Values: [n_nodes, node_stride].
    void project(double* values) const;
    // Changes u by the least so that all pairs have their openings, or none where they are not wanted.
    void open(double* u, bool with_openings) const;
    // Forces at the pairs, along the direction on `second`, from what they leave of f - K u: [n pairs] N. The smallest
    // ones where pairs hold the same motion twice.
    [[nodiscard]] std::vector<double> forces(const double* residual) const;

private:
    struct Group
    {
        std::vector<std::int32_t> nodes;  // of the layout
        std::vector<std::size_t> pairs;
        Eigen::MatrixXd rows;     // [pairs, 3 nodes] B over the free freedoms
        Eigen::MatrixXd inverse;  // [3 nodes, pairs] its pseudo-inverse
        Eigen::MatrixXd basis;    // [3 nodes, rank] orthonormal, of what the pairs hold
        Eigen::VectorXd openings;
        Eigen::MatrixXd all_rows;  // [pairs, 3 nodes] B with the held freedoms
    };
    std::vector<Group> groups_;
    std::size_t n_pairs_ = 0;
};

}  // namespace splicewright
