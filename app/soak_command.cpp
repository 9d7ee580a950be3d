// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <memory>

#include "app/commands.h"
#include "app/exit_status.h"
#include "app/number_range.h"
#include "app/soak.h"

namespace splicewright
{
namespace
{

const char* name_of(SoakOutcome outcome)
{
    switch (outcome)
    {
        case SoakOutcome::ran: return "ran";
        case SoakOutcome::refused: return "refused";
        default: return "FAILED";
    }
}

void tell(const SoakResult& result)
{
    fmt::print(stderr, "{}: {} {:.1f} s{}\n", result.name, name_of(result.outcome), result.seconds,
               result.missed.empty() ? "" : ", accuracy missed");
    if (result.outcome != SoakOutcome::failed) return;
    for (const std::string& fault : result.faults) fmt::print("{}: {}\n", result.name, fault);
    std::fflush(stdout);
}

int soak_and_tell(const SoakPlan& plan)
{
    const std::vector<SoakResult> results = soak(plan, tell);
    fmt::print("{}", soak_summary(results));
    const bool is_sound = std::none_of(results.begin(), results.end(),
                                       [](const SoakResult& result) { return result.outcome == SoakOutcome::failed; });
    return is_sound ? exit_passes : exit_cannot_compute;
}

}  // namespace

Command soak_command(CLI::App& program)
{
    const auto plan = std::make_shared<SoakPlan>();
    CLI::App* words =
        program.add_subcommand("soak", "Check many random and damaged cases; exit 0 when none fails, 3 when one does");
    words->add_option("--seed", plan->first_seed, "Seed of the first text; the next ones count on")
        ->capture_default_str();
    words->add_option("--cases", plan->n_cases, "Random valid cases")
        ->check(CLI::Range(0, 1000000))
        ->capture_default_str();
    words->add_option("--mutations", plan->n_mutations, "Damaged case files")
        ->check(CLI::Range(0, 1000000))
        ->capture_default_str();
    words->add_option("--accuracy", plan->accuracy_pct, "Wanted error of every stress, percent")
        ->check(number_between(0.05, 20.0))
        ->capture_default_str();
    words->add_option("--seconds", plan->seconds_allowed, "Time of computing allowed for each text")
        ->check(number_between(0.1, 86400.0))
        ->capture_default_str();
    words->add_option("--failures", plan->failure_folder, "Folder for the texts that fail")->capture_default_str();
    return {words, [plan] { return soak_and_tell(*plan); }};
}

}  // namespace splicewright
