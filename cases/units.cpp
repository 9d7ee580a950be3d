// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/units.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

#include "cases/number_text.h"
#include "cases/own_value.h"
#include "cases/plain_text.h"

namespace splicewright
{
namespace
{

constexpr std::size_t longest_quantity = 80;  // characters

// The typographic ways of writing what the tables spell in ASCII.
std::string ascii_form(std::string_view text)
{
    constexpr std::pair<std::string_view, std::string_view> replacements[] = {
        {"\u00b1", "+-"},       {"+/-", "+-"},    {"\u00b7", "*"}, {"\u22c5", "*"},   {"\u2219", "*"},
        {"\u00d7", "*"},        {"\u00b2", "2"},  {"\u00b3", "3"}, {"\u00b0", "deg"}, {"\u00ba", "deg"},
        {"\u2033", "\""},       {"\u201d", "\""}, {"\u00b5", "u"}, {"\u03bc", "u"},   {"\u00a0", " "},
        {"\u2009", " "},        {"\u202f", " "},  {"\u2212", "-"}, {"\u2010", "-"},   {"\u2011", "-"},
        {"\u2012", "-"},        {"\u2013", "-"},  {"\ufe63", "-"}, {"\uff0d", "-"},   {"\u2044", "/"},
        {"\u207b\u00b9", "-1"},
    };
    std::string plain(text);
    for (const auto& [written, ascii] : replacements) plain = replaced(plain, written, ascii);
    return plain;
}

Result<Measurement> refusal(std::string rule, std::string fix)
{
    Problem problem;
    problem.rule = std::move(rule);
    problem.fix = std::move(fix);
    return std::vector<Problem>{problem};
}

bool is_unit_of(std::string_view text, Dimension dimension)
{
    const std::optional<Unit> unit = unit_named(text, dimension);
    return unit && unit->dimension == dimension;
}

Result<Measurement> number_refusal(const LeadingNumber& number, std::string_view text, Dimension dimension)
{
    const std::string expected = fmt::format("must be {} with its unit", name_of(dimension));
    switch (number.fault)
    {
        case NumberFault::comma:
        {
            if (number.written.empty())
                return refusal(
                    "must be written with a decimal point and without other commas: what its comma means is not "
                    "clear",
                    dots_of(dimension));
            const std::size_t start = text.find_first_not_of("+-0123456789., ");
            const std::string_view unit =
                start == std::string_view::npos ? likely_unit_of(dimension) : trimmed(text.substr(start));
            return refusal(
                "must be written with a decimal point, without commas",
                is_unit_of(unit, dimension) ? fmt::format("{} {}", number.written, unit) : dots_of(dimension));
        }
        case NumberFault::too_large: return refusal("is beyond any number this program can hold", dots_of(dimension));
        case NumberFault::zero_divisor: return refusal("must not divide by zero", dots_of(dimension));
        case NumberFault::not_a_number: return refusal("must be a finite number", dots_of(dimension));
        case NumberFault::hexadecimal: return refusal("must be a decimal number", dots_of(dimension));
        case NumberFault::second_number: return refusal("must be one number, without gaps", dots_of(dimension));
        case NumberFault::separator: return refusal("must be a number without separators", dots_of(dimension));
        case NumberFault::absent:
        case NumberFault::none: break;
    }
    return refusal(expected, dots_of(dimension));
}

// One number with one unit, no tolerance.
Result<Measurement> plain_measurement(std::string_view text, Dimension dimension)
{
    const LeadingNumber number = leading_number(text);
    if (number.fault != NumberFault::none) return number_refusal(number, text, dimension);
    if (number.rest.empty())
        return refusal(fmt::format("must be {} with its unit ({})", name_of(dimension), accepted_units_of(dimension)),
                       fmt::format("{} {}", number.written, likely_unit_of(dimension)));
    // A number that had another unit is never repeated: 70 kgm are not 70 N*m.
    const std::optional<Unit> unit = unit_named(number.rest, dimension);
    if (!unit)
        return refusal(fmt::format("must have the unit of {}: {}; {} is none", name_of(dimension),
                                   accepted_units_of(dimension), quoted(number.rest)),
                       dots_of(dimension));
    if (unit->dimension != dimension)
        return refusal(fmt::format("must be {}, not {}", name_of(dimension), name_of(unit->dimension)),
                       dots_of(dimension));
    const double value = number.value * unit->factor;
    if (!std::isfinite(value)) return refusal("is beyond any number this program can hold", dots_of(dimension));
    return Measurement{value, std::nullopt};
}

Result<Measurement> toleranced(std::string_view nominal_text, std::string_view tolerance_text, Dimension dimension)
{
    const LeadingNumber number = leading_number(nominal_text);
    const bool unit_is_behind = number.fault == NumberFault::none && number.rest.empty();
    const Result<Measurement> nominal = plain_measurement(nominal_text, dimension);
    const Result<Measurement> tolerance = plain_measurement(tolerance_text, dimension);
    if (unit_is_behind && tolerance.has_value())
        return refusal("must have a unit before and after +-",
                       fmt::format("{} {} +- {}", number.written, leading_number(tolerance_text).rest, tolerance_text));
    if (!nominal.has_value())
        return refusal(nominal.problems().front().rule,
                       fmt::format("{} +- {}", nominal.problems().front().fix, tolerance_text));
    if (!tolerance.has_value())
    {
        const LeadingNumber width = leading_number(tolerance_text);
        const bool has_no_unit = width.fault == NumberFault::none && width.rest.empty();
        const std::string mended =
            has_no_unit ? fmt::format("{} {}", width.written, number.rest) : tolerance.problems().front().fix;
        return refusal(fmt::format("the tolerance {}", tolerance.problems().front().rule),
                       fmt::format("{} +- {}", nominal_text, mended));
    }
    if (tolerance.value().value <= 0.0) return refusal("must have a tolerance above zero", std::string(nominal_text));
    return Measurement{nominal.value().value, tolerance.value().value};
}

}  // namespace

Result<Measurement> measurement(std::string_view text, Dimension dimension)
{
    if (text.size() > longest_quantity)
        return refusal(fmt::format("must be {} of at most {} characters", name_of(dimension), longest_quantity),
                       dots_of(dimension));
    const std::string plain = ascii_form(text);
    const std::string_view whole = trimmed(plain);
    const std::size_t sign = whole.find("+-");
    if (sign == std::string_view::npos) return plain_measurement(whole, dimension);
    return toleranced(trimmed(whole.substr(0, sign)), trimmed(whole.substr(sign + 2)), dimension);
}

std::string in_words(double house_value, Dimension dimension)
{
    const std::optional<Unit> unit = unit_named(likely_unit_of(dimension), dimension);
    EXPECTS(unit.has_value());
    return fmt::format("{:.6g} {}", house_value / unit->factor, likely_unit_of(dimension));
}

}  // namespace splicewright
