// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/variation_misfits.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <optional>

#include "cases/option_text.h"
#include "cases/places.h"

namespace splicewright
{
namespace
{

Problem at_key(const std::string& key, std::string rule, std::string fix)
{
    return {"", 0, 0, key, "", std::move(rule), std::move(fix)};
}

// What stands in the case at a dotted path with indices counted from 1; nothing when there is none.
const toml::node* node_at(const toml::table& top, const std::string& field)
{
    const toml::node* node = &top;
    for (std::size_t begin = 0; begin < field.size() && node != nullptr;)
    {
        const std::size_t dot = std::min(field.find('.', begin), field.size());
        const std::string part = field.substr(begin, dot - begin);
        const std::size_t bracket = part.find('[');
        const auto* table = node->as_table();
        node = table == nullptr ? nullptr : table->get(part.substr(0, bracket));
        if (node != nullptr && bracket != std::string::npos)
        {
            const auto* list = node->as_array();
            const std::size_t number = std::strtoul(part.c_str() + bracket + 1, nullptr, 10);
            node = list != nullptr && number >= 1 && number <= list->size() ? list->get(number - 1) : nullptr;
        }
        begin = dot + 1;
    }
    return node;
}

// "left.section" of "left.section.diameter": a list whose index was left out.
std::optional<std::string> list_without_index(const toml::table& top, const std::string& key)
{
    for (std::size_t dot = key.find('.'); dot != std::string::npos; dot = key.find('.', dot + 1))
    {
        const toml::node* node = node_at(top, key.substr(0, dot));
        if (node != nullptr && node->is_array()) return key.substr(0, dot);
    }
    return std::nullopt;
}

void check_place(const toml::table& top, const std::string& key, std::vector<Problem>& problems)
{
    const std::string table = parent_of(key);
    if (table.empty() || table == "making") return;  // every key of [making] has a default
    const toml::node* holder = node_at(top, table);
    if (holder != nullptr && holder->is_table()) return;
    if (const auto list = list_without_index(top, key))
        problems.push_back(at_key(key, fmt::format("must say which [[{}]], counted from 1", *list),
                                  fmt::format("{}[1]{}", *list, key.substr(list->size()))));
    else
        problems.push_back(at_key(key, fmt::format("has no place: the case has no [{}]", table),
                                  fmt::format("add [{}] to the case, or leave this key out", without_indices(table))));
}

void check_pairs(const std::vector<Variation>& variations, std::vector<Problem>& problems)
{
    for (std::size_t second = 1; second < variations.size(); ++second)
        for (std::size_t first = 0; first < second; ++first)
        {
            const std::string& key = variations[second].key;
            const std::string& earlier = variations[first].key;
            const std::vector<std::string> others = keys_replaced_by(key);
            if (key == earlier) problems.push_back(at_key(key, "is given twice", "give all of its values in one list"));
            else if (std::find(others.begin(), others.end(), earlier) != others.end())
                problems.push_back(
                    at_key(key, fmt::format("stands for the same thing as {}", earlier), "vary one of the two"));
        }
}

}  // namespace

std::vector<Problem> misfits(const std::vector<Variation>& variations, const toml::table& top)
{
    std::vector<Problem> problems;
    for (const Variation& variation : variations)
    {
        check_place(top, variation.key, problems);
        std::vector<std::string> values = variation.values;
        std::sort(values.begin(), values.end());
        const auto twice = std::adjacent_find(values.begin(), values.end());
        if (twice != values.end())
            problems.push_back(at_key(variation.key, fmt::format("has the value {} twice", *twice), "give it once"));
    }
    check_pairs(variations, problems);
    double options = 1;
    for (const Variation& variation : variations) options *= static_cast<double>(variation.values.size());
    if (options > static_cast<double>(most_options))
        problems.push_back(at_key("", fmt::format("{:.3g} options are more than {}", options, most_options),
                                  "take fewer values, or split the study"));
    return problems;
}

}  // namespace splicewright
