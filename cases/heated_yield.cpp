// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/heated_yield.h"

namespace splicewright
{
namespace
{

constexpr double hardest_cold_drawn = 240;  // HV, judgement: cold-drawn 1050 has 197 HB

}  // namespace

const std::vector<HeatedYield>& heated_yields()
{
    static const std::vector<HeatedYield> yields{
        {"normalised", 1.0, "normalised or hot-rolled: no softening taken"},
        {"hot-rolled", 1.0, "normalised or hot-rolled: no softening taken"},
        {"quenched and tempered", 0.75, "quenched and tempered steel softens beside a weld"},
        {"cold-drawn", 0.58, "falls back to the hot-rolled yield"},
        {"stress-relieved", 0.5, "cold-drawn tube falls back to the hot-rolled yield"},
        {"surface-hardened", 0.75,
         "the core is quenched and tempered and softens; the case beside a weld is not counted"},
    };
    return yields;
}

HeatedYield heated_yield_of_hardness(double vickers)
{
    if (vickers < hardest_cold_drawn)
        return {"not known", 0.58, "below 240 HV it may be cold-drawn, and falls back to the hot-rolled yield"};
    return {"not known", 0.75, "from 240 HV on it is taken as quenched and tempered, and softens beside a weld"};
}

}  // namespace splicewright
