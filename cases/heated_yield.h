// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

namespace splicewright
{

// What a condition of the steel leaves of its yield beside a weld. Judgement, no source.
struct HeatedYield
{
    std::string state;  // "cold-drawn"
    double factor = 1;
    std::string reason;
};

// The conditions that a case may name for a steel of its own; each factor is the least that the library has for a bar
// or tube in that condition.
const std::vector<HeatedYield>& heated_yields();

// For a steel of which only the hardness is known: a soft one may be cold-drawn, a harder one is quenched and tempered.
HeatedYield heated_yield_of_hardness(double vickers);

}  // namespace splicewright
