// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"
#include "solver/meridian.h"

namespace splicewright
{

// Stress along the outside through one sleeve weld, under the peak load: up the bar, over the weld, along the sleeve.
struct SurfacePoint
{
    double s = 0;         // mm along the surface from the bar's toe: positive along the bar, negative over the weld
    double z = 0, r = 0;  // mm
    double shear = 0,
           normal = 0;  // MPa: shear by torque; along the surface, by bending at its tension side and axial load
};

// A place where the stress is read for its extrapolation to a toe.
struct SurfaceReading
{
    std::string site, rule;  // "bar-toe.left", "linear"
    double s = 0, shear = 0, normal = 0;
};

// The stress that the readings of a rule give at the toe.
struct SurfaceExtrapolation
{
    std::string site, rule;
    double s = 0, shear = 0, normal = 0;
};

struct WeldSurface
{
    Side side = Side::left;
    std::vector<SurfacePoint> points;  // by falling s: from the bar to the sleeve
    std::vector<SurfaceReading> readings;
    std::vector<SurfaceExtrapolation> extrapolated;
};

// Left and right; empty without a sleeve. On a free surface nothing acts across it, so that the stress along it is the
// sum of both normal stresses of the meridian plane.
std::vector<WeldSurface> weld_surfaces(const Case& asked, const MeridianAnswer& answer);

}  // namespace splicewright
