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

// In double quotes, with control characters and line ends shown as \xNN, cut after 60 characters.
std::string quoted(std::string_view text);

bool has_control_characters(std::string_view text);

}  // namespace splicewright
