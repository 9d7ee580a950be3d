// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <cstdint>
#include <vector>

#include "solver/solid_blocks.h"

namespace splicewright
{

// Smoothed aggregation: neighbouring nodes are taken together, and each aggregate moves as the six rigid motions let
// it; one damped Jacobi step makes these motions smooth. Source: [VanekMandelBrezina1996].

// Values at the freedoms of each node for the motions that give no or hardly any force: columns are the six motions.
template <int F>
using SlowMotions = std::vector<Eigen::Matrix<double, F, 6>>;

// The six rigid motions at places, turned about their centre and of like size; zero at held freedoms.
SlowMotions<3> rigid_motions(const Eigen::Matrix3Xd& places, const std::vector<int>& held);

template <int F>
struct CoarseStep
{
    BlockMatrix<double, F, 6> P;  // fine values from coarse ones
    BlockMatrix<double, 6, 6> A;  // P^T A P
    SlowMotions<6> motions;       // on the coarse nodes
};

// The next coarser level of A. largest: largest eigenvalue of its Jacobi iteration matrix, by largest_eigenvalue.
template <int F>
CoarseStep<F> coarse_step(SolidTeam& team, const BlockMatrix<double, F, F>& A, const SlowMotions<F>& motions,
                          double largest);

// Inverses of the blocks on the diagonal of A.
template <int F>
std::vector<Eigen::Matrix<double, F, F>> inverse_diagonal(const BlockMatrix<double, F, F>& A);

// Estimate of the largest eigenvalue of D^-1 A, D the blocks on its diagonal; low by some percent at most.
template <int F>
double largest_eigenvalue(SolidTeam& team, const BlockMatrix<double, F, F>& A);

}  // namespace splicewright
