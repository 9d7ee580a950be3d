// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/model_rows.h"

#include <algorithm>
#include <cmath>

namespace splicewright
{
namespace
{

constexpr double per_kilonewton_metre = 1e6, per_kilonewton = 1e3;

Measured scaled(const Measured& unit, double factor) { return {unit.value * factor, unit.error * factor}; }

}  // namespace

std::vector<ModelRow> model_rows(const MeridianAnswer& meridian, const MeridianAnswer& solid)
{
    std::vector<ModelRow> rows;
    for (const SiteAnswer& site : solid.sites)
    {
        const auto same = std::find_if(meridian.sites.begin(), meridian.sites.end(),
                                       [&](const SiteAnswer& other) { return other.id == site.id; });
        if (same == meridian.sites.end()) continue;
        const auto add = [&](const char* load, const UnitPeak& one, const UnitPeak& other, double factor)
        {
            ModelRow row{site.id, load, scaled(one.von_mises, factor), scaled(other.von_mises, factor), false};
            row.agrees = std::abs(row.solid.value - row.meridian.value) <= row.solid.error + row.meridian.error;
            rows.push_back(row);
        };
        add("torsion", same->torsion, site.torsion, per_kilonewton_metre);
        add("bending", same->bending, site.bending, per_kilonewton_metre);
        add("axial", same->axial, site.axial, per_kilonewton);
    }
    return rows;
}

std::vector<std::string> sites_worse_in_solid(const std::vector<ModelRow>& rows)
{
    std::vector<std::string> sites;
    for (const ModelRow& row : rows)
        if (row.solid.value - row.solid.error > row.meridian.value + row.meridian.error &&
            std::find(sites.begin(), sites.end(), row.site) == sites.end())
            sites.push_back(row.site);
    return sites;
}

}  // namespace splicewright
