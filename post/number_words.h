// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

namespace splicewright
{

// 2000000 as "2 000 000" that no line breaks; finite.
std::string counted(double count);

// The same with two digits that count, rounded down, so that no life is overstated.
std::string rounded_down(double count);

// 0.937 as "93.7 %", with that many digits.
std::string percent(double share, int digits);

// Times the life asked for; beyond it a number has no meaning. Judgement.
constexpr double longest_life = 1e4;

// A multiple of the life asked for: "1.4 x", "182 x"; "> 10 000 x" beyond what has a meaning, infinite included.
std::string life_words(double life);

// A value of the case as people read it, five digits: "31.333 mm" of "31.33333333 mm"; what is short stays as it is.
std::string short_value(const std::string& value);

// An error bar: "±0.3 %"; "none" for 0, a number without a mesh behind it.
std::string error_words(double error_pct);

}  // namespace splicewright
