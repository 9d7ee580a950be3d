// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case_table.h"
#include "cases/variation.h"

namespace splicewright
{

// The [compare] table: a list of values for each key, or [from, to, count] for a range.
// Reports all its problems; what comes back then is not to be used.
std::vector<Variation> compare_at(const CaseTable& top);

// The same of a case text without problems.
std::vector<Variation> stated_variations(const std::string& case_text);

}  // namespace splicewright
