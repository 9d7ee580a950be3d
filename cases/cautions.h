// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"

namespace splicewright
{

// What is allowed but deserves a thought, in whole sentences.
std::vector<std::string> cautions_of(const Case& asked);

}  // namespace splicewright
