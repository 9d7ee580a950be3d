// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/number_text.h"
#include "cases/plain_text.h"
#include "cases/read_parts.h"
#include "cases/shape_limits.h"

namespace splicewright
{
namespace
{

constexpr const char* depth_or_full =
    "penetration = \"... mm\" with the proven depth, or penetration = \"full\" where that can be proven";

std::optional<Millimetre> penetration_at(const CaseTable& table)
{
    if (!table.has("penetration"))
    {
        table.report("penetration", "is missing: what is fused decides the strength", depth_or_full);
        return std::nullopt;
    }
    const std::string word = table.word("penetration").value_or("");
    if (lower_case(trimmed(word)) == "full") return std::nullopt;
    const bool is_no_number = leading_number(word).fault == NumberFault::absent;
    if (table.word("penetration") && (is_no_number || measurement(word, Dimension::share).has_value()))
    {
        table.report("penetration", "must be \"full\" or a depth, with its unit", depth_or_full);
        return Millimetre(unread);
    }
    return table.length("penetration");
}

Millimetre blend_at(const CaseTable& table, const std::array<double, 2>& diameters)
{
    if (const auto stated = table.length("blend")) return *stated;
    const double difference = std::abs(diameters[0] - diameters[1]);
    if (difference > equal_diameters.value())
    {
        // Long enough for a slope of 1 in 4 on each side's radius. Judgement, no source.
        const double length = std::max(2.0 * difference, 3.0);
        table.note_default("blend", in_words(length, Dimension::length),
                           "twice the difference in diameter, at least 3 mm (judgement)");
        return Millimetre(length);
    }
    return Millimetre(std::isnan(difference) ? unread : 0.0);
}

// Radius of the inner corners of a half lap: as stated, else the reference radius where there is room for it.
Millimetre lap_corner_radius_at(const CaseTable& table, const Joint& joint, const std::array<double, 2>& diameters)
{
    const auto stated = table.length("lap_corner_radius");
    if (stated) return *stated;
    const double half_lap = joint.half_lap.value();
    if (!(half_lap > 0.0)) return Millimetre(0.0);
    const double radius = std::min(reference_notch_radius.value(), greatest_lap_corner_radius(joint, diameters));
    if (!(radius > 0.0)) return Millimetre(unread);  // the length or the diameter that it comes from is reported
    if (joint.penetration)                           // a lap that is fused through has no inner corners
        table.note_default("lap_corner_radius", in_words(radius, Dimension::length),
                           "reference radius of the notch stress method, or what the lap has room for");
    return Millimetre(radius);
}

}  // namespace

double greatest_lap_corner_radius(const Joint& joint, const std::array<double, 2>& diameters)
{
    const double by_length = joint.half_lap.value() / 4;
    if (!joint.penetration) return by_length;
    const double land = (diameters[0] + diameters[1]) / 4 - joint.penetration->value();
    return std::min(by_length, land / 3);
}

Joint joint_at(const CaseTable& table, const std::array<double, 2>& diameters, const Material& filler)
{
    Joint joint;
    joint.penetration = penetration_at(table);
    const auto half_lap = table.length("half_lap");
    if (!half_lap) table.note_default("half_lap", "0 mm", "square cut");
    joint.half_lap = half_lap.value_or(Millimetre(0.0));
    joint.blend = blend_at(table, diameters);
    joint.filler = filler;
    joint.offset = table.length("offset").value_or(Millimetre(0.0));
    joint.tilt = Radian(table.quantity("tilt", Dimension::angle).value_or(0.0));
    joint.offset_angle = Radian(table.quantity("offset_angle", Dimension::angle).value_or(0.0));
    joint.lap_corner_radius = lap_corner_radius_at(table, joint, diameters);
    if (!table.has("offset")) table.note_default("offset", "0 mm", "not measured: the bars are taken as in line");
    if (!table.has("tilt")) table.note_default("tilt", "0 deg", "not measured: the bars are taken as in line");
    table.report_unknown_keys();
    return joint;
}

}  // namespace splicewright
