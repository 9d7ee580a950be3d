// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "cases/case.h"
#include "solver/stress_field.h"

namespace splicewright::sample
{

// A made-up splice on a structured mesh: two bars with an unfused land, a sleeve on slits, two fillets.
struct Shape
{
    double left = -190, right = 205;   // mm, ends of the bars
    double bar = 14;                   // mm, radius
    double sleeve = 20.5;              // mm, outer radius; 0: a plain shaft
    double sleeve_half = 42, leg = 6;  // mm
    double land = 4;                   // mm, radius of the unfused disc
    double element = 1.5;              // mm
};

// Fields: torsion T r / J and bending M r / I of the bar, tension F / A, each raised near the toes by a smooth bump
// of `bump` times its own size, 1 mm wide.
SolvedFields solved_fields(const Shape& shape, double bump);
Case splice_case(const Shape& shape);

}  // namespace splicewright::sample
