// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/making_cut.h"

#include "cases/bar_shape.h"
#include "cases/check_making.h"
#include "cases/problem.h"

namespace splicewright
{

CutPlan cut_plan(const Case& asked)
{
    EXPECTS(asked.joint && asked.making && asked.bar[0] && asked.bar[1]);
    const Making& making = *asked.making;
    CutPlan plan;
    plan.drawn = drawn_length(asked);
    plan.overall = making.overall_length ? making.overall_length->value() : plan.drawn;
    plan.half_lap = asked.joint->half_lap.value();
    plan.root_gap = making.root_gap.value();
    plan.weld_shrink = making.weld_shrink.value();
    for (const Side side : both_sides)
    {
        const std::size_t at = index(side);
        plan.adjusted_by[at] = adjustment(asked, side);
        plan.first_section[at] = asked.bar[at]->sections.front().length.value() + plan.adjusted_by[at];
        plan.cut[at] = length_of(*asked.bar[at]) + plan.adjusted_by[at] + plan.half_lap / 2 +
                       (plan.weld_shrink - plan.root_gap) / 2;
    }
    if (making.plunge_available)
        plan.plunge = PlungeBudget{making.plunge_available->value(), making.plunge_used.value(),
                                   2 * cut_tolerance_mm + shrink_uncertainty * plan.weld_shrink};
    return plan;
}

}  // namespace splicewright
