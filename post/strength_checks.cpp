// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/strength_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "post/site_loads.h"
#include "post/weld_line.h"

namespace splicewright
{
namespace
{

constexpr int angles_over_turn = 24;

const char* const yield_source = "von Mises [Mises1913]";

struct Limit
{
    Megapascal stress;
    std::string whose;
    Provenance provenance = Provenance::from_memory;
};

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

Limit yield_of(const Material& material)
{
    return {material.yield,
            fmt::format("yield of {} {:.4g} MPa ({})", material.name, material.yield.value(), material.source),
            material.provenance};
}

Limit heated_yield_of(const Material& material)
{
    if (material.heated_yield_factor >= 1) return yield_of(material);
    return {
        material.heated_yield_factor * material.yield,
        fmt::format("{:.2g} x yield of {} {:.4g} MPa, softened beside a weld (judgement: {})",
                    material.heated_yield_factor, material.name, material.yield.value(), material.heated_yield_reason),
        Provenance::judgement};
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

Limit butt_limit(const Case& asked)
{
    Limit weakest = yield_of(asked.joint->filler);
    for (const Side side : both_sides)
    {
        const Limit beside = heated_yield_of(asked.bar[index(side)]->material);
        if (beside.stress < weakest.stress) weakest = beside;
    }
    return weakest;
}

// Largest utilisation of a throat around the turn by the directional method.
WeldCheck worst_throat(const FilletWeld& fillet, const WeldForce& weld, const CombinedLoad& load, Megapascal tensile,
                       double beta_w)
{
    WeldCheck worst;
    for (int k = 0; k < angles_over_turn; ++k)
    {
        const double theta = 2 * std::numbers::pi * k / angles_over_turn;
        const double c = load.bending * std::cos(theta), s = load.bending * std::sin(theta);
        const LineForce force{weld.bending_outward * c + weld.axial_outward * load.axial,
                              weld.bending_radial * c + weld.axial_radial * load.axial,
                              weld.torsion_tangential * load.torque + weld.bending_tangential * s};
        const WeldCheck check = directional_check(throat_plane_stress(fillet, force).value, tensile, beta_w).value;
        if (check.utilisation > worst.utilisation) worst = check;
    }
    return worst;
}

CheckRow throat_row(const Case& asked, const WeldForce& weld, Side side, const CombinedLoad& load)
{
    const SleeveWeld& fillet = asked.sleeve->weld;
    const Bar& bar = *asked.bar[index(side)];
    const std::array<const Material*, 3> parts{&fillet.filler, &asked.sleeve->material, &bar.material};
    const Material& weakest = **std::min_element(
        parts.begin(), parts.end(), [](const Material* a, const Material* b) { return a->tensile < b->tensile; });
    const Sourced<double> beta_w = correlation_factor(weakest.name);
    const WeldCheck check = worst_throat({fillet.leg_on_bar, fillet.leg_on_sleeve, bar.sections.front().diameter}, weld,
                                         load, weakest.tensile, beta_w.value);
    CheckRow row;
    row.site = fmt::format("throat.{}", name_of(side));
    row.id = "strength/" + row.site;
    row.check = "sleeve weld, mean stress on the throat";
    row.demand = check.demand.value();
    row.capacity = check.capacity.value();
    row.unit = "MPa";
    row.error_pct = weld.error_pct;
    row.utilisation = check.utilisation * (1 + weld.error_pct / 100);
    row.method = "structural stress: force on the weld by finite elements over the throat, directional method";
    row.source = "[Eurocode3Joints2005] 4.5.3.2, eq. 4.1; fu of " + weakest.name;
    row.provenance = weaker(weaker(Provenance::from_memory, beta_w.provenance), weakest.provenance);
    row.note = check.note;
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
