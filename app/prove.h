// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "post/published_check.h"

namespace splicewright
{

// Runs the published checks whose name begins with `beginning` (all when it is empty); `watch` sees each row once.
std::vector<ProvenCheck> prove(const std::vector<CheckGroup>& groups, const std::string& beginning,
                               const std::function<void(const ProvenCheck&)>& watch);

}  // namespace splicewright
