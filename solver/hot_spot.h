// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <string>
#include <vector>

#include "cases/case.h"
#include "solver/meridian_level.h"

namespace splicewright
{

// A reading of the surface stress: distance from the toe over the thickness, and its weight in the extrapolation.
struct ReadingPoint
{
    double distance = 0, weight = 0;
};

// Extrapolation to the toe, the value at distance 0 of the polynomial through the readings.
// Source: [Hobbacher2016] sec. 2.2.3.4, points from secondary sources and from memory; weights are Lagrange's.
constexpr std::array<ReadingPoint, 2> linear_readings{{{0.4, 1.67}, {1.0, -0.67}}};
constexpr std::array<ReadingPoint, 3> quadratic_readings{{{0.4, 2.52}, {0.9, -2.24}, {1.4, 0.72}}};

// At the toe "bar-toe.S" on the bar's surface and, where the weld reaches the sleeve's outer surface, at the toe
// "sleeve-toe.S" on that surface. Thickness: the wall of a hollow part, half the diameter of a solid bar (judgement).
// Values carry no error yet. Toes whose surface is shorter than the readings need are left out.
std::vector<HotSpot> hot_spots(const Case& asked, const Level& level);

}  // namespace splicewright
