// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "cases/units.h"

namespace splicewright
{

// Fixes that show the form and leave the datum to the person, dots in its place: what somebody measured or decided is
// never made up.

std::string own_quantity(const std::string& key, Dimension dimension);  // length = "... mm" with your value
std::string own_number(const std::string& key);                         // count = ... with your number
std::string own_text(const std::string& key);                           // name = "..." with your words
std::string dots_of(Dimension dimension);                               // ... mm

}  // namespace splicewright
