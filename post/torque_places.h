// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "cases/case.h"

namespace splicewright
{

// Where torque flow is read along the shaft of a case with a sleeve, mm: from left to right past both welds, on both
// sides of each jump of the stiffness.
std::vector<double> torque_places(const Case& asked);

// GJ of the sleeve over that of sleeve and bar there; 0 beside the sleeve.
double share_by_stiffness(const Case& asked, double z);

}  // namespace splicewright
