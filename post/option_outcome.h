// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>

#include "cases/problem.h"
#include "post/report.h"

namespace splicewright
{

// Raise it when a field of OptionOutcome changes its meaning: what was stored before is computed again then.
constexpr int option_outcome_version = 2;

enum class OptionEnd
{
    judged,
    invalid,  // no case: the combination breaks a rule
    failed,   // could not be computed
};
const char* name_of(OptionEnd end);

// What became of one option of a study: the numbers of `check` for the sound splice, to six digits.
struct OptionOutcome
{
    OptionEnd end = OptionEnd::failed;
    std::string reason;  // why it was not judged
    bool passes = false;
    std::string site, check;        // the row that governs
    double utilisation = 0;         // of that row, at the upper end of its error bar
    double error_pct = 0;           // of that row
    bool accuracy_reached = false;  // every site within the accuracy asked
    double strength = 0;            // worst utilisation in strength
    std::optional<double> fatigue;  // the same in fatigue; absent without cycles
    std::optional<double> life;     // multiples of the life asked for; absent: never fails, or no cycles
    double mass_kg = 0;             // of the finished shaft, from end to end as drawn
    double twist_deg = 0;           // end to end at the peak torque
};

OptionOutcome outcome_of(const Case& asked, const Judgement& sound);
OptionOutcome invalid_outcome(const std::vector<Problem>& problems);
OptionOutcome failed_outcome(const std::string& reason);

// One line, and back; nothing when the line is none of this version.
std::string outcome_line(const OptionOutcome& outcome);
std::optional<OptionOutcome> outcome_from_line(const std::string& line);

}  // namespace splicewright
