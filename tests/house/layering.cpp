// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <optional>
#include <regex>
#include <string_view>

#include "tests/house/rules.h"

namespace splicewright::house
{

namespace
{

constexpr std::size_t most_gmsh_sources = 2;  // sections and solids
constexpr std::size_t most_vtk_sources = 2;

struct Include
{
    std::string path;
    bool quoted = false;
};

std::optional<Include> included_by(const std::string& line)
{
    static const std::regex include(R"re(^\s*#\s*include\s*(["<])([^">]+)[">])re");
    std::smatch match;
    if (line.find("include") == std::string::npos || !std::regex_search(line, match, include)) return std::nullopt;
    return Include{match[2], match[1] == "\""};
}

std::optional<std::string> complaint_about(const Include& include, std::size_t own_floor)
{
    const std::optional<std::size_t> other_floor = floor_of(include.path);
    if (!other_floor)
    {
        if (!include.quoted) return std::nullopt;
        return fmt::format("\"{}\" must be written from the root, such as \"cases/case.h\"", include.path);
    }
    if (*other_floor <= own_floor) return std::nullopt;
    return fmt::format("{} stands to the right of {}", include.path, floors[own_floor]);
}

template <class IsLibraryHeader>
Complaints library_complaints(const Files& files, std::string_view library, std::size_t most_sources,
                              IsLibraryHeader is_library_header)
{
    Complaints complaints;
    std::vector<std::string> sources;
    for (const TextFile& file : files)
    {
        if (!is_cpp(file) || !floor_of(file.path)) continue;
        bool includes_it = false;
        for (std::size_t i = 0; i < file.lines.size(); ++i)
        {
            const std::optional<Include> include = included_by(file.lines[i]);
            if (!include || !is_library_header(include->path)) continue;
            includes_it = true;
            if (is_header(file)) complaints.push_back(at_line(file, i, fmt::format("{} in a header", library)));
        }
        if (includes_it && !is_header(file)) sources.push_back(file.path);
    }
    if (sources.size() > most_sources)
    {
        complaints.push_back(fmt::format("{} is included by {} sources, at most {} may: {}", library, sources.size(),
                                         most_sources, fmt::join(sources, ", ")));
    }
    return complaints;
}

}  // namespace

Complaints floor_complaints(const Files& files)
{
    Complaints complaints;
    for (const TextFile& file : files)
    {
        const std::optional<std::size_t> own_floor = floor_of(file.path);
        if (!is_cpp(file) || !own_floor) continue;
        for (std::size_t i = 0; i < file.lines.size(); ++i)
        {
            const std::optional<Include> include = included_by(file.lines[i]);
            if (!include) continue;
            if (const auto complaint = complaint_about(*include, *own_floor))
            {
                complaints.push_back(at_line(file, i, *complaint));
            }
        }
    }
    return complaints;
}

Complaints adapter_complaints(const Files& files)
{
    Complaints complaints = library_complaints(files, "Gmsh", most_gmsh_sources,
                                               [](std::string_view path) { return path.starts_with("gmsh.h"); });
    const Complaints of_vtk =
        library_complaints(files, "VTK", most_vtk_sources,
                           [](std::string_view path)
                           { return path.starts_with("vtk") && path.size() > 3 && path[3] >= 'A' && path[3] <= 'Z'; });
    complaints.insert(complaints.end(), of_vtk.begin(), of_vtk.end());
    return complaints;
}

}  // namespace splicewright::house
