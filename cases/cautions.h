// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"

namespace splicewright
{

// What is said in bold about parts of unknown steel; it is among the cautions as well.
std::optional<std::string> unknown_steel_warning(const Case& asked);

// What is allowed but deserves a thought, in whole sentences.
std::vector<std::string> cautions_of(const Case& asked);

}  // namespace splicewright
