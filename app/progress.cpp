// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/progress.h"

#include <fmt/format.h>
#include <unistd.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <utility>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr int bar_width = 20;
constexpr std::chrono::milliseconds bar_pause(200), line_pause(10'000);

bool stderr_is_terminal()
{
    const char* kind = std::getenv("TERM");
    return ::isatty(STDERR_FILENO) != 0 && kind != nullptr && std::string(kind) != "dumb";
}

std::string duration_text(double seconds)
{
    const auto whole = static_cast<long long>(std::ceil(seconds));
    if (whole >= 3600) return fmt::format("{} h {} min", whole / 3600, whole % 3600 / 60);
    if (whole >= 60) return fmt::format("{} min {} s", whole / 60, whole % 60);
    return fmt::format("{} s", whole);
}

}  // namespace

std::string progress_text(std::uint64_t done, std::uint64_t total, double seconds, const std::string& unit)
{
    EXPECTS(total > 0 && done <= total);
    const double share = static_cast<double>(done) / static_cast<double>(total);
    const auto filled = static_cast<std::size_t>(bar_width * share);
    std::string text = fmt::format("[{}{}] {:3.0f} % {} of {} {}", std::string(filled, '#'),
                                   std::string(bar_width - filled, '-'), std::floor(100 * share), done, total, unit);
    if (done == 0 || seconds <= 0) return text;
    const double rate = static_cast<double>(done) / seconds;
    text += rate >= 0.1 ? fmt::format(", {:.2g}/s", rate) : fmt::format(", {:.2g}/min", 60 * rate);
    if (done < total) text += fmt::format(", {} left", duration_text(static_cast<double>(total - done) / rate));
    return text;
}

Progress::Progress(std::uint64_t total, std::string unit)
    : total_(total), unit_(std::move(unit)), on_terminal_(stderr_is_terminal()), begin_(Clock::now()), shown_(begin_)
{
}

void Progress::show(Clock::time_point now)
{
    shown_ = now;
    const std::string text = progress_text(done_, total_, std::chrono::duration<double>(now - begin_).count(), unit_);
    if (on_terminal_) fmt::print(stderr, "\r\033[K{}", text);
    else fmt::print(stderr, "{}\n", text);
    std::fflush(stderr);
}

void Progress::done()
{
    ++done_;
    const auto now = Clock::now();
    if (now - shown_ >= (on_terminal_ ? bar_pause : line_pause) && done_ < total_) show(now);
}

void Progress::known()
{
    EXPECTS(total_ > done_);
    --total_;
}

void Progress::finish()
{
    if (total_ == 0) return;
    show(Clock::now());
    if (on_terminal_) fmt::print(stderr, "\n");
}

}  // namespace splicewright
