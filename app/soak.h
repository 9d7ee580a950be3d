// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace splicewright
{

struct SoakPlan
{
    std::uint64_t first_seed = 1;  // of the first text; the next ones count on
    int n_cases = 300, n_mutations = 300;
    double accuracy_pct = 1;
    double seconds_allowed = 120;  // of computing for each text; by the clock six times that, for a busy machine
    std::filesystem::path failure_folder = "soak-failures";  // made when something fails
};

enum class SoakOutcome
{
    ran,      // a verdict with all its evidence in order
    refused,  // clear problems; right for a damaged text only
    failed,
};

// What became of one text.
struct SoakResult
{
    std::string name;  // "case 17", "mutation 42": the seed
    SoakOutcome outcome = SoakOutcome::failed;
    std::vector<std::string> faults;  // why it failed
    std::vector<std::string> missed;  // "root.left, snug": sites not known to the asked accuracy
    double seconds = 0;               // of computing
};

// Checks one text, in this process. A random case must run; a damaged one may be refused with clear problems.
SoakResult soaked(const std::string& name, const std::string& text, double accuracy_pct);

// Checks every text in a child process of its own, so that a crash or a hang of one is told and the rest goes on.
// Calls `watch` after each; writes the text of a failing one into the folder of failures.
std::vector<SoakResult> soak(const SoakPlan& plan, const std::function<void(const SoakResult&)>& watch);

// Counts, times and the sites that missed the accuracy, for the terminal.
std::string soak_summary(const std::vector<SoakResult>& results);

}  // namespace splicewright
