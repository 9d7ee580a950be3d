// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <functional>
#include <vector>

#include "mesh/solid_mesh.h"
#include "solver/elements.h"

namespace splicewright
{

// Forces of one region on the nodes that it shares with others.
struct SharedForces
{
    Eigen::Matrix3Xd place;  // [3, n] mm
    Eigen::Matrix3Xd force;  // [3, n] N, of the rest of the body on the region
};

// At nodes of `region` that also belong to an element of `other`: what holds the region in balance there. Exact as
// nodal forces of the discrete solution, so that sums over a section have no error of stress recovery.
// displacement: [3, n mesh nodes] mm. steel: by region.
SharedForces shared_forces(const SolidMesh& mesh, const std::vector<ElasticConstants>& steel,
                           const Eigen::Matrix3Xd& displacement, std::int32_t region,
                           const std::function<bool(std::int32_t)>& other);

}  // namespace splicewright
