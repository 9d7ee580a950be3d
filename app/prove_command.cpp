// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <memory>

#include "app/commands.h"
#include "app/error_bars.h"
#include "app/exit_status.h"
#include "app/number_range.h"
#include "app/prove.h"
#include "cases/problem.h"
#include "post/validation_text.h"
#include "post/version.h"

namespace splicewright
{
namespace
{

struct ProveOptions
{
    std::string beginning;
    bool list = false;
    std::filesystem::path document;
    bool error_bars = false;
    BarPlan bars;
};

void write_document(const std::filesystem::path& path, const std::string& text)
{
    std::filesystem::path unfinished = path;
    unfinished += ".part";
    std::ofstream file(unfinished, std::ios::binary);
    file << text;
    file.close();
    std::error_code problem;
    if (file) std::filesystem::rename(unfinished, path, problem);
    if (!file || problem)
        throw CannotCompute(
            {path.string(), 0, 0, "", "", "the file cannot be written", "choose a folder that you may write to"});
    fmt::print(stderr, "Written: {}\n", path.string());
}

int list(const std::vector<CheckGroup>& groups)
{
    fmt::print("{}", listing(groups));
    return exit_passes;
}

bool is_name(const std::vector<CheckGroup>& groups, const std::string& beginning)
{
    return std::any_of(groups.begin(), groups.end(),
                       [&](const CheckGroup& group)
                       {
                           return std::any_of(group.checks.begin(), group.checks.end(),
                                              [&](const PublishedCheck& check)
                                              { return check.name.starts_with(beginning); });
                       });
}

int exit_status(const std::vector<ProvenCheck>& rows)
{
    if (std::any_of(rows.begin(), rows.end(), [](const ProvenCheck& row) { return !row.why_not_computed.empty(); }))
        return exit_cannot_compute;
    return std::all_of(rows.begin(), rows.end(), [](const ProvenCheck& row) { return row.agrees(); })
               ? exit_passes
               : exit_does_not_pass;
}

std::string command_of(const BarPlan& plan)
{
    return fmt::format("splicewright prove --error-bars --cases {} --seed {} --accuracy {:g}",
                       fmt::join(plan.n_cases, ","), plan.first_seed, fmt::join(plan.accuracies_pct, ","));
}

int test_error_bars(const ProveOptions& options)
{
    if (options.bars.n_cases.size() != 1 && options.bars.n_cases.size() != options.bars.accuracies_pct.size())
    {
        fmt::print(stderr, "--cases needs one number, or one for each accuracy.\n");
        return exit_bad_input;
    }
    const std::vector<BarStudy> studies =
        bar_studies(options.bars, [](const BarredCase& done)
                    { fmt::print(stderr, "{}: {:.1f} s {}\n", done.name, done.seconds, done.failure); });
    for (const BarStudy& study : studies) fmt::print("{}", bar_study_text(study));
    if (!options.document.empty())
        write_document(options.document, bar_study_document(studies, command_of(options.bars), version()));
    return std::all_of(studies.begin(), studies.end(), meets_goal) ? exit_passes : exit_does_not_pass;
}

int prove_and_tell(const ProveOptions& options)
{
    if (options.error_bars) return test_error_bars(options);
    const std::vector<CheckGroup> groups = published_checks();
    if (options.list) return list(groups);
    if (!is_name(groups, options.beginning))
    {
        fmt::print(stderr, "No check's name begins with \"{}\"; `splicewright prove --list` names them all.\n",
                   options.beginning);
        return exit_bad_input;
    }
    fmt::print("{}", terminal_header());
    const std::vector<ProvenCheck> rows = prove(groups, options.beginning,
                                                [](const ProvenCheck& row)
                                                {
                                                    fmt::print("{}", terminal_row(row));
                                                    std::fflush(stdout);
                                                });
    fmt::print("{}\n", summary(rows));
    if (!options.document.empty()) write_document(options.document, validation_document(rows, version()));
    return exit_status(rows);
}

}  // namespace

Command prove_command(CLI::App& program)
{
    const auto options = std::make_shared<ProveOptions>();
    CLI::App* words = program.add_subcommand(
        "prove", "Recompute published values on this machine; exit 0 when all agree, 1 when one does not");
    CLI::Option* name = words->add_option("NAME", options->beginning, "Only checks whose name begins so");
    CLI::Option* all = words->add_flag("--list", options->list, "Name the checks and compute nothing");
    words->add_option("--write", options->document, "Write all of it as a document (docs/validation.md)")
        ->excludes(name)
        ->excludes(all);
    CLI::Option* bars = words
                            ->add_flag("--error-bars", options->error_bars,
                                       "Test the error bars on random cases instead (docs/error-bars.md)")
                            ->excludes(name)
                            ->excludes(all);
    words
        ->add_option("--cases", options->bars.n_cases,
                     "Random cases for --error-bars; several numbers: one for each accuracy")
        ->check(CLI::Range(1, 1000000))
        ->delimiter(',')
        ->needs(bars)
        ->capture_default_str();
    words->add_option("--seed", options->bars.first_seed, "Seed of the first of them; the next ones count on")
        ->needs(bars)
        ->capture_default_str();
    words->add_option("--accuracy", options->bars.accuracies_pct, "Accuracies to test, percent, with commas between")
        ->check(number_between(0.05, 20.0))
        ->delimiter(',')
        ->needs(bars)
        ->capture_default_str();
    words->add_option("--processes", options->bars.n_processes, "How many cases at a time")
        ->check(CLI::Range(1, 256))
        ->needs(bars)
        ->capture_default_str();
    return {words, [options] { return prove_and_tell(*options); }};
}

}  // namespace splicewright
