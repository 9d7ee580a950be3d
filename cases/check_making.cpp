// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/check_making.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/bar_shape.h"
#include "cases/check_parts.h"
#include "cases/own_value.h"
#include "cases/rule_report.h"
#include "cases/shape_limits.h"
#include "cases/units.h"

namespace splicewright
{
namespace
{

// Bounds against slips of the unit, wide around any half shaft; judgement, no source.
constexpr double greatest_root_gap = 6, greatest_root_face = 5, greatest_shrink = 10, greatest_plunge = 200;  // mm
constexpr double least_bevelled = 1;                                                                          // mm
constexpr double least_angle = 30 * radian_per_degree, greatest_angle = 120 * radian_per_degree;
constexpr double least_heat_input = 0.2e6, greatest_heat_input = 10e6;  // N
constexpr double least_hydrogen = 0.5, greatest_hydrogen = 50;          // ml/100 g
// As built: beyond this the shaft is no straight one and its bending stress may not be left out. Judgement.
constexpr double greatest_offset = 2, greatest_offset_share = 0.1;  // mm; of the smaller diameter
constexpr double greatest_tilt = 1 * radian_per_degree;
constexpr double clear_length = 1;  // mm beyond the weld's toe

bool is_whole_splice(const Case& asked)
{
    return asked.joint && asked.bar[0] && asked.bar[1] && !asked.bar[0]->sections.empty() &&
           !asked.bar[1]->sections.empty();
}

double smaller_diameter(const Case& asked)
{
    return std::min(asked.bar[0]->sections.front().diameter, asked.bar[1]->sections.front().diameter).value();
}

// Length of a bar from the joint that the welds take up.
double taken_length(const Case& asked, Side side)
{
    const double butt = joint_half_length(*asked.joint);
    if (!asked.sleeve) return butt + clear_length;
    return std::max(butt, sleeve_reach(*asked.sleeve, side) + asked.sleeve->weld.leg_on_bar.value()) + clear_length;
}

void check_angle(RuleReport& report, const std::string& field, double value, double least, double greatest)
{
    if (value < least - 1e-9 || value > greatest + 1e-9)
        report.add(field,
                   fmt::format("must be at least {} and at most {}", in_words(least, Dimension::angle),
                               in_words(greatest, Dimension::angle)),
                   own_quantity(last_key_of(field), Dimension::angle));
}

void check_as_built(RuleReport& report, const Case& asked)
{
    report.keep_between("joint.offset", asked.joint->offset.value(), 0,
                        std::min(greatest_offset, greatest_offset_share * smaller_diameter(asked)),
                        "between the axes of the bars at the joint; more is no straight shaft");
    check_angle(report, "joint.tilt", asked.joint->tilt.value(), 0, greatest_tilt);
}

void check_overall_length(RuleReport& report, const Case& asked)
{
    if (!asked.making->overall_length) return;
    const double wanted = asked.making->overall_length->value(), drawn = drawn_length(asked);
    for (const Side side : both_sides)
    {
        const double share = asked.making->adjusted == AdjustedBar::both ? 0.5 : 1;
        const double first = asked.bar[index(side)]->sections.front().length.value();
        const double shortest = drawn - (first - taken_length(asked, side)) / share;
        if (first + adjustment(asked, side) < taken_length(asked, side) - same_length.value() && wanted < drawn)
            report.add("making.overall_length",
                       fmt::format("must be at least {}: the welds need {} of the first section of the {} bar",
                                   mm(shortest), mm(taken_length(asked, side)), name_of(side)),
                       own_quantity("overall_length", Dimension::length));
    }
    // More than half as long again is a slip, not a wish: the stresses are those of the drawn shaft.
    report.keep_between("making.overall_length", wanted, 0, 1.5 * drawn,
                        fmt::format("the sections as drawn make {}", mm(drawn)));
}

void check_groove(RuleReport& report, const Case& asked)
{
    const Making& making = *asked.making;
    double depth = (asked.bar[0]->sections.front().diameter + asked.bar[1]->sections.front().diameter).value() / 4 -
                   asked.bar[0]->bore.value() / 2;
    if (asked.joint->penetration) depth = asked.joint->penetration->value();
    report.keep_between("making.root_gap", making.root_gap.value(), 0, greatest_root_gap);
    report.keep_between("making.root_face", making.root_face.value(), 0,
                        std::min(greatest_root_face, depth - least_bevelled),
                        fmt::format("the butt weld is {} deep", mm(depth)));
    report.keep_between("making.weld_shrink", making.weld_shrink.value(), 0, greatest_shrink);
    check_angle(report, "making.groove_angle", making.groove_angle.value(), least_angle, greatest_angle);
}

}  // namespace

double drawn_length(const Case& asked)
{
    double length = 0;
    for (const auto& bar : asked.bar) length += bar ? length_of(*bar) : 0;
    return length;
}

double adjustment(const Case& asked, Side side)
{
    if (!asked.making || !asked.making->overall_length) return 0;
    const double difference = asked.making->overall_length->value() - drawn_length(asked);
    const AdjustedBar adjusted = asked.making->adjusted;
    if (adjusted == AdjustedBar::both) return difference / 2;
    return (adjusted == AdjustedBar::left) == (side == Side::left) ? difference : 0;
}

std::vector<Problem> making_problems(const Case& whole, const Places& places, const std::string& file)
{
    RuleReport told_already(places, file);
    const Case asked = plausible_part(told_already, whole);  // what follows from an absurd value is not told again
    if (!is_whole_splice(asked)) return {};
    RuleReport report(places, file);
    check_as_built(report, asked);
    if (!asked.making) return report.take();
    const Making& making = *asked.making;
    check_overall_length(report, asked);
    check_groove(report, asked);
    if (making.plunge_available)
    {
        report.keep_between("making.plunge_available", making.plunge_available->value(), 0, greatest_plunge);
        report.keep_between("making.plunge_used", making.plunge_used.value(), 0, making.plunge_available->value(),
                            "the plunge that the joints have");
    }
    if (making.heat_input.value() < least_heat_input || making.heat_input.value() > greatest_heat_input)
        report.add("making.heat_input", "must be at least 0.2 and at most 10 kJ/mm",
                   own_quantity("heat_input", Dimension::heat_input));
    if (making.hydrogen < least_hydrogen || making.hydrogen > greatest_hydrogen)
        report.add("making.hydrogen", "must be at least 0.5 and at most 50 ml/100g",
                   own_quantity("hydrogen", Dimension::hydrogen));
    return report.take();
}

}  // namespace splicewright
