// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <chrono>
#include <cstdint>
#include <string>

namespace splicewright
{

// How far a long run is, on stderr: one moving bar on a terminal, elsewhere a line now and then.
class Progress
{
public:
    Progress(std::uint64_t total, std::string unit);
    void done();   // one more
    void known();  // one less to do
    void finish();

private:
    using Clock = std::chrono::steady_clock;
    void show(Clock::time_point now);

    std::uint64_t total_, done_ = 0;
    std::string unit_;
    bool on_terminal_;
    Clock::time_point begin_, shown_;
};

// "[#####---------------] 25 % 125 of 500 options, 4.1/s, 1 min 31 s left". Expects done <= total, total > 0.
std::string progress_text(std::uint64_t done, std::uint64_t total, double seconds, const std::string& unit);

}  // namespace splicewright
