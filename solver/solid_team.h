// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <algorithm>
#include <atomic>
#include <cstdint>
#include <functional>
#include <thread>
#include <vector>

namespace splicewright
{

// Threads that share out numbered tasks. Which thread does a task is left to chance, so a task must write only what
// is its own; then the outcome is the same for any number of threads.
class SolidTeam
{
public:
    // 0: as many as the processor runs at once.
    explicit SolidTeam(int n_threads = 0);
    ~SolidTeam();
    SolidTeam(const SolidTeam&) = delete;
    SolidTeam& operator=(const SolidTeam&) = delete;

    [[nodiscard]] int size() const { return static_cast<int>(helpers_.size()) + 1; }

    // Runs task(0) to task(n_tasks - 1), each once, and returns when all are done. Tasks must not throw.
    template <class Task>
    void run(std::int64_t n_tasks, const Task& task)
    {
        if (helpers_.empty() || n_tasks < 2)
        {
            for (std::int64_t i = 0; i < n_tasks; ++i) task(i);
            return;
        }
        run_with_helpers({[](const void* of, std::int64_t i) { (*static_cast<const Task*>(of))(i); }, &task, n_tasks});
    }

    // Runs task(first, last) over pieces of 0 to n - 1, each piece at most piece_size long.
    template <class Task>
    void run_pieces(std::int64_t n, std::int64_t piece_size, const Task& task)
    {
        run((n + piece_size - 1) / piece_size,
            [&](std::int64_t i) { task(i * piece_size, std::min(n, (i + 1) * piece_size)); });
    }

private:
    struct Job
    {
        void (*call)(const void*, std::int64_t) = nullptr;
        const void* task = nullptr;
        std::int64_t n_tasks = 0;
    };

    void run_with_helpers(const Job& job);
    void help();
    void work();
    bool claim(std::int64_t& task);

    std::vector<std::thread> helpers_;
    Job job_;                                // read only by who holds a claimed task of it
    std::atomic<std::uint32_t> n_tasks_{0};  // of the job
    std::atomic<std::uint64_t> next_{0};     // round in the upper half, next task in the lower half
    std::atomic<std::uint32_t> round_{0};    // rises with each job; the highest value ends the helpers
    std::atomic<std::uint32_t> done_{0};     // tasks of the job that are finished
};

}  // namespace splicewright
