// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/worker_pool.h"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <fstream>
#include <map>
#include <set>
#include <stdexcept>
#include <thread>

#include "tests/app/program.h"

namespace splicewright
{
namespace
{

using namespace std::chrono_literals;

NextTask count_to(std::uint64_t n)
{
    return [n, at = std::uint64_t{0}](std::optional<std::uint64_t>) mutable
    { return at < n ? std::optional(at++) : std::nullopt; };
}

std::map<std::uint64_t, TaskEnd> ends_of(const PoolPlan& plan, std::uint64_t n,
                                         const std::function<std::string(std::uint64_t)>& work)
{
    std::map<std::uint64_t, TaskEnd> ends;
    done_by_workers(plan, count_to(n), work,
                    [&](const TaskEnd& end) { EXPECT_TRUE(ends.emplace(end.index, end).second) << end.index; });
    return ends;
}

TEST(WorkerPool, DoesEveryTaskOnceWhateverTheNumberOfWorkers)
{
    for (const int n_workers : {1, 3, 40})
    {
        const auto ends =
            ends_of({n_workers, 60}, 30, [](std::uint64_t index) { return fmt::format("{}", index * 7); });
        ASSERT_EQ(ends.size(), 30U);
        for (const auto& [index, end] : ends) EXPECT_EQ(end.line, fmt::format("{}", index * 7));
    }
    EXPECT_TRUE(ends_of({2, 60}, 0, [](std::uint64_t) { return std::string("x"); }).empty());
}

TEST(WorkerPool, KeepsItsProcessesFromTaskToTask)
{
    std::set<std::string> processes;
    for (const auto& [index, end] : ends_of({2, 60}, 20, [](std::uint64_t) { return fmt::format("{}", ::getpid()); }))
        processes.insert(end.line);
    EXPECT_LE(processes.size(), 2U);
    EXPECT_FALSE(processes.contains(fmt::format("{}", ::getpid())));
}

TEST(WorkerPool, TakesAFreshProcessAfterSoManyTasks)
{
    std::map<std::string, int> tasks;
    for (const auto& [index, end] :
         ends_of({1, 60, 4}, 12, [](std::uint64_t) { return fmt::format("{}", ::getpid()); }))
        ++tasks[end.line];
    ASSERT_EQ(tasks.size(), 3U);
    for (const auto& [process, n] : tasks) EXPECT_EQ(n, 4);
}

TEST(WorkerPool, CarriesLinesThatAreLongerThanAPipe)
{
    const auto ends = ends_of({2, 60}, 3, [](std::uint64_t) { return std::string(1'000'000, 'x'); });
    for (const auto& [index, end] : ends) EXPECT_EQ(end.line.size(), 1'000'000U);
}

TEST(WorkerPool, TellsACrashAndGoesOn)
{
    for (const int n_workers : {1, 2})
    {
        const auto ends = ends_of({n_workers, 60}, 12,
                                  [](std::uint64_t index)
                                  {
                                      if (index == 3) ::raise(SIGKILL);
                                      if (index == 5) ::_exit(7);
                                      if (index == 8) throw std::runtime_error("stays in its process");
                                      return std::string("ok");
                                  });
        ASSERT_EQ(ends.size(), 12U);
        EXPECT_NE(ends.at(3).why_not.find("died of signal 9"), std::string::npos);
        EXPECT_EQ(ends.at(5).why_not, "its process ended with status 7");
        EXPECT_NE(ends.at(8).why_not.find("died of signal 6"), std::string::npos);
        for (const auto& [index, end] : ends)
            if (index != 3 && index != 5 && index != 8)
            {
                EXPECT_EQ(end.line, "ok") << index;
            }
    }
}

TEST(WorkerPool, EndsATaskThatTakesTooLong)
{
    const auto begin = std::chrono::steady_clock::now();
    const auto ends = ends_of({2, 0.3}, 6,
                              [](std::uint64_t index)
                              {
                                  if (index == 2) std::this_thread::sleep_for(100s);
                                  return std::string("ok");
                              });
    EXPECT_LT(std::chrono::steady_clock::now() - begin, 50s);  // far below the sleep, far above the time allowed
    ASSERT_EQ(ends.size(), 6U);
    EXPECT_TRUE(ends.at(2).is_late);
    EXPECT_EQ(ends.at(2).why_not, "no answer within 0.3 s");
    EXPECT_EQ(ends.at(5).line, "ok");
}

TEST(WorkerPool, PassesOnWhatTheWatcherThrows)
{
    EXPECT_THROW(done_by_workers(
                     {2, 60}, count_to(100), [](std::uint64_t) { return std::string("ok"); },
                     [](const TaskEnd&) { throw std::runtime_error("full"); }),
                 std::runtime_error);
    EXPECT_EQ(::waitpid(-1, nullptr, WNOHANG), -1);  // no child is left
}

bool is_alive(pid_t process) { return ::kill(process, 0) == 0; }

TEST(WorkerPool, DiesWithItsParent)
{
    const TemporaryFolder here;
    const pid_t parent = ::fork();
    if (parent == 0)
    {
        const auto work = [&](std::uint64_t index)
        {
            write_file(here.path() / fmt::format("{}", index), fmt::format("{}\n", ::getpid()));
            std::this_thread::sleep_for(100s);
            return std::string();
        };
        done_by_workers({2, 100}, count_to(2), work, [](const TaskEnd&) {});
        ::_exit(0);
    }
    std::vector<pid_t> workers;
    for (int waits = 0; waits < 1000 && workers.size() < 2; ++waits)
    {
        std::this_thread::sleep_for(20ms);
        workers.clear();
        for (const auto& [name, text] : folder_bytes(here.path()))
            if (text.ends_with('\n')) workers.push_back(std::atoi(text.c_str()));
    }
    ASSERT_EQ(workers.size(), 2U);
    ::kill(parent, SIGKILL);
    ::waitpid(parent, nullptr, 0);
    for (int waits = 0; waits < 1000 && (is_alive(workers[0]) || is_alive(workers[1])); ++waits)
        std::this_thread::sleep_for(20ms);
    EXPECT_FALSE(is_alive(workers[0]) || is_alive(workers[1]));
}

}  // namespace
}  // namespace splicewright
