// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "post/sourced.h"

namespace splicewright
{

// Handbook stress concentration factors of solid round bars, for comparison with finite elements.

enum class Loading
{
    torsion,
    bending,
    tension,
};
const char* name_of(Loading loading);  // "torsion", ...

// Step from large to small diameter with a quarter-round fillet (an arc of less when radius > step height).
struct ShoulderFillet
{
    Millimetre large_diameter, small_diameter, radius;
    Millimetre bore;  // the charts know only solid bars
};

// Circumferential groove: parallel walls and a half-round bottom (U), half round when depth = radius,
// a circular segment when depth < radius.
struct RingGroove
{
    Millimetre outer_diameter, depth, radius;
    Millimetre bore;  // the charts know only solid bars
};

enum class PeakStress
{
    shear,            // torsion: largest shear over the surface shear of the net section
    first_principal,  // bending, tension: largest first principal stress over the nominal stress
};

// Range, in percent, in which (true factor)/(handbook factor) - 1 is taken to lie.
struct TrustBand
{
    double low_pct = 0, high_pct = 0;
    std::string reason;
};

struct ConcentrationFactor
{
    std::optional<double> factor;  // absent outside the range of the source: no value is made up
    std::string absent_because;    // empty when there is a factor
    PeakStress peak = PeakStress::first_principal;
    std::string nominal;  // the nominal stress the factor multiplies
    TrustBand band;
    std::string source;
    Provenance provenance = Provenance::from_memory;
};

// Factors on the small diameter d from each source that has a fit, the more widely known first:
// [Pilkey1997] charts 3.4, 3.10, 3.12 for all loadings; [Roark2002] in torsion; [Tipton1996] in bending, tension.
// Expects large_diameter > small_diameter > bore >= 0 and radius > 0.
std::vector<ConcentrationFactor> shoulder_factors(const ShoulderFillet& fillet, Loading loading);

// Factors on the net diameter: [Pilkey1997] charts 2.19, 2.41, 2.47 for all loadings; [Roark2002] in torsion.
// Expects 0 < depth, net diameter > bore >= 0, radius > 0.
std::vector<ConcentrationFactor> groove_factors(const RingGroove& groove, Loading loading);

// Deep hyperbolic groove in an infinite body, a the net radius: exact, and close to a groove that is deep against
// its radius. Source: [Neuber1946]; torsion re-derived, tension and bending from memory, both numerically confirmed.
// Expects a positive net radius and groove radius, 0 <= poisson_ratio < 0.5.
ConcentrationFactor deep_groove_factor(Millimetre net_radius, Millimetre groove_radius, double poisson_ratio,
                                       Loading loading);

}  // namespace splicewright
