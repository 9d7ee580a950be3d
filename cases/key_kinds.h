// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>

#include "cases/units.h"

namespace splicewright
{

enum class KeyForm
{
    quantity,          // a text with a unit
    quantity_or_word,  // "9 mm" or "full"
    number,
    whole_number,
    text,
    group,  // a table or a list, which is no single value
};

// What may stand behind a key of the case file.
struct KeyKind
{
    KeyForm form = KeyForm::group;
    Dimension dimension = Dimension::length;  // of a quantity
};

// By dotted path, indices allowed. Empty for a key that is not known.
std::optional<KeyKind> kind_of_key(const std::string& field);

// Whether a key changes loads, strengths or ratings alone, and as a rule no shape or stiffness: most steels that a name
// stands for are equally stiff.
bool is_only_judged(const std::string& field);

}  // namespace splicewright
