// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <string>

namespace splicewright
{

// Parts drawn at random between the ends of their tolerances.
struct SampledParts
{
    int n = 0, n_pass = 0;
    int n_not_judged = 0;  // break a rule or could not be computed; they do not pass
    std::uint64_t seed = 0;
};

struct Interval
{
    double low = 0, high = 1;
};

// Interval that holds the share behind n_pass of n independent trials with the given confidence, in (0, 1); exact.
// Source: [ClopperPearson1934]. Expects 0 <= n_pass <= n and 0 < n.
Interval share_interval(int n_pass, int n, double confidence);

// How many pass, the interval of the share behind it, how the values are spread.
std::string sampled_text(const SampledParts& parts);

}  // namespace splicewright
