// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/solid_readings.h"

#include <cmath>
#include <vector>

#include "cases/problem.h"
#include "solver/regular_solids.h"

namespace splicewright
{

namespace
{

constexpr double near = 1e-6;  // mm

bool is_at(const SolidMesh& mesh, std::int32_t node, const Eigen::Vector3d& where)
{
    return (regular::place(mesh, static_cast<std::size_t>(node)) - where).norm() < near;
}

double mean_rotation(const SolidMesh& mesh, const Eigen::Matrix3Xd& displacement, double z)
{
    std::vector<Eigen::Index> there;
    Eigen::Vector2d centre(0, 0), shift(0, 0);
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
    {
        if (std::abs(mesh.nodes[i][2] - z) > near) continue;
        there.push_back(static_cast<Eigen::Index>(i));
        centre += Eigen::Vector2d(mesh.nodes[i][0], mesh.nodes[i][1]);
        shift += displacement.col(there.back()).head<2>();
    }
    EXPECTS(there.size() > 3);
    centre /= static_cast<double>(there.size());
    shift /= static_cast<double>(there.size());
    double turn = 0, arms = 0;
    for (const Eigen::Index i : there)
    {
        const Eigen::Vector2d arm = regular::place(mesh, static_cast<std::size_t>(i)).head<2>() - centre;
        const Eigen::Vector2d moved = displacement.col(i).head<2>() - shift;
        turn += arm.x() * moved.y() - arm.y() * moved.x();
        arms += arm.squaredNorm();
    }
    return turn / arms;
}

}  // namespace

double twist_rate(const SolidMesh& mesh, const Eigen::Matrix3Xd& displacement, double from, double to)
{
    return (mean_rotation(mesh, displacement, to) - mean_rotation(mesh, displacement, from)) / (to - from);
}

Stress6 surface_value(const SolidMesh& mesh, const FreeSurfaceStress& surface, const Eigen::Vector3d& where)
{
    for (const SurfacePlace& place : surface.places)
        if (is_at(mesh, place.node, where)) return place.stress;
    const bool a_place_stands_there = false;
    EXPECTS(a_place_stands_there);
    return Stress6::Constant(NAN);
}

Stress6 inside_value(const SolidMesh& mesh, const SolidStress& stress, const Eigen::Vector3d& where)
{
    for (std::size_t i = 0; i < stress.node.size(); ++i)
        if (is_at(mesh, stress.node[i], where)) return stress.value.col(static_cast<Eigen::Index>(i));
    const bool a_node_stands_there = false;
    EXPECTS(a_node_stands_there);
    return Stress6::Constant(NAN);
}

Eigen::Vector3d displacement_at(const SolidMesh& mesh, const Eigen::Matrix3Xd& displacement,
                                const Eigen::Vector3d& where)
{
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        if (is_at(mesh, static_cast<std::int32_t>(i), where)) return displacement.col(static_cast<Eigen::Index>(i));
    const bool a_node_stands_there = false;
    EXPECTS(a_node_stands_there);
    return Eigen::Vector3d::Constant(NAN);
}

}  // namespace splicewright
