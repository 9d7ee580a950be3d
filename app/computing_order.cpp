// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/computing_order.h"

#include <algorithm>

#include "cases/key_kinds.h"
#include "cases/problem.h"

namespace splicewright
{

ComputingOrder::ComputingOrder(const Study& study)
{
    if (study.together)
    {
        n_runs_ = study.size();
        keys_.push_back({n_runs_, 1});
        return;
    }
    std::vector<Key> judged;
    std::uint64_t step = 1;
    for (std::size_t k = study.variations.size(); k-- > 0;)
    {
        const Variation& variation = study.variations[k];
        const bool is_judged = is_only_judged(variation.key);
        (is_judged ? judged : keys_).push_back({variation.values.size(), step});
        (is_judged ? run_length_ : n_runs_) *= variation.values.size();
        step *= variation.values.size();
    }
    std::reverse(keys_.begin(), keys_.end());
    keys_.insert(keys_.end(), judged.rbegin(), judged.rend());
}

std::uint64_t ComputingOrder::index_at(std::uint64_t run, std::uint64_t place) const
{
    EXPECTS(run < n_runs_ && place < run_length_);
    std::uint64_t position = run * run_length_ + place, left = n_runs_ * run_length_, index = 0;
    for (const Key& key : keys_)
    {
        left /= key.n_values;
        index += position / left * key.step;
        position %= left;
    }
    return index;
}

std::uint64_t ComputingOrder::run_of(std::uint64_t index) const
{
    std::uint64_t position = 0;
    for (const Key& key : keys_) position = position * key.n_values + index / key.step % key.n_values;
    return position / run_length_;
}

}  // namespace splicewright
