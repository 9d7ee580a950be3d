// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/cycle_bins.h"

#include <cmath>

namespace splicewright
{
namespace
{

std::pair<double, double> widened(double low, double high, double width)
{
    if (width == 0) return {low, high};
    return {std::floor(low / width) * width, std::ceil(high / width) * width};
}

}  // namespace

void CycleBins::add(double low, double high, double count)
{
    counts_[widened(low, high, width_)] += count;
    while (counts_.size() > most_)
    {
        width_ = width_ == 0 ? 1 : 2 * width_;
        std::map<std::pair<double, double>, double> coarser;
        for (const auto& [ends, many] : counts_) coarser[widened(ends.first, ends.second, width_)] += many;
        counts_ = std::move(coarser);
    }
}

}  // namespace splicewright
