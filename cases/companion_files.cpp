// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/companion_files.h"

#include <fmt/format.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <system_error>

namespace splicewright
{
namespace
{

Companion opened(const std::filesystem::path& path)
{
    Companion companion{path.string(), nullptr, ""};
    std::error_code error;
    const auto status = std::filesystem::status(path, error);
    if (!std::filesystem::exists(status))
        companion.why_not = fmt::format("names no file: there is no {}", path.string());
    else if (!std::filesystem::is_regular_file(status)) companion.why_not = "must name a regular file";
    else
    {
        errno = 0;
        auto stream = std::make_unique<std::ifstream>(path, std::ios::binary);
        if (*stream) companion.stream = std::move(stream);
        else companion.why_not = fmt::format("cannot be opened: {}", std::strerror(errno));
    }
    return companion;
}

}  // namespace

Companion no_companion(const std::string& name)
{
    return {name, nullptr, "cannot be read here: this case does not come from a file, so nothing stands beside it"};
}

CompanionFiles companions_beside(const std::string& folder)
{
    return [folder](const std::string& name) { return opened(std::filesystem::path(folder) / name); };
}

}  // namespace splicewright
