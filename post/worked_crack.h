// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>
#include <vector>

#include "post/crack_growth.h"
#include "post/worked.h"
#include "solver/stress_intensity.h"

namespace splicewright
{

// Symbols of the lines: c a length of the crack, c_0 the first, c_e the last and c_m one between them, all under the
// loads times the factor s; a the throat of a sleeve weld, b the radius of a bar.
struct CrackLength
{
    const char* name;
    double mm = 0;
};

// A crack with all that its growth was computed from, so that it can be told.
struct WorkedCrack
{
    CrackPlan plan;
    double by_torque = 0, by_bending = 0;      // intensity of the first length, MPa sqrt(mm) per N*mm
    double peak_torque = 0, peak_bending = 0;  // N*mm
    std::function<double(double)> growth_by_torque, growth_by_bending;  // of the intensity, over the first length
    std::function<double(double)> collapse;                             // share of the collapse load
    // Lines for a length of the crack with its name: "c_e", 8.01 mm.
    std::function<std::vector<WorkedStep>(const CrackLength&)> growth_steps, collapse_steps;
};

// From the modes of one tip under a unit load to their resultant by energy.
std::vector<WorkedStep> resultant_steps(const char* load, const ModeIntensities& modes, double poisson_ratio,
                                        double resultant);

// Intensity of the penny-shaped crack by a unit torque (mode III) or couple (mode I) at two lengths, and their ratio.
std::vector<WorkedStep> penny_torsion_steps(double first, const CrackLength& length, double outer);
std::vector<WorkedStep> penny_bending_steps(double first, const CrackLength& length, double outer);

// From the intensities to the inverse of the scale at which the life is the one asked for: the sum over the growth, the
// threshold or the first peak load, whichever stops the search.
std::vector<WorkedStep> crack_steps(const WorkedCrack& crack, const ParisLaw& law, double toughness, double scale);

}  // namespace splicewright
