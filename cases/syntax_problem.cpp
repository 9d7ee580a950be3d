// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/syntax_problem.h"

#include <fmt/format.h>
#include <toml++/toml.h>

#include <algorithm>
#include <optional>
#include <vector>

#include "cases/number_text.h"
#include "cases/plain_text.h"

namespace splicewright
{
namespace
{

std::vector<std::string_view> lines_until(const std::string& text, int last)
{
    std::vector<std::string_view> lines;
    std::size_t start = 0;
    while (start < text.size() && static_cast<int>(lines.size()) < last)
    {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        lines.push_back(std::string_view(text).substr(start, end - start));
        start = end + 1;
    }
    return lines;
}

struct Slip
{
    std::string cause;
    std::string fix;
};

constexpr const char* general_fix = "write key = \"value\", one to a line, texts and quantities in double quotes";
constexpr std::size_t longest_mended_line = 120;  // characters

bool is_toml(const std::string& line)
{
    try
    {
        (void)toml::parse(line);
        return true;
    }
    catch (const toml::parse_error&)
    {
        return false;
    }
}

// A mended line is proposed only where it is TOML, so that following it leads further.
std::string fix_by(const std::string& mended) { return is_toml(mended) ? mended : general_fix; }

std::string_view without_comment(std::string_view line) { return trimmed(line.substr(0, line.find('#'))); }

std::string with_straight_quotes(std::string_view line)
{
    std::string mended(line);
    for (const char* quote : {"\u201c", "\u201d", "\u201e", "\u201f", "\u2018", "\u2019", "\u201a", "\u00ab", "\u00bb"})
        mended = replaced(mended, quote, "\"");
    return mended;
}

// "sleeve" of "[sleeve]" and of "[[sleeve]]"; empty for another line.
std::string_view header_name(std::string_view line)
{
    line = without_comment(line);
    if (line.empty() || line.front() != '[') return {};
    const std::size_t start = line.find_first_not_of("[ "), end = line.find(']');
    return start == std::string_view::npos || end == std::string_view::npos || end < start
               ? std::string_view()
               : trimmed(line.substr(start, end - start));
}

std::string_view key_name(std::string_view line)
{
    line = without_comment(line);
    const std::size_t equals = line.find('=');
    const bool has_key = equals != std::string_view::npos && header_name(line).empty();
    return has_key ? trimmed(line.substr(0, equals)) : std::string_view();
}

// The number of the line that gave the name of the last line before, in the same table where it is a key; 0 when none
// did.
std::size_t first_line_of_name(const std::vector<std::string_view>& lines)
{
    const std::string_view header = header_name(lines.back()), key = key_name(lines.back());
    std::size_t first = 0;
    for (std::size_t number = lines.size() - 1; number > 0; --number)
    {
        const std::string_view before = lines[number - 1];
        if (header.empty() && !header_name(before).empty()) break;
        if (header.empty() ? key_name(before) == key : header_name(before) == header) first = number;
    }
    return first;
}

std::optional<Slip> repeat(const std::vector<std::string_view>& lines, std::string_view description)
{
    if (description.find("cannot redefine") == std::string_view::npos) return std::nullopt;
    const std::string_view header = header_name(lines.back());
    const std::string name = printable(header.empty() ? key_name(lines.back()) : header, 60);
    const std::size_t first = first_line_of_name(lines);
    if (name.empty() || first == 0) return std::nullopt;
    const std::string cause = fmt::format("{} is given twice (first at line {})", name, first);
    if (header.empty()) return Slip{cause, "keep one of the two lines"};
    const bool is_list = without_comment(lines.back()).starts_with("[[");
    const bool was_list = without_comment(lines[first - 1]).starts_with("[[");
    return Slip{cause, is_list != was_list ? fmt::format("write [[{0}]] in both places, or [{0}] once", name)
                                           : fmt::format("put the keys of both under one [{}]", name)};
}

// Of a value without quotes.
std::optional<Slip> bare_number(std::string_view key, std::string_view value)
{
    const LeadingNumber number = leading_number(value);
    const std::string_view digits = value.substr(0, value.find_first_not_of("+-0123456789.,"));
    const std::string_view unit = trimmed(value.substr(digits.size()));
    if (number.fault == NumberFault::comma)
    {
        const std::string cause = "a number is written with a decimal point, and this one has a comma";
        if (number.written.empty()) return Slip{cause, fmt::format("{} = ... with your number, without commas", key)};
        return Slip{cause, unit.empty()
                               ? fmt::format("write {} in place of {}, in quotes with its unit where it has one",
                                             number.written, digits)
                               : fix_by(fmt::format("{} = \"{} {}\"", key, number.written, unit))};
    }
    if (std::count(digits.begin(), digits.end(), '.') > 1)
        return Slip{"a number has one decimal point, and nothing between its thousands",
                    fmt::format("{} = ... with your number, without points between its thousands", key)};
    if (number.fault == NumberFault::none && !number.rest.empty())
        return Slip{"a value with a unit stands in double quotes", fix_by(fmt::format("{} = \"{}\"", key, value))};
    return std::nullopt;
}

std::optional<Slip> bare_value(std::string_view key, std::string_view value)
{
    if (value.empty()) return Slip{"nothing stands behind the =", fmt::format("{} = ... with your value", key)};
    if (value.front() == '"' && value.find('"', 1) == std::string_view::npos)
        return Slip{"a closing quote is missing", fix_by(fmt::format("{} = {}\"", key, value))};
    if (value.front() != '"' && value.find('"') == value.size() - 1)
        return Slip{"an opening quote is missing", fix_by(fmt::format("{} = \"{}", key, value))};
    if (value.find_first_of("\"'\\[]{}") != std::string_view::npos) return std::nullopt;
    if (const auto number = bare_number(key, value)) return number;
    const bool is_text = leading_number(value).fault == NumberFault::absent;
    if (!is_text) return std::nullopt;
    return Slip{"a text stands in double quotes", fix_by(fmt::format("{} = \"{}\"", key, value))};
}

// What people get wrong most; empty when it is something else.
std::optional<Slip> slip_of(const std::vector<std::string_view>& lines, std::string_view description)
{
    if (lines.empty()) return std::nullopt;
    if (const auto twice = repeat(lines, description)) return twice;
    const std::string_view line = trimmed(lines.back());
    if (line.size() > longest_mended_line || has_control_characters(line)) return std::nullopt;
    if (const std::string straight = with_straight_quotes(line); straight != line && is_toml(straight))
        return Slip{"its quotes are typographic, and must be the straight \"", straight};
    const std::string_view bare = without_comment(line);
    if (bare.starts_with('[') && bare.find(']') == std::string_view::npos)
        return Slip{"a closing bracket is missing",
                    fix_by(fmt::format("{}{}", bare, bare.starts_with("[[") ? "]]" : "]"))};
    const std::size_t equals = bare.find('='), colon = bare.find(':');
    if (equals == std::string_view::npos && colon != std::string_view::npos)
        return Slip{"a key and its value are parted by =, not by a colon",
                    fix_by(fmt::format("{} ={}", trimmed(bare.substr(0, colon)), bare.substr(colon + 1)))};
    if (equals == std::string_view::npos || equals == 0) return std::nullopt;
    return bare_value(trimmed(bare.substr(0, equals)), trimmed(bare.substr(equals + 1)));
}

std::string said_by_reader(std::string_view description)
{
    while (!description.empty() && description.back() == '.') description.remove_suffix(1);
    return printable(description, 300);
}

}  // namespace

Problem syntax_problem(const std::string& text, const std::string& file, int line, int column,
                       std::string_view description)
{
    const std::optional<Slip> slip = slip_of(lines_until(text, line), description);
    return {file,
            line,
            column,
            "",
            "",
            fmt::format("is not TOML: {} (the file was not read beyond this place)",
                        slip ? slip->cause : said_by_reader(description)),
            slip ? slip->fix : general_fix};
}

}  // namespace splicewright
