// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/docs/documents.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>
#include <stdexcept>

#include "app/check_splice.h"
#include "cases/read_case.h"

namespace splicewright
{
namespace
{

constexpr double coarsest_accuracy_pct = 20;

std::string at_top(const std::string& path) { return fmt::format("{}/{}", SPLICEWRIGHT_SOURCE_DIR, path); }

struct Span
{
    std::size_t begin = 0, end = 0;
};

Span block_span(const std::string& markdown, const std::string& name)
{
    const std::size_t mark = markdown.find(fmt::format("<!-- block: {} -->\n```", name));
    if (mark == std::string::npos) throw std::runtime_error(fmt::format("no block {}", name));
    const std::size_t fence = markdown.find("```", mark);
    const std::size_t begin = markdown.find('\n', fence) + 1;
    const std::size_t end = markdown.find("```", begin);
    if (end == std::string::npos) throw std::runtime_error(fmt::format("block {} does not end", name));
    return {begin, end};
}

std::string trimmed(const std::string& text)
{
    const std::size_t first = text.find_first_not_of(' ');
    return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

std::vector<std::string> cells(const std::string& line)
{
    std::vector<std::string> result;
    std::istringstream parts(line.substr(1));
    for (std::string part; std::getline(parts, part, '|');) result.push_back(trimmed(part));
    return result;
}

}  // namespace

std::string document(const std::string& path)
{
    std::ifstream in(at_top(path), std::ios::binary);
    if (!in) throw std::runtime_error(fmt::format("cannot read {}", path));
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

void write_document(const std::string& path, const std::string& text)
{
    std::ofstream out(at_top(path), std::ios::binary);
    out << text;
    if (!out.flush()) throw std::runtime_error(fmt::format("cannot write {}", path));
}

std::string block(const std::string& markdown, const std::string& name)
{
    const Span span = block_span(markdown, name);
    return markdown.substr(span.begin, span.end - span.begin);
}

std::string with_block(const std::string& markdown, const std::string& name, const std::string& content)
{
    const Span span = block_span(markdown, name);
    return markdown.substr(0, span.begin) + content + markdown.substr(span.end);
}

std::string headers()
{
    std::string text;
    for (const char* floor : {"cases", "mesh", "solver", "post", "app"})
        for (const auto& entry : std::filesystem::directory_iterator(at_top(floor)))
            if (entry.path().extension() == ".h")
                text += document(fmt::format("{}/{}", floor, entry.path().filename().string()));
    return text;
}

std::vector<std::vector<std::string>> table_rows(const std::string& markdown)
{
    std::vector<std::vector<std::string>> rows;
    std::istringstream lines(markdown);
    std::string line, before;
    for (; std::getline(lines, line); before = line)
    {
        if (!line.starts_with('|')) continue;
        const bool heading = !before.starts_with('|'), rule = line.starts_with("|-");
        if (!heading && !rule) rows.push_back(cells(line));
    }
    return rows;
}

std::vector<std::string> example_paths()
{
    std::vector<std::string> paths;
    for (const auto& entry : std::filesystem::directory_iterator(at_top("cases/examples")))
        if (entry.path().extension() == ".toml")
            paths.push_back(fmt::format("cases/examples/{}", entry.path().filename().string()));
    std::sort(paths.begin(), paths.end());
    return paths;
}

Case example_case(const std::string& path)
{
    const Result<Case> asked = read_case_file(at_top(path));
    if (!asked.has_value()) throw std::runtime_error(to_string(asked.problems().front()));
    return asked.value();
}

Report coarse_report(const std::string& path) { return check_splice(example_case(path), {coarsest_accuracy_pct}); }

std::string without_side_and_number(const std::string& text)
{
    static const std::regex side(R"(\.(left|right)\b)"), number(R"(\.S\.[0-9]+)");
    return std::regex_replace(std::regex_replace(text, side, ".S"), number, ".S.N");
}

}  // namespace splicewright
