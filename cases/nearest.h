// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace splicewright
{

// Insertions, deletions, replacements and swaps of neighbours that turn one text into the other.
// Source: [Damerau1964], the restricted form (no letter is moved twice).
int edit_distance(std::string_view first, std::string_view second);

// The candidates within a third of the length of the text, nearest first, letter case ignored; at most `n_most`.
std::vector<std::string> nearest(std::string_view text, const std::vector<std::string>& candidates, std::size_t n_most);

}  // namespace splicewright
