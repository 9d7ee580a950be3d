// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <regex>
#include <set>

#include "tests/house/rules.h"

namespace splicewright::house
{

namespace
{

const std::set<std::string> top_level{"CMakeLists.txt",
                                      "CMakePresets.json",
                                      "DEVELOPERS.md",
                                      "LICENSE",
                                      "README.md",
                                      "app",
                                      "cases",
                                      "docs",
                                      "mesh",
                                      "post",
                                      "run",
                                      "solver",
                                      "tests"};

// In pieces, so that this file does not break its own rule.
const std::regex foreign_words(
    "/wo"
    "rk/|/tm"
    "p/|\\.\\./sh"
    "ared|shared/st"
    "andards|\\btrans"
    "cripts?\\b|seed doc"
    "ument|\\bDESIGN"
    "\\.md|\\bSTYLE"
    "\\.md",
    std::regex::icase);

}  // namespace

Complaints top_level_complaints(const std::vector<std::string>& paths)
{
    std::set<std::string> found;
    for (const std::string& path : paths) found.insert(path.substr(0, path.find('/')));
    Complaints complaints;
    for (const std::string& name : found)
    {
        if (!name.starts_with('.') && !top_level.contains(name))
        {
            complaints.push_back(fmt::format("{}: does not belong at the top level", name));
        }
    }
    for (const std::string& name : top_level)
    {
        if (!found.contains(name)) complaints.push_back(fmt::format("{}: missing at the top level", name));
    }
    return complaints;
}

Complaints foreign_word_complaints(const Files& files)
{
    Complaints complaints;
    for (const TextFile& file : files)
    {
        for (std::size_t i = 0; i < file.lines.size(); ++i)
        {
            std::smatch match;
            if (!std::regex_search(file.lines[i], match, foreign_words)) continue;
            complaints.push_back(at_line(file, i, fmt::format("\"{}\" does not belong in the project", match.str())));
        }
    }
    return complaints;
}

}  // namespace splicewright::house
