// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <memory>

#include "app/check_splice.h"
#include "app/commands.h"
#include "app/exit_status.h"
#include "app/model_options.h"
#include "app/number_range.h"
#include "app/refusal.h"
#include "app/result_folder.h"
#include "app/write_report.h"
#include "cases/read_case.h"
#include "post/making_text.h"
#include "post/result_json.h"
#include "post/verdict_text.h"

namespace splicewright
{
namespace
{

struct CheckOptions
{
    std::filesystem::path case_file;
    std::filesystem::path out;
    double accuracy_pct = 1;
    bool json = false;
    bool shop = false;
    bool all = false;
    bool pdf = false;
    ModelUse models;
};

Emphasis emphasis_on_stdout()
{
    const char* no_colour = std::getenv("NO_COLOR");
    const bool refused = no_colour != nullptr && *no_colour != '\0';
    return ::isatty(STDOUT_FILENO) != 0 && !refused ? Emphasis::terminal : Emphasis::plain;
}

void tell_written(const CheckOptions& options, const std::filesystem::path& folder, const WrittenReport& written)
{
    if (!written.why_no_pictures.empty()) fmt::print(stderr, "No pictures: {}.\n", written.why_no_pictures);
    if (!written.why_no_pdf.empty()) fmt::print(stderr, "No PDF: {}.\n", written.why_no_pdf);
    const std::string place = std::filesystem::absolute(folder).string();
    fmt::print(stderr, "Report to open in a browser: {}/report.html\n", place);
    if (options.pdf && written.why_no_pdf.empty()) fmt::print(stderr, "Report to print: {}/report.pdf\n", place);
    fmt::print(stderr, "Drawing, pictures, VTK files and result.json: {}\n", place);
}

int check(const CheckOptions& options)
{
    const Result<Case> asked = read_case_file(options.case_file);
    if (!asked.has_value()) return refused(asked.problems(), options.case_file.string());
    const std::filesystem::path folder =
        options.out.empty() ? std::filesystem::path(options.case_file.stem().string() + "-result") : options.out;
    expect_writable(folder);
    fmt::print(stderr, "Meshing and solving {} ...\n", options.case_file.string());
    ModelUse models = options.models;
    models.tell = [](const std::string& line) { fmt::print(stderr, "{}\n", line); };
    const Report report = check_splice(asked.value(), {options.accuracy_pct}, models);
    fmt::print(stderr, "Drawing ...\n");
    WrittenReport written;
    std::string why_not_written;  // the verdict is told all the same
    try
    {
        written = write_report(report, folder, {options.pdf, {}});
    }
    catch (const CannotCompute& error)
    {
        why_not_written = error.what();
    }
    const RowsShown shown = options.all ? RowsShown::all : RowsShown::governing;
    fmt::print("{}", options.json ? result_json(report) : verdict_text(report, emphasis_on_stdout(), shown));
    if (options.shop && !options.json)
        fmt::print("\n{}", report.making ? shop_text(*report.making) : "No shop sheet: a plain shaft is not welded.\n");
    std::fflush(stdout);
    if (!why_not_written.empty())
    {
        fmt::print(stderr, "The result could not be kept. {}\n", why_not_written);
        return exit_cannot_compute;
    }
    tell_written(options, folder, written);
    if (!contradiction(report.handbook).empty()) return exit_cannot_compute;
    return report.passes() ? exit_passes : exit_does_not_pass;
}

}  // namespace

Command check_command(CLI::App& program)
{
    const auto options = std::make_shared<CheckOptions>();
    CLI::App* words =
        program.add_subcommand("check", "Mesh, solve and judge one case; print the verdict, write a folder");
    words->add_option("CASE", options->case_file, "Case file (TOML), see docs/case-format.md")->required();
    words->add_option("--out", options->out, "Result folder (default: <case>-result in the current folder)");
    words->add_option("--accuracy", options->accuracy_pct, "Wanted error of every stress, percent")
        ->check(number_between(0.05, 20.0))
        ->capture_default_str();
    add_model_options(*words, options->models);
    words->add_flag("--all", options->all, "List every check, not only the governing one of each site");
    words->add_flag("--json", options->json, "Print result.json instead of the verdict");
    words->add_flag("--pdf", options->pdf, "Print report.html to report.pdf as well, with an installed browser");
    words->add_flag("--shop", options->shop,
                    "Print the shop sheet as well: cutting, bores, welds, preheat, inspection");
    return {words, [options] { return check(*options); }};
}

}  // namespace splicewright
