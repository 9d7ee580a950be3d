// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/check_row.h"
#include "solver/meridian.h"

namespace splicewright
{

// Effective notch stress at toes, roots and the land's edge, radius 1 mm: first principal joined with shear, von Mises,
// and shear alone. Not valid where the wall is under 5 mm; von Mises not valid for torque and rotating bending that are
// both felt. `notched` is solved with toes of the reference radius.
// Source: [Fricke2012].
std::vector<CheckRow> notch_checks(const Case& asked, const MeridianAnswer& notched);

// The same places with notches of radius 0.05 mm, only where the wall is under 5 mm.
std::vector<CheckRow> small_notch_checks(const Case& asked, const MeridianAnswer& small);

// Whether any wall of the splice is under the 5 mm of the reference radius.
bool has_thin_wall(const Case& asked);

// Structural stress extrapolated to the toes, linear and quadratic.
// Source: [Hobbacher2016] sec. 2.2.3.
std::vector<CheckRow> hot_spot_checks(const Case& asked, const MeridianAnswer& answer);

// Whether a root's weld carries next to nothing of the torque in this scenario: it is not judged then.
bool carries_nothing(const MeridianAnswer& answer, const std::string& site);

}  // namespace splicewright
