// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_team.h"

#include <limits>

namespace splicewright
{

namespace
{

constexpr std::uint32_t last_round = std::numeric_limits<std::uint32_t>::max();
constexpr std::uint32_t no_task = std::numeric_limits<std::uint32_t>::max();

// Jobs follow each other within microseconds: a short watch spares most of the sleeping and waking.
constexpr int watches_before_sleep = 4000;

void breathe()
{
#if defined(__x86_64__)
    __builtin_ia32_pause();
#endif
}

// Waits until the number is no longer what it was, awake at first and then asleep.
std::uint32_t changed_from(std::uint32_t old, const std::atomic<std::uint32_t>& number)
{
    for (int i = 0; i < watches_before_sleep; ++i)
    {
        const std::uint32_t now = number.load(std::memory_order_acquire);
        if (now != old) return now;
        breathe();
    }
    number.wait(old, std::memory_order_acquire);
    return number.load(std::memory_order_acquire);
}

}  // namespace

SolidTeam::SolidTeam(int n_threads)
{
    const unsigned wanted = n_threads > 0 ? static_cast<unsigned>(n_threads) : std::thread::hardware_concurrency();
    for (unsigned i = 1; i < wanted; ++i) helpers_.emplace_back([this] { help(); });
}

SolidTeam::~SolidTeam()
{
    round_.store(last_round, std::memory_order_release);
    round_.notify_all();
    for (std::thread& helper : helpers_) helper.join();
}

void SolidTeam::run_with_helpers(const Job& job)
{
    const std::uint32_t after = round_.load(std::memory_order_relaxed) + 1;
    const std::uint32_t round = after == last_round ? 0 : after;
    // Closed first, so that no late helper takes the old round's number for a task of the new job.
    next_.store((std::uint64_t{round} << 32) | no_task, std::memory_order_seq_cst);
    job_ = job;
    done_.store(0, std::memory_order_relaxed);
    n_tasks_.store(static_cast<std::uint32_t>(job.n_tasks), std::memory_order_seq_cst);
    next_.store(std::uint64_t{round} << 32, std::memory_order_release);
    round_.store(round, std::memory_order_release);
    round_.notify_all();
    work();
    // A helper that is late is not waited for: only claimed tasks are.
    const auto n_tasks = static_cast<std::uint32_t>(job.n_tasks);
    for (std::uint32_t n = done_.load(std::memory_order_acquire); n != n_tasks; n = changed_from(n, done_))
    {
    }
}

// A task of the present round that nobody has; the round in the same number keeps a late helper from an old job.
bool SolidTeam::claim(std::int64_t& task)
{
    std::uint64_t next = next_.load(std::memory_order_seq_cst);
    for (;;)
    {
        const auto index = static_cast<std::uint32_t>(next);
        if (index >= n_tasks_.load(std::memory_order_seq_cst)) return false;
        if (!next_.compare_exchange_weak(next, next + 1, std::memory_order_seq_cst)) continue;
        task = index;
        return true;
    }
}

void SolidTeam::work()
{
    for (std::int64_t task = 0; claim(task);)
    {
        const std::uint32_t n_tasks = n_tasks_.load(std::memory_order_relaxed);
        job_.call(job_.task, task);
        if (done_.fetch_add(1, std::memory_order_acq_rel) + 1 == n_tasks) done_.notify_all();
    }
}

void SolidTeam::help()
{
    for (std::uint32_t seen = 0;;)
    {
        seen = changed_from(seen, round_);
        if (seen == last_round) return;
        work();
    }
}

}  // namespace splicewright
