// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/hardness.h"
#include "cases/heated_yield.h"
#include "cases/materials.h"
#include "cases/nearest.h"
#include "cases/own_value.h"
#include "cases/plain_text.h"
#include "cases/read_parts.h"

namespace splicewright
{
namespace
{

constexpr const char* how_to_define =
    "define one: [[material]] with name = \"...\", yield = \"... MPa\" and tensile = \"... MPa\" from its certificate; "
    "or say \"unknown\"";
constexpr const char* where_names_stand = "name one of the built-in materials, which docs/case-format.md lists; or ";
constexpr std::size_t most_stated_materials = 50;
constexpr double doubtful_difference = 0.15;  // of the tensile strength against that of the hardness, judgement
constexpr const char* default_filler = "ER70S-6";

// Bounds against slips of the unit, wide around any steel. Common practice, no source.
constexpr double least_yield = 50.0, greatest_tensile = 4000.0;   // MPa
constexpr double least_density = 1e-9, greatest_density = 20e-9;  // tonne/mm^3

void check_strength(const CaseTable& table, const Material& material)
{
    const double yield = material.yield.value(), tensile = material.tensile.value();
    const double modulus = material.elastic_modulus.value();
    if (yield <= least_yield)
        table.report("yield", "must be above 50 MPa", "yield = \"... MPa\" from the certificate of the bar");
    if (yield > greatest_tensile)
        table.report("yield", "must be at most 4000 MPa", "yield = \"... MPa\" from the certificate of the bar");
    else if (tensile < yield)
        table.report("tensile", fmt::format("must be at least the yield of {}", in_words(yield, Dimension::stress)),
                     "tensile = \"... MPa\" from the certificate of the bar");
    if (tensile > greatest_tensile)
        table.report("tensile", "must be at most 4000 MPa", "tensile = \"... MPa\" from the certificate of the bar");
    if (modulus < least_modulus || modulus > greatest_modulus)
        table.report("elastic_modulus", "must be between 50 and 400 GPa", "elastic_modulus = \"210 GPa\" for steel");
    if (material.poisson_ratio < 0.0 || material.poisson_ratio > greatest_poisson_ratio)
        table.report("poisson_ratio", "must be between 0 and 0.49", "poisson_ratio = 0.3 for steel");
    if (material.density < least_density || material.density > greatest_density)
        table.report("density", "must be between 1000 and 20 000 kg/m^3", "density = \"7850 kg/m^3\" for steel");
}

Composition chemistry_of(const CaseTable& material)
{
    const auto table = material.table("chemistry");
    if (!table)
    {
        if (!material.has("chemistry"))
            material.note_default("chemistry", "not stated", "no carbon equivalent and no preheat can be worked out");
        return {};
    }
    table->report_unknown_keys();
    const auto percent = [&](const char* element)
    {
        const double value = table->plain_number(element).value_or(0.0);
        if (value < 0.0 || value > 50.0)
            table->report(element, "must be a mass percent between 0 and 50", own_number(element));
        return value;
    };
    return {percent("C"),  percent("Si"), percent("Mn"), percent("Cr"),
            percent("Mo"), percent("Ni"), percent("V"),  percent("Cu")};
}

HeatedYield named_state(const CaseTable& table, const std::string& name)
{
    std::string names;
    for (const HeatedYield& known : heated_yields())
    {
        if (comparable_name(known.state) == comparable_name(name)) return known;
        names += fmt::format("{}{}", names.empty() ? "" : ", ", known.state);
    }
    table.report("heat_state", fmt::format("must be one of: {}", names),
                 "one of these, or remove heat_state: it is then taken on the safe side");
    return {};
}

HeatedYield default_heated_yield(const std::string& name, std::optional<double> vickers)
{
    if (const auto known = library_material(name))
        return {"", known->material.heated_yield_factor, "as the library has it for this name"};
    if (vickers) return heated_yield_of_hardness(*vickers);
    // The bar may be cold-drawn, whose hardening the heat takes away.
    return {"", 0.58, "condition unknown, taken as cold-drawn"};
}

void read_heated_yield(const CaseTable& table, std::optional<double> vickers, Material& material)
{
    const auto stated = table.plain_number("heated_yield_factor");
    const auto state = table.text("heat_state");
    if (stated && state)
        table.report("heat_state", "must not stand beside heated_yield_factor, which it would give",
                     "keep either heat_state or heated_yield_factor");
    if (stated)
    {
        if (*stated < 0.2 || *stated > 1.0)
            table.report("heated_yield_factor", "must be between 0.2 and 1", own_number("heated_yield_factor"));
        material.heated_yield_factor = *stated;
        material.heated_yield_reason = "stated in the case";
        return;
    }
    const HeatedYield taken = state ? named_state(table, *state) : default_heated_yield(material.name, vickers);
    if (state) material.condition = fmt::format("{}, as stated in the case", taken.state);
    if (taken.state == "cold-drawn" || taken.state == "stress-relieved") material.surface = BarSurface::machined;
    table.note_default("heated_yield_factor", fmt::format("{:.3g}", taken.factor),
                       fmt::format("{} (judgement)", taken.reason));
    material.heated_yield_factor = taken.factor;
    material.heated_yield_reason = taken.reason;
}

std::optional<double> vickers_at(const CaseTable& table)
{
    const auto text = table.text("hardness");
    if (!text) return std::nullopt;
    const Result<double> read = vickers_hardness(*text);
    if (read.has_value()) return read.value();
    const Problem& problem = read.problems().front();
    const bool is_advice = problem.fix.find(' ') != problem.fix.rfind(' ');
    table.report("hardness", problem.rule, is_advice ? problem.fix : fmt::format("hardness = \"{}\"", problem.fix));
    return std::nullopt;
}

std::string rounded_stress(Megapascal stress) { return fmt::format("{:.0f} MPa", stress.value()); }

// Fills what is not stated from the hardness, at the lower end of its scatter.
void estimate_strength(const CaseTable& table, double vickers, const std::string& hardness, Material& material)
{
    const StrengthEstimate estimate = strength_of_hardness(vickers);
    const auto fill = [&](const char* key, Megapascal middle, Megapascal low, const char* scatter, Megapascal& value)
    {
        if (table.has(key)) return;
        value = low;
        table.note_default(key, rounded_stress(low),
                           fmt::format("ESTIMATE from {}: lower end of the scatter, {} {}", hardness,
                                       rounded_stress(middle), scatter));
    };
    fill("yield", estimate.yield, estimate.yield_low, "less two standard errors of 102 MPa (from memory: verify)",
         material.yield);
    fill("tensile", estimate.tensile, estimate.tensile_low, "less 10 % (judgement)", material.tensile);
    material.provenance = Provenance::judgement;
    material.source = fmt::format(
        "{}ESTIMATE from {} ({:.0f} HV): yield by [Pavlina2008], tensile strength by "
        "[ISO18265] and [ASTM-A370], lower end of the scatter",
        table.has("source") ? fmt::format("{}; ", material.source) : "", hardness, vickers);
    table.findings().cautions.push_back(fmt::format(
        "The strength of \"{}\" is an estimate from its hardness ({}): measure in several places on clean metal below "
        "any hardened skin; a tensile test or a certificate is better.",
        material.name, hardness));
}

void read_strength(const CaseTable& table, std::optional<double> vickers, Material& material)
{
    const bool has_both = table.has("yield") && table.has("tensile");
    material.yield = material.tensile = Megapascal(unread);
    const auto read = [&](const char* key, Megapascal& value)
    {
        if (table.has(key) || !table.has("hardness"))
            value = Megapascal(table.required_quantity(key, Dimension::stress));
    };
    read("yield", material.yield);
    read("tensile", material.tensile);
    if (!vickers) return;
    const std::string hardness = table.text("hardness").value_or("");
    if (!has_both)
    {
        estimate_strength(table, *vickers, hardness, material);
        return;
    }
    const double expected = strength_of_hardness(*vickers).tensile.value(), stated = material.tensile.value();
    if (std::abs(stated / expected - 1) > doubtful_difference)
        table.findings().cautions.push_back(
            fmt::format("The tensile strength of \"{}\" is stated as {}, and its hardness of {} speaks for {:.0f} MPa: "
                        "one of the two "
                        "is of another steel or another state of it.",
                        material.name, in_words(stated, Dimension::stress), hardness, expected));
}

// Bounds against slips of the unit, wide around any steel. Common practice, no source.
constexpr double least_toughness = 300, greatest_toughness = 16000;  // MPa sqrt(mm), 10 to 500 MPa sqrt(m)

void read_toughness(const CaseTable& table, Material& material)
{
    material.toughness = table.quantity("toughness", Dimension::toughness);
    if (!material.toughness) return;
    material.toughness_reason = "stated in the case";
    material.toughness_provenance = Provenance::stated;
    if (*material.toughness < least_toughness || *material.toughness > greatest_toughness)
        table.report("toughness", "must be between 10 and 500 MPa*m^0.5",
                     own_quantity("toughness", Dimension::toughness));
}

Material stated_material(const CaseTable& table)
{
    Material material;
    material.form = "stated";
    material.condition = "as stated in the case";
    material.provenance = Provenance::stated;
    material.name = table.required_text("name").value_or("");
    material.source = table.text("source").value_or("stated in the case");
    const std::optional<double> vickers = vickers_at(table);
    read_strength(table, vickers, material);
    const auto modulus = table.quantity("elastic_modulus", Dimension::stress);
    if (!modulus) table.note_default("elastic_modulus", "210 GPa", "steel, common practice");
    material.elastic_modulus = Megapascal(modulus.value_or(210e3));
    const auto poisson_ratio = table.plain_number("poisson_ratio");
    if (!poisson_ratio) table.note_default("poisson_ratio", "0.3", "steel, common practice");
    material.poisson_ratio = poisson_ratio.value_or(0.3);
    const auto density = table.quantity("density", Dimension::density);
    if (!density) table.note_default("density", "7850 kg/m^3", "steel, common practice");
    material.density = density.value_or(7.85e-9);
    read_heated_yield(table, vickers, material);
    material.composition = chemistry_of(table);
    read_toughness(table, material);
    check_strength(table, material);
    table.report_unknown_keys();
    return material;
}

const Material* stated_with_name(const std::vector<Material>& stated, const std::string& name)
{
    const auto found =
        std::find_if(stated.begin(), stated.end(),
                     [&](const Material& material) { return comparable_name(material.name) == comparable_name(name); });
    return found == stated.end() ? nullptr : &*found;
}

void report_unknown_material(const CaseTable& table, const std::string& key, const std::string& name,
                             const std::vector<Material>& stated)
{
    std::vector<std::string> names = library_material_names();
    for (const Material& material : stated)
        if (!material.name.empty()) names.push_back(material.name);
    std::vector<std::string> close = nearest(name, names, 3);
    // "4140" alone is no misspelling: the condition is missing.
    for (const std::string& candidate : names)
    {
        const bool begins = name.size() >= 3 && comparable_name(candidate).rfind(comparable_name(name), 0) == 0;
        if (begins && std::find(close.begin(), close.end(), candidate) == close.end()) close.push_back(candidate);
    }
    std::string fix;
    for (const std::string& candidate : close) fix += fmt::format("{}{}", fix.empty() ? "" : ", ", quoted(candidate));
    table.report(key, "is not a known material",
                 fix.empty() ? fmt::format("{}{}", where_names_stand, how_to_define)
                             : fmt::format("did you mean {}? Or {}", fix, how_to_define));
}

void note_loose_name(const CaseTable& table, const std::string& key, const std::string& name,
                     const LibraryMaterial& entry)
{
    if (is_loose_name(entry, name)) table.note_default(key, entry.material.name, entry.loose_name_means);
}

}  // namespace

std::vector<Material> stated_materials(const CaseTable& top)
{
    std::vector<Material> materials;
    for (const CaseTable& table : top.tables("material"))
    {
        if (materials.size() == most_stated_materials)
        {
            top.report("material", "must have at most 50 entries", "leave out materials that are not used");
            break;
        }
        const Material material = stated_material(table);
        if (!material.name.empty() && stated_with_name(materials, material.name) != nullptr)
            table.report("name", "must be different from the names of the other materials",
                         "give this material a name of its own");
        materials.push_back(material);
    }
    return materials;
}

std::optional<Material> material_at(const CaseTable& table, const std::string& key, MaterialUse use,
                                    const std::vector<Material>& stated)
{
    const auto name = table.text(key);
    if (!name) return std::nullopt;
    if (const Material* material = stated_with_name(stated, *name)) return *material;
    const auto entry = library_material(*name);
    if (!entry)
    {
        report_unknown_material(table, key, *name, stated);
        return std::nullopt;
    }
    const bool is_filler = entry->material.form == "filler";
    if (is_filler && use == MaterialUse::part)
        table.report(key, "must be a bar or tube material, not a filler metal", how_to_name_a_steel);
    if (!is_filler && use == MaterialUse::filler)
        table.report(
            key, "must be a filler metal",
            fmt::format("{} = \"...\" with the name of the filler metal (docs/case-format.md lists them)", key));
    note_loose_name(table, key, *name, *entry);
    return entry->material;
}

Fillers fillers_of(const std::optional<CaseTable>& joint, const std::optional<CaseTable>& sleeve_weld,
                   const std::vector<Material>& stated)
{
    const auto named = [&](const std::optional<CaseTable>& table)
    { return table ? material_at(*table, "filler", MaterialUse::filler, stated) : std::nullopt; };
    const auto of_joint = named(joint), of_weld = named(sleeve_weld);
    const auto fallback = library_material(default_filler);
    EXPECTS(fallback.has_value());
    const auto filled = [&](const std::optional<CaseTable>& table, const std::optional<Material>& own,
                            const std::optional<Material>& other, const char* other_weld)
    {
        if (own || !table || table->has("filler")) return own.value_or(fallback->material);
        const Material& taken = other ? *other : fallback->material;
        table->note_default(
            "filler", taken.name,
            other ? fmt::format("as {}", other_weld) : "common filler for unalloyed steel (common practice)");
        return taken;
    };
    return {filled(joint, of_joint, of_weld, "the sleeve welds"),
            filled(sleeve_weld, of_weld, of_joint, "the butt weld")};
}

}  // namespace splicewright
