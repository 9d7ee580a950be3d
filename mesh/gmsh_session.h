// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>
#include <string>

namespace splicewright
{

// Opens the mesher, silent and with no size of its own, and closes it again, whatever happens between.
// The mesher has global state: one session at a time.
class GmshSession
{
public:
    explicit GmshSession(const char* model);
    ~GmshSession();
    GmshSession(const GmshSession&) = delete;
    GmshSession& operator=(const GmshSession&) = delete;

    // The last error or warning of the open session.
    static std::string last_words();
};

// Does the work in a session of its own, after those of other threads; whatever the mesher throws becomes the error of
// refuse_mesh for that part.
void with_mesher(const char* part, const std::function<void()>& work);

}  // namespace splicewright
