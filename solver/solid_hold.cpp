// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_hold.h"

#include <Eigen/SVD>
#include <algorithm>
#include <map>
#include <numeric>

namespace splicewright
{

namespace
{

constexpr double same_motion = 1e-6;  // singular value, relative, below which two pairs hold the same motion

// [3 nodes] values of the nodes of a group.
Eigen::VectorXd gathered(const std::vector<std::int32_t>& nodes, const double* values)
{
    Eigen::VectorXd result(3 * static_cast<Eigen::Index>(nodes.size()));
    for (std::size_t i = 0; i < nodes.size(); ++i)
        for (int a = 0; a < 3; ++a)
            result(3 * static_cast<Eigen::Index>(i) + a) = values[node_stride * std::int64_t{nodes[i]} + a];
    return result;
}

void add(const std::vector<std::int32_t>& nodes, const Eigen::VectorXd& what, double* values)
{
    for (std::size_t i = 0; i < nodes.size(); ++i)
        for (int a = 0; a < 3; ++a)
            values[node_stride * std::int64_t{nodes[i]} + a] += what(3 * static_cast<Eigen::Index>(i) + a);
}

// Groups of pairs that share nodes, as indices of pairs.
std::vector<std::vector<std::size_t>> pairs_together(const SolidLayout& layout, const std::vector<HeldPair>& pairs)
{
    std::vector<std::size_t> above(pairs.size());
    std::iota(above.begin(), above.end(), std::size_t{0});
    const auto top = [&](std::size_t i)
    {
        while (above[i] != i) i = above[i] = above[above[i]];
        return i;
    };
    std::map<std::int32_t, std::size_t> first_with;
    for (std::size_t i = 0; i < pairs.size(); ++i)
        for (const std::int32_t node : {pairs[i].first, pairs[i].second})
        {
            const auto [at, is_new] = first_with.try_emplace(layout.node_of[static_cast<std::size_t>(node)], i);
            if (!is_new) above[std::max(top(i), top(at->second))] = std::min(top(i), top(at->second));
        }
    std::map<std::size_t, std::vector<std::size_t>> groups;
    for (std::size_t i = 0; i < pairs.size(); ++i) groups[top(i)].push_back(i);
    std::vector<std::vector<std::size_t>> result;
    result.reserve(groups.size());
    for (auto& [first, group] : groups) result.push_back(std::move(group));
    return result;
}

int held_freedoms(const std::vector<HeldNode>& held, std::int32_t node)
{
    const auto found = std::ranges::lower_bound(held, node, {}, &HeldNode::node);
    return found != held.end() && found->node == node ? found->freedoms : 0;
}

}  // namespace

SolidHold::SolidHold(const SolidLayout& layout, const std::vector<HeldPair>& pairs, const std::vector<HeldNode>& held)
    : n_pairs_(pairs.size())
{
    for (std::vector<std::size_t>& together : pairs_together(layout, pairs))
    {
        Group group;
        for (const std::size_t i : together)
            for (const std::int32_t mesh_node : {pairs[i].first, pairs[i].second})
            {
                const std::int32_t node = layout.node_of[static_cast<std::size_t>(mesh_node)];
                if (std::ranges::find(group.nodes, node) == group.nodes.end()) group.nodes.push_back(node);
            }
        const auto n = static_cast<Eigen::Index>(together.size());
        group.all_rows.setZero(n, 3 * static_cast<Eigen::Index>(group.nodes.size()));
        group.openings.resize(n);
        for (Eigen::Index k = 0; k < n; ++k)
        {
            const HeldPair& pair = pairs[together[static_cast<std::size_t>(k)]];
            const auto put = [&](std::int32_t mesh_node, const Eigen::Vector3d& direction)
            {
                const auto at = std::ranges::find(group.nodes, layout.node_of[static_cast<std::size_t>(mesh_node)]);
                group.all_rows.row(k).segment<3>(3 * (at - group.nodes.begin())) += direction.transpose();
            };
            put(pair.second, pair.direction);
            put(pair.first, -pair.direction);
            group.openings(k) = pair.opening;
        }
        group.rows = group.all_rows;
        for (std::size_t i = 0; i < group.nodes.size(); ++i)
            for (int a = 0; a < 3; ++a)
                if (((held_freedoms(held, group.nodes[i]) >> a) & 1) != 0)
                    group.rows.col(3 * static_cast<Eigen::Index>(i) + a).setZero();
        Eigen::JacobiSVD<Eigen::MatrixXd> svd(group.rows, Eigen::ComputeThinU | Eigen::ComputeThinV);
        svd.setThreshold(same_motion);
        if (svd.singularValues()(0) < same_motion) continue;
        const Eigen::Index rank = svd.rank();
        group.basis = svd.matrixV().leftCols(rank);
        group.inverse = group.basis * svd.singularValues().head(rank).cwiseInverse().asDiagonal() *
                        svd.matrixU().leftCols(rank).transpose();
        group.pairs = std::move(together);
        groups_.push_back(std::move(group));
    }
}

void SolidHold::project(double* values) const
{
    for (const Group& group : groups_)
    {
        const Eigen::VectorXd here = gathered(group.nodes, values);
        add(group.nodes, -group.basis * (group.basis.transpose() * here), values);
    }
}

void SolidHold::open(double* u, bool with_openings) const
{
    for (const Group& group : groups_)
    {
        Eigen::VectorXd missing = -group.all_rows * gathered(group.nodes, u);
        if (with_openings) missing += group.openings;
        add(group.nodes, group.inverse * missing, u);
    }
}

std::vector<double> SolidHold::forces(const double* residual) const
{
    std::vector<double> result(n_pairs_, 0.0);
    for (const Group& group : groups_)
    {
        const Eigen::VectorXd force = -group.inverse.transpose() * gathered(group.nodes, residual);
        for (std::size_t k = 0; k < group.pairs.size(); ++k)
            result[group.pairs[k]] = force(static_cast<Eigen::Index>(k));
    }
    return result;
}

}  // namespace splicewright
