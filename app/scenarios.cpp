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

namespace splicewright
{
namespace
{

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

// The case with its slits as the peak load finds them.
Case with_slits(const Case& asked, const std::array<SlitState, 2>& slit)
{
    Case settled = asked;
    if (settled.sleeve) settled.sleeve->slit = slit;
    return settled;
}

// solved: of this case.
Judgement judged_by_meridian(const Case& asked, MeridianSolution solved, const ModelUse& use)
{
    Judgement result;
    result.answer = std::move(solved.answer);
    if (solved.closed) result.notes.push_back(closed_note(*solved.closed));
    result.checks = checks_of(asked, {result.answer, solved.notched ? *solved.notched : result.answer,
                                      solved.small ? &*solved.small : nullptr});
    if (solved.intensity)
    {
        const CrackChecks cracks = crack_checks(asked, result.answer, *solved.intensity);
        result.checks.insert(result.checks.end(), cracks.rows.begin(), cracks.rows.end());
        result.crack_growth = cracks.growth;
    }
    if (models_taken(asked, use.choice).solid) add_solid(result, with_slits(asked, solved.slit), use);
    return result;
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

Judgement judged(const Case& asked, const Scenario& scenario, const Accuracy& accuracy, const ModelUse& use)
{
    if (!models_taken(asked, use.choice).meridian) return judged_by_solid(asked, scenario, accuracy, use);
    return judged_by_meridian(asked, meridian_solution(asked, scenario, accuracy), use);
}

Judgement judged(const Case& asked, const Scenario& scenario, const Accuracy& accuracy, const ModelUse& use,
                 LastSolution& last)
{
    if (!models_taken(asked, use.choice).meridian) return judged_by_solid(asked, scenario, accuracy, use);
    return judged_by_meridian(asked, last.of(asked, scenario, accuracy), use);
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
                          if (n_threads == 1 && models_taken(asked, use.choice).solid)
                              use.tell(fmt::format("Solid model {} of {}: {} ...", i + 1, all.size(),
                                                   i == 0 ? "sound splice" : changed[i - 1].scenario.name));
                          all[i] = i == 0 ? judged(asked, sound_splice(), accuracy, sound)
                                          : judged(changed[i - 1].asked, changed[i - 1].scenario,
                                                   for_information(accuracy), scenario);
                      });
    return all;
}

}  // namespace splicewright
