// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "cases/case.h"
#include "cases/rule_report.h"

namespace splicewright
{

constexpr std::size_t most_sections = 40, most_grooves = 40;  // of one bar
constexpr double greatest_bar_length = 10e3;                  // mm

// The case with every value that is absurd in itself reported and made `unread`,
// so that the other rules do not complain about what follows from it.
Case plausible_part(RuleReport& report, const Case& asked);

// The rules of check_geometry, one function for each part.
void check_bar(RuleReport& report, const Case& asked, Side side);
bool bore_fits(const Bar& bar);  // within the limits that check_bar reports
void check_grooves(RuleReport& report, const Case& asked, Side side);
void check_load_end(RuleReport& report, const Case& asked, Side side);
void check_joint(RuleReport& report, const Case& asked);
void check_lap_corner(RuleReport& report, const Case& asked);
void check_sleeve(RuleReport& report, const Case& asked);
void check_sleeve_weld(RuleReport& report, const Case& asked);
void check_partial_welds(RuleReport& report, const Case& asked);

}  // namespace splicewright
