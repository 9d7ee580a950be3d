// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <array>

#include "app/commands.h"
#include "app/exit_status.h"
#include "app/memory.h"
#include "cases/problem.h"
#include "post/version.h"

namespace splicewright
{
namespace
{

int run(int argc, char** argv)
{
    CLI::App program{"Checks a welded, sleeved splice of a drive half shaft before metal is cut."};
    program.set_version_flag("--version", version());
    program.require_subcommand(1);
    program.footer("Exit status: 0 passes, 1 does not pass, 2 bad input, 3 could not be computed, 4 our own fault.");
    const std::array commands{check_command(program), explain_command(program), compare_command(program),
                              merge_command(program), prove_command(program),   soak_command(program)};
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
