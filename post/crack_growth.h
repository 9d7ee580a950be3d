// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>
#include <vector>

#include "cases/case.h"
#include "post/sourced.h"

namespace splicewright
{

// Growth of a crack under repeated blocks of cycles.
//   da/dN = constant dK^slope for dK above the threshold, else 0; dK in MPa sqrt(mm), a in mm.
// Source: [ParisErdogan1963] for the form.
struct ParisLaw
{
    double constant = 0, slope = 3, threshold = 0;
};

// 5.21e-13, 3 and 63: steel in air, welded, upper bound; seen in secondary sources that name BS 7910.
// Source: [BS7910].
Sourced<ParisLaw> welded_steel_in_air();

// Toughness of the weld metal that a crack grows through, MPa sqrt(mm): as stated, else from the Charpy value of its
// class, else that of 27 J (judgement), by (12 sqrt(Cv) - 20)(25/B)^0.25 + 20 in MPa sqrt(m). B is the size where it is
// over 25 mm; below, 25 mm on the safe side. Source: [BS7910] annex J, from memory.
Sourced<double> toughness_of(const Material& metal, double size_mm);

// One kind of cycle of the life asked for.
struct CrackCycles
{
    double count = 0;
    std::function<double(double)> range;   // dK at a crack length, MPa sqrt(mm)
    double torque_range = 0, bending = 0;  // N*mm, what the range comes from; for those who explain it
};

struct CrackPlan
{
    double first = 0, most = 0;                // crack length at the start, and where nothing is left, mm
    std::vector<CrackCycles> cycles;           // of the life asked for
    std::function<double(double)> static_use;  // at the peak load: the worse of collapse and fracture, 1 is the end
};

// A point of the growth curve: crack length against the life used, in lives asked for.
struct CrackPoint
{
    double length_mm = 0, life = 0;
};

// A piece of the growth: its middle, its length and the growth there over one life asked for, mm.
struct CrackPiece
{
    double middle = 0, length = 0, growth = 0;
};

struct CrackLife
{
    double last = 0;  // length at collapse or fracture, mm
    double life = 0;  // in lives asked for; infinite: no cycle exceeds the threshold; 0: the first peak load breaks it
    std::vector<CrackPoint> curve;
    std::vector<CrackPiece> pieces;  // what `life` is the sum of; the last has no growth where the crack stops
};

// Integrates the growth with all intensities and the static use multiplied by `scale`.
CrackLife crack_life(const CrackPlan& plan, const ParisLaw& law, double scale);

// The scale at which the life is exactly the one asked for; its inverse is the utilisation.
double crack_scale(const CrackPlan& plan, const ParisLaw& law);

// Intensity of a penny-shaped crack of radius a in a round bar of radius b by a couple that the ring around it carries,
// over the couple; MPa sqrt(mm) per N*mm. Within 1 to 5 % of finite elements for a/b of 0.3 to 0.9 (tests/fracture).
// Source: [TadaParisIrwin2000] part 28 after [BenthemKoiter1973], from memory.
double penny_torsion(double a, double b);  // mode III
double penny_bending(double a, double b);  // mode I

}  // namespace splicewright
