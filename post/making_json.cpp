// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/making_json.h"

#include <numbers>

#include "post/json_number.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::ordered_json;

constexpr double gram_per_tonne = 1e6;
constexpr double rpm = std::numbers::pi / 30;  // rad/s
constexpr double degree = std::numbers::pi / 180;

Json cut_json(const CutPlan& cut)
{
    Json json{{"overall_mm", finite(cut.overall)},
              {"drawn_mm", finite(cut.drawn)},
              {"left_mm", finite(cut.cut[0])},
              {"right_mm", finite(cut.cut[1])},
              {"first_section_left_mm", finite(cut.first_section[0])},
              {"first_section_right_mm", finite(cut.first_section[1])},
              {"half_lap_mm", finite(cut.half_lap)},
              {"root_gap_mm", finite(cut.root_gap)},
              {"weld_shrink_mm", finite(cut.weld_shrink)}};
    if (cut.plunge)
        json["plunge"] = {{"available_mm", finite(cut.plunge->available)},
                          {"left_over_mm", finite(cut.plunge->left_over())},
                          {"length_error_mm", finite(cut.plunge->length_error)},
                          {"suffices", cut.plunge->suffices()}};
    return json;
}

Json bore_json(const BoreBand& bore)
{
    Json json{{"side", name_of(bore.side)},
              {"bar_diameter_mm", finite(bore.bar_diameter)},
              {"clearance_mm", finite(bore.clearance)},
              {"least_mm", finite(bore.least)},
              {"greatest_mm", finite(bore.greatest)},
              {"grade", std::string("IT").append(std::to_string(bore.grade))},
              {"fits", bore.fits},
              {"source", bore.source},
              {"provenance", name_of(bore.provenance)}};
    if (bore.nearest_fit) json["nearest_fit"] = *bore.nearest_fit;
    return json;
}

Json weld_json(const WeldDeposit& weld)
{
    Json json{{"weld", weld.weld}};
    if (weld.depth > 0)
    {
        json["depth_mm"] = finite(weld.depth);
        json["width_mm"] = finite(weld.width);
    }
    else
    {
        json["leg_on_bar_mm"] = finite(weld.leg_on_bar);
        json["leg_on_sleeve_mm"] = finite(weld.leg_on_sleeve);
        json["throat_mm"] = finite(weld.throat);
    }
    json["area_mm2"] = finite(weld.area);
    json["volume_mm3"] = finite(weld.volume);
    json["mass_g"] = finite(weld.mass * gram_per_tonne);
    json["passes_needed"] = weld.passes_needed;
    if (weld.passes_stated > 0) json["passes_stated"] = weld.passes_stated;
    json["source"] = weld.source;
    json["provenance"] = name_of(weld.provenance);
    return json;
}

Json ranged(const Ranged& value, const char* source)
{
    return {{"value", finite(value.value)}, {"outside", value.outside}, {"source", source}};
}

Json steel_json(const SteelAdvice& steel)
{
    Json json{{"part", steel.part}, {"material", steel.material}, {"chemistry_known", steel.known.has_value()}};
    if (!steel.known) return json;
    const WeldableSteel& known = *steel.known;
    constexpr const char* method_a =
        "EN 1011-2:2001 C.2 [EN1011-2], formula read in a secondary source, range from memory";
    constexpr const char* method_b =
        "EN 1011-2:2001 C.3 [EN1011-2], formula read in a secondary source, range from memory";
    json["ce_iiw_pct"] = ranged(known.iiw, method_a);
    json["cet_pct"] = ranged(known.cet, method_b);
    json["pcm_pct"] = ranged(known.pcm,
                             "Ito and Bessyo 1968 [ItoBessyo1968], formula read in a secondary source, range "
                             "from memory");
    json["cet_taken_pct"] = finite(known.cet_taken);
    json["preheat_method_b_C"] = ranged(known.preheat_b, method_b);
    json["preheat_seferian_C"] = {{"value", finite(known.preheat_seferian)},
                                  {"source", "Seferian 1962 [Seferian1962], from memory: verify"}};
    json["martensite_start_C"] = {{"value", finite(known.martensite_start)},
                                  {"source", "Andrews 1965 [Andrews1965], from memory: verify"}};
    constexpr const char* yurioka = "Yurioka, Okumura, Kasuya and Cotton 1987 [Yurioka1987], from memory: verify";
    json["martensite_hardness_HV"] = {{"value", finite(known.martensite_hardness)}, {"source", yurioka}};
    if (known.expected_hardness)
        json["expected_hardness_HV"] = {{"value", finite(*known.expected_hardness)}, {"source", yurioka}};
    return json;
}

Json heat_json(const HeatPlan& heat)
{
    return {{"preheat_C", finite(heat.preheat_c)},
            {"interpass_C", finite(heat.interpass_c)},
            {"by_standard", heat.is_standard},
            {"governing", heat.governing},
            {"thickness_mm", finite(heat.welding.thickness_mm)},
            {"heat_input_kJ_per_mm", finite(heat.welding.heat_input_kj_per_mm)},
            {"hydrogen_ml_per_100g", finite(heat.welding.hydrogen_ml_per_100g)},
            {"words", heat.words}};
}

Json step_json(const InspectionStep& step)
{
    return {{"what", step.what},     {"method", step.method}, {"when", step.when},
            {"accept", step.accept}, {"source", step.source}, {"provenance", name_of(step.provenance)}};
}

template <class Value, class ToJson>
Json list(const std::vector<Value>& values, const ToJson& to_json)
{
    Json json = Json::array();
    for (const Value& value : values) json.push_back(to_json(value));
    return json;
}

Json plane_json(const PlaneUnbalance& plane)
{
    return {{"mass_g", finite(plane.mass * gram_per_tonne)},
            {"offset_g_mm", finite(plane.offset * gram_per_tonne)},
            {"tilt_g_mm", finite(plane.tilt * gram_per_tonne)},
            {"sleeve_g_mm", finite(plane.sleeve * gram_per_tonne)},
            {"sum_g_mm", finite(plane.sum() * gram_per_tonne)}};
}

}  // namespace

Json making_json(const ShopSheet& sheet)
{
    return {{"quality_level", name_of(sheet.quality)},        {"cut", cut_json(sheet.cut)},
            {"bores", list(sheet.bores, bore_json)},          {"welds", list(sheet.welds, weld_json)},
            {"steels", list(sheet.steels, steel_json)},       {"heat", heat_json(sheet.heat)},
            {"inspection", list(sheet.inspection, step_json)}};
}

Json running_json(const RunningTrue& running)
{
    Json json{{"mass_g", finite(running.mass * gram_per_tonne)},
              {"length_mm", finite(running.length)},
              {"critical_speed_rpm", finite(running.critical_speed / rpm)}};
    if (running.margin) json["margin"] = finite(*running.margin);
    json["margin_asked"] = least_margin;
    if (running.balance)
    {
        const Balance& balance = *running.balance;
        Json part{{"left", plane_json(balance.plane[0])},
                  {"right", plane_json(balance.plane[1])},
                  {"eccentricity_mm", finite(balance.eccentricity)}};
        if (balance.grade) part["grade_mm_per_s"] = finite(*balance.grade);
        part["grade_asked_mm_per_s"] = grade_asked;
        if (balance.offset_allowed) part["offset_allowed_mm"] = finite(*balance.offset_allowed);
        if (balance.tilt_allowed) part["tilt_allowed_deg"] = finite(*balance.tilt_allowed / degree);
        json["balance"] = part;
    }
    json["source"] = running.source;
    json["provenance"] = name_of(running.provenance);
    return json;
}

}  // namespace splicewright
