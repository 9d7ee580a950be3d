// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "post/sourced.h"

namespace splicewright
{

enum class StressFamily
{
    normal,
    shear,
};

// Whether all cycles of the life are alike; a mixed history also damages below the knee.
enum class Amplitude
{
    constant,
    variable,
};

// Two-slope S-N curve of stress range: N = 2e6 (class/range)^slope up to the knee, steeper life beyond it,
// continuous at the knee. Survival 97.7 % for the classes below.
struct SnCurve
{
    std::string name;  // "FAT 63 normal"
    StressFamily family = StressFamily::normal;
    Megapascal fatigue_class;  // range at 2e6 cycles, before the partial factor
    double slope = 3;
    double knee_cycles = 1e7;
    double slope_beyond_constant = 22, slope_beyond_variable = 5;  // after the knee, not below slope
    double partial_factor = 1;                                     // divides the class, >= 1
    std::string source;
    Provenance provenance = Provenance::from_memory;
};

constexpr double class_cycles = 2e6;  // that a fatigue class speaks of

// Below this many cycles the curve is extrapolated: the material flows, and static yield governs.
// Source: [Hobbacher2016] scope, from memory.
constexpr double low_cycle_bound = 1e4;

struct Life
{
    double cycles = 0;          // infinite for a range of 0
    bool extrapolated = false;  // fewer than low_cycle_bound cycles
};

// Cycles to failure at a stress range >= 0. Falls strictly as the range grows.
Life cycles(const SnCurve& curve, Megapascal range, Amplitude amplitude);

// The range that the curve allows for a number of cycles > 0: inverse of cycles().
Megapascal allowable_range(const SnCurve& curve, double cycles, Amplitude amplitude);

// The range at the knee, partial factor included.
Megapascal knee_range(const SnCurve& curve);

// Nominal-stress curves of a class: normal, slope 3, knee 1e7, then 22 or 5; shear, slope 5, knee 1e8, then 22 or 9
// (9 uncertain). The classes of details come with their own provenance, which the curve takes over.
// Source: [Hobbacher2016] sec. 3.2 and 4.3, from memory.
SnCurve normal_curve(Megapascal fatigue_class, double partial_factor, Provenance class_provenance);
SnCurve shear_curve(Megapascal fatigue_class, double partial_factor, Provenance class_provenance);

// Stress at a notch of reference radius 1 mm that an effective notch class speaks of; walls of 5 mm and more.
enum class NotchStress
{
    first_principal,  // 225 MPa, seen in a secondary source
    von_mises,        // 200 MPa, from memory
    shear,            // 160 MPa, from memory
};

// Source: [Fricke2012]; curve shapes as above.
SnCurve effective_notch_curve(NotchStress stress, double partial_factor);

// The same for a notch of radius 0.05 mm, for walls below 5 mm: 630, 560 and 250 MPa, from memory.
SnCurve small_notch_curve(NotchStress stress, double partial_factor);

// Detail categories of EN 1993-1-9: normal, slope 3 to 5e6 cycles, then 5; shear, slope 5. The cut-off at 1e8 cycles
// is left out: small cycles go on damaging, which is on the safe side.
// Source: [Eurocode3Fatigue2005] sec. 7.1, from memory.
SnCurve eurocode_normal_curve(Megapascal category, double partial_factor);
SnCurve eurocode_shear_curve(Megapascal category, double partial_factor);

// (25 mm/t)^exponent for t above 25 mm, else 1: factor on a class. Exponents: toe as welded 0.3, ground butt 0.1.
// Source: [Hobbacher2016] sec. 3.5.2, from memory.
double thickness_factor(Millimetre thickness, double exponent);

}  // namespace splicewright
