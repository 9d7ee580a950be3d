// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/variation_values.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

#include "cases/number_text.h"
#include "cases/plain_text.h"
#include "cases/variation.h"

namespace splicewright
{
namespace
{

std::vector<Problem> refusal(std::string_view value, std::string rule, std::string fix)
{
    return {{"", 0, 0, "", quoted(value), std::move(rule), std::move(fix)}};
}

std::string toml_text(std::string_view plain)
{
    return fmt::format("\"{}\"", replaced(replaced(plain, "\\", "\\\\"), "\"", "\\\""));
}

bool is_letter(char letter) { return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z'); }

Result<std::string> quantity_literal(Dimension dimension, std::string_view plain)
{
    const Result<Measurement> read = measurement(plain, dimension);
    if (read.has_value()) return toml_text(plain);
    return refusal(plain, read.problems().front().rule, read.problems().front().fix);
}

Result<std::string> number_literal(const KeyKind& kind, std::string_view plain)
{
    const bool must_be_whole = kind.form == KeyForm::whole_number;
    const LeadingNumber read = leading_number(plain);
    if (read.fault != NumberFault::none || !read.rest.empty())
        return refusal(plain, "must be a plain number without unit", must_be_whole ? "2" : "1e6");
    if (!must_be_whole) return fmt::format("{}", read.value);
    if (read.value != std::floor(read.value) || std::abs(read.value) > 1e9)
        return refusal(plain, "must be a whole number", fmt::format("{:.0f}", std::clamp(read.value, -1e9, 1e9)));
    return fmt::format("{:.0f}", read.value);
}

// Number and unit of one end of a range.
struct RangeEnd
{
    double value = 0;  // in the unit as written
    double factor = 1;
    std::string unit;  // empty for a plain number
};

Result<RangeEnd> range_end(const KeyKind& kind, std::string_view plain)
{
    const bool has_unit = kind.form == KeyForm::quantity || kind.form == KeyForm::quantity_or_word;
    const Result<std::string> literal =
        has_unit ? quantity_literal(kind.dimension, plain) : number_literal(kind, plain);
    if (!literal.has_value()) return literal.problems();
    const LeadingNumber number = leading_number(trimmed(plain));
    if (!has_unit) return RangeEnd{number.value, 1, ""};
    const std::optional<Unit> unit = unit_named(number.rest, kind.dimension);
    if (!unit)
        return refusal(plain, "an end of a range has no tolerance", std::string(plain.substr(0, plain.find('+'))));
    return RangeEnd{number.value, unit->factor, std::string(number.rest)};
}

std::optional<std::size_t> range_count(std::string_view text)
{
    const std::string_view digits = trimmed(text);
    std::size_t count = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), count);
    const bool read = error == std::errc() && end == digits.data() + digits.size();
    return read && count >= 2 && count <= most_values ? std::optional(count) : std::nullopt;
}

// Parted at commas outside quotes, quotes taken off.
std::vector<std::string> parted(std::string_view words)
{
    std::vector<std::string> parts(1);
    bool in_quotes = false;
    for (const char letter : words)
    {
        if (letter == '"') in_quotes = !in_quotes;
        else if (letter == ',' && !in_quotes) parts.emplace_back();
        else parts.back() += letter;
    }
    for (std::string& part : parts) part = std::string(trimmed(part));
    return parts;
}

std::string example_range(const KeyKind& kind)
{
    const bool has_unit = kind.form == KeyForm::quantity || kind.form == KeyForm::quantity_or_word;
    const std::string unit = has_unit ? fmt::format(" {}", likely_unit_of(kind.dimension)) : "";
    return fmt::format("60{0}..120{0}:7", unit);
}

}  // namespace

Result<std::string> value_literal(const KeyKind& kind, std::string_view plain)
{
    EXPECTS(kind.form != KeyForm::group);
    if (trimmed(plain).empty()) return refusal(plain, "must not be empty", "remove it");
    if (has_control_characters(plain)) return refusal(plain, "must have no control characters", "remove them");
    switch (kind.form)
    {
        case KeyForm::quantity: return quantity_literal(kind.dimension, plain);
        case KeyForm::quantity_or_word:
            return is_letter(trimmed(plain).front()) ? Result<std::string>(toml_text(plain))
                                                     : quantity_literal(kind.dimension, plain);
        case KeyForm::number:
        case KeyForm::whole_number: return number_literal(kind, plain);
        default: return toml_text(plain);
    }
}

Result<std::vector<std::string>> range_literals(const KeyKind& kind, std::string_view from, std::string_view to,
                                                std::string_view count)
{
    if (kind.form == KeyForm::text)
        return refusal(from, "a range needs values with a unit, or numbers", "list the values, parted by commas");
    const Result<RangeEnd> first = range_end(kind, trimmed(from)), last = range_end(kind, trimmed(to));
    std::vector<Problem> problems;
    for (const Result<RangeEnd>* end : {&first, &last})
        if (!end->has_value()) problems.insert(problems.end(), end->problems().begin(), end->problems().end());
    const std::optional<std::size_t> n = range_count(count);
    if (!n)
        problems.push_back(refusal(count, fmt::format("must be the number of values, 2 to {}", most_values),
                                   "give both ends and how many values: " + example_range(kind))
                               .front());
    if (!problems.empty()) return problems;
    const double begin = first.value().value, factor = last.value().factor / first.value().factor;
    const double end = factor == 1 ? last.value().value : last.value().value * factor;
    if (begin == end) return refusal(to, "must differ from the other end of the range", "give one value alone");
    std::vector<std::string> literals;
    for (std::size_t at = 0; at < *n; ++at)
    {
        const double value = begin + (end - begin) * static_cast<double>(at) / static_cast<double>(*n - 1);
        const std::string plain = first.value().unit.empty() ? fmt::format("{:.10g}", value)
                                                             : fmt::format("{:.10g} {}", value, first.value().unit);
        const Result<std::string> literal = value_literal(kind, plain);
        if (!literal.has_value()) return literal.problems();
        literals.push_back(literal.value());
    }
    return literals;
}

Result<std::vector<std::string>> literals_in(const KeyKind& kind, std::string_view words)
{
    const std::size_t dots = kind.form == KeyForm::text ? std::string_view::npos : words.find("..");
    if (dots != std::string_view::npos)
    {
        const std::size_t colon = words.rfind(':');
        const bool has_count = colon != std::string_view::npos && colon > dots;
        const std::string_view to = words.substr(dots + 2, has_count ? colon - dots - 2 : std::string_view::npos);
        return range_literals(kind, words.substr(0, dots), to, has_count ? words.substr(colon + 1) : "");
    }
    std::vector<std::string> literals;
    std::vector<Problem> problems;
    for (const std::string& part : parted(words))
    {
        const Result<std::string> literal = value_literal(kind, part);
        if (literal.has_value()) literals.push_back(literal.value());
        else problems.insert(problems.end(), literal.problems().begin(), literal.problems().end());
    }
    if (!problems.empty()) return problems;
    return literals;
}

}  // namespace splicewright
