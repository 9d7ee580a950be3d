// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "post/sourced.h"

namespace splicewright
{

// Fatigue of plain (unwelded) steel shafts. Not for weld toes, roots or heated zones.

enum class SurfaceFinish
{
    ground,
    machined,  // or cold drawn
    hot_rolled,
    forged,
};

// k_a = factor S^exponent, S the tensile strength in MPa; at most 1, which the fits pass for weak steels (judgement).
// Source: [Shigley2011] table 6-2 (9th edition; the 11th has other numbers).
struct SurfaceLaw
{
    double factor = 1, exponent = 0;
    const char* name = "";
};
SurfaceLaw surface_law(SurfaceFinish finish);

enum class Reliability
{
    percent_50,
    percent_90,
    percent_95,
    percent_99,
    percent_99_9,
    percent_99_99,
};

// For the load factor k_c. Where bending and torsion are joined by von Mises the stress is combined, and k_c is 1.
enum class FatigueLoad
{
    combined,  // bending, or von Mises of bending and torsion: 1
    axial,     // 0.85, and no size effect
    torsion,   // alone, as a shear stress: 0.59
};

struct EnduranceQuery
{
    Megapascal tensile;
    Millimetre diameter;  // of a rotating round section
    SurfaceFinish surface = SurfaceFinish::machined;
    FatigueLoad load = FatigueLoad::combined;
    Reliability reliability = Reliability::percent_99;
};

struct EnduranceLimit
{
    double surface = 1, size = 1, load = 1, reliability = 1;  // Marin factors k_a, k_b, k_c, k_e
    Megapascal specimen;  // rotating-beam specimen: 0.5 tensile up to 1400 MPa, 700 MPa above; from memory
    Megapascal limit;     // k_a k_b k_c k_e specimen: amplitude at 1e6 cycles
};

// Endurance limit by Marin factors; room temperature. Absent when the diameter is outside 2.79 to 254 mm.
// Source: [Shigley2011] table 6-2, eq. 6-8, 6-18 to 6-26, table 6-5.
Sourced<std::optional<EnduranceLimit>> endurance_limit(const EnduranceQuery& query);

enum class NotchLoad
{
    bending,  // or axial
    torsion,
};

struct NotchSensitivity
{
    std::optional<double> q;  // 0 to 1; absent outside the fitted range of tensile strength
    std::string absent_because;
    double root_a = 0;  // Neuber's sqrt(a), mm^0.5; 0 where q is absent
};

// q = 1/(1 + sqrt(a)/sqrt(radius)), Neuber; sqrt(a) by cubic fits valid for tensile 340 to 1700 MPa in bending,
// to 1500 MPa in torsion, whose fit turns negative beyond 1600 MPa.
// Source: [Shigley2011] eq. 6-33 to 6-35, whose fits are in kpsi and in; turned into MPa and mm here.
Sourced<NotchSensitivity> notch_sensitivity(Megapascal tensile, Millimetre radius, NotchLoad load);

// 1 + q (factor - 1), factor >= 1, 0 <= q <= 1.
// Source: [Shigley2011] eq. 6-32.
double fatigue_notch_factor(double concentration_factor, double sensitivity);

// Local stresses, fatigue notch factors included, as amplitude and mean.
struct FluctuatingStress
{
    Megapascal normal_alternating, normal_mean, shear_alternating, shear_mean;
};

// von Mises of the amplitudes and of the means: sqrt(sigma^2 + 3 tau^2); both >= 0.
// Source: [Shigley2011] eq. 7-5, 7-6. Counts a compressive mean as if it were tensile.
struct EquivalentStress
{
    Megapascal alternating, mean;
};
EquivalentStress equivalent_stress(const FluctuatingStress& stress);

// Safety factors on stress against endless life; infinite without stress.
// Goodman: 1/n = a/Se + m/Sut. Source: [Shigley2011] eq. 7-7, from memory.
Sourced<double> goodman_safety(const EquivalentStress& stress, Megapascal endurance, Megapascal tensile);
// Gerber: 1/n = (a/2Se) (1 + sqrt(1 + (2 m Se/(a Sut))^2)). Source: [Shigley2011] eq. 7-9.
Sourced<double> gerber_safety(const EquivalentStress& stress, Megapascal endurance, Megapascal tensile);

// Fully reversed amplitude of the same damage: a/(1 - m/Sut); absent when the mean reaches the tensile strength.
// Source: [Shigley2011] sec. 6-14, from memory.
std::optional<Megapascal> goodman_reversed(const EquivalentStress& stress, Megapascal tensile);

// Share f of the tensile strength that lasts 1e3 cycles: 0.9 up to 500 MPa, then 1.06 - 4.1e-4 Sut + 1.5e-7 Sut^2
// up to 1400 MPa (0.78 there); absent above. A flat 0.9, as course sheets have it, flatters strong steels.
// Source: [Shigley2011] fig. 6-18, and a curve fit of a later edition; both from memory.
Sourced<std::optional<double>> thousand_cycle_share(Megapascal tensile);

// S-N line of a steel shaft: f Sut at 1e3 cycles to Se at 1e6. Expects 0 < endurance < f tensile and f < 1.
struct ShaftSnLine
{
    Megapascal tensile, endurance;
    double thousand_cycle_share = 0.9;  // f
};

double thousand_cycle_strength(const ShaftSnLine& line);  // f Sut, MPa

// Of the straight lines in log-log through (Sut, 1), (f Sut, 1e3) and (Se, 1e6): cycles go with the stress to minus b.
struct ShaftSnSlopes
{
    double below = 0, above = 0;  // the strength at 1e3 cycles
};
ShaftSnSlopes shaft_sn_slopes(const ShaftSnLine& line);

// Cycles to failure on the line, extended below Se; above f Sut on a line from there to Sut at 1 cycle.
// Source: [Shigley2011] eq. 6-13 to 6-16; the part below 1e3 cycles from memory.
double shaft_cycles(const ShaftSnLine& line, Megapascal reversed_amplitude);

struct StressBlock
{
    EquivalentStress stress;
    double count = 0;
};

// Miner sum by Goodman-equivalent amplitudes. While no block exceeds Se the life is endless and the sum 0;
// once one does, all blocks damage on the line extended below Se. Infinite when a mean reaches Sut.
// Source: [Shigley2011] sec. 6-15; the extended line: common practice, no source.
double shaft_miner_sum(const std::vector<StressBlock>& blocks, const ShaftSnLine& line);

struct ShaftFatigue
{
    double damage = 0;  // of the blocks as they are
    double damage_limit = 0;
    double stress_scale = 0;  // largest factor on all stresses that keeps the sum within the limit; infinite: no demand
    double utilisation = 0;   // 1/stress_scale
    bool low_cycle = false;   // a block allows fewer than 1e3 cycles: yield governs
};

// The utilisation of the blocks; damage_limit > 0. The scale is found by bisection to 1e-12.
Sourced<ShaftFatigue> shaft_fatigue(const std::vector<StressBlock>& blocks, const ShaftSnLine& line,
                                    double damage_limit);

}  // namespace splicewright
