// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "mesh/outline.h"

namespace splicewright
{

// Distance from a crack tip to the nearest thing that is not its own crack or the line ahead of it, mm: the far end of
// a curve that meets the tip, any other curve, the axis. Inside this circle the section is a plain sector.
double tip_reach(const Outline& outline, const OutlineTip& tip);

}  // namespace splicewright
