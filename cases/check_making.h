// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"
#include "cases/places.h"

namespace splicewright
{

// What makes the wishes of [making] and the as-built offset and tilt of [joint] impossible or absurd.
std::vector<Problem> making_problems(const Case& asked, const Places& places, const std::string& file);

// Shaft as drawn, mm end to end.
double drawn_length(const Case& asked);

// How much longer the first section of a bar is made than drawn, so that the overall length comes out, mm.
double adjustment(const Case& asked, Side side);

}  // namespace splicewright
