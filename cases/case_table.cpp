// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/case_table.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

#include "cases/known_keys.h"
#include "cases/number_text.h"
#include "cases/own_value.h"
#include "cases/plain_text.h"

namespace splicewright
{
namespace
{

constexpr const char* key_letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_-";

constexpr std::size_t longest_text = 200;
constexpr std::size_t most_suggestions = 200;  // looking for near names in a file of nonsense would take long

const char* type_name_of(const toml::node& node)
{
    switch (node.type())
    {
        case toml::node_type::table: return "a table";
        case toml::node_type::array: return "a list";
        case toml::node_type::string: return "a text";
        case toml::node_type::integer: return "a whole number";
        case toml::node_type::floating_point: return "a number";
        case toml::node_type::boolean: return "true or false";
        case toml::node_type::date: return "a date";
        case toml::node_type::time: return "a time";
        case toml::node_type::date_time: return "a date with a time";
        case toml::node_type::none: break;
    }
    return "nothing";
}

std::string shown(const toml::node& node)
{
    if (const auto* text = node.as_string()) return quoted(text->get());
    if (const auto* number = node.as_integer()) return fmt::format("{}", number->get());
    if (const auto* number = node.as_floating_point()) return fmt::format("{}", number->get());
    if (const auto* flag = node.as_boolean()) return flag->get() ? "true" : "false";
    return type_name_of(node);
}

Place place_of(const toml::node& node, const std::string& field)
{
    const auto& begin = node.source().begin;
    const bool is_value = !node.is_table() && !node.is_array();
    return {field, is_value ? shown(node) : std::string(), static_cast<int>(begin.line),
            static_cast<int>(begin.column)};
}

}  // namespace

void Findings::report(const std::string& field, std::string rule, std::string fix)
{
    problems.push_back(problem_at(places, file, field, std::move(rule), std::move(fix)));
}

CaseTable::CaseTable(const toml::table& table, std::string path, Findings& findings)
    : table_(&table), path_(std::move(path)), findings_(&findings)
{
    if (!path_.empty()) findings_->places[path_] = place_of(table, path_);
    for (const auto& [key, value] : table)
    {
        const std::string name = field(std::string(key.str()));
        findings_->places[name] = place_of(value, name);
    }
}

std::string CaseTable::field(const std::string& key) const { return path_.empty() ? key : path_ + "." + key; }

const toml::node* CaseTable::node(const std::string& key) const
{
    EXPECTS(is_known_key(field(key)));
    return table_->get(key);
}

bool CaseTable::has(const std::string& key) const { return node(key) != nullptr; }

void CaseTable::report(const std::string& key, std::string rule, std::string fix) const
{
    findings_->report(field(key), std::move(rule), std::move(fix));
}

void CaseTable::note_default(const std::string& key, std::string value, std::string reason) const
{
    findings_->defaults.push_back({field(key), std::move(value), std::move(reason)});
}

void CaseTable::stands_for(const std::string& name, const std::string& key) const
{
    const auto place = findings_->places.find(field(key));
    if (place != findings_->places.end()) findings_->places[field(name)] = Place(place->second);
}

void CaseTable::report_wrong_type(const toml::node& node, const std::string& key, const std::string& expected,
                                  const std::string& fix) const
{
    report(key, fmt::format("must be {}, not {}", expected, type_name_of(node)), fix);
}

// `fix_start`: "key = " in front of the mended text, empty for an element of a list.
double CaseTable::quantity_of(const toml::node& node, const std::string& key, const std::string& fix_start,
                              Dimension dimension) const
{
    const std::string own = fmt::format("{}\"{}\" with your value", fix_start, dots_of(dimension));
    if (node.is_integer() || node.is_floating_point())
    {
        const double number = *node.value<double>();
        report(key,
               fmt::format("must be {} in quotes with its unit ({})", name_of(dimension), accepted_units_of(dimension)),
               std::isfinite(number) ? fmt::format("{}\"{} {}\"", fix_start, shown(node), likely_unit_of(dimension))
                                     : own);
        return unread;
    }
    const auto* text = node.as_string();
    if (text == nullptr)
    {
        report_wrong_type(node, key, fmt::format("{} in quotes with its unit", name_of(dimension)), own);
        return unread;
    }
    const Result<Measurement> read = measurement(text->get(), dimension);
    if (!read.has_value())
    {
        const std::string mended = replaced(read.problems().front().fix, "\"", "in");
        const bool is_own = mended.find("...") != std::string::npos;
        report(key, read.problems().front().rule,
               fmt::format("{}\"{}\"{}", fix_start, mended,
                           is_own ? fmt::format(" with your value in {}", likely_unit_of(dimension)) : ""));
        return unread;
    }
    if (read.value().plus_minus)
        findings_->tolerances.push_back({field(key), read.value().value, *read.value().plus_minus});
    return read.value().value;
}

std::optional<double> CaseTable::quantity(const std::string& key, Dimension dimension) const
{
    const toml::node* found = node(key);
    if (found == nullptr) return std::nullopt;
    return quantity_of(*found, key, key + " = ", dimension);
}

double CaseTable::required_quantity(const std::string& key, Dimension dimension) const
{
    const auto found = quantity(key, dimension);
    if (!found)
        report(key, fmt::format("is missing: {} must be given", name_of(dimension)), own_quantity(key, dimension));
    return found.value_or(unread);
}

std::optional<Millimetre> CaseTable::length(const std::string& key) const
{
    const auto found = quantity(key, Dimension::length);
    return found ? std::optional(Millimetre(*found)) : std::nullopt;
}

Millimetre CaseTable::required_length(const std::string& key) const
{
    return Millimetre(required_quantity(key, Dimension::length));
}

std::optional<double> CaseTable::plain_number(const std::string& key) const
{
    const toml::node* found = node(key);
    if (found == nullptr) return std::nullopt;
    const bool is_number = found->is_integer() || found->is_floating_point();
    const double number = is_number ? *found->value<double>() : unread;
    if (!is_number)
    {
        const auto* text = found->as_string();
        const LeadingNumber written = text == nullptr ? LeadingNumber{} : leading_number(text->get());
        const bool is_quoted = text != nullptr && written.fault == NumberFault::none && written.rest.empty();
        report_wrong_type(*found, key, "a plain number without quotes",
                          is_quoted ? fmt::format("{} = {:.12g}", key, written.value) : own_number(key));
    }
    else if (!std::isfinite(number)) report(key, "must be a finite number", own_number(key));
    return std::isfinite(number) ? number : unread;
}

std::optional<std::string> CaseTable::text(const std::string& key) const
{
    const toml::node* found = node(key);
    if (found == nullptr) return std::nullopt;
    const std::string fix = own_text(key);
    const auto* text = found->as_string();
    if (text == nullptr) report_wrong_type(*found, key, "a text in quotes", fix);
    else if (trimmed(text->get()).empty()) report(key, "must not be empty", fix);
    else if (text->get().size() > longest_text || has_control_characters(text->get()))
        report(key, fmt::format("must be at most {} characters on one line, without control characters", longest_text),
               fix);
    else return text->get();
    return std::nullopt;
}

std::optional<std::string> CaseTable::word(const std::string& key) const
{
    const toml::node* found = node(key);
    const auto* text = found == nullptr ? nullptr : found->as_string();
    return text == nullptr ? std::nullopt : std::optional(text->get());
}

std::optional<std::string> CaseTable::required_text(const std::string& key) const
{
    if (!has(key)) report(key, "is missing", own_text(key));
    return text(key);
}

std::optional<std::array<double, 2>> CaseTable::quantity_pair(const std::string& key, Dimension dimension) const
{
    const toml::node* found = node(key);
    if (found == nullptr) return std::nullopt;
    const auto* list = found->as_array();
    if (list == nullptr || list->size() != 2)
    {
        report(key, fmt::format("must be a list of two values, each {} in quotes with its unit", name_of(dimension)),
               fmt::format("{0} = [\"{1}\", \"{1}\"] with your values", key, dots_of(dimension)));
        return std::array{unread, unread};
    }
    std::array<double, 2> pair{unread, unread};
    for (std::size_t at = 0; at < 2; ++at)
    {
        const std::string element = fmt::format("{}[{}]", key, at + 1);
        findings_->places[field(element)] = place_of(*list->get(at), field(element));
        pair[at] = quantity_of(*list->get(at), element, "", dimension);
    }
    return pair;
}

std::optional<CaseTable> CaseTable::table(const std::string& key) const
{
    const toml::node* found = node(key);
    if (found == nullptr) return std::nullopt;
    const auto* inner = found->as_table();
    if (inner != nullptr) return CaseTable(*inner, field(key), *findings_);
    if (found->is_array_of_tables())
        report(key, "must stand once", fmt::format("write [{0}] in place of [[{0}]]", field(key)));
    else report_wrong_type(*found, key, "a table", fmt::format("write [{}] on a line of its own", field(key)));
    return std::nullopt;
}

std::vector<CaseTable> CaseTable::tables(const std::string& key) const
{
    const toml::node* found = node(key);
    if (found == nullptr) return {};
    const std::string fix =
        fmt::format("write [[{}]] on a line of its own above each one", without_indices(field(key)));
    if (found->is_table())
    {
        report(key, "is one table, and must be a list of tables, even of a single one",
               fmt::format("write [[{0}]] in place of [{0}]", without_indices(field(key))));
        return {};
    }
    const auto* list = found->as_array();
    if (list == nullptr || !list->is_homogeneous(toml::node_type::table))
    {
        report_wrong_type(*found, key, "a list of tables", fix);
        return {};
    }
    std::vector<CaseTable> inner;
    for (std::size_t at = 0; at < list->size(); ++at)
        inner.emplace_back(*list->get(at)->as_table(), fmt::format("{}[{}]", field(key), at + 1), *findings_);
    return inner;
}

void CaseTable::report_unknown_keys() const
{
    for (const auto& [key, value] : *table_)
    {
        const std::string name(key.str());
        const std::string path = field(name);
        const bool plain = name.find_first_not_of(key_letters) == std::string::npos && name.size() <= 60;
        if (plain && is_known_key(path)) continue;
        const std::string intended =
            plain && findings_->problems.size() < most_suggestions ? intended_key(path) : std::string();
        Problem problem{findings_->file,
                        static_cast<int>(key.source().begin.line),
                        static_cast<int>(key.source().begin.column),
                        plain ? path : field(quoted(name)),
                        "",
                        "unknown key",
                        intended.empty() ? "remove it; docs/case-format.md lists every key"
                                         : fmt::format("did you mean {}?", intended)};
        findings_->problems.push_back(std::move(problem));
    }
}

}  // namespace splicewright
