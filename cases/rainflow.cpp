// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/rainflow.h"

#include <cmath>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

RainflowCycle cycle_between(double a, double b, double count) { return {std::abs(a - b), (a + b) / 2, count}; }

// Of the last four points the inner range is within both outer ones: it is a cycle, and what is around it goes on
// as if it had not been there.
bool closes(const std::vector<double>& points)
{
    const std::size_t n = points.size();
    if (n < 4) return false;
    const double before = std::abs(points[n - 3] - points[n - 4]), inner = std::abs(points[n - 2] - points[n - 3]),
                 after = std::abs(points[n - 1] - points[n - 2]);
    return inner <= before && inner <= after;
}

void add(std::vector<RainflowCycle>& cycles, const std::vector<RainflowCycle>& more)
{
    cycles.insert(cycles.end(), more.begin(), more.end());
}

}  // namespace

std::vector<RainflowCycle> RainflowCounter::next(double sample)
{
    EXPECTS(std::isfinite(sample));
    if (!turning_.empty() && sample == turning_.back()) return {};
    const std::size_t n = turning_.size();
    const bool goes_on = n >= 2 && (sample > turning_[n - 1]) == (turning_[n - 1] > turning_[n - 2]);
    if (goes_on) turning_.back() = sample;
    else turning_.push_back(sample);
    std::vector<RainflowCycle> closed;
    while (closes(turning_))
    {
        const auto end = turning_.end();
        closed.push_back(cycle_between(*(end - 3), *(end - 2), 1));
        turning_.erase(end - 3, end - 1);
    }
    return closed;
}

std::vector<RainflowCycle> RainflowCounter::rest() const
{
    std::vector<RainflowCycle> cycles;
    for (std::size_t i = 0; i + 1 < turning_.size(); ++i)
        cycles.push_back(cycle_between(turning_[i], turning_[i + 1], 0.5));
    return cycles;
}

std::vector<RainflowCycle> RainflowCounter::seam() const
{
    RainflowCounter again = *this;
    std::vector<RainflowCycle> cycles;
    for (const double point : turning_) add(cycles, again.next(point));
    return cycles;
}

std::vector<RainflowCycle> rainflow(const std::vector<double>& history)
{
    RainflowCounter counter;
    std::vector<RainflowCycle> cycles;
    for (const double sample : history) add(cycles, counter.next(sample));
    add(cycles, counter.rest());
    return cycles;
}

}  // namespace splicewright
