// SPDX-License-Identifier: GPL-2.0-or-later
#include <cmath>

#include "cases/read_parts.h"

namespace splicewright
{
namespace
{

constexpr int most_plugs_of_a_ring = 12;

int count_of(const CaseTable& table)
{
    const auto count = table.plain_number("count");
    if (!count)
    {
        table.report("count", "is missing: how many plug welds stand around the sleeve",
                     "count = ... with your number");
        return 1;
    }
    const bool is_whole = *count >= 1.0 && *count <= most_plugs_of_a_ring && std::floor(*count) == *count;
    if (!is_whole && !std::isnan(*count))
        table.report("count", "must be a whole number from 1 to 12", "count = ... from 1 to 12");
    return is_whole ? static_cast<int>(*count) : 1;
}

PlugRing ring_at(const CaseTable& table)
{
    PlugRing ring;
    ring.count = count_of(table);
    ring.diameter = table.required_length("diameter");
    ring.at = table.required_length("at");
    ring.depth = table.length("depth");
    if (!ring.depth) table.note_default("depth", "flush", "the hole is filled up to the outside of the sleeve");
    const auto start = table.quantity("start", Dimension::angle);
    if (!start) table.note_default("start", "0 deg", "the first hole lies in the cut plane of the lap");
    ring.start = Radian(start.value_or(0.0));
    table.report_unknown_keys();
    return ring;
}

}  // namespace

std::vector<PlugRing> plugs_at(const CaseTable& sleeve)
{
    std::vector<PlugRing> rings;
    for (const CaseTable& table : sleeve.tables("plug")) rings.push_back(ring_at(table));
    return rings;
}

}  // namespace splicewright
