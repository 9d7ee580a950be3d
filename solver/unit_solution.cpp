// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/unit_solution.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>
#include <set>

#include "cases/problem.h"
#include "solver/assembly.h"
#include "solver/front_factor.h"
#include "solver/sparse_solve.h"

namespace splicewright
{
namespace
{

// Traction amplitude at radius r of the unit load on an end of the given radii: linear in r, exact far from the ends.
double end_traction(LoadKind kind, double r, double inner, double outer)
{
    const double pi = std::numbers::pi;
    const double J = pi / 2 * (std::pow(outer, 4) - std::pow(inner, 4));
    switch (kind)
    {
        case LoadKind::torsion: return r / J;
        case LoadKind::axial: return 1 / (pi * (outer * outer - inner * inner));
        case LoadKind::bending: return 2 * r / J;
    }
    return 0;
}

// Component of the unknowns that the end traction works on.
int loaded_component(LoadKind kind) { return kind == LoadKind::torsion ? 0 : unknowns_per_node(kind) - 1; }

Eigen::VectorXd end_loads(const Mesh& mesh, LoadKind kind)
{
    const int n = unknowns_per_node(kind);
    Eigen::VectorXd f = Eigen::VectorXd::Zero(mesh.n_nodes() * n);
    const double g = std::sqrt(3.0 / 5);
    const std::array<std::pair<double, double>, 3> gauss{{{-g, 5.0 / 9}, {0, 8.0 / 9}, {g, 5.0 / 9}}};
    for (const auto& [name, sign] : {std::pair{"end.left", -1.0}, std::pair{"end.right", 1.0}})
    {
        double inner = INFINITY, outer = 0;
        for (const MeshEdge& edge : mesh.curve.at(name))
            for (const int node : {edge.first, edge.last})
            {
                inner = std::min(inner, mesh.node(1, node));
                outer = std::max(outer, mesh.node(1, node));
            }
        for (const MeshEdge& edge : mesh.curve.at(name))
        {
            const double a = mesh.node(1, edge.first), b = mesh.node(1, edge.last);
            for (const auto& [x, weight] : gauss)
            {
                const double r = (a + b) / 2 + x * (b - a) / 2;
                const double load =
                    sign * theta_weight(kind) * weight * std::abs(b - a) / 2 * r * end_traction(kind, r, inner, outer);
                f(edge.first * n + loaded_component(kind)) += load * x * (x - 1) / 2;
                f(edge.middle * n + loaded_component(kind)) += load * (1 - x * x);
                f(edge.last * n + loaded_component(kind)) += load * x * (x + 1) / 2;
            }
        }
    }
    return f;
}

Eigen::VectorXd element_unknowns(const Mesh& mesh, const Eigen::VectorXd& u, int triangle, int n)
{
    Eigen::VectorXd result(6 * n);
    for (int i = 0; i < 6; ++i) result.segment(i * n, n) = u.segment(mesh.triangle(i, triangle) * n, n);
    return result;
}

const ElasticConstants& steel_of(const Mesh& mesh, const std::vector<ElasticConstants>& steel, int triangle)
{
    return steel[static_cast<std::size_t>(mesh.region_of[static_cast<std::size_t>(triangle)])];
}

// Forces of one element on its nodes, N, in the order of its unknowns.
Eigen::VectorXd element_force(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind,
                              const Eigen::VectorXd& u, int triangle)
{
    const TriangleNodes place = mesh.node(Eigen::all, mesh.triangle.col(triangle));
    return element_stiffness(kind, steel_of(mesh, steel, triangle), place) *
           element_unknowns(mesh, u, triangle, unknowns_per_node(kind));
}

Eigen::VectorXd expanded(const Freedoms& free, const Eigen::VectorXd& x)
{
    Eigen::VectorXd u(static_cast<Eigen::Index>(free.unknown.size()));
    for (std::size_t i = 0; i < free.unknown.size(); ++i)
    {
        double value = free.unknown[i].constant;
        for (int k = 0; k < free.unknown[i].n_terms; ++k)
            value += free.unknown[i].term[static_cast<std::size_t>(k)].factor *
                     x(free.unknown[i].term[static_cast<std::size_t>(k)].free);
        u(static_cast<Eigen::Index>(i)) = value;
    }
    return u;
}

// Solution of K x = f and one step of refinement. A stiffness that is not positive definite to the last digit goes to
// the general solver.
Eigen::VectorXd refined_solution(const ElementStiffness& K, const std::optional<FrontFactor>& factor,
                                 const Eigen::VectorXd& f)
{
    if (factor)
    {
        Eigen::VectorXd x = factor->solution(f);
        x += factor->solution(f - product(K, x));
        if (x.allFinite()) return x;
    }
    return sparse_solution(assembled(K), f);
}

// Force left over at the held rigid motions, as a share of `applied`, the sum of all nodal forces that are put on.
double reaction_share(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind, const Freedoms& free,
                      const Eigen::VectorXd& u, const Eigen::VectorXd& load, double applied)
{
    const int n = unknowns_per_node(kind);
    std::set<int> nodes;
    for (const int unknown : free.pinned) nodes.insert(unknown / n);
    Eigen::VectorXd inside = Eigen::VectorXd::Zero(u.size());
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        const auto corners = mesh.triangle.col(t);
        if (std::none_of(corners.begin(), corners.end(), [&](int c) { return nodes.contains(c); })) continue;
        const Eigen::VectorXd force = element_force(mesh, steel, kind, u, t);
        for (int i = 0; i < 6 * n; ++i) inside(mesh.triangle(i / n, t) * n + i % n) += force(i);
    }
    double worst = 0;
    for (const int unknown : free.pinned) worst = std::max(worst, std::abs(inside(unknown) - load(unknown)));
    return applied > 0 ? worst / applied : 0;
}

void refuse_poor(const UnitSolution& solution)
{
    if (solution.residual <= residual_allowed && solution.reaction_imbalance <= reaction_imbalance_allowed) return;
    throw CannotCompute(
        {"", 0, 0, "solver", "",
         fmt::format("the solution does not balance its loads: residual {:.1e} (allowed {:.0e}), reaction {:.1e} "
                     "(allowed {:.0e})",
                     solution.residual, residual_allowed, solution.reaction_imbalance, reaction_imbalance_allowed),
         "check that every part is joined to the shaft; if it is, please report this case file"});
}

}  // namespace

Elimination elimination_of(const Mesh& mesh, const Ties& ties)
{
    // In bending every node has unknowns, and every tie couples.
    const Freedoms free = freedoms(mesh, LoadKind::bending, ties);
    constexpr int n = unknowns_per_node(LoadKind::bending);
    NodeGroups groups;
    groups.n_nodes = mesh.n_nodes();
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        const auto begin = groups.node.size();
        for (int i = 0; i < 6 * n; ++i)
        {
            const Freedoms::Unknown& unknown =
                free.unknown[static_cast<std::size_t>(mesh.triangle(i / n, t) * n + i % n)];
            for (int k = 0; k < unknown.n_terms; ++k)
            {
                const int node =
                    free.node_of_free[static_cast<std::size_t>(unknown.term[static_cast<std::size_t>(k)].free)];
                const auto first = groups.node.begin() + static_cast<std::ptrdiff_t>(begin);
                if (std::find(first, groups.node.end(), node) == groups.node.end()) groups.node.push_back(node);
            }
        }
        groups.start.push_back(static_cast<int>(groups.node.size()));
    }
    return elimination(groups);
}

std::vector<UnitSolution> unit_solutions(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind,
                                         const Ties& ties, const Elimination& order,
                                         const std::vector<Outside>& outside)
{
    const Freedoms free = freedoms(mesh, kind, ties);
    Freedoms unmoved = free;
    for (Freedoms::Unknown& unknown : unmoved.unknown) unknown.constant = 0;
    const ElementStiffness K = element_stiffness(mesh, steel, kind, free);
    const std::optional<FrontFactor> factor = FrontFactor::factorised(K, order, free.node_of_free, mesh.n_nodes());
    std::vector<UnitSolution> solutions;
    for (const Outside load_case : outside)
    {
        const bool is_loaded = load_case == Outside::unit_load;
        const Eigen::VectorXd load =
            is_loaded ? end_loads(mesh, kind) : Eigen::VectorXd::Zero(mesh.n_nodes() * unknowns_per_node(kind)).eval();
        const Eigen::VectorXd f = is_loaded ? force_on_free(free, load) : force_of_constants(mesh, K, free);
        const Eigen::VectorXd x = refined_solution(K, factor, f);
        UnitSolution solution;
        solution.kind = kind;
        solution.u = expanded(is_loaded ? unmoved : free, x);
        solution.work = load.dot(solution.u);
        solution.n_free = free.n_free;
        const double scale = f.norm();
        solution.residual = scale > 0 ? (product(K, x) - f).norm() / scale : 0;
        solution.reaction_imbalance =
            reaction_share(mesh, steel, kind, free, solution.u, load, is_loaded ? load.lpNorm<1>() : f.lpNorm<1>());
        refuse_poor(solution);
        solutions.push_back(std::move(solution));
    }
    return solutions;
}

UnitSolution unit_solution(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind,
                           const Ties& ties, const Elimination& order)
{
    return unit_solutions(mesh, steel, kind, ties, order, {Outside::unit_load}).front();
}

UnitSolution unit_solution(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind,
                           const Ties& ties)
{
    return unit_solution(mesh, steel, kind, ties, elimination_of(mesh, ties));
}

DisplacementAmplitude displacement_amplitude(const UnitSolution& solution)
{
    const int n = unknowns_per_node(solution.kind);
    const Eigen::Index n_nodes = solution.u.size() / n;
    DisplacementAmplitude amplitude{Eigen::Matrix3Xd::Zero(3, n_nodes)};
    for (Eigen::Index i = 0; i < n_nodes; ++i) switch (solution.kind)
        {
            case LoadKind::torsion: amplitude.value(1, i) = solution.u(i); break;
            case LoadKind::axial: amplitude.value.col(i) << solution.u(2 * i), 0, solution.u(2 * i + 1); break;
            case LoadKind::bending: amplitude.value.col(i) = solution.u.segment<3>(3 * i); break;
        }
    return amplitude;
}

SectionForce section_force(const Mesh& mesh, const std::vector<ElasticConstants>& steel, const UnitSolution& solution,
                           const std::string& curve, const std::string& region)
{
    SectionForce total;
    const auto found = mesh.curve.find(curve);
    if (found == mesh.curve.end()) return total;
    std::set<int> on_curve;
    for (const MeshEdge& edge : found->second) on_curve.insert({edge.first, edge.middle, edge.last});
    const int n = unknowns_per_node(solution.kind);
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        const auto corners = mesh.triangle.col(t);
        const int r = mesh.region_of[static_cast<std::size_t>(t)];
        if (mesh.region[static_cast<std::size_t>(r)] != region) continue;
        if (std::none_of(corners.begin(), corners.end(), [&](int c) { return on_curve.contains(c); })) continue;
        const Eigen::VectorXd force = element_force(mesh, steel, solution.kind, solution.u, t);
        for (int i = 0; i < 6; ++i)
        {
            if (!on_curve.contains(corners(i))) continue;
            const double z = mesh.node(0, corners(i)), radius = mesh.node(1, corners(i));
            const double f_r = solution.kind == LoadKind::torsion ? 0 : force(i * n);
            const double f_t = solution.kind == LoadKind::axial ? 0 : force(i * n + (n == 3 ? 1 : 0));
            const double f_z = solution.kind == LoadKind::torsion ? 0 : force(i * n + n - 1);
            total.axial += f_z;
            total.radial += f_r;
            total.tangential += f_t;
            if (solution.kind == LoadKind::torsion) total.moment += radius * f_t;
            if (solution.kind == LoadKind::bending) total.moment += radius * f_z - z * (f_r - f_t);
        }
    }
    return total;
}

}  // namespace splicewright
