// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <vector>

#include "mesh/mesh.h"

namespace splicewright
{

// The three loads of the meridian model.
enum class LoadKind
{
    torsion,  // harmonic 0, unknown u_theta
    axial,    // harmonic 0, unknowns u_r, u_z; the press fit is one of these, with no outside load
    bending,  // harmonic 1, unknowns u_r cos, u_theta sin, u_z cos
};

// Amplitudes over theta, measured from the plane of the bending couple (tension side at theta = 0):
// torsion and axial do not depend on theta; in bending rr, tt, zz, rz vary as cos, rt and tz as sin.
struct StressAmplitude
{
    // rows rr, tt, zz, rt, tz, rz (tt: hoop, rt and tz: shears with theta), tensor components, MPa
    Eigen::Matrix<double, 6, Eigen::Dynamic> value;
};

// Nodes seen from their region: a node on a material interface stands here once for each region,
// so that no value is averaged across one.
struct RegionNodes
{
    std::vector<int> node;                           // [n] mesh node
    std::vector<int> region;                         // [n] mesh region
    Eigen::Matrix<int, 6, Eigen::Dynamic> triangle;  // [6, n_triangles] into node, order as Mesh::triangle
};

// Displacement amplitudes at the mesh nodes, mm: rows u_r, u_theta, u_z.
struct DisplacementAmplitude
{
    Eigen::Matrix3Xd value;  // [3, n_nodes]
};

// What pictures and files show: one mesh and the fields of the unit loads on it.
struct SolvedFields
{
    Mesh mesh;
    RegionNodes region_nodes;
    StressAmplitude torsion;  // for 1 N*mm
    StressAmplitude bending;  // for 1 N*mm
    StressAmplitude axial;    // for 1 N
    StressAmplitude press;    // for the fit as it is; empty without a press fit
    DisplacementAmplitude torsion_displacement, bending_displacement, axial_displacement, press_displacement;
};

// Loads for a stated combination, house units.
struct CombinedLoad
{
    double torque = 0;   // N*mm
    double bending = 0;  // N*mm
    double axial = 0;    // N
    double press = 0;    // 1: with the press fit
};

// Stress at the region nodes for a combination of loads, at one angle from the plane of bending.
// Returns [6, n] rows rr, tt, zz, rt, tz, rz in MPa.
Eigen::Matrix<double, 6, Eigen::Dynamic> combined_stress(const SolvedFields& fields, const CombinedLoad& load,
                                                         double theta_rad);

// Displacement at the mesh nodes for the same: [3, n_nodes] rows u_r, u_theta, u_z in mm.
Eigen::Matrix3Xd combined_displacement(const SolvedFields& fields, const CombinedLoad& load, double theta_rad);

// von Mises equivalent stress, MPa, of columns rr, tt, zz, rt, tz, rz (tensor shears).
//   sqrt(((rr-tt)^2 + (tt-zz)^2 + (zz-rr)^2)/2 + 3 (rt^2 + tz^2 + rz^2))
// Source: [Mises1913]. Exact to round-off; invariant under rotation of the frame.
Eigen::VectorXd von_mises(const Eigen::Matrix<double, 6, Eigen::Dynamic>& stress);

}  // namespace splicewright
