// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/case_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace splicewright
{
namespace
{

constexpr int deepest_brackets = 16;  // the case format needs three
constexpr int most_dots = 16;         // in one dotted key; the case format needs three

unsigned byte_at(const std::string& text, std::size_t at) { return static_cast<unsigned char>(text[at]); }

// Bytes of the character that starts here, 0 when it is no UTF-8. Source: [RFC3629] section 4.
std::size_t character_length(const std::string& text, std::size_t at)
{
    const unsigned first = byte_at(text, at);
    if (first < 0x80) return 1;
    const std::size_t length = first >= 0xC2 && first <= 0xDF   ? 2
                               : first >= 0xE0 && first <= 0xEF ? 3
                               : first >= 0xF0 && first <= 0xF4 ? 4
                                                                : 0;
    if (length == 0 || at + length > text.size()) return 0;
    for (std::size_t next = at + 1; next < at + length; ++next)
        if ((byte_at(text, next) & 0xC0U) != 0x80U) return 0;
    const unsigned second = byte_at(text, at + 1);
    const bool too_long = (first == 0xE0 && second < 0xA0) || (first == 0xF0 && second < 0x90);
    const bool surrogate = first == 0xED && second > 0x9F;
    const bool beyond = first == 0xF4 && second > 0x8F;
    return too_long || surrogate || beyond ? 0 : length;
}

Problem problem_in(const std::string& text, std::size_t at, const std::string& file, std::string rule, std::string fix)
{
    const auto begin = text.begin();
    const auto here = begin + static_cast<std::ptrdiff_t>(at);
    const auto line = std::count(begin, here, '\n');
    const std::size_t line_start = at == 0 ? std::string::npos : text.rfind('\n', at - 1);
    const std::size_t column = line_start == std::string::npos ? at : at - line_start - 1;
    return {file, static_cast<int>(line) + 1, static_cast<int>(column) + 1, "", "", std::move(rule), std::move(fix)};
}

std::optional<Problem> encoding_problem(const std::string& text, const std::string& file)
{
    for (std::size_t at = 0; at < text.size();)
    {
        if (byte_at(text, at) == 0)
            return problem_in(text, at, file, "a NUL byte stands here; a case file is plain text",
                              "save the file as plain text in UTF-8");
        const std::size_t length = character_length(text, at);
        if (length == 0)
            return problem_in(text, at, file, fmt::format("byte 0x{:02X} is not UTF-8 text", byte_at(text, at)),
                              "save the file as plain text in UTF-8");
        at += length;
    }
    return std::nullopt;
}

// Walks over strings and comments, so that only brackets and dots of the structure count.
struct NestingScan
{
    int brackets = 0, dots = 0;
    std::size_t at = 0;
};

std::size_t end_of_string(const std::string& text, std::size_t at)
{
    const char quote = text[at];
    const std::string three(3, quote);
    const bool long_form = text.compare(at, 3, three) == 0;
    std::size_t next = at + (long_form ? 3 : 1);
    while (next < text.size())
    {
        if (quote == '"' && text[next] == '\\') next += 2;
        else if (long_form && text.compare(next, 3, three) == 0) return next + 3;
        else if (!long_form && (text[next] == quote || text[next] == '\n')) return next + 1;
        else ++next;
    }
    return text.size();
}

NestingScan step(const std::string& text, NestingScan scan)
{
    const char letter = text[scan.at];
    if (letter == '"' || letter == '\'')
    {
        scan.at = end_of_string(text, scan.at);
        return scan;
    }
    scan.at = letter == '#' ? std::min(text.find('\n', scan.at), text.size()) : scan.at + 1;
    if (letter == '[' || letter == '{') ++scan.brackets;
    if ((letter == ']' || letter == '}') && scan.brackets > 0) --scan.brackets;
    if (letter == '.') ++scan.dots;
    if (std::string("=,[]{}\n#").find(letter) != std::string::npos) scan.dots = 0;
    return scan;
}

std::optional<Problem> nesting_problem(const std::string& text, const std::string& file)
{
    NestingScan scan;
    while (scan.at < text.size())
    {
        const std::size_t here = scan.at;
        scan = step(text, scan);
        if (scan.brackets > deepest_brackets || scan.dots > most_dots)
            return problem_in(text, here, file, "tables or lists are nested too deeply for a case file",
                              "close the brackets; docs/case-format.md shows the tables there are");
    }
    return std::nullopt;
}

}  // namespace

std::vector<Problem> text_problems(const std::string& text, const std::string& file)
{
    if (text.size() > longest_case_text)
        return {Problem{
            file, 0, 0, "", "",
            fmt::format("the case file has {} bytes, and may have at most {} (1 MiB)", text.size(), longest_case_text),
            "keep only the case in it; a case file is a page of text"}};
    if (auto problem = encoding_problem(text, file)) return {*problem};
    if (auto problem = nesting_problem(text, file)) return {*problem};
    return {};
}

}  // namespace splicewright
