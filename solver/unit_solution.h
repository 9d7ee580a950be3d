// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <vector>

#include "mesh/mesh.h"
#include "solver/elements.h"
#include "solver/elimination.h"
#include "solver/freedoms.h"
#include "solver/stress_field.h"

namespace splicewright
{

// Displacement under one unit load, with its evidence.
struct UnitSolution
{
    LoadKind kind = LoadKind::torsion;
    Eigen::VectorXd u;    // [n_nodes * unknowns_per_node] mm
    double work = 0;      // load times its own displacement: twist in rad, end rotation in rad, extension in mm
    double residual = 0;  // |K u - f| / |f| over the free unknowns
    double reaction_imbalance = 0;  // reaction at the held rigid motions over the load
    int n_free = 0;
};

// Largest evidence that still allows a verdict. Round-off alone reaches 2e-7 in the reaction of shafts of 80 diameters
// on fine meshes; a loose body or a failed factorisation leaves far more.
constexpr double residual_allowed = 1e-7;
constexpr double reaction_imbalance_allowed = 1e-6;
constexpr double section_imbalance_allowed = 1e-6;  // sleeve and butt against the load, at the joint

// Self-balanced unit load on both ends with the exact linear traction: 1 N*mm of torque or bending, 1 N of tension; or
// the press fit of Ties::overlap alone (kind axial).
enum class Outside
{
    unit_load,
    none,
};

// The order in which the nodes of a mesh leave its equations, for every load while the slit hangs together so.
Elimination elimination_of(const Mesh& mesh, const Ties& ties);

// One load with one factorisation for all of `outside`, in its order.
// steel: by mesh region. Throws CannotCompute when the residual or the reaction is poor.
std::vector<UnitSolution> unit_solutions(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind,
                                         const Ties& ties, const Elimination& order,
                                         const std::vector<Outside>& outside);
UnitSolution unit_solution(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind,
                           const Ties& ties, const Elimination& order);

// With an order of its own.
UnitSolution unit_solution(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind,
                           const Ties& ties);

// Displacement amplitudes at all nodes, rows u_r, u_theta, u_z.
DisplacementAmplitude displacement_amplitude(const UnitSolution& solution);

// Forces that the elements of one region put on the nodes of one curve, summed.
// axial, radial, tangential: N, amplitude conjugates (integrated over theta); moment: torque about the axis for
// torsion, bending couple about the joint for bending, N*mm.
struct SectionForce
{
    double axial = 0, radial = 0, tangential = 0, moment = 0;
};
SectionForce section_force(const Mesh& mesh, const std::vector<ElasticConstants>& steel, const UnitSolution& solution,
                           const std::string& curve, const std::string& region);

}  // namespace splicewright
