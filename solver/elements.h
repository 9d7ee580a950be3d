// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <vector>

#include "mesh/mesh.h"
#include "mesh/triangle.h"
#include "solver/stress_field.h"

namespace splicewright
{

// Isotropic, linear.
struct ElasticConstants
{
    double E = 0;                                                  // MPa
    double nu = 0;                                                 // -
    [[nodiscard]] double G() const { return E / (2 * (1 + nu)); }  // MPa
    bool operator==(const ElasticConstants&) const = default;
};

// Unknowns at a node, in this order: torsion u_theta; axial u_r, u_z; bending u_r, u_theta, u_z.
constexpr int unknowns_per_node(LoadKind kind)
{
    return kind == LoadKind::torsion ? 1 : kind == LoadKind::axial ? 2 : 3;
}

// Weight of the integral over theta: 2 pi for harmonic 0, pi for harmonic 1.
double theta_weight(LoadKind kind);

using ElementMatrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, 18, 18>;
using StrainMatrix = Eigen::Matrix<double, 6, Eigen::Dynamic, 0, 6, 18>;

// Strain amplitudes rr, tt, zz, rt, tz, rz (engineering shears) from the unknowns of one element at a point inside it.
//   torsion: g_rt = V,r - V/r, g_tz = V,z
//   axial:   e_rr = U,r, e_tt = U/r, e_zz = W,z, g_rz = U,z + W,r
//   bending: as axial with e_tt = (U+V)/r, and g_rt = V,r - (V+U)/r, g_tz = V,z - W/r
// for u_r = U cos, u_theta = V sin, u_z = W cos. Source: [Zienkiewicz2005] section 9.9, harmonic n = 1.
struct StrainAt
{
    StrainMatrix B;
    double radius = 0;    // mm
    double jacobian = 0;  // mm^2
};
StrainAt strain_at(LoadKind kind, const TriangleNodes& nodes, ReferencePoint at);

// Stress amplitudes (tensor shears) of strain amplitudes (engineering shears), MPa.
Eigen::Matrix<double, 6, 1> stress_of(const ElasticConstants& steel, const Eigen::Matrix<double, 6, 1>& strain);

// Stiffness of one element, N/mm, over the whole ring. Symmetric.
ElementMatrix element_stiffness(LoadKind kind, const ElasticConstants& steel, const TriangleNodes& nodes);

}  // namespace splicewright
