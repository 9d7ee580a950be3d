// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>

namespace splicewright
{

// Six-node triangle; area coordinates (1-x-y, x, y), nodes as in Mesh::triangle.

using TriangleNodes = Eigen::Matrix<double, 2, 6>;   // [2, 6] mm: row 0 z, row 1 r
using ShapeValues = Eigen::Matrix<double, 6, 1>;     // [6]
using ShapeGradients = Eigen::Matrix<double, 6, 2>;  // [6, 2] with respect to x, y of the reference triangle

struct ReferencePoint
{
    double x = 0, y = 0;
};

// Shape functions of the quadratic triangle; they sum to one.
// Source: [Hughes2000] section 3.I.
ShapeValues shape_values(ReferencePoint at);
ShapeGradients shape_gradients(ReferencePoint at);

struct QuadraturePoint
{
    ReferencePoint at;
    double weight = 0;  // all weights sum to 1/2, the area of the reference triangle
};

// Seven interior points, exact to degree five. Source: [Radon1948]; as printed in [Hughes2000] table 3.I.1.
const std::array<QuadraturePoint, 7>& quadrature();

// Corners and middles, where the Jacobian of a bent triangle is smallest.
inline constexpr std::array<ReferencePoint, 6> jacobian_sample_points{
    {{0, 0}, {1, 0}, {0, 1}, {0.5, 0}, {0.5, 0.5}, {0, 0.5}}};

}  // namespace splicewright
