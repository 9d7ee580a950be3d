// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace splicewright
{

// 10-node tetrahedra of a solid; immutable once made.
// Node order, our own: corners 0 1 2 3, then the middles of edges 01 12 20 03 13 23; adapters convert to it.
struct SolidMesh
{
    std::vector<std::array<double, 3>> nodes;            // mm
    std::vector<std::array<std::int32_t, 10>> elements;  // [n_elements] into nodes
    std::vector<std::int32_t> regions;                   // [n_elements] index of material and region

    // Corner nodes, then the middles of edges 01 12 20; counter-clockwise seen from outside.
    struct Face
    {
        std::array<std::int32_t, 6> nodes;
        std::int32_t element;
    };
    std::map<std::string, std::vector<Face>> faces;  // named boundary faces

    // Matched nodes across an unfused face.
    struct NodePair
    {
        std::int32_t first, second;
    };
    std::map<std::string, std::vector<NodePair>> pairs;
};

}  // namespace splicewright
