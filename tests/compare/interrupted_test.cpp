// SPDX-License-Identifier: GPL-2.0-or-later
#include <fcntl.h>
#include <fmt/format.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/file.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <fstream>
#include <thread>

#include "tests/app/program.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

using Words = std::vector<std::string>;

const Words study{"compare", "a.toml", "--vary", "left.section[1].diameter=30mm..40mm:41", "--accuracy", "5"};

Words and_more(const Words& more)
{
    Words words = study;
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

Surroundings in(const fs::path& folder)
{
    Surroundings around;
    around.folder = folder;
    return around;
}

// Runs the study alone and undisturbed.
std::map<std::string, std::string> undisturbed(const fs::path& here)
{
    write_file(here / "a.toml", plain_bar_text("a bar", "400 N*m"));
    const Ended ended = program(and_more({"--store", "calm", "--out", "calm-out"}), in(here));
    EXPECT_EQ(ended.status, 0) << ended.err;
    return folder_bytes(here / "calm-out");
}

// Ids of the children of a process, of whichever of its threads.
std::vector<pid_t> children_of(pid_t parent)
{
    std::vector<pid_t> children;
    std::error_code gone;
    for (const auto& thread : fs::directory_iterator(fmt::format("/proc/{}/task", parent), gone))
    {
        std::ifstream list(thread.path() / "children");
        for (pid_t child = 0; list >> child;) children.push_back(child);
    }
    return children;
}

TEST(InterruptedCompare, EndsWithTheSameFilesAfterItWasKilled)
{
    const TemporaryFolder here;
    const auto files = undisturbed(here.path());
    // Later each time, so that some end amid the study, which goes on from what the store holds.
    bool was_killed = false, ended = false;
    for (double seconds = 0.1; !ended && seconds < 60; seconds *= 1.3)
    {
        ended = !killed_after(seconds, and_more({"--store", "s", "--out", "out"}), in(here.path()));
        was_killed |= !ended;
    }
    EXPECT_TRUE(was_killed);
    const Ended resumed = program(and_more({"--store", "s", "--out", "out"}), in(here.path()));
    ASSERT_EQ(resumed.status, 0) << resumed.err;
    EXPECT_EQ(folder_bytes(here.path() / "out"), files);
    const Ended again = program(and_more({"--store", "s", "--out", "out"}), in(here.path()));
    EXPECT_NE(again.err.find("0 computed, 41 known before"), std::string::npos) << again.err;
}

TEST(InterruptedCompare, EndsWithTheSameFilesWhenAWorkerIsKilled)
{
    const TemporaryFolder here;
    const auto files = undisturbed(here.path());
    Ended ended;
    std::thread run(
        [&] {
            ended = program(and_more({"--workers", "1", "--store", "s", "--out", "out"}), in(here.path()));
        });
    bool killed = false;
    for (int waits = 0; waits < 2000 && !killed; ++waits)
    {
        for (const pid_t compare : children_of(::getpid()))
            for (const pid_t worker : children_of(compare)) killed |= ::kill(worker, SIGKILL) == 0;
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    run.join();
    EXPECT_TRUE(killed);
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_EQ(folder_bytes(here.path() / "out"), files);
}

TEST(InterruptedCompare, GoesOnAfterAFullDisk)
{
    const TemporaryFolder here;
    const auto files = undisturbed(here.path());
    Surroundings full = in(here.path());
    full.largest_file = 33'500;  // bytes: the store is made, and its log meets the end after a few rows
    const Ended stopped = program(and_more({"--store", "s", "--out", "out"}), full);
    EXPECT_EQ(stopped.status, 3) << stopped.err;
    EXPECT_NE(stopped.err.find("make room on that disk"), std::string::npos) << stopped.err;
    EXPECT_FALSE(fs::exists(here.path() / "out"));
    const Ended resumed = program(and_more({"--store", "s", "--out", "out"}), in(here.path()));
    ASSERT_EQ(resumed.status, 0) << resumed.err;
    EXPECT_EQ(folder_bytes(here.path() / "out"), files);
}

TEST(InterruptedCompare, RefusesASecondRunOnTheSameStore)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", plain_bar_text("a bar", "400 N*m"));
    const fs::path lock = here.path() / "s.lock";
    write_file(lock, "12345\n");
    const int held = ::open(lock.c_str(), O_RDWR);
    ASSERT_EQ(::flock(held, LOCK_EX | LOCK_NB), 0);
    const Ended second = program(and_more({"--store", "s"}), in(here.path()));
    ::close(held);
    EXPECT_EQ(second.status, 2);
    EXPECT_NE(second.err.find("is in use by process 12345"), std::string::npos) << second.err;
    EXPECT_EQ(program(and_more({"--store", "s"}), in(here.path())).status, 0);
}

}  // namespace
}  // namespace splicewright
