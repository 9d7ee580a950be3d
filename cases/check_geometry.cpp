// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/check_geometry.h"

#include "cases/check_parts.h"

namespace splicewright
{

std::vector<Problem> geometry_problems(const Case& asked, const Places& places, const std::string& file)
{
    RuleReport report(places, file);
    const Case part = plausible_part(report, asked);
    bool has_sections = true;
    for (const Side side : both_sides)
    {
        const auto& bar = part.bar[index(side)];
        if (!bar) continue;
        has_sections = has_sections && !bar->sections.empty();
        if (bar->sections.empty()) continue;
        check_bar(report, part, side);
        check_grooves(report, part, side);
        check_load_end(report, part, side);
    }
    const bool has_both = part.bar[0] && part.bar[1];
    if (!has_both || !has_sections || !part.joint) return report.take();
    check_joint(report, part);
    if (!part.sleeve) return report.take();
    check_sleeve(report, part);
    check_sleeve_weld(report, part);
    return report.take();
}

}  // namespace splicewright
