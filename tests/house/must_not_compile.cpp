// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/quantity.h"

// Compiled several times: as it stands it must compile, with either macro it must not.

namespace splicewright
{

constexpr Millimetre wall{3};
constexpr Newton force{5};
constexpr Megapascal limit{3};
constexpr Millimetre twice = wall + wall;

#ifdef MEGAPASCAL_FROM_MILLIMETRE
constexpr Megapascal wrong_limit{Millimetre{3}};
#endif

#ifdef NEWTON_PLUS_MILLIMETRE
constexpr auto wrong_sum = force + wall;
#endif

#ifdef MILLIMETRE_FROM_BARE_NUMBER
constexpr Millimetre wrong_wall = 3.0;
#endif

static_assert(twice / wall == 2.0 && force.value() == 5.0 && limit.value() == 3.0);

}  // namespace splicewright
