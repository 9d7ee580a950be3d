// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/check_geometry.h"

#include "cases/check_parts.h"

namespace splicewright
{

std::vector<Problem> geometry_problems(const Case& asked, const Places& places, const std::string& file)
{
    RuleReport report(places, file);
    bool has_sections = true;
    for (const Side side : both_sides)
    {
        const auto& bar = asked.bar[index(side)];
        if (!bar) continue;
        has_sections = has_sections && !bar->sections.empty();
        if (bar->sections.empty()) continue;
        check_bar(report, asked, side);
        check_grooves(report, asked, side);
        check_load_end(report, asked, side);
    }
    const bool has_both = asked.bar[0] && asked.bar[1];
    if (!has_both || !has_sections || !asked.joint) return report.take();
    check_joint(report, asked);
    if (!asked.sleeve) return report.take();
    check_sleeve(report, asked);
    check_sleeve_weld(report, asked);
    return report.take();
}

}  // namespace splicewright
