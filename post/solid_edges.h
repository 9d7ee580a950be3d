// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "solver/solid_fields.h"

namespace splicewright
{

// An edge of the mesh on the outside of the solid model that a drawing shows as a line: parts meet there, or the
// surface turns sharply.
struct SolidEdge
{
    std::array<std::int32_t, 3> point;  // one end, the other end, the middle: into the fields, of one of the faces
};

// Each once. The two halves of a sleeve are one part.
std::vector<SolidEdge> outside_edges(const SolidFields& fields, const std::vector<SolidSkinFace>& skin);

}  // namespace splicewright
