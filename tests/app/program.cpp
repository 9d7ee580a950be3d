// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/app/program.h"

#include <fcntl.h>
#include <pty.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <thread>

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

// Replaces this process; called in the child only.
[[noreturn]] void become_program(const std::vector<std::string>& arguments, const Surroundings& around)
{
    std::vector<std::string> words{SPLICEWRIGHT_PROGRAM};
    words.insert(words.end(), arguments.begin(), arguments.end());
    std::vector<char*> pointers;
    for (std::string& word : words) pointers.push_back(word.data());
    pointers.push_back(nullptr);
    for (const auto& [name, value] : around.environment) ::setenv(name.c_str(), value.c_str(), 1);
    if (around.largest_file)
    {
        ::signal(SIGXFSZ, SIG_IGN);  // a write beyond the limit then fails like one to a full disk
        const rlimit limit{*around.largest_file, *around.largest_file};
        ::setrlimit(RLIMIT_FSIZE, &limit);
    }
    if (::chdir(around.folder.c_str()) == 0) ::execv(SPLICEWRIGHT_PROGRAM, pointers.data());
    ::_exit(127);
}

int exit_status(pid_t child)
{
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

std::string all_from(int descriptor)
{
    std::string text;
    std::array<char, 4096> buffer{};
    // A terminal whose other end is closed answers with an error, not with an end of file.
    for (ssize_t n = ::read(descriptor, buffer.data(), buffer.size()); n > 0;
         n = ::read(descriptor, buffer.data(), buffer.size()))
        text.append(buffer.data(), static_cast<std::size_t>(n));
    return text;
}

}  // namespace

Ended program(const std::vector<std::string>& arguments, const Surroundings& around)
{
    int out[2], err[2];
    if (::pipe2(out, O_CLOEXEC) != 0 || ::pipe2(err, O_CLOEXEC) != 0) throw std::runtime_error("no pipes");
    const pid_t child = ::fork();
    if (child == 0)
    {
        ::dup2(out[1], STDOUT_FILENO);
        ::dup2(err[1], STDERR_FILENO);
        become_program(arguments, around);
    }
    ::close(out[1]);
    ::close(err[1]);
    Ended ended;
    std::thread reader([&] { ended.err = all_from(err[0]); });
    ended.out = all_from(out[0]);
    reader.join();
    ended.status = exit_status(child);
    ::close(out[0]);
    ::close(err[0]);
    return ended;
}

std::string why_no_terminal()
{
    const int terminal = ::posix_openpt(O_RDWR | O_NOCTTY);
    if (terminal < 0) return std::string("no pseudo-terminal on this machine: ") + std::strerror(errno);
    ::close(terminal);
    return "";
}

std::string shown_on_terminal(const std::vector<std::string>& arguments, const Surroundings& around)
{
    int terminal = -1;
    const pid_t child = ::forkpty(&terminal, nullptr, nullptr, nullptr);
    if (child < 0) throw std::runtime_error(std::string("no pseudo-terminal: ") + std::strerror(errno));
    if (child == 0)
    {
        const int nowhere = ::open("/dev/null", O_WRONLY);
        ::dup2(nowhere, STDERR_FILENO);
        become_program(arguments, around);
    }
    const std::string shown = all_from(terminal);
    ::close(terminal);
    exit_status(child);
    return shown;
}

bool killed_after(double seconds, const std::vector<std::string>& arguments, const Surroundings& around)
{
    const pid_t child = ::fork();
    if (child == 0)
    {
        const int nowhere = ::open("/dev/null", O_WRONLY);
        ::dup2(nowhere, STDOUT_FILENO);
        ::dup2(nowhere, STDERR_FILENO);
        become_program(arguments, around);
    }
    std::this_thread::sleep_for(std::chrono::duration<double>(seconds));
    ::kill(child, SIGKILL);
    return exit_status(child) == -1;
}

TemporaryFolder::TemporaryFolder()
{
    std::string pattern = (fs::temp_directory_path() / "splicewright-test-XXXXXX").string();
    if (::mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no temporary folder");
    path_ = pattern;
}

TemporaryFolder::~TemporaryFolder()
{
    std::error_code ignored;
    fs::remove_all(path_, ignored);
}

void write_file(const fs::path& file, const std::string& bytes) { std::ofstream(file, std::ios::binary) << bytes; }

std::string file_bytes(const fs::path& file)
{
    std::ifstream stream(file, std::ios::binary);
    if (!stream) throw std::runtime_error("cannot open " + file.string());
    return {std::istreambuf_iterator<char>(stream), {}};
}

std::map<std::string, std::string> folder_bytes(const fs::path& folder)
{
    std::map<std::string, std::string> bytes;
    for (const fs::directory_entry& entry : fs::directory_iterator(folder))
        if (entry.is_regular_file()) bytes[entry.path().filename().string()] = file_bytes(entry.path());
    return bytes;
}

std::string plain_bar_text(const std::string& title, const std::string& peak_torque)
{
    return "title = \"" + title + "\"\n" + R"([left]
material = "C45 +QT"
[[left.section]]
length = "100 mm"
diameter = "30 mm"
[load]
peak_torque = ")" +
           peak_torque + "\"\n";
}

}  // namespace splicewright
