// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <regex>
#include <set>
#include <string_view>

#include "tests/house/rules.h"

namespace splicewright::house
{

namespace
{

constexpr std::string_view bibliography = "docs/references.bib";

// What a comment may say after "Source:" instead of a key.
constexpr std::array<std::string_view, 4> sources_without_document{"judgement", "common practice", "theory", "derived"};

// The tests of these rules cite documents that do not exist.
bool may_cite(const TextFile& file) { return file.path != bibliography && !stands_in(file, "tests/house"); }

bool has_digit(std::string_view text) { return text.find_first_of("0123456789") != std::string_view::npos; }

// Keys in square brackets: "[A2001]", "[A2001; B2002]", "[A2001, B2002]".
std::vector<std::string> bracketed_keys(const std::string& text)
{
    static const std::regex bracket(R"re(\[([A-Z][^\[\]]{2,80})\])re");
    static const std::regex key(R"re(^[A-Z][A-Za-z0-9.:_+-]{2,}$)re");
    static const std::regex separator(R"re(\s*[;,]\s*)re");
    std::vector<std::string> keys;
    if (text.find('[') == std::string::npos) return keys;
    for (std::sregex_iterator match(text.begin(), text.end(), bracket), end; match != end; ++match)
    {
        const std::string inside = (*match)[1];
        for (std::sregex_token_iterator part(inside.begin(), inside.end(), separator, -1), last; part != last; ++part)
        {
            if (std::regex_match(part->str(), key)) keys.push_back(*part);
        }
    }
    return keys;
}

bool looks_like_author_and_year(const std::string& key)
{
    static const std::regex author_and_year(R"re(^[A-Za-z]+[0-9]{4}[a-z]?$)re");
    return std::regex_match(key, author_and_year);
}

std::string_view trimmed_left(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(" \t");
    return first == std::string_view::npos ? std::string_view() : text.substr(first);
}

bool is_comment(std::string_view line)
{
    return trimmed_left(line).starts_with("//") || trimmed_left(line).starts_with("#");
}

bool names_a_value_source(const std::string& line)
{
    static const std::regex source_value(R"re(\bsource\s*=\s*")re");
    return line.find("source") != std::string::npos && std::regex_search(line, source_value);
}

bool holds_code(const TextFile& file)
{
    return is_cpp(file) || is_build_list(file) || file.path.ends_with(".toml") || file.path.ends_with(".csv");
}

struct Citation
{
    std::string key;
    std::size_t line_index = 0;
};

// A citation is what stands in brackets after "Source:" in a comment (to the comment's end) or in the text of
// a source = "..." value, and anywhere else what is built as an author and a year.
std::vector<Citation> citations_in(const TextFile& file)
{
    std::vector<Citation> citations;
    bool in_source_comment = false;
    for (std::size_t i = 0; i < file.lines.size(); ++i)
    {
        const std::string& line = file.lines[i];
        const std::size_t source = line.find("Source: ");
        const bool starts_source = holds_code(file) && source != std::string::npos;
        in_source_comment = starts_source || (in_source_comment && is_comment(line));
        const bool in_value = holds_code(file) && names_a_value_source(line);
        for (const std::string& key : bracketed_keys(starts_source ? line.substr(source) : line))
        {
            if (starts_source || looks_like_author_and_year(key) || ((in_source_comment || in_value) && has_digit(key)))
            {
                citations.push_back({key, i});
            }
        }
    }
    return citations;
}

std::map<std::string, int> reference_counts(const Files& files)
{
    static const std::regex entry(R"re(^\s*@[A-Za-z]+\s*\{\s*([^,\s]+)\s*,)re");
    std::map<std::string, int> counts;
    for (const TextFile& file : files)
    {
        if (file.path != bibliography) continue;
        for (const std::string& line : file.lines)
        {
            std::smatch match;
            if (std::regex_search(line, match, entry)) ++counts[match[1]];
        }
    }
    return counts;
}

bool is_empty_promise(const TextFile& file, const std::string& line)
{
    const std::size_t comment = line.find("// ");
    const std::size_t source = line.find("Source: ");
    if (!is_cpp(file) || comment == std::string::npos || source == std::string::npos || source < comment) return false;
    const std::string rest = line.substr(source);
    const bool admits = std::ranges::any_of(
        sources_without_document, [&](std::string_view word) { return rest.find(word) != std::string::npos; });
    return !admits && bracketed_keys(rest).empty();
}

}  // namespace

Complaints unknown_citation_complaints(const Files& files)
{
    Complaints complaints;
    const std::map<std::string, int> references = reference_counts(files);
    for (const auto& [key, count] : references)
    {
        if (count > 1) complaints.push_back(fmt::format("{}: {} stands there {} times", bibliography, key, count));
    }
    for (const TextFile& file : files)
    {
        if (!may_cite(file)) continue;
        for (const Citation& citation : citations_in(file))
        {
            if (references.contains(citation.key)) continue;
            complaints.push_back(
                at_line(file, citation.line_index, fmt::format("[{}] is not in {}", citation.key, bibliography)));
        }
        for (std::size_t i = 0; i < file.lines.size(); ++i)
        {
            if (is_empty_promise(file, file.lines[i])) complaints.push_back(at_line(file, i, "a source without a key"));
        }
    }
    return complaints;
}

Complaints unused_reference_complaints(const Files& files)
{
    std::set<std::string> cited;
    for (const TextFile& file : files)
    {
        if (!may_cite(file)) continue;
        for (const std::string& line : file.lines)
        {
            for (const std::string& key : bracketed_keys(line)) cited.insert(key);
        }
    }
    Complaints complaints;
    for (const auto& [key, count] : reference_counts(files))
    {
        if (!cited.contains(key)) complaints.push_back(fmt::format("{}: nothing cites {}", bibliography, key));
    }
    return complaints;
}

}  // namespace splicewright::house
