// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "app/commands.h"
#include "app/exit_status.h"
#include "app/memory.h"
#include "cases/nearest.h"
#include "cases/plain_text.h"
#include "cases/problem.h"
#include "post/version.h"

namespace splicewright
{
namespace
{

// What stands where a command is expected; empty when it is one, or an option.
std::string misplaced_word(const CLI::App& program, const std::string& word)
{
    std::vector<std::string> names;
    for (const CLI::App* command : program.get_subcommands([](const CLI::App*) { return true; }))
        names.push_back(command->get_name());
    if (word.starts_with("-") || std::find(names.begin(), names.end(), word) != names.end()) return {};
    if (word.ends_with(".toml"))
        return fmt::format("What to do with {} is missing. To check it: splicewright check {}",
                           splicewright::quoted(word), printable(word, 60));
    const std::vector<std::string> near = nearest(word, names, 1);
    return fmt::format("{} is no command{} There are: {}.", splicewright::quoted(word),
                       near.empty() ? "." : fmt::format("; did you mean {}?", near.front()), fmt::join(names, ", "));
}

int run(int argc, char** argv)
{
    CLI::App program{"Checks a welded, sleeved splice of a drive half shaft before metal is cut."};
    program.set_version_flag("--version", version());
    program.require_subcommand(1);
    program.footer("Exit status: 0 passes, 1 does not pass, 2 bad input, 3 could not be computed, 4 our own fault.");
    const std::array commands{check_command(program), explain_command(program), compare_command(program),
                              merge_command(program), prove_command(program),   soak_command(program)};
    if (const std::string told = argc > 1 ? misplaced_word(program, argv[1]) : ""; !told.empty())
    {
        fmt::print(stderr, "{}\nRun with --help for more information.\n", told);
        return exit_bad_input;
    }
    try
    {
        program.parse(argc, argv);
    }
    catch (const CLI::ParseError& error)
    {
        return program.exit(error) == 0 ? exit_passes : exit_bad_input;
    }
    for (const Command& command : commands)
        if (command.words->parsed()) return command.run();
    return exit_bad_input;
}

// Exit status, whatever happens.
int guarded_run(int argc, char** argv)
{
    keep_freed_memory();
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

}  // namespace
}  // namespace splicewright

int main(int argc, char** argv) { return splicewright::guarded_run(argc, argv); }
