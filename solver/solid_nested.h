// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <vector>

#include "mesh/solid_mesh.h"
#include "solver/solid_contact.h"

namespace splicewright
{

// Node values of a mesh, read by its shape functions at the nodes of the mesh whose elements 8 e to 8 e + 7 are parts
// of its element e: where an iteration on the finer mesh begins. [values][3, n mesh nodes] of each mesh.
std::vector<Eigen::Matrix3Xd> carried_to_finer(const SolidMesh& coarse, const SolidMesh& fine,
                                               const std::vector<const Eigen::Matrix3Xd*>& values);

// The places of a surface that are closed where the nearest place of a coarser mesh has pressure.
std::vector<bool> closed_as(const ContactSurface& coarse, const ContactState& state, const ContactSurface& surface,
                            const SolidMesh& coarse_mesh, const SolidMesh& mesh);

}  // namespace splicewright
