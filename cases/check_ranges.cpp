// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <cmath>

#include "cases/case_table.h"
#include "cases/check_parts.h"
#include "cases/own_value.h"

namespace splicewright
{
namespace
{

struct Range
{
    double least, greatest;  // mm
};

constexpr Range section_length{0.5, 5000.0};
constexpr Range section_diameter{6.0, 250.0};
constexpr Range leg{3.0, 30.0};
// The others only catch slips of the unit and of the sign; the rules of the parts are narrower.
constexpr Range distance{-10e3, 10e3};
constexpr Range offset{-5e3, 5e3};
constexpr Range sleeve_length{10.0, 10e3};
constexpr Range sleeve_diameter{6.0, 1600.0};
constexpr Range thickness{-400.0, 400.0};
constexpr Range fit{-1.0, 10.0};

// The value when it lies in its range, else `unread`, after a report.
Millimetre kept(RuleReport& report, const std::string& field, Millimetre value, Range range)
{
    if (report.keep_plausible(field, value.value(), range.least, range.greatest) == Kept::yes) return value;
    return Millimetre(unread);
}

void keep_bar(RuleReport& report, Bar& bar, const std::string& name)
{
    for (std::size_t number = 0; number < bar.sections.size() && number < most_sections; ++number)
    {
        const std::string field = fmt::format("{}.section[{}]", name, number + 1);
        Section& section = bar.sections[number];
        section.length = kept(report, field + ".length", section.length, section_length);
        section.diameter = kept(report, field + ".diameter", section.diameter, section_diameter);
        section.fillet = kept(report, field + ".fillet", section.fillet, thickness);
    }
    for (std::size_t number = 0; number < bar.grooves.size() && number < most_grooves; ++number)
    {
        const std::string field = fmt::format("{}.groove[{}]", name, number + 1);
        Groove& groove = bar.grooves[number];
        groove.at = kept(report, field + ".at", groove.at, distance);
        groove.depth = kept(report, field + ".depth", groove.depth, thickness);
        groove.radius = kept(report, field + ".radius", groove.radius, thickness);
    }
    bar.bore = kept(report, name + ".bore", bar.bore, thickness);
}

// The fit of a side, told in the words of the key that gave it.
Millimetre kept_fit(RuleReport& report, Side side, Millimetre clearance)
{
    const std::string field = fmt::format("sleeve.clearance_{}", name_of(side));
    if (!report.key_of(field).starts_with("bore")) return kept(report, field, clearance, fit);
    const bool is_out = clearance.value() < fit.least || clearance.value() > fit.greatest;
    if (is_out)
        report.add(field,
                   fmt::format("must be within {} below and {} above the diameter of the {} bar, and is {} {} it",
                               mm(-fit.least), mm(fit.greatest), name_of(side), mm(std::abs(clearance.value())),
                               clearance.value() > 0 ? "above" : "below"),
                   own_quantity(report.key_of(field), Dimension::length));
    return is_out ? Millimetre(unread) : clearance;
}

void keep_sleeve(RuleReport& report, Sleeve& sleeve)
{
    sleeve.length = kept(report, "sleeve.length", sleeve.length, sleeve_length);
    sleeve.offset = kept(report, "sleeve.offset", sleeve.offset, offset);
    sleeve.outer_diameter = kept(report, "sleeve.outer_diameter", sleeve.outer_diameter, sleeve_diameter);
    sleeve.end_diameter = kept(report, "sleeve.end_wall", sleeve.end_diameter, sleeve_diameter);
    sleeve.taper_length = kept(report, "sleeve.taper_length", sleeve.taper_length, distance);
    for (const Side side : both_sides)
        sleeve.clearance[index(side)] = kept_fit(report, side, sleeve.clearance[index(side)]);
    SleeveWeld& weld = sleeve.weld;
    weld.leg_on_bar = kept(report, "sleeve.weld.leg_on_bar", weld.leg_on_bar, leg);
    weld.leg_on_sleeve = kept(report, "sleeve.weld.leg_on_sleeve", weld.leg_on_sleeve, leg);
    weld.toe_radius = kept(report, "sleeve.weld.toe_radius", weld.toe_radius, thickness);
    for (std::size_t i = 0; i < sleeve.plugs.size(); ++i)
    {
        const std::string field = fmt::format("sleeve.plug[{}]", i + 1);
        PlugRing& ring = sleeve.plugs[i];
        ring.diameter = kept(report, field + ".diameter", ring.diameter, thickness);
        ring.at = kept(report, field + ".at", ring.at, distance);
        if (ring.depth) ring.depth = kept(report, field + ".depth", *ring.depth, thickness);
    }
}

}  // namespace

Case plausible_part(RuleReport& report, const Case& asked)
{
    Case kept_part = asked;
    for (const Side side : both_sides)
        if (auto& bar = kept_part.bar[index(side)]) keep_bar(report, *bar, name_of(side));
    if (auto& joint = kept_part.joint)
    {
        if (joint->penetration) joint->penetration = kept(report, "joint.penetration", *joint->penetration, thickness);
        joint->half_lap = kept(report, "joint.half_lap", joint->half_lap, distance);
        joint->blend = kept(report, "joint.blend", joint->blend, thickness);
        joint->lap_corner_radius = kept(report, "joint.lap_corner_radius", joint->lap_corner_radius, thickness);
    }
    if (kept_part.sleeve) keep_sleeve(report, *kept_part.sleeve);
    return kept_part;
}

}  // namespace splicewright
