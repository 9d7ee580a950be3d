// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "cases/case.h"
#include "solver/meridian.h"

namespace splicewright
{

// Who carries the torque at a place along the shaft: the sleeve with its welds, as a share of the whole; the bar
// carries the rest.
struct TorquePoint
{
    double z = 0;             // mm
    double sleeve = 0;        // from the stress of the finite elements
    double by_stiffness = 0;  // GJ of the sleeve over that of sleeve and bar; 0 beside the sleeve
};

// From left to right past both welds; empty without a sleeve.
// Share: integral of 2 pi r^2 tau_tz over the sleeve's part of the section, over that of the whole section.
std::vector<TorquePoint> torque_flow(const Case& asked, const MeridianAnswer& answer);

}  // namespace splicewright
