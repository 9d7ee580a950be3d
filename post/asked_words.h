// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"
#include "post/check_row.h"

namespace splicewright
{

// What was asked, in words that all outputs share.

std::string in_newton_metre(NewtonMillimetre moment);  // "450"

// "peak torque ...", where it comes from, the cycles of each block, the history, the revolutions; one line each.
std::vector<std::string> load_words(const Case& asked);

// Sleeve welds that do not go all round, and plug welds, one sentence each; empty where there are none. The views of
// the drawing, the pictures of the section and the amounts of the shop sheet do not show them.
std::vector<std::string> partial_weld_words(const Case& asked);

const char* kind_name(CheckKind kind);  // "strength", "fatigue"

// "287 of 430 MPa"; "life 1.4 x"
std::string demand_words(const CheckRow& row);

// "left.bore = 0 mm (solid bar)"
std::string default_words(const DefaultUsed& used);

}  // namespace splicewright
