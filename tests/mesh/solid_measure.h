// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <string>
#include <vector>

#include "cases/case.h"
#include "mesh/solid_mesher.h"

namespace splicewright::sample
{

// Volume and first moments of a region, mm^3 and mm^4, by quadrature that is exact for these elements.
struct SolidMeasure
{
    double volume = 0;
    std::array<double, 3> moment{};
};
SolidMeasure measure_of(const SolidMeshAnswer& answer, const std::string& region);

// Area of a named face, mm^2, by quadrature to round-off on faces as little curved as these.
double area_of(const SolidMesh& mesh, const std::string& face);

// Number of parts that hang together through shared nodes, of the elements in these regions.
int parts_of(const SolidMeshAnswer& answer, const std::vector<std::string>& regions);

// Equal 32 mm bars with a half lap of 20 mm, fused 8 mm deep, under a straight sleeve of 110 x 50 mm.
Case half_lap_splice();

// With three flush plug welds of 10 mm on the left and two of 8 mm, 5 mm deep, on the right.
Case plugged_splice();

// With sleeve welds over 270 degrees, from 30 degrees on the left and from 100 degrees on the right.
Case partly_welded_splice();

}  // namespace splicewright::sample
