// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <CLI/CLI.hpp>
#include <functional>

namespace splicewright
{

// A subcommand on the command line and what it does; `run` gives the exit status of the program.
struct Command
{
    CLI::App* words = nullptr;
    std::function<int()> run;
};

// Each adds its words to the command line.
Command check_command(CLI::App& program);
Command explain_command(CLI::App& program);
Command compare_command(CLI::App& program);
Command merge_command(CLI::App& program);
Command prove_command(CLI::App& program);
Command soak_command(CLI::App& program);

}  // namespace splicewright
