// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <initializer_list>
#include <set>
#include <string>

#include "post/page_parts.h"

namespace splicewright
{

// A line in plain words where a term is used first; nothing at its later uses.
class Terms
{
public:
    Markup explain(std::initializer_list<const char*> terms);
    // Of the terms that stand in this text.
    Markup explain_those_in(const Markup& inside);

private:
    std::set<std::string> explained_;
};

// A section that opens with the terms which it is the first to use.
Markup section(Terms& terms, const char* id, const char* heading, const Markup& inside);

}  // namespace splicewright
