// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "cases/case.h"
#include "cases/rule_report.h"

namespace splicewright
{

// The rules of check_geometry, one function for each part.
void check_bar(RuleReport& report, const Case& asked, Side side);
void check_grooves(RuleReport& report, const Case& asked, Side side);
void check_load_end(RuleReport& report, const Case& asked, Side side);
void check_joint(RuleReport& report, const Case& asked);
void check_sleeve(RuleReport& report, const Case& asked);
void check_sleeve_weld(RuleReport& report, const Case& asked);

}  // namespace splicewright
