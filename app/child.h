// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <sys/types.h>

#include <functional>
#include <string>

namespace splicewright
{

// A process that computes one text and ends.
struct Child
{
    pid_t id = -1;
    int said = -1;  // reading end of its pipe
};

// Starts `work` in a child process, which may compute for that long.
Child child_for(const std::function<std::string()>& work, double seconds_allowed);

// Whether the child is at its end: it speaks, or it is dead.
bool has_finished(const Child& child);

// What the child said, when it has ended; empty when it died before that.
std::string last_words(const Child& child);

}  // namespace splicewright
