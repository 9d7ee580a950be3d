// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/weld_line.h"
#include "post/worked.h"
#include "solver/meridian.h"

namespace splicewright
{

// Cosine or sine of a quarter turn is 0, which floating point misses by 1e-16.
double level(double of_angle);

// Force per length of the weld at an angle from the plane of bending, from what the finite elements give by unit load.
std::vector<WorkedStep> line_force_steps(const WeldForce& weld, const CombinedLoad& load, double theta_rad,
                                         const LineForce& force);

// Throat and its stresses; `unit` "MPa" for a force in N/mm.
std::vector<WorkedStep> throat_steps(const FilletWeld& weld, const LineForce& force, const ThroatPlaneStress& stress,
                                     const std::string& unit);

// What a unit couple brings to a place: `what` is "shear on the surface", `where` may be empty.
WorkedStep unit_step(const std::string& what, const std::string& where, double value, double error_pct);

WorkedStep throat_size_step(const FilletWeld& weld);

}  // namespace splicewright
