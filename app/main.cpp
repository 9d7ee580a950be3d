// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <unistd.h>

#include <CLI/CLI.hpp>
#include <cstdlib>
#include <filesystem>
#include <string>

#include "app/check_splice.h"
#include "app/write_report.h"
#include "cases/problem.h"
#include "cases/read_case.h"
#include "post/result_json.h"
#include "post/verdict_text.h"
#include "post/version.h"

namespace splicewright
{
namespace
{

enum ExitStatus
{
    exit_passes = 0,
    exit_does_not_pass = 1,
    exit_bad_input = 2,
    exit_cannot_compute = 3,
    exit_our_fault = 4,
};

struct CheckOptions
{
    std::filesystem::path case_file;
    std::filesystem::path out;
    double accuracy_pct = 1;
    bool json = false;
};

Emphasis emphasis_on_stdout()
{
    const char* no_colour = std::getenv("NO_COLOR");
    const bool refused = no_colour != nullptr && *no_colour != '\0';
    return ::isatty(STDOUT_FILENO) != 0 && !refused ? Emphasis::terminal : Emphasis::plain;
}

int check(const CheckOptions& options)
{
    const Result<Case> asked = read_case_file(options.case_file);
    if (!asked.has_value())
    {
        for (const Problem& problem : asked.problems()) fmt::print(stderr, "{}\n", to_string(problem));
        const std::size_t n = asked.problems().size();
        fmt::print(stderr, "{} problem{} in {}; nothing was computed.\n", n, n == 1 ? "" : "s", options.case_file.string());
        return exit_bad_input;
    }
    const std::filesystem::path folder =
        options.out.empty() ? std::filesystem::path(options.case_file.stem().string() + "-result") : options.out;
    fmt::print(stderr, "Meshing and solving {} ...\n", options.case_file.string());
    const Report report = check_splice(asked.value(), {options.accuracy_pct});
    fmt::print(stderr, "Drawing ...\n");
    const WrittenReport written = write_report(report, folder);
    fmt::print("{}", options.json ? result_json(report) : verdict_text(report, emphasis_on_stdout()));
    std::fflush(stdout);
    if (written.why_no_pictures.empty())
        fmt::print(stderr, "Pictures, VTK files and result.json: {}\n", std::filesystem::absolute(folder).string());
    else
        fmt::print(stderr, "No pictures: {}.\nThe other results: {}\n", written.why_no_pictures,
                   std::filesystem::absolute(folder).string());
    return report.passes() ? exit_passes : exit_does_not_pass;
}

int run(int argc, char** argv)
{
    CLI::App app{"Checks a welded, sleeved splice of a drive half shaft before metal is cut."};
    app.set_version_flag("--version", version());
    app.require_subcommand(1);
    app.footer("Exit status: 0 passes, 1 does not pass, 2 bad input, 3 could not be computed, 4 our own fault.");
    CheckOptions options;
    CLI::App* check_command = app.add_subcommand("check", "Mesh, solve and judge one case; print the verdict, write a folder");
    check_command->add_option("CASE", options.case_file, "Case file (TOML), see docs/case-format.md")->required();
    check_command->add_option("--out", options.out, "Result folder (default: <case>-result in the current folder)");
    check_command->add_option("--accuracy", options.accuracy_pct, "Wanted error of every stress, percent")
        ->check(CLI::Range(0.05, 20.0))
        ->capture_default_str();
    check_command->add_flag("--json", options.json, "Print result.json instead of the verdict");
    try
    {
        app.parse(argc, argv);
    }
    catch (const CLI::ParseError& error)
    {
        return app.exit(error) == 0 ? exit_passes : exit_bad_input;
    }
    return check(options);
}

}  // namespace
}  // namespace splicewright

int main(int argc, char** argv)
{
    using namespace splicewright;
    ::setenv("OMP_THREAD_LIMIT", "1", 0);
    try
    {
        return run(argc, argv);
    }
    catch (const CannotCompute& error)
    {
        fmt::print(stderr, "Could not be computed. {}\n", error.what());
        return exit_cannot_compute;
    }
    catch (const std::exception& error)
    {
        fmt::print(stderr, "This is our fault, please report it with the case file: {}\n", error.what());
        return exit_our_fault;
    }
}
