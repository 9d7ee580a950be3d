// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace splicewright
{

enum class NumberFault
{
    none,
    absent,         // does not start with a number
    too_large,      // beyond what a double holds
    zero_divisor,   // "1/0"
    comma,          // "28,4"
    not_a_number,   // "nan", "inf"
    hexadecimal,    // "0x1C"
    second_number,  // "1 000"
    separator,      // "1_000"
};

// A number at the start of a text and what follows it.
struct LeadingNumber
{
    NumberFault fault = NumberFault::none;
    double value = 0.0;
    std::string written;    // as found; for a comma: as it should be written
    std::string_view rest;  // after the number, trimmed
};

// Decimal with optional exponent, fraction "7/8" or mixed number "1 1/8" and "1-1/8". No locale.
LeadingNumber leading_number(std::string_view text);

}  // namespace splicewright
