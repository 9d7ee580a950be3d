// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/judgement/second_opinion.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace splicewright
{

using std::numbers::pi;

std::vector<Event> events_of(const Load& load)
{
    std::vector<Event> events;
    for (const TorqueBlock& block : load.blocks)
    {
        Event event{block.low.value(), block.high.value(), 0, block.count};
        const double peak = load.peak_torque.value(), largest = std::max(std::abs(event.low), std::abs(event.high));
        event.couple = load.peak_bending.value() * (peak > 0 ? largest / peak : 1);
        events.push_back(event);
    }
    if (load.running_bending.value() > 0) events.push_back({0, 0, load.running_bending.value(), load.revolutions});
    return events;
}

int side_number(const std::string& site) { return site.find(".right") == std::string::npos ? 0 : 1; }

double first_diameter(const Case& asked, int side)
{
    return asked.bar.at(static_cast<std::size_t>(side))->sections.front().diameter.value();
}

double shear_per_torque(double outer, double inner)
{
    return outer / 2 / (pi / 32 * (std::pow(outer, 4) - std::pow(inner, 4)));
}

double stress_per_couple(double outer, double inner) { return 2 * shear_per_torque(outer, inner); }

double throat_of(const SleeveWeld& weld)
{
    // Twice the area of the triangle over its longest side.
    const double b = weld.leg_on_bar.value(), s = weld.leg_on_sleeve.value();
    return b * s / std::sqrt(b * b + s * s);
}

OnThroat on_throat(const SleeveWeld& weld, double outward, double radial, double tangential)
{
    // The throat runs from the root square to the face, the face from (b, 0) to (0, s): its direction is the normal of
    // the throat's plane.
    const double b = weld.leg_on_bar.value(), s = weld.leg_on_sleeve.value(), angle = std::atan2(s, b);
    const double a = throat_of(weld);
    return {(outward * std::cos(angle) - radial * std::sin(angle)) / a,
            (outward * std::sin(angle) + radial * std::cos(angle)) / a, tangential / a};
}

Ring butt_ring(const Case& asked)
{
    Ring ring{std::min(first_diameter(asked, 0), first_diameter(asked, 1)), asked.bar[0]->bore.value()};
    if (asked.joint->penetration) ring.inner = std::max(ring.inner, ring.outer - 2 * asked.joint->penetration->value());
    return ring;
}

std::optional<Opinion> second_opinion(const SolvedCase& solved, const std::string& id)
{
    const std::size_t first = id.find('/'), second = id.find('/', first + 1);
    const RowId parts{id.substr(0, first), id.substr(first + 1, second - first - 1),
                      second == std::string::npos ? "" : id.substr(second + 1)};
    const bool is_metal = std::any_of(solved.metal.begin(), solved.metal.end(),
                                      [&](const WeldMetalForce& metal) { return metal.site == parts.site; });
    if (is_metal)
        return parts.kind == "strength" ? second_metal_strength(solved, parts) : second_metal_fatigue(solved, parts);
    if (parts.kind == "strength") return second_strength(solved, parts);
    if (parts.name == "crack-growth") return second_crack_growth(solved, parts);
    for (const char* plain : {"bar.", "shoulder.", "groove."})
        if (parts.site.starts_with(plain) && parts.name.empty()) return second_shaft_fatigue(solved, parts);
    return second_weld_fatigue(solved, parts);
}

}  // namespace splicewright
