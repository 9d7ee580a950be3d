// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"

namespace splicewright
{

// A standard fit and the diametral clearance that it leaves, negative pressing; mm.
struct StandardFit
{
    std::string name;  // "H7/g6"
    double least_clearance = 0, greatest_clearance = 0;
    Provenance provenance = Provenance::from_memory;
};

// Hole-basis fits H7 and H8 with h6, h7, g6, k6, m6, n6, p6, r6, s6 for a diameter over 3 and up to 250 mm.
// Source: [ISO286], limits over 18 to 50 mm read in secondary tables, all others from memory.
std::vector<StandardFit> standard_fits(Millimetre diameter);

// Width of the standard tolerance grade 6, 7 or 8, over 3 and up to 250 mm. Source: [ISO286], as above.
Millimetre standard_tolerance(Millimetre diameter, int grade);
Provenance tolerance_provenance(Millimetre diameter);

// Limits of the sleeve's bore over a bar as bought; all mm.
struct BoreBand
{
    Side side = Side::left;
    double bar_diameter = 0;  // as measured
    double clearance = 0;     // asked for, diametral
    double least = 0, greatest = 0;
    int grade = 7;
    // Of those below: the middle nearest to that of the bore's limits; one that always slides for a sliding fit and one
    // that always presses for a press fit, where there is one.
    std::optional<std::string> nearest_fit;
    std::vector<std::string> fits;  // whose band holds the clearance asked for
    std::string source;
    Provenance provenance = Provenance::from_memory;
};

// The grade's width about the bar's diameter plus the clearance, moved where needed so that a bore meant to slide
// never presses and one meant to press never slides. Derived; the width: [ISO286].
BoreBand bore_band(const Case& asked, Side side);

}  // namespace splicewright
