// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "post/weld_rating.h"

namespace splicewright
{

// What [judgement] makes of classes and stresses.

// Toes and the butt weld: places whose normal stress a misalignment raises.
bool feels_misalignment(const std::string& site);

// Factor f(R) on a class by the R ratio, least over greatest stress, -1 to 1:
//   case I 1.2 - 0.4 R up to R = 0.5, case II 0.9 - 0.4 R up to R = -0.25 (1.6 and 1.3 at R = -1), else 1; case III 1.
// Source: [Hobbacher2016] 3.5.1, from memory.
double r_ratio_factor(StressRelief relief, double R);

// The same for a class of normal stress under fully reversed bending, R = -1; by [Eurocode3Fatigue2005] 7.2.1, from
// memory, 1.25 when stress-relieved, which counts 60 % of the compressive half. 1 beside an axial tension or a press
// fit, whose mean is not counted.
double relief_factor(const Case& asked, InteractionRule rule);

// The factor for the shear of a torque block, each with its own R: the torque that is smaller by its size over the
// other one, because shear has no sign. By the rule of IIW only; that its f(R) holds for shear is a judgement.
double shear_relief_factor(const Case& asked, InteractionRule rule, const TorqueBlock& block);

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
