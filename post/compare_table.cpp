// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/compare_table.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "cases/plain_text.h"
#include "post/version.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::ordered_json;

std::string csv_cell(const std::string& text)
{
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    return fmt::format("\"{}\"", replaced(text, "\"", "\"\""));
}

std::string dumped(const Json& json) { return json.dump(-1, ' ', false, Json::error_handler_t::replace); }

std::string number(std::optional<double> value) { return value ? fmt::format("{}", *value) : std::string(); }

}  // namespace

std::string csv_head(const StudyOrigin& origin)
{
    std::string line = "option";
    for (const Variation& variation : origin.variations) line += "," + csv_cell(variation.key);
    return line +
           ",end,passes,site,check,utilisation,error_pct,accuracy_reached,strength,fatigue,life,mass_kg,twist_deg,"
           "non_dominated,reason\r\n";
}

std::string csv_line(const StudyOption& option, double reserve)
{
    const OptionOutcome& outcome = option.outcome;
    std::string line = fmt::format("{}", option.index + 1);
    for (const std::string& value : option.values) line += "," + csv_cell(value);
    line += fmt::format(",{}", name_of(outcome.end));
    if (outcome.end != OptionEnd::judged) return fmt::format("{},,,,,,,,,,,,,{}\r\n", line, csv_cell(outcome.reason));
    const auto yes = [](bool holds) { return holds ? "yes" : "no"; };
    const std::string life = outcome.fatigue && !outcome.life ? "unlimited" : number(outcome.life);
    return fmt::format("{},{},{},{},{},{},{},{},{},{},{},{},{},\r\n", line, yes(passes_with(outcome, reserve)),
                       csv_cell(outcome.site), csv_cell(outcome.check), outcome.utilisation, outcome.error_pct,
                       yes(outcome.accuracy_reached), outcome.strength, number(outcome.fatigue), life, outcome.mass_kg,
                       outcome.twist_deg, yes(option.non_dominated));
}

std::string json_head(const StudyOrigin& origin)
{
    Json varied = Json::array();
    for (const Variation& variation : origin.variations)
    {
        Json values = Json::array();
        for (const std::string& value : variation.values) values.push_back(plain_value(value));
        varied.push_back({{"key", variation.key}, {"values", std::move(values)}});
    }
    const Json head{
        {"schema", options_schema_version}, {"program", "splicewright"},         {"version", version()},
        {"case", origin.case_file},         {"case_sha256", origin.case_sha256}, {"accuracy_pct", origin.accuracy_pct},
        {"reserve", origin.reserve},        {"varied", std::move(varied)}};
    std::string text = dumped(head);
    text.pop_back();
    return text + ",\n\"options\":[\n";
}

std::string json_option(const StudyOption& option, const StudyOrigin& origin)
{
    Json json{{"option", option.index + 1}};
    Json& values = json["values"] = Json::object();
    for (std::size_t key = 0; key < option.values.size(); ++key)
        values[origin.variations[key].key] = option.values[key];
    Json outcome = Json::parse(outcome_line(option.outcome));
    outcome.erase("version");
    if (outcome.contains("passes")) outcome["passes"] = passes_with(option.outcome, origin.reserve);
    json.update(outcome);
    if (option.outcome.end == OptionEnd::judged) json["non_dominated"] = option.non_dominated;
    return fmt::format("{}{}", option.index == 0 ? "" : ",\n", dumped(json));
}

std::string json_tail(const Ranking& ranking, Merit merit)
{
    const StudyCounts& counts = ranking.counts();
    Json tail{{"counts",
               {{"options", counts.options},
                {"pass", counts.passing},
                {"do_not_pass", counts.not_passing},
                {"invalid", counts.invalid},
                {"failed", counts.failed}}}};
    tail["non_dominated_in"] = {"mass_kg", name_of(merit)};
    if (counts.passing > 0) tail["recommended_option"] = ranking.best().front().index + 1;
    return fmt::format("\n],\n{}\n", dumped(tail).substr(1));
}

}  // namespace splicewright
