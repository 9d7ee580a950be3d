// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/own_value.h"

#include <fmt/format.h>

namespace splicewright
{

std::string dots_of(Dimension dimension) { return fmt::format("... {}", likely_unit_of(dimension)); }

std::string own_quantity(const std::string& key, Dimension dimension)
{
    return fmt::format("{} = \"{}\" with your value", key, dots_of(dimension));
}

std::string own_number(const std::string& key) { return fmt::format("{} = ... with your number", key); }

std::string own_text(const std::string& key) { return fmt::format("{} = \"...\" with your words", key); }

}  // namespace splicewright
