// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <vector>

#include "mesh/mesh.h"
#include "mesh/outline.h"

namespace splicewright
{

// Straight three-node triangles as they come from the mesher: conforming everywhere, nothing split yet.
struct FlatMesh
{
    struct CurveEdge
    {
        int first = 0, last = 0;  // node indices
        int curve = 0;            // index into Outline::curves
    };
    std::vector<OutlinePoint> node;
    std::vector<std::array<int, 3>> triangle;  // node indices, either orientation
    std::vector<int> region;                   // per triangle, index into Outline::regions
    std::vector<CurveEdge> edge;               // every edge that lies on a curve, once
};

// Six-node triangles with their edges on arcs bent onto the arc, nodes on unfused curves split so that each face
// has its own, and the coincident pairs kept.
// Throws CannotCompute when a bent triangle folds over.
Mesh finished_mesh(const Outline& outline, const FlatMesh& flat);

}  // namespace splicewright
