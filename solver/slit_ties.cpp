// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/slit_ties.h"

namespace splicewright
{

std::vector<Ties> slit_ties(const Case& asked)
{
    std::vector<Ties> brackets(1);
    if (!asked.sleeve) return brackets;
    const auto& slit = asked.sleeve->slit;
    if (slit[0] == SlitState::snug || slit[1] == SlitState::snug) brackets.emplace_back();
    for (std::size_t b = 0; b < brackets.size(); ++b)
        for (std::size_t i = 0; i < 2; ++i) switch (slit[i])
            {
                case SlitState::open: break;
                case SlitState::snug: brackets[b].slit[i] = b == 0 ? FaceTie::free : FaceTie::held; break;
                case SlitState::press: brackets[b].slit[i] = FaceTie::held; break;
                case SlitState::bonded: brackets[b].slit[i] = FaceTie::merged; break;
            }
    return brackets;
}

std::array<double, 2> press_overlap(const Case& asked)
{
    std::array<double, 2> overlap{0, 0};
    for (std::size_t i = 0; asked.sleeve && i < 2; ++i)
        if (asked.sleeve->slit[i] == SlitState::press) overlap[i] = -asked.sleeve->clearance[i].value() / 2;
    return overlap;
}

}  // namespace splicewright
