// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/tolerances.h"

#include <fmt/format.h>

#include <utility>

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
};

std::vector<StudyOption> options_of(const Moved& moved, const std::vector<Variation>& variations)
{
    const Study study = study_from(moved.base, moved.case_file, variations, moved.accuracy);
    const Computed computed = compute(study, {}, moved.pool, *moved.store);
    std::vector<StudyOption> options;
    for (std::uint64_t index = 0; index < study.size(); ++index)
        options.push_back(option_at(study, index, outcome_in(*moved.store, study, index, computed)));
    return options;
}

Variation both_ends(const Tolerance& tolerance, Dimension dimension)
{
    const auto literal = [&](double value) { return fmt::format("\"{}\"", in_words(value, dimension)); };
    return {tolerance.field,
            {literal(tolerance.nominal - tolerance.plus_minus), literal(tolerance.nominal + tolerance.plus_minus)}};
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
                                         const PoolPlan& pool, OptionStore& store)
{
    const Result<Case> base = read_case_file(case_file);
    if (!base.has_value()) return base.problems();
    const Moved moved{base.value(), case_file, accuracy, pool, &store};
    ToleranceAnswer answer;
    std::vector<Variation> ends;
    for (const Tolerance& tolerance : base.value().tolerances)
    {
        const auto kind = kind_of_key(tolerance.field);
        if (kind && kind->form != KeyForm::group) ends.push_back(both_ends(tolerance, kind->dimension));
        else answer.left_out.push_back(tolerance.field);
    }
    if (ends.empty())
        return std::vector<Problem>{{case_file.string(), 0, 0, "", "",
                                     "has no value with a tolerance that can be moved",
                                     "write one, as in leg = \"6 mm +- 1 mm\""}};
    answer.nominal = options_of(moved, {}).front().outcome;
    for (const Variation& end : ends)
    {
        answer.keys.push_back(end.key);
        const std::vector<StudyOption> options = options_of(moved, {end});
        answer.effects.push_back(
            {end.key, plain_value(end.values[0]), plain_value(end.values[1]), options[0].outcome, options[1].outcome});
    }
    judge_corners(moved, ends, answer);
    return answer;
}

}  // namespace splicewright
