// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/check_row.h"
#include "solver/meridian.h"

namespace splicewright
{

// One scenario as it was solved for its checks.
struct SolvedScenario
{
    const MeridianAnswer& answer;
    const MeridianAnswer& notched;                // toes of the reference radius; may be the same as `answer`
    const MeridianAnswer* small_notch = nullptr;  // notches of 0.05 mm; absent where no wall is thin
};

// Fatigue over the life asked for, all methods that apply side by side: torque blocks, and one fully reversed bending
// cycle per revolution; each torque cycle also brings one bending cycle at its own largest torque.
//   toes, roots, land edge   effective notch stress, structural hot-spot stress, nominal classes, throat stress
//   butt-surface, sleeve-mid structural stress against nominal classes
//   bar, shoulder, groove    machine-design practice: Marin, notch sensitivity, Goodman, Miner; parent classes
// Without blocks and without bending there are no rows.
std::vector<CheckRow> fatigue_checks(const Case& asked, const SolvedScenario& solved);

}  // namespace splicewright
