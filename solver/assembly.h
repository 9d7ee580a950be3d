// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/SparseCore>
#include <vector>

#include "mesh/mesh.h"
#include "solver/elements.h"
#include "solver/freedoms.h"

namespace splicewright
{

// K x = f in the free unknowns.
struct System
{
    Eigen::SparseMatrix<double> K;  // lower triangle, N/mm
    Eigen::VectorXd f;              // N
};

// Sums the elements' stiffness over the free unknowns; prescribed constants move to the right-hand side.
// load: [n_nodes * unknowns_per_node] N. steel: by mesh region.
System assembled(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind, const Freedoms& free,
                 const Eigen::VectorXd& load);

}  // namespace splicewright
