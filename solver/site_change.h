// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "solver/meridian.h"

namespace splicewright
{

// How far a stress moved from one mesh to another over the stretch of a site where it is at least nine tenths of its
// peak, each place against the same place, MPa per unit load. Two peaks may agree by chance, two stretches do not.
struct StretchChange
{
    double typical = 0;  // root of the mean square
    double largest = 0;
    double at_end =
        0;  // the largest where the peak lies at an end of the site, else 0: a stress is known less well there
};

struct SiteChange
{
    StretchChange von_mises, principal, shear;
};

// Of one site on two meshes, under one of the unit loads.
SiteChange site_change(const SiteAnswer& now, const SiteAnswer& before, const CombinedLoad& unit);

}  // namespace splicewright
