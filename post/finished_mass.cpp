// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/finished_mass.h"

#include <Eigen/LU>
#include <numbers>
#include <vector>

#include "mesh/outline.h"
#include "mesh/triangle.h"

namespace splicewright
{
namespace
{

double swept_volume(const TriangleNodes& node)
{
    double volume = 0;
    for (const QuadraturePoint& point : quadrature())
    {
        const double r = node.row(1) * shape_values(point.at);
        const Eigen::Matrix2d jacobian = node * shape_gradients(point.at);
        volume += 2 * std::numbers::pi * r * point.weight * jacobian.determinant();
    }
    return volume;
}

}  // namespace

Tonne finished_mass(const Case& asked, const Mesh& mesh)
{
    std::vector<double> density;
    for (const std::string& region : mesh.region) density.push_back(material_of_region(asked, region).density);
    double mass = 0;
    for (int triangle = 0; triangle < mesh.n_triangles(); ++triangle)
    {
        TriangleNodes node;
        for (int corner = 0; corner < 6; ++corner) node.col(corner) = mesh.node.col(mesh.triangle(corner, triangle));
        mass +=
            density[static_cast<std::size_t>(mesh.region_of[static_cast<std::size_t>(triangle)])] * swept_volume(node);
    }
    return Tonne(mass);
}

}  // namespace splicewright
