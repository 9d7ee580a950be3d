// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <filesystem>

#include "app/compare.h"
#include "post/tolerance_text.h"

namespace splicewright
{

// Corners are all judged up to so many tolerances, 64 corners; beyond that, only the one of the worse ends. Judgement.
constexpr std::size_t most_tolerances_for_corners = 6;

struct SamplePlan
{
    int n = 100;
    std::uint64_t seed = 1;
};

// What happens along the way, for a progress bar: how many runs there will be, then each of them.
struct ToleranceWatch
{
    std::function<void(std::uint64_t runs)> planned = [](std::uint64_t) {};
    CompareWatch run;
};

// Moves every value that the case writes with +- to both of its ends, alone and together, then all at random between
// them.
// A problem when the case is none, or has no tolerance that can be moved.
Result<ToleranceAnswer> tolerance_answer(const std::filesystem::path& case_file, const Accuracy& accuracy,
                                         const PoolPlan& pool, OptionStore& store, const SamplePlan& samples,
                                         const ToleranceWatch& watch = {});

}  // namespace splicewright
