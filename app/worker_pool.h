// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>

namespace splicewright
{

struct PoolPlan
{
    int n_workers = 1;
    double seconds_allowed = 600;  // for each task, by the clock
    int tasks_per_process = 100;   // then a fresh one: memory grows from mesh to mesh, docs/comparing.md
};

// What became of a task: its line, or why there is none.
struct TaskEnd
{
    std::uint64_t index = 0;
    std::string line;
    std::string why_not;  // empty when there is a line
    bool is_late = false;
};

// Number of the next task for the worker that had `last` before, if any; nothing when there is none left.
using NextTask = std::function<std::optional<std::uint64_t>(std::optional<std::uint64_t> last)>;

// Does tasks in forked processes that stay alive for many tasks; `work` gives one line without line end.
// `watch` sees each task once, in the order in which they end. A task whose process dies or takes too long is told
// with its reason; a fresh process takes its place. The processes die with this one, whatever ends it.
// Expects a process without threads. Passes on what `next` and `watch` throw, after ending the processes.
void done_by_workers(const PoolPlan& plan, const NextTask& next,
                     const std::function<std::string(std::uint64_t index)>& work,
                     const std::function<void(const TaskEnd&)>& watch);

// Processors that this process may use.
int n_processors();

}  // namespace splicewright
