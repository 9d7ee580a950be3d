// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>

namespace splicewright
{

enum class StressRelief
{
    none,             // as welded: case III of [Hobbacher2016] 3.5.1
    unconstrained,    // small, thin and welded without constraint: case II
    stress_relieved,  // the whole splice, after its last weld: case I
};

const char* name_of(StressRelief relief);  // "stress relieved"

// What the user asks of the fatigue of the welds, `[judgement]`; as it stands here: nothing asked.
struct Rating
{
    std::optional<double> survival;  // share of like welds that last; absent: that of the classes, 97.7 %
    double partial_factor = 1.35;    // on stress; safe life with high consequence
    std::string partial_factor_name = "safe life, high consequence";  // "stated" for a number
    StressRelief relief = StressRelief::none;
    double misalignment_factor = 1;  // on the range of normal stress of toes and butt
};

constexpr double survival_of_classes = 0.977;  // two standard deviations below the mean

// Standard deviations below the mean that a share of survivors stands for, to two decimals as tables have it; within
// 0.5 to 0.9999.
double deviations_below_mean(double survival);

}  // namespace splicewright
