// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "post/report.h"

namespace splicewright
{

// One check of a judged case worked through as on a page of a notebook: loads, numbered steps with formula, numbers and
// result, method, validity, source, result. 100 columns but for formulas that are longer, UTF-8.
std::string explain_text(const Case& asked, const Judgement& judged, const CheckRow& row);

// Ids of the checks of a judged case with what they compare, one a line.
std::string explainable_text(const Judgement& judged);

}  // namespace splicewright
