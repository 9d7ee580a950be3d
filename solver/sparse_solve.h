// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/SparseCore>

namespace splicewright
{

// Solution of K x = f with K symmetric positive definite, given by its lower triangle.
// One CHOLMOD factorisation, or when that fails one by Eigen's SimplicialLDLT, then one step of iterative refinement.
// Throws CannotCompute when both fail.
Eigen::VectorXd sparse_solution(const Eigen::SparseMatrix<double>& K, const Eigen::VectorXd& f);

}  // namespace splicewright
