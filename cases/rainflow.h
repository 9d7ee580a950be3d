// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

namespace splicewright
{

// A cycle of a history, in the unit of its samples; count 1, or 0.5 for a half cycle.
struct RainflowCycle
{
    double range = 0, mean = 0, count = 0;
    bool operator==(const RainflowCycle&) const = default;
};

// Counts a history sample by sample and remembers only what is still open (the residue).
// Source: [Amzallag1994], the rule of four points, from memory; with the open ranges as half cycles it gives the counts
// of [ASTM-E1049] 5.4.4, the rule of three points, which the tests hold it to.
class RainflowCounter
{
public:
    // The whole cycles that this finite sample closes; mostly none.
    std::vector<RainflowCycle> next(double sample);

    // The half cycles that stay open if the history ends here.
    [[nodiscard]] std::vector<RainflowCycle> rest() const;

    // The whole cycles that close each time the history is run once more, beside those inside it.
    [[nodiscard]] std::vector<RainflowCycle> seam() const;

private:
    std::vector<double> turning_;  // points still open; the last may yet move on
};

// Cycles of a whole history of finite samples, in the order in which they close.
std::vector<RainflowCycle> rainflow(const std::vector<double>& history);

}  // namespace splicewright
