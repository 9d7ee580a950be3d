// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "cases/case.h"
#include "solver/closed_slits.h"

namespace splicewright
{

// What is told of slits that close under the peak load.
std::string closed_note(const ClosedSlits& closed);

// Whether the toes already have the reference radius of the notch method.
bool toes_are_reference(const Case& asked);

}  // namespace splicewright
