// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/tolerances.h"

#include <fmt/format.h>

#include <utility>

#include "app/sample_points.h"
#include "cases/key_kinds.h"
#include "cases/read_case.h"
#include "cases/units.h"

namespace splicewright
{
namespace
{

struct Moved
{
    Case base;
    std::filesystem::path case_file;
    Accuracy accuracy;
    PoolPlan pool;
    OptionStore* store;
    CompareWatch watch;
};

// The case as it stands, each key at both ends, the corners, the samples.
std::uint64_t n_runs(std::size_t n_keys, const SamplePlan& samples)
{
    const std::uint64_t corners = n_keys <= most_tolerances_for_corners ? std::uint64_t{1} << n_keys : 1;
    return 1 + 2 * n_keys + corners + static_cast<std::uint64_t>(samples.n);
}

std::vector<StudyOption> options_of(const Moved& moved, const std::vector<Variation>& variations, bool together = false)
{
    Study study = study_from(moved.base, moved.case_file, variations, moved.accuracy);
    study.together = together;
    const Computed computed = compute(study, {}, moved.pool, *moved.store, moved.watch);
    std::vector<StudyOption> options;
    for (std::uint64_t index = 0; index < study.size(); ++index)
        options.push_back(option_at(study, index, outcome_in(*moved.store, study, index, computed)));
    return options;
}

// A value written with +- and what moves it.
struct Movable
{
    Tolerance tolerance;
    Dimension dimension;
    // At a place from 0, the lower end, to 1.
    [[nodiscard]] std::string literal(double place) const
    {
        const double value = tolerance.nominal + (2 * place - 1) * tolerance.plus_minus;
        return fmt::format("\"{}\"", in_words(value, dimension));
    }
};

Variation both_ends(const Movable& movable)
{
    return {movable.tolerance.field, {movable.literal(0), movable.literal(1)}};
}

void judge_samples(const Moved& moved, const std::vector<Movable>& movables, const SamplePlan& plan,
                   ToleranceAnswer& answer)
{
    answer.sampled.seed = plan.seed;
    if (plan.n == 0) return;
    std::vector<Variation> sampled;
    for (const Movable& movable : movables) sampled.push_back({movable.tolerance.field, {}});
    for (const std::vector<double>& point : sample_points(plan.n, movables.size(), plan.seed))
        for (std::size_t key = 0; key < movables.size(); ++key)
            sampled[key].values.push_back(movables[key].literal(point[key]));
    for (const StudyOption& option : options_of(moved, sampled, true))
    {
        ++answer.sampled.n;
        if (option.outcome.end != OptionEnd::judged) ++answer.sampled.n_not_judged;
        else if (option.outcome.passes) ++answer.sampled.n_pass;
        answer.some_failed |= option.outcome.end == OptionEnd::failed;
    }
}

// Each key at the end that uses more; the lower one where neither was judged.
std::vector<Variation> worse_ends(const std::vector<Variation>& ends, const std::vector<ToleranceEffect>& effects)
{
    std::vector<Variation> corner;
    for (std::size_t key = 0; key < ends.size(); ++key)
    {
        const OptionOutcome &low = effects[key].low, &high = effects[key].high;
        const bool takes_high =
            high.end == OptionEnd::judged && (low.end != OptionEnd::judged || high.utilisation > low.utilisation);
        corner.push_back({ends[key].key, {ends[key].values[takes_high ? 1 : 0]}});
    }
    return corner;
}

void judge_corners(const Moved& moved, const std::vector<Variation>& ends, ToleranceAnswer& answer)
{
    answer.every_corner = ends.size() <= most_tolerances_for_corners;
    for (const StudyOption& option : options_of(moved, answer.every_corner ? ends : worse_ends(ends, answer.effects)))
    {
        if (option.outcome.end != OptionEnd::judged)
        {
            answer.some_failed |= option.outcome.end == OptionEnd::failed;
            answer.not_judged.push_back(fmt::format("Corner {} ({}): {}", key_values_text(answer.keys, option.values),
                                                    name_of(option.outcome.end), option.outcome.reason));
        }
        else if (answer.corner.outcome.end != OptionEnd::judged ||
                 option.outcome.utilisation > answer.corner.outcome.utilisation)
            answer.corner = option;
    }
}

}  // namespace

Result<ToleranceAnswer> tolerance_answer(const std::filesystem::path& case_file, const Accuracy& accuracy,
                                         const PoolPlan& pool, OptionStore& store, const SamplePlan& samples,
                                         const ToleranceWatch& watch)
{
    const Result<Case> base = read_case_file(case_file);
    if (!base.has_value()) return base.problems();
    const Moved moved{base.value(), case_file, accuracy, pool, &store, watch.run};
    ToleranceAnswer answer;
    std::vector<Movable> movables;
    std::vector<Variation> ends;
    for (const Tolerance& tolerance : base.value().tolerances)
    {
        const auto kind = kind_of_key(tolerance.field);
        if (kind && kind->form != KeyForm::group) movables.push_back({tolerance, kind->dimension});
        else answer.left_out.push_back(tolerance.field);
    }
    for (const Movable& movable : movables) ends.push_back(both_ends(movable));
    if (ends.empty())
        return std::vector<Problem>{{case_file.string(), 0, 0, "", "",
                                     "has no value with a tolerance that can be moved",
                                     "write one, as in leg = \"6 mm +- 1 mm\""}};
    watch.planned(n_runs(ends.size(), samples));
    answer.nominal = options_of(moved, {}).front().outcome;
    for (const Variation& end : ends)
    {
        answer.keys.push_back(end.key);
        const std::vector<StudyOption> options = options_of(moved, {end});
        answer.effects.push_back(
            {end.key, plain_value(end.values[0]), plain_value(end.values[1]), options[0].outcome, options[1].outcome});
    }
    judge_corners(moved, ends, answer);
    judge_samples(moved, movables, samples, answer);
    return answer;
}

}  // namespace splicewright
