// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "cases/case.h"

namespace splicewright
{

// What one weld takes; mm, mm^2, mm^3, tonne.
struct WeldDeposit
{
    std::string weld;                                      // "butt", "sleeve.left"
    double leg_on_bar = 0, leg_on_sleeve = 0, throat = 0;  // 0 for the butt
    double depth = 0;                                      // fused depth of the butt, 0 for fillets
    double width = 0;                                      // of the butt's groove at the surface
    double area = 0;                                       // of its section
    double volume = 0, mass = 0;                           // deposited, without spatter and what is ground off
    int passes_needed = 1;                                 // at the asked heat input, at least
    int passes_stated = 0;                                 // 0: the case says nothing
    std::string source;
    Provenance provenance = Provenance::from_memory;
};

// Ring groove: parallel over the root face, then opening by the groove angle. By Pappus, as an integral over the
// radius of 2 pi r times the width. A half lap leads the seam along the bar twice over its length as well.
WeldDeposit butt_deposit(const Case& asked);

// Triangle of the legs turned about the axis: 2 pi (R + leg_on_sleeve/3) area. Derived: theorem of Pappus.
WeldDeposit fillet_deposit(const Case& asked, Side side);

// Largest section of one pass, mm^2: that of an 8 mm fillet, the largest that is laid in one horizontal pass, and
// 20 mm^2 for each kJ/mm of heat input. Source: [AWSD1.1] table of single passes, read in a secondary source; the
// second is common practice, no source. `heat_input`: N, 1 kJ/mm = 1e6 N.
double greatest_pass_area(Newton heat_input);

}  // namespace splicewright
