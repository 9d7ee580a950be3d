// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace splicewright::house
{

// Each may include itself and what stands to its left.
inline constexpr std::array<std::string_view, 5> floors{"cases", "mesh", "solver", "post", "app"};

// Index of the floor that the path stands on; none for tests, documents and the top level.
std::optional<std::size_t> floor_of(std::string_view path);

struct TextFile
{
    std::string path;  // from the root, with '/'
    std::vector<std::string> lines;
};

// Paths of the files that git knows or would take (new and not ignored). Without a repository: every file
// whose path has no hidden part.
std::vector<std::string> project_paths(const std::filesystem::path& root);

// Those of them that hold text.
std::vector<TextFile> project_text(const std::filesystem::path& root);

bool is_header(const TextFile& file);
bool is_cpp(const TextFile& file);  // header or source
bool is_build_list(const TextFile& file);
bool is_script(const TextFile& file);  // starts with #!
bool is_markdown(const TextFile& file);
bool stands_in(const TextFile& file, std::string_view folder);

// "path:line: what"
std::string at_line(const TextFile& file, std::size_t line_index, std::string_view what);

}  // namespace splicewright::house
