// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "solver/freedoms.h"
#include "solver/meridian.h"

namespace splicewright
{

// Stress intensity factors at the sharp ends of the unfused faces: "land-edge", "root.left", "root.right".

// Of one tip under one unit load, MPa*sqrt(mm) per N*mm or N.
// In bending I and II are amplitudes of cos theta and III is one of sin theta, theta from the plane of bending.
// Signs as in crack_field; up is to the right at the land and to the sleeve at a root. A negative I closes the crack:
// the faces are taken as free, so where another load does not open them the number is formal.
// 0 with a bar of 0 where symmetry or a held slit leaves no such mode.
struct ModeIntensities
{
    Measured I, II, III;
};

struct TipIntensities
{
    ModeIntensities torsion, bending, axial;
};

struct TipAnswer
{
    std::string id;
    double z = 0, r = 0;                   // mm
    std::vector<TipIntensities> brackets;  // one for each way in which the slit may hang together; judge by the worst
    double energy_mismatch_pct = 0;        // worst: resultant of the intensities against the energy release rate
    std::string note;                      // steels that differ; empty otherwise
};

struct StressIntensities
{
    std::vector<TipAnswer> tips;
    std::vector<std::string> absent_tips;  // "land-edge: the butt is fused over the full section"
    int levels = 0, nodes = 0;
    double worst_error_pct = 0;  // of all bars, over the resultant of I, II and III of the same tip and load, but for
                                 // the part that comes from steels that differ
    bool reached = false;        // the accuracy asked, by worst_error_pct
};

// A section with crack tips, what it is made of and the ways in which its slits may hang together (one at least).
struct CrackedSection
{
    Outline outline;
    std::vector<ElasticConstants> steel;  // by outline region
    std::vector<Ties> brackets;
};

// Meshes and refines until the intensities of two successive meshes agree within the accuracy. Three domains of
// integration on each mesh. The bar covers 1.5 times the change between the meshes, the spread over the domains, the
// mismatch with the energy release rate, and half the difference of the steels that meet at the tip.
// Steels that differ: valid to the first order in the difference. The exact exponent between different steels is
// complex and I and II are then not separate; a difference above 5 % is refused for that tip. Throws CannotCompute when
// no mesh or no balanced solution is found.
StressIntensities stress_intensities(const CrackedSection& section, const Accuracy& accuracy);

// The scenario's own root shape does not matter: the roots are taken sharp. The press fit itself gives no intensity
// here.
StressIntensities stress_intensities(const Case& asked, const Scenario& scenario, const Accuracy& accuracy);

}  // namespace splicewright
