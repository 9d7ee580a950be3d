// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <string>

namespace splicewright
{

// The text of a case file that read_case accepts, anywhere in the space of what can be asked: plain stepped shafts,
// joints with and without a sleeve, every fit, limits hit exactly as often as missed. Pure: same seed, same text.
std::string random_case_text(std::uint64_t seed);

// The text with one to four damages: bytes flipped, lines lost, numbers senseless, units swapped, keys misspelt,
// tables doubled, the end cut off. What comes out may be no case, no TOML and no text. Pure.
std::string mutated_case_text(const std::string& text, std::uint64_t seed);

}  // namespace splicewright
