// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>
#include <vector>

#include "post/crack_growth.h"
#include "post/worked.h"
#include "solver/stress_intensity.h"

namespace splicewright
{

// A crack with all that its growth was computed from, so that it can be told.
struct WorkedCrack
{
    CrackPlan plan;
    double by_torque = 0, by_bending = 0;      // intensity of the first length, MPa sqrt(mm) per N*mm
    double peak_torque = 0, peak_bending = 0;  // N*mm
    std::function<double(double)> growth_by_torque, growth_by_bending;  // of the intensity, over the first length
    std::function<double(double)> collapse;                             // share of the collapse load
    std::function<std::vector<WorkedStep>(double)> growth_steps, collapse_steps;
};

// From the modes of one tip under a unit load to their resultant by energy.
std::vector<WorkedStep> resultant_steps(const char* load, const ModeIntensities& modes, double poisson_ratio,
                                        double resultant);

// Intensity of the penny-shaped crack by a unit torque (mode III) or couple (mode I) at two lengths, and their ratio.
std::vector<WorkedStep> penny_torsion_steps(double first, double length, double outer);
std::vector<WorkedStep> penny_bending_steps(double first, double length, double outer);

// From the intensities to the inverse of the scale at which the life is the one asked for: the sum over the growth, the
// threshold or the first peak load, whichever stops the search.
std::vector<WorkedStep> crack_steps(const WorkedCrack& crack, const ParisLaw& law, double toughness, double scale);

}  // namespace splicewright
