// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/sn_curve.h"
#include "post/sourced.h"

namespace splicewright
{

struct StressCycles
{
    Megapascal range;                      // >= 0
    double count = 0;                      // >= 0, finite
    double torque_range = 0, bending = 0;  // N*mm, what the range comes from; for those who explain it
    double relief = 1;                     // f(R) that the range was divided by
};
using Spectrum = std::vector<StressCycles>;

// Sum of count/cycles(range); 0 for an empty spectrum.
// Source: [Miner1945].
double miner_sum(const Spectrum& spectrum, const SnCurve& curve, Amplitude amplitude);

// "damage 0.024"; in words where a single load is beyond the strength, which makes it infinite.
std::string damage_words(double damage);

// The factor on all ranges at which the Miner sum equals damage_limit > 0; infinite when no cycle demands anything.
// Found by bisection in the logarithm, bracketed by the least and the greatest slope; relative error below 1e-12.
double stress_scale_at_limit(const Spectrum& spectrum, const SnCurve& curve, Amplitude amplitude, double damage_limit);

struct FatigueUtilisation
{
    double damage = 0;  // Miner sum of the spectrum as it is
    double damage_limit = 0;
    double stress_scale = 0;    // stress_scale_at_limit
    double utilisation = 0;     // 1/stress_scale: a ratio of stresses, not of lives; 0 without demand
    bool extrapolated = false;  // a range that counts allows fewer than low_cycle_bound cycles
};
FatigueUtilisation fatigue_utilisation(const Spectrum& spectrum, const SnCurve& curve, Amplitude amplitude,
                                       double damage_limit);

// How the mean stress behaves over the life.
enum class MeanStress
{
    steady,
    strongly_fluctuating,
};

// Allowed Miner sum: 0.5, or 0.2 with a strongly fluctuating mean.
// Source: [Hobbacher2016] sec. 4.3, from memory.
Sourced<double> miner_limit(MeanStress mean);

// gamma_Mf for safe life and high consequence: 1.35.
// Source: [Eurocode3Fatigue2005] table 3.1, from memory.
Sourced<double> safe_life_partial_factor();

enum class Phase
{
    proportional,  // normal and shear stress rise and fall together
    non_proportional,
};

struct Interaction
{
    double sum = 0, limit = 1;
    double utilisation = 0;  // factor by which both stresses would have to fall to meet the limit
    std::string note;        // "shear neglected: below 15 % of normal"
};

// (u_n^2 + u_s^2) <= CV; CV 1.0 proportional, 0.5 not. Shear below 15 % of normal is neglected, and CV with it;
// normal beside shear never is. Takes stress utilisations >= 0 (1/stress_scale). Differs from [Hobbacher2016]: the 15 %
// is taken between the utilisations, not between the stress ranges; judgement. Source: [Hobbacher2016] sec. 4.2
// and 4.3, from memory.
Sourced<Interaction> squares_interaction(double normal_utilisation, double shear_utilisation, Phase phase);

// u_n^3 + u_s^5 <= 1, the sum of the two damages on single-slope curves with the partial factors inside u.
// Source: [Eurocode3Fatigue2005] sec. 8(3), from memory.
Sourced<Interaction> eurocode_interaction(double normal_utilisation, double shear_utilisation);

}  // namespace splicewright
