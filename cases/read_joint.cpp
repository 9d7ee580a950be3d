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

std::optional<Millimetre> penetration_at(const CaseTable& table)
{
    if (!table.has("penetration"))
    {
        table.report(
            "penetration", "is missing: what is fused decides the strength",
            "penetration = \"... mm\" with the proven depth, or penetration = \"full\" where that can be proven");
        return std::nullopt;
    }
    if (const auto word = table.word("penetration"); word && lower_case(trimmed(*word)) == "full") return std::nullopt;
    if (const auto word = table.word("penetration"); word && leading_number(*word).fault == NumberFault::absent)
    {
        table.report(
            "penetration", "must be \"full\" or a depth",
            "penetration = \"... mm\" with the proven depth, or penetration = \"full\" where that can be proven");
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

}  // namespace

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
    if (!table.has("offset")) table.note_default("offset", "0 mm", "not measured: the bars are taken as in line");
    if (!table.has("tilt")) table.note_default("tilt", "0 deg", "not measured: the bars are taken as in line");
    table.report_unknown_keys();
    return joint;
}

}  // namespace splicewright
