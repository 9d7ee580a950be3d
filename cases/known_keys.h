// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace splicewright
{

// Every key of the case file as a dotted path without indices, "left.section.diameter"; tables included.
const std::vector<std::string>& known_keys();

// Whether a dotted path, indices allowed, is a key of the case file.
bool is_known_key(const std::string& field);

// The known key that an unknown one was meant to be: misspelled, or right but in another table. Empty: no idea.
std::string intended_key(const std::string& field);

}  // namespace splicewright
