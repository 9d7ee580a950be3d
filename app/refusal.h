// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/problem.h"

namespace splicewright
{

// Prints the problems, how many they are and that nothing was computed; the exit status of bad input. `in` may be
// empty.
int refused(const std::vector<Problem>& problems, const std::string& in = {});

}  // namespace splicewright
