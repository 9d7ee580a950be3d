// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_body.h"

#include <fmt/format.h>

#include <Eigen/Cholesky>
#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "cases/problem.h"

namespace splicewright
{

namespace
{

// Loads on a free body must balance to this part of the sum of their sizes.
constexpr double balance_within = 1e-7;

std::int32_t layout_node(const SolidLayout& layout, std::int32_t mesh_node)
{
    EXPECTS(mesh_node >= 0 && static_cast<std::size_t>(mesh_node) < layout.node_of.size());
    const std::int32_t node = layout.node_of[static_cast<std::size_t>(mesh_node)];
    EXPECTS(node >= 0);
    return node;
}

std::int32_t link_slot(const SolidLayout& layout, std::int32_t node)
{
    const auto found = std::ranges::lower_bound(layout.linked, node);
    EXPECTS(found != layout.linked.end() && *found == node);
    return static_cast<std::int32_t>(layout.first_link_slot + (found - layout.linked.begin()));
}

// Sets of nodes that hang together.
class Pieces
{
public:
    explicit Pieces(std::size_t n) : above_(n) { std::iota(above_.begin(), above_.end(), 0); }
    std::int32_t of(std::int32_t node)
    {
        while (at(node) != node) node = at(node) = at(at(node));
        return node;
    }
    void join(std::int32_t a, std::int32_t b) { at(of(std::max(of(a), of(b)))) = std::min(of(a), of(b)); }

private:
    std::int32_t& at(std::int32_t node) { return above_[static_cast<std::size_t>(node)]; }
    std::vector<std::int32_t> above_;
};

// The six rigid motions about the centre of the nodes, each a column of 3 n numbers, as coefficients by least squares.
struct RigidFit
{
    Eigen::Vector3d centre{0, 0, 0};
    Eigen::Vector3d shift{0, 0, 0}, turn{0, 0, 0};
    [[nodiscard]] Eigen::Vector3d at(const Eigen::Vector3d& p) const { return shift + turn.cross(p - centre); }
};

RigidFit rigid_fit(const Eigen::Matrix3Xd& places, const Eigen::Matrix3Xd& values)
{
    RigidFit fit;
    fit.centre = places.rowwise().mean();
    fit.shift = values.rowwise().mean();
    Eigen::Matrix3d inertia = Eigen::Matrix3d::Zero();
    Eigen::Vector3d moment = Eigen::Vector3d::Zero();
    for (Eigen::Index i = 0; i < places.cols(); ++i)
    {
        const Eigen::Vector3d arm = places.col(i) - fit.centre;
        inertia += arm.squaredNorm() * Eigen::Matrix3d::Identity() - arm * arm.transpose();
        moment += arm.cross(values.col(i));
    }
    fit.turn = inertia.ldlt().solve(moment);
    return fit;
}

}  // namespace

std::vector<HeldNode> held_nodes(const SolidLayout& layout, const std::vector<HeldFreedom>& held)
{
    std::map<std::int32_t, int> freedoms;
    for (const HeldFreedom& h : held)
    {
        EXPECTS(h.axis >= 0 && h.axis < 3);
        freedoms[layout_node(layout, h.node)] |= 1 << h.axis;
    }
    std::vector<HeldNode> nodes;
    for (const auto& [node, which] : freedoms) nodes.push_back({node, which});
    return nodes;
}

std::vector<LayoutSpring> layout_springs(const SolidLayout& layout, const std::vector<PairSpring>& springs)
{
    std::vector<LayoutSpring> result;
    for (const PairSpring& spring : springs)
    {
        EXPECTS(spring.stiffness >= 0 && std::abs(spring.direction.norm() - 1) < 1e-6);
        LayoutSpring s;
        s.first = layout_node(layout, spring.first);
        s.first_slot = link_slot(layout, s.first);
        if (spring.second >= 0)
        {
            s.second = layout_node(layout, spring.second);
            s.second_slot = link_slot(layout, s.second);
        }
        s.direction = {spring.direction.x(), spring.direction.y(), spring.direction.z()};
        s.stiffness = spring.stiffness;
        result.push_back(s);
    }
    return result;
}

std::vector<std::int32_t> linked_nodes(const SolidMesh& mesh, const SolidBody& body)
{
    std::vector<std::int32_t> linked = body.linkable;
    for (const PairSpring& spring : body.springs)
    {
        linked.push_back(spring.first);
        if (spring.second >= 0) linked.push_back(spring.second);
    }
    for (const auto& [name, pairs] : mesh.pairs)
        for (const SolidMesh::NodePair& pair : pairs)
        {
            linked.push_back(pair.first);
            linked.push_back(pair.second);
        }
    return linked;
}

bool is_free(const SolidBody& body)
{
    return body.held.empty() &&
           std::ranges::none_of(body.springs, [](const PairSpring& spring) { return spring.second < 0; });
}

void refuse_loose_parts(const SolidMesh& mesh, const SolidLayout& layout, const SolidBody& body)
{
    Pieces pieces(static_cast<std::size_t>(layout.n_nodes));
    const auto node_of = [&](std::int32_t node) { return layout.node_of[static_cast<std::size_t>(node)]; };
    for (const auto& element : mesh.elements)
        for (std::size_t n = 1; n < 10; ++n) pieces.join(node_of(element[0]), node_of(element[n]));
    std::vector<char> stands(static_cast<std::size_t>(layout.n_nodes), 0);
    for (const PairSpring& spring : body.springs)
        if (spring.second >= 0) pieces.join(node_of(spring.first), node_of(spring.second));
    for (const PairSpring& spring : body.springs)
        if (spring.second < 0) stands[static_cast<std::size_t>(pieces.of(node_of(spring.first)))] = 1;
    for (const HeldFreedom& held : body.held) stands[static_cast<std::size_t>(pieces.of(node_of(held.node)))] = 1;
    if (is_free(body)) stands[static_cast<std::size_t>(pieces.of(node_of(mesh.elements[0][0])))] = 1;
    for (const auto& element : mesh.elements)
    {
        if (stands[static_cast<std::size_t>(pieces.of(node_of(element[0])))] != 0) continue;
        const auto& p = mesh.nodes[static_cast<std::size_t>(element[0])];
        throw CannotCompute(
            {"", 0, 0, "solid model", "",
             fmt::format("the part at ({:.4g}, {:.4g}, {:.4g}) mm is neither held nor joined to the rest", p[0], p[1],
                         p[2]),
             "join it by a weld or a contact, or leave it out"});
    }
}

Resultant resultant_of(const Eigen::Matrix3Xd& places, const Eigen::Matrix3Xd& forces)
{
    Resultant sum;
    for (Eigen::Index i = 0; i < places.cols(); ++i)
    {
        sum.force += forces.col(i);
        sum.moment += Eigen::Vector3d(places.col(i)).cross(Eigen::Vector3d(forces.col(i)));
    }
    return sum;
}

Eigen::Matrix3Xd balanced(const Eigen::Matrix3Xd& places, const Eigen::Matrix3Xd& forces)
{
    const RigidFit left = rigid_fit(places, forces);
    const Eigen::Matrix3Xd arms = places.colwise() - left.centre;
    const Resultant missing = resultant_of(arms, forces);
    const double sizes = forces.colwise().norm().sum();
    const double moments = arms.colwise().norm().dot(forces.colwise().norm());
    if (missing.force.norm() > balance_within * sizes || missing.moment.norm() > balance_within * moments)
        throw CannotCompute({"", 0, 0, "solid model",
                             fmt::format("{:.3g} N, {:.3g} N mm", missing.force.norm(), missing.moment.norm()),
                             "the loads on a body that nothing holds must balance",
                             "hold the body, or add the loads that are missing"});
    Eigen::Matrix3Xd result = forces;
    for (Eigen::Index i = 0; i < places.cols(); ++i) result.col(i) -= left.at(places.col(i));
    return result;
}

Eigen::Matrix3Xd without_rigid_motion(const Eigen::Matrix3Xd& places, const Eigen::Matrix3Xd& displacement)
{
    const RigidFit motion = rigid_fit(places, displacement);
    Eigen::Matrix3Xd result = displacement;
    for (Eigen::Index i = 0; i < places.cols(); ++i) result.col(i) -= motion.at(places.col(i));
    return result;
}

}  // namespace splicewright
