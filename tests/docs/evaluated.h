// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

namespace splicewright
{

// Value of "2*450000/(pi*24^3)": + - * / ^ ( ) numbers, pi, sqrt, log10, min, max. Throws std::runtime_error on
// anything else. Written for the tests alone: it shares nothing with the program.
double evaluated(const std::string& expression);

}  // namespace splicewright
