// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "post/weld_rating.h"

namespace splicewright
{

// What [judgement] makes of classes and stresses.

// Toes and the butt weld: places whose normal stress a misalignment raises.
bool feels_misalignment(const std::string& site);

// Factor on a class of normal stress under fully reversed bending when the splice was stress-relieved: 1.6 by
// [Hobbacher2016] 3.5.1 case I at R = -1; 1.25 by [Eurocode3Fatigue2005] 7.2.1, which counts 60 % of the compressive
// half. Both from memory. 1 as welded, and 1 beside an axial tension or a press fit, whose mean is not counted.
double relief_factor(const Case& asked, InteractionRule rule);

// Factor on a class that moves its survival from 97.7 % to the one asked for: 10^(-(z - 2) s/m), s = 0.2 the standard
// deviation of log N, judgement on [BS7608]: 0.18 to 0.22, from memory.
double survival_factor(const Rating& rating, double slope);

// The curves with the partial factor asked for and the factors above; stress with the misalignment factor.
WeldCurves rated_curves(const Case& asked, const WeldCurves& curves);
SnCurve rated_equivalent_curve(const Case& asked, const SnCurve& curve);  // of joined stresses: no relief is counted
WeldUnitStress rated_stress(const Case& asked, const std::string& site, const WeldUnitStress& stress);

// What of it changed the row, for its note, and how far that can be relied on.
Sourced<std::string> rating_note(const Case& asked, const std::string& site, const WeldCurves& curves);

}  // namespace splicewright
