// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "solver/stress_intensity.h"
#include "solver/tip_integral.h"

namespace splicewright
{

// A tip that is computed: where it is and how far its surroundings are plain.
struct ReadTip
{
    CrackTip tip;
    double reach = 0;
    double difference = 0;
    bool lies_in_slit = false;
    double nominal[3] = {0, 0, 0};  // torsion, bending, axial: stress at the bar's end times sqrt(pi reach)
    TipAnswer answer;
};

// Tips that can be computed; the others are told in `absent`.
struct SortedTips
{
    std::vector<ReadTip> tips;
    std::vector<std::string> absent;
};

SortedTips sorted_tips(const CrackedSection& section);

// How the slit that ends at a tip hangs together; free at the land.
FaceTie tie_at(const ReadTip& tip, const Ties& ties);

}  // namespace splicewright
