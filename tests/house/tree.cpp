// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/house/tree.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <sstream>
#include <stdexcept>

namespace splicewright::house
{

namespace
{

namespace fs = std::filesystem;

std::string shell_quoted(const std::string& text)
{
    std::string quoted = "'";
    for (const char letter : text) quoted += letter == '\'' ? std::string("'\\''") : std::string(1, letter);
    return quoted + "'";
}

std::string output_of(const std::string& command)
{
    FILE* const pipe = popen(command.c_str(), "r");
    if (pipe == nullptr) throw std::runtime_error("cannot start: " + command);
    std::string output;
    std::array<char, 4096> buffer{};
    std::size_t count = 0;
    while ((count = std::fread(buffer.data(), 1, buffer.size(), pipe)) > 0) output.append(buffer.data(), count);
    if (pclose(pipe) != 0) throw std::runtime_error("failed: " + command);
    return output;
}

// A checkout may belong to another user than the one who tests; reading its list of files is harmless.
std::vector<std::string> paths_by_git(const fs::path& root)
{
    const std::string list = output_of("git -c safe.directory='*' -C " + shell_quoted(root.string()) +
                                       " ls-files -z --cached --others --exclude-standard");
    std::vector<std::string> paths;
    std::istringstream stream(list);
    for (std::string path; std::getline(stream, path, '\0');)
    {
        if (fs::is_regular_file(root / path)) paths.push_back(path);
    }
    return paths;
}

std::vector<std::string> paths_by_walking(const fs::path& root)
{
    std::vector<std::string> paths;
    for (auto entry = fs::recursive_directory_iterator(root); entry != fs::recursive_directory_iterator(); ++entry)
    {
        if (entry->path().filename().string().starts_with('.'))
        {
            entry.disable_recursion_pending();
            continue;
        }
        if (entry->is_regular_file()) paths.push_back(entry->path().lexically_relative(root).generic_string());
    }
    return paths;
}

std::optional<TextFile> text_file(const fs::path& root, const std::string& path)
{
    std::ifstream stream(root / path, std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
    if (text.find('\0') != std::string::npos) return std::nullopt;
    TextFile file{path, {}};
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) file.lines.push_back(line);
    return file;
}

}  // namespace

std::optional<std::size_t> floor_of(std::string_view path)
{
    const std::string_view folder = path.substr(0, path.find('/'));
    const auto* const found = std::ranges::find(floors, folder);
    if (found == floors.end() || folder.size() == path.size()) return std::nullopt;
    return static_cast<std::size_t>(found - floors.begin());
}

std::vector<std::string> project_paths(const fs::path& root)
{
    std::vector<std::string> paths = fs::exists(root / ".git") ? paths_by_git(root) : paths_by_walking(root);
    std::ranges::sort(paths);
    paths.erase(std::unique(paths.begin(), paths.end()), paths.end());
    return paths;
}

std::vector<TextFile> project_text(const fs::path& root)
{
    std::vector<TextFile> files;
    for (const std::string& path : project_paths(root))
    {
        if (std::optional<TextFile> file = text_file(root, path)) files.push_back(std::move(*file));
    }
    return files;
}

bool is_header(const TextFile& file) { return file.path.ends_with(".h"); }

bool is_cpp(const TextFile& file) { return is_header(file) || file.path.ends_with(".cpp"); }

bool is_build_list(const TextFile& file)
{
    return file.path.ends_with("CMakeLists.txt") || file.path.ends_with(".cmake");
}

bool is_script(const TextFile& file) { return !file.lines.empty() && file.lines.front().starts_with("#!"); }

bool is_markdown(const TextFile& file) { return file.path.ends_with(".md"); }

bool stands_in(const TextFile& file, std::string_view folder)
{
    return file.path.starts_with(folder) && file.path.size() > folder.size() && file.path[folder.size()] == '/';
}

std::string at_line(const TextFile& file, std::size_t line_index, std::string_view what)
{
    return fmt::format("{}:{}: {}", file.path, line_index + 1, what);
}

}  // namespace splicewright::house
