// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/view_payload.h"

#include <fmt/format.h>

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstring>
#include <nlohmann/json.hpp>

#include "cases/bar_shape.h"
#include "cases/problem.h"
#include "post/colour_map.h"
#include "post/drawn_section.h"
#include "post/site_loads.h"
#include "post/thinned_section.h"
#include "post/view_fields.h"
#include "post/view_sites.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::ordered_json;

// Where thinning starts; larger by this factor until the payload fits.
constexpr double finest_share = 0.0025, coarsest_share = 0.04, coarser = 1.4;

template <class Number>
void append(std::string& bytes, Number value)
{
    static_assert(std::endian::native == std::endian::little);
    std::array<char, sizeof(Number)> raw{};
    std::memcpy(raw.data(), &value, sizeof(Number));
    bytes.append(raw.data(), raw.size());
}

// The step of a channel whose largest value takes all of 15 bits.
double step_of(const Eigen::VectorXd& channel) { return channel.cwiseAbs().maxCoeff() / 32767; }

void append_channel(std::string& bytes, const Eigen::VectorXd& channel, const std::vector<int>& node)
{
    const double step = step_of(channel);
    for (const int i : node) append(bytes, static_cast<std::int16_t>(step > 0 ? std::lround(channel(i) / step) : 0));
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

template <std::size_t n>
void append_indices(std::string& bytes, const std::vector<std::array<int, n>>& list)
{
    for (const std::array<int, n>& one : list)
        for (const int i : one) append(bytes, static_cast<std::uint16_t>(i));
}

Json value_json(const SiteValue& value, bool has_error)
{
    return has_error ? Json{value.value, value.error} : Json{value.value, nullptr};
}

Json sites_json(const Report& report, const Judgement& judgement, const std::vector<ViewLoad>& loads)
{
    Json list = Json::array();
    for (const SiteAnswer& site : judgement.answer.sites)
    {
        Json json{{"id", site.id}, {"row", nullptr}, {"loads", Json::array()}};
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

Packed packed(const Report& report, const Judgement& judgement, const std::vector<ViewLoad>& loads, double share)
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
            steps.push_back(step_of(channel));
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

std::string with_share(const Report& report, const std::vector<const Judgement*>& judgements, double share)
{
    const std::vector<ViewLoad> loads = view_loads(report.asked);
    Json head = header(report, loads);
    std::string arrays;
    for (const Judgement* judgement : judgements)
    {
        Packed one = packed(report, *judgement, loads, share);
        head["scenarios"].push_back(std::move(one.json));
        arrays += one.bytes;
    }
    const std::string text = head.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
    std::string bytes;
    append(bytes, static_cast<std::uint32_t>(text.size()));
    return bytes + text + arrays;
}

// The finest that fits; empty where none does.
std::string fitting(const Report& report, const std::vector<const Judgement*>& judgements)
{
    for (double share = finest_share; share <= coarsest_share; share *= coarser)
        if (std::string bytes = with_share(report, judgements, share); bytes.size() <= most_payload_bytes) return bytes;
    return {};
}

}  // namespace

ViewPayload view_payload(const Report& report)
{
    std::vector<const Judgement*> all{&report.sound};
    for (const Judgement& judgement : report.what_if) all.push_back(&judgement);
    if (std::string bytes = fitting(report, all); !bytes.empty()) return {bytes, true};
    return {fitting(report, {&report.sound}), false};
}

}  // namespace splicewright
