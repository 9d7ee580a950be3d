// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/section_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/site_loads.h"
#include "post/strength_limits.h"
#include "post/weld_places.h"
#include "post/worked_weld.h"

namespace splicewright
{
namespace
{

const char* const information = "for information: this part would carry all of the load only if the others were lost";

// What part of the peak load passes through a section, 0 .. 1.
struct PartOfLoad
{
    double torque = 1, bending = 1, axial = 1;
    bool by_finite_elements = false;
};

SectionLoad part_of(const Case& asked, const PartOfLoad& part)
{
    return {std::abs(part.torque) * asked.load.peak_torque, std::abs(part.bending) * asked.load.peak_bending,
            std::abs(part.axial) * asked.load.axial};
}

CheckRow section_row(const std::string& site, const std::string& name, const std::string& check, const Limit& limit)
{
    CheckRow row;
    row.id = fmt::format("strength/{}/{}", site, name);
    row.site = site;
    row.check = check;
    row.unit = "MPa";
    row.capacity = limit.stress.value();
    row.provenance = limit.provenance;
    return row;
}

// What part of each load acts here, where it is not all of it; `part` may be that of the sleeve or of the butt.
std::vector<WorkedStep> part_steps(const PartOfLoad& part, const SectionLoad& load, const Load& peak, double error_pct)
{
    std::vector<WorkedStep> steps;
    const auto add = [&](const char* name, const char* symbol, double share, double all, double here, const char* unit)
    {
        if (all == 0) return;
        const std::string source = symbol[0] == 'T' ? by_finite_elements(error_pct) : "from the finite elements";
        steps.push_back(
            read_step(fmt::format("part of the {} that passes here, {}", name, source), std::abs(share), ""));
        steps.push_back(worked_step(fmt::format("{} that passes here", name),
                                    fmt::format("{0} = part {0}_peak", symbol), put_in("{}*{}", {std::abs(share), all}),
                                    here, unit));
    };
    add("torque", "T", part.torque, peak.peak_torque.value(), load.torque.value(), "N·mm");
    add("bending", "M", part.bending, peak.peak_bending.value(), load.bending.value(), "N·mm");
    add("axial force", "N", part.axial, peak.axial.value(), load.axial.value(), "N");
    return steps;
}

CheckRow plastic_row(const Case& asked, const std::string& site, const RoundSection& section, const Limit& limit,
                     const PartOfLoad& part, const std::string& name, double error_pct = 0)
{
    const SectionLoad load = part_of(asked, part);
    const Sourced<double> use = plastic_utilisation(section, limit.stress, load);
    CheckRow row =
        section_row(site, name, name == "alone" ? "alone: whole section flows" : "whole section flows", limit);
    row.error_pct = error_pct;
    row.utilisation = use.value * (1 + error_pct / 100);
    row.demand = use.value * row.capacity;
    row.method = part.by_finite_elements
                     ? "nominal section under its part of the load by finite elements: lower bound of its "
                       "plastic limit load"
                     : "nominal section under all of the load: lower bound of its plastic limit load";
    row.source = fmt::format("{}; limit: {}", use.source, limit.whose);
    row.provenance = weaker(use.provenance, limit.provenance);
    row.note = fmt::format(
        "first yield at {:.0f} N·m of torque alone, the whole section at {:.0f} N·m; in bending "
        "{:.0f} and {:.0f} N·m; part of the torque {:.3f}",
        first_yield_torque(section, limit.stress).value.value() / 1000,
        fully_plastic_torque(section, limit.stress).value.value() / 1000,
        first_yield_bending(section, limit.stress).value.value() / 1000,
        fully_plastic_bending(section, limit.stress).value.value() / 1000, std::abs(part.torque));
    if (name == "alone") row.not_valid_because = information;
    row.worked.push_back(limit_step(limit));
    if (part.by_finite_elements) append(row.worked, part_steps(part, load, asked.load, error_pct));
    append(row.worked, plastic_steps(section, limit.stress, load, use.value));
    row.worked.push_back(utilisation_step(use.value, error_pct, row.utilisation));
    return row;
}

// Worst of the loads that act; a part below a thousandth of its load carries none.
double share_error_pct(const SleeveShare& share, const PartOfLoad& part, const CombinedLoad& load)
{
    const auto error = [](double acts, const Measured& of, double here)
    { return acts != 0 && std::abs(here) > 1e-3 ? 100 * of.error / std::abs(here) : 0; };
    return std::max({error(load.torque, share.torsion, part.torque), error(load.bending, share.bending, part.bending),
                     error(load.axial, share.axial, part.axial)});
}

// Mean stress of the throat under all of the load as a line, or under its part by finite elements.
CheckRow throat_yield_row(const Case& asked, const WeldForce& weld, Side side)
{
    const Limit limit = throat_limit(asked, side);
    CheckRow row =
        section_row(fmt::format("throat.{}", name_of(side)), "yield", "throat, mean von Mises stress", limit);
    const WorstThroat<double> worst = worst_throat_stress(asked, weld, side, peak_load(asked));
    row.demand = worst.value;
    row.error_pct = weld.error_pct;
    row.utilisation = row.demand * (1 + row.error_pct / 100) / row.capacity;
    row.method = "structural stress: force on the weld by finite elements over the throat, von Mises";
    row.source = fmt::format("von Mises [Mises1913]; limit: {}", limit.whose);
    row.note = "no partial factor: mechanics, not a code; the weld is taken as sound and of the stated legs";
    row.worked = worst.worked;
    row.worked.push_back(limit_step(limit));
    row.worked.push_back(utilisation_step(row.demand, row.capacity, row.error_pct, row.utilisation));
    return row;
}

std::vector<WorkedStep> ring_steps(const FilletWeld& fillet, const Load& load, const RingThroatStress& stress,
                                   double von_mises)
{
    const double radius = throat_mean_radius(fillet).value(), a = throat(fillet).value();
    const double leg_b = fillet.leg_on_bar.value(), leg_s = fillet.leg_on_sleeve.value();
    std::vector<WorkedStep> steps{
        throat_size_step(fillet),
        worked_step("radius of the middle of the throat", "R = d/2 + l_b^2 l_s/(2 (l_b^2 + l_s^2))",
                    put_in("{}/2+{}^2*{}/(2*({}^2+{}^2))", {fillet.bar_diameter.value(), leg_b, leg_s, leg_b, leg_s}),
                    radius, "mm"),
        worked_step("shear of the throat by all of the torque", "tau = T/(2 pi R^2 a)",
                    put_in("{}/(2*pi*{}^2*{})", {load.peak_torque.value(), radius, a}), stress.torsion.value(), "MPa"),
        worked_step("stress by all of the bending", "sigma_b = M/(pi R^2 a)",
                    put_in("{}/(pi*{}^2*{})", {load.peak_bending.value(), radius, a}), stress.bending.value(), "MPa"),
        worked_step("stress by the axial force", "sigma_n = N/(2 pi R a)",
                    put_in("{}/(2*pi*{}*{})", {load.axial.value(), radius, a}), stress.axial.value(), "MPa")};
    steps.push_back(
        worked_step("von Mises stress", "sigma_v = sqrt((|sigma_b| + |sigma_n|)^2 + 3 tau^2)",
                    put_in("sqrt(({}+{})^2+3*{}^2)",
                           {std::abs(stress.bending.value()), std::abs(stress.axial.value()), stress.torsion.value()}),
                    von_mises, "MPa"));
    return steps;
}

CheckRow throat_alone_row(const Case& asked, Side side)
{
    const FilletWeld fillet = fillet_weld(asked, side);
    const RingThroatStress stress =
        ring_throat_stress(throat_mean_radius(fillet), throat(fillet),
                           {asked.load.peak_torque, asked.load.peak_bending, asked.load.axial})
            .value;
    const Limit limit = throat_limit(asked, side);
    CheckRow row = section_row(fmt::format("throat.{}", name_of(side)), "alone", "alone: weld as a line", limit);
    const double normal = std::abs(stress.bending.value()) + std::abs(stress.axial.value());
    row.demand = std::sqrt(normal * normal + 3 * stress.torsion.value() * stress.torsion.value());
    row.utilisation = row.demand / row.capacity;
    row.method = "all of the load on the throat as a line: T/(2 pi R^2 a), M/(pi R^2 a), N/(2 pi R a), von Mises";
    row.source = fmt::format("weld as a line [Shigley2011] tables 9-1 and 9-2; limit: {}", limit.whose);
    row.provenance = weaker(Provenance::derived, limit.provenance);
    row.not_valid_because = information;
    row.worked = ring_steps(fillet, asked.load, stress, row.demand);
    row.worked.push_back(limit_step(limit));
    row.worked.push_back(utilisation_step(row.demand, row.capacity, 0, row.utilisation));
    return row;
}

CheckRow throat_simplified_row(const Case& asked, const WeldForce& weld, Side side)
{
    const EurocodeThroat eurocode = eurocode_throat(asked, side);
    const WorstThroat<WeldCheck> worst = worst_simplified(asked, weld, side, peak_load(asked));
    const WeldCheck& check = worst.value;
    CheckRow row = section_row(fmt::format("throat.{}", name_of(side)), "simplified", "sleeve weld, simplified method",
                               {check.capacity, "", eurocode.provenance});
    row.demand = check.demand.value();
    row.error_pct = weld.error_pct;
    row.utilisation = check.utilisation * (1 + row.error_pct / 100);
    row.method = "resultant force on the weld by finite elements over the throat, simplified method";
    row.source = fmt::format("[Eurocode3Joints2005] 4.5.3.3, eq. 4.2 to 4.4; fu of {}", eurocode.weakest);
    row.note = check.note;
    row.not_valid_because = outside_eurocode(asked, side);
    row.worked = worst.worked;
    row.worked.push_back(utilisation_step(row.demand, row.capacity, row.error_pct, row.utilisation));
    return row;
}

SectionCapacity capacity(const std::string& site, const RoundSection& section, Megapascal yield)
{
    return {site,
            section,
            yield,
            first_yield_torque(section, yield).value,
            fully_plastic_torque(section, yield).value,
            first_yield_bending(section, yield).value,
            fully_plastic_bending(section, yield).value};
}

// The throat as a ring of the same area and mean radius.
RoundSection throat_ring(const Case& asked, Side side)
{
    const FilletWeld fillet = fillet_weld(asked, side);
    const Millimetre middle = throat_mean_radius(fillet), thickness = throat(fillet);
    return {2 * middle + thickness, std::max(Millimetre{0}, 2 * middle - thickness)};
}

bool has_butt(const Case& asked, const MeridianAnswer& answer) { return asked.joint && answer.scenario.butt_fused; }

void add_joint(std::vector<CheckRow>& rows, const Case& asked, const MeridianAnswer& answer)
{
    const bool holds = answer.scenario.all_welds_hold();
    const SleeveShare& share = answer.share;
    if (has_butt(asked, answer))
    {
        const PartOfLoad part =
            asked.sleeve ? PartOfLoad{1 - share.torsion.value, 1 - share.bending.value, 1 - share.axial.value, true}
                         : PartOfLoad{};
        rows.push_back(plastic_row(asked, "butt-surface", butt_section(asked), butt_limit(asked), part, "plastic",
                                   asked.sleeve ? share_error_pct(share, part, peak_load(asked)) : 0));
        if (holds && asked.sleeve)
            rows.push_back(plastic_row(asked, "butt-surface", butt_section(asked), butt_limit(asked), {}, "alone"));
    }
    if (!asked.sleeve) return;
    const PartOfLoad part{share.torsion.value, share.bending.value, share.axial.value, true};
    const Limit limit = yield_of(asked.sleeve->material);
    rows.push_back(plastic_row(asked, "sleeve-mid", sleeve_joint_section(asked), limit, part, "plastic",
                               share_error_pct(share, part, peak_load(asked))));
    if (holds) rows.push_back(plastic_row(asked, "sleeve-mid", sleeve_joint_section(asked), limit, {}, "alone"));
    for (const Side side : both_sides)
    {
        if (!answer.weld[index(side)]) continue;
        rows.push_back(throat_yield_row(asked, *answer.weld[index(side)], side));
        rows.push_back(throat_simplified_row(asked, *answer.weld[index(side)], side));
        if (holds) rows.push_back(throat_alone_row(asked, side));
    }
}

}  // namespace

std::string outside_eurocode(const Case& asked, Side side)
{
    for (const Material* part : {&asked.sleeve->material, &asked.bar[index(side)]->material})
        if (correlation_factor(part->name).provenance == Provenance::judgement)
            return fmt::format("EN 1993-1-8 is written for structural steel up to S460; {} is none", part->name);
    return "";
}

std::vector<SectionCapacity> section_capacities(const Case& asked, const MeridianAnswer& answer)
{
    std::vector<SectionCapacity> list;
    for (const Side side : both_sides)
        if (asked.bar[index(side)])
        {
            const std::string site = fmt::format("bar.{}", name_of(side));
            const PlainSite plain = plain_site(asked, site);
            list.push_back(capacity(site, plain.section, plain.material->yield));
        }
    if (has_butt(asked, answer))
        list.push_back(capacity("butt-surface", butt_section(asked), butt_limit(asked).stress));
    if (!asked.sleeve) return list;
    list.push_back(capacity("sleeve-mid", sleeve_joint_section(asked), asked.sleeve->material.yield));
    for (const Side side : both_sides)
        if (answer.weld[index(side)])
            list.push_back(capacity(fmt::format("throat.{}", name_of(side)), throat_ring(asked, side),
                                    throat_limit(asked, side).stress));
    return list;
}

std::vector<CheckRow> section_checks(const Case& asked, const MeridianAnswer& answer)
{
    std::vector<CheckRow> rows;
    for (const SiteAnswer& site : answer.sites)
    {
        if (site.id.starts_with("bar.") || site.id.starts_with("groove."))
        {
            const PlainSite plain = plain_site(asked, site.id);
            rows.push_back(plastic_row(asked, site.id, plain.section, yield_of(*plain.material), {}, "plastic"));
        }
        else if (site.id.starts_with("bar-toe."))
        {
            const Side side = side_of(site.id);
            rows.push_back(plastic_row(asked, site.id, bar_section(asked, side),
                                       heated_yield_of(asked.bar[index(side)]->material), {}, "plastic"));
        }
    }
    if (asked.joint) add_joint(rows, asked, answer);
    return rows;
}

}  // namespace splicewright
