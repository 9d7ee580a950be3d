// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/size_bands.h"

#include <fmt/format.h>

#include <algorithm>

#include "cases/units.h"

namespace splicewright
{
namespace
{

constexpr double same_diameter = 0.005;  // mm, 1.260 in is 32 mm

std::string range_of(const SizeBand& band)
{
    return fmt::format("{:g} to {:g} mm", band.above.value(), band.up_to.value());
}

std::string strength_of(const SizeBand& band)
{
    return fmt::format("{:.0f} MPa of yield and {:.0f} MPa of tensile strength", band.yield.value(),
                       band.tensile.value());
}

void take(const SizeBand& band, Material& material)
{
    material.yield = band.yield;
    material.tensile = band.tensile;
    material.condition += fmt::format("; strength of {} taken", range_of(band));
    material.source = fmt::format("taken for {}: {}", range_of(band), material.source);
}

// `part`: "The left bar".
void fit(Material& material, double diameter, const std::string& part, std::vector<std::string>& cautions)
{
    if (material.sizes.empty() || !(diameter > material.sizes.front().up_to.value() + same_diameter)) return;
    const SizeBand first = material.sizes.front();
    const auto fitting =
        std::find_if(material.sizes.begin(), material.sizes.end(),
                     [&](const SizeBand& band) { return diameter <= band.up_to.value() + same_diameter; });
    const bool is_listed = fitting != material.sizes.end();
    const SizeBand taken = is_listed ? *fitting : material.sizes.back();
    if (taken.up_to != first.up_to) take(taken, material);
    cautions.push_back(fmt::format(
        "{} is {} thick, and {} of {} hold for {}: {} {}.", part, in_words(diameter, Dimension::length),
        strength_of(first), material.name, range_of(first),
        is_listed ? fmt::format("taken is that of {},", range_of(taken))
                  : fmt::format("no strength is guaranteed at this size, ask for the certificate; taken is that of {},",
                                range_of(taken)),
        strength_of(taken)));
}

}  // namespace

void fit_to_size(Case& asked, std::vector<std::string>& cautions)
{
    for (const Side side : both_sides)
    {
        auto& bar = asked.bar[index(side)];
        if (!bar || bar->sections.empty()) continue;
        double largest = 0;
        for (const Section& section : bar->sections) largest = std::max(largest, section.diameter.value());
        fit(bar->material, largest, fmt::format("The {} bar", name_of(side)), cautions);
    }
    if (asked.sleeve) fit(asked.sleeve->material, asked.sleeve->outer_diameter.value(), "The sleeve", cautions);
}

}  // namespace splicewright
