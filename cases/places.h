// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <map>
#include <string>

#include "cases/problem.h"

namespace splicewright
{

// Where a value stands in the case file.
struct Place
{
    std::string field;  // the key that gave the value: "sleeve.bore" for a clearance worked out from a bore
    std::string value;  // as found, "\"28.4 mm\""
    int line = 0, column = 0;
};

// By dotted field name of the case value, "left.section[2].diameter"; tables stand here as well.
using Places = std::map<std::string, Place>;

// A problem at a field; when the file does not give that field, at the innermost table that would hold it.
Problem problem_at(const Places& places, const std::string& file, const std::string& field, std::string rule,
                   std::string fix);

// "left.section[2].diameter" to "left.section[2]", "left.section[2]" to "left"; empty at the top.
std::string parent_of(const std::string& field);

// "left.section[2].diameter" to "diameter".
std::string last_key_of(const std::string& field);

// "left.section[2].diameter" to "left.section.diameter".
std::string without_indices(const std::string& field);

}  // namespace splicewright
