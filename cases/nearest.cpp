// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/nearest.h"

#include <algorithm>
#include <utility>

#include "cases/plain_text.h"

namespace splicewright
{

int edit_distance(std::string_view first, std::string_view second)
{
    const std::size_t width = second.size() + 1;
    std::vector<int> before(width), row(width), next(width);
    for (std::size_t column = 0; column < width; ++column) row[column] = static_cast<int>(column);
    for (std::size_t line = 1; line <= first.size(); ++line)
    {
        next[0] = static_cast<int>(line);
        for (std::size_t column = 1; column < width; ++column)
        {
            const int replace = row[column - 1] + (first[line - 1] == second[column - 1] ? 0 : 1);
            next[column] = std::min({row[column] + 1, next[column - 1] + 1, replace});
            const bool swapped = line > 1 && column > 1 && first[line - 1] == second[column - 2] &&
                                 first[line - 2] == second[column - 1];
            if (swapped) next[column] = std::min(next[column], before[column - 2] + 1);
        }
        std::swap(before, row);
        std::swap(row, next);
    }
    return row[width - 1];
}

std::vector<std::string> nearest(std::string_view text, const std::vector<std::string>& candidates, std::size_t n_most)
{
    constexpr std::size_t longest = 100;  // a longer text is no misspelling, and the work grows with its length
    if (text.size() > longest) return {};
    const std::string wanted = lower_case(text);
    const int allowed = std::max(1, static_cast<int>(text.size()) / 3);
    std::vector<std::pair<int, std::string>> found;
    for (const std::string& candidate : candidates)
    {
        const int distance = edit_distance(wanted, lower_case(candidate));
        if (distance <= allowed) found.emplace_back(distance, candidate);
    }
    std::sort(found.begin(), found.end());
    std::vector<std::string> names;
    for (const auto& [distance, name] : found)
        if (names.size() < n_most) names.push_back(name);
    return names;
}

}  // namespace splicewright
