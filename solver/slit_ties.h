// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <vector>

#include "cases/case.h"
#include "solver/freedoms.h"

namespace splicewright
{

// The ways in which the slits of a case may hang together, without overlap: first with snug faces free; where one is
// snug, then with it held.
std::vector<Ties> slit_ties(const Case& asked);

// Radial interference of each side that is pressed, mm, else 0: [left, right].
std::array<double, 2> press_overlap(const Case& asked);

}  // namespace splicewright
