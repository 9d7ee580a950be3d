// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/bar_shape.h"
#include "cases/check_parts.h"
#include "cases/materials.h"
#include "cases/own_value.h"
#include "cases/shape_limits.h"

namespace splicewright
{
namespace
{

constexpr double least_land = 2.0;            // mm, room for the notch at the land's edge
constexpr double greatest_difference = 0.25;  // of the smaller diameter
constexpr double least_blend = 0.5;
constexpr double greatest_blend_share = 0.8;  // of the smaller diameter
constexpr double least_half_lap = 2.0;
constexpr double lap_to_sleeve_end = 3.0;  // mm, room between the seam and the root of the sleeve weld
constexpr double clear_length = 1.0;

const Bar& bar_of(const Case& asked, Side side) { return *asked.bar[index(side)]; }

double diameter_of(const Case& asked, Side side) { return bar_of(asked, side).sections.front().diameter.value(); }

double smaller_diameter(const Case& asked)
{
    return std::min(diameter_of(asked, Side::left), diameter_of(asked, Side::right));
}

void check_penetration(RuleReport& report, const Case& asked)
{
    if (!asked.joint->penetration) return;
    const double least_depth = least_penetration.value();
    const double penetration = asked.joint->penetration->value();
    const double radius = (diameter_of(asked, Side::left) + diameter_of(asked, Side::right)) / 4;
    const double greatest = radius - bar_of(asked, Side::left).bore.value() / 2 - least_land;
    if (penetration >= least_depth && penetration <= greatest + same_length.value()) return;
    if (greatest < least_depth)
        report.add("joint.penetration",
                   fmt::format("cannot be a depth here: between {} and the land of at least {} nothing is left of a "
                               "wall of {}",
                               mm(least_depth), mm(least_land), mm(greatest + least_land)),
                   "penetration = \"full\", when that can be proven");
    else
        report.keep_between("joint.penetration", penetration, least_depth, greatest,
                            "the unfused land must keep a width of 2 mm; \"full\" leaves none");
}

void check_blend(RuleReport& report, const Case& asked)
{
    const double blend = asked.joint->blend.value();
    const double difference = std::abs(diameter_of(asked, Side::left) - diameter_of(asked, Side::right));
    if (difference <= equal_diameters.value())
    {
        if (blend != 0.0 && !std::isnan(blend))
            report.add("joint.blend", "must be absent between bars of the same diameter", "remove blend");
        return;
    }
    report.keep_between("joint.blend", blend, std::max(difference, least_blend),
                        greatest_blend_share * smaller_diameter(asked),
                        fmt::format("the diameters differ by {}", mm(difference)));
}

void check_first_section(RuleReport& report, const Case& asked, Side side)
{
    const SectionSpan span = section_span(bar_of(asked, side), 0);
    const double blend = butt_half_length(*asked.joint), half_lap = asked.joint->half_lap.value() / 2;
    const double least = std::max(blend, half_lap) + clear_length + (span.end - span.plain_end);
    const std::string field = fmt::format("{}.section[1].length", name_of(side));
    if (span.end < least - same_length.value())
        report.add(field,
                   fmt::format("must be at least {}: the {} takes {} of it", mm(least),
                               half_lap > blend ? "half lap" : "butt weld", mm(std::max(blend, half_lap))),
                   own_quantity("length", Dimension::length));
}

void check_half_lap(RuleReport& report, const Case& asked)
{
    const double half_lap = asked.joint->half_lap.value();
    if (half_lap == 0.0) return;
    double greatest = 2.0 * smaller_diameter(asked);
    std::string reason = "twice the smaller diameter; absent: a square cut";
    for (const Side side : both_sides)
    {
        if (!asked.sleeve) break;
        const double covered = 2.0 * (sleeve_reach(*asked.sleeve, side) - lap_to_sleeve_end);
        if (covered < greatest)
        {
            greatest = covered;
            reason = fmt::format("the sleeve must cover it and {} more: it reaches {} to the {}", mm(lap_to_sleeve_end),
                                 mm(sleeve_reach(*asked.sleeve, side)), name_of(side));
        }
    }
    report.keep_between("joint.half_lap", half_lap, least_half_lap, greatest, reason);
}

// Where metals of different stiffness meet on the surface of a notch the stress rises without end, and no mesh tells
// it. Source: [Bogy1971], from memory; the limits are judgement: up to them finer meshes showed no rise.
constexpr double greatest_stiffness_difference = 0.06, greatest_poisson_difference = 0.05;

bool is_sane(const Material& material)
{
    const double modulus = material.elastic_modulus.value(), ratio = material.poisson_ratio;
    return modulus >= least_modulus && modulus <= greatest_modulus && ratio >= least_poisson_ratio &&
           ratio <= greatest_poisson_ratio;
}

void check_stiffness(RuleReport& report, const Material& parent, const Material& other, const std::string& field)
{
    if (!is_sane(parent) || !is_sane(other)) return;  // reported already
    const double modulus = parent.elastic_modulus.value(), other_modulus = other.elastic_modulus.value();
    if (std::abs(modulus - other_modulus) > greatest_stiffness_difference * std::max(modulus, other_modulus))
        report.add(field,
                   fmt::format("must be as stiff as the left bar ({:.0f} GPa) within 6 %, not {:.0f} GPa: where unlike "
                               "metals meet on the surface of a weld the stress cannot be told",
                               modulus / 1e3, other_modulus / 1e3),
                   "weld metals of one kind: steel to steel with a steel filler");
    if (std::abs(parent.poisson_ratio - other.poisson_ratio) > greatest_poisson_difference)
        report.add(field,
                   fmt::format("must have the Poisson ratio of the left bar ({:.2f}) within 0.05, not {:.2f}",
                               parent.poisson_ratio, other.poisson_ratio),
                   "weld metals of one kind: steel to steel with a steel filler");
}

void check_metals(RuleReport& report, const Case& asked)
{
    const Material& parent = bar_of(asked, Side::left).material;
    check_stiffness(report, parent, bar_of(asked, Side::right).material, "right.material");
    if (!asked.sleeve) return;
    check_stiffness(report, parent, asked.sleeve->material, "sleeve.material");
    check_stiffness(report, parent, asked.sleeve->weld.filler, "sleeve.weld.filler");
}

}  // namespace

void check_joint(RuleReport& report, const Case& asked)
{
    const double left = diameter_of(asked, Side::left), right = diameter_of(asked, Side::right);
    const double left_bore = bar_of(asked, Side::left).bore.value(),
                 right_bore = bar_of(asked, Side::right).bore.value();
    if (std::abs(left_bore - right_bore) > same_length.value())
        report.add("right.bore",
                   fmt::format("must be that of the left bar, {}, where the two are welded", mm(left_bore)),
                   "measure both: one bore runs through both bars");
    const double smaller = smaller_diameter(asked);
    if (std::abs(left - right) > greatest_difference * smaller + same_length.value())
    {
        const Side larger = left > right ? Side::left : Side::right;
        report.add(fmt::format("{}.section[1].diameter", name_of(larger)),
                   fmt::format("must be at most {} at the joint: 25 % more than the other bar's {}",
                               mm((1.0 + greatest_difference) * smaller), mm(smaller)),
                   "turn the larger bar down beside the joint");
    }
    check_penetration(report, asked);
    check_blend(report, asked);
    check_half_lap(report, asked);
    check_metals(report, asked);
    if (asked.sleeve) return;  // its weld must end on the first section, which asks for more
    for (const Side side : both_sides) check_first_section(report, asked, side);
}

}  // namespace splicewright
