// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/places.h"

#include <utility>

namespace splicewright
{

std::string parent_of(const std::string& field)
{
    const std::size_t dot = field.find_last_of('.');
    return dot == std::string::npos ? std::string() : field.substr(0, dot);
}

std::string last_key_of(const std::string& field)
{
    const std::size_t dot = field.find_last_of('.');
    return dot == std::string::npos ? field : field.substr(dot + 1);
}

std::string without_indices(const std::string& field)
{
    std::string plain;
    int depth = 0;
    for (const char letter : field)
    {
        if (letter == '[') ++depth;
        if (depth == 0) plain += letter;
        if (letter == ']') --depth;
    }
    return plain;
}

Problem problem_at(const Places& places, const std::string& file, const std::string& field, std::string rule,
                   std::string fix)
{
    Problem problem{file, 0, 0, field, "", std::move(rule), std::move(fix)};
    const auto exact = places.find(field);
    if (exact != places.end())
    {
        problem.line = exact->second.line;
        problem.column = exact->second.column;
        problem.field = exact->second.field;
        problem.value = exact->second.value;
        return problem;
    }
    for (std::string outer = parent_of(field); !outer.empty(); outer = parent_of(outer))
    {
        const auto place = places.find(outer);
        if (place == places.end()) continue;
        problem.line = place->second.line;
        problem.column = place->second.column;
        break;
    }
    return problem;
}

}  // namespace splicewright
