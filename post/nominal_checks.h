// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/check_row.h"
#include "post/weld_rating.h"
#include "solver/meridian.h"

namespace splicewright
{

// Fatigue of welds by nominal stress and the class of the detail, IIW and EN 1993-1-9 side by side:
//   bar-toe.S     the end of a cover on the bar; largest principal stress
//   sleeve-toe.S  toe of a load-carrying fillet on the sleeve
//   root.S        throat stress; the sleeve as a tube in a socket
//   land-edge     throat stress of a butt that is not fused through
//   butt-surface  ground butt, EN (IIW with its finite-element stress stands in fatigue_checks)
//   sleeve-mid, bar.S  parent metal
// No document lists a sleeve on a round bar: which class stands for which place is a judgement.
std::vector<CheckRow> nominal_checks(const Case& asked, const MeridianAnswer& answer);

// Classes of the IIW at two million cycles, MPa, with the partial factor for safe life; provenance: judgement, since
// which detail a shaft's weld is stands nowhere.
WeldCurves iiw_curves(double normal_class, double shear_class);

}  // namespace splicewright
