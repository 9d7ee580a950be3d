// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <vector>

#include "mesh/solid_mesh.h"
#include "solver/solid_operator.h"
#include "solver/solid_system.h"

namespace splicewright
{

// A body and its loads in the words of the layout, with what would make them unsolvable refused.

// By rising node.
std::vector<HeldNode> held_nodes(const SolidLayout& layout, const std::vector<HeldFreedom>& held);

// Each end must be held by the layout's list of linked nodes.
std::vector<LayoutSpring> layout_springs(const SolidLayout& layout, const std::vector<PairSpring>& springs);

// Mesh nodes that springs may name: of the body's springs, its linkable nodes and all pairs of the mesh.
std::vector<std::int32_t> linked_nodes(const SolidMesh& mesh, const SolidBody& body);

// True when nothing is held and no spring goes to the ground.
bool is_free(const SolidBody& body);

// Throws CannotCompute when a part is neither held nor joined to one that is; a free body must be in one piece.
void refuse_loose_parts(const SolidMesh& mesh, const SolidLayout& layout, const SolidBody& body);

// Force and moment about the origin.
struct Resultant
{
    Eigen::Vector3d force{0, 0, 0};   // N
    Eigen::Vector3d moment{0, 0, 0};  // N mm
};
Resultant resultant_of(const Eigen::Matrix3Xd& places, const Eigen::Matrix3Xd& forces);

// The forces less what round-off leaves unbalanced. Throws CannotCompute when that is more than round-off.
Eigen::Matrix3Xd balanced(const Eigen::Matrix3Xd& places, const Eigen::Matrix3Xd& forces);

// The displacement less its mean translation and rotation.
Eigen::Matrix3Xd without_rigid_motion(const Eigen::Matrix3Xd& places, const Eigen::Matrix3Xd& displacement);

}  // namespace splicewright
