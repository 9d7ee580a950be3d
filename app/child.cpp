// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/child.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cmath>
#include <stdexcept>

namespace splicewright
{
namespace
{

void write_all(int to, const std::string& text)
{
    for (std::size_t at = 0; at < text.size();)
    {
        const ssize_t n = ::write(to, text.data() + at, text.size() - at);
        if (n < 0 && errno != EINTR) return;
        if (n > 0) at += static_cast<std::size_t>(n);
    }
}

}  // namespace

Child child_for(const std::function<std::string()>& work, double seconds_allowed)
{
    int ends[2];
    if (::pipe2(ends, O_CLOEXEC) != 0) throw std::runtime_error("no pipe to a child process");
    const pid_t id = ::fork();
    if (id < 0) throw std::runtime_error("no child process");
    if (id != 0)
    {
        ::close(ends[1]);
        return {id, ends[0]};
    }
    const rlimit no_core{0, 0};
    ::setrlimit(RLIMIT_CORE, &no_core);
    const auto seconds = static_cast<rlim_t>(std::ceil(seconds_allowed));
    const rlimit computing{seconds, seconds + 1};
    ::setrlimit(RLIMIT_CPU, &computing);
    write_all(ends[1], work());
    ::_exit(0);
}

bool has_finished(const Child& child)
{
    pollfd end{child.said, POLLIN, 0};
    return ::poll(&end, 1, 0) > 0;
}

std::string last_words(const Child& child)
{
    std::string said;
    std::array<char, 4096> buffer{};
    while (true)
    {
        const ssize_t n = ::read(child.said, buffer.data(), buffer.size());
        if (n < 0 && errno == EINTR) continue;
        if (n <= 0) break;
        said.append(buffer.data(), static_cast<std::size_t>(n));
    }
    ::close(child.said);
    int status = 0;
    while (::waitpid(child.id, &status, 0) < 0 && errno == EINTR)
    {
    }
    return WIFEXITED(status) && WEXITSTATUS(status) == 0 ? said : std::string();
}

}  // namespace splicewright
