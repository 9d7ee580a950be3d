// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/option_text.h"

#include <fmt/format.h>
#include <toml++/toml.h>

#include <algorithm>
#include <cstdlib>
#include <sstream>

#include "cases/places.h"

namespace splicewright
{
namespace
{

// Keys of one table that stand for the same thing: giving one takes the others out.
struct SameThing
{
    const char* table;
    const char* key;
    std::vector<const char*> others;
};

const std::vector<SameThing>& same_things()
{
    static const std::vector<SameThing> things{
        {"sleeve", "wall", {"outer_diameter"}},
        {"sleeve", "outer_diameter", {"wall"}},
        {"sleeve", "clearance", {"clearance_left", "clearance_right", "bore", "bore_left", "bore_right", "press"}},
        {"sleeve", "clearance_left", {"clearance", "bore", "bore_left", "bore_right", "press"}},
        {"sleeve", "clearance_right", {"clearance", "bore", "bore_left", "bore_right", "press"}},
        {"sleeve", "bore", {"bore_left", "bore_right", "clearance", "clearance_left", "clearance_right"}},
        {"sleeve", "bore_left", {"bore", "clearance", "clearance_left", "clearance_right"}},
        {"sleeve", "bore_right", {"bore", "clearance", "clearance_left", "clearance_right"}},
        {"sleeve.weld", "leg", {"leg_on_bar", "leg_on_sleeve"}},
        {"sleeve.weld", "leg_on_bar", {"leg"}},
        {"sleeve.weld", "leg_on_sleeve", {"leg"}},
        {"load", "joint_angle", {"bending"}},
        {"load", "bending", {"joint_angle"}},
        {"load.vehicle", "driven_wheels", {"shaft_share"}},
        {"load.vehicle", "shaft_share", {"driven_wheels"}},
    };
    return things;
}

// One half of a pair, the other half, and the key that gives both.
struct HalfOfPair
{
    const char* table;
    const char* half;
    const char* other;
    const char* whole;
};
constexpr HalfOfPair halves[] = {
    {"sleeve", "clearance_left", "clearance_right", "clearance"},
    {"sleeve", "clearance_right", "clearance_left", "clearance"},
    {"sleeve", "bore_left", "bore_right", "bore"},
    {"sleeve", "bore_right", "bore_left", "bore"},
    {"sleeve.weld", "leg_on_bar", "leg_on_sleeve", "leg"},
    {"sleeve.weld", "leg_on_sleeve", "leg_on_bar", "leg"},
};

// The table that holds a key; made when the case has none of that name.
toml::table& holder_of(toml::table& top, const std::string& table)
{
    toml::table* holder = &top;
    for (std::size_t begin = 0; begin < table.size();)
    {
        const std::size_t dot = std::min(table.find('.', begin), table.size());
        const std::string part = table.substr(begin, dot - begin);
        const std::size_t bracket = part.find('[');
        const std::string name = part.substr(0, bracket);
        if (bracket == std::string::npos)
        {
            if (!holder->contains(name)) holder->insert(name, toml::table{});
            holder = holder->get(name)->as_table();
        }
        else
        {
            auto* list = holder->get(name)->as_array();
            const std::size_t number = std::strtoul(part.c_str() + bracket + 1, nullptr, 10);
            EXPECTS(list != nullptr && number >= 1 && number <= list->size());
            holder = list->get(number - 1)->as_table();
        }
        EXPECTS(holder != nullptr);
        begin = dot + 1;
    }
    return *holder;
}

void replace(toml::table& top, const std::string& field, const std::string& value)
{
    const std::string table = parent_of(field), key = last_key_of(field);
    toml::table& holder = holder_of(top, table);
    for (const HalfOfPair& pair : halves)
    {
        if (table != pair.table || key != pair.half) continue;
        const auto whole = holder[pair.whole].value<std::string>();
        if (whole && !holder.contains(pair.other)) holder.insert(pair.other, *whole);
    }
    for (const std::string& other : keys_replaced_by(field)) holder.erase(last_key_of(other));
    const toml::table read = toml::parse(fmt::format("value = {}", value));
    read.get("value")->visit([&](const auto& node) { holder.insert_or_assign(key, node); });
}

toml::table option_table(const std::string& case_text, const std::vector<KeyValue>& replaced)
{
    toml::table top = toml::parse(std::string_view(case_text));
    for (const char* without_effect : {"title", "compare"}) top.erase(without_effect);
    for (const auto& [key, value] : replaced) replace(top, key, value);
    return top;
}

std::string printed(const toml::table& top)
{
    std::ostringstream text;
    text << top << "\n";
    return text.str();
}

}  // namespace

std::vector<std::string> keys_replaced_by(const std::string& field)
{
    const std::string table = parent_of(field), key = last_key_of(field);
    std::vector<std::string> keys;
    for (const SameThing& thing : same_things())
        if (table == thing.table && key == thing.key)
            for (const char* other : thing.others) keys.push_back(fmt::format("{}.{}", table, other));
    return keys;
}

std::string option_text(const std::string& case_text, const std::vector<KeyValue>& replaced)
{
    return printed(option_table(case_text, replaced));
}

std::string named_option_text(const std::string& case_text, const std::vector<KeyValue>& replaced,
                              const std::string& name)
{
    const toml::table whole = toml::parse(std::string_view(case_text));
    const std::string title = whole["title"].value_or(std::string());
    toml::table top = option_table(case_text, replaced);
    top.insert("title", title.empty() ? name : fmt::format("{}, {}", title, name));
    return printed(top);
}

std::vector<KeyValue> key_values(const std::vector<Variation>& variations, std::uint64_t index)
{
    const std::vector<std::size_t> choice = choice_at(variations, index);
    std::vector<KeyValue> values;
    for (std::size_t key = 0; key < variations.size(); ++key)
        values.emplace_back(variations[key].key, variations[key].values[choice[key]]);
    return values;
}

}  // namespace splicewright
