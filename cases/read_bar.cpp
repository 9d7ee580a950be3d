// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>

#include "cases/read_parts.h"

namespace splicewright
{
namespace
{

Section section_at(const CaseTable& table)
{
    Section section;
    section.length = table.required_length("length", "190 mm");
    section.diameter = table.required_length("diameter", "28.4 mm");
    section.fillet = table.length("fillet").value_or(Millimetre(0.0));
    table.report_unknown_keys();
    return section;
}

Groove groove_at(const CaseTable& table)
{
    Groove groove;
    groove.at = table.required_length("at", "150 mm");
    groove.depth = table.required_length("depth", "1 mm");
    groove.radius = table.required_length("radius", "1 mm");
    table.report_unknown_keys();
    return groove;
}

}  // namespace

Bar bar_at(const CaseTable& table, const std::vector<Material>& stated)
{
    Bar bar;
    if (!table.has("material")) table.report("material", "is missing", "material = \"C45 +QT\"");
    bar.material = material_at(table, "material", MaterialUse::part, stated).value_or(Material{});
    const auto bore = table.length("bore");
    if (!bore) table.note_default("bore", "0 mm", "solid bar");
    bar.bore = bore.value_or(Millimetre(0.0));

    for (const CaseTable& section : table.tables("section")) bar.sections.push_back(section_at(section));
    const std::string header = "[[" + table.field("section") + "]]";
    if (!table.has("section"))
        table.report("section", "is missing: a bar needs at least one section",
                     header + " with length = \"190 mm\" and diameter = \"28.4 mm\"");
    else if (bar.sections.empty())
        table.report("section", "must have at least one entry",
                     header + " with length = \"190 mm\" and diameter = \"28.4 mm\"");

    for (const CaseTable& groove : table.tables("groove")) bar.grooves.push_back(groove_at(groove));
    table.report_unknown_keys();
    return bar;
}

}  // namespace splicewright
