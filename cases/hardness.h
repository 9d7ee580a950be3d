// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "cases/problem.h"
#include "cases/quantity.h"

namespace splicewright
{

// "28 HRC", "250 HB" (or HBW) or "270 HV" (or HV10) to a Vickers hardness, by linear interpolation in the table
// below. Valid from 150 to 653 HV: 20 to 58 HRC, 143 to 615 HB.
// On failure the one problem holds `rule` and `fix`, the corrected text without quotes.
Result<double> vickers_hardness(std::string_view text);

// Strength of a steel estimated from its hardness: the middle of the scatter and its lower end.
struct StrengthEstimate
{
    Megapascal tensile, tensile_low;
    Megapascal yield, yield_low;
};

// tensile: table of [ISO18265] and [ASTM-A370], 150 <= HV <= 653; its lower end is 10 % less (judgement).
// yield: -90.7 + 2.876 HV MPa, standard error 102 MPa; its lower end is two standard errors less.
// Source: [Pavlina2008], the regression and its standard error from memory.
StrengthEstimate strength_of_hardness(double vickers);

}  // namespace splicewright
