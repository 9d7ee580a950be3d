// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/check_geometry.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/bar_shape.h"
#include "cases/case_table.h"
#include "cases/check_parts.h"

namespace splicewright
{
namespace
{

// A slenderer shaft whirls at low speed, and its far ends spoil the balance of forces that vouches for a solution.
// Judgement.
constexpr double greatest_slenderness = 120;  // length of the shaft over its smallest diameter

void check_slenderness(RuleReport& report, const Case& part)
{
    double length = 0, longest = 0, smallest = INFINITY;
    Side longer = Side::left;
    for (const Side side : both_sides)
    {
        const auto& bar = part.bar[index(side)];
        if (!bar) continue;
        if (length_of(*bar) > greatest_bar_length) return;  // reported already
        length += length_of(*bar);
        if (length_of(*bar) > longest) longest = length_of(*bar), longer = side;
        for (const Section& section : bar->sections) smallest = std::min(smallest, section.diameter.value());
    }
    if (length > greatest_slenderness * smallest)
        report.add(fmt::format("{}.section", name_of(longer)),
                   fmt::format("must make a shaft of at most {}, {:g} times its smallest diameter, not {}",
                               mm(greatest_slenderness * smallest), greatest_slenderness, mm(length)),
                   "shorten the plain sections: what lies far from the joint does not change its stresses");
}

}  // namespace

std::vector<Problem> geometry_problems(const Case& asked, const Places& places, const std::string& file)
{
    RuleReport report(places, file);
    Case part = plausible_part(report, asked);
    bool has_sections = true;
    for (const Side side : both_sides)
    {
        const auto& bar = part.bar[index(side)];
        if (!bar) continue;
        has_sections = has_sections && !bar->sections.empty();
        if (bar->sections.empty()) continue;
        check_bar(report, part, side);
        // What follows from a bore that cannot be is not told again.
        if (!bore_fits(*bar)) part.bar[index(side)]->bore = Millimetre(unread);
        check_grooves(report, part, side);
        check_load_end(report, part, side);
    }
    check_slenderness(report, part);
    const bool has_both = part.bar[0] && part.bar[1];
    if (!has_both || !has_sections || !part.joint) return report.take();
    check_joint(report, part);
    check_lap_corner(report, part);
    if (!part.sleeve) return report.take();
    check_sleeve(report, part);
    check_sleeve_weld(report, part);
    check_partial_welds(report, part);
    return report.take();
}

}  // namespace splicewright
