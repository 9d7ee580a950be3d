// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/number_words.h"

#include <fmt/format.h>

#include <cmath>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

const std::string no_break_space = "\u00A0";

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

}  // namespace splicewright
