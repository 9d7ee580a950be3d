// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/check_row.h"
#include "solver/meridian.h"

namespace splicewright
{

// Strength at the peak load:
//   bar.S         yield of the plain bar away from notches
//   groove.S.N    yield of the net section
//   bar-toe.S     yield of the bar beside the weld, softened by its heat
//   sleeve-mid    yield of the sleeve
//   butt-surface  yield of the weakest metal at the butt
//   throat.S      sleeve weld by EN 1993-1-8, with its stated limits
// Local stress at a notch is no strength limit of ductile steel; notches are judged in fatigue.
std::vector<CheckRow> strength_checks(const Case& asked, const MeridianAnswer& answer);

}  // namespace splicewright
