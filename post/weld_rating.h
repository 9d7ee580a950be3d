// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>
#include <string>

#include "cases/case.h"
#include "post/check_row.h"
#include "post/damage.h"

namespace splicewright
{

// Stress at one place of a weld by unit load, MPa per N*mm.
struct WeldUnitStress
{
    double shear_by_torque = 0, normal_by_bending = 0, shear_by_bending = 0;
    double shear_error_pct = 0, normal_error_pct = 0;           // discretisation
    std::vector<WorkedStep> torque_worked{}, bending_worked{};  // to k_tau; to k_sigma and k_tauM
};

// Ranges over the life asked for: each torque block with one fully reversed cycle of the bending that comes with its
// larger torque, and the running bending once per revolution.
struct WeldSpectrum
{
    Spectrum normal, shear;
    MeanStress mean = MeanStress::steady;
};
// Strongly fluctuating when the means of the torque blocks lie farther apart than a tenth of the largest torque range
// (judgement).
MeanStress mean_stress(const Load& load);
// The shear of each torque block is divided by its factor; none: as it is.
using BlockFactor = std::function<double(const TorqueBlock&)>;
WeldSpectrum weld_spectrum(const Load& load, const WeldUnitStress& stress, const BlockFactor& relief = {});

// One range per event: normal and shear of the event joined to an equivalent by von Mises, or to the largest
// principal stress.
enum class Equivalent
{
    von_mises,        // sqrt(normal^2 + 3 shear^2)
    first_principal,  // normal/2 + sqrt((normal/2)^2 + shear^2)
};
Spectrum equivalent_spectrum(const Load& load, const WeldUnitStress& stress, Equivalent equivalent);

// How normal and shear damage are joined.
enum class InteractionRule
{
    squares,           // [Hobbacher2016], not proportional
    cubes_and_fifths,  // [Eurocode3Fatigue2005]
};

struct WeldCurves
{
    SnCurve normal, shear;
    InteractionRule rule = InteractionRule::squares;
    std::vector<WorkedStep> worked{}, shear_worked{};  // to classes that are not as listed
};

// Takes the class of normal stress for the thickness.
void thicken(WeldCurves& curves, Millimetre thickness, double exponent);

struct WeldRating
{
    FatigueUtilisation normal, shear;
    Sourced<Interaction> interaction;
    double by_other_rule = 0;  // utilisation by the other of the two rules, on the same curves
    double life = 0;  // factor on all counts at which the utilisation with its error is 1; infinite without demand
};

// Miner sum allowed: 0.5 with squares, 0.2 when the mean fluctuates strongly, 1 with cubes and fifths, as each document
// has it.
double allowed_sum(InteractionRule rule, MeanStress mean);
// `error_pct` of the stresses shortens the life only.
WeldRating weld_rating(const WeldSpectrum& spectrum, const WeldCurves& curves, double error_pct = 0);

// A fatigue row for a rating; id "fatigue/SITE" or "fatigue/SITE/NAME".
struct RowTitle
{
    std::string site, name, check, method;
};
CheckRow weld_row(const Case& asked, const RowTitle& title, const WeldUnitStress& stress, const WeldCurves& curves);

// The same for one range per event against a single curve (its normal one).
CheckRow equivalent_row(const Case& asked, const RowTitle& title, const WeldUnitStress& stress, Equivalent equivalent,
                        const SnCurve& curve);

// Adds a sentence to a note.
void append_note(std::string& note, const std::string& more);

}  // namespace splicewright
