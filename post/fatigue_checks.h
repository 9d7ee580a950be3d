// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/check_row.h"
#include "solver/meridian.h"

namespace splicewright
{

// Fatigue over the life asked for: torque blocks, and one fully reversed bending cycle per revolution; each torque
// cycle also brings one bending cycle at its own largest torque.
//   toes, roots, land edge   effective notch stress of the reference radius, normal and shear, joined by squares
//   butt-surface, sleeve-mid structural stress against nominal classes
//   bar, shoulder, groove    machine-design practice: Marin, notch sensitivity, Goodman, Miner
// `notched` is solved with toes of the reference radius (the same answer when the case's toes have it).
// Without blocks and without bending there are no rows.
std::vector<CheckRow> fatigue_checks(const Case& asked, const MeridianAnswer& answer, const MeridianAnswer& notched);

}  // namespace splicewright
