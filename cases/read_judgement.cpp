// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <array>
#include <cmath>
#include <numbers>

#include "cases/materials.h"
#include "cases/nearest.h"
#include "cases/own_value.h"
#include "cases/plain_text.h"
#include "cases/read_parts.h"

namespace splicewright
{
namespace
{

// Bounds of what still is a rating; judgement, no source.
constexpr double least_survival = 0.9, greatest_survival = 0.9999;
constexpr double greatest_partial_factor = 3, greatest_misalignment_factor = 3;

struct NamedFactor
{
    const char* name;
    double factor;
};

// Source: [Eurocode3Fatigue2005] table 3.1, from memory.
constexpr std::array<NamedFactor, 4> partial_factors{{{"safe life, high consequence", 1.35},
                                                      {"safe life, low consequence", 1.15},
                                                      {"damage tolerant, high consequence", 1.15},
                                                      {"damage tolerant, low consequence", 1.0}}};

constexpr std::array<const char*, 3> reliefs{"none", "unconstrained", "stress relieved"};

// Index of the word in a list of names; a word that is none of them is reported with the nearest.
template <class Names, class NameOf>
std::optional<std::size_t> listed_word(const CaseTable& table, const char* key, const std::string& word,
                                       const Names& names, const NameOf& name_of)
{
    std::vector<std::string> known;
    for (std::size_t at = 0; at < names.size(); ++at)
    {
        known.emplace_back(name_of(names[at]));
        if (comparable_name(word) == comparable_name(known.back())) return at;
    }
    std::string all;
    for (const std::string& name : known) all += fmt::format("{}\"{}\"", all.empty() ? "" : ", ", name);
    const auto meant = nearest(word, known, 1);
    table.report(key, fmt::format("must be one of {}", all),
                 meant.empty() ? fmt::format("one of these, or remove {}: it is then taken on the safe side", key)
                               : fmt::format("{} = \"{}\"", key, meant.front()));
    return std::nullopt;
}

void read_survival(const CaseTable& table, Rating& rating)
{
    rating.survival = table.quantity("survival", Dimension::share);
    if (!rating.survival)
        table.note_default("survival", "97.7 %", "as the classes have it, mean less two deviations (from memory)");
    else if (*rating.survival < least_survival || *rating.survival > greatest_survival)
        table.report("survival", "must be between 90 % and 99.99 %",
                     "survival = \"97.7 %\", that of the classes, or your own");
}

void read_partial_factor(const CaseTable& table, Rating& rating)
{
    if (const auto word = table.word("partial_factor"))
    {
        const auto at = listed_word(table, "partial_factor", *word, partial_factors,
                                    [](const NamedFactor& named) { return named.name; });
        if (!at) return;
        rating.partial_factor = partial_factors[*at].factor;
        rating.partial_factor_name = partial_factors[*at].name;
    }
    else if (const auto stated = table.plain_number("partial_factor"))
    {
        rating.partial_factor = *stated;
        rating.partial_factor_name = "stated";
        if (*stated < 1 || *stated > greatest_partial_factor)
            table.report("partial_factor", "must be between 1 and 3, or the name of a class",
                         "partial_factor = \"safe life, high consequence\", the strictest class, or your own");
    }
    else if (!table.has("partial_factor"))
        table.note_default("partial_factor", "1.35", "safe life, high consequence, EN 1993-1-9 (from memory)");
}

void read_relief(const CaseTable& table, Rating& rating)
{
    const auto word = table.text("r_ratio_enhancement");
    if (!word)
    {
        if (!table.has("r_ratio_enhancement")) table.note_default("r_ratio_enhancement", "none", "as welded");
        return;
    }
    const auto at = listed_word(table, "r_ratio_enhancement", *word, reliefs, [](const char* name) { return name; });
    if (at) rating.relief = static_cast<StressRelief>(*at);
}

void read_misalignment(const CaseTable& table, Rating& rating)
{
    const auto stated = table.plain_number("misalignment_factor");
    if (!stated)
    {
        if (!table.has("misalignment_factor"))
            table.note_default("misalignment_factor", "1", "the classes hold the misalignment that is usual");
        return;
    }
    rating.misalignment_factor = *stated;
    if (*stated < 1 || *stated > greatest_misalignment_factor)
        table.report("misalignment_factor", "must be between 1 and 3", own_number("misalignment_factor"));
}

void note_what_it_asks(const CaseTable& table, const Rating& rating)
{
    auto& cautions = table.findings().cautions;
    if (rating.partial_factor < Rating().partial_factor)
        cautions.push_back(fmt::format(
            "The partial factor of fatigue is {:g} ({}): 1.35 is meant for a part that is not inspected and whose "
            "break endangers people. A damage tolerant part asks for inspections that find the crack in time.",
            rating.partial_factor, rating.partial_factor_name));
    if (rating.survival && *rating.survival < survival_of_classes)
        cautions.push_back(fmt::format(
            "The survival asked for is {:.4g} %: more of such welds may break than the 2.3 % that the classes allow.",
            100 * *rating.survival));
    if (rating.relief == StressRelief::unconstrained)
        cautions.emplace_back(
            "The splice is rated as welded without constraint: that is meant for small thin parts with short welds, "
            "and "
            "the ring welds of a splice are neither; show by a measurement that little stress is locked in.");
    if (rating.relief == StressRelief::stress_relieved)
        cautions.emplace_back(
            "The splice is rated as stress-relieved: that holds only for a soak of the whole splice after its last "
            "weld, with a record of the furnace, and not above the temper of a quenched and tempered bar.");
}

}  // namespace

const char* name_of(StressRelief relief) { return reliefs[static_cast<std::size_t>(relief)]; }

double deviations_below_mean(double survival)
{
    EXPECTS(survival >= 0.5 && survival <= 0.9999);
    double low = 0, high = 5;
    for (int step = 0; step < 60; ++step)
    {
        const double z = (low + high) / 2;
        (0.5 * std::erfc(-z / std::numbers::sqrt2) < survival ? low : high) = z;
    }
    return std::round(100 * low) / 100;
}

Rating rating_at(const CaseTable& top)
{
    Rating rating;
    const auto table = top.table("judgement");
    if (!table)
    {
        if (!top.has("judgement"))
            top.note_default("judgement", "survival 97.7 %, partial_factor 1.35, as welded, misalignment_factor 1",
                             "fatigue of welds as the classes have it, safe life with high consequence");
        return rating;
    }
    read_survival(*table, rating);
    read_partial_factor(*table, rating);
    read_relief(*table, rating);
    read_misalignment(*table, rating);
    note_what_it_asks(*table, rating);
    table->report_unknown_keys();
    return rating;
}

}  // namespace splicewright
