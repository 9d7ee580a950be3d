// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"
#include "solver/surface_stress.h"

namespace splicewright
{

// Stretches of surface that are judged: "bar-toe.S", "sleeve-toe.S", "root.S", "bar.S", "shoulder.S.N", "groove.S.N",
// "butt-surface", "land-edge", "sleeve-mid" with S = left or right.
struct SitePath
{
    std::string id;
    std::vector<SurfaceChain> chains;
    double free_of_ends = 0;  // places nearer than this many local diameters to a chain's end do not count
    bool lies_in_slit = false;
};

// The sites that this mesh has, in a fixed order. Surfaces of curves whose name begins with one of `held` may carry
// load.
std::vector<SitePath> site_paths(const Mesh& mesh, const std::vector<ElasticConstants>& steel,
                                 const std::vector<std::string>& held);

// Stress at the places of one site for the unit loads, MPa per N*mm or N, and for the press fit, MPa. [n] each.
struct SiteStress
{
    Eigen::VectorXd z, r;
    // Of the solid model: where around the axis, rad from the cut plane of the lap. Empty for the meridian model.
    Eigen::VectorXd around = {};
    SurfaceStress torsion, bending, axial, press;
    // Of the solid model, whose parts do not vary as cosine and sine: `bending` puts the tension side at angle 0, this
    // one at a quarter turn. Empty for the meridian model.
    SurfaceStress bending_across = {};
};

// At one place and one angle for a combination of loads, MPa. The angle is that of the place from the plane of bending;
// in the solid model, whose places have angles of their own, that of the plane of bending.
struct PointStress
{
    double along = 0, hoop = 0, shear = 0, across = 0, across_along = 0, across_hoop = 0;
};
PointStress point_stress(const SiteStress& site, Eigen::Index place, const CombinedLoad& load, double theta_rad);
double von_mises(const PointStress& stress);
double largest_principal(const PointStress& stress);  // in the surface, by magnitude, with its sign

// Largest von Mises, principal (by magnitude) and shear stress over the places and over theta.
struct SitePeak
{
    double von_mises = 0, principal = 0, shear = 0;  // MPa, >= 0
    double z = 0, r = 0;                             // of the largest von Mises stress, mm
    double theta = 0;                                // and from the plane of bending, rad
    double around = 0;                               // of the solid model: of the place around the axis, rad
    PointStress stress;                              // there
};
SitePeak site_peak(const SiteStress& site, const CombinedLoad& load);

}  // namespace splicewright
