// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <charconv>
#include <filesystem>
#include <memory>
#include <optional>

#include "app/commands.h"
#include "app/compare.h"
#include "app/exit_status.h"
#include "app/find_value.h"
#include "app/number_range.h"
#include "app/progress.h"
#include "app/recommended.h"
#include "app/refusal.h"
#include "app/result_folder.h"
#include "app/tolerances.h"
#include "app/write_tolerances.h"
#include "cases/read_case.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

struct CompareOptions
{
    fs::path case_file, store, out;
    std::vector<std::string> vary;
    double accuracy_pct = 1, seconds = 600, reserve = 1;
    int workers = 0;  // 0: one for each processor
    std::string shard;
    FindPlan find;  // no key: no search
    bool tolerances = false;
    SamplePlan samples;
};

// "2/5"; the whole study without words.
std::optional<Shard> shard_from(const std::string& words)
{
    if (words.empty()) return Shard{};
    Shard shard{0, 0};
    const std::size_t slash = words.find('/');
    if (slash == std::string::npos) return std::nullopt;
    const char* text = words.data();
    const auto number = std::from_chars(text, text + slash, shard.number);
    const auto of = std::from_chars(text + slash + 1, text + words.size(), shard.of);
    const bool read =
        number.ec == std::errc() && number.ptr == text + slash && of.ec == std::errc() && of.ptr == text + words.size();
    return read && shard.number >= 1 && shard.number <= shard.of ? std::optional(shard) : std::nullopt;
}

fs::path beside_here(const CompareOptions& options, const char* ending)
{
    return options.case_file.stem().string() + ending;
}

void tell_computed(const Computed& computed, const OptionStore& store, const fs::path& file)
{
    fmt::print(stderr, "{} computed, {} known before", computed.computed, computed.known);
    if (!computed.lost.empty()) fmt::print(stderr, ", {} without an answer", computed.lost.size());
    fmt::print(stderr, "; store: {}\n", fs::absolute(file).string());
    if (store.n_damaged() > 0)
        fmt::print(stderr, "{} damaged rows of the store were computed again.\n", store.n_damaged());
}

void add_search(CLI::App& words, CompareOptions& options, CLI::Option& shard)
{
    CLI::Option* find =
        words.add_option("--find", options.find.key, "Key whose value that just meets a utilisation is wanted");
    CLI::Option* target =
        words.add_option("--target-utilisation", options.find.target, "The utilisation to be met, 0.8 for 80 %")
            ->check(number_between(0.01, 100.0));
    find->needs(target);
    target->needs(find);
    words
        .add_option("--tolerance", options.find.tolerance,
                    "How near that value must be known, \"0.1 mm\" (default: a thousandth of the range)")
        ->needs(find);
    find->excludes(&shard);
}

int status_of(const Ranking& ranking)
{
    const StudyCounts& counts = ranking.counts();
    if (counts.passing > 0) return exit_passes;
    if (counts.failed > 0) return exit_cannot_compute;
    return counts.not_passing > 0 ? exit_does_not_pass : exit_bad_input;
}

int end_of_shard(const Shard& shard, const Computed& computed)
{
    fmt::print(stderr,
               "Shard {} of {} is done. When all are: splicewright merge STORE... --store ALL, then "
               "compare with --store ALL.\n",
               shard.number, shard.of);
    return computed.lost.empty() ? exit_passes : exit_cannot_compute;
}

int tell_tolerances(const CompareOptions& options, const PoolPlan& pool)
{
    const fs::path file = options.store.empty() ? beside_here(options, "-options.sqlite") : options.store;
    const auto opened = OptionStore::opened(file);
    if (!opened.has_value()) return refused(opened.problems());
    const fs::path folder = options.out.empty() ? beside_here(options, "-tolerances") : options.out;
    expect_writable(folder);
    fmt::print(stderr, "Meshing and solving {} at the ends of its tolerances ...\n", options.case_file.string());
    std::optional<Progress> progress;
    const ToleranceWatch watch{[&](std::uint64_t runs) { progress.emplace(runs, "runs"); },
                               {[&] { progress->known(); }, [&] { progress->done(); }}};
    const Result<ToleranceAnswer> answer =
        tolerance_answer(options.case_file, {options.accuracy_pct}, pool, *opened.value(), options.samples, watch);
    if (progress) progress->finish();
    if (!answer.has_value()) return refused(answer.problems());
    fmt::print("{}", tolerance_text(answer.value()));
    std::fflush(stdout);
    const Result<Case> asked = read_case_file(options.case_file);
    if (!asked.has_value()) return refused(asked.problems());
    const std::string why_no_pictures = write_tolerances(answer.value(), asked.value(), options.accuracy_pct, folder);
    if (!why_no_pictures.empty()) fmt::print(stderr, "No PNG chart, only SVG: {}\n", why_no_pictures);
    fmt::print(stderr, "Report to open in a browser: {}/report.html\n", fs::absolute(folder).string());
    const OptionOutcome& corner = answer.value().corner.outcome;
    const bool passes = corner.end == OptionEnd::judged && corner.passes && answer.value().nominal.passes;
    if (corner.end != OptionEnd::judged || (passes && answer.value().some_failed)) return exit_cannot_compute;
    return passes ? exit_passes : exit_does_not_pass;
}

int compare(const CompareOptions& options)
{
    const PoolPlan pool{options.workers > 0 ? options.workers : n_processors(), options.seconds};
    if (options.tolerances) return tell_tolerances(options, pool);
    const std::optional<Shard> shard = shard_from(options.shard);
    if (!shard)
        return refused({{"", 0, 0, "--shard", fmt::format("\"{}\"", options.shard),
                         "must be the number of the part and how many there are", "--shard 1/4"}});
    const Result<Study> read = study_of(options.case_file, options.vary, {options.accuracy_pct});
    if (!read.has_value()) return refused(read.problems());
    const Study& study = read.value();
    if (!options.find.key.empty())
        if (const auto problems = find_problems(study, options.find); !problems.empty()) return refused(problems);
    const fs::path file = options.store.empty() ? beside_here(options, "-options.sqlite") : options.store;
    const auto opened = OptionStore::opened(file);
    if (!opened.has_value()) return refused(opened.problems());
    OptionStore& store = *opened.value();
    const fs::path folder = options.out.empty() ? beside_here(options, "-options") : options.out;
    if (shard->of == 1) expect_writable(folder);

    const std::uint64_t own = (study.size() - shard->number + shard->of) / shard->of;
    fmt::print(stderr, "{} options, {} worker{}\n", own, pool.n_workers, pool.n_workers == 1 ? "" : "s");
    Progress progress(own, "options");
    const Computed computed =
        compute(study, *shard, pool, store, {[&] { progress.known(); }, [&] { progress.done(); }});
    progress.finish();
    tell_computed(computed, store, file);
    if (shard->of > 1) return end_of_shard(*shard, computed);
    const std::string search_words =
        options.find.key.empty() ? "" : search_text(search_value(study, options.find, pool, store, computed));
    fmt::print(stderr, "Writing the folder ...\n");
    const Compared compared = write_comparison(study, computed, store, options.reserve, folder, search_words);
    fmt::print("{}", compared.text);
    std::fflush(stdout);
    if (!compared.why_no_pictures.empty())
        fmt::print(stderr, "No PNG charts, only SVG: {}\n", compared.why_no_pictures);
    if (!compared.why_no_report.empty())
        fmt::print(stderr, "No full report of the recommended option: {}\n", compared.why_no_report);
    fmt::print(stderr, "All options, and a report to open in a browser: {}/report.html\n",
               fs::absolute(folder).string());
    if (compared.has_report)
        fmt::print(stderr, "Full report of the recommended option: {}/{}/report.html\n", fs::absolute(folder).string(),
                   recommended_folder);
    return status_of(compared.ranking);
}

struct MergeOptions
{
    std::vector<fs::path> stores;
    fs::path into;
};

int merge_all(const MergeOptions& options)
{
    std::vector<Problem> problems;
    for (const fs::path& file : options.stores)
    {
        if (!fs::is_regular_file(file))
            problems.push_back({"", 0, 0, "store", fmt::format("\"{}\"", file.string()), "there is no such file",
                                "name the stores that the shards wrote"});
        if (fs::weakly_canonical(file) == fs::weakly_canonical(options.into))
            problems.push_back({"", 0, 0, "store", fmt::format("\"{}\"", file.string()),
                                "is the store to be written as well", "name another one: --store FILE"});
    }
    if (!problems.empty()) return refused(problems);
    const auto into = OptionStore::opened(options.into);
    if (!into.has_value()) return refused(into.problems());
    for (const fs::path& file : options.stores)
    {
        const auto from = OptionStore::opened(file);
        if (!from.has_value()) return refused(from.problems());
        const Merged merged = merge(*from.value(), *into.value());
        fmt::print("{}: {} taken, {} known before", file.string(), merged.taken, merged.known);
        if (merged.damaged > 0) fmt::print(", {} damaged and left out", merged.damaged);
        fmt::print("\n");
    }
    fmt::print("{}: {} outcomes\n", options.into.string(), into.value()->n_rows());
    return exit_passes;
}

}  // namespace

Command compare_command(CLI::App& program)
{
    const auto options = std::make_shared<CompareOptions>();
    CLI::App* words = program.add_subcommand(
        "compare", "Judge every combination of some keys of a case; exit 0 when an option passes, 1 when none does");
    words->add_option("CASE", options->case_file, "Case file (TOML), see docs/case-format.md")->required();
    CLI::Option* vary =
        words
            ->add_option("--vary", options->vary,
                         "Key and values: sleeve.length=60mm..120mm:7 or sleeve.wall=4mm,6mm (default: [compare])")
            ->expected(1)
            ->allow_extra_args(false)
            ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    words->add_option("--accuracy", options->accuracy_pct, "Wanted error of every stress, percent")
        ->check(number_between(0.05, 20.0))
        ->capture_default_str();
    words->add_option("--reserve", options->reserve, "Factor on all stresses that an option must bear to pass")
        ->check(number_between(0.1, 10.0))
        ->capture_default_str();
    words->add_option("--workers", options->workers, "Processes that compute (default: one for each processor)")
        ->check(CLI::Range(1, 1024));
    words->add_option("--seconds", options->seconds, "Time allowed for each option, by the clock")
        ->check(number_between(0.001, 86400.0))
        ->capture_default_str();
    words->add_option("--store", options->store,
                      "File that keeps what was computed (default: <case>-options.sqlite in the current folder)");
    words->add_option(
        "--out", options->out,
        "Result folder (default: <case>-options or, with --tolerances, <case>-tolerances in the current folder)");
    CLI::Option* shard =
        words->add_option("--shard", options->shard, "Compute part i of n only, i/n, and write no result folder");
    add_search(*words, *options, *shard);
    CLI::Option* tolerances =
        words
            ->add_flag("--tolerances", options->tolerances,
                       "Instead of options: every value of the case written with +- at both of its ends, the worst "
                       "corner, and parts drawn at random between them; exit 0 when the corner passes")
            ->excludes(shard)
            ->excludes(vary);
    words->add_option("--samples", options->samples.n, "Parts that --tolerances draws at random")
        ->check(CLI::Range(0, 100'000))
        ->capture_default_str()
        ->needs(tolerances);
    words->add_option("--seed", options->samples.seed, "Seed of those parts")->capture_default_str()->needs(tolerances);
    return {words, [options] { return compare(*options); }};
}

Command merge_command(CLI::App& program)
{
    const auto options = std::make_shared<MergeOptions>();
    CLI::App* words = program.add_subcommand("merge", "Copy what stores of compare hold into one");
    words->add_option("STORE", options->stores, "Stores that shards wrote")->required();
    words->add_option("--store", options->into, "Store to be filled; made when there is none")->required();
    return {words, [options] { return merge_all(*options); }};
}

}  // namespace splicewright
