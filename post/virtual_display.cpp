// SPDX-License-Identifier: GPL-2.0-or-later
#include <X11/Xlib.h>
#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <string>

#include "post/offscreen_context.h"

namespace splicewright
{
namespace
{

// Between fork and exec only calls that are safe after a fork.
[[noreturn]] void become_server(int number_pipe, const char* pipe_text)
{
    prctl(PR_SET_PDEATHSIG, SIGTERM);
    fcntl(number_pipe, F_SETFD, 0);
    const int nowhere = open("/dev/null", O_RDWR);
    dup2(nowhere, 0);
    dup2(nowhere, 1);
    dup2(nowhere, 2);
    execlp("Xvfb", "Xvfb", "-displayfd", pipe_text, "-screen", "0", "640x480x24", "-nolisten", "tcp", nullptr);
    _exit(127);
}

// The display number that the server writes when it is ready; empty when it does not come.
std::string number_from(int pipe)
{
    std::string number;
    pollfd waiting{pipe, POLLIN, 0};
    constexpr int patience_ms = 10000;
    while (number.find('\n') == std::string::npos && poll(&waiting, 1, patience_ms) > 0)
    {
        std::array<char, 16> text{};
        const ssize_t n = read(pipe, text.data(), text.size());
        if (n <= 0) return {};
        number.append(text.data(), static_cast<std::size_t>(n));
    }
    return number.substr(0, number.find('\n'));
}

}  // namespace

VirtualDisplay::VirtualDisplay()
{
    std::array<int, 2> ends{};
    if (pipe2(ends.data(), O_CLOEXEC) != 0)
    {
        why_not_ = "no pipe to a virtual display";
        return;
    }
    const std::string pipe_text = std::to_string(ends[1]);
    process_ = fork();
    if (process_ == 0) become_server(ends[1], pipe_text.c_str());
    close(ends[1]);
    const std::string number = process_ > 0 ? number_from(ends[0]) : std::string();
    close(ends[0]);
    if (number.empty())
    {
        why_not_ = "no virtual display started (is Xvfb installed? Debian: xvfb)";
        return;
    }
    connection_ = XOpenDisplay((":" + number).c_str());
    if (connection_ == nullptr) why_not_ = "the virtual display takes no connection";
}

VirtualDisplay::~VirtualDisplay()
{
    if (connection_ != nullptr) XCloseDisplay(static_cast<::Display*>(connection_));
    if (process_ <= 0) return;
    kill(process_, SIGTERM);
    waitpid(process_, nullptr, 0);
}

}  // namespace splicewright
