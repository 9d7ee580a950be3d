// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <sys/resource.h>

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace splicewright
{

// The program as a process.

struct Surroundings
{
    std::filesystem::path folder = ".";              // where it runs
    std::map<std::string, std::string> environment;  // beside the test's own
    std::optional<rlim_t> largest_file;              // bytes; stands in for a full disk
};

struct Ended
{
    int status = -1;  // of exit; -1 when killed
    std::string out, err;
};

Ended program(const std::vector<std::string>& arguments, const Surroundings& around = {});

// A reason to skip where the machine gives out no pseudo-terminal, else empty.
std::string why_no_terminal();

// Its standard output is a terminal; what it shows there. Throws where there is none.
std::string shown_on_terminal(const std::vector<std::string>& arguments, const Surroundings& around = {});

// Starts it and kills it after so many seconds, so that it cannot clean up. False when it had ended before.
bool killed_after(double seconds, const std::vector<std::string>& arguments, const Surroundings& around);

// A new empty folder, gone with the value.
class TemporaryFolder
{
public:
    TemporaryFolder();
    ~TemporaryFolder();
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

void write_file(const std::filesystem::path& file, const std::string& bytes);
std::string file_bytes(const std::filesystem::path& file);

// Bytes of each file of a folder by its name.
std::map<std::string, std::string> folder_bytes(const std::filesystem::path& folder);

// A case that is quick to check: a plain round bar.
std::string plain_bar_text(const std::string& title, const std::string& peak_torque);

}  // namespace splicewright
