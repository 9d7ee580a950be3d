// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/plain_text.h"

#include <fmt/format.h>

#include <algorithm>

namespace splicewright
{

std::string_view trimmed(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

std::string lower_case(std::string_view text)
{
    std::string lower(text);
    for (char& letter : lower)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return lower;
}

std::string replaced(std::string_view text, std::string_view what, std::string_view with)
{
    std::string result;
    for (std::size_t at = 0; at < text.size();)
    {
        if (text.substr(at, what.size()) == what)
        {
            result += with;
            at += what.size();
        }
        else
        {
            result += text[at++];
        }
    }
    return result;
}

bool has_control_characters(std::string_view text)
{
    return std::any_of(text.begin(), text.end(),
                       [](char letter) { return static_cast<unsigned char>(letter) < 0x20 || letter == 0x7F; });
}

std::string printable(std::string_view text, std::size_t longest)
{
    std::string shown;
    for (std::size_t at = 0; at < text.size(); ++at)
    {
        const auto byte = static_cast<unsigned char>(text[at]);
        const bool starts_character = (byte & 0xC0U) != 0x80U;
        if (at >= longest && starts_character) return shown + "...";
        if (byte < 0x20 || byte == 0x7F) shown += fmt::format("\\x{:02X}", byte);
        else shown += text[at];
    }
    return shown;
}

std::string quoted(std::string_view text) { return "\"" + printable(text, 60) + "\""; }

}  // namespace splicewright
