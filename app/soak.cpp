// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/soak.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <poll.h>
#include <signal.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <chrono>
#include <cmath>
#include <cstring>
#include <exception>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>

#include "cases/problem.h"
#include "cases/random_case.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::json;
using Clock = std::chrono::steady_clock;

constexpr const char* answer_mark = "\nsoak-answer ";  // after whatever a sanitizer or a library had to say
constexpr double clock_per_computing = 6;
constexpr std::size_t longest_complaint = 4000;  // of what a child said before it died

std::string as_text(const SoakResult& result)
{
    return Json{{"outcome", static_cast<int>(result.outcome)},
                {"faults", result.faults},
                {"missed", result.missed},
                {"seconds", result.seconds}}
        .dump(-1, ' ', false, Json::error_handler_t::replace);
}

void write_all(int to, const std::string& text)
{
    for (std::size_t at = 0; at < text.size();)
    {
        const ssize_t n = ::write(to, text.data() + at, text.size() - at);
        if (n < 0 && errno != EINTR) return;
        if (n > 0) at += static_cast<std::size_t>(n);
    }
}

[[noreturn]] void be_child(int answer_to, const std::string& name, const std::string& text, const SoakPlan& plan)
{
    const rlimit no_core{0, 0};
    ::setrlimit(RLIMIT_CORE, &no_core);
    const auto seconds = static_cast<rlim_t>(std::ceil(plan.seconds_allowed));
    const rlimit computing{seconds, seconds + 1};
    ::setrlimit(RLIMIT_CPU, &computing);
    ::dup2(answer_to, STDERR_FILENO);
    write_all(answer_to, answer_mark + as_text(soaked(name, text, plan.accuracy_pct)));
    ::_exit(0);
}

struct ChildEnd
{
    std::string said;
    int status = 0;
    bool timed_out = false;
};

// Reads until the child is done with its end of the pipe, or kills it when its time is over.
ChildEnd ended(pid_t child, int from, double seconds_allowed)
{
    ChildEnd end;
    const auto until = Clock::now() + std::chrono::duration<double>(seconds_allowed);
    std::array<char, 4096> buffer{};
    while (true)
    {
        const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(until - Clock::now()).count();
        pollfd waited{from, POLLIN, 0};
        const int ready = left > 0 ? ::poll(&waited, 1, static_cast<int>(left)) : 0;
        if (ready < 0 && errno == EINTR) continue;
        if (ready <= 0)
        {
            end.timed_out = true;
            ::kill(child, SIGKILL);
            break;
        }
        const ssize_t n = ::read(from, buffer.data(), buffer.size());
        if (n < 0 && errno == EINTR) continue;
        if (n <= 0) break;
        end.said.append(buffer.data(), static_cast<std::size_t>(n));
    }
    while (::waitpid(child, &end.status, 0) < 0 && errno == EINTR)
    {
    }
    return end;
}

SoakResult result_of(const std::string& name, const ChildEnd& end, double seconds_allowed)
{
    SoakResult result;
    result.name = name;
    const std::size_t mark = end.said.rfind(answer_mark);
    const Json answer = mark == std::string::npos
                            ? Json()
                            : Json::parse(end.said.substr(mark + std::strlen(answer_mark)), nullptr, false);
    const bool is_late = end.timed_out || (WIFSIGNALED(end.status) && WTERMSIG(end.status) == SIGXCPU);
    if (is_late) result.faults.push_back(fmt::format("no answer within {:g} s of computing", seconds_allowed));
    if (WIFSIGNALED(end.status) && !is_late)
        result.faults.push_back(fmt::format("died of signal {}", WTERMSIG(end.status)));
    if (WIFEXITED(end.status) && WEXITSTATUS(end.status) != 0)
        result.faults.push_back(fmt::format("ended with status {}", WEXITSTATUS(end.status)));
    if (result.faults.empty() && answer.is_object())
    {
        result.outcome = static_cast<SoakOutcome>(answer.at("outcome").get<int>());
        result.faults = answer.at("faults").get<std::vector<std::string>>();
        result.missed = answer.at("missed").get<std::vector<std::string>>();
        result.seconds = answer.at("seconds").get<double>();
        return result;
    }
    if (result.faults.empty()) result.faults.emplace_back("ended without an answer");
    if (!end.said.empty()) result.faults.push_back(end.said.substr(0, longest_complaint));
    return result;
}

SoakResult soaked_in_child(const std::string& name, const std::string& text, const SoakPlan& plan)
{
    int ends[2];
    if (::pipe2(ends, O_CLOEXEC) != 0) throw std::runtime_error("no pipe to a child process");
    const auto start = Clock::now();
    const pid_t child = ::fork();
    if (child < 0) throw std::runtime_error("no child process");
    if (child == 0)
    {
        ::close(ends[0]);
        be_child(ends[1], name, text, plan);
    }
    ::close(ends[1]);
    const ChildEnd end = ended(child, ends[0], clock_per_computing * plan.seconds_allowed);
    ::close(ends[0]);
    SoakResult result = result_of(name, end, plan.seconds_allowed);
    if (result.seconds == 0) result.seconds = std::chrono::duration<double>(Clock::now() - start).count();
    return result;
}

void write_failure(const std::filesystem::path& folder, const SoakResult& result, const std::string& text)
{
    std::filesystem::create_directories(folder);
    std::string stem = result.name;
    std::replace(stem.begin(), stem.end(), ' ', '-');
    std::ofstream(folder / (stem + ".toml"), std::ios::binary) << text;
    std::ofstream why(folder / (stem + ".txt"), std::ios::binary);
    for (const std::string& fault : result.faults) why << fault << "\n";
}

}  // namespace

std::vector<SoakResult> soak(const SoakPlan& plan, const std::function<void(const SoakResult&)>& watch)
{
    std::vector<SoakResult> results;
    const auto run = [&](const std::string& name, const std::string& text, bool is_damaged)
    {
        SoakResult result = soaked_in_child(name, text, plan);
        if (result.outcome == SoakOutcome::refused && !is_damaged)
        {
            result.outcome = SoakOutcome::failed;
            result.faults.emplace_back("a valid case was refused");
        }
        if (result.outcome == SoakOutcome::failed) write_failure(plan.failure_folder, result, text);
        watch(result);
        results.push_back(std::move(result));
    };
    for (int i = 0; i < plan.n_cases; ++i)
    {
        const std::uint64_t seed = plan.first_seed + static_cast<std::uint64_t>(i);
        run(fmt::format("case {}", seed), random_case_text(seed), false);
    }
    for (int i = 0; i < plan.n_mutations; ++i)
    {
        const std::uint64_t seed = plan.first_seed + static_cast<std::uint64_t>(i);
        run(fmt::format("mutation {}", seed), mutated_case_text(random_case_text(seed), seed), true);
    }
    return results;
}

std::string soak_summary(const std::vector<SoakResult>& results)
{
    std::map<SoakOutcome, int> counts;
    std::map<std::string, int> missed_at;
    int n_missed = 0;
    double total = 0;
    const SoakResult* longest = nullptr;
    for (const SoakResult& result : results)
    {
        ++counts[result.outcome];
        total += result.seconds;
        if (longest == nullptr || result.seconds > longest->seconds) longest = &result;
        n_missed += result.missed.empty() ? 0 : 1;
        for (const std::string& site : result.missed) ++missed_at[site.substr(0, site.rfind(" | "))];
    }
    std::string text;
    for (const auto& [site, n] : missed_at) text += fmt::format("accuracy missed {:3} times: {}\n", n, site);
    text += fmt::format("{} texts: {} ran, {} refused, {} failed; {} missed the accuracy and said so; {:.1f} s",
                        results.size(), counts[SoakOutcome::ran], counts[SoakOutcome::refused],
                        counts[SoakOutcome::failed], n_missed, total);
    if (longest != nullptr) text += fmt::format(", longest {} with {:.1f} s", longest->name, longest->seconds);
    return text + "\n";
}

}  // namespace splicewright
