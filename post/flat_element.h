// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "mesh/mesh.h"
#include "solver/meridian.h"

namespace splicewright
{

// The triangle of a mesh with the smallest angle, and the largest angle of all triangles.
struct FlatElement
{
    double smallest_deg = 180, largest_deg = 0;
    double z = 0, r = 0;  // mm, its middle
};
FlatElement flattest_element(const Mesh& mesh);

// What a small angle of the mesh means, for the evidence; empty where the smallest is 10 degrees or more (judgement).
// A thin element is no less accurate as long as no angle comes near 180 degrees. Source: [BabuskaAziz1976].
std::string flat_element_words(const MeridianAnswer& answer);

}  // namespace splicewright
