// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"
#include "solver/meridian.h"

namespace splicewright
{

// Finite elements held against a closed form.
struct HandbookRow
{
    std::string what;  // "bar.left: surface shear per kN·m"
    double fe = 0, handbook = 0;
    std::string unit;
    double fe_error_pct = 0;
    double difference_pct = 0;                   // fe over handbook, minus one
    double band_low_pct = 0, band_high_pct = 0;  // where the difference may lie while the handbook can be trusted
    std::string band_reason;
    bool agrees = false;       // within the band widened by the finite-element error
    bool contradicts = false;  // exact theory, and farther off than anything that the theory leaves out
    std::string source;
    Provenance provenance = Provenance::theory;
};

// Every site with a closed form: surface stress of the plain bars, shoulder and groove factors, the sleeve's share,
// the sleeve weld as a line, the press fit, the twist. A disagreement is a row like any other.
std::vector<HandbookRow> handbook_rows(const Case& asked, const MeridianAnswer& answer);

// Why nothing of the solution can be relied on: the row that contradicts exact theory by most; empty when none does.
std::string contradiction(const std::vector<HandbookRow>& rows);

// Twist from end to end per unit of torque, rad/(N*mm), of the shaft without sleeve, all of this side's steel, with
// both first sections of its first diameter. Source: [Shigley2011] eq. 3-35.
double twist_with_diameter_of(const Case& asked, Side side);

// Of these the rows of bars, shoulders and grooves, whose theory holds too where the sleeve is no body of revolution.
std::vector<HandbookRow> rows_of_plain_metal(const std::vector<HandbookRow>& rows);

}  // namespace splicewright
