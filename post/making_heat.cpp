// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/problem.h"
#include "post/making_steel.h"

namespace splicewright
{
namespace
{

constexpr double newton_per_kilojoule_per_millimetre = 1e6;
constexpr double room_c = 20;
constexpr double rounding_c = 10;
constexpr double interpass_above_c = 50;      // judgement
constexpr double least_soaked_c = 100;        // preheat from which a soak is advised, judgement
constexpr double soak_c = 250;                // Source: [EN1011-2] hydrogen release, from memory
constexpr double greatest_practical_c = 450;  // beyond it the formula of the cooling time fails too
constexpr double greatest_carbon = 0.8;       // Source: [Yurioka1987], read in a secondary source
constexpr double weld_metal_margin = 0.03;    // Source: [EN1011-2] C.3, from memory
constexpr double austenitic_chromium = 10;    // mass percent, such weld metal takes hydrogen up and stays soft
// Shape factor of the cooling time. Source: [EN1011-2] table D.1, from memory.
constexpr double fillet_shape = 0.67, butt_shape = 0.9;

bool has_chemistry(const Material& material) { return material.composition.C > 0; }

Welding welding_of(const Case& asked)
{
    double thickness = 0;
    for (const auto& bar : asked.bar)
    {
        const double diameter = bar->sections.front().diameter.value(), bore = bar->bore.value();
        thickness = std::max(thickness, bore > 0 ? (diameter - bore) / 2 : diameter);
    }
    if (asked.sleeve)
        for (const Side side : both_sides)
            thickness = std::max(
                thickness,
                (asked.sleeve->outer_diameter - asked.bar[index(side)]->sections.front().diameter).value() / 2);
    return {thickness, asked.making->heat_input.value() / newton_per_kilojoule_per_millimetre, asked.making->hydrogen};
}

// Of the fillers that touch the part; austenitic ones do not count.
double weld_metal_cet(const Case& asked)
{
    double greatest = 0;
    const auto look = [&](const Material& filler)
    {
        if (filler.composition.Cr < austenitic_chromium && has_chemistry(filler))
            greatest = std::max(greatest, carbon_equivalent_cet(filler.composition) + weld_metal_margin);
    };
    look(asked.joint->filler);
    if (asked.sleeve) look(asked.sleeve->weld.filler);
    return greatest;
}

// Normalised, rolled and drawn steel has no temper; of a condition that is not known the worse is taken.
bool may_be_tempered(const Material& material)
{
    for (const char* untempered : {"normalised", "hot-rolled", "cold-drawn", "drawn over mandrel", "stress-relieved"})
        if (material.condition.starts_with(untempered)) return false;
    return true;
}

SteelAdvice advice(const Case& asked, const Material& material, const std::string& part)
{
    SteelAdvice result{part, material.name, material.provenance, hardness_limit(material), may_be_tempered(material),
                       {}};
    if (!has_chemistry(material)) return result;
    const Composition& steel = material.composition;
    const Welding welding = welding_of(asked);
    WeldableSteel known;
    known.iiw = {carbon_equivalent_iiw(steel), outside_iiw(steel)};
    known.cet = {carbon_equivalent_cet(steel), outside_cet(steel)};
    known.pcm = {carbon_equivalent_pcm(steel), outside_pcm(steel)};
    known.cet_taken = std::max(known.cet.value, weld_metal_cet(asked));
    known.preheat_b = {preheat_method_b(known.cet_taken, welding),
                       outside_method_b(steel, known.cet_taken, material.yield, welding)};
    known.preheat_seferian = preheat_seferian(steel, welding.thickness_mm);
    known.martensite_start = martensite_start(steel);
    known.martensite_hardness = martensite_hardness(steel);
    result.known = known;
    return result;
}

double advised_preheat(const WeldableSteel& steel)
{
    const double larger = std::max({room_c, steel.preheat_b.value, steel.preheat_seferian});
    return larger <= room_c ? room_c : std::ceil(larger / rounding_c - 1e-9) * rounding_c;
}

double splice_preheat(const std::vector<SteelAdvice>& steels)
{
    double highest = room_c;
    for (const SteelAdvice& steel : steels)
        if (steel.known) highest = std::max(highest, advised_preheat(*steel.known));
    return highest;
}

// Parts of which the same is to be said, "left bar and right bar".
struct SameWords
{
    std::string words, parts;
    int n_parts = 0;
};

template <class WordsOf>
std::vector<SameWords> same_words(const std::vector<SteelAdvice>& steels, const WordsOf& words_of)
{
    std::vector<SameWords> groups;
    for (const SteelAdvice& steel : steels)
    {
        const std::string words = words_of(steel);
        if (words.empty()) continue;
        const auto same =
            std::find_if(groups.begin(), groups.end(), [&](const SameWords& group) { return group.words == words; });
        if (same == groups.end()) groups.push_back({words, steel.part, 1});
        else
        {
            same->parts += fmt::format("{}{}", ++same->n_parts == 2 ? " and " : ", ", steel.part);
        }
    }
    return groups;
}

const char* verb(const SameWords& group, const char* one, const char* more) { return group.n_parts == 1 ? one : more; }

void add_range_words(HeatPlan& plan, const std::vector<SteelAdvice>& steels)
{
    const auto unknown = same_words(
        steels, [](const SteelAdvice& steel) { return steel.known ? std::string() : std::string(steel.material); });
    for (const SameWords& group : unknown)
        plan.words.push_back(
            fmt::format("The chemistry of the {} ({}) is not known, so nothing is said about its preheat: have it "
                        "analysed or get its certificate and give it as [[material]] chemistry. Until then take it for "
                        "the worst, or do not weld it.",
                        group.parts, group.words));
    const auto outside = same_words(
        steels, [](const SteelAdvice& steel) { return steel.known ? steel.known->preheat_b.outside : std::string(); });
    for (const SameWords& group : outside)
        plan.words.push_back(
            fmt::format("The {} {} outside method B of EN 1011-2 ({}): that preheat is an "
                        "extrapolation and must not be called one by the standard.",
                        group.parts, verb(group, "lies", "lie"), group.words));
    plan.is_standard = unknown.empty() && outside.empty();
}

bool any_may_be_tempered(const std::vector<SteelAdvice>& steels)
{
    return std::any_of(steels.begin(), steels.end(), [](const SteelAdvice& steel) { return steel.may_be_tempered; });
}

void add_work_words(HeatPlan& plan, const std::vector<SteelAdvice>& steels, double lowest_martensite_start)
{
    if (plan.preheat_c > greatest_practical_c)
        plan.words.push_back(
            fmt::format("A preheat of {:.0f} °C is no practical one: do not weld this steel.", plan.preheat_c));
    else if (plan.preheat_c <= room_c)
        plan.words.push_back("No preheat is asked for: dry and not colder than 20 °C; still a low-hydrogen process.");
    else
    {
        plan.words.emplace_back(
            "Library steels stand for the middle of their range: a bar at its upper end may ask for 50 °C more (C45: "
            "321 °C by method B). The certificate decides.");
        plan.words.push_back(fmt::format(
            "Each time you weld: heat all parts through to {:.0f} °C and hold it from the first tack to "
            "the last pass of that weld; between passes not above {:.0f} °C{} (judgement).",
            plan.preheat_c, plan.interpass_c,
            any_may_be_tempered(steels) ? ", and below the tempering temperature of a quenched and tempered bar" : ""));
    }
    if (plan.preheat_c > lowest_martensite_start)
        plan.words.push_back(fmt::format(
            "The preheat lies above the temperature at which martensite begins to form ({:.0f} °C): the steel hardens "
            "only on cooling, so it must not cool without a soak.",
            lowest_martensite_start));
    if (plan.preheat_c >= least_soaked_c)
        plan.words.push_back(fmt::format(
            "After the last pass of each weld hold {:.0f} °C for two hours, which lets hydrogen out (EN 1011-2, from "
            "memory: verify), then cool in a dry blanket or lime, by no more than 50 °C an hour (common "
            "practice). No draught, no water.",
            std::max(soak_c, plan.preheat_c)));
}

void add_hardness_words(HeatPlan& plan, const std::vector<SteelAdvice>& steels)
{
    const auto hard =
        same_words(steels,
                   [](const SteelAdvice& steel)
                   {
                       const bool is_hard = steel.known && steel.known->expected_hardness &&
                                            *steel.known->expected_hardness > steel.allowed.value;
                       return is_hard ? fmt::format(
                                            "{:.0f} HV, above the {:.0f} HV10 that ISO 15614-1 allows as welded "
                                            "({}; from memory: verify)",
                                            *steel.known->expected_hardness, steel.allowed.value, steel.allowed.group)
                                      : std::string();
                   });
    for (const SameWords& group : hard)
        plan.words.push_back(
            fmt::format("Beside the weld the {} {} expected at {}: temper after welding{}, and measure a trial piece.",
                        group.parts, verb(group, "is", "are"), group.words,
                        any_may_be_tempered(steels) ? ", below the temper of a quenched and tempered bar" : ""));
}

}  // namespace

std::vector<SteelAdvice> steel_advice(const Case& asked)
{
    EXPECTS(asked.joint && asked.making && asked.bar[0] && asked.bar[1]);
    std::vector<SteelAdvice> steels{advice(asked, asked.bar[0]->material, "left bar"),
                                    advice(asked, asked.bar[1]->material, "right bar")};
    if (asked.sleeve) steels.push_back(advice(asked, asked.sleeve->material, "sleeve"));
    const double preheat = splice_preheat(steels);
    if (preheat > greatest_practical_c) return steels;
    const double seconds =
        cooling_time(preheat, welding_of(asked).heat_input_kj_per_mm, asked.sleeve ? fillet_shape : butt_shape);
    const Material* const material[] = {&asked.bar[0]->material, &asked.bar[1]->material,
                                        asked.sleeve ? &asked.sleeve->material : nullptr};
    for (std::size_t i = 0; i < steels.size(); ++i)
        if (steels[i].known && material[i]->composition.C <= greatest_carbon)
            steels[i].known->expected_hardness = heat_affected_hardness(material[i]->composition, seconds);
    return steels;
}

HeatPlan heat_plan(const Case& asked, const std::vector<SteelAdvice>& steels)
{
    HeatPlan plan;
    plan.welding = welding_of(asked);
    plan.preheat_c = splice_preheat(steels);
    plan.interpass_c = plan.preheat_c + interpass_above_c;
    double lowest_martensite_start = INFINITY;
    for (const SteelAdvice& steel : steels)
    {
        if (!steel.known) continue;
        lowest_martensite_start = std::min(lowest_martensite_start, steel.known->martensite_start);
        if (plan.governing.empty() && advised_preheat(*steel.known) >= plan.preheat_c) plan.governing = steel.part;
    }
    add_range_words(plan, steels);
    add_work_words(plan, steels, lowest_martensite_start);
    add_hardness_words(plan, steels);
    return plan;
}

}  // namespace splicewright
