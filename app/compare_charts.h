// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <set>
#include <tuple>
#include <vector>

#include "app/study.h"
#include "post/study_charts.h"

namespace splicewright
{

// Where the options of a study lie by mass and merit, on a raster that grows coarser with their number: a bounded
// number of places, however many options there are.
class Cloud
{
public:
    explicit Cloud(Merit merit) : merit_(merit) {}
    void add(const OptionOutcome& outcome, double reserve);
    [[nodiscard]] std::vector<TradeOffChart::Place> places() const;

private:
    Merit merit_;
    std::set<std::tuple<long, long, bool>> cells_;
};

// Reads the outcome of one option.
using OutcomeOf = std::function<OptionOutcome(std::uint64_t index)>;

// utilisation: against the first key with numbers, a line for each value of another one; trade-off: mass against life;
// heat-map: the first two keys. Those that a study of such keys can have. Other keys stay as in option `anchor`.
std::vector<NamedSheet> study_sheets(const Study& study, double reserve, std::uint64_t anchor,
                                     const TradeOff& trade_off, const Cloud& cloud, const OutcomeOf& outcome_of,
                                     const TextWidth& width);

}  // namespace splicewright
