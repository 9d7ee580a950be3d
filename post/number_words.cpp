// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/number_words.h"

#include <fmt/format.h>

#include <cmath>

#include "cases/number_text.h"
#include "cases/problem.h"

namespace splicewright
{
namespace
{

const std::string no_break_space = "\u00A0";

constexpr double negligible = 0.001;  // times the life asked for: below it a number means nothing

}  // namespace

std::string counted(double count)
{
    EXPECTS(std::isfinite(count));
    std::string digits = fmt::format("{:.0f}", count);
    for (std::size_t i = 3; i < digits.size(); i += 3 + no_break_space.size())
        digits.insert(digits.size() - i, no_break_space);
    return digits;
}

std::string rounded_down(double count)
{
    EXPECTS(std::isfinite(count) && count >= 0);
    if (count < 10) return fmt::format("{:.0f}", std::floor(count));
    const double step = std::pow(10, std::floor(std::log10(count)) - 1);
    return counted(std::floor(count / step) * step);
}

std::string percent(double share, int digits)
{
    const double value = 100 * share + 0.0;  // no minus before a zero
    return value < std::pow(10, digits) ? fmt::format("{:.{}g} %", value, digits) : fmt::format("{:.0f} %", value);
}

std::string life_words(double life)
{
    if (!std::isfinite(life) || life > longest_life) return fmt::format("> {} x", counted(longest_life));
    if (life < negligible) return fmt::format("< {:g} x", negligible);
    return life >= 100 ? fmt::format("{} x", counted(life)) : fmt::format("{:.2g} x", life);
}

std::string short_value(const std::string& value)
{
    constexpr std::size_t short_enough = 7;  // characters of the number
    const LeadingNumber number = leading_number(value);
    const bool is_long = number.fault == NumberFault::none && number.written.size() > short_enough;
    if (!is_long || number.written.find('/') != std::string::npos) return value;
    return fmt::format("{:.5g}{}{}", number.value, number.rest.empty() ? "" : " ", number.rest);
}

std::string error_words(double error_pct)
{
    if (error_pct == 0) return "none";
    return error_pct < 0.05 ? "±<0.1 %" : fmt::format("±{:.1f} %", error_pct);
}

}  // namespace splicewright
