// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "cases/materials.h"
#include "cases/nearest.h"
#include "cases/read_parts.h"

namespace splicewright
{
namespace
{

Section section_at(const CaseTable& table)
{
    Section section;
    section.length = table.required_length("length");
    section.diameter = table.required_length("diameter");
    section.fillet = table.length("fillet").value_or(Millimetre(0.0));
    table.report_unknown_keys();
    return section;
}

Groove groove_at(const CaseTable& table)
{
    Groove groove;
    groove.at = table.required_length("at");
    groove.depth = table.required_length("depth");
    groove.radius = table.required_length("radius");
    table.report_unknown_keys();
    return groove;
}

constexpr std::array surfaces{BarSurface::ground, BarSurface::machined, BarSurface::hot_rolled, BarSurface::forged};

// A bar with a step or a groove was turned, and then all over.
BarSurface default_surface(const CaseTable& table, const Bar& bar)
{
    const bool is_turned = bar.sections.size() > 1 || !bar.grooves.empty();
    const BarSurface taken = is_turned ? BarSurface::machined : bar.material.surface;
    const std::string condition = bar.material.condition.substr(0, bar.material.condition.find(','));
    table.note_default(
        "surface", name_of(taken),
        is_turned
            ? "a bar with steps or grooves is turned (judgement)"
            : fmt::format("one plain section, {}: as it comes from the mill (judgement)",
                          condition.empty() || condition.starts_with("as stated") ? "condition not known" : condition));
    return taken;
}

BarSurface surface_at(const CaseTable& table, const Bar& bar)
{
    const auto word = table.text("surface");
    if (!word) return table.has("surface") ? BarSurface::hot_rolled : default_surface(table, bar);
    std::vector<std::string> names;
    std::string all;
    for (const BarSurface surface : surfaces)
    {
        names.emplace_back(name_of(surface));
        if (comparable_name(*word) == names.back()) return surface;
        all += fmt::format("{}\"{}\"", all.empty() ? "" : ", ", names.back());
    }
    const auto meant = nearest(*word, names, 1);
    table.report("surface", fmt::format("must be one of {}", all),
                 meant.empty() ? "one of these words, or remove surface: it is then taken on the safe side"
                               : fmt::format("surface = \"{}\"", meant.front()));
    return BarSurface::hot_rolled;
}

}  // namespace

Bar bar_at(const CaseTable& table, const std::vector<Material>& stated)
{
    Bar bar;
    if (!table.has("material")) table.report("material", "is missing", how_to_name_a_steel);
    bar.material = material_at(table, "material", MaterialUse::part, stated).value_or(Material{});
    const auto bore = table.length("bore");
    if (!bore) table.note_default("bore", "0 mm", "solid bar");
    bar.bore = bore.value_or(Millimetre(0.0));

    for (const CaseTable& section : table.tables("section")) bar.sections.push_back(section_at(section));
    const std::string header = "[[" + table.field("section") + "]]";
    if (!table.has("section"))
        table.report("section", "is missing: a bar needs at least one section",
                     header + " with length = \"... mm\" and diameter = \"... mm\"");

    for (const CaseTable& groove : table.tables("groove")) bar.grooves.push_back(groove_at(groove));
    bar.surface = surface_at(table, bar);
    table.report_unknown_keys();
    return bar;
}

}  // namespace splicewright
