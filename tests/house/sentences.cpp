// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>
#include <regex>
#include <string_view>

#include "tests/house/rules.h"

namespace splicewright::house
{

namespace
{

// Prose is what is left of a Markdown file without code, tables, headings, HTML, pictures and quoted lines of
// output.
bool is_prose(std::string_view line)
{
    const std::size_t first = line.find_first_not_of(" \t");
    if (first == std::string_view::npos || first >= 8) return false;
    const std::string_view start = line.substr(first);
    return !start.starts_with('|') && !start.starts_with('#') && !start.starts_with('<') && !start.starts_with("![") &&
           !start.starts_with('>');
}

bool toggles_code(std::string_view line)
{
    const std::size_t first = line.find_first_not_of(" \t");
    return first != std::string_view::npos && line.substr(first).starts_with("```");
}

// The end of a sentence is a word of two or more letters, a digit, a bracket or code, then the stop, then a
// capital.
bool holds_two_sentences(const std::string& line)
{
    static const std::regex boundary(R"re((\w\w|[0-9)`"*\]])[.!?]["*)]* +["*(]*[A-Z])re");
    static const std::regex abbreviation(
        R"re(\b(eq|eqs|Eq|fig|Fig|vol|Vol|ed|Ed|al|vs|cf|ca|approx|resp|No|pp|Sec|Tab|St|Dr)\.$)re");
    for (std::sregex_iterator match(line.begin(), line.end(), boundary), end; match != end; ++match)
    {
        const auto stop = static_cast<std::size_t>(match->position()) + static_cast<std::size_t>((*match)[1].length());
        if (line[stop] != '.' || !std::regex_search(line.substr(0, stop + 1), abbreviation)) return true;
    }
    return false;
}

// A line that starts in lower case under a line without a stop is the rest of its sentence.
bool is_continued_by(std::string_view line, std::string_view next)
{
    const std::size_t end = line.find_last_not_of(" \t*`\")");
    const std::size_t start = next.find_first_not_of(" \t");
    if (end == std::string_view::npos || start == std::string_view::npos) return false;
    return std::string_view(".:;!?").find(line[end]) == std::string_view::npos && next[start] >= 'a' &&
           next[start] <= 'z';
}

}  // namespace

Complaints sentence_complaints(const Files& files)
{
    Complaints complaints;
    for (const TextFile& file : files)
    {
        if (!is_markdown(file)) continue;
        bool in_code = false;
        std::string_view before;
        for (std::size_t i = 0; i < file.lines.size(); ++i)
        {
            const std::string& line = file.lines[i];
            if (toggles_code(line)) in_code = !in_code;
            const bool prose = !in_code && !toggles_code(line) && is_prose(line);
            if (prose && holds_two_sentences(line)) complaints.push_back(at_line(file, i, "two sentences on one line"));
            if (prose && is_continued_by(before, line))
            {
                complaints.push_back(at_line(file, i, "a sentence broken over two lines"));
            }
            before = prose ? std::string_view(line) : std::string_view();
        }
    }
    return complaints;
}

}  // namespace splicewright::house
