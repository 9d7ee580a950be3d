// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/bar_shape.h"
#include "cases/check_parts.h"
#include "cases/shape_limits.h"

namespace splicewright
{
namespace
{

constexpr double greatest_outer_share = 4.0;  // of the smaller bar
constexpr double least_wall = 2.5;            // mm, room for the root notch
constexpr double least_reach = 5.0;           // beyond the blend
constexpr double least_slope = 2.0;           // taper length over its rise
constexpr double least_straight = 3.0;        // of the sleeve's outside beside the joint
constexpr double greatest_clearance = 1.0;
constexpr double least_leg = 3.0;
constexpr double greatest_leg_ratio = 3.0;
constexpr double least_toe_radius = 0.2;
constexpr double greatest_toe_share = 0.4;  // of the smaller leg: both toes then fit on the weld's face
// What is left of the sleeve's end face above the weld is nothing or can be seen by the mesh.
constexpr double least_stub = 0.005;
constexpr double round_off = 1e-9;
constexpr double clear_length = 1.0;

double diameter_of(const Case& asked, Side side) { return asked.bar[index(side)]->sections.front().diameter.value(); }

double bore_of(const Case& asked, Side side)
{
    return diameter_of(asked, side) + asked.sleeve->clearance[index(side)].value();
}

double wall_over_larger_bore(const Case& asked, double outer)
{
    return (outer - std::max(bore_of(asked, Side::left), bore_of(asked, Side::right))) / 2;
}

// The least outer diameter that leaves both walls and room for the leg of the weld, and what the key for it would say.
std::string thicker_sleeve(const Case& asked, const std::string& key)
{
    const double bore = std::max(bore_of(asked, Side::left), bore_of(asked, Side::right));
    const double bar = std::max(diameter_of(asked, Side::left), diameter_of(asked, Side::right));
    const double leg = asked.sleeve->weld.leg_on_sleeve.value();
    const bool by_wall = key == "wall";
    const double least = std::max(bore + 2 * least_wall, std::isfinite(leg) ? bar + 2 * leg : 0.0);
    double value = rounded_up(by_wall ? (least - bore) / 2 : least);
    const double stub = ((by_wall ? bore + 2 * value : value) - bar) / 2 - leg;
    if (stub > round_off && stub < least_stub) value += 0.01;
    return fix_to(key, value);
}

void check_walls(RuleReport& report, const Case& asked)
{
    const double outer = asked.sleeve->outer_diameter.value();
    const double smaller = std::min(diameter_of(asked, Side::left), diameter_of(asked, Side::right));
    if (outer > greatest_outer_share * smaller + same_length.value())
        report.add("sleeve.outer_diameter",
                   fmt::format("must give an outer diameter of at most {}, four times the smaller bar",
                               mm(greatest_outer_share * smaller)),
                   "a thinner sleeve");
    for (const Side side : both_sides)
    {
        const double wall = (outer - bore_of(asked, side)) / 2;
        if (wall < least_wall - same_length.value())
            report.add("sleeve.outer_diameter",
                       fmt::format("must leave a wall of at least {} over the {} bore of {}, not {}", mm(least_wall),
                                   name_of(side), mm(bore_of(asked, side)), mm(wall)),
                       thicker_sleeve(asked, report.key_of("sleeve.outer_diameter")));
    }
}

void check_taper(RuleReport& report, const Case& asked)
{
    const Sleeve& sleeve = *asked.sleeve;
    const double taper = sleeve.taper_length.value();
    const double wall = wall_over_larger_bore(asked, sleeve.outer_diameter.value());
    const double end_wall = wall_over_larger_bore(asked, sleeve.end_diameter.value());
    const bool no_taper = taper == 0.0 && sleeve.end_diameter == sleeve.outer_diameter;
    if (no_taper) return;
    if (end_wall < least_wall - same_length.value())
        report.add("sleeve.end_wall", fmt::format("must be at least {}", mm(least_wall)),
                   fix_to("sleeve.end_wall", least_wall));
    if (end_wall > wall - 0.1)
        report.add("sleeve.end_wall",
                   fmt::format("must be at least 0.1 mm thinner than the wall of {} for a taper", mm(wall)),
                   "remove end_wall and taper_length for a straight sleeve");
    const double reach = std::min(sleeve_reach(sleeve, Side::left), sleeve_reach(sleeve, Side::right));
    const double least = std::max(1.0, least_slope * (wall - end_wall));
    if (end_wall <= wall - 0.1)
        report.keep_between("sleeve.taper_length", taper, least, reach - least_straight,
                            "twice the rise of the taper, and 3 mm short of the joint");
}

// One bore for both sides must fit the larger bar.
std::string less_pressing_fit(const Case& asked, Side side, const std::string& key)
{
    if (!key.starts_with("bore"))
        return fmt::format("{} = \"{}\"", key, mm(-rounded_down(greatest_press_share * diameter_of(asked, side))));
    const double larger = std::max(diameter_of(asked, Side::left), diameter_of(asked, Side::right));
    const double diameter = key == "bore" ? larger : diameter_of(asked, side);
    return fmt::format("a bore of at least {}: {} = \"... mm\" with your value",
                       mm(rounded_up(diameter * (1 - greatest_press_share))), key);
}

void check_fit(RuleReport& report, const Case& asked, Side side)
{
    const double clearance = asked.sleeve->clearance[index(side)].value();
    const std::string field = fmt::format("sleeve.clearance_{}", name_of(side));
    if (clearance > greatest_clearance + same_length.value())
        report.add(field,
                   fmt::format("gives a diametral clearance of {} on the {}, and at most {} is allowed", mm(clearance),
                               name_of(side), mm(greatest_clearance)),
                   "bore the sleeve to fit its bar");
    const double greatest_press = greatest_press_share * diameter_of(asked, side);
    if (-clearance > greatest_press + same_length.value())
        report.add(field,
                   fmt::format("presses by {} on the {}, and at most {} is allowed: 0.002 of the diameter brings most "
                               "steels to their yield",
                               mm(-clearance), name_of(side), mm(greatest_press)),
                   less_pressing_fit(asked, side, report.key_of(field)));
}

void check_reach(RuleReport& report, const Case& asked, Side side)
{
    const double reach = sleeve_reach(*asked.sleeve, side);
    const double least = butt_half_length(*asked.joint) + least_reach;
    if (reach < least - same_length.value())
        report.add(
            "sleeve.length",
            fmt::format("must let the sleeve reach at least {} beyond the joint on the {}, not {}", mm(least),
                        name_of(side), mm(reach)),
            fmt::format("length = \"{}\"", mm(rounded_up(2 * (least + std::abs(asked.sleeve->offset.value()))))));
}

void check_end_of_weld(RuleReport& report, const Case& asked, Side side)
{
    const Bar& bar = *asked.bar[index(side)];
    const SleeveWeld& weld = asked.sleeve->weld;
    const double reach = sleeve_reach(*asked.sleeve, side);
    const double weld_end = reach + weld.leg_on_bar.value() + toe_tangent_on_bar(weld);
    const double room = section_span(bar, 0).plain_end;
    if (reach >= length_of(bar))
        report.add("sleeve.length",
                   fmt::format("must let the sleeve end on the bars: it reaches {} to the {}, and that bar is {} long",
                               mm(reach), name_of(side), mm(length_of(bar))),
                   "a shorter sleeve, or longer bars");
    else if (weld_end + clear_length > room + same_length.value())
        report.add("sleeve.length",
                   fmt::format("must let the weld end on the first section of the {} bar: its toe ends at {} and needs "
                               "{} more, and that section is plain up to {}",
                               name_of(side), mm(weld_end), mm(clear_length), mm(room)),
                   fmt::format("shorten the sleeve by {}, or lengthen {}.section[1]",
                               mm(rounded_up(2 * (weld_end + clear_length - room))), name_of(side)));
}

// The largest leg in hundredths of a millimetre that the height of the sleeve's end allows.
double leg_below(double wall)
{
    const double leg = rounded_down(wall), stub = wall - leg;
    return stub > round_off && stub < least_stub ? leg - 0.01 : leg;
}

double end_height(const Case& asked, Side side)
{
    return (asked.sleeve->end_diameter.value() - diameter_of(asked, side)) / 2;
}

// On the side where the sleeve's end is lower; the other side has more room.
void check_leg_against_wall(RuleReport& report, const Case& asked)
{
    const Side side = end_height(asked, Side::left) < end_height(asked, Side::right) ? Side::left : Side::right;
    const double wall = end_height(asked, side), stub = wall - asked.sleeve->weld.leg_on_sleeve.value();
    const double leg = leg_below(wall);
    const std::string rule =
        fmt::format("must be at most {}, the height of the sleeve's end above the {} bar", mm(wall), name_of(side));
    if (stub < -round_off && leg >= least_leg)
        report.add("sleeve.weld.leg_on_sleeve", rule, fmt::format("leg = \"{}\"", mm(leg)));
    else if (stub < -round_off && wall >= least_wall)
        report.add("sleeve.weld.leg_on_sleeve", rule,
                   fmt::format("a sleeve whose end is at least {} high", mm(least_leg)));
}

// Above the weld nothing of the sleeve's end is left, or enough for the mesh to see.
void check_stub(RuleReport& report, const Case& asked, Side side)
{
    const double wall = end_height(asked, side), stub = wall - asked.sleeve->weld.leg_on_sleeve.value();
    if (stub > round_off && stub < least_stub)
        report.add("sleeve.weld.leg_on_sleeve",
                   fmt::format("must reach the corner of the sleeve's end, {} above the {} bar, or stay {} below it",
                               mm(wall), name_of(side), mm(least_stub)),
                   leg_below(wall) >= least_leg ? fmt::format("leg = \"{}\"", mm(leg_below(wall)))
                                                : "a slightly thicker sleeve");
}

}  // namespace

void check_sleeve(RuleReport& report, const Case& asked)
{
    check_walls(report, asked);
    check_taper(report, asked);
    for (const Side side : both_sides)
    {
        check_fit(report, asked, side);
        check_reach(report, asked, side);
    }
}

void check_sleeve_weld(RuleReport& report, const Case& asked)
{
    const SleeveWeld& weld = asked.sleeve->weld;
    const double on_bar = weld.leg_on_bar.value(), on_sleeve = weld.leg_on_sleeve.value();
    const double larger = std::max(on_bar, on_sleeve), smaller = std::min(on_bar, on_sleeve);
    if (larger > greatest_leg_ratio * smaller + same_length.value())
        report.add(on_bar > on_sleeve ? "sleeve.weld.leg_on_bar" : "sleeve.weld.leg_on_sleeve",
                   fmt::format("must be at most three times the other leg of {}", mm(smaller)),
                   "bring the two legs closer together");
    if (std::isfinite(smaller))
        report.keep_between("sleeve.weld.toe_radius", weld.toe_radius.value(), least_toe_radius,
                            greatest_toe_share * smaller, fmt::format("0.4 of the smaller leg of {}", mm(smaller)));
    check_leg_against_wall(report, asked);
    for (const Side side : both_sides)
    {
        check_stub(report, asked, side);
        check_end_of_weld(report, asked, side);
    }
}

}  // namespace splicewright
