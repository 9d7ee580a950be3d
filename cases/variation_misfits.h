// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <toml++/toml.h>

#include <vector>

#include "cases/variation.h"

namespace splicewright
{

// As misfit_problems, of a case that is read already; each problem holds key, rule and fix.
std::vector<Problem> misfits(const std::vector<Variation>& variations, const toml::table& top);

}  // namespace splicewright
