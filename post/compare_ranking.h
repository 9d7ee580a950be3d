// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "post/option_outcome.h"

namespace splicewright
{

// One option of a study: where it stands, what its keys are, what became of it.
struct StudyOption
{
    std::uint64_t index = 0;
    std::vector<std::string> values;  // in the order of the study's keys, without quotes
    OptionOutcome outcome;
    bool non_dominated = false;  // post/trade_off.h; known once the whole study is
};

// "sleeve.length = 60 mm, sleeve.wall = 5 mm"; as many keys as values.
std::string key_values_text(const std::vector<std::string>& keys, const std::vector<std::string>& values);

constexpr double unmoved_share = 0.005;  // of the largest utilisation: less is no effect of a key, judgement

// With the factor asked on all stresses.
bool passes_with(const OptionOutcome& outcome, double reserve);

// Options that pass come first, the lightest of them foremost; then those that do not, the least used foremost. Equals
// keep the order of the study.
bool ranks_before(const StudyOption& first, const StudyOption& second, double reserve);

struct StudyCounts
{
    std::uint64_t options = 0, passing = 0, not_passing = 0, invalid = 0, failed = 0;
    [[nodiscard]] std::uint64_t judged() const { return passing + not_passing; }
};

// The first of a study however many there are: takes options one by one and keeps a few.
class Ranking
{
public:
    explicit Ranking(double reserve, std::size_t n_kept = 20, std::size_t n_examples = 10);
    void add(StudyOption option);
    [[nodiscard]] const std::vector<StudyOption>& best() const { return best_; }          // in rank order
    [[nodiscard]] const std::vector<StudyOption>& examples() const { return examples_; }  // the first not judged
    [[nodiscard]] const StudyCounts& counts() const { return counts_; }
    [[nodiscard]] double reserve() const { return reserve_; }
    // Whether one check governs all that were judged, two at least, and its utilisation stays within `unmoved_share`.
    [[nodiscard]] bool is_unmoved() const;

private:
    double reserve_;
    std::size_t n_kept_, n_examples_;
    std::vector<StudyOption> best_, examples_;
    StudyCounts counts_;
    std::string check_;  // of the first that was judged
    bool same_check_ = true;
    double least_used_ = 0, most_used_ = 0;
};

}  // namespace splicewright
