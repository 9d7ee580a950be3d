// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <vector>

#include "mesh/solid_mesh.h"

namespace splicewright
{

// Node values of a mesh, read by its shape functions at the nodes of the mesh whose elements 8 e to 8 e + 7 are parts
// of its element e: where an iteration on the finer mesh begins. [values][3, n mesh nodes] of each mesh.
std::vector<Eigen::Matrix3Xd> carried_to_finer(const SolidMesh& coarse, const SolidMesh& fine,
                                               const std::vector<const Eigen::Matrix3Xd*>& values);

}  // namespace splicewright
