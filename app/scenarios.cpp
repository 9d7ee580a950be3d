// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/scenarios.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "post/site_loads.h"

namespace splicewright
{
namespace
{

// The case as this scenario finds its slit.
struct SettledSlit
{
    Case asked;
    std::vector<std::string> notes;
};

SettledSlit settled_slit(const Case& asked, const Scenario& scenario)
{
    SettledSlit settled{asked, {}};
    const CombinedLoad load = peak_load(asked);
    const bool has_open =
        asked.sleeve && (asked.sleeve->slit[0] == SlitState::open || asked.sleeve->slit[1] == SlitState::open);
    if (!has_open || (load.bending == 0 && load.axial == 0)) return settled;
    const SlitClosing closing = slit_closing(asked, scenario);
    const double closes = closing.by_bending * std::abs(load.bending) + closing.by_axial * std::abs(load.axial);
    double narrowest = INFINITY;
    for (const Side side : both_sides)
    {
        const double gap = asked.sleeve->clearance[index(side)].value() / 2;
        if (asked.sleeve->slit[index(side)] != SlitState::open || closes <= gap) continue;
        settled.asked.sleeve->slit[index(side)] = SlitState::snug;
        narrowest = std::min(narrowest, gap);
    }
    if (std::isfinite(narrowest))
        settled.notes.push_back(
            fmt::format("the slit closes under the peak load (bar and sleeve move {:.3f} mm towards each other, the "
                        "gap is {:.3f} mm): solved with the faces free and with them touching, the worse counts",
                        closes, narrowest));
    return settled;
}

bool toes_are_reference(const Case& asked)
{
    return !asked.sleeve || asked.sleeve->weld.toe_radius == reference_notch_radius;
}

}  // namespace

Scenario sound_splice() { return {}; }

std::vector<Scenario> lost_welds(const Case& asked)
{
    if (!asked.sleeve) return {};
    Scenario hidden, left, right;
    hidden.name = "hidden weld lost";
    hidden.butt_fused = false;
    left.name = "left sleeve weld lost";
    left.sleeve_weld_fused[0] = false;
    right.name = "right sleeve weld lost";
    right.sleeve_weld_fused[1] = false;
    return {hidden, left, right};
}

Accuracy for_information(const Accuracy& accuracy) { return {3 * accuracy.target_pct, accuracy.most_nodes}; }

Judgement judged(const Case& asked, const Scenario& scenario, const Accuracy& accuracy)
{
    const SettledSlit settled = settled_slit(asked, scenario);
    Judgement result;
    result.answer = meridian_answer(settled.asked, scenario, accuracy);
    result.notes = settled.notes;
    if (toes_are_reference(asked)) result.checks = checks_of(asked, result.answer, result.answer);
    else
    {
        Scenario reference = scenario;
        reference.toe_radius = reference_notch_radius;
        result.checks = checks_of(asked, result.answer, meridian_answer(settled.asked, reference, accuracy));
    }
    return result;
}

}  // namespace splicewright
