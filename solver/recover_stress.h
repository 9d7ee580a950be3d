// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "solver/elements.h"
#include "solver/stress_field.h"
#include "solver/unit_solution.h"

namespace splicewright
{

// The nodes of a mesh seen from each region.
RegionNodes region_nodes(const Mesh& mesh);

// Stress amplitudes at the region nodes, MPa: the stress at three points inside each triangle, carried linearly to its
// nodes, averaged over the triangles of the same region that meet there. Never across a material or an unfused face.
// steel: by mesh region. Second order in the element size inside, first order at edges.
StressAmplitude recovered_stress(const Mesh& mesh, const RegionNodes& nodes, const std::vector<ElasticConstants>& steel,
                                 const UnitSolution& solution);

// How far the triangles that meet at a region node disagree: the largest distance of one triangle's stress there from
// the recovered one, as the root of the sum of the squares of all nine tensor components, MPa. [n]
// An indicator of the discretisation error, zero where one triangle stands alone; no bound.
Eigen::VectorXd stress_spread(const SolvedFields& fields, const std::vector<ElasticConstants>& steel, LoadKind kind,
                              const DisplacementAmplitude& displacement, const StressAmplitude& recovered);

}  // namespace splicewright
