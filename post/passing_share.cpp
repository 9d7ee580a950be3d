// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/passing_share.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/problem.h"
#include "post/number_words.h"

namespace splicewright
{
namespace
{

constexpr double confidence = 0.95;  // common practice, no source

// Probability of at most k successes in n trials of probability p.
double at_most(int k, int n, double p)
{
    if (p <= 0) return 1;
    if (p >= 1) return k >= n ? 1 : 0;
    double sum = 0;
    for (int i = 0; i <= k; ++i)
        sum += std::exp(std::lgamma(n + 1) - std::lgamma(i + 1) - std::lgamma(n - i + 1) + i * std::log(p) +
                        (n - i) * std::log1p(-p));
    return std::min(sum, 1.0);
}

// Where a falling function of the share passes `level`.
template <class Function>
double passage(const Function& falling, double level)
{
    double low = 0, high = 1;
    for (int i = 0; i < 60; ++i)
    {
        const double middle = (low + high) / 2;
        (falling(middle) > level ? low : high) = middle;
    }
    return (low + high) / 2;
}

}  // namespace

Interval share_interval(int n_pass, int n, double asked)
{
    EXPECTS(n > 0 && n_pass >= 0 && n_pass <= n && asked > 0 && asked < 1);
    const double tail = (1 - asked) / 2;
    Interval interval;
    if (n_pass > 0) interval.low = passage([&](double p) { return at_most(n_pass - 1, n, p); }, 1 - tail);
    if (n_pass < n) interval.high = passage([&](double p) { return at_most(n_pass, n, p); }, tail);
    return interval;
}

std::string sampled_text(const SampledParts& parts)
{
    if (parts.n == 0) return "As built: no parts were sampled.";
    const Interval share = share_interval(parts.n_pass, parts.n, confidence);
    std::string text = fmt::format(
        "As built: {} of {} sampled parts pass; the share behind it lies between {} and {} with {:g} % confidence.",
        parts.n_pass, parts.n, percent(share.low, 3), percent(share.high, 3), 100 * confidence);
    if (parts.n_not_judged > 0)
        text += fmt::format(" {} of them break a rule or could not be computed, and count as not passing.",
                            parts.n_not_judged);
    return text + fmt::format(
                      " Every value is taken as equally likely anywhere between its ends and independent of "
                      "the others (JCGM 100:2008, 4.3.7, from memory: verify); quasi-random points, seed {}.",
                      parts.seed);
}

}  // namespace splicewright
