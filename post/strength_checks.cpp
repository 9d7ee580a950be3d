// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/strength_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "post/section_checks.h"
#include "post/site_loads.h"
#include "post/strength_limits.h"

namespace splicewright
{
namespace
{

const char* const yield_source = "von Mises [Mises1913]";

CheckRow yield_row(const std::string& site, const std::string& check, double demand, double error_pct,
                   const Limit& limit, const std::string& method, const std::vector<WorkedStep>& worked)
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
    row.worked = worked;
    row.worked.push_back(limit_step(limit));
    row.worked.push_back(utilisation_step(demand, row.capacity, error_pct, row.utilisation));
    return row;
}

// Stress in the surface where the von Mises stress is largest, and that stress.
std::vector<WorkedStep> surface_steps(const SiteDemand& demand)
{
    // At a quarter turn the cosine of floating point leaves 1e-16 of the bending: that is none.
    const auto cleaned = [&](double part) { return std::abs(part) < 1e-12 * demand.von_mises ? 0 : part; };
    const PointStress& at = demand.stress;
    const PointStress s{cleaned(at.along),  cleaned(at.hoop),         cleaned(at.shear),
                        cleaned(at.across), cleaned(at.across_along), cleaned(at.across_hoop)};
    const std::string place = fmt::format("at z = {:.4g} mm, r = {:.4g} mm, {:.4g} deg from the plane of bending",
                                          demand.z, demand.r, demand.theta * 180 / std::numbers::pi);
    std::vector<WorkedStep> steps{read_step(fmt::format("stress along the meridian, s, under the peak load {}, {}",
                                                        place, by_finite_elements(demand.error_pct)),
                                            s.along, "MPa"),
                                  read_step("hoop stress there, h", s.hoop, "MPa"),
                                  read_step("shear between them, t", s.shear, "MPa")};
    if (s.across == 0 && s.across_along == 0 && s.across_hoop == 0)
    {
        steps.push_back(worked_step("von Mises stress", "sigma_v = sqrt(s^2 - s h + h^2 + 3 t^2)",
                                    put_in("sqrt({}^2-{}*{}+{}^2+3*{}^2)", {s.along, s.along, s.hoop, s.hoop, s.shear}),
                                    demand.von_mises, "MPa"));
        return steps;
    }
    steps.push_back(read_step("stress across the surface, n", s.across, "MPa"));
    steps.push_back(read_step("shear on the surface along the meridian, t_s", s.across_along, "MPa"));
    steps.push_back(read_step("shear on the surface around, t_h", s.across_hoop, "MPa"));
    steps.push_back(worked_step(
        "von Mises stress", "sigma_v = sqrt(((s - h)^2 + (h - n)^2 + (n - s)^2)/2 + 3 (t^2 + t_s^2 + t_h^2))",
        put_in("sqrt((({}-{})^2+({}-{})^2+({}-{})^2)/2+3*({}^2+{}^2+{}^2))",
               {s.along, s.hoop, s.hoop, s.across, s.across, s.along, s.shear, s.across_along, s.across_hoop}),
        demand.von_mises, "MPa"));
    return steps;
}

CheckRow fe_yield_row(const SiteAnswer& site, const CombinedLoad& load, const std::string& check, const Limit& limit)
{
    const SiteDemand demand = site_demand(site, load);
    return yield_row(site.id, check, demand.von_mises, demand.error_pct, limit,
                     "von Mises stress by finite elements, largest over the site and around the turn",
                     surface_steps(demand));
}

// Nominal von Mises stress of a round section under the peak load, MPa.
struct NominalStress
{
    double von_mises = 0;
    std::vector<WorkedStep> worked;
};

NominalStress nominal_von_mises(const RoundSection& section, const CombinedLoad& load)
{
    const double shear = surface_shear(section, NewtonMillimetre{load.torque}).value.value();
    const double bending = surface_bending_stress(section, NewtonMillimetre{load.bending}).value.value();
    const double pull = axial_stress(section, Newton{load.axial}).value.value();
    const double normal = bending + std::abs(pull);
    NominalStress stress{std::sqrt(normal * normal + 3 * shear * shear),
                         {shear_step(section, load.torque, shear, "MPa")}};
    if (load.bending != 0) stress.worked.push_back(bending_step(section, load.bending, bending, "MPa"));
    if (load.axial != 0) stress.worked.push_back(axial_step(section, load.axial, pull));
    stress.worked.push_back(worked_step("von Mises stress", "sigma_v = sqrt((sigma_b + |sigma_n|)^2 + 3 tau^2)",
                                        put_in("sqrt(({}+{})^2+3*{}^2)", {bending, std::abs(pull), shear}),
                                        stress.von_mises, "MPa"));
    return stress;
}

CheckRow beside_weld_row(const Case& asked, const std::string& site, const CombinedLoad& load)
{
    const Bar& bar = *asked.bar[index(side_of(site))];
    const NominalStress stress = nominal_von_mises({bar.sections.front().diameter, bar.bore}, load);
    CheckRow row =
        yield_row(site, "yield of the bar beside the weld", stress.von_mises, 0, heated_yield_of(bar.material),
                  "nominal stress 16T/(pi d^3), 32M/(pi d^3), 4N/(pi d^2)", stress.worked);
    row.source += "; [TimoshenkoGoodier1970] art. 101-103";
    return row;
}

CheckRow throat_row(const Case& asked, const WeldForce& weld, Side side, const CombinedLoad& load)
{
    const EurocodeThroat eurocode = eurocode_throat(asked, side);
    const WorstThroat<WeldCheck> worst = worst_directional(asked, weld, side, load);
    const WeldCheck& check = worst.value;
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
    row.worked = worst.worked;
    row.worked.push_back(utilisation_step(row.demand, row.capacity, row.error_pct, row.utilisation));
    return row;
}

}  // namespace

std::vector<CheckRow> strength_checks(const Case& asked, const MeridianAnswer& answer)
{
    const CombinedLoad load = peak_load(asked);
    std::vector<CheckRow> rows;
    for (const SiteAnswer& site : answer.sites)
    {
        if (site.id.starts_with("bar.") && !reads_thinnest_section(asked, site))
        {
            const PlainSite plain = plain_site(asked, site.id);
            const NominalStress stress = nominal_von_mises(plain.section, load);
            rows.push_back(yield_row(site.id, "yield of the plain bar", stress.von_mises, 0, yield_of(*plain.material),
                                     "nominal stress of the thinnest section, too short to be read by finite elements",
                                     stress.worked));
        }
        else if (site.id.starts_with("bar."))
            rows.push_back(fe_yield_row(site, load, "yield of the plain bar",
                                        yield_of(asked.bar[index(side_of(site.id))]->material)));
        else if (site.id.starts_with("groove."))
        {
            const PlainSite plain = plain_site(asked, site.id);
            const NominalStress stress = nominal_von_mises(plain.section, load);
            rows.push_back(yield_row(site.id, "yield of the net section", stress.von_mises, 0,
                                     yield_of(*plain.material), "nominal stress of the net section", stress.worked));
        }
        else if (site.id.starts_with("bar-toe.")) rows.push_back(beside_weld_row(asked, site.id, load));
        else if (site.id == "sleeve-mid")
            rows.push_back(fe_yield_row(site, load, "yield of the sleeve", yield_of(asked.sleeve->material)));
        else if (site.id.starts_with("lap-corner."))
            rows.push_back(fe_yield_row(site, load, "yield at the lap's inner corner",
                                        heated_yield_of(asked.bar[index(side_of(site.id))]->material)));
        else if (site.id == "butt-surface")
            rows.push_back(fe_yield_row(site, load, "yield at the butt weld", butt_limit(asked)));
    }
    for (const Side side : both_sides)
        if (answer.weld[index(side)]) rows.push_back(throat_row(asked, *answer.weld[index(side)], side, load));
    return rows;
}

}  // namespace splicewright
