// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/result_json.h"

#include <cmath>
#include <nlohmann/json.hpp>
#include <numbers>

#include "cases/bar_shape.h"
#include "cases/problem.h"
#include "post/figures_json.h"
#include "post/json_number.h"
#include "post/loads_json.h"
#include "post/making_json.h"
#include "post/service.h"
#include "post/site_loads.h"
#include "post/version.h"
#include "post/weld_line.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::ordered_json;

constexpr double per_kilonewton_metre = 1e6;  // N*mm
constexpr double per_kilonewton = 1e3;        // N

double error_pct(const Measured& measured)
{
    return measured.value != 0 ? finite(100 * measured.error / std::abs(measured.value)) : 0;
}

Json measured(const Measured& value, double factor)
{
    return {{"value", finite(value.value * factor)}, {"error", finite(value.error * factor)}};
}

Json unit_stress(const UnitPeak& peak, double factor, LoadKind kind)
{
    Json json{{"von_mises_MPa", finite(peak.von_mises.value * factor)}};
    if (kind == LoadKind::torsion) json["shear_MPa"] = finite(peak.shear.value * factor);
    else json["principal_MPa"] = finite(peak.principal.value * factor);
    json["error_pct"] = error_pct(peak.von_mises);
    return json;
}

Json surface_site(const SiteAnswer& site)
{
    return {{"id", site.id},
            {"z_mm", finite(site.z)},
            {"r_mm", finite(site.r)},
            {"stress", "largest on the surface"},
            {"unit",
             {{"torsion", unit_stress(site.torsion, per_kilonewton_metre, LoadKind::torsion)},
              {"bending", unit_stress(site.bending, per_kilonewton_metre, LoadKind::bending)},
              {"axial", unit_stress(site.axial, per_kilonewton, LoadKind::axial)}}}};
}

// The weld's force over its throat for one unit load.
Json throat_stress(const FilletWeld& fillet, const LineForce& force, double factor, double error)
{
    const ThroatPlaneStress stress = throat_plane_stress(fillet, force).value;
    const double normal = stress.normal.value() * factor, across = stress.shear_across.value() * factor,
                 along = stress.shear_along.value() * factor;
    return {{"von_mises_MPa", finite(std::sqrt(normal * normal + 3 * (across * across + along * along)))},
            {"normal_MPa", finite(normal)},
            {"shear_across_MPa", finite(across)},
            {"shear_along_MPa", finite(along)},
            {"error_pct", finite(error)}};
}

Json throat_site(const Case& asked, const WeldForce& weld, Side side)
{
    const Bar& bar = *asked.bar[index(side)];
    const FilletWeld fillet{asked.sleeve->weld.leg_on_bar, asked.sleeve->weld.leg_on_sleeve,
                            bar.sections.front().diameter};
    const double reach = sleeve_reach(*asked.sleeve, side);
    return {{"id", std::string("throat.") + name_of(side)},
            {"z_mm", side == Side::right ? reach : -reach},
            {"r_mm", finite(weld.radius)},
            {"stress", "structural: mean over the throat"},
            {"unit",
             {{"torsion", throat_stress(fillet, {0, 0, weld.torsion_tangential}, per_kilonewton_metre, weld.error_pct)},
              {"bending", throat_stress(fillet, {weld.bending_outward, weld.bending_radial, 0}, per_kilonewton_metre,
                                        weld.error_pct)},
              {"axial",
               throat_stress(fillet, {weld.axial_outward, weld.axial_radial, 0}, per_kilonewton, weld.error_pct)}}}};
}

Json sites(const Case& asked, const MeridianAnswer& answer)
{
    Json list = Json::array();
    for (const SiteAnswer& site : answer.sites) list.push_back(surface_site(site));
    for (const Side side : both_sides)
        if (answer.weld[index(side)]) list.push_back(throat_site(asked, *answer.weld[index(side)], side));
    return list;
}

Json worked(const std::vector<WorkedStep>& steps)
{
    Json list = Json::array();
    for (const WorkedStep& step : steps)
        list.push_back({{"what", step.what},
                        {"formula", step.formula},
                        {"numbers", step.numbers},
                        {"result", finite(step.result)},
                        {"unit", step.unit}});
    return list;
}

Json checks(const std::vector<CheckRow>& rows)
{
    Json list = Json::array();
    for (const CheckRow& row : rows)
    {
        Json json{{"id", row.id},
                  {"site", row.site},
                  {"kind", row.kind == CheckKind::strength ? "strength" : "fatigue"},
                  {"check", row.check},
                  {"demand", finite(row.demand)},
                  {"capacity", finite(row.capacity)},
                  {"unit", row.unit},
                  {"utilisation", finite(row.utilisation)},
                  {"error_pct", finite(row.error_pct)},
                  {"passes", row.passes()},
                  {"valid", row.valid()},
                  {"not_valid_because", row.not_valid_because},
                  {"governs_site", row.valid() && governing(rows, row.kind, row.site) == &row}};
        if (row.life && std::isfinite(*row.life)) json["life"] = *row.life;
        json.update({{"method", row.method},
                     {"source", row.source},
                     {"provenance", name_of(row.provenance)},
                     {"note", row.note},
                     {"worked", worked(row.worked)}});
        list.push_back(std::move(json));
    }
    return list;
}

Json sections(const Case& asked, const MeridianAnswer& answer)
{
    Json list = Json::array();
    for (const SectionCapacity& one : section_capacities(asked, answer))
        list.push_back({{"site", one.site},
                        {"outer_diameter_mm", finite(one.section.outer_diameter.value())},
                        {"inner_diameter_mm", finite(one.section.bore.value())},
                        {"yield_MPa", finite(one.yield.value())},
                        {"first_yield_torque_kNm", finite(one.first_yield_torque.value() / per_kilonewton_metre)},
                        {"plastic_torque_kNm", finite(one.plastic_torque.value() / per_kilonewton_metre)},
                        {"first_yield_bending_kNm", finite(one.first_yield_bending.value() / per_kilonewton_metre)},
                        {"plastic_bending_kNm", finite(one.plastic_bending.value() / per_kilonewton_metre)}});
    return list;
}

Json crack_growth(const std::vector<CrackGrowth>& cracks)
{
    Json list = Json::array();
    for (const CrackGrowth& crack : cracks)
    {
        Json curve = Json::array();
        for (const CrackPoint& point : crack.life.curve)
            curve.push_back({{"length_mm", finite(point.length_mm)}, {"life", finite(point.life)}});
        Json json{{"site", crack.site}, {"last_length_mm", finite(crack.life.last)}};
        if (std::isfinite(crack.life.life)) json["life"] = crack.life.life;
        json["curve"] = std::move(curve);
        list.push_back(std::move(json));
    }
    return list;
}

Json handbook(const std::vector<HandbookRow>& rows)
{
    Json list = Json::array();
    for (const HandbookRow& row : rows)
        list.push_back({{"what", row.what},
                        {"fe", finite(row.fe)},
                        {"handbook", finite(row.handbook)},
                        {"unit", row.unit},
                        {"fe_error_pct", finite(row.fe_error_pct)},
                        {"difference_pct", finite(row.difference_pct)},
                        {"band_pct", {finite(row.band_low_pct), finite(row.band_high_pct)}},
                        {"band_reason", row.band_reason},
                        {"agrees", row.agrees},
                        {"source", row.source},
                        {"provenance", name_of(row.provenance)}});
    return list;
}

Json verdict(const Judgement& judged)
{
    Json json{{"passes", judged.passes()}};
    if (const CheckRow* row = governing(judged.checks))
    {
        json["governing_site"] = row->site;
        json["governing_check"] = row->id;
        json["utilisation"] = finite(row->utilisation);
    }
    return json;
}

Json evidence(const Evidence& e)
{
    return {{"model", "meridian"},
            {"meshes", e.levels},
            {"nodes", e.nodes},
            {"elements", e.elements},
            {"dofs", e.unknowns},
            {"residual", finite(e.residual)},
            {"reaction_imbalance", finite(e.reaction_imbalance)},
            {"section_imbalance", finite(e.section_imbalance)},
            {"smallest_angle_deg", finite(e.smallest_angle_deg)},
            {"smallest_jacobian_ratio", finite(e.smallest_jacobian_ratio)},
            {"accuracy_asked_pct", finite(e.accuracy_pct)},
            {"worst_error_pct", finite(e.worst_error_pct)},
            {"accuracy_reached", e.reached},
            {"seconds", {{"mesh", e.mesh_seconds}, {"solve", e.solve_seconds}, {"recover", e.recover_seconds}}}};
}

Json service(const Case& asked, const std::vector<CheckRow>& rows)
{
    const Service service = service_of(asked, rows);
    Json json = Json::object();
    if (asked.load.peak_torque.value() > 0 && service.torque_carried > 0)
    {
        json["torque_carried_kNm"] = finite(service.torque_carried / per_kilonewton_metre);
        json["weakest_in_strength"] = service.strength_site;
    }
    if (!service.life) return json;
    json["weakest_in_life"] = service.life->site;
    if (std::isfinite(service.life->longest)) json["life_by_other_methods"] = service.life->longest;
    if (!std::isfinite(service.life->least)) return json;
    const double life = service.life->least;
    json["life"] = life;
    if (const auto starts = starts_asked(asked.load))
    {
        json["count"] = finite(life * starts->count);
        json["count_of"] = starts->what;
    }
    if (const auto kilometres = kilometres_asked(asked.load)) json["kilometres"] = finite(life * *kilometres);
    return json;
}

Json what_if(const Report& report)
{
    Json list = Json::array();
    for (const Judgement& scenario : report.what_if)
    {
        Json json{{"scenario", scenario.answer.scenario.name}};
        json.update(verdict(scenario));
        json["service"] = service(report.asked, scenario.checks);
        json["notes"] = scenario.notes;
        json["absent_sites"] = scenario.answer.absent_sites;
        json["checks"] = checks(scenario.checks);
        json["evidence"] = evidence(scenario.answer.evidence);
        list.push_back(std::move(json));
    }
    return list;
}

Json against(const AgainstPlainBar& compared)
{
    Json json{{"peak_load_factor_splice", finite(compared.strength_splice)},
              {"peak_load_factor_bar", finite(compared.strength_bar)},
              {"strength_ratio", finite(compared.strength_splice / compared.strength_bar)},
              {"weakest_in_strength", compared.splice_site},
              {"weakest_bar_in_strength", compared.bar_site}};
    if (compared.fatigue_splice && compared.fatigue_bar)
    {
        json["fatigue_stress_factor_splice"] = finite(*compared.fatigue_splice);
        json["fatigue_stress_factor_bar"] = finite(*compared.fatigue_bar);
        json["fatigue_ratio"] = finite(*compared.fatigue_splice / *compared.fatigue_bar);
        json["weakest_in_fatigue"] = compared.fatigue_site;
        json["weakest_bar_in_fatigue"] = compared.bar_fatigue_site;
    }
    return json;
}

Json over_bars(const Report& report)
{
    Json json = Json::object();
    for (const Side side : both_sides)
    {
        if (!report.over_bar[index(side)]) continue;
        const OverBar& over = *report.over_bar[index(side)];
        Json& to = json[name_of(side)];
        to["diameter_mm"] = finite(over.diameter.value());
        to["strength_ratio"] = finite(over.strength);
        if (over.fatigue) to["fatigue_ratio"] = finite(*over.fatigue);
        if (over.life) to["life_ratio"] = finite(*over.life);
        to["twist_ratio"] = finite(over.twist);
    }
    return json;
}

Json shares(const Case& asked, const MeridianAnswer& answer, const std::vector<HandbookRow>& rows)
{
    if (!asked.sleeve) return nullptr;
    Json json{{"torsion", measured(answer.share.torsion, 1)},
              {"bending", measured(answer.share.bending, 1)},
              {"axial", measured(answer.share.axial, 1)}};
    for (const HandbookRow& row : rows)
        if (row.what.starts_with("sleeve's share of the torque")) json["torsion_by_stiffness"] = finite(row.handbook);
    return json;
}

Json defaults(const Case& asked)
{
    Json list = Json::array();
    for (const DefaultUsed& used : asked.defaults)
        list.push_back({{"field", used.field}, {"value", used.value}, {"reason", used.reason}});
    return list;
}

Json models(const Judgement& sound)
{
    if (sound.models.empty()) return nullptr;
    Json rows = Json::array();
    for (const ModelRow& row : sound.models)
        rows.push_back({{"site", row.site},
                        {"load", row.load},
                        {"meridian_MPa", measured(row.meridian, 1)},
                        {"solid_MPa", measured(row.solid, 1)},
                        {"agrees", row.agrees}});
    return {{"must_agree", sound.models_must_agree}, {"rows", rows}};
}

}  // namespace

std::string result_json(const Report& report)
{
    const Case& asked = report.asked;
    const MeridianAnswer& answer = report.sound.answer;
    const double degrees = 180 / std::numbers::pi * per_kilonewton_metre;
    Json json;
    json["schema"] = result_schema_version;
    json["program"] = {{"name", "splicewright"}, {"version", version()}};
    json["title"] = asked.title;
    json["case_text"] = asked.text;
    json["load"] = peak_load_text(asked);
    json["loads"] = loads_json(asked.load);
    json["verdict"] = verdict(report.sound);
    json["verdict"]["passes"] = report.passes();
    json["sites"] = sites(asked, answer);
    json["absent_sites"] = answer.absent_sites;
    json["shares"] = shares(asked, answer, report.handbook);
    json["twist_deg_per_kNm"] = measured(answer.twist, degrees);
    json["checks"] = checks(report.sound.checks);
    json["sections"] = sections(asked, answer);
    json["crack_growth"] = crack_growth(report.sound.crack_growth);
    json["service"] = service(report.asked, report.sound.checks);
    json["models"] = models(report.sound);
    json["what_if"] = what_if(report);
    json["what_if_notes"] = report.what_if_notes;
    json["against_plain_bar"] = report.against_plain_bar ? against(*report.against_plain_bar) : Json(nullptr);
    json["over_bar"] = over_bars(report);
    json["handbook"] = handbook(report.handbook);
    json["making"] = report.making ? making_json(*report.making) : Json(nullptr);
    json["running_true"] = running_json(report.running_true);
    json["torque_flow"] = torque_flow_json(report.torque_flow);
    json["weld_surfaces"] = weld_surfaces_json(report.weld_surfaces);
    json["defaults"] = defaults(asked);
    json["cautions"] = report.cautions;
    json["evidence"] = evidence(answer.evidence);
    if (report.sound.judged_by_solid)
    {
        json["evidence"]["model"] = "solid";
        for (const char* of_sections : {"section_imbalance", "smallest_angle_deg"})
            json["evidence"][of_sections] = nullptr;
    }
    return json.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) + "\n";
}

}  // namespace splicewright
