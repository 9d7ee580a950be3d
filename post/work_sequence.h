// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/making.h"

namespace splicewright
{

// The order of the work at the bench, one sentence each. Common practice, no source.
std::vector<std::string> work_sequence(const Case& asked, const ShopSheet& sheet);

}  // namespace splicewright
