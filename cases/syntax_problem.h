// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "cases/problem.h"

namespace splicewright
{

// A TOML syntax error in our words: where, what the parser says, and the likely mend seen in that line.
Problem syntax_problem(const std::string& text, const std::string& file, int line, int column,
                       std::string_view description);

}  // namespace splicewright
