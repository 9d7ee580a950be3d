// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "post/sourced.h"

namespace splicewright
{

// Two parallel cylinders, or a cylinder in a bore, pressed together.
struct LineContact
{
    Millimetre radius;       // 1/(1/R1 + 1/R2), a bore counts as negative
    double load_per_mm = 0;  // N/mm
    Megapascal modulus[2];   // of both bodies
    double poisson[2] = {0.3, 0.3};
};

struct LineContactStress
{
    Millimetre half_width;
    Megapascal peak_pressure;
    Megapascal peak_shear;  // largest, below the surface
    Millimetre depth;       // of it
};

// b = sqrt(4 q R/(pi E*)), p0 = 2 q/(pi b), 1/E* = sum of (1 - nu^2)/E; largest shear 0.30028 p0 at 0.78615 b.
// For contacts narrow against the radius. Expects radius, load and moduli above 0.
// Source: [Johnson1985] ch. 4; the two factors derived again.
Sourced<LineContactStress> line_contact_stress(const LineContact& contact);

}  // namespace splicewright
