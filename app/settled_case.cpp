// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/settled_case.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/shape_limits.h"

namespace splicewright
{

std::optional<std::string> close_slits(Case& asked, double closes)
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
    return fmt::format(
        "the slit closes under the peak load (bar and sleeve move {:.3f} mm towards each other, the gap is "
        "{:.3f} mm): solved with the faces free and with them touching, the worse counts",
        closes, narrowest);
}

bool toes_are_reference(const Case& asked)
{
    return !asked.sleeve || asked.sleeve->weld.toe_radius == reference_notch_radius;
}

}  // namespace splicewright
