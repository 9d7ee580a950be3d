// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/option_outcome.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <numbers>

#include "cases/plain_text.h"
#include "post/finished_mass.h"
#include "post/handbook.h"
#include "post/service.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::ordered_json;

constexpr double kilogram_per_tonne = 1000;
constexpr std::size_t longest_reason = 400;  // bytes
constexpr double error_step_pct = 1e-6;      // error bars are rounded up to it: what is below is round-off

// Six digits: what the meshes promise at most, and no trace of the order in which a processor adds.
double six_digits(double value)
{
    EXPECTS(std::isfinite(value));
    return std::strtod(fmt::format("{:.6g}", value).c_str(), nullptr);
}

double worst(const std::vector<CheckRow>& rows, CheckKind kind)
{
    const CheckRow* row = governing(rows, kind);
    return row == nullptr ? 0 : six_digits(row->utilisation);
}

std::string shortened(const std::string& text) { return printable(text, longest_reason); }

}  // namespace

const char* name_of(OptionEnd end)
{
    switch (end)
    {
        case OptionEnd::judged: return "judged";
        case OptionEnd::invalid: return "invalid";
        default: return "failed";
    }
}

OptionOutcome outcome_of(const Case& asked, const Judgement& sound)
{
    if (const std::string wrong = contradiction(handbook_rows(asked, sound.answer)); !wrong.empty())
        return failed_outcome(fmt::format("the finite elements contradict exact theory: {}", wrong));
    const CheckRow* row = governing(sound.checks);
    if (row == nullptr) return failed_outcome("no check holds for it");
    OptionOutcome outcome;
    outcome.end = OptionEnd::judged;
    outcome.passes = sound.passes();
    outcome.site = row->site;
    outcome.check = row->id;
    outcome.utilisation = six_digits(row->utilisation);
    outcome.error_pct = six_digits(std::ceil(row->error_pct / error_step_pct) * error_step_pct);
    outcome.accuracy_reached = sound.answer.evidence.reached;
    outcome.strength = worst(sound.checks, CheckKind::strength);
    if (governing(sound.checks, CheckKind::fatigue) != nullptr)
        outcome.fatigue = worst(sound.checks, CheckKind::fatigue);
    if (const auto life = least_life(sound.checks); life && std::isfinite(life->least))
        outcome.life = six_digits(life->least);
    outcome.mass_kg = six_digits(finished_mass(asked, sound.answer.fields.mesh).value() * kilogram_per_tonne);
    outcome.twist_deg = six_digits(sound.answer.twist.value * asked.load.peak_torque.value() * 180 / std::numbers::pi);
    return outcome;
}

OptionOutcome invalid_outcome(const std::vector<Problem>& problems)
{
    EXPECTS(!problems.empty());
    OptionOutcome outcome;
    outcome.end = OptionEnd::invalid;
    // Lines and columns are those of a text that nobody has seen.
    Problem first = problems.front();
    first.file.clear();
    outcome.reason = shortened(to_string(first));
    if (problems.size() > 1) outcome.reason += fmt::format(" (and {} more)", problems.size() - 1);
    return outcome;
}

OptionOutcome failed_outcome(const std::string& reason)
{
    OptionOutcome outcome;
    outcome.reason = shortened(reason);
    return outcome;
}

std::string outcome_line(const OptionOutcome& outcome)
{
    Json json{{"version", option_outcome_version}, {"end", name_of(outcome.end)}};
    if (outcome.end != OptionEnd::judged) json["reason"] = outcome.reason;
    else
    {
        json.update({{"passes", outcome.passes},
                     {"site", outcome.site},
                     {"check", outcome.check},
                     {"utilisation", outcome.utilisation},
                     {"error_pct", outcome.error_pct},
                     {"accuracy_reached", outcome.accuracy_reached},
                     {"strength", outcome.strength}});
        if (outcome.fatigue) json["fatigue"] = *outcome.fatigue;
        if (outcome.life) json["life"] = *outcome.life;
        json.update({{"mass_kg", outcome.mass_kg}, {"twist_deg", outcome.twist_deg}});
    }
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::optional<OptionOutcome> outcome_from_line(const std::string& line)
{
    const Json json = Json::parse(line, nullptr, false);
    if (!json.is_object() || json.value("version", 0) != option_outcome_version) return std::nullopt;
    OptionOutcome outcome;
    const std::string end = json.value("end", "");
    for (const OptionEnd known : {OptionEnd::judged, OptionEnd::invalid, OptionEnd::failed})
        if (end == name_of(known)) outcome.end = known;
    if (outcome.end != OptionEnd::judged)
    {
        outcome.reason = json.value("reason", "");
        return outcome;
    }
    try
    {
        outcome.passes = json.at("passes").get<bool>();
        outcome.site = json.at("site").get<std::string>();
        outcome.check = json.at("check").get<std::string>();
        outcome.utilisation = json.at("utilisation").get<double>();
        outcome.error_pct = json.at("error_pct").get<double>();
        outcome.accuracy_reached = json.at("accuracy_reached").get<bool>();
        outcome.strength = json.at("strength").get<double>();
        if (json.contains("fatigue")) outcome.fatigue = json["fatigue"].get<double>();
        if (json.contains("life")) outcome.life = json["life"].get<double>();
        outcome.mass_kg = json.at("mass_kg").get<double>();
        outcome.twist_deg = json.at("twist_deg").get<double>();
    }
    catch (const Json::exception&)
    {
        return std::nullopt;
    }
    return outcome;
}

}  // namespace splicewright
