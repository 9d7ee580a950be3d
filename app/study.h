// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "app/meridian_solution.h"
#include "app/model_use.h"
#include "cases/case.h"
#include "cases/option_text.h"
#include "cases/variation.h"
#include "post/compare_ranking.h"
#include "post/compare_table.h"
#include "solver/meridian.h"

namespace splicewright
{

// A case and the keys of it that change.
struct Study
{
    std::filesystem::path case_file;
    std::string case_text;
    std::vector<Variation> variations;
    Accuracy accuracy;
    ModelUse models;
    std::map<std::string, std::string> companion_hash;  // by name, of every torque history that an option may name
    std::string history;                                // that of the case itself; may be empty

    bool together = false;  // option n takes value n of every key, not every combination

    [[nodiscard]] std::uint64_t size() const;
    [[nodiscard]] std::vector<KeyValue> values_at(std::uint64_t index) const;
};

// From the words of --vary; without any, from [compare]. Every problem at once. `case_file` must be a case by itself.
Result<Study> study_of(const std::filesystem::path& case_file, const std::vector<std::string>& vary,
                       const Accuracy& accuracy);

// Of a case that is read already; expects variations without problems.
Study study_from(const Case& base, const std::filesystem::path& case_file, const std::vector<Variation>& variations,
                 const Accuracy& accuracy);

StudyOrigin origin_of(const Study& study, double reserve);

// What an outcome depends on beside case and accuracy.
struct ProgramVersion
{
    std::string program;
    int result = 0;
    std::string sources;  // their hash
};
ProgramVersion this_program();

// Hash of all that the outcome of an option depends on: its canonical text, the torque history that it names, the
// accuracy, the version and the sources.
std::string option_key(const Study& study, std::uint64_t index, const ProgramVersion& program);

// The key at work: an option as a case, judged. Never throws CannotCompute: that is an outcome.
// last: of the process, from option to option.
OptionOutcome judged_option(const Study& study, std::uint64_t index, LastSolution& last);

// The option as a case of its own, for people: its number in its title and in the name of its file, which stands beside
// that of the study.
Result<Case> option_case(const Study& study, std::uint64_t index);

StudyOption option_at(const Study& study, std::uint64_t index, OptionOutcome outcome);

}  // namespace splicewright
