// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/check_row.h"
#include "solver/solid_answer.h"

namespace splicewright
{

// Checks of weld metal that has no notch radius, by the force that the solid model passes through it: plug welds, the
// ends of sleeve welds that do not go all round, and these welds where they are loaded most. The worst of the places,
// of the brackets and of the directions of bending counts.
//   strength  the resultant over the throat, or over the hole: simplified method of EN 1993-1-8
//             von Mises stress of the mean stress there, against yield of the weakest of filler and heated parts
//   fatigue   IIW throat classes, over the life asked for
std::vector<CheckRow> weld_metal_checks(const Case& asked, const SolidModelAnswer& solid);

}  // namespace splicewright
