// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/unit_solution.h"

#include <fmt/format.h>

#include <Eigen/SparseCore>
#include <array>
#include <cmath>
#include <numbers>
#include <set>

#include "cases/problem.h"
#include "solver/assembly.h"
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

}  // namespace

UnitSolution unit_solution(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind,
                           const Ties& ties, Outside outside)
{
    const Freedoms free = freedoms(mesh, kind, ties);
    const Eigen::VectorXd load = outside == Outside::unit_load
                                     ? end_loads(mesh, kind)
                                     : Eigen::VectorXd::Zero(mesh.n_nodes() * unknowns_per_node(kind)).eval();
    const System system = assembled(mesh, steel, kind, free, load);
    const Eigen::VectorXd x = sparse_solution(system.K, system.f);
    UnitSolution solution;
    solution.kind = kind;
    solution.u = expanded(free, x);
    solution.work = load.dot(solution.u);
    solution.n_free = free.n_free;
    const double scale = system.f.norm();
    const Eigen::VectorXd left_over = system.K.selfadjointView<Eigen::Lower>() * x - system.f;
    solution.residual = scale > 0 ? left_over.norm() / scale : 0;
    solution.reaction_imbalance =
        reaction_share(mesh, steel, kind, free, solution.u, load,
                       outside == Outside::unit_load ? load.lpNorm<1>() : system.f.lpNorm<1>());
    if (!(solution.residual <= residual_allowed) || !(solution.reaction_imbalance <= reaction_imbalance_allowed))
        throw CannotCompute(
            {"", 0, 0, "solver", "",
             fmt::format("the solution does not balance its loads: residual {:.1e} (allowed {:.0e}), reaction {:.1e} "
                         "(allowed {:.0e})",
                         solution.residual, residual_allowed, solution.reaction_imbalance, reaction_imbalance_allowed),
             "check that every part is joined to the shaft; if it is, please report this case file"});
    return solution;
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
