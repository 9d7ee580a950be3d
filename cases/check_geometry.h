// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"
#include "cases/places.h"

namespace splicewright
{

// What keeps the shape of a case from being built or meshed, each at the key that has to change.
// Empty for a shape that meshes. Values that are not numbers count as reported before and break no rule.
// The limits are ours (room for the notches of the method and for a few elements) unless a line names a source.
std::vector<Problem> geometry_problems(const Case& asked, const Places& places, const std::string& file);

}  // namespace splicewright
