// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "cases/case.h"
#include "solver/meridian.h"
#include "solver/stress_field.h"

namespace splicewright
{

// Stress along one edge of a sleeve weld, around the shaft, of the solid model: of a weld that does not go all round or
// stands beside plug welds it is not the same everywhere.
struct RoundCurve
{
    std::string site;                               // "bar-toe.left"
    std::vector<std::pair<double, double>> points;  // degrees from the plane of the lap, 0 to 360, and MPa
};

// Of the toes and the root of the weld: the largest von Mises stress over a turn of the bending in each stretch of five
// degrees, over all places of the site there, the worse where a slit may be open or closed. A stretch without weld has
// no point. The largest of a curve is what the site is judged by.
std::vector<RoundCurve> stress_round_the_weld(const MeridianAnswer& answer, const CombinedLoad& load, Side side);

}  // namespace splicewright
