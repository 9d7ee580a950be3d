// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/meridian_solution.h"

#include <utility>

#include "app/settled_case.h"
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

void reduce_to_stiffness(Material& material)
{
    Material bare;
    bare.elastic_modulus = material.elastic_modulus;
    bare.poisson_ratio = material.poisson_ratio;
    material = bare;
}

}  // namespace

Accuracy for_information(const Accuracy& accuracy) { return {3 * accuracy.target_pct, accuracy.most_nodes}; }

MeridianSolution meridian_solution(const Case& asked, const Scenario& scenario, const Accuracy& accuracy)
{
    SettledAnswer settled = settled_meridian_answer(asked, scenario, accuracy, peak_load(asked));
    MeridianSolution solved;
    if (settled.asked.sleeve) solved.slit = settled.asked.sleeve->slit;
    solved.closed = settled.closed;
    solved.closing = settled.closing;
    solved.answer = std::move(settled.answer);
    if (!toes_are_reference(asked))
        solved.notched = with_notches(settled.asked, scenario, reference_notch_radius, accuracy);
    if (has_thin_wall(asked))
        solved.small = with_notches(settled.asked, scenario, small_notch_radius, for_information(accuracy));
    if (asked.joint && cycles(asked.load))
        solved.intensity = stress_intensities(settled.asked, scenario, for_information(accuracy));
    return solved;
}

LastSolution::Origin LastSolution::origin(const Case& asked, const Scenario& scenario, const Accuracy& accuracy)
{
    Origin origin{asked.bar, asked.joint, asked.sleeve, scenario, accuracy, cycles(asked.load)};
    for (std::optional<Bar>& bar : origin.bar)
        if (bar) reduce_to_stiffness(bar->material);
    if (origin.joint) reduce_to_stiffness(origin.joint->filler);
    if (origin.sleeve)
    {
        reduce_to_stiffness(origin.sleeve->material);
        reduce_to_stiffness(origin.sleeve->weld.filler);
    }
    return origin;
}

// Whether the peak load of the case leaves the slits as they were solved.
bool LastSolution::holds_for(const Case& asked)
{
    Case settled = asked;
    const std::optional<ClosedSlits> closed = close_slits(settled, solved_.closing.by(peak_load(asked)));
    if (settled.sleeve && settled.sleeve->slit != solved_.slit) return false;
    solved_.closed = closed;
    return true;
}

const MeridianSolution& LastSolution::of(const Case& asked, const Scenario& scenario, const Accuracy& accuracy)
{
    Origin now = origin(asked, scenario, accuracy);
    if (origin_ == now && holds_for(asked)) return solved_;
    solved_ = meridian_solution(asked, scenario, accuracy);
    origin_ = std::move(now);
    ++n_solved_;
    return solved_;
}

}  // namespace splicewright
