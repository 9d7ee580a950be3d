// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/problem.h"

namespace splicewright
{

constexpr std::size_t longest_case_text = 1024 * 1024;  // bytes

// What keeps a text from being read as TOML at all: length, bytes that are not UTF-8, NUL bytes, and nesting so deep
// that a parser which calls itself would run out of stack. Empty when the text may be parsed.
std::vector<Problem> text_problems(const std::string& text, const std::string& file);

}  // namespace splicewright
