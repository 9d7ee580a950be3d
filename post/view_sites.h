// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <map>
#include <string>
#include <vector>

#include "cases/case.h"
#include "post/report.h"
#include "solver/stress_field.h"

namespace splicewright
{

// A load that the view can show: one of those asked, or all of them together.
struct ViewLoad
{
    std::string name;    // "Torque alone"
    std::string detail;  // "450 N·m"
    CombinedLoad load;
};
std::vector<ViewLoad> view_loads(const Case& asked);

// A stress of a site with its error bar, MPa.
struct SiteValue
{
    double value = 0, error = 0;
};

// What the view tells at a site under one load: as the checks read it, over the places of the site, all around, the
// worse where a slit may be open or closed.
struct ViewSite
{
    std::string id;
    double z = 0, r = 0, theta = 0;  // where the von Mises stress is largest, mm and rad; theta from the plane of
                                     // bending, of the solid model from that of the lap
    SiteValue von_mises, principal, shear;
    bool has_error = true;  // not under the press fit alone, which the error bars do not weigh
};
ViewSite view_site(const SiteAnswer& site, const CombinedLoad& load);

// False of a site that is one place of the solid model, not an edge or a surface around the shaft.
bool goes_round(const std::string& site);

// The check that governs the site in the sound splice; nullptr without one.
const CheckRow* row_of_site(const Report& report, const std::string& site);

// The number by which pictures and view call each site: from left to right, of the sound splice under the peak load;
// sites that only another scenario has follow.
std::map<std::string, int> site_numbers(const Report& report);

// The mark of a check's row in the page, for links.
std::string row_mark(const std::string& check_id);

}  // namespace splicewright
