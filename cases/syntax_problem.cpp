// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/syntax_problem.h"

#include <fmt/format.h>

#include "cases/number_text.h"
#include "cases/plain_text.h"

namespace splicewright
{
namespace
{

std::string_view line_of(const std::string& text, int line)
{
    std::size_t start = 0;
    for (int number = 1; number < line && start != std::string::npos; ++number)
    {
        start = text.find('\n', start);
        if (start != std::string::npos) ++start;
    }
    if (start == std::string::npos) return {};
    const std::size_t end = text.find('\n', start);
    return std::string_view(text).substr(start, end == std::string::npos ? end : end - start);
}

// The slip that people make most: a value with a unit but without quotes.
std::string likely_mend(std::string_view line, int column)
{
    const std::string general = "write key = \"value\", one to a line, texts and quantities in double quotes";
    const std::size_t equals = line.find('=');
    if (equals == std::string_view::npos || column < static_cast<int>(equals) + 2 || line.size() > 120) return general;
    const std::string_view key = trimmed(line.substr(0, equals));
    std::string_view value = trimmed(line.substr(equals + 1));
    value = trimmed(value.substr(0, value.find('#')));
    const bool is_number = leading_number(value).fault == NumberFault::none;
    if (!is_number || value.find_first_of("\"'\\") != std::string_view::npos || has_control_characters(trimmed(line)))
        return general;
    return fmt::format("{} = \"{}\"", key, value);
}

}  // namespace

Problem syntax_problem(const std::string& text, const std::string& file, int line, int column,
                       std::string_view description)
{
    std::string said(description);
    while (!said.empty() && said.back() == '.') said.pop_back();
    return {file,
            line,
            column,
            "",
            "",
            fmt::format("is not TOML: {} (the file was not read beyond this place)", printable(said, 300)),
            likely_mend(line_of(text, line), column)};
}

}  // namespace splicewright
