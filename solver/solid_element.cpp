// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_element.h"

#include <Eigen/LU>
#include <cmath>

#include "solver/solid_kernels.h"

namespace splicewright
{

namespace
{

double lambda_of(const ElasticConstants& steel) { return steel.E * steel.nu / ((1 + steel.nu) * (1 - 2 * steel.nu)); }

// Four points, each near one corner.
template <class Points>
void add_orbit(Points& points, std::size_t first, double far, double near, double weight)
{
    for (std::size_t k = 0; k < 4; ++k)
    {
        TetrahedronPoint& point = points[first + k];
        point.at = {far, far, far, far};
        point.at[k] = near;
        point.weight = weight;
    }
}

// Gradients of the shape functions [10, 3] and the weighted Jacobian at each quadrature point.
template <class Use>
void for_each_point(const SolidElementNodes& nodes, const Use& use)
{
    const auto at_point = [&](const TetrahedronPoint& point)
    {
        const SolidMap map = solid_map(nodes, point.at);
        use(Eigen::Matrix<double, 10, 3>(solid_shape_slopes(point.at) * map.gradients.transpose()),
            point.weight * map.jacobian);
    };
    if (is_straight(nodes))
        for (const TetrahedronPoint& point : four_points()) at_point(point);
    else
        for (const TetrahedronPoint& point : eight_points()) at_point(point);
}

}  // namespace

SolidElementNodes nodes_of(const SolidMesh& mesh, std::size_t element)
{
    SolidElementNodes nodes;
    for (int i = 0; i < 10; ++i)
    {
        const auto node = static_cast<std::size_t>(mesh.elements[element][static_cast<std::size_t>(i)]);
        nodes.col(i) = Eigen::Vector3d(mesh.nodes[node][0], mesh.nodes[node][1], mesh.nodes[node][2]);
    }
    return nodes;
}

Eigen::Matrix<double, 10, 1> solid_shape_values(const Barycentric& l)
{
    Eigen::Matrix<double, 10, 1> N;
    for (int i = 0; i < 4; ++i) N(i) = l[static_cast<std::size_t>(i)] * (2 * l[static_cast<std::size_t>(i)] - 1);
    for (int e = 0; e < 6; ++e)
    {
        const auto [i, j] = edge_corners[static_cast<std::size_t>(e)];
        N(4 + e) = 4 * l[static_cast<std::size_t>(i)] * l[static_cast<std::size_t>(j)];
    }
    return N;
}

Eigen::Matrix<double, 10, 3> solid_shape_slopes(const Barycentric& l)
{
    Eigen::Matrix<double, 10, 4> along = Eigen::Matrix<double, 10, 4>::Zero();
    for (int i = 0; i < 4; ++i) along(i, i) = 4 * l[static_cast<std::size_t>(i)] - 1;
    for (int e = 0; e < 6; ++e)
    {
        const auto [i, j] = edge_corners[static_cast<std::size_t>(e)];
        along(4 + e, i) = 4 * l[static_cast<std::size_t>(j)];
        along(4 + e, j) = 4 * l[static_cast<std::size_t>(i)];
    }
    return along.rightCols<3>().colwise() - along.col(0);
}

SolidMap solid_map(const SolidElementNodes& nodes, const Barycentric& l)
{
    const Eigen::Matrix3d J = nodes * solid_shape_slopes(l);
    return {J.inverse().transpose(), J.determinant()};
}

const std::array<TetrahedronPoint, 4>& four_points()
{
    static const std::array<TetrahedronPoint, 4> points = []
    {
        std::array<TetrahedronPoint, 4> made;
        const double far = (5 - std::sqrt(5.0)) / 20;
        add_orbit(made, 0, far, 1 - 3 * far, 1.0 / 24);
        return made;
    }();
    return points;
}

const std::array<TetrahedronPoint, 8>& eight_points()
{
    static const std::array<TetrahedronPoint, 8> points = []
    {
        std::array<TetrahedronPoint, 8> made;
        add_orbit(made, 0, orbit_far[0], orbit_near[0], orbit_weight[0]);
        add_orbit(made, 4, orbit_far[1], orbit_near[1], orbit_weight[1]);
        return made;
    }();
    return points;
}

bool is_straight(const SolidElementNodes& nodes)
{
    for (int e = 0; e < 6; ++e)
    {
        const auto [i, j] = edge_corners[static_cast<std::size_t>(e)];
        const Eigen::Vector3d edge = nodes.col(j) - nodes.col(i);
        const Eigen::Vector3d off = nodes.col(4 + e) - 0.5 * (nodes.col(i) + nodes.col(j));
        if (off.squaredNorm() > straight_within * straight_within * edge.squaredNorm()) return false;
    }
    return true;
}

Eigen::Matrix<double, 6, 1> solid_strain(const SolidElementNodes& nodes, const SolidElementNodes& displacement,
                                         const Barycentric& l)
{
    const Eigen::Matrix3d H = displacement * solid_shape_slopes(l) * solid_map(nodes, l).gradients.transpose();
    return {H(0, 0), H(1, 1), H(2, 2), H(0, 1) + H(1, 0), H(1, 2) + H(2, 1), H(0, 2) + H(2, 0)};
}

Eigen::Matrix<double, 6, 1> solid_stress(const ElasticConstants& steel, const Eigen::Matrix<double, 6, 1>& strain)
{
    Eigen::Matrix<double, 6, 1> stress = steel.G() * strain;
    stress.head<3>() += steel.G() * strain.head<3>();
    stress.head<3>().array() += lambda_of(steel) * strain.head<3>().sum();
    return stress;
}

Eigen::Matrix<double, 30, 30> solid_stiffness(const ElasticConstants& steel, const SolidElementNodes& nodes)
{
    Eigen::Matrix<double, 30, 30> K = Eigen::Matrix<double, 30, 30>::Zero();
    for_each_point(nodes,
                   [&](const Eigen::Matrix<double, 10, 3>& dN, double weight)
                   {
                       const double lambda = weight * lambda_of(steel), mu = weight * steel.G();
                       const Eigen::Matrix<double, 10, 10> dot = dN * dN.transpose();
                       for (int i = 0; i < 10; ++i)
                       {
                           for (int j = 0; j < 10; ++j)
                           {
                               auto block = K.block<3, 3>(3 * i, 3 * j);
                               block += lambda * dN.row(i).transpose() * dN.row(j);
                               block += mu * dN.row(j).transpose() * dN.row(i);
                               block.diagonal().array() += mu * dot(i, j);
                           }
                       }
                   });
    return K;
}

}  // namespace splicewright
