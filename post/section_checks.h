// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/check_row.h"
#include "post/section_strength.h"
#include "solver/meridian.h"

namespace splicewright
{

// What one section stands, each load alone.
struct SectionCapacity
{
    std::string site;  // "bar.left", "sleeve-mid", "butt-surface", "throat.right"
    RoundSection section;
    Megapascal yield;
    NewtonMillimetre first_yield_torque, plastic_torque, first_yield_bending, plastic_bending;
};

// Both bars (thinnest section, and beside the weld), the sleeve, the fused ring of the butt, the throats as rings.
std::vector<SectionCapacity> section_capacities(const Case& asked, const MeridianAnswer& answer);

// Strength of whole sections at the peak load, beside the local yield of strength_checks:
//   SITE/plastic           bars, sleeve, butt: the load that flows through the whole section
//   throat.S/yield         mean von Mises stress of the throat against yield
//   throat.S/simplified    EN 1993-1-8, simplified method
//   SITE/alone             sleeve, butt, throats carrying all of the load; for information, never governs
std::vector<CheckRow> section_checks(const Case& asked, const MeridianAnswer& answer);

// Empty where EN 1993-1-8 may be used on a sleeve weld: sleeve and bar of structural steel S235 to S460.
std::string outside_eurocode(const Case& asked, Side side);

}  // namespace splicewright
