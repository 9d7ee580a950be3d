// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace splicewright
{

std::string_view trimmed(std::string_view text);

std::string lower_case(std::string_view text);  // ASCII letters only

// Replaces every occurrence.
std::string replaced(std::string_view text, std::string_view what, std::string_view with);

// Control characters and line ends as \xNN, cut after so many bytes.
std::string printable(std::string_view text, std::size_t longest);

// Printable, in double quotes, cut after 60 bytes.
std::string quoted(std::string_view text);

bool has_control_characters(std::string_view text);

}  // namespace splicewright
