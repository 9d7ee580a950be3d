// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

namespace splicewright
{

// 2000000 as "2 000 000" that no line breaks; finite.
std::string counted(double count);

// The same with two digits that count, rounded down, so that no life is overstated.
std::string rounded_down(double count);

}  // namespace splicewright
