// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/number_text.h"

#include <charconv>
#include <cmath>
#include <regex>

#include "cases/plain_text.h"

namespace splicewright
{
namespace
{

bool is_digit(char letter) { return letter >= '0' && letter <= '9'; }

bool starts_with_digit(std::string_view text) { return !text.empty() && is_digit(text.front()); }

std::size_t n_leading_digits(std::string_view text)
{
    std::size_t count = 0;
    while (count < text.size() && is_digit(text[count])) ++count;
    return count;
}

bool is_word_at_start(std::string_view lower, std::string_view word) { return lower.substr(0, word.size()) == word; }

struct Fraction
{
    double value = 0.0;
    std::size_t length = 0;  // characters used, 0: there is no fraction here
    bool divides_by_zero = false;
};

// "7/8" at the start of the text.
Fraction fraction_at_start(std::string_view text)
{
    const std::size_t upper = n_leading_digits(text);
    if (upper == 0 || upper > 9 || upper >= text.size() || text[upper] != '/') return {};
    const std::size_t lower = n_leading_digits(text.substr(upper + 1));
    if (lower == 0 || lower > 9) return {};
    int above = 0, below = 0;
    std::from_chars(text.data(), text.data() + upper, above);
    std::from_chars(text.data() + upper + 1, text.data() + upper + 1 + lower, below);
    Fraction found;
    found.length = upper + 1 + lower;
    found.divides_by_zero = below == 0;
    if (below != 0) found.value = static_cast<double>(above) / below;
    return found;
}

// The number with its decimal comma made a point, or its thousands commas left out; empty where it could be either.
std::string without_comma(std::string_view text)
{
    const std::string_view number = text.substr(0, text.find_first_not_of("0123456789.,"));
    const std::size_t comma = number.find(','), point = number.find('.');
    const bool one_comma = number.find(',', comma + 1) == std::string_view::npos;
    const bool groups_of_three =
        std::regex_match(std::string(number), std::regex(R"([0-9]{1,3}(,[0-9]{3})+(\.[0-9]+)?)"));
    if (one_comma && point == std::string_view::npos && !groups_of_three) return replaced(number, ",", ".");
    if (groups_of_three && !(one_comma && point == std::string_view::npos)) return replaced(number, ",", "");
    return {};
}

NumberFault fault_after(std::string_view rest)
{
    if (rest.empty()) return NumberFault::none;
    if (rest.front() == '_') return NumberFault::separator;
    const std::string_view next = trimmed(rest);
    const Fraction fraction = fraction_at_start(next);
    if (next.size() < rest.size() && starts_with_digit(next) && next.find("/min") != 1 && fraction.length == 0)
        return NumberFault::second_number;
    return NumberFault::none;
}

LeadingNumber fault(NumberFault kind, std::string_view written = {}) { return {kind, 0.0, std::string(written), {}}; }

// After the sign.
LeadingNumber unsigned_number(std::string_view text)
{
    const std::string lower = lower_case(text);
    if (is_word_at_start(lower, "nan") || is_word_at_start(lower, "inf")) return fault(NumberFault::not_a_number);
    if (is_word_at_start(lower, "0x")) return fault(NumberFault::hexadecimal);
    const bool point_first = !text.empty() && text.front() == '.' && starts_with_digit(text.substr(1));
    if (!starts_with_digit(text) && !point_first) return fault(NumberFault::absent);

    if (const Fraction fraction = fraction_at_start(text); fraction.length > 0)
    {
        if (fraction.divides_by_zero) return fault(NumberFault::zero_divisor);
        return {NumberFault::none, fraction.value, std::string(text.substr(0, fraction.length)),
                trimmed(text.substr(fraction.length))};
    }
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    const auto used = static_cast<std::size_t>(end - text.data());
    if (error == std::errc::result_out_of_range || !std::isfinite(value)) return fault(NumberFault::too_large);
    if (error != std::errc()) return fault(NumberFault::absent);
    std::string_view rest = text.substr(used);
    if (!rest.empty() && rest.front() == ',') return fault(NumberFault::comma, without_comma(text));

    const bool whole = n_leading_digits(text) == used;
    const bool joined = !rest.empty() && (rest.front() == ' ' || rest.front() == '-');
    const Fraction part = whole && joined ? fraction_at_start(trimmed(rest.substr(1))) : Fraction{};
    if (part.length > 0)
    {
        if (part.divides_by_zero) return fault(NumberFault::zero_divisor);
        rest = trimmed(rest.substr(1)).substr(part.length);
        value += part.value;
    }
    if (const NumberFault after = fault_after(rest); after != NumberFault::none) return fault(after);
    return {NumberFault::none, value, std::string(text.substr(0, text.size() - rest.size())), trimmed(rest)};
}

}  // namespace

LeadingNumber leading_number(std::string_view text)
{
    text = trimmed(text);
    const bool negative = !text.empty() && text.front() == '-';
    const bool has_sign = negative || (!text.empty() && text.front() == '+');
    LeadingNumber number = unsigned_number(has_sign ? trimmed(text.substr(1)) : text);
    if (negative)
    {
        number.value = -number.value;
        if (!number.written.empty()) number.written = "-" + number.written;
    }
    return number;
}

}  // namespace splicewright
