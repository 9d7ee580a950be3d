// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace splicewright
{

// 10-node tetrahedra in an order of our own: the corners
// (of positive volume: (1-0) x (2-0) . (3-0) > 0), then the middles of the edges 01 12 20 03 13 23.
struct SolidMesh
{
    std::vector<std::array<double, 3>> nodes;            // x y z, mm; z along the shaft, y = 0 the cut plane of the lap
    std::vector<std::array<std::int32_t, 10>> elements;  // node indices
    std::vector<std::int32_t> regions;                   // of each element, index into the names of the regions
    // Corners in the order whose right-hand normal points out of the element, then the middles of 01 12 20.
    struct Face
    {
        std::array<std::int32_t, 6> nodes;
        std::int32_t element;
    };
    std::map<std::string, std::vector<Face>> faces;  // by name; of an unfused face the side that stands first in pairs
    // Coincident nodes on the two sides of an unfused face.
    struct NodePair
    {
        std::int32_t first, second;  // bar, sleeve (slit); left bar, right bar (land, lap)
    };
    std::map<std::string, std::vector<NodePair>> pairs;  // by name of the face
};

}  // namespace splicewright
