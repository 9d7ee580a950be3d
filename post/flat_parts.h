// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <cstddef>

namespace splicewright
{

// The eight flat tetrahedra between the ten nodes of an element, order as SolidMesh::elements; the octahedron in its
// middle around the line from the middle of 01 to that of 23.
constexpr std::array<std::array<std::size_t, 4>, 8> flat_parts{
    {{0, 4, 6, 7}, {4, 1, 5, 8}, {6, 5, 2, 9}, {7, 8, 9, 3}, {4, 9, 5, 6}, {4, 9, 6, 7}, {4, 9, 7, 8}, {4, 9, 8, 5}}};

}  // namespace splicewright
