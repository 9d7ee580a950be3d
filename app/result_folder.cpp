// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/result_folder.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <signal.h>
#include <stdio.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <string>
#include <system_error>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

[[noreturn]] void refuse(const fs::path& target, const std::string& why)
{
    throw CannotCompute({"", 0, 0, "result folder", fmt::format("\"{}\"", target.string()),
                         fmt::format("could not be written: {}", why),
                         "name a folder on a disk with room that you may write to: --out FOLDER"});
}

std::string partial_prefix(const fs::path& target) { return fmt::format(".{}.partial-", target.filename().string()); }

// Folders that a run which no longer lives has left half written.
void remove_left_overs(const fs::path& target)
{
    std::error_code ignored;
    const std::string prefix = partial_prefix(target);
    for (const fs::directory_entry& entry : fs::directory_iterator(target.parent_path(), ignored))
    {
        const std::string name = entry.path().filename().string();
        if (!name.starts_with(prefix)) continue;
        const long process = std::strtol(name.c_str() + prefix.size(), nullptr, 10);
        if (process > 0 && ::kill(static_cast<pid_t>(process), 0) != 0 && errno == ESRCH)
            fs::remove_all(entry.path(), ignored);
    }
}

// Swaps in one step where the file system can, else moves the old folder aside first.
void put_in_place(const fs::path& partial, const fs::path& target)
{
    if (!fs::exists(target))
    {
        fs::rename(partial, target);
        return;
    }
    if (::renameat2(AT_FDCWD, partial.c_str(), AT_FDCWD, target.c_str(), RENAME_EXCHANGE) != 0)
    {
        const fs::path aside = partial.string() + "-old";
        fs::rename(target, aside);
        fs::rename(partial, target);
        fs::remove_all(aside);
        return;
    }
    fs::remove_all(partial);
}

void refuse_what_is_in_the_way(const fs::path& target, const fs::path& place)
{
    std::error_code unreadable;
    const fs::file_status found = fs::status(place, unreadable);
    if (unreadable && found.type() != fs::file_type::not_found) refuse(target, unreadable.message());
    if (!fs::exists(found)) return;
    if (!fs::is_directory(found)) refuse(target, "a file of that name is in the way");
    const bool is_result = fs::exists(place / "result.json") || fs::exists(place / "options.json");
    if (!fs::is_empty(place) && !is_result) refuse(target, "a folder of that name holds something else than a result");
}

fs::path partial_of(const fs::path& place)
{
    return place.parent_path() / fmt::format("{}{}", partial_prefix(place), ::getpid());
}

void make_empty(const fs::path& partial, const fs::path& place)
{
    fs::create_directories(place.parent_path());
    remove_left_overs(place);
    fs::remove_all(partial);
    fs::create_directory(partial);
}

}  // namespace

void expect_writable(const fs::path& target)
{
    const fs::path place = fs::absolute(target);
    try
    {
        refuse_what_is_in_the_way(target, place);
        make_empty(partial_of(place), place);
        fs::remove(partial_of(place));
    }
    catch (const fs::filesystem_error& error)
    {
        refuse(target, error.code().message());
    }
}

void write_result_folder(const fs::path& target, const std::function<void(const fs::path& folder)>& fill)
{
    const fs::path place = fs::absolute(target);
    const fs::path partial = partial_of(place);
    try
    {
        refuse_what_is_in_the_way(target, place);
        make_empty(partial, place);
        fill(partial);
        put_in_place(partial, place);
    }
    catch (const fs::filesystem_error& error)
    {
        std::error_code ignored;
        fs::remove_all(partial, ignored);
        refuse(target, error.code().message());
    }
    catch (...)
    {
        std::error_code ignored;
        fs::remove_all(partial, ignored);
        throw;
    }
}

void write_result_file(const std::filesystem::path& file, const std::string& bytes)
{
    std::ofstream out(file, std::ios::binary);
    out << bytes;
    out.close();
    if (!out)
        throw CannotCompute({"", 0, 0, "result folder", "\"" + file.string() + "\"", "could not be written",
                             "name a folder on a disk with room that you may write to: --out FOLDER"});
}

}  // namespace splicewright
