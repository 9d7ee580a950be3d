// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/variation.h"

#include <fmt/format.h>
#include <toml++/toml.h>

#include <optional>

#include "cases/known_keys.h"
#include "cases/plain_text.h"
#include "cases/variation_misfits.h"
#include "cases/variation_values.h"

namespace splicewright
{
namespace
{

Problem at_key(const std::string& key, std::string rule, std::string fix)
{
    return {"", 0, 0, key, "", std::move(rule), std::move(fix)};
}

}  // namespace

std::string plain_value(const std::string& value)
{
    if (value.size() < 2 || value.front() != '"') return value;
    return replaced(replaced(value.substr(1, value.size() - 2), "\\\"", "\""), "\\\\", "\\");
}

Result<Variation> variation_from_words(const std::string& words)
{
    const std::size_t sign = words.find('=');
    const std::string key(trimmed(std::string_view(words).substr(0, sign)));
    const std::optional<KeyKind> kind = kind_of_key(key);
    std::vector<Problem> problems;
    if (!kind)
    {
        const std::string intended = intended_key(key);
        problems.push_back(at_key(
            key.empty() ? words : key, "unknown key",
            intended.empty() ? "docs/case-format.md lists every key" : fmt::format("did you mean {}?", intended)));
    }
    else if (kind->form == KeyForm::group)
        problems.push_back(at_key(key, "is no single value", "vary a key in it, as sleeve.length=60mm..120mm:7"));
    else if (sign == std::string::npos)
        problems.push_back(at_key(key, "has no values", key + "=60mm..120mm:7, or values parted by commas"));
    if (!problems.empty()) return problems;
    Result<std::vector<std::string>> values = literals_in(*kind, std::string_view(words).substr(sign + 1));
    if (values.has_value()) return Variation{key, values.value()};
    for (Problem problem : values.problems())
    {
        problem.field = key;
        problems.push_back(std::move(problem));
    }
    return problems;
}

std::vector<Problem> misfit_problems(const std::vector<Variation>& variations, const std::string& case_text)
{
    return misfits(variations, toml::parse(std::string_view(case_text)));
}

std::uint64_t n_options(const std::vector<Variation>& variations)
{
    std::uint64_t n = 1;
    for (const Variation& variation : variations) n *= variation.values.size();
    return n;
}

std::vector<std::size_t> choice_at(const std::vector<Variation>& variations, std::uint64_t index)
{
    EXPECTS(index < n_options(variations));
    std::vector<std::size_t> choice(variations.size());
    for (std::size_t key = variations.size(); key-- > 0;)
    {
        choice[key] = index % variations[key].values.size();
        index /= variations[key].values.size();
    }
    return choice;
}

std::uint64_t index_of(const std::vector<Variation>& variations, const std::vector<std::size_t>& choice)
{
    EXPECTS(choice.size() == variations.size());
    std::uint64_t index = 0;
    for (std::size_t key = 0; key < variations.size(); ++key)
        index = index * variations[key].values.size() + choice[key];
    return index;
}

}  // namespace splicewright
