// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/print_pdf.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <thread>
#include <vector>

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

constexpr std::array<const char*, 6> names{"chromium",      "chromium-browser", "google-chrome-stable",
                                           "google-chrome", "brave-browser",    "microsoft-edge"};
constexpr std::chrono::seconds most_time{90};
constexpr const char* by_hand = "open report.html in any browser and print it to a PDF file";

bool can_run(const fs::path& file) { return fs::is_regular_file(file) && ::access(file.c_str(), X_OK) == 0; }

std::optional<fs::path> on_search_path(const char* name)
{
    const char* path = std::getenv("PATH");
    std::istringstream folders(path != nullptr ? path : "");
    for (std::string folder; std::getline(folders, folder, ':');)
        if (const fs::path file = fs::path(folder) / name; !folder.empty() && can_run(file)) return file;
    return std::nullopt;
}

// Letters that may stand in a file's address; all others by their bytes.
std::string address_of(const fs::path& file)
{
    std::string text = "file://";
    for (const char letter : fs::absolute(file).string())
    {
        const bool plain = (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') ||
                           (letter >= '0' && letter <= '9') || letter == '/' || letter == '-' || letter == '_' ||
                           letter == '.';
        text += plain ? std::string(1, letter) : fmt::format("%{:02X}", static_cast<unsigned char>(letter));
    }
    return text;
}

// A new folder for what a browser keeps, gone with the value.
class ProfileFolder
{
public:
    ProfileFolder() : path_((fs::temp_directory_path() / "splicewright-print-XXXXXX").string())
    {
        is_there_ = ::mkdtemp(path_.data()) != nullptr;
    }
    ~ProfileFolder()
    {
        std::error_code ignored;
        if (is_there_) fs::remove_all(path_, ignored);
    }
    ProfileFolder(const ProfileFolder&) = delete;
    ProfileFolder& operator=(const ProfileFolder&) = delete;
    [[nodiscard]] bool is_there() const { return is_there_; }
    [[nodiscard]] const std::string& path() const { return path_; }

private:
    std::string path_;
    bool is_there_ = false;
};

// Runs silently in a process group of its own, which is killed when it takes too long. True when it ended well.
bool runs_well(std::vector<std::string> words)
{
    std::vector<char*> arguments;
    for (std::string& word : words) arguments.push_back(word.data());
    arguments.push_back(nullptr);
    posix_spawn_file_actions_t files;
    posix_spawn_file_actions_init(&files);
    for (const int stream : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO})
        posix_spawn_file_actions_addopen(&files, stream, "/dev/null", O_RDWR, 0);
    posix_spawnattr_t attributes;
    posix_spawnattr_init(&attributes);
    posix_spawnattr_setflags(&attributes, POSIX_SPAWN_SETPGROUP);
    pid_t child = 0;
    const int failed = ::posix_spawn(&child, arguments[0], &files, &attributes, arguments.data(), environ);
    posix_spawn_file_actions_destroy(&files);
    posix_spawnattr_destroy(&attributes);
    if (failed != 0) return false;
    const auto end = std::chrono::steady_clock::now() + most_time;
    int status = 0;
    while (::waitpid(child, &status, WNOHANG) == 0)
    {
        if (std::chrono::steady_clock::now() > end)
        {
            ::kill(-child, SIGKILL);
            ::waitpid(child, &status, 0);
            return false;
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

}  // namespace

std::optional<fs::path> installed_browser()
{
    if (const char* named = std::getenv(browser_variable); named != nullptr && *named != '\0')
        return can_run(named) ? std::optional<fs::path>(named) : on_search_path(named);
    for (const char* name : names)
        if (auto found = on_search_path(name)) return found;
    return std::nullopt;
}

std::string print_pdf(const std::string& html, const fs::path& pdf)
{
    const auto browser = installed_browser();
    if (!browser)
        return fmt::format(
            "no browser of the Chromium family is installed; {}, install one (apt-get install chromium), "
            "or name one: {}=/path/to/browser",
            by_hand, browser_variable);
    const ProfileFolder profile;
    if (!profile.is_there()) return fmt::format("no temporary folder could be made; {}", by_hand);
    const fs::path page = fs::path(profile.path()) / "report.html";
    std::ofstream(page, std::ios::binary) << html;
    std::vector<std::string> words{browser->string(),
                                   "--headless",
                                   "--disable-gpu",
                                   "--no-first-run",
                                   "--no-pdf-header-footer",
                                   "--user-data-dir=" + profile.path(),
                                   "--print-to-pdf=" + fs::absolute(pdf).string()};
    // Chromium refuses to run as root inside its sandbox; the page is ours and holds no script.
    if (::geteuid() == 0) words.push_back("--no-sandbox");
    words.push_back(address_of(page));
    if (!runs_well(words) || !fs::exists(pdf))
        return fmt::format("{} could not print the page; {}", browser->string(), by_hand);
    return {};
}

}  // namespace splicewright
