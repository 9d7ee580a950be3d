// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"

namespace splicewright
{

// What of a case is not a body of revolution.
struct BeyondRevolution
{
    std::string field;          // "sleeve.weld.coverage"
    std::string value;          // "270 deg"
    std::string what;           // "sleeve welds over 270 deg of the circumference"
    bool has_stand_in = false;  // the meridian model has an equivalent for it, and says so
};

// Empty for a body of revolution, for which meridian and solid model must agree.
std::vector<BeyondRevolution> beyond_revolution(const Case& asked);

}  // namespace splicewright
