// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/beyond_revolution.h"

#include <fmt/format.h>

#include "cases/units.h"

namespace splicewright
{

std::vector<BeyondRevolution> beyond_revolution(const Case& asked)
{
    std::vector<BeyondRevolution> found;
    if (!asked.joint) return found;
    const Joint& joint = *asked.joint;
    const auto length = [](Millimetre value) { return in_words(value.value(), Dimension::length); };
    const auto angle = [](Radian value) { return in_words(value.value(), Dimension::angle); };
    if (joint.half_lap.value() > 0 && joint.penetration)
        found.push_back({"joint.half_lap", length(joint.half_lap),
                         fmt::format("a half lap of {} with unfused faces", length(joint.half_lap)), true});
    if (joint.offset.value() > 0)
        found.push_back({"joint.offset", length(joint.offset),
                         fmt::format("an offset of {} between the bars", length(joint.offset)), true});
    if (joint.tilt.value() > 0)
        found.push_back(
            {"joint.tilt", angle(joint.tilt), fmt::format("a tilt of {} between the bars", angle(joint.tilt)), true});
    if (!asked.sleeve) return found;
    const SleeveWeld& weld = asked.sleeve->weld;
    if (!weld.goes_all_round())
        found.push_back({"sleeve.weld.coverage", angle(weld.coverage),
                         fmt::format("sleeve welds over {} of the circumference", angle(weld.coverage)), false});
    int plugs = 0;
    for (const PlugRing& ring : asked.sleeve->plugs) plugs += ring.count;
    if (plugs > 0)
        found.push_back({"sleeve.plug", fmt::format("{}", plugs),
                         fmt::format("{} plug weld{}", plugs, plugs == 1 ? "" : "s"), false});
    return found;
}

}  // namespace splicewright
