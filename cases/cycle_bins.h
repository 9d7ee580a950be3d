// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstddef>
#include <map>
#include <utility>

namespace splicewright
{

// Cycles by lowest and highest value, in at most so many bins. While they fit each value is kept as it is; then both
// ends are rounded outward to a grid that widens by powers of two, so that no range ever shrinks.
// Judgement: outward rounding, to err on the safe side.
class CycleBins
{
public:
    explicit CycleBins(std::size_t most) : most_(most) {}

    void add(double low, double high, double count);

    [[nodiscard]] const std::map<std::pair<double, double>, double>& counts() const { return counts_; }  // {low, high}
    [[nodiscard]] double width() const { return width_; }  // 0: no rounding

private:
    std::map<std::pair<double, double>, double> counts_;
    std::size_t most_;
    double width_ = 0;
};

}  // namespace splicewright
