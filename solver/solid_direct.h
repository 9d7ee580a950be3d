// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/SparseCore>
#include <vector>

#include "solver/solid_system.h"

namespace splicewright
{

// The same body and loads solved by one sparse factorisation of the assembled stiffness: for small models and as a
// reference for SolidSystem, with nothing of its operator or preconditioner. Time grows with the square of the size.
// Throws CannotCompute as SolidSystem does.
SolidSolution direct_solution(const SolidMesh& mesh, const SolidBody& body, const std::vector<NodeForces>& loads);

// Its matrix, N/mm, with a one for each held freedom: 3 node + axis in the order of a SolidLayout.
Eigen::SparseMatrix<double> supported_stiffness(const SolidMesh& mesh, const SolidBody& body);

}  // namespace splicewright
