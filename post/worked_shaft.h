// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "post/machine_design.h"
#include "post/worked.h"
#include "solver/meridian.h"

namespace splicewright
{

// Loads of one kind of cycle on a shaft: couple that turns, torque about its mean; N*mm.
struct ShaftEvent
{
    double couple = 0, torque_alternating = 0, torque_mean = 0, count = 0;
};

// Local stresses: by 1 N*mm of couple and of torque, and the steady one of the axial force; MPa.
struct ShaftUnitStress
{
    double bending = 0, shear = 0, pull = 0;
    std::vector<WorkedStep> worked;
};

// The equivalent stresses of each event, in their order.
std::vector<StressBlock> shaft_blocks(const std::vector<ShaftEvent>& events, const ShaftUnitStress& unit);

std::vector<WorkedStep> endurance_steps(const EnduranceQuery& query, const EnduranceLimit& limit);
WorkedStep thousand_cycle_step(double tensile, const std::optional<double>& share, double taken);

// From the peak of the finite elements to the fatigue notch factor.
struct WorkedNotch
{
    NotchLoad load;
    Measured peak;
    double nominal = 0, concentration = 0, tensile = 0, radius = 0;
    std::optional<double> sensitivity;
    double root_a = 0;
    double factor = 1;
};
std::vector<WorkedStep> notch_steps(const WorkedNotch& notch);

struct FatigueNotchFactors
{
    double bending = 1, torsion = 1;
};
std::vector<WorkedStep> local_stress_steps(const RoundSection& section, double axial, const ShaftUnitStress& nominal,
                                           const FatigueNotchFactors& factors, const ShaftUnitStress& local);

// From the events that damage most to the utilisation, with the sum, or the endurance limit, at the factor found.
std::vector<WorkedStep> shaft_steps(const std::vector<ShaftEvent>& events, const ShaftUnitStress& unit,
                                    const std::vector<StressBlock>& blocks, const ShaftSnLine& line,
                                    const ShaftFatigue& fatigue);

}  // namespace splicewright
