// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/making_weld.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "post/weld_line.h"

namespace splicewright
{
namespace
{

constexpr double newton_per_kilojoule_per_millimetre = 1e6;
constexpr double single_pass_leg = 8;      // mm
constexpr double area_for_kilojoule = 20;  // mm^2
constexpr int least_butt_passes = 2;       // root and cap
constexpr const char* pass_source =
    "volume: theorem of Pappus; passes: AWS D1.1 [AWSD1.1], largest single pass (read in a secondary source), and "
    "20 mm^2 for each kJ/mm (common practice)";

int passes(double area, Newton heat_input)
{
    return static_cast<int>(std::ceil(area / greatest_pass_area(heat_input) - 1e-9));
}

}  // namespace

double greatest_pass_area(Newton heat_input)
{
    EXPECTS(heat_input.value() > 0);
    return std::min(single_pass_leg * single_pass_leg / 2,
                    area_for_kilojoule * heat_input.value() / newton_per_kilojoule_per_millimetre);
}

WeldDeposit butt_deposit(const Case& asked)
{
    EXPECTS(asked.joint && asked.making && asked.bar[0] && asked.bar[1]);
    const Making& making = *asked.making;
    const double outer =
        (asked.bar[0]->sections.front().diameter + asked.bar[1]->sections.front().diameter).value() / 4;
    const double bore = asked.bar[0]->bore.value() / 2;
    const double slope = std::tan(making.groove_angle.value() / 2), gap = making.root_gap.value();
    WeldDeposit weld;
    weld.weld = "butt";
    weld.depth = asked.joint->penetration ? asked.joint->penetration->value() : outer - bore;
    const double root = outer - weld.depth, bevel = root + making.root_face.value();
    const double bevelled = outer - bevel;
    weld.width = gap + 2 * bevelled * slope;
    weld.area = gap * weld.depth + bevelled * bevelled * slope;
    // integral from bevel to outer of 2 pi r 2 (r - bevel) slope dr
    const double opening =
        4 * std::numbers::pi * slope *
        ((std::pow(outer, 3) - std::pow(bevel, 3)) / 3 - bevel * (outer * outer - bevel * bevel) / 2);
    weld.volume = std::numbers::pi * gap * (outer * outer - root * root) + opening +
                  2 * asked.joint->half_lap.value() * weld.area;
    weld.mass = weld.volume * asked.joint->filler.density;
    weld.passes_needed = std::max(least_butt_passes, passes(weld.area, making.heat_input));
    weld.source = pass_source;
    weld.provenance = Provenance::common_practice;
    return weld;
}

WeldDeposit fillet_deposit(const Case& asked, Side side)
{
    EXPECTS(asked.sleeve && asked.making && asked.bar[index(side)]);
    const SleeveWeld& asked_weld = asked.sleeve->weld;
    const Millimetre bar = asked.bar[index(side)]->sections.front().diameter;
    WeldDeposit weld;
    weld.weld = side == Side::left ? "sleeve.left" : "sleeve.right";
    weld.leg_on_bar = asked_weld.leg_on_bar.value();
    weld.leg_on_sleeve = asked_weld.leg_on_sleeve.value();
    weld.throat = throat({asked_weld.leg_on_bar, asked_weld.leg_on_sleeve, bar}).value();
    weld.area = weld.leg_on_bar * weld.leg_on_sleeve / 2;
    weld.volume = 2 * std::numbers::pi * (bar.value() / 2 + weld.leg_on_sleeve / 3) * weld.area;
    weld.mass = weld.volume * asked_weld.filler.density;
    weld.passes_needed = passes(weld.area, asked.making->heat_input);
    weld.passes_stated = asked_weld.passes;
    weld.source = pass_source;
    weld.provenance = Provenance::common_practice;
    return weld;
}

}  // namespace splicewright
