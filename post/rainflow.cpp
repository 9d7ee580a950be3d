// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/rainflow.h"

#include <cmath>
#include <utility>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

RainflowCycle cycle_between(double a, double b, double count) { return {std::abs(a - b), (a + b) / 2, count}; }

struct Reduced
{
    std::vector<RainflowCycle> closed;
    std::vector<double> open;
};

// The rule of three points on confirmed turning points: X the last range, Y the one before it.
// Y closes once X is not smaller: a half cycle when it holds the start, a whole one otherwise.
Reduced reduced(std::vector<double> points)
{
    std::vector<RainflowCycle> closed;
    while (points.size() >= 3)
    {
        const std::size_t n = points.size();
        const double X = std::abs(points[n - 1] - points[n - 2]), Y = std::abs(points[n - 2] - points[n - 3]);
        if (X < Y) break;
        if (n == 3)
        {
            closed.push_back(cycle_between(points[0], points[1], 0.5));
            points.erase(points.begin());
        }
        else
        {
            closed.push_back(cycle_between(points[n - 3], points[n - 2], 1));
            points.erase(points.end() - 3, points.end() - 1);
        }
    }
    return {std::move(closed), std::move(points)};
}

}  // namespace

std::vector<RainflowCycle> RainflowCounter::next(double sample)
{
    EXPECTS(std::isfinite(sample));
    if (!turning_.empty() && sample == turning_.back()) return {};
    const std::size_t n = turning_.size();
    const bool goes_on = n >= 2 && (sample > turning_[n - 1]) == (turning_[n - 1] > turning_[n - 2]);
    if (goes_on)
    {
        turning_.back() = sample;
        return {};
    }
    // The direction turns: the last point stays for good.
    Reduced now = reduced(std::move(turning_));
    turning_ = std::move(now.open);
    turning_.push_back(sample);
    return std::move(now.closed);
}

std::vector<RainflowCycle> RainflowCounter::rest() const
{
    const Reduced last = reduced(turning_);
    std::vector<RainflowCycle> cycles = last.closed;
    for (std::size_t i = 0; i + 1 < last.open.size(); ++i)
        cycles.push_back(cycle_between(last.open[i], last.open[i + 1], 0.5));
    return cycles;
}

std::vector<RainflowCycle> rainflow(const std::vector<double>& history)
{
    RainflowCounter counter;
    std::vector<RainflowCycle> cycles;
    for (const double sample : history)
        for (const RainflowCycle& cycle : counter.next(sample)) cycles.push_back(cycle);
    for (const RainflowCycle& cycle : counter.rest()) cycles.push_back(cycle);
    return cycles;
}

}  // namespace splicewright
