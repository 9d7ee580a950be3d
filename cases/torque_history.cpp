// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/torque_history.h"

#include <algorithm>

#include "cases/cycle_bins.h"
#include "cases/history_rows.h"
#include "cases/rainflow.h"

namespace splicewright
{
namespace
{

void add(CycleBins& bins, const std::vector<RainflowCycle>& cycles, double times)
{
    for (const RainflowCycle& cycle : cycles)
        bins.add(cycle.mean - cycle.range / 2, cycle.mean + cycle.range / 2, cycle.count * times);
}

// Rounding goes no further than the history itself.
std::vector<TorqueBlock> blocks_of(const CycleBins& bins, const TorqueHistory& summary)
{
    std::vector<TorqueBlock> blocks;
    for (const auto& [ends, count] : bins.counts())
        if (count > 0)
            blocks.push_back({"history", std::max(NewtonMillimetre(ends.first), summary.lowest),
                              std::min(NewtonMillimetre(ends.second), summary.highest), count, BlockOrigin::history});
    return blocks;
}

}  // namespace

Result<CountedHistory> counted_history(std::istream& stream, const std::string& file, double repeats)
{
    EXPECTS(repeats >= 1);
    HistoryRows rows(stream, file);
    RainflowCounter counter;
    CycleBins bins(most_history_blocks);
    CountedHistory counted;
    TorqueHistory& summary = counted.summary;
    double start = 0;
    while (const auto row = rows.next())
    {
        const NewtonMillimetre torque(row->torque);
        const bool is_first = rows.n_rows() == 1;
        if (is_first) start = row->time;
        summary.lowest = is_first ? torque : std::min(summary.lowest, torque);
        summary.highest = is_first ? torque : std::max(summary.highest, torque);
        summary.duration = row->time - start;
        add(bins, counter.next(row->torque), repeats);
    }
    std::vector<Problem> problems = rows.problems();
    if (problems.empty() && summary.lowest == summary.highest)
        problems.push_back({file, 0, 0, "torque_history", "",
                            rows.n_rows() < 2 ? "has fewer than two rows of values" : "never changes its torque",
                            "a history needs at least two rows with different torques"});
    if (!problems.empty()) return problems;
    add(bins, counter.seam(), repeats - 1);
    add(bins, counter.rest(), 1);
    counted.blocks = blocks_of(bins, summary);
    summary.file = file;
    summary.rows = rows.n_rows();
    summary.repeats = repeats;
    summary.n_blocks = counted.blocks.size();
    summary.bin_width = NewtonMillimetre(bins.width());
    for (const TorqueBlock& block : counted.blocks) summary.cycles += block.count;
    return counted;
}

}  // namespace splicewright
