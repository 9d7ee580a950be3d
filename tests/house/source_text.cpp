// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <regex>
#include <string_view>

#include "tests/house/rules.h"

namespace splicewright::house
{

namespace
{

constexpr std::size_t most_lines = 400;

template <class Applies>
Complaints lines_matching(const Files& files, const std::regex& pattern, std::string_view what, Applies applies)
{
    Complaints complaints;
    for (const TextFile& file : files)
    {
        if (!applies(file)) continue;
        for (std::size_t i = 0; i < file.lines.size(); ++i)
        {
            if (std::regex_search(file.lines[i], pattern)) complaints.push_back(at_line(file, i, what));
        }
    }
    return complaints;
}

}  // namespace

Complaints licence_tag_complaints(const Files& files)
{
    const std::string tag = "SPDX-License-Identifier: GPL-2.0-or-later";
    Complaints complaints;
    for (const TextFile& file : files)
    {
        const bool by_hash = is_build_list(file) || is_script(file);
        if (!is_cpp(file) && !by_hash) continue;
        const std::size_t line = is_script(file) ? 1 : 0;
        const std::string wanted = (by_hash ? "# " : "// ") + tag;
        if (file.lines.size() <= line || file.lines[line] != wanted)
        {
            complaints.push_back(at_line(file, line, fmt::format("must be \"{}\"", wanted)));
        }
    }
    return complaints;
}

Complaints length_complaints(const Files& files)
{
    Complaints complaints;
    for (const TextFile& file : files)
    {
        if (!is_cpp(file) || !floor_of(file.path) || file.lines.size() <= most_lines) continue;
        complaints.push_back(fmt::format("{}: {} lines, at most {}", file.path, file.lines.size(), most_lines));
    }
    return complaints;
}

Complaints left_open_complaints(const Files& files)
{
    // In pieces, so that this file does not break its own rule. A skip that states its reason is not left open.
    static const std::regex mark(
        "\\b(TO"
        "DO|FIX"
        "ME|XX"
        "X|HA"
        "CK)\\b|\\bDISA"
        "BLED_|\\bGTEST_SK"
        "IP\\b(?!\\(\\) <<)");
    return lines_matching(files, mark, "left open",
                          [](const TextFile& file) { return is_cpp(file) || is_build_list(file) || is_script(file); });
}

Complaints printing_complaints(const Files& files)
{
    static const std::regex printing(
        R"re(\bstd::(cout|cerr|clog)\b|\bv?f?printf\s*\(|\bf?puts\s*\(|\bfmt::print\s*\()re");
    return lines_matching(files, printing, "only app/ may print",
                          [](const TextFile& file)
                          { return is_cpp(file) && floor_of(file.path).has_value() && !stands_in(file, "app"); });
}

Complaints using_namespace_complaints(const Files& files)
{
    static const std::regex directive(R"re(^\s*using\s+namespace\b)re");
    return lines_matching(files, directive, "using a namespace in a header", is_header);
}

Complaints test_name_complaints(const Files& files)
{
    static const std::regex not_a_claim(R"re(^TEST(_F|_P)?\(\s*(\w*_|[a-z]|\w+\s*,\s*(\w*_|[a-z])))re");
    return lines_matching(files, not_a_claim, "a test is named by a claim in PascalCase without underscores",
                          [](const TextFile& file) { return is_cpp(file) && stands_in(file, "tests"); });
}

}  // namespace splicewright::house
