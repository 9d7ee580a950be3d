// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/worker_pool.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <poll.h>
#include <sched.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <chrono>
#include <cstring>
#include <stdexcept>
#include <utility>
#include <vector>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

using Clock = std::chrono::steady_clock;
using Work = std::function<std::string(std::uint64_t index)>;

// Returns false when the other end is gone.
bool written(int to, const char* bytes, std::size_t size)
{
    for (std::size_t at = 0; at < size;)
    {
        const ssize_t n = ::write(to, bytes + at, size - at);
        if (n < 0 && errno != EINTR) return false;
        if (n > 0) at += static_cast<std::size_t>(n);
    }
    return true;
}

bool read_whole(int from, char* bytes, std::size_t size)
{
    for (std::size_t at = 0; at < size;)
    {
        const ssize_t n = ::read(from, bytes + at, size - at);
        if (n == 0 || (n < 0 && errno != EINTR)) return false;
        if (n > 0) at += static_cast<std::size_t>(n);
    }
    return true;
}

struct Pipe
{
    int out = -1, in = -1;  // read here, write there
};

Pipe new_pipe()
{
    int ends[2];
    if (::pipe2(ends, O_CLOEXEC) != 0) throw std::runtime_error("no pipe to a worker process");
    return {ends[0], ends[1]};
}

// Closes all that the parent had open, so that a worker that lives on for a moment holds neither lock nor store.
void keep_only(int first, int second)
{
    const auto low = static_cast<unsigned>(std::min(first, second)),
               high = static_cast<unsigned>(std::max(first, second));
    if (low > 3) ::close_range(3, low - 1, 0);
    if (high > low + 1) ::close_range(low + 1, high - 1, 0);
    ::close_range(high + 1, ~0U, 0);
}

// What its work throws ends the worker; it must not run on as a second parent.
[[noreturn]] void be_worker(int tasks, int answers, pid_t parent, const Work& work) noexcept
{
    ::prctl(PR_SET_PDEATHSIG, SIGKILL);
    if (::getppid() != parent) ::_exit(0);  // it died before that
    const rlimit no_core{0, 0};
    ::setrlimit(RLIMIT_CORE, &no_core);
    keep_only(tasks, answers);
    std::uint64_t index = 0;
    while (read_whole(tasks, reinterpret_cast<char*>(&index), sizeof index))
    {
        std::string line = work(index);
        line += '\n';
        if (!written(answers, line.data(), line.size())) break;
    }
    ::_exit(0);
}

struct Worker
{
    pid_t id = -1;
    int tasks = -1, answers = -1;  // ends of its pipes
    std::optional<std::uint64_t> task, last;
    Clock::time_point until;
    std::string said;
    int n_tasks = 0;  // given so far
};

std::string reason_of(int status)
{
    if (WIFSIGNALED(status))
        return fmt::format("its process died of signal {} ({})", WTERMSIG(status), ::strsignal(WTERMSIG(status)));
    return fmt::format("its process ended with status {}", WEXITSTATUS(status));
}

class Pool
{
public:
    Pool(PoolPlan plan, const Work& work) : plan_(plan), work_(&work) {}
    ~Pool()
    {
        for (Worker& worker : workers_) ended(worker, SIGKILL);
    }
    Pool(const Pool&) = delete;
    Pool& operator=(const Pool&) = delete;

    void run(const NextTask& next, const std::function<void(const TaskEnd&)>& watch)
    {
        for (int i = 0; i < plan_.n_workers; ++i)
        {
            const auto task = next(std::nullopt);
            if (!task) break;
            workers_.push_back(started());
            give(workers_.back(), *task);
        }
        while (!workers_.empty())
        {
            for (const TaskEnd& end : finished()) watch(end);
            hand_out(next);
        }
    }

private:
    [[nodiscard]] Worker started() const
    {
        const Pipe tasks = new_pipe(), answers = new_pipe();
        const pid_t parent = ::getpid(), id = ::fork();
        if (id < 0) throw std::runtime_error("no worker process");
        if (id == 0) be_worker(tasks.out, answers.in, parent, *work_);
        ::close(tasks.out);
        ::close(answers.in);
        Worker worker;
        worker.id = id;
        worker.tasks = tasks.in;
        worker.answers = answers.out;
        return worker;
    }

    void give(Worker& worker, std::uint64_t task) const
    {
        worker.task = worker.last = task;
        ++worker.n_tasks;
        worker.said.clear();
        worker.until = Clock::now() + std::chrono::duration_cast<Clock::duration>(
                                          std::chrono::duration<double>(plan_.seconds_allowed));
        // A worker that is gone shows when its answer is read.
        written(worker.tasks, reinterpret_cast<const char*>(&task), sizeof task);
    }

    // Ends a worker and says how it ended; by the signal when one is given.
    static int ended(Worker& worker, int signal)
    {
        if (worker.id < 0) return 0;
        if (signal != 0) ::kill(worker.id, signal);
        ::close(worker.tasks);
        ::close(worker.answers);
        int status = 0;
        while (::waitpid(worker.id, &status, 0) < 0 && errno == EINTR)
        {
        }
        worker.id = -1;
        return status;
    }

    // Workers without a task get one, a dead or a worn one a successor; who finds no task leaves.
    void hand_out(const NextTask& next)
    {
        for (Worker& worker : workers_)
        {
            if (worker.task) continue;
            const auto task = next(worker.last);
            if (!task) ended(worker, 0);
            else
            {
                if (worker.n_tasks >= plan_.tasks_per_process) ended(worker, 0);
                if (worker.id < 0) worker = started();
                give(worker, *task);
            }
        }
        std::erase_if(workers_, [](const Worker& worker) { return !worker.task; });
    }

    // Waits until something happens.
    [[nodiscard]] std::vector<TaskEnd> finished()
    {
        std::vector<pollfd> waited;
        Clock::time_point until = Clock::time_point::max();
        for (const Worker& worker : workers_)
        {
            waited.push_back({worker.answers, POLLIN, 0});
            until = std::min(until, worker.until);
        }
        const auto left = std::chrono::ceil<std::chrono::milliseconds>(until - Clock::now()).count();
        const int patience = static_cast<int>(std::clamp<long long>(left, 0, 3'600'000));
        const int ready = ::poll(waited.data(), static_cast<nfds_t>(waited.size()), patience);
        if (ready < 0 && errno != EINTR) throw std::runtime_error("cannot wait for the worker processes");
        std::vector<TaskEnd> ends;
        for (std::size_t at = 0; at < workers_.size(); ++at)
        {
            const bool speaks = ready > 0 && waited[at].revents != 0;
            if (auto end = speaks ? heard(workers_[at]) : std::nullopt) ends.push_back(std::move(*end));
            else if (Clock::now() >= workers_[at].until) ends.push_back(too_late(workers_[at]));
        }
        return ends;
    }

    static std::optional<TaskEnd> heard(Worker& worker)
    {
        std::array<char, 65536> buffer{};
        const ssize_t n = ::read(worker.answers, buffer.data(), buffer.size());
        if (n < 0 && errno == EINTR) return std::nullopt;
        TaskEnd end;
        end.index = *worker.task;
        if (n <= 0) end.why_not = reason_of(ended(worker, 0));
        else
        {
            worker.said.append(buffer.data(), static_cast<std::size_t>(n));
            if (worker.said.back() != '\n') return std::nullopt;
            worker.said.pop_back();
            end.line = std::move(worker.said);
        }
        worker.task.reset();
        return end;
    }

    [[nodiscard]] TaskEnd too_late(Worker& worker) const
    {
        TaskEnd end;
        end.index = *worker.task;
        end.is_late = true;
        end.why_not = fmt::format("no answer within {:g} s", plan_.seconds_allowed);
        ended(worker, SIGKILL);
        worker.task.reset();
        return end;
    }

    PoolPlan plan_;
    const Work* work_;
    std::vector<Worker> workers_;
};

// A pipe to a worker that died must not end this process.
class PipesBreakQuietly
{
public:
    PipesBreakQuietly() : before_(::signal(SIGPIPE, SIG_IGN)) {}
    ~PipesBreakQuietly() { ::signal(SIGPIPE, before_); }
    PipesBreakQuietly(const PipesBreakQuietly&) = delete;
    PipesBreakQuietly& operator=(const PipesBreakQuietly&) = delete;

private:
    void (*before_)(int);
};

}  // namespace

void done_by_workers(const PoolPlan& plan, const NextTask& next, const Work& work,
                     const std::function<void(const TaskEnd&)>& watch)
{
    EXPECTS(plan.n_workers >= 1 && plan.seconds_allowed > 0);
    const PipesBreakQuietly quiet;
    Pool(plan, work).run(next, watch);
}

int n_processors()
{
    cpu_set_t usable;
    CPU_ZERO(&usable);
    return ::sched_getaffinity(0, sizeof usable, &usable) == 0 ? std::max(1, CPU_COUNT(&usable)) : 1;
}

}  // namespace splicewright
