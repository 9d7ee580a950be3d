// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/closed_slits.h"

#include <algorithm>
#include <cmath>

namespace splicewright
{

std::optional<ClosedSlits> close_slits(Case& asked, double closes)
{
    if (!asked.sleeve) return std::nullopt;
    double narrowest = INFINITY;
    for (const Side side : both_sides)
    {
        const double gap = asked.sleeve->clearance[index(side)].value() / 2;
        if (asked.sleeve->slit[index(side)] != SlitState::open || closes <= gap) continue;
        asked.sleeve->slit[index(side)] = SlitState::snug;
        narrowest = std::min(narrowest, gap);
    }
    if (!std::isfinite(narrowest)) return std::nullopt;
    return ClosedSlits{closes, narrowest};
}

}  // namespace splicewright
