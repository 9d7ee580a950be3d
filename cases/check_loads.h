// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"
#include "cases/places.h"

namespace splicewright
{

// Loads that contradict each other or lie outside any shaft that this program is for.
std::vector<Problem> load_problems(const Case& asked, const Places& places, const std::string& file);

}  // namespace splicewright
