// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/materials.h"

#include <fmt/format.h>
#include <toml++/toml.h>

#include <algorithm>
#include <cmath>

#include "cases/plain_text.h"
#include "cases/units.h"

namespace splicewright
{

extern const char* const materials_toml;  // made from materials.toml by CMake

namespace
{

std::string text_at(const toml::table& table, const char* key)
{
    const auto text = table[key].value<std::string>();
    EXPECTS(text.has_value());
    return *text;
}

std::vector<std::string> texts_at(const toml::table& table, const char* key)
{
    std::vector<std::string> texts;
    if (const auto* list = table[key].as_array())
        for (const auto& text : *list) texts.push_back(text.value_or(std::string()));
    return texts;
}

bool is_among(const std::vector<std::string>& names, const std::string& name)
{
    return std::any_of(names.begin(), names.end(),
                       [&](const std::string& candidate)
                       { return comparable_name(candidate) == comparable_name(name); });
}

double quantity_at(const toml::table& table, const char* key, Dimension dimension)
{
    const Result<Measurement> read = measurement(text_at(table, key), dimension);
    EXPECTS(read.has_value());
    return read.value().value;
}

Provenance provenance_named(const std::string& name)
{
    if (name == "published") return Provenance::published;
    if (name == "secondary") return Provenance::secondary;
    if (name == "judgement") return Provenance::judgement;
    EXPECTS(name == "from memory");
    return Provenance::from_memory;
}

StrengthKind strength_kind_named(const std::string& name)
{
    if (name == "estimated minimum") return StrengthKind::estimated_minimum;
    if (name == "typical") return StrengthKind::typical;
    EXPECTS(name == "minimum");
    return StrengthKind::minimum;
}

BarSurface surface_named(const std::string& name)
{
    if (name == "cold-drawn") return BarSurface::machined;  // of one surface factor with machined
    EXPECTS(name == "hot-rolled");
    return BarSurface::hot_rolled;
}

// sizes = ["16 mm", "40 mm"] for the strength of the entry, larger_sizes for those above.
std::vector<SizeBand> sizes_at(const toml::table& table, const Material& material)
{
    std::vector<SizeBand> bands;
    const auto millimetres = [](const std::string& text)
    {
        const Result<Measurement> read = measurement(text, Dimension::length);
        EXPECTS(read.has_value());
        return Millimetre(read.value().value);
    };
    const std::vector<std::string> own = texts_at(table, "sizes");
    if (own.empty()) return bands;
    EXPECTS(own.size() == 2);
    bands.push_back({millimetres(own[0]), millimetres(own[1]), material.yield, material.tensile});
    if (const auto* list = table["larger_sizes"].as_array())
        for (const auto& entry : *list)
        {
            EXPECTS(entry.is_table());
            const toml::table& larger = *entry.as_table();
            bands.push_back({bands.back().up_to, millimetres(text_at(larger, "up_to")),
                             Megapascal(quantity_at(larger, "yield", Dimension::stress)),
                             Megapascal(quantity_at(larger, "tensile", Dimension::stress))});
        }
    return bands;
}

LibraryMaterial library_entry(const toml::table& table)
{
    LibraryMaterial entry;
    Material& material = entry.material;
    material.name = text_at(table, "name");
    material.form = text_at(table, "form");
    material.condition = text_at(table, "condition");
    material.yield = Megapascal(quantity_at(table, "yield", Dimension::stress));
    material.tensile = Megapascal(quantity_at(table, "tensile", Dimension::stress));
    material.elastic_modulus = Megapascal(quantity_at(table, "elastic_modulus", Dimension::stress));
    material.poisson_ratio = table["poisson_ratio"].value_or(0.0);
    material.density = quantity_at(table, "density", Dimension::density);
    material.heated_yield_factor = table["heated_yield_factor"].value_or(0.0);
    material.heated_yield_reason = text_at(table, "heated_yield_reason");
    material.source = text_at(table, "source");
    material.strength_kind = strength_kind_named(table["strength"].value_or(std::string("minimum")));
    material.surface = surface_named(table["surface"].value_or(std::string("hot-rolled")));
    material.sizes = sizes_at(table, material);
    if (table.contains("charpy"))
    {
        const double charpy = table["charpy"].value_or(0.0);
        material.toughness = toughness_of_charpy(charpy);
        material.toughness_reason = fmt::format("{:g} J (Charpy), {}", charpy, text_at(table, "charpy_source"));
    }
    material.provenance = provenance_named(text_at(table, "provenance"));
    const auto percent = [&](const char* element) { return table["chemistry"][element].value_or(0.0); };
    material.composition = {percent("C"),  percent("Si"), percent("Mn"), percent("Cr"),
                            percent("Mo"), percent("Ni"), percent("V"),  percent("Cu")};
    entry.other_names = texts_at(table, "other_names");
    entry.loose_names = texts_at(table, "loose_names");
    entry.loose_name_means = table["loose_name_means"].value_or(std::string());
    return entry;
}

std::vector<LibraryMaterial> library_read()
{
    const toml::table file = toml::parse(std::string_view(materials_toml));
    const auto* list = file["material"].as_array();
    EXPECTS(list != nullptr);
    std::vector<LibraryMaterial> library;
    for (const auto& entry : *list)
    {
        EXPECTS(entry.is_table());
        library.push_back(library_entry(*entry.as_table()));
    }
    return library;
}

}  // namespace

double toughness_of_charpy(double joule) { return 12 * std::sqrt(joule) * sqrt_mm_per_sqrt_m; }

const std::vector<LibraryMaterial>& material_library()
{
    static const std::vector<LibraryMaterial> library = library_read();
    return library;
}

std::string comparable_name(const std::string& name)
{
    std::string plain;
    for (const char letter : lower_case(trimmed(name)))
    {
        const bool second_space = letter == ' ' && !plain.empty() && plain.back() == ' ';
        if (!second_space) plain += letter;
    }
    return plain;
}

bool is_loose_name(const LibraryMaterial& entry, const std::string& name) { return is_among(entry.loose_names, name); }

std::optional<LibraryMaterial> library_material(const std::string& name)
{
    for (const LibraryMaterial& entry : material_library())
        if (is_among({entry.material.name}, name) || is_among(entry.other_names, name) || is_loose_name(entry, name))
            return entry;
    return std::nullopt;
}

std::vector<std::string> library_material_names()
{
    std::vector<std::string> names;
    for (const LibraryMaterial& entry : material_library())
    {
        names.push_back(entry.material.name);
        names.insert(names.end(), entry.other_names.begin(), entry.other_names.end());
        names.insert(names.end(), entry.loose_names.begin(), entry.loose_names.end());
    }
    return names;
}

}  // namespace splicewright
