// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/find_value.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "cases/key_kinds.h"
#include "cases/units.h"

namespace splicewright
{
namespace
{

constexpr double tolerance_of_range = 1e-3;
constexpr double finest_of_value = 1e-5;  // texts of quantities hold six digits

const Variation* variation_of(const Study& study, const std::string& key)
{
    const auto found = std::find_if(study.variations.begin(), study.variations.end(),
                                    [&](const Variation& variation) { return variation.key == key; });
    return found == study.variations.end() ? nullptr : &*found;
}

std::vector<KeyLine::Point> samples_of(const Study& study, const FindPlan& plan, OptionStore& store,
                                       const Computed& computed)
{
    const Dimension dimension = kind_of_key(plan.key)->dimension;
    std::vector<KeyLine::Point> samples;
    for (std::uint64_t index = 0; index < study.size(); ++index)
    {
        const std::string words = plain_value(variation_of(study, plan.key)->values[index]);
        samples.push_back({value_of(words, dimension), words, outcome_in(store, study, index, computed)});
    }
    sort_by_value(samples);
    return samples;
}

// The study at other values of the key.
Study moved(const Study& study, const std::string& key, std::vector<std::string> values)
{
    Study other = study;
    for (Variation& variation : other.variations)
        if (variation.key == key)
        {
            variation.values = std::move(values);
            break;
        }
    return other;
}

bool meets(const KeyLine::Point& point, double target) { return point.outcome.utilisation <= target; }

bool is_open(const Search::Stretch& stretch, double tolerance)
{
    return stretch.stopped.empty() && stretch.high.value - stretch.low.value > tolerance;
}

// Judges the middle of every open stretch at once.
void halve(const Study& study, const PoolPlan& pool, OptionStore& store, Search& search)
{
    const Dimension dimension = kind_of_key(search.key)->dimension;
    std::vector<Search::Stretch*> open;
    std::vector<std::string> middles;
    for (Search::Stretch& stretch : search.stretches)
        if (is_open(stretch, search.tolerance))
        {
            open.push_back(&stretch);
            middles.push_back(in_words((stretch.low.value + stretch.high.value) / 2, dimension));
        }
    std::vector<std::string> literals;
    for (const std::string& middle : middles) literals.push_back(fmt::format("\"{}\"", middle));
    const Study between = moved(study, search.key, literals);
    const Computed computed = compute(between, {}, pool, store);
    for (std::size_t at = 0; at < open.size(); ++at)
    {
        const KeyLine::Point middle{value_of(middles[at], dimension), middles[at],
                                    outcome_in(store, between, at, computed)};
        if (middle.outcome.end != OptionEnd::judged)
            open[at]->stopped = fmt::format("{} could not be judged: {}", middle.words, middle.outcome.reason);
        else if (meets(middle, search.target) == meets(open[at]->low, search.target)) open[at]->low = middle;
        else open[at]->high = middle;
    }
}

}  // namespace

std::vector<Problem> find_problems(const Study& study, const FindPlan& plan)
{
    const auto problem = [&](std::string rule, std::string fix) {
        return std::vector<Problem>{{"", 0, 0, "--find", plan.key, std::move(rule), std::move(fix)}};
    };
    const Variation* variation = variation_of(study, plan.key);
    if (variation == nullptr)
        return problem("must be a key of the study, whose values are the samples",
                       fmt::format("--vary {}=FROM..TO:COUNT", plan.key));
    const auto kind = kind_of_key(plan.key);
    if (!kind || kind->form != KeyForm::quantity) return problem("must be a key with a unit", "--find sleeve.length");
    if (variation->values.size() < 2)
        return problem("needs at least two values to look between", fmt::format("--vary {}=FROM..TO:7", plan.key));
    if (study.size() != variation->values.size())
        return problem("must be the only key with several values", "give one value to each of the others");
    if (plan.tolerance.empty()) return {};
    const Result<Measurement> read = measurement(plan.tolerance, kind->dimension);
    if (!read.has_value())
        return {{"", 0, 0, "--tolerance", fmt::format("\"{}\"", plan.tolerance), read.problems().front().rule,
                 fmt::format("--tolerance \"{}\"", read.problems().front().fix)}};
    double largest = 0;
    for (const std::string& value : variation->values)
        largest = std::max(largest, std::abs(value_of(plain_value(value), kind->dimension)));
    if (read.value().value < finest_of_value * largest)
        return {{"", 0, 0, "--tolerance", fmt::format("\"{}\"", plan.tolerance),
                 fmt::format("must be at least {}, a hundred-thousandth of the largest value",
                             in_words(finest_of_value * largest, kind->dimension)),
                 fmt::format("--tolerance \"{}\"", in_words(10 * finest_of_value * largest, kind->dimension))}};
    return {};
}

Search search_value(const Study& study, const FindPlan& plan, const PoolPlan& pool, OptionStore& store,
                    const Computed& computed)
{
    EXPECTS(find_problems(study, plan).empty());
    Search search;
    search.key = plan.key;
    search.target = plan.target;
    search.samples = samples_of(study, plan, store, computed);
    const double range = search.samples.back().value - search.samples.front().value;
    const Dimension dimension = kind_of_key(plan.key)->dimension;
    search.tolerance = plan.tolerance.empty() ? tolerance_of_range * range : value_of(plan.tolerance, dimension);
    search.tolerance_words = in_words(search.tolerance, dimension);
    const KeyLine::Point* before = nullptr;
    for (const KeyLine::Point& sample : search.samples)
    {
        if (sample.outcome.end != OptionEnd::judged) continue;
        if (before != nullptr && meets(*before, plan.target) != meets(sample, plan.target))
            search.stretches.push_back({*before, sample, {}});
        before = &sample;
    }
    while (std::any_of(search.stretches.begin(), search.stretches.end(),
                       [&](const Search::Stretch& stretch) { return is_open(stretch, search.tolerance); }))
        halve(study, pool, store, search);
    return search;
}

}  // namespace splicewright
