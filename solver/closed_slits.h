// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>

#include "cases/case.h"

namespace splicewright
{

// Open slits that a load closes.
struct ClosedSlits
{
    double closes = 0;  // mm, that bar and sleeve come together
    double gap = 0;     // mm, the narrowest of those that closed
};

// Takes open slits whose gap is less than `closes` (mm) as snug; nothing where none is.
std::optional<ClosedSlits> close_slits(Case& asked, double closes);

}  // namespace splicewright
