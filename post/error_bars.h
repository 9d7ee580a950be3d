// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"
#include "solver/meridian.h"

namespace splicewright
{

// One number of an answer with its error bar, in house units.
struct BarredNumber
{
    std::string kind;  // "notch stress", "share of the sleeve", ...
    std::string name;  // "bar-toe.left bending principal"
    double value = 0, error = 0;
    double whole = 0;  // what the load would do to a plain bar, or to a part that carries all of it
};

// All numbers of an answer that carry a bar, in a fixed order.
std::vector<BarredNumber> barred_numbers(const Case& asked, const MeridianAnswer& answer);

enum class BarVerdict
{
    within,    // the true error is no larger than the bar, or below any meaning
    beyond,    // it is larger
    left_out,  // the reference is not known well enough to tell
};

// A number with a bar beside one that is far more exact. Percent of the reference, or of 5 % of the whole if larger.
struct BarTrial
{
    std::string kind, name, case_name;
    double bar_pct = 0, off_pct = 0, reference_bar_pct = 0;
    BarVerdict verdict = BarVerdict::left_out;
};

// Compares number by number; those that the load leaves unstressed are not among the trials.
// Both answers are of one case, so their numbers are the same ones.
std::vector<BarTrial> bar_trials(const std::string& case_name, const std::vector<BarredNumber>& numbers,
                                 const std::vector<BarredNumber>& references);

// What one asked accuracy came to.
struct BarStudy
{
    double accuracy_pct = 0;
    int n_cases = 0;
    int n_reached = 0;             // answers that reached the asked accuracy
    int n_references_reached = 0;  // references that reached a twentieth of it
    std::vector<std::string> failures;
    std::vector<BarTrial> trials;        // of random cases
    std::vector<BarTrial> exact_trials;  // of bodies with an exact solution
};

struct BarTally
{
    int n_within = 0, n_beyond = 0, n_left_out = 0;
    double median_ratio = 0;  // bar over true error, of the numbers with a true error that has a meaning; 0 without any

    [[nodiscard]] int n_compared() const { return n_within + n_beyond; }
    [[nodiscard]] double share_within() const;  // 0 .. 1, of those compared
};
BarTally tally(const std::vector<BarTrial>& trials, const std::string& kind);  // of all kinds when empty

// The goals: 95 of 100 within, and a median ratio under 4.
bool meets_goal(const BarStudy& study);

// For the terminal.
std::string bar_study_text(const BarStudy& study);

// The whole of docs/error-bars.md.
std::string bar_study_document(const std::vector<BarStudy>& studies, const std::string& command,
                               const std::string& version);

}  // namespace splicewright
