// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/compare_table.h"

#include <fmt/format.h>

#include "cases/key_kinds.h"
#include "cases/known_keys.h"
#include "cases/plain_text.h"
#include "cases/variation_misfits.h"
#include "cases/variation_values.h"

namespace splicewright
{
namespace
{

// Text of a value as a person would write it; empty for what is no value.
std::string words_of(const toml::node& node)
{
    if (const auto* text = node.as_string()) return text->get();
    if (const auto* number = node.as_integer()) return fmt::format("{}", number->get());
    if (const auto* number = node.as_floating_point()) return fmt::format("{}", number->get());
    return {};
}

class CompareReader
{
public:
    explicit CompareReader(Findings& findings) : findings_(&findings) {}

    // Keys with dots and no quotes nest: both spellings mean the same key.
    void read(const toml::table& table, const std::string& prefix)
    {
        for (const auto& [name, node] : table)
        {
            const std::string key = fmt::format("{}{}{}", prefix, prefix.empty() ? "" : ".", name.str());
            if (const auto* inner = node.as_table(); inner != nullptr && !kind_of_key(key)) unknown(node, key);
            else if (inner != nullptr) read(*inner, key);
            else read_key(node, key);
        }
    }
    [[nodiscard]] std::vector<Variation> take() { return std::move(variations_); }

private:
    void report(const toml::node& node, const std::string& key, const Problem& problem)
    {
        const auto& begin = node.source().begin;
        findings_->problems.push_back({findings_->file, static_cast<int>(begin.line), static_cast<int>(begin.column),
                                       fmt::format("compare.{}", key), problem.value, problem.rule, problem.fix});
    }

    void keep_place(const toml::node& node, const std::string& key)
    {
        const auto& begin = node.source().begin;
        const std::string field = fmt::format("compare.{}", key);
        findings_->places[field] = {field, "", static_cast<int>(begin.line), static_cast<int>(begin.column)};
    }

    void unknown(const toml::node& node, const std::string& key)
    {
        const std::string intended = key.size() <= 60 ? intended_key(key) : std::string();
        report(node, printable(key, 60),
               {"", 0, 0, "", "", "unknown key",
                intended.empty() ? "remove it; docs/case-format.md lists every key"
                                 : fmt::format("did you mean \"{}\"?", intended)});
    }

    void read_key(const toml::node& node, const std::string& key)
    {
        const auto kind = kind_of_key(key);
        if (!kind) return unknown(node, key);
        if (kind->form == KeyForm::group)
            return report(node, key,
                          {"", 0, 0, "", "", "is no single value", "vary a key in it, as \"sleeve.length\""});
        keep_place(node, key);
        const Result<std::vector<std::string>> values = values_of(node, *kind);
        if (values.has_value()) variations_.push_back({key, values.value()});
        else
            for (const Problem& problem : values.problems()) report(node, key, problem);
    }

    static Result<std::vector<std::string>> values_of(const toml::node& node, const KeyKind& kind)
    {
        if (node.is_string()) return literals_in(kind, words_of(node));
        const auto* list = node.as_array();
        if (list == nullptr || list->empty() || list->size() > most_values)
            return std::vector<Problem>{{"", 0, 0, "", "", fmt::format("must be a list of 1 to {} values", most_values),
                                         "write [\"60 mm\", \"120 mm\", 7] for a range, or every value"}};
        const bool is_range = list->size() == 3 && list->get(0)->is_string() && list->get(1)->is_string() &&
                              list->get(2)->is_integer() && kind.form != KeyForm::text;
        if (is_range)
            return range_literals(kind, words_of(*list->get(0)), words_of(*list->get(1)), words_of(*list->get(2)));
        std::vector<std::string> literals;
        std::vector<Problem> problems;
        for (const toml::node& element : *list)
        {
            const Result<std::string> literal = value_literal(kind, words_of(element));
            if (literal.has_value()) literals.push_back(literal.value());
            else problems.insert(problems.end(), literal.problems().begin(), literal.problems().end());
        }
        if (!problems.empty()) return problems;
        return literals;
    }

    Findings* findings_;
    std::vector<Variation> variations_;
};

}  // namespace

std::vector<Variation> compare_at(const CaseTable& top)
{
    const auto table = top.table("compare");
    if (!table) return {};
    CompareReader reader(top.findings());
    reader.read(table->as_written(), "");
    std::vector<Variation> variations = reader.take();
    Findings& findings = top.findings();
    for (const Problem& misfit : misfits(variations, top.as_written()))
        findings.report(misfit.field.empty() ? "compare" : fmt::format("compare.{}", misfit.field), misfit.rule,
                        misfit.fix);
    return variations;
}

std::vector<Variation> stated_variations(const std::string& case_text)
{
    Findings findings;
    const toml::table file = toml::parse(std::string_view(case_text));
    std::vector<Variation> variations = compare_at(CaseTable(file, "", findings));
    EXPECTS(findings.problems.empty());
    return variations;
}

}  // namespace splicewright
