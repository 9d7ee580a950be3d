// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "cases/case.h"
#include "post/section_strength.h"
#include "solver/meridian.h"

namespace splicewright
{

// Peak torque with the bending that comes with it, the axial load and the press fit.
CombinedLoad peak_load(const Case& asked);
std::string peak_load_text(const Case& asked);  // "peak torque 1150 N·m with 70 N·m of bending"

// Bending couple that comes with a torque, N*mm: in proportion to the torque.
double bending_with(const Load& load, double torque);

// Largest von Mises stress of a site under a load, over its places, theta and brackets, with its error.
struct SiteDemand
{
    double von_mises = 0;  // MPa
    double error_pct = 0;
    double z = 0, r = 0;  // where, mm
    double theta = 0;     // from the plane of bending, rad
    double around = 0;    // of the solid model: of the place around the axis, rad
    PointStress stress;   // there
};
SiteDemand site_demand(const SiteAnswer& site, const CombinedLoad& load);

// Discretisation error of the von Mises stress under a combination, percent of it: the unit errors weighed by what each
// load adds, as a sum or as shear joins normal stress, whichever is more.
double combined_error_pct(const SiteAnswer& site, const CombinedLoad& load);

// "left" or "right" of a site such as "bar-toe.left"; left for sites on the joint plane.
Side side_of(const std::string& site);
bool is_weld_notch(const std::string& site);   // toes, roots and the land's edge
bool is_plain_metal(const std::string& site);  // bar, shoulder, groove

// Net section, notch radius and local material of "bar.S", "shoulder.S.N" and "groove.S.N". For "bar.S" the thinnest
// section of the bar, radius 0.
struct PlainSite
{
    RoundSection section;
    Millimetre notch_radius;
    const Material* material = nullptr;
};
PlainSite plain_site(const Case& asked, const std::string& site);

// Whether the finite elements of "bar.S" were read on its thinnest section; a stretch of it that is too short between
// two features is not.
bool reads_thinnest_section(const Case& asked, const SiteAnswer& site);

}  // namespace splicewright
