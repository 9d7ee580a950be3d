// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <memory>
#include <optional>

#include "app/commands.h"
#include "app/exit_status.h"
#include "app/model_options.h"
#include "app/number_range.h"
#include "app/refusal.h"
#include "app/scenarios.h"
#include "cases/nearest.h"
#include "cases/read_case.h"
#include "post/explain_text.h"

namespace splicewright
{
namespace
{

constexpr std::size_t most_suggested = 4;

struct ExplainOptions
{
    std::filesystem::path case_file;
    std::string id, scenario;
    double accuracy_pct = 1;
    ModelUse models;
};

// Scenario, accuracy and models as `check` solves them.
struct AskedScenario
{
    WhatIf what_if;
    Accuracy accuracy;
    ModelUse models;
};

std::string suggestion(const std::string& text, const std::vector<std::string>& candidates)
{
    std::string line;
    for (const std::string& name : nearest(text, candidates, most_suggested))
        line += fmt::format("{}{}", line.empty() ? "Nearest: " : ", ", name);
    return line.empty() ? line : fmt::format("{}.\n", line);
}

// None, with a word of complaint, where the case has no such scenario.
std::optional<AskedScenario> asked_scenario(const Case& asked, const ExplainOptions& options)
{
    const Accuracy accuracy{options.accuracy_pct};
    if (options.scenario.empty()) return AskedScenario{{asked, sound_splice()}, accuracy, options.models};
    std::vector<std::string> names;
    for (const WhatIf& changed : what_ifs(asked))
    {
        if (changed.scenario.name == options.scenario)
            return AskedScenario{changed, for_information(accuracy), options.models};
        names.push_back(changed.scenario.name);
    }
    fmt::print(stderr, "No scenario \"{}\" in {}. ", options.scenario, options.case_file.string());
    if (names.empty()) fmt::print(stderr, "It has no joint, so nothing is taken as lost.\n");
    else fmt::print(stderr, "There are: \"{}\".\n", fmt::join(names, "\", \""));
    return std::nullopt;
}

int explained(const Case& asked, const Judgement& judged, const ExplainOptions& options)
{
    const auto row = std::find_if(judged.checks.begin(), judged.checks.end(),
                                  [&](const CheckRow& each) { return each.id == options.id; });
    if (row != judged.checks.end())
    {
        fmt::print("{}", explain_text(asked, judged, *row));
        return exit_passes;
    }
    std::vector<std::string> ids;
    for (const CheckRow& each : judged.checks) ids.push_back(each.id);
    fmt::print(stderr, "No check \"{}\" in {}. {}Without an id all are listed: splicewright explain {}\n", options.id,
               options.case_file.string(), suggestion(options.id, ids), options.case_file.string());
    return exit_bad_input;
}

int explain(const ExplainOptions& options)
{
    const Result<Case> asked = read_case_file(options.case_file);
    if (!asked.has_value()) return refused(asked.problems(), options.case_file.string());
    const std::optional<AskedScenario> scenario = asked_scenario(asked.value(), options);
    if (!scenario) return exit_bad_input;
    fmt::print(stderr, "Meshing and solving {} ...\n", options.case_file.string());
    const Judgement result =
        judged(scenario->what_if.asked, scenario->what_if.scenario, scenario->accuracy, scenario->models);
    if (!options.id.empty()) return explained(asked.value(), result, options);
    fmt::print("{}", explainable_text(result));
    return exit_passes;
}

}  // namespace

Command explain_command(CLI::App& program)
{
    const auto options = std::make_shared<ExplainOptions>();
    CLI::App* words = program.add_subcommand(
        "explain", "Work one check through: formula, numbers with units, source, validity, result; writes no folder");
    words->add_option("CASE", options->case_file, "Case file (TOML), see docs/case-format.md")->required();
    words->add_option("CHECK-ID", options->id, "Id as in the verdict and in result.json; absent: lists all");
    words->add_option("--scenario", options->scenario, "\"hidden weld lost\" and so on (default: the sound splice)");
    words->add_option("--accuracy", options->accuracy_pct, "Wanted error of every stress, percent")
        ->check(number_between(0.05, 20.0))
        ->capture_default_str();
    add_model_options(*words, options->models);
    return {words, [options] { return explain(*options); }};
}

}  // namespace splicewright
