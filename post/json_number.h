// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cmath>

#include "cases/problem.h"

namespace splicewright
{

// JSON knows no infinity and would write null: a number that cannot be written is our fault.
inline double finite(double value)
{
    EXPECTS(std::isfinite(value));
    return value;
}

}  // namespace splicewright
