// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "post/error_bars.h"

namespace splicewright
{

struct BarPlan
{
    std::uint64_t first_seed = 1;  // of the first random case; the next ones count on
    std::vector<double> accuracies_pct{5, 1, 0.2};
    std::vector<int> n_cases{200};  // one number for all accuracies, or one for each
    int n_processes = 1;
    double seconds_allowed = 600;  // for each case with its reference, by the clock
};

// One case solved to every accuracy of the plan and once on a mesh that is fine everywhere.
struct BarredCase
{
    std::string name;
    std::string failure;  // why there is nothing to compare; empty otherwise
    struct Answer
    {
        double accuracy_pct = 0;
        bool reached = false, reference_reached = false;
        std::vector<BarTrial> trials;
    };
    std::vector<Answer> answers;
    double seconds = 0;  // of computing
};

// In this process.
BarredCase barred_case(const std::string& name, const std::string& text, const std::vector<double>& accuracies_pct);

// Bodies with an exact solution.
std::vector<BarredCase> exact_cases(const std::vector<double>& accuracies_pct);

// Every random case in a child process of its own; `watch` sees each one once, in the order of the seeds.
std::vector<BarStudy> bar_studies(const BarPlan& plan, const std::function<void(const BarredCase&)>& watch);

}  // namespace splicewright
