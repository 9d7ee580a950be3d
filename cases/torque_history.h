// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <istream>
#include <string>
#include <vector>

#include "cases/case.h"
#include "cases/problem.h"

namespace splicewright
{

constexpr double greatest_history_torque = 1e9;    // N*mm, against slips of the unit: common practice, no source
constexpr std::size_t most_history_blocks = 4096;  // judgement: fine enough, and quick to add up

struct CountedHistory
{
    TorqueHistory summary;
    std::vector<TorqueBlock> blocks;  // by low, then high; mean torque kept
};

// Counts the cycles of a history that is run `repeats` >= 1 times, end to start; see rainflow.h and history_rows.h.
// Memory: the open turning points and at most most_history_blocks bins, whatever the length of the file.
Result<CountedHistory> counted_history(std::istream& stream, const std::string& file, double repeats);

}  // namespace splicewright
