// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "solver/solid_operator.h"

namespace splicewright
{

// The 3 x 3 block of each node on the diagonal of the stiffness with its springs, N/mm: [n_nodes, 8] with
// xx xy xz yy yz zz and two zeros.
NodeValues<double> stiffness_diagonal(SolidTeam& team, const SolidOperator<double>& K);

}  // namespace splicewright
