// SPDX-License-Identifier: GPL-2.0-or-later
#include <cerrno>
#include <cstring>
#include <fstream>
#include <system_error>

#include "cases/case_text.h"
#include "cases/read_case.h"

namespace splicewright
{
namespace
{

Result<Case> unreadable(const std::string& file, std::string rule, std::string fix)
{
    return std::vector<Problem>{{file, 0, 0, "", "", std::move(rule), std::move(fix)}};
}

}  // namespace

Result<Case> read_case_file(const std::filesystem::path& path)
{
    const std::string file = path.string();
    std::error_code error;
    const auto status = std::filesystem::status(path, error);
    if (!std::filesystem::exists(status))
        return unreadable(file, "there is no such file", "check the name; cases/examples has cases to start from");
    if (std::filesystem::is_directory(status))
        return unreadable(file, "is a directory, not a case file", "name the .toml file in it");
    if (!std::filesystem::is_regular_file(status))
        return unreadable(file, "is not a regular file", "name a .toml file");

    errno = 0;
    std::ifstream stream(path, std::ios::binary);
    if (!stream)
        return unreadable(file, std::string("cannot be opened: ") + std::strerror(errno), "check who may read it");
    // One byte more than allowed is enough for read_case to refuse it.
    std::string text(longest_case_text + 1, '\0');
    stream.read(text.data(), static_cast<std::streamsize>(text.size()));
    if (stream.bad()) return unreadable(file, "cannot be read to its end", "check the disk or the connection");
    text.resize(static_cast<std::size_t>(stream.gcount()));
    return read_case(text, file, companions_beside(path.parent_path().string()));
}

}  // namespace splicewright
