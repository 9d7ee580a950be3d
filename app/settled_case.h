// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>

#include "cases/case.h"

namespace splicewright
{

// Takes open slits whose gap is less than `closes` (mm, that bar and sleeve come together under the peak load) as snug.
// The note to be told; nothing where no slit closes.
std::optional<std::string> close_slits(Case& asked, double closes);

// Whether the toes already have the reference radius of the notch method.
bool toes_are_reference(const Case& asked);

}  // namespace splicewright
