// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/strength_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/section_checks.h"
#include "post/site_loads.h"
#include "post/strength_limits.h"

namespace splicewright
{
namespace
{

const char* const yield_source = "von Mises [Mises1913]";

CheckRow yield_row(const std::string& site, const std::string& check, double demand, double error_pct,
                   const Limit& limit, const std::string& method)
{
    CheckRow row;
    row.id = "strength/" + site;
    row.site = site;
    row.check = check;
    row.demand = demand;
    row.capacity = limit.stress.value();
    row.unit = "MPa";
    row.error_pct = error_pct;
    row.utilisation = demand * (1 + error_pct / 100) / row.capacity;
    row.method = method;
    row.source = fmt::format("{}; limit: {}", yield_source, limit.whose);
    row.provenance = weaker(Provenance::theory, limit.provenance);
    return row;
}

CheckRow fe_yield_row(const SiteAnswer& site, const CombinedLoad& load, const std::string& check, const Limit& limit)
{
    const SiteDemand demand = site_demand(site, load);
    return yield_row(site.id, check, demand.von_mises, demand.error_pct, limit,
                     "von Mises stress by finite elements, largest over the site and around the turn");
}

// Nominal von Mises stress of a round section under the peak load, MPa.
double nominal_von_mises(const RoundSection& section, const CombinedLoad& load)
{
    const double shear = surface_shear(section, NewtonMillimetre{load.torque}).value.value();
    const double normal = surface_bending_stress(section, NewtonMillimetre{load.bending}).value.value() +
                          std::abs(axial_stress(section, Newton{load.axial}).value.value());
    return std::sqrt(normal * normal + 3 * shear * shear);
}

CheckRow beside_weld_row(const Case& asked, const std::string& site, const CombinedLoad& load)
{
    const Bar& bar = *asked.bar[index(side_of(site))];
    CheckRow row = yield_row(site, "yield of the bar beside the weld",
                             nominal_von_mises({bar.sections.front().diameter, bar.bore}, load), 0,
                             heated_yield_of(bar.material), "nominal stress 16T/(pi d^3), 32M/(pi d^3), 4N/(pi d^2)");
    row.source += "; [TimoshenkoGoodier1970] art. 101-103";
    return row;
}

CheckRow throat_row(const Case& asked, const WeldForce& weld, Side side, const CombinedLoad& load)
{
    const EurocodeThroat eurocode = eurocode_throat(asked, side);
    const WeldCheck check = worst_directional(asked, weld, side, load);
    CheckRow row;
    row.site = fmt::format("throat.{}", name_of(side));
    row.id = "strength/" + row.site;
    row.check = "sleeve weld, directional method";
    row.demand = check.demand.value();
    row.capacity = check.capacity.value();
    row.unit = "MPa";
    row.error_pct = weld.error_pct;
    row.utilisation = check.utilisation * (1 + weld.error_pct / 100);
    row.method = "structural stress: force on the weld by finite elements over the throat, directional method";
    row.source = "[Eurocode3Joints2005] 4.5.3.2, eq. 4.1; fu of " + eurocode.weakest;
    row.provenance = eurocode.provenance;
    row.note = check.note;
    row.not_valid_because = outside_eurocode(asked, side);
    return row;
}

}  // namespace

std::vector<CheckRow> strength_checks(const Case& asked, const MeridianAnswer& answer)
{
    const CombinedLoad load = peak_load(asked);
    std::vector<CheckRow> rows;
    for (const SiteAnswer& site : answer.sites)
    {
        if (site.id.starts_with("bar."))
            rows.push_back(fe_yield_row(site, load, "yield of the plain bar",
                                        yield_of(asked.bar[index(side_of(site.id))]->material)));
        else if (site.id.starts_with("groove."))
        {
            const PlainSite plain = plain_site(asked, site.id);
            rows.push_back(yield_row(site.id, "yield of the net section", nominal_von_mises(plain.section, load), 0,
                                     yield_of(*plain.material), "nominal stress of the net section"));
        }
        else if (site.id.starts_with("bar-toe.")) rows.push_back(beside_weld_row(asked, site.id, load));
        else if (site.id == "sleeve-mid")
            rows.push_back(fe_yield_row(site, load, "yield of the sleeve", yield_of(asked.sleeve->material)));
        else if (site.id == "butt-surface")
            rows.push_back(fe_yield_row(site, load, "yield at the butt weld", butt_limit(asked)));
    }
    for (const Side side : both_sides)
        if (answer.weld[index(side)]) rows.push_back(throat_row(asked, *answer.weld[index(side)], side, load));
    return rows;
}

}  // namespace splicewright
