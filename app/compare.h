// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <string>

#include "app/option_store.h"
#include "app/study.h"
#include "app/worker_pool.h"
#include "cases/units.h"
#include "post/compare_text.h"

namespace splicewright
{

// Every n-th option, beginning with number i: the shards of a study together are all of it.
struct Shard
{
    std::uint64_t number = 1, of = 1;
};

struct Computed
{
    std::uint64_t known = 0, computed = 0;
    // By option: those whose process died twice or took too long. They are not in the store: the next run tries again.
    std::map<std::uint64_t, std::string> lost;
};

// What happens along the way, for a progress bar.
struct CompareWatch
{
    std::function<void()> known = [] {}, computed = [] {};
};

// Computes the options of the shard that the store does not have, and stores each as it comes.
// An option whose process dies is tried a second time.
Computed compute(const Study& study, const Shard& shard, const PoolPlan& pool, OptionStore& store,
                 const CompareWatch& watch = {});

// A value as it is written, in house units; expects one that was read before.
double value_of(const std::string& words, Dimension dimension);
void sort_by_value(std::vector<KeyLine::Point>& points);

// The outcome of an option from the store, or why there is none.
OptionOutcome outcome_in(OptionStore& store, const Study& study, std::uint64_t index, const Computed& computed);

// Reads all outcomes twice, in order, and writes options.csv, options.json, ranking.txt, report.html, case.toml, the
// charts and, where an option passes, its full report into the folder as write_result_folder does; what ranking.txt
// says is returned beside the ranking.
// `search_words` stand at its end.
struct Compared
{
    Ranking ranking;
    std::string text;
    std::string why_no_pictures;  // empty when there are
    bool has_report = false;      // of the recommended option
    std::string why_no_report;    // empty when there is one, or when no option passes
};
Compared write_comparison(const Study& study, const Computed& computed, OptionStore& store, double reserve,
                          const std::filesystem::path& folder, const std::string& search_words = {});

}  // namespace splicewright
