// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/scenarios.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "app/settled_case.h"
#include "app/side_by_side.h"
#include "app/solid_judgement.h"
#include "app/worker_pool.h"
#include "cases/shape_limits.h"
#include "post/notch_checks.h"
#include "post/site_loads.h"

namespace splicewright
{
namespace
{

bool cycles(const Load& load) { return !load.blocks.empty() || load.running_bending.value() > 0; }

// The scenario with all notches of one radius.
MeridianAnswer with_notches(const Case& asked, const Scenario& scenario, Millimetre radius, const Accuracy& accuracy)
{
    Scenario notched = scenario;
    notched.toe_radius = notched.root_radius = radius;
    return meridian_answer(asked, notched, accuracy);
}

// A butt that is fused to half the depth that was asked, all else as it was. Nothing where that leaves no room for the
// notch at the land's edge.
std::optional<WhatIf> half_penetration(const Case& asked)
{
    const double wall =
        std::min(asked.bar[0]->sections.front().diameter.value(), asked.bar[1]->sections.front().diameter.value()) / 2 -
        asked.bar[0]->bore.value() / 2;
    const double half = (asked.joint->penetration ? asked.joint->penetration->value() : wall) / 2;
    if (half < least_penetration.value()) return std::nullopt;
    WhatIf changed{asked, {}};
    changed.scenario.name = "half penetration";
    changed.asked.joint->penetration = Millimetre(half);
    return changed;
}

// What is left is the butt, with the plug welds where there are any.
std::optional<WhatIf> both_sleeve_welds_lost(const Case& asked)
{
    if (asked.sleeve->weld.goes_all_round() && asked.sleeve->plugs.empty()) return std::nullopt;
    WhatIf changed{asked, {}};
    changed.scenario.name = "both sleeve welds lost";
    changed.scenario.sleeve_weld_fused[0] = changed.scenario.sleeve_weld_fused[1] = false;
    if (asked.sleeve->plugs.empty()) changed.asked.sleeve.reset();
    return changed;
}

// settled: with its slits as the peak load finds them.
void judge_by_meridian(Judgement& result, const Case& asked, const Case& settled, const Accuracy& accuracy)
{
    const Scenario& scenario = result.answer.scenario;
    std::optional<MeridianAnswer> notched, small;
    if (!toes_are_reference(asked)) notched = with_notches(settled, scenario, reference_notch_radius, accuracy);
    if (has_thin_wall(asked)) small = with_notches(settled, scenario, small_notch_radius, for_information(accuracy));
    result.checks = checks_of(asked, {result.answer, notched ? *notched : result.answer, small ? &*small : nullptr});
    if (asked.joint && cycles(asked.load))
    {
        const CrackChecks cracks =
            crack_checks(asked, result.answer, stress_intensities(settled, scenario, for_information(accuracy)));
        result.checks.insert(result.checks.end(), cracks.rows.begin(), cracks.rows.end());
        result.crack_growth = cracks.growth;
    }
}

}  // namespace

Scenario sound_splice() { return {}; }

std::vector<WhatIf> what_ifs(const Case& asked)
{
    if (!asked.joint) return {};
    std::vector<WhatIf> list;
    if (asked.sleeve)
    {
        Scenario hidden, left, right;
        hidden.name = "hidden weld lost";
        hidden.butt_fused = false;
        left.name = "left sleeve weld lost";
        left.sleeve_weld_fused[0] = false;
        right.name = "right sleeve weld lost";
        right.sleeve_weld_fused[1] = false;
        for (const Scenario& lost : {hidden, left, right}) list.push_back({asked, lost});
        if (const auto both = both_sleeve_welds_lost(asked)) list.push_back(*both);
    }
    if (const auto shallow = half_penetration(asked)) list.push_back(*shallow);
    return list;
}

std::vector<std::string> what_if_notes(const Case& asked)
{
    std::vector<std::string> notes;
    if (asked.joint && !half_penetration(asked))
        notes.push_back(fmt::format(
            "Half penetration: not solved, half of the depth asked is less than the {:g} mm that the notch at the "
            "land's edge needs.",
            least_penetration.value()));
    if (asked.sleeve)
        notes.emplace_back(
            "Toes as sharp as allowed: counted already, every fatigue method takes the toe as the torch leaves it; a "
            "stated toe_radius only shapes the stress that is shown.");
    return notes;
}

Accuracy for_information(const Accuracy& accuracy) { return {3 * accuracy.target_pct, accuracy.most_nodes}; }

Judgement judged(const Case& asked, const Scenario& scenario, const Accuracy& accuracy, const ModelUse& use)
{
    const ModelsTaken models = models_taken(asked, use.choice);
    if (!models.meridian) return judged_by_solid(asked, scenario, accuracy, use);
    SettledAnswer settled = settled_meridian_answer(asked, scenario, accuracy, peak_load(asked));
    Judgement result;
    result.answer = std::move(settled.answer);
    if (settled.closed) result.notes.push_back(closed_note(*settled.closed));
    judge_by_meridian(result, asked, settled.asked, accuracy);
    if (models.solid) add_solid(result, settled.asked, use);
    return result;
}

std::vector<Judgement> all_judged(const Case& asked, const std::vector<WhatIf>& changed, const Accuracy& accuracy,
                                  const ModelUse& use)
{
    std::vector<Judgement> all(1 + changed.size());
    const int n_threads = models_taken(asked, use.choice).solid ? 1 : n_processors();
    ModelUse sound = use, scenario = use;
    sound.shown = SolidDetail::whole, scenario.shown = SolidDetail::thinned;
    done_side_by_side(all.size(), n_threads,
                      [&](std::size_t i)
                      {
                          all[i] = i == 0 ? judged(asked, sound_splice(), accuracy, sound)
                                          : judged(changed[i - 1].asked, changed[i - 1].scenario,
                                                   for_information(accuracy), scenario);
                      });
    return all;
}

}  // namespace splicewright
