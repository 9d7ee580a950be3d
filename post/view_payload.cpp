// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/view_payload.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <deque>
#include <limits>
#include <nlohmann/json.hpp>
#include <set>
#include <span>

#include "cases/bar_shape.h"
#include "cases/problem.h"
#include "post/colour_map.h"
#include "post/drawn_section.h"
#include "post/site_loads.h"
#include "post/thinned_section.h"
#include "post/view_bytes.h"
#include "post/view_fields.h"
#include "post/view_sites.h"
#include "post/view_solid.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::ordered_json;

// Where thinning starts; larger by this factor until the payload fits.
constexpr double finest_share = 0.0025, coarser = 1.4;
constexpr int n_shares = 9;

void append_channel(std::string& bytes, const Eigen::VectorXd& channel, const std::vector<int>& node)
{
    const double step = step_of(channel.cwiseAbs().maxCoeff());
    for (const int i : node) append_in_steps(bytes, channel(i), step);
}

void append_spread(std::string& bytes, const Eigen::VectorXd& spread, const std::vector<int>& node)
{
    const double peak = spread.maxCoeff();
    for (const int i : node)
    {
        const double below = spread(i) > 0 ? std::floor(-spread_step * std::log2(spread(i) / peak) + 1e-9) : 255;
        append(bytes, static_cast<std::uint8_t>(std::clamp(below, 0.0, 255.0)));
    }
}

Json value_json(const SiteValue& value, bool has_error)
{
    return has_error ? Json{value.value, value.error} : Json{value.value, nullptr};
}

Json sites_json(const Report& report, const Judgement& judgement, const std::vector<ViewLoad>& loads)
{
    const std::map<std::string, int> number = site_numbers(report);
    Json list = Json::array();
    for (const SiteAnswer& site : judgement.answer.sites)
    {
        Json json{{"id", site.id},
                  {"number", number.at(site.id)},
                  {"row", nullptr},
                  {"goes_round", goes_round(site.id)},
                  {"loads", Json::array()}};
        if (const CheckRow* row = row_of_site(report, site.id)) json["row"] = row_mark(row->id);
        for (const ViewLoad& one : loads)
        {
            const ViewSite told = view_site(site, one.load);
            json["loads"].push_back({{"z", told.z},
                                     {"r", told.r},
                                     {"theta", told.theta},
                                     {"von_mises", value_json(told.von_mises, told.has_error)},
                                     {"principal", value_json(told.principal, told.has_error)},
                                     {"shear", value_json(told.shear, told.has_error)}});
        }
        list.push_back(std::move(json));
    }
    if (!judgement.solid || !judgement.judged_by_solid) return list;
    // Weld metal that ends sharply has a force and no stress; a site that is read at several places is marked at the
    // first of them.
    std::set<std::string> told;
    for (const auto& [site, place] : judgement.solid->weld_metal)
    {
        const CheckRow* row = row_of_site(report, site);
        if (row == nullptr || !told.insert(site).second) continue;
        Json json{{"id", site},
                  {"number", number.at(site)},
                  {"row", row_mark(row->id)},
                  {"goes_round", false},
                  {"loads", Json::array()}};
        for (std::size_t k = 0; k < loads.size(); ++k)
            json["loads"].push_back({{"z", place.z()},
                                     {"r", std::hypot(place.x(), place.y())},
                                     {"theta", std::atan2(place.y(), place.x())},
                                     {"von_mises", nullptr},
                                     {"principal", nullptr},
                                     {"shear", nullptr}});
        list.push_back(std::move(json));
    }
    return list;
}

// How far the movement of the ends can be wrong, as a share; of the loads asked the worst.
double movement_error(const Case& asked, const MeridianAnswer& answer)
{
    const CombinedLoad load = peak_load(asked);
    double worst = 0;
    for (const auto& [amount, measured] :
         {std::pair{load.torque, &answer.twist}, std::pair{load.bending, &answer.end_rotation},
          std::pair{load.axial, &answer.extension}})
        if (amount != 0 && measured->value != 0) worst = std::max(worst, measured->error / std::abs(measured->value));
    return worst;
}

std::string outcome(const Judgement& judgement)
{
    std::string words = judgement.passes() ? "passes" : "DOES NOT PASS";
    if (const CheckRow* worst = governing(judgement.checks))
        words += fmt::format(", {:.0f} % used at {}", 100 * worst->utilisation, worst->site);
    return words;
}

// A scenario's entry in the header and its arrays.
struct Packed
{
    Json json;
    std::string bytes;
};

// A scenario, and what of the solid model stands for it: nothing where the section is swept.
struct Viewed
{
    const Judgement* judgement;
    const SolidFields* solid;
};

Packed packed_section(const Report& report, const Judgement& judgement, const std::vector<ViewLoad>& loads,
                      double share)
{
    const SolvedFields& fields = judgement.answer.fields;
    const CombinedLoad load = peak_load(report.asked);
    double highest = 0;
    for (const DrawnVertex& vertex : drawn_section(fields, load).vertex) highest = std::max(highest, vertex.worst);
    const ThinnedSection section = thinned(fields, load, {share, highest});
    Packed scenario;
    std::string& bytes = scenario.bytes;
    for (const int row : {0, 1})
        for (const int i : section.node)
            append(bytes, static_cast<float>(fields.mesh.node(row, fields.region_nodes.node[std::size_t(i)])));
    Json field_list = Json::array();
    std::string spreads;
    for (const ViewField& field : view_fields(report.asked, fields))
    {
        Json steps = Json::array();
        for (const Eigen::VectorXd& channel : field.channel)
        {
            append_channel(bytes, channel, section.node);
            steps.push_back(step_of(channel.cwiseAbs().maxCoeff()));
        }
        append_spread(spreads, field.spread, section.node);
        field_list.push_back(
            {{"load", field.load}, {"names", field.names}, {"steps", steps}, {"spread", field.spread.maxCoeff()}});
    }
    bytes += spreads;
    for (const int region : section.region) append(bytes, static_cast<std::uint8_t>(region));
    append_indices(bytes, section.triangle);
    append_indices(bytes, section.skin);
    append_indices(bytes, section.outline);
    append_indices(bytes, section.unfused);
    scenario.json = {{"name", judgement.answer.scenario.name},
                     {"outcome", outcome(judgement)},
                     {"points", section.node.size()},
                     {"triangles", section.triangle.size()},
                     {"skin", section.skin.size()},
                     {"outline", section.outline.size()},
                     {"unfused", section.unfused.size()},
                     {"parts", fields.mesh.region},
                     {"fields", field_list},
                     {"share", share},
                     {"missed", share * highest},
                     {"movement_error", movement_error(report.asked, judgement.answer)},
                     {"sites", sites_json(report, judgement, loads)}};
    return scenario;
}

// Of a load the three stresses and the movement, at the points of the view.
Json packed_load(std::string& bytes, const SolidFields& fields, const SolidLoadFields& load,
                 const std::vector<int>& point)
{
    Json steps;
    for (const auto& [name, values] : {std::pair{"von_mises", &load.von_mises}, std::pair{"principal", &load.principal},
                                       std::pair{"shear", &load.shear}})
    {
        const double step = step_of(values->maxCoeff());
        steps[name] = step;
        for (const int i : point) append_in_steps(bytes, (*values)(i), step);
    }
    const Eigen::Matrix3Xf moved = seen_from_the_joint(fields, load.displacement);
    const double step = step_of(moved.cwiseAbs().maxCoeff());
    steps["movement"] = step;
    for (const int i : point)
        for (int row = 0; row < 3; ++row) append_in_steps(bytes, moved(row, i), step);
    return steps;
}

Packed packed_solid(const Report& report, const Viewed& viewed, const std::vector<ViewLoad>& loads, double share)
{
    const SolidFields& fields = *viewed.solid;
    const ViewSolid view = view_solid(fields, share);
    Packed scenario;
    std::string& bytes = scenario.bytes;
    const double place_step = step_of(fields.place.cwiseAbs().maxCoeff());
    for (const int i : view.point)
        for (int row = 0; row < 3; ++row) append_in_steps(bytes, fields.place(row, i), place_step);
    Json steps = Json::array();
    for (const SolidLoadFields& load : fields.each) steps.push_back(packed_load(bytes, fields, load, view.point));
    append_indices(bytes, view.middle);
    append_indices(bytes, view.element);
    append_indices(bytes, view.edge);
    for (const std::uint8_t sides : view.sides) append(bytes, sides);
    if (view.point.size() > std::numeric_limits<std::uint16_t>::max()) bytes.append(most_payload_bytes, '\0');
    const Judgement& judgement = *viewed.judgement;
    scenario.json = {{"name", judgement.answer.scenario.name},
                     {"outcome", outcome(judgement)},
                     {"solid", true},
                     {"points", view.point.size()},
                     {"corners", view.corners()},
                     {"elements", view.element.size()},
                     {"edges", view.edge.size()},
                     {"place_step", place_step},
                     {"steps", steps},
                     {"share", share},
                     {"missed", share * double(fields.von_mises.maxCoeff())},
                     {"movement_error", movement_error(report.asked, judgement.answer)},
                     {"sites", sites_json(report, judgement, loads)}};
    return scenario;
}

Json loads_json(const std::vector<ViewLoad>& loads)
{
    Json list = Json::array();
    for (const ViewLoad& one : loads)
    {
        Json on = Json::array();
        if (one.load.torque != 0) on.push_back("torsion");
        if (one.load.bending != 0) on.push_back("bending");
        if (one.load.axial != 0) on.push_back("axial");
        if (one.load.press != 0) on.push_back("press");
        list.push_back({{"name", one.name}, {"detail", one.detail}, {"on", on}});
    }
    return list;
}

Json header(const Report& report, const std::vector<ViewLoad>& loads)
{
    Json colours = Json::array();
    for (const Colour& colour : stress_table(1, 1)) colours.push_back(hexadecimal(colour));
    Json json{{"title", report.asked.title}, {"loads", loads_json(loads)},
              {"colours", colours},          {"above", hexadecimal(above_range_colour)},
              {"spread_step", spread_step},  {"governing", nullptr},
              {"sleeve", nullptr},           {"scenarios", Json::array()}};
    if (const CheckRow* worst = governing(report.sound.checks)) json["governing"] = worst->site;
    if (report.asked.sleeve)
        json["sleeve"] = {-sleeve_reach(*report.asked.sleeve, Side::left),
                          sleeve_reach(*report.asked.sleeve, Side::right)};
    return json;
}

std::string with_share(const Report& report, std::span<const Viewed> scenarios, double share)
{
    const std::vector<ViewLoad> loads = view_loads(report.asked);
    Json head = header(report, loads);
    std::string arrays;
    for (const Viewed& viewed : scenarios)
    {
        Packed one = viewed.solid != nullptr ? packed_solid(report, viewed, loads, share)
                                             : packed_section(report, *viewed.judgement, loads, share);
        head["scenarios"].push_back(std::move(one.json));
        arrays += one.bytes;
    }
    const std::string text = head.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
    std::string bytes;
    append(bytes, static_cast<std::uint32_t>(text.size()));
    return bytes + text + arrays;
}

double share_of(int step) { return finest_share * std::pow(coarser, step); }

// The finest that fits; empty where none does.
std::string fitting(const Report& report, std::span<const Viewed> scenarios)
{
    const auto tried = [&](int step) { return with_share(report, scenarios, share_of(step)); };
    std::string coarsest = tried(n_shares - 1);
    const std::size_t most = scenarios.front().solid != nullptr ? most_solid_payload_bytes : most_payload_bytes;
    if (coarsest.size() > most) return {};
    for (int step = 0; step < n_shares - 1; ++step)
        if (std::string bytes = tried(step); bytes.size() <= most) return bytes;
    return coarsest;
}

}  // namespace

ViewPayload view_payload(const Report& report)
{
    std::deque<SolidFields> thin;  // keeps its places
    const auto viewed = [&](const Judgement& judgement) -> Viewed
    {
        if (!shows_solid(judgement)) return {&judgement, nullptr};
        if (judgement.solid->is_thinned) return {&judgement, &*judgement.solid};
        thin.push_back(thinned(*judgement.solid));
        return {&judgement, &thin.back()};
    };
    std::vector<Viewed> all{viewed(report.sound)};
    for (const Judgement& judgement : report.what_if) all.push_back(viewed(judgement));
    for (std::size_t n = all.size(); n > 0; --n)
        if (std::string bytes = fitting(report, std::span(all).first(n)); !bytes.empty()) return {bytes, n};
    return {};
}

bool shows_solid(const Judgement& judgement)
{
    return judgement.judged_by_solid && judgement.solid && !judgement.solid->each.empty();
}

}  // namespace splicewright
