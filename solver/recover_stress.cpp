// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/recover_stress.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <unordered_map>

namespace splicewright
{
namespace
{

using Stress = Eigen::Matrix<double, 6, 1>;

// Points where the stress of a quadratic triangle is one order better than elsewhere. Source: [Barlow1976].
constexpr std::array<ReferencePoint, 3> best_points{{{1.0 / 6, 1.0 / 6}, {2.0 / 3, 1.0 / 6}, {1.0 / 6, 2.0 / 3}}};

// Value at the six nodes of the linear function with the given values at the best points.
Eigen::Matrix<double, 6, 6> carried_to_nodes(const Eigen::Matrix<double, 6, 3>& at_points)
{
    Eigen::Matrix<double, 6, 6> result;
    for (std::size_t i = 0; i < 6; ++i)
    {
        const double x = jacobian_sample_points[i].x, y = jacobian_sample_points[i].y;
        const Eigen::Vector3d weights(5.0 / 3 - 2 * x - 2 * y, 2 * x - 1.0 / 3, 2 * y - 1.0 / 3);
        result.col(static_cast<Eigen::Index>(i)) = at_points * weights;
    }
    return result;
}

// Stress of one triangle alone, carried to its nodes, with its area; all: unknowns of the load, node by node.
struct TriangleStress
{
    Eigen::Matrix<double, 6, 6> at_nodes;  // MPa, a column for each node
    double area = 0;                       // mm^2
};

TriangleStress triangle_stress(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind,
                               const Eigen::VectorXd& all, int t)
{
    const int n = unknowns_per_node(kind);
    const TriangleNodes place = mesh.node(Eigen::all, mesh.triangle.col(t));
    Eigen::VectorXd u(6 * n);
    for (int i = 0; i < 6; ++i) u.segment(i * n, n) = all.segment(mesh.triangle(i, t) * n, n);
    const ElasticConstants& own = steel[static_cast<std::size_t>(mesh.region_of[static_cast<std::size_t>(t)])];
    Eigen::Matrix<double, 6, 3> at_points;
    TriangleStress result;
    for (int p = 0; p < 3; ++p)
    {
        const StrainAt strain = strain_at(kind, place, best_points[static_cast<std::size_t>(p)]);
        result.area += strain.jacobian / 6;
        at_points.col(p) = stress_of(own, strain.B * u);
    }
    result.at_nodes = carried_to_nodes(at_points);
    return result;
}

// The rows u_r, u_theta, u_z that the load has unknowns for.
Eigen::VectorXd unknowns_of(const DisplacementAmplitude& displacement, LoadKind kind)
{
    const Eigen::Matrix3Xd& all = displacement.value;
    const auto stacked = [](const auto& rows) { return Eigen::MatrixXd(rows).reshaped().eval(); };
    if (kind == LoadKind::torsion) return stacked(all.row(1));
    if (kind == LoadKind::axial) return stacked(all({0, 2}, Eigen::all));
    return stacked(all);
}

}  // namespace

RegionNodes region_nodes(const Mesh& mesh)
{
    RegionNodes result;
    result.triangle.resize(6, mesh.n_triangles());
    std::vector<std::unordered_map<int, int>> known(mesh.region.size());
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        const int region = mesh.region_of[static_cast<std::size_t>(t)];
        for (int i = 0; i < 6; ++i)
        {
            const auto [place, is_new] = known[static_cast<std::size_t>(region)].try_emplace(
                mesh.triangle(i, t), static_cast<int>(result.node.size()));
            if (is_new)
            {
                result.node.push_back(mesh.triangle(i, t));
                result.region.push_back(region);
            }
            result.triangle(i, t) = place->second;
        }
    }
    return result;
}

StressAmplitude recovered_stress(const Mesh& mesh, const RegionNodes& nodes, const std::vector<ElasticConstants>& steel,
                                 const UnitSolution& solution)
{
    const auto n_nodes = static_cast<Eigen::Index>(nodes.node.size());
    StressAmplitude result{Eigen::Matrix<double, 6, Eigen::Dynamic>::Zero(6, n_nodes)};
    Eigen::VectorXd weight = Eigen::VectorXd::Zero(n_nodes);
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        const TriangleStress own = triangle_stress(mesh, steel, solution.kind, solution.u, t);
        for (int i = 0; i < 6; ++i)
        {
            result.value.col(nodes.triangle(i, t)) += own.area * own.at_nodes.col(i);
            weight(nodes.triangle(i, t)) += own.area;
        }
    }
    for (Eigen::Index i = 0; i < n_nodes; ++i) result.value.col(i) /= weight(i);
    return result;
}

Eigen::VectorXd stress_spread(const SolvedFields& fields, const std::vector<ElasticConstants>& steel, LoadKind kind,
                              const DisplacementAmplitude& displacement, const StressAmplitude& recovered)
{
    const Mesh& mesh = fields.mesh;
    const Eigen::VectorXd u = unknowns_of(displacement, kind);
    Eigen::VectorXd spread = Eigen::VectorXd::Zero(recovered.value.cols());
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        const TriangleStress own = triangle_stress(mesh, steel, kind, u, t);
        for (int i = 0; i < 6; ++i)
        {
            const int node = fields.region_nodes.triangle(i, t);
            const Stress apart = own.at_nodes.col(i) - recovered.value.col(node);
            const double distance = std::sqrt(apart.head<3>().squaredNorm() + 2 * apart.tail<3>().squaredNorm());
            spread(node) = std::max(spread(node), distance);
        }
    }
    return spread;
}

}  // namespace splicewright
