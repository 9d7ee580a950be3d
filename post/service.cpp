// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/service.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "post/number_words.h"

namespace splicewright
{
std::optional<Service::Life> least_life(const std::vector<CheckRow>& rows)
{
    const CheckRow* shortest = nullptr;
    for (const CheckRow& row : rows)
        if (row.valid() && row.life && (shortest == nullptr || *row.life < *shortest->life)) shortest = &row;
    if (shortest == nullptr) return std::nullopt;
    Service::Life life{shortest->site, *shortest->life, *shortest->life};
    for (const CheckRow& row : rows)
        if (row.valid() && row.life && row.site == life.site) life.longest = std::max(life.longest, *row.life);
    return life;
}

Service service_of(const Case& asked, const std::vector<CheckRow>& rows)
{
    Service service;
    const CheckRow* strength = governing(rows, CheckKind::strength);
    if (strength != nullptr && strength->utilisation > 0)
    {
        service.torque_carried = asked.load.peak_torque.value() / strength->utilisation;
        service.strength_site = strength->site;
    }
    service.life = least_life(rows);
    return service;
}

std::optional<LifeCount> starts_asked(const Load& load)
{
    const TorqueBlock* heaviest = nullptr;
    const auto size = [](const TorqueBlock& block)
    { return std::max(std::abs(block.low.value()), std::abs(block.high.value())); };
    for (const TorqueBlock& block : load.blocks)
        if (block.origin == BlockOrigin::stated && (heaviest == nullptr || size(block) > size(*heaviest)))
            heaviest = &block;
    if (heaviest != nullptr) return LifeCount{fmt::format("times \"{}\"", heaviest->name), heaviest->count};
    if (load.history) return LifeCount{"runs of the torque history", load.history->repeats};
    return std::nullopt;
}

std::optional<double> kilometres_asked(const Load& load)
{
    if (load.running_bending.value() <= 0) return std::nullopt;
    constexpr double millimetre_per_kilometre = 1e6;
    return load.revolutions * 2 * std::numbers::pi * load.tyre_radius.value() / millimetre_per_kilometre;
}

std::string life_text(const Load& load, const Service::Life& life)
{
    std::string text = life_words(life.least);
    if (text.starts_with('>')) return text;
    const auto starts = starts_asked(load);
    const auto kilometres = kilometres_asked(load);
    if (starts) text += fmt::format(": {} {}", rounded_down(life.least * starts->count), starts->what);
    if (kilometres) text += fmt::format("{} {} km", starts ? " and" : ":", rounded_down(life.least * *kilometres));
    return text;
}

std::string other_methods_text(const Service::Life& life)
{
    constexpr double same = 1.05;
    if (!(life.longest > same * life.least)) return life.site;
    const std::string longest = life.longest > longest_life ? fmt::format("more than {} x", counted(longest_life))
                                                            : fmt::format("up to {}", life_words(life.longest));
    return fmt::format("{}; its other methods {}", life.site, longest);
}

}  // namespace splicewright
