// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "app/compare.h"
#include "post/search_text.h"

namespace splicewright
{

struct FindPlan
{
    std::string key;        // one of the study's, with a unit and at least two values
    double target = 1;      // utilisation
    std::string tolerance;  // "0.1 mm": how near the value must be known; empty: a thousandth of the range
};

// What keeps the plan from being carried out on this study.
std::vector<Problem> find_problems(const Study& study, const FindPlan& plan);

// Looks at the values of the key as samples, and halves every stretch between two of them across which the utilisation
// passes the target, down to the tolerance. What happens twice between two samples is not seen.
// Expects a study that is computed, and no problems.
Search search_value(const Study& study, const FindPlan& plan, const PoolPlan& pool, OptionStore& store,
                    const Computed& computed);

}  // namespace splicewright
