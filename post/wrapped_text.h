// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

namespace splicewright
{

constexpr std::size_t page_columns = 100;  // of what is printed on a terminal

// Broken at spaces to fit the page; later lines are indented.
std::string wrapped(const std::string& text, std::size_t indent);

}  // namespace splicewright
