// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/compare_ranking.h"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>
#include <utility>

#include "cases/problem.h"

namespace splicewright
{

std::string key_values_text(const std::vector<std::string>& keys, const std::vector<std::string>& values)
{
    EXPECTS(keys.size() == values.size());
    std::string text;
    for (std::size_t at = 0; at < keys.size(); ++at)
        text += fmt::format("{}{} = {}", at == 0 ? "" : ", ", keys[at], values[at]);
    return text;
}

bool passes_with(const OptionOutcome& outcome, double reserve)
{
    return outcome.end == OptionEnd::judged && outcome.passes && outcome.utilisation * reserve <= 1;
}

bool ranks_before(const StudyOption& first, const StudyOption& second, double reserve)
{
    const auto order = [&](const StudyOption& option)
    {
        const bool passes = passes_with(option.outcome, reserve);
        return std::tuple(!passes, passes ? option.outcome.mass_kg : option.outcome.utilisation,
                          option.outcome.utilisation, option.index);
    };
    return order(first) < order(second);
}

Ranking::Ranking(double reserve, std::size_t n_kept, std::size_t n_examples)
    : reserve_(reserve), n_kept_(n_kept), n_examples_(n_examples)
{
    EXPECTS(reserve > 0 && n_kept > 0);
}

bool Ranking::is_unmoved() const
{
    return counts_.judged() >= 2 && same_check_ && most_used_ - least_used_ <= unmoved_share * most_used_;
}

void Ranking::add(StudyOption option)
{
    ++counts_.options;
    if (option.outcome.end != OptionEnd::judged)
    {
        ++(option.outcome.end == OptionEnd::invalid ? counts_.invalid : counts_.failed);
        if (examples_.size() < n_examples_) examples_.push_back(std::move(option));
        return;
    }
    ++(passes_with(option.outcome, reserve_) ? counts_.passing : counts_.not_passing);
    const bool is_first = counts_.judged() == 1;
    const OptionOutcome& outcome = option.outcome;
    if (is_first) check_ = outcome.check;
    same_check_ = same_check_ && outcome.check == check_;
    least_used_ = is_first ? outcome.utilisation : std::min(least_used_, outcome.utilisation);
    most_used_ = is_first ? outcome.utilisation : std::max(most_used_, outcome.utilisation);
    const auto before = [&](const StudyOption& first, const StudyOption& second)
    { return ranks_before(first, second, reserve_); };
    best_.insert(std::upper_bound(best_.begin(), best_.end(), option, before), std::move(option));
    if (best_.size() > n_kept_) best_.pop_back();
}

}  // namespace splicewright
