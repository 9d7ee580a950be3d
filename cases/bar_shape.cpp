// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/bar_shape.h"

#include <algorithm>
#include <cmath>

#include "cases/shape_limits.h"

namespace splicewright
{
namespace
{

// Extent on section `number` of the fillet at its change to `other`; 0 where it is not the smaller one.
double extent_towards(const Bar& bar, std::size_t number, std::size_t other)
{
    const double own = bar.sections[number].diameter.value(), beside = bar.sections[other].diameter.value();
    const double radius = bar.sections[number > other ? number : other].fillet.value();
    if (own >= beside) return 0.0;
    return fillet_extent(radius, (beside - own) / 2);
}

}  // namespace

double fillet_extent(double radius, double step_height)
{
    if (step_height >= radius) return radius;
    const double rest = radius - step_height;
    return std::sqrt(radius * radius - rest * rest);
}

double groove_half_width(const Groove& groove) { return fillet_extent(groove.radius.value(), groove.depth.value()); }

SectionSpan section_span(const Bar& bar, std::size_t number)
{
    SectionSpan span;
    for (std::size_t before = 0; before < number; ++before) span.begin += bar.sections[before].length.value();
    span.end = span.begin + bar.sections[number].length.value();
    span.plain_begin = span.begin + (number > 0 ? extent_towards(bar, number, number - 1) : 0.0);
    span.plain_end = span.end - (number + 1 < bar.sections.size() ? extent_towards(bar, number, number + 1) : 0.0);
    return span;
}

double length_of(const Bar& bar)
{
    double length = 0;
    for (const Section& section : bar.sections) length += section.length.value();
    return length;
}

double butt_half_length(const Joint& joint) { return std::max(joint.blend.value() / 2, least_butt_zone.value()); }

double joint_half_length(const Joint& joint) { return std::max(butt_half_length(joint), joint.half_lap.value() / 2); }

double sleeve_reach(const Sleeve& sleeve, Side side)
{
    const double shift = side == Side::right ? sleeve.offset.value() : -sleeve.offset.value();
    return sleeve.length.value() / 2 + shift;
}

double toe_tangent_on_bar(const SleeveWeld& weld)
{
    const double turn = std::atan2(weld.leg_on_sleeve.value(), weld.leg_on_bar.value());
    return weld.toe_radius.value() * std::tan(turn / 2);
}

WeldThroat weld_throat(const Case& asked, Side side)
{
    const double bar = asked.bar[index(side)]->sections.front().diameter.value() / 2;
    const double b = asked.sleeve->weld.leg_on_bar.value(), s = asked.sleeve->weld.leg_on_sleeve.value();
    const double face = std::hypot(b, s), size = b * s / face;
    return {size, bar + size / 2 * b / face};
}

}  // namespace splicewright
