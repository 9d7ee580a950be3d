// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/fatigue_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "post/damage.h"
#include "post/machine_design.h"
#include "post/site_loads.h"

namespace splicewright
{
namespace
{

constexpr double stretched_share = 0.77;      // of the tensile strength at 1000 cycles beyond the chart, judgement
constexpr double unloaded_weld_share = 0.02;  // of the load: a sleeve weld below it carries nothing
constexpr double shaft_miner_limit = 1.0;     // Source: [Shigley2011] sec. 6-15

// Ranges at one site, MPa, by what causes them.
struct SiteSpectrum
{
    Spectrum normal, shear;
};

SiteSpectrum weld_spectrum(const Load& load, const SiteAnswer& site)
{
    const double shear = site.torsion.shear.value, normal = site.bending.principal.value;
    SiteSpectrum spectrum;
    for (const TorqueBlock& block : load.blocks)
    {
        spectrum.shear.push_back({Megapascal{shear * (block.high - block.low).value()}, block.count});
        const double torque = std::max(std::abs(block.high.value()), std::abs(block.low.value()));
        const double bending = bending_with(load, torque);
        if (bending > 0) spectrum.normal.push_back({Megapascal{2 * normal * bending}, block.count});
    }
    if (load.running_bending.value() > 0)
        spectrum.normal.push_back({Megapascal{2 * normal * load.running_bending.value()}, load.revolutions});
    return spectrum;
}

struct WeldCurves
{
    SnCurve normal, shear;
    std::string check, method;
    std::string note;
};

// Parent metal of the sleeve, machined: FAT 160, slope 5. Source: [Hobbacher2016] table 3.1 no. 111, from memory.
SnCurve parent_normal_curve(double partial_factor)
{
    SnCurve curve = normal_curve(Megapascal{160}, partial_factor, Provenance::from_memory);
    curve.slope = 5;
    curve.slope_beyond_variable = 9;
    return curve;
}

// Source: [Hobbacher2016] tables 3.1 (no. 231, 217) and 3.2, from memory.
WeldCurves curves_of(const Case& asked, const std::string& site)
{
    const double factor = safe_life_partial_factor().value;
    if (is_weld_notch(site))
    {
        const double wall = asked.sleeve ? (asked.sleeve->end_diameter.value() -
                                            asked.bar[index(side_of(site))]->sections.front().diameter.value()) /
                                               2
                                         : INFINITY;
        return {effective_notch_curve(NotchStress::first_principal, factor),
                effective_notch_curve(NotchStress::shear, factor), "effective notch stress, 1 mm",
                "effective notch stress, reference radius 1 mm",
                wall < 5 ? fmt::format("sleeve wall {:.3g} mm: the method asks for 5 mm; indicative only", wall) : ""};
    }
    if (site == "butt-surface")
    {
        const bool full = !asked.joint->penetration.has_value();
        return {normal_curve(Megapascal{80}, factor, Provenance::from_memory),
                shear_curve(Megapascal{full ? 100.0 : 80.0}, factor, Provenance::from_memory),
                "class of a ground butt in a bar", "structural stress on the ground butt, class of a bar's butt splice",
                "the class asks for full inspection of the weld and a surface ground flush"};
    }
    return {parent_normal_curve(factor), shear_curve(Megapascal{100}, factor, Provenance::from_memory),
            "class of parent metal", "structural stress, class of parent metal", ""};
}

// Infinite where a single load is beyond the strength.
std::string damage_words(double damage)
{
    return std::isfinite(damage) ? fmt::format("damage {:.2g}", damage)
                                 : "damage without bound: one load is beyond the strength";
}

std::string demand_words(const FatigueUtilisation& normal, const FatigueUtilisation& shear)
{
    return fmt::format("normal stress {:.3f} ({}), shear {:.3f} ({})", normal.utilisation, damage_words(normal.damage),
                       shear.utilisation, damage_words(shear.damage));
}

void append(std::string& note, const std::string& more)
{
    if (more.empty()) return;
    note += (note.empty() ? "" : "; ") + more;
}

CheckRow weld_row(const Case& asked, const SiteAnswer& site)
{
    const SiteSpectrum spectrum = weld_spectrum(asked.load, site);
    const WeldCurves curves = curves_of(asked, site.id);
    const double limit = miner_limit(MeanStress::steady).value;
    const FatigueUtilisation normal = fatigue_utilisation(spectrum.normal, curves.normal, Amplitude::variable, limit);
    const FatigueUtilisation shear = fatigue_utilisation(spectrum.shear, curves.shear, Amplitude::variable, limit);
    const Sourced<Interaction> joint =
        squares_interaction(normal.utilisation, shear.utilisation, Phase::non_proportional);
    CheckRow row;
    row.id = "fatigue/" + site.id;
    row.site = site.id;
    row.kind = CheckKind::fatigue;
    row.check = curves.check;
    row.demand = joint.value.utilisation;
    row.capacity = 1;
    row.unit = "share of allowed stress";
    row.brief = fmt::format("σ {:.2f}, τ {:.2f}", normal.utilisation, shear.utilisation);
    row.error_pct = std::max(
        100 * site.torsion.shear.error / std::max(site.torsion.shear.value, 1e-300) * (spectrum.shear.empty() ? 0 : 1),
        100 * site.bending.principal.error / std::max(site.bending.principal.value, 1e-300) *
            (spectrum.normal.empty() ? 0 : 1));
    row.utilisation = joint.value.utilisation * (1 + row.error_pct / 100);
    row.method = fmt::format("{}; {} and {}, partial factor {:.2f}, Miner sum {:.1f}, squares with 0.5", curves.method,
                             curves.normal.name, curves.shear.name, curves.normal.partial_factor, limit);
    row.source = fmt::format("{}; {}; {}", curves.normal.source, curves.shear.source, joint.source);
    row.provenance = weaker(weaker(curves.normal.provenance, curves.shear.provenance), joint.provenance);
    append(row.note, demand_words(normal, shear));
    append(row.note, joint.value.note);
    append(row.note, curves.note);
    if (normal.extrapolated || shear.extrapolated)
        append(row.note, "a load allows fewer than 10 000 cycles: the curve is stretched there, strength governs");
    return row;
}

// Peak over nominal by finite elements, reduced by the notch sensitivity; 1 on a plain bar.
struct NotchFactors
{
    double bending = 1, torsion = 1;
    std::string note;
};

NotchFactors notch_factors(const SiteAnswer& site, const PlainSite& plain)
{
    NotchFactors factors;
    if (plain.notch_radius.value() == 0) return factors;
    const double bending =
        site.bending.principal.value / surface_bending_stress(plain.section, NewtonMillimetre{1}).value.value();
    const double torsion = site.torsion.shear.value / surface_shear(plain.section, NewtonMillimetre{1}).value.value();
    const Sourced<NotchSensitivity> qb =
        notch_sensitivity(plain.material->tensile, plain.notch_radius, NotchLoad::bending);
    const Sourced<NotchSensitivity> qt =
        notch_sensitivity(plain.material->tensile, plain.notch_radius, NotchLoad::torsion);
    factors.bending = fatigue_notch_factor(std::max(1.0, bending), qb.value.q.value_or(1));
    factors.torsion = fatigue_notch_factor(std::max(1.0, torsion), qt.value.q.value_or(1));
    factors.note = fmt::format("Kt {:.3f} bending, {:.3f} torsion by finite elements; Kf {:.3f}, Kfs {:.3f}", bending,
                               torsion, factors.bending, factors.torsion);
    if (!qb.value.q) factors.note += "; full notch sensitivity: " + qb.value.absent_because;
    return factors;
}

std::vector<StressBlock> shaft_blocks(const Load& load, const PlainSite& plain, const NotchFactors& notch)
{
    const double bending = notch.bending * surface_bending_stress(plain.section, NewtonMillimetre{1}).value.value();
    const double shear = notch.torsion * surface_shear(plain.section, NewtonMillimetre{1}).value.value();
    const double pull = notch.bending * axial_stress(plain.section, load.axial).value.value();
    std::vector<StressBlock> blocks;
    const auto add = [&](double couple, double torque_alternating, double torque_mean, double count)
    {
        blocks.push_back({equivalent_stress({Megapascal{bending * couple}, Megapascal{pull},
                                             Megapascal{shear * torque_alternating}, Megapascal{shear * torque_mean}}),
                          count});
    };
    for (const TorqueBlock& block : load.blocks)
    {
        const double high = block.high.value(), low = block.low.value();
        add(bending_with(load, std::max(std::abs(high), std::abs(low))), (high - low) / 2, (high + low) / 2,
            block.count);
    }
    if (load.running_bending.value() > 0)
        add(load.running_bending.value(), 0, load.running_torque.value(), load.revolutions);
    return blocks;
}

CheckRow shaft_row(const Case& asked, const SiteAnswer& site)
{
    const PlainSite plain = plain_site(asked, site.id);
    const NotchFactors notch = notch_factors(site, plain);
    CheckRow row;
    row.id = "fatigue/" + site.id;
    row.site = site.id;
    row.kind = CheckKind::fatigue;
    row.check = "plain shaft: Marin, Goodman, Miner";
    row.capacity = 1;
    row.unit = "share of allowed stress";
    const EnduranceQuery query{plain.material->tensile, plain.section.outer_diameter};
    const Sourced<std::optional<EnduranceLimit>> endurance = endurance_limit(query);
    const Sourced<std::optional<double>> share = thousand_cycle_share(plain.material->tensile);
    row.error_pct = combined_error_pct(site, peak_load(asked));
    row.provenance = weaker(weaker(endurance.provenance, share.provenance), plain.material->provenance);
    row.source = endurance.source;
    row.method = "machine-design practice: Marin factors (machined, 99 %), notch sensitivity, Goodman, Miner sum 1";
    row.note = notch.note;
    EXPECTS(endurance.value.has_value());  // the case rules keep diameters within the size factor's range
    const double f = share.value.value_or(stretched_share);
    if (!share.value)
        append(row.note, fmt::format("tensile strength above the chart: {} of it taken at 1000 cycles (judgement)",
                                     stretched_share));
    const Sourced<ShaftFatigue> fatigue =
        shaft_fatigue(shaft_blocks(asked.load, plain, notch), {plain.material->tensile, endurance.value->limit, f},
                      shaft_miner_limit);
    row.demand = fatigue.value.utilisation;
    row.brief = fmt::format("damage {:.2g}", fatigue.value.damage);
    row.utilisation = fatigue.value.utilisation * (1 + row.error_pct / 100);
    row.source += "; " + fatigue.source;
    row.provenance = weaker(row.provenance, fatigue.provenance);
    append(row.note, fmt::format("endurance limit {:.0f} MPa, {}", endurance.value->limit.value(),
                                 damage_words(fatigue.value.damage)));
    if (fatigue.value.low_cycle) append(row.note, "a load allows fewer than 1000 cycles: strength governs");
    return row;
}

bool carries_nothing(const MeridianAnswer& answer, const std::string& site)
{
    if (!site.starts_with("root.")) return false;
    const auto& weld = answer.weld[index(side_of(site))];
    if (!weld) return true;
    const double whole = 1 / (2 * std::numbers::pi * weld->radius * weld->radius);
    return std::abs(weld->torsion_tangential) < unloaded_weld_share * whole;
}

}  // namespace

std::vector<CheckRow> fatigue_checks(const Case& asked, const MeridianAnswer& answer, const MeridianAnswer& notched)
{
    std::vector<CheckRow> rows;
    if (asked.load.blocks.empty() && asked.load.running_bending.value() == 0) return rows;
    for (const SiteAnswer& site : notched.sites)
        if (is_weld_notch(site.id) && !carries_nothing(notched, site.id)) rows.push_back(weld_row(asked, site));
    for (const SiteAnswer& site : answer.sites)
    {
        if (site.id == "butt-surface" || site.id == "sleeve-mid") rows.push_back(weld_row(asked, site));
        if (is_plain_metal(site.id)) rows.push_back(shaft_row(asked, site));
    }
    return rows;
}

}  // namespace splicewright
