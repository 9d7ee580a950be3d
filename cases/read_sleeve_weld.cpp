// SPDX-License-Identifier: GPL-2.0-or-later
#include <cmath>
#include <string>

#include "cases/own_value.h"
#include "cases/read_parts.h"
#include "cases/shape_limits.h"

namespace splicewright
{
namespace
{

constexpr int most_passes = 20;

struct Legs
{
    Millimetre on_bar, on_sleeve;
};

Legs legs_of(const CaseTable& table)
{
    const auto both = table.length("leg"), on_bar = table.length("leg_on_bar"),
               on_sleeve = table.length("leg_on_sleeve");
    if (both && (on_bar || on_sleeve))
        table.report("leg", "must not stand beside leg_on_bar or leg_on_sleeve",
                     "keep either leg, or both leg_on_bar and leg_on_sleeve");
    if (both)
    {
        table.stands_for("leg_on_bar", "leg");
        table.stands_for("leg_on_sleeve", "leg");
        return {*both, *both};
    }
    if (!on_bar && !on_sleeve)
        table.report("leg", "is missing: the size of the sleeve welds must be given",
                     own_quantity("leg", Dimension::length));
    else if (!on_bar || !on_sleeve)
        table.report(on_bar ? "leg_on_sleeve" : "leg_on_bar", "is missing: both legs must be given",
                     "give leg_on_bar and leg_on_sleeve, or leg for both");
    return {on_bar.value_or(Millimetre(unread)), on_sleeve.value_or(Millimetre(unread))};
}

// Coverage, and where each weld starts.
void read_coverage(const CaseTable& table, SleeveWeld& weld)
{
    const auto coverage = table.quantity("coverage", Dimension::angle);
    if (!coverage) table.note_default("coverage", "360 deg", "welded all round");
    weld.coverage = Radian(coverage.value_or(360.0 * radian_per_degree));
    for (const Side side : both_sides)
    {
        const std::string key = std::string("start_") + name_of(side);
        const auto start = table.quantity(key, Dimension::angle);
        weld.start[index(side)] = Radian(start.value_or(0.0));
        if (start && weld.goes_all_round()) table.report(key, "goes with a coverage below 360 deg", "remove " + key);
        if (!start && !weld.goes_all_round())
            table.note_default(key, "0 deg", "the weld starts at the cut plane of the lap");
    }
}

int passes_of(const CaseTable& table)
{
    const auto passes = table.plain_number("passes");
    if (!passes)
    {
        table.note_default("passes", "1", "one pass for each weld");
        return 1;
    }
    const bool is_whole = *passes >= 1.0 && *passes <= most_passes && std::floor(*passes) == *passes;
    if (!is_whole && !std::isnan(*passes))
        table.report("passes", "must be a whole number from 1 to 20", own_number("passes"));
    return is_whole ? static_cast<int>(*passes) : 1;
}

}  // namespace

SleeveWeld sleeve_weld_at(const CaseTable& table, const Material& filler)
{
    SleeveWeld weld;
    const Legs legs = legs_of(table);
    weld.leg_on_bar = legs.on_bar;
    weld.leg_on_sleeve = legs.on_sleeve;
    const auto toe_radius = table.length("toe_radius");
    if (!toe_radius) table.note_default("toe_radius", "1 mm", "reference radius of the notch stress method");
    weld.toe_radius = toe_radius.value_or(reference_notch_radius);
    weld.toe_radius_stated = toe_radius.has_value();
    read_coverage(table, weld);
    weld.passes = passes_of(table);
    weld.filler = filler;
    table.report_unknown_keys();
    return weld;
}

}  // namespace splicewright
