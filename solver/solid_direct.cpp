// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_direct.h"

#include <fmt/format.h>

#include <Eigen/CholmodSupport>
#include <Eigen/Geometry>
#include <chrono>
#include <ctime>

#include "cases/problem.h"
#include "solver/one_thread.h"
#include "solver/solid_body.h"
#include "solver/solid_coarse_factor.h"
#include "solver/solid_element.h"

namespace splicewright
{

namespace
{

constexpr double largest_residual = 1e-8;

using Sparse = Eigen::SparseMatrix<double>;

// Stiffness without supports; freedoms 3 node + axis of the layout.
Sparse assembled(const SolidMesh& mesh, const SolidLayout& layout, const SolidBody& body)
{
    std::vector<Eigen::Triplet<double>> entries;
    entries.reserve(mesh.elements.size() * 900);
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
    {
        const auto K = solid_stiffness(body.steel[static_cast<std::size_t>(mesh.regions[e])], nodes_of(mesh, e));
        const auto freedom = [&](int i)
        {
            const auto node = static_cast<std::size_t>(mesh.elements[e][static_cast<std::size_t>(i / 3)]);
            return 3 * layout.node_of[node] + i % 3;
        };
        for (int i = 0; i < 30; ++i)
            for (int j = 0; j < 30; ++j) entries.emplace_back(freedom(i), freedom(j), K(i, j));
    }
    for (const LayoutSpring& spring : layout_springs(layout, body.springs))
    {
        const Eigen::Vector3d n(spring.direction[0], spring.direction[1], spring.direction[2]);
        const int ends[2] = {3 * spring.first, 3 * spring.second};
        for (int i = 0; i < (spring.second < 0 ? 1 : 2); ++i)
            for (int j = 0; j < (spring.second < 0 ? 1 : 2); ++j)
                for (int a = 0; a < 3; ++a)
                    for (int b = 0; b < 3; ++b)
                        entries.emplace_back(ends[i] + a, ends[j] + b,
                                             (i == j ? 1 : -1) * spring.stiffness * n(a) * n(b));
    }
    const auto size = static_cast<int>(3 * layout.n_nodes);
    Sparse K(size, size);
    K.setFromTriplets(entries.begin(), entries.end());
    return K;
}

// Rows and columns of held freedoms replaced by a one on the diagonal.
Sparse supported(const Sparse& K, const std::vector<char>& held)
{
    Sparse result = K;
    for (int column = 0; column < result.outerSize(); ++column)
        for (Sparse::InnerIterator entry(result, column); entry; ++entry)
        {
            const bool out =
                held[static_cast<std::size_t>(entry.row())] != 0 || held[static_cast<std::size_t>(column)] != 0;
            if (out) entry.valueRef() = entry.row() == column ? 1 : 0;
        }
    result.prune(0.0);
    return result;
}

struct Bound
{
    Eigen::VectorXd given;   // displacement of held freedoms, zero elsewhere
    std::vector<char> held;  // including those that only pin a free body
};

Bound bound(const SolidLayout& layout, const SolidBody& body, const Eigen::Matrix3Xd& places)
{
    Bound result;
    result.given = Eigen::VectorXd::Zero(3 * layout.n_nodes);
    result.held.assign(static_cast<std::size_t>(3 * layout.n_nodes), 0);
    for (const HeldFreedom& h : body.held)
    {
        const std::int64_t freedom = 3 * std::int64_t{layout.node_of[static_cast<std::size_t>(h.node)]} + h.axis;
        result.held[static_cast<std::size_t>(freedom)] = 1;
        result.given(freedom) = h.displacement;
    }
    if (!is_free(body)) return result;
    for (const std::int64_t freedom : pinned_freedoms(places))
    {
        const std::int32_t node = layout.node_of[static_cast<std::size_t>(freedom / 3)];
        EXPECTS(node >= 0);
        result.held[static_cast<std::size_t>(3 * std::int64_t{node} + freedom % 3)] = 1;
    }
    return result;
}

Eigen::Matrix3Xd places_of(const SolidMesh& mesh)
{
    Eigen::Matrix3Xd places(3, static_cast<Eigen::Index>(mesh.nodes.size()));
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        places.col(static_cast<Eigen::Index>(i)) =
            Eigen::Vector3d(mesh.nodes[i][0], mesh.nodes[i][1], mesh.nodes[i][2]);
    return places;
}

Eigen::VectorXd in_layout(const SolidLayout& layout, const NodeForces& force)
{
    Eigen::VectorXd f = Eigen::VectorXd::Zero(3 * layout.n_nodes);
    for (Eigen::Index i = 0; i < force.cols(); ++i)
    {
        const std::int32_t node = layout.node_of[static_cast<std::size_t>(i)];
        if (node >= 0) f.segment<3>(3 * node) += force.col(i);
    }
    return f;
}

Eigen::Matrix3Xd at_mesh_nodes(const SolidLayout& layout, const Eigen::VectorXd& u)
{
    Eigen::Matrix3Xd result = Eigen::Matrix3Xd::Zero(3, static_cast<Eigen::Index>(layout.node_of.size()));
    for (Eigen::Index i = 0; i < result.cols(); ++i)
    {
        const std::int32_t node = layout.node_of[static_cast<std::size_t>(i)];
        if (node >= 0) result.col(i) = u.segment<3>(3 * node);
    }
    return result;
}

}  // namespace

SolidSolution direct_solution(const SolidMesh& mesh, const SolidBody& body, const std::vector<NodeForces>& loads)
{
    const auto start = std::chrono::steady_clock::now();
    const std::clock_t clock = std::clock();
    use_one_thread();
    SolidTeam team(1);
    const SolidLayout layout = solid_layout(team, mesh, body.bonded, linked_nodes(mesh, body));
    refuse_loose_parts(mesh, layout, body);
    const Eigen::Matrix3Xd places = places_of(mesh);
    const Bound bounds = bound(layout, body, places);
    const Sparse K = assembled(mesh, layout, body);
    Eigen::CholmodDecomposition<Sparse, Eigen::Lower> cholmod;
    cholmod.cholmod().print = 0;
    cholmod.setMode(Eigen::CholmodSupernodalLLt);
    cholmod.compute(supported(K, bounds.held));
    if (cholmod.info() != Eigen::Success)
        throw CannotCompute({"", 0, 0, "solver", "", "the stiffness could not be factorised: a part may hang loose",
                             "check that every part is joined to the shaft"});
    SolidSolution solution;
    for (const NodeForces& load : loads)
    {
        const Eigen::VectorXd f = in_layout(layout, is_free(body) ? balanced(places, load) : load);
        Eigen::VectorXd u = bounds.given;
        const auto residual = [&]
        {
            Eigen::VectorXd r = f - K * u;
            for (Eigen::Index i = 0; i < r.size(); ++i)
                if (bounds.held[static_cast<std::size_t>(i)] != 0) r(i) = 0;
            return r;
        };
        const double size = residual().norm();
        // The second solution refines the first.
        for (int pass = 0; pass < 2; ++pass) u += cholmod.solve(residual());
        SolidAnswer answer;
        answer.relative_residual = size > 0 ? residual().norm() / size : 0;
        if (!(answer.relative_residual <= largest_residual))
            throw CannotCompute(
                {"", 0, 0, "solver", fmt::format("{:.1e}", answer.relative_residual),
                 fmt::format("the residual of the solid model must be at most {:.0e}", largest_residual),
                 "a part may hang loose or an element be badly shaped: check joints and mesh"});
        answer.displacement = at_mesh_nodes(layout, u);
        if (is_free(body)) answer.displacement = without_rigid_motion(places, answer.displacement);
        solution.loads.push_back(std::move(answer));
    }
    solution.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    solution.processor_seconds = static_cast<double>(std::clock() - clock) / CLOCKS_PER_SEC;
    return solution;
}

Eigen::SparseMatrix<double> supported_stiffness(const SolidMesh& mesh, const SolidBody& body)
{
    SolidTeam team(1);
    const SolidLayout layout = solid_layout(team, mesh, body.bonded, linked_nodes(mesh, body));
    return supported(assembled(mesh, layout, body), bound(layout, body, places_of(mesh)).held);
}

}  // namespace splicewright
