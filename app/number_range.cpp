// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/number_range.h"

#include <fmt/format.h>

#include <string>

#include "cases/number_text.h"
#include "cases/plain_text.h"

namespace splicewright
{

CLI::Validator number_between(double least, double greatest)
{
    const auto why_not = [least, greatest](const std::string& text) -> std::string
    {
        const LeadingNumber number = leading_number(text);
        if (number.fault == NumberFault::comma)
            return fmt::format("{} has a comma; write a decimal point{}", splicewright::quoted(text),
                               number.written.empty() ? "" : ": " + number.written);
        const bool is_number = number.fault == NumberFault::none && number.rest.empty();
        if (is_number && number.value >= least && number.value <= greatest) return {};
        return fmt::format("{} is no number from {:g} to {:g}", splicewright::quoted(text), least, greatest);
    };
    return {why_not, fmt::format("from {:g} to {:g}", least, greatest)};
}

}  // namespace splicewright
