// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "cases/case.h"
#include "mesh/mesh.h"
#include "solver/unit_solution.h"

namespace splicewright
{

// Mean pressure of the press fit over the middle half of each pressed side, MPa; 0 where no side is pressed.
// press: the solution of the fit alone.
double fit_pressure(const Case& asked, const Mesh& mesh, const std::vector<ElasticConstants>& steel,
                    const UnitSolution& press);

}  // namespace splicewright
