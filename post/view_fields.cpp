// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/view_fields.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <cmath>

#include "post/site_loads.h"
#include "solver/meridian.h"
#include "solver/recover_stress.h"

namespace splicewright
{
namespace
{

// Rows of a stress and of a displacement that a load has.
struct Rows
{
    std::vector<int> stress, displacement;
};
constexpr const char* stress_names[] = {"rr", "tt", "zz", "rt", "tz", "rz"};
constexpr const char* displacement_names[] = {"r", "t", "z"};

Rows rows_of(LoadKind kind)
{
    if (kind == LoadKind::torsion) return {{3, 4}, {1}};
    if (kind == LoadKind::axial) return {{0, 1, 2, 5}, {0, 2}};
    return {{0, 1, 2, 3, 4, 5}, {0, 1, 2}};
}

// Rows u_r, u_theta, u_z of the rigid movements that a load leaves free, at z and r.
std::vector<Eigen::Vector3d> rigid_movements(LoadKind kind, double z, double r)
{
    if (kind == LoadKind::torsion) return {{0, r, 0}};
    if (kind == LoadKind::axial) return {{0, 0, 1}};
    // A shift along theta = 0 and a turn about the axis across it.
    return {{1, -1, 0}, {z, -z, -r}};
}

// Without the rigid movement that fits the nodes near the plane best.
Eigen::Matrix3Xd from_the_plane(const Mesh& mesh, LoadKind kind, const Eigen::Matrix3Xd& u, double plane, double reach)
{
    const auto n = static_cast<Eigen::Index>(rigid_movements(kind, 0, 0).size());
    Eigen::Matrix2d normal = Eigen::Matrix2d::Zero();
    Eigen::Vector2d right = Eigen::Vector2d::Zero();
    const auto modes = [&](Eigen::Index i) { return rigid_movements(kind, mesh.node(0, i) - plane, mesh.node(1, i)); };
    for (Eigen::Index i = 0; i < u.cols(); ++i)
    {
        if (std::abs(mesh.node(0, i) - plane) > reach) continue;
        const std::vector<Eigen::Vector3d> mode = modes(i);
        for (Eigen::Index a = 0; a < n; ++a)
        {
            right(a) += mode[std::size_t(a)].dot(u.col(i));
            for (Eigen::Index b = 0; b < n; ++b) normal(a, b) += mode[std::size_t(a)].dot(mode[std::size_t(b)]);
        }
    }
    const Eigen::VectorXd moved = normal.topLeftCorner(n, n).ldlt().solve(right.head(n));
    Eigen::Matrix3Xd rest = u;
    for (Eigen::Index i = 0; i < u.cols(); ++i)
    {
        const std::vector<Eigen::Vector3d> mode = modes(i);
        for (Eigen::Index a = 0; a < n; ++a) rest.col(i) -= moved(a) * mode[std::size_t(a)];
    }
    return rest;
}

struct OneLoad
{
    const char* name;
    LoadKind kind;
    double amount;
    const StressAmplitude* stress;
    const DisplacementAmplitude* displacement;
};

ViewField field_of(const SolvedFields& fields, const std::vector<ElasticConstants>& steel, const OneLoad& one)
{
    const Mesh& mesh = fields.mesh;
    const double left = mesh.node.row(0).minCoeff(), right = mesh.node.row(0).maxCoeff();
    const double reach = mesh.node.row(1).maxCoeff() / 4;
    const Eigen::Matrix3Xd moved =
        from_the_plane(mesh, one.kind, one.displacement->value, std::clamp(0.0, left + reach, right - reach), reach);
    ViewField field{one.name, {}, {}, {}};
    const Rows rows = rows_of(one.kind);
    for (const int row : rows.stress)
    {
        field.names.emplace_back(stress_names[row]);
        field.channel.emplace_back(one.amount * one.stress->value.row(row).transpose());
    }
    for (const int row : rows.displacement)
    {
        field.names.emplace_back(displacement_names[row]);
        field.channel.emplace_back(one.amount * moved(row, fields.region_nodes.node).transpose());
    }
    field.spread = std::abs(one.amount) * stress_spread(fields, steel, one.kind, *one.displacement, *one.stress);
    return field;
}

}  // namespace

std::vector<ViewField> view_fields(const Case& asked, const SolvedFields& fields)
{
    const CombinedLoad load = peak_load(asked);
    const std::vector<ElasticConstants> steel = steel_by_region(asked, fields.mesh.region);
    std::vector<ViewField> list;
    for (const OneLoad& one :
         {OneLoad{"torsion", LoadKind::torsion, load.torque, &fields.torsion, &fields.torsion_displacement},
          OneLoad{"bending", LoadKind::bending, load.bending, &fields.bending, &fields.bending_displacement},
          OneLoad{"axial", LoadKind::axial, load.axial, &fields.axial, &fields.axial_displacement},
          OneLoad{"press", LoadKind::axial, load.press, &fields.press, &fields.press_displacement}})
        if (one.amount != 0 && one.stress->value.cols() > 0) list.push_back(field_of(fields, steel, one));
    return list;
}

}  // namespace splicewright
