// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/bar_shape.h"
#include "cases/check_parts.h"
#include "cases/read_parts.h"
#include "cases/shape_limits.h"
#include "cases/units.h"

namespace splicewright
{
namespace
{

// Room that a solid mesh needs around what is not a body of revolution; judgement.
constexpr double least_lap_corner_radius = 0.2;         // mm
constexpr double least_coverage = 30, most_open = 340;  // deg
constexpr std::size_t most_plug_rings = 4;
constexpr double least_plug_diameter = 4.0, greatest_plug_share = 0.5;  // mm; of the bar
constexpr double clear_of_plug = 3.0;                                   // mm of metal beside a plug
constexpr double least_plug_depth = 2.0, least_hole_left = 0.3;         // mm
constexpr double greatest_share_of_wall = 0.5;
constexpr double degree = radian_per_degree;

void keep_angle(RuleReport& report, const std::string& field, double value, double least_deg, double greatest_deg,
                const std::string& reason)
{
    if (value < least_deg * degree - 1e-9 || value > greatest_deg * degree + 1e-9)
        report.add(field,
                   fmt::format("must be {:g} deg to {:g} deg{}{}", least_deg, greatest_deg, reason.empty() ? "" : ", ",
                               reason),
                   fmt::format("{} = \"{:g} deg\"", last_key_of(field),
                               value < least_deg * degree ? least_deg : greatest_deg));
}

void check_plug_size(RuleReport& report, const Case& asked, const PlugRing& ring, const std::string& field)
{
    const Side side = ring.at.value() < 0 ? Side::left : Side::right;
    const double diameter = asked.bar[index(side)]->sections.front().diameter.value();
    report.keep_between(field + ".diameter", ring.diameter.value(), least_plug_diameter, greatest_plug_share * diameter,
                        fmt::format("half of the {} bar", name_of(side)));
    const double spacing = std::numbers::pi * diameter / ring.count;
    if (ring.diameter.value() + clear_of_plug > spacing + same_length.value())
        report.add(field + ".count",
                   fmt::format("must leave {} between the holes, and {} of them stand {} apart around the {} bar",
                               mm(clear_of_plug), ring.count, mm(spacing), name_of(side)),
                   fmt::format("count = {:.0f}", std::max(1.0, std::floor(std::numbers::pi * diameter /
                                                                          (ring.diameter.value() + clear_of_plug)))));
    if (!ring.depth) return;
    const double height = (asked.sleeve->outer_diameter.value() - diameter) / 2;
    report.keep_between(field + ".depth", ring.depth->value(), least_plug_depth, height - least_hole_left,
                        fmt::format("the sleeve is {} high there; absent: filled flush", mm(height)));
}

void check_plug_place(RuleReport& report, const Case& asked, const PlugRing& ring, const std::string& field)
{
    const Side side = ring.at.value() < 0 ? Side::left : Side::right;
    const double room = ring.diameter.value() / 2 + clear_of_plug;
    const double least = joint_half_length(*asked.joint) + room;
    const double greatest = sleeve_reach(*asked.sleeve, side) - asked.sleeve->taper_length.value() - room;
    const double distance = std::abs(ring.at.value());
    if (distance >= least - same_length.value() && distance <= greatest + same_length.value()) return;
    const std::string where =
        fmt::format("the hole keeps {} off the joint, the taper and the sleeve's end", mm(clear_of_plug));
    if (greatest < least)
        report.add(field + ".at", fmt::format("has no room on the {}: {}", name_of(side), where),
                   "a longer sleeve, a smaller hole, or no plug on that side");
    else
        report.add(field + ".at", fmt::format("must lie {} to {} from the joint: {}", mm(least), mm(greatest), where),
                   fmt::format("at = \"{}\"", mm((side == Side::left ? -1 : 1) * rounded_up((least + greatest) / 2))));
}

void check_plugs(RuleReport& report, const Case& asked)
{
    const auto& rings = asked.sleeve->plugs;
    if (rings.size() > most_plug_rings)
        report.add("sleeve.plug", fmt::format("must be at most {} rings", most_plug_rings), "leave the others out");
    for (std::size_t i = 0; i < std::min(rings.size(), most_plug_rings); ++i)
    {
        const std::string field = fmt::format("sleeve.plug[{}]", i + 1);
        check_plug_size(report, asked, rings[i], field);
        check_plug_place(report, asked, rings[i], field);
        keep_angle(report, field + ".start", rings[i].start.value(), 0, 360, "");
        for (std::size_t j = 0; j < i; ++j)
        {
            const double apart = std::abs(rings[i].at.value() - rings[j].at.value());
            const double least = (rings[i].diameter.value() + rings[j].diameter.value()) / 2 + clear_of_plug;
            if (apart < least - same_length.value())
                report.add(field + ".at",
                           fmt::format("must lie {} off plug ring {}: {} of metal stays between the holes", mm(least),
                                       j + 1, mm(clear_of_plug)),
                           "move one of the rings, or leave it out");
        }
    }
}

// A bar out of line is met by the sleeve's bore, at the cost of the wall on one side.
void check_crooked_bore(RuleReport& report, const Case& asked)
{
    const double offset = asked.joint->offset.value(), tilt = asked.joint->tilt.value();
    const double way = offset + tilt * sleeve_reach(*asked.sleeve, Side::right);
    const double wall = (asked.sleeve->end_diameter.value() - asked.bar[1]->sections.front().diameter.value()) / 2;
    const double greatest = greatest_share_of_wall * wall;
    if (offset < 0 || tilt < 0 || !(way > greatest + same_length.value())) return;
    if (way == 0 || greatest <= 0) return;  // a sleeve without a wall there is told already
    report.add(
        tilt > 0 ? "joint.tilt" : "joint.offset",
        fmt::format("puts the right bar {} out of line where the sleeve ends, and at most {} is allowed: {:g} of "
                    "the sleeve's height of {} there",
                    mm(way), mm(greatest), greatest_share_of_wall, mm(wall)),
        "straighten the shaft, or a shorter or thicker sleeve");
}

}  // namespace

void check_lap_corner(RuleReport& report, const Case& asked)
{
    const Joint& joint = *asked.joint;
    keep_angle(report, "joint.offset_angle", joint.offset_angle.value(), 0, 360, "");
    const double half_lap = joint.half_lap.value();
    if (half_lap == 0.0)
    {
        if (joint.lap_corner_radius.value() != 0.0)
            report.add("joint.lap_corner_radius", "goes with a half lap", "remove lap_corner_radius");
        return;
    }
    const std::array<double, 2> diameters{asked.bar[0]->sections.front().diameter.value(),
                                          asked.bar[1]->sections.front().diameter.value()};
    const double greatest = greatest_lap_corner_radius(joint, diameters);
    if (greatest < least_lap_corner_radius) return;  // the lap or the penetration is reported already
    report.keep_between("joint.lap_corner_radius", joint.lap_corner_radius.value(), least_lap_corner_radius, greatest,
                        "a quarter of the half lap, and a third of the land's radius");
}

void check_partial_welds(RuleReport& report, const Case& asked)
{
    const SleeveWeld& weld = asked.sleeve->weld;
    if (!weld.goes_all_round())
        keep_angle(report, "sleeve.weld.coverage", weld.coverage.value(), least_coverage, most_open,
                   "or 360 deg for a weld all round");
    for (const Side side : both_sides)
        keep_angle(report, fmt::format("sleeve.weld.start_{}", name_of(side)), weld.start[index(side)].value(), 0, 360,
                   "");
    check_plugs(report, asked);
    check_crooked_bore(report, asked);
}

}  // namespace splicewright
