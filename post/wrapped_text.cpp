// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/wrapped_text.h"

namespace splicewright
{

std::string wrapped(const std::string& text, std::size_t indent)
{
    std::string result, line;
    std::size_t start = 0;
    while (start < text.size())
    {
        std::size_t end = text.find(' ', start);
        if (end == std::string::npos) end = text.size();
        const std::string word = text.substr(start, end - start);
        if (!line.empty() && indent + line.size() + 1 + word.size() > page_columns)
        {
            result += line + "\n" + std::string(indent, ' ');
            line.clear();
        }
        if (!line.empty()) line += ' ';
        line += word;
        start = end + 1;
    }
    return result + line;
}

}  // namespace splicewright
