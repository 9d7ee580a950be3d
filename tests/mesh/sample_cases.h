// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "cases/case.h"

namespace splicewright::sample
{

// Cases built without the reader, so that tests of floors above depend on nothing but the Case value.

// E 210000 MPa, Poisson's ratio 0.3.
Material steel();

// One bar on the left, sections from z = 0 outward.
Case plain_shaft(std::vector<Section> sections, std::vector<Groove> grooves = {}, double bore_mm = 0);

// Bars of 28 and 27 mm with a shoulder on the left and a groove on the right, a butt fused 9 mm deep, an open sleeve
// 84 x 42 mm with 6 mm legs: every kind of site.
Case splice();

// A full butt between equal 30 mm bars, a sleeve 100 x 46 mm with ends turned down to 42 mm over 16 mm, 5 mm legs.
Case tapered_splice();

// Equal bars, full butt, a sleeve of the given outer diameter pressed on by the given diametral interference.
Case pressed_splice(double bar_diameter_mm, double sleeve_diameter_mm, double sleeve_length_mm, double interference_mm);

Case with_slit(Case asked, SlitState left, SlitState right);

// The same splice seen from behind: left and right exchanged.
Case mirrored(Case asked);

}  // namespace splicewright::sample
