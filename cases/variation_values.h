// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cases/key_kinds.h"
#include "cases/problem.h"

namespace splicewright
{

// Values of one key as they would stand in the case file. A problem here holds `value`, `rule` and `fix`; the caller
// adds place and key.

// A text without its quotes: "60 mm", "2", "E355 tube +N".
Result<std::string> value_literal(const KeyKind& kind, std::string_view plain);

// Both ends included, in even steps, in the unit of the first end.
Result<std::vector<std::string>> range_literals(const KeyKind& kind, std::string_view from, std::string_view to,
                                                std::string_view count);

// "60mm..120mm:7" or "4mm,6mm,\"8 mm\"".
Result<std::vector<std::string>> literals_in(const KeyKind& kind, std::string_view words);

}  // namespace splicewright
