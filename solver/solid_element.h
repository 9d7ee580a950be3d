// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <vector>

#include "mesh/solid_mesh.h"
#include "solver/elements.h"

namespace splicewright
{

// Ten-node tetrahedron with barycentric coordinates l; nodes as in SolidMesh.

using SolidElementNodes = Eigen::Matrix<double, 3, 10>;  // mm
using Barycentric = std::array<double, 4>;               // they sum to one

// Corners of the edge that node 4 + n is the middle of.
inline constexpr std::array<std::array<int, 2>, 6> edge_corners{{{0, 1}, {1, 2}, {2, 0}, {0, 3}, {1, 3}, {2, 3}}};

SolidElementNodes nodes_of(const SolidMesh& mesh, std::size_t element);

// Shape functions; they sum to one. Source: [Zienkiewicz2005] section 4.6.
Eigen::Matrix<double, 10, 1> solid_shape_values(const Barycentric& l);
// Their slopes along l1, l2, l3 when l0 gives way.
Eigen::Matrix<double, 10, 3> solid_shape_slopes(const Barycentric& l);

// Columns: gradients of l1, l2, l3 in 1/mm; jacobian: volume per reference volume times 6, mm^3.
struct SolidMap
{
    Eigen::Matrix3d gradients;
    double jacobian = 0;
};
SolidMap solid_map(const SolidElementNodes& nodes, const Barycentric& l);

struct TetrahedronPoint
{
    Barycentric at{};
    double weight = 0;  // all weights sum to 1/6, the volume of the reference element
};
// The four points of degree 2. Source: [HammerStroud1956]; from memory: verify.
const std::array<TetrahedronPoint, 4>& four_points();
// The eight points of degree 3 with which curved elements are integrated; see solver/solid_kernels.h.
const std::array<TetrahedronPoint, 8>& eight_points();

// No middle node stands further from the middle of its edge than this part of the edge's length.
constexpr double straight_within = 1e-9;
bool is_straight(const SolidElementNodes& nodes);

// Strain xx yy zz xy yz xz (engineering shears) of node displacements [3, 10] at a point.
Eigen::Matrix<double, 6, 1> solid_strain(const SolidElementNodes& nodes, const SolidElementNodes& displacement,
                                         const Barycentric& l);
// Stress xx yy zz xy yz xz, MPa, tensor components.
Eigen::Matrix<double, 6, 1> solid_stress(const ElasticConstants& steel, const Eigen::Matrix<double, 6, 1>& strain);

// Stiffness of one element, N/mm; freedoms node by node, x y z.
Eigen::Matrix<double, 30, 30> solid_stiffness(const ElasticConstants& steel, const SolidElementNodes& nodes);

}  // namespace splicewright
