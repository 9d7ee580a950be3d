// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"

namespace splicewright
{

// Strengths of the library hold for a range of diameters. A bar (or a sleeve turned from bar) that is thicker takes the
// strength of the range that holds it, where the library has one; a caution names both numbers. A thinner one keeps
// what it has, which is on the safe side. The diameter is the largest that is drawn: the stock may have been thicker.
void fit_to_size(Case& asked, std::vector<std::string>& cautions);

}  // namespace splicewright
