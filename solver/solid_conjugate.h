// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "solver/solid_hold.h"
#include "solver/solid_multigrid.h"
#include "solver/solid_operator.h"

namespace splicewright
{

// One load of K u = f on its way. Node values [n_nodes, node_stride]; q has n_rows rows.
struct ConjugateLoad
{
    NodeValues<double> u, r, p, q;  // displacement, residual f - K u, direction, K p
    MultigridWork work;
    double f_norm = 0;
    double r_norm = 0;
    int iterations = 0;
    std::vector<double> pair_forces;  // [n held pairs] N, of the last true residual
};

// Sum of products of x, y, z; the unused fourth number never enters.
double node_product(SolidTeam& team, const NodeValues<double>& a, const NodeValues<double>& b, std::int64_t n_nodes);

// Iterates each load from its u and r until |r| <= tolerance |f|, or until most_iterations in all.
// Flexible conjugate gradients, because the preconditioner rounds to single precision. Source: [Notay2000].
// hold: the pairs of u already have their openings, and r is projected.
void iterate(SolidTeam& team, const SolidOperator<double>& K, const SolidMultigrid& multigrid, const SolidHold& hold,
             std::vector<ConjugateLoad>& loads, double tolerance, int most_iterations);

}  // namespace splicewright
