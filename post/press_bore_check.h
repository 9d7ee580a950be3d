// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>

#include "post/check_row.h"
#include "post/press_fit.h"
#include "solver/meridian.h"

namespace splicewright
{

// The sleeve of a case on the bar of one side. Expects a sleeve that presses there.
Sourced<PressFitStress> press_fit_of(const Case& asked, Side side);

// Yield at the bore of a pressed sleeve, where the press stretches it most: strength/sleeve-mid/press-bore. Thick
// cylinder under the pressure by finite elements, with the sleeve's part of the peak load. Nothing where no side
// presses.
std::optional<CheckRow> press_bore_check(const Case& asked, const MeridianAnswer& answer);

}  // namespace splicewright
