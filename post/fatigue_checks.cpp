// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/fatigue_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/problem.h"
#include "post/damage.h"
#include "post/machine_design.h"
#include "post/nominal_checks.h"
#include "post/notch_checks.h"
#include "post/site_loads.h"
#include "post/strength_limits.h"
#include "post/weld_places.h"
#include "post/weld_rating.h"
#include "post/worked_shaft.h"

namespace splicewright
{
namespace
{

constexpr double stretched_share = 0.77;   // of the tensile strength at 1000 cycles beyond the chart, judgement
constexpr double shaft_miner_limit = 1.0;  // Source: [Shigley2011] sec. 6-15

// Source: [Hobbacher2016] tables 3.1 (no. 231) and 3.2, from memory.
CheckRow ground_butt_row(const Case& asked, const SiteAnswer& site)
{
    const double factor = safe_life_partial_factor().value, shear = asked.joint->penetration ? 80 : 100;
    constexpr double ground_exponent = 0.1;  // Source: [Hobbacher2016] 3.5.2, from memory
    const Millimetre size{size_at(asked, site.id)};
    WeldCurves curves{normal_curve(Megapascal{80}, factor, Provenance::from_memory),
                      shear_curve(Megapascal{shear}, factor, Provenance::from_memory), InteractionRule::squares};
    thicken(curves, size, ground_exponent);
    CheckRow row = weld_row(asked,
                            {site.id, "", "ground butt in a bar, IIW class",
                             fmt::format("structural stress on the ground butt by finite elements; IIW detail 231, FAT "
                                         "80, shear {:g}, squares with 0.5, Miner sum 0.5 or 0.2",
                                         shear)},
                            site_unit_stress(site), curves);
    append_note(row.note, fmt::format("{}; the class asks for full inspection of the weld and a surface ground flush",
                                      size_words(asked, site.id)));
    return row;
}

// Peak over nominal by finite elements, reduced by the notch sensitivity; 1 on a plain bar.
struct NotchFactors
{
    double bending = 1, torsion = 1;
    std::string note;
    std::vector<WorkedStep> worked;
};

NotchFactors notch_factors(const SiteAnswer& site, const PlainSite& plain)
{
    NotchFactors factors;
    if (plain.notch_radius.value() == 0) return factors;
    const double nominal_bending = surface_bending_stress(plain.section, NewtonMillimetre{1}).value.value();
    const double nominal_shear = surface_shear(plain.section, NewtonMillimetre{1}).value.value();
    const double bending = site.bending.principal.value / nominal_bending;
    const double torsion = site.torsion.shear.value / nominal_shear;
    const Sourced<NotchSensitivity> qb =
        notch_sensitivity(plain.material->tensile, plain.notch_radius, NotchLoad::bending);
    const Sourced<NotchSensitivity> qt =
        notch_sensitivity(plain.material->tensile, plain.notch_radius, NotchLoad::torsion);
    factors.bending = fatigue_notch_factor(std::max(1.0, bending), qb.value.q.value_or(1));
    factors.torsion = fatigue_notch_factor(std::max(1.0, torsion), qt.value.q.value_or(1));
    factors.note = fmt::format("Kt {:.3f} bending, {:.3f} torsion by finite elements; Kf {:.3f}, Kfs {:.3f}", bending,
                               torsion, factors.bending, factors.torsion);
    const double tensile = plain.material->tensile.value(), radius = plain.notch_radius.value();
    factors.worked = notch_steps({NotchLoad::bending, site.bending.principal, nominal_bending, bending, tensile, radius,
                                  qb.value.q, qb.value.root_a, factors.bending});
    append(factors.worked, notch_steps({NotchLoad::torsion, site.torsion.shear, nominal_shear, torsion, tensile, radius,
                                        qt.value.q, qt.value.root_a, factors.torsion}));
    if (!qb.value.q) factors.note += "; full notch sensitivity: " + qb.value.absent_because;
    return factors;
}

std::vector<ShaftEvent> shaft_events(const Load& load)
{
    std::vector<ShaftEvent> events;
    for (const TorqueBlock& block : load.blocks)
    {
        const double high = block.high.value(), low = block.low.value();
        events.push_back({bending_with(load, std::max(std::abs(high), std::abs(low))), (high - low) / 2,
                          (high + low) / 2, block.count});
    }
    if (load.running_bending.value() > 0)
        events.push_back({load.running_bending.value(), 0, load.running_torque.value(), load.revolutions});
    return events;
}

ShaftUnitStress shaft_unit_stress(const Load& load, const PlainSite& plain, const NotchFactors& notch)
{
    const double bending = surface_bending_stress(plain.section, NewtonMillimetre{1}).value.value();
    const double shear = surface_shear(plain.section, NewtonMillimetre{1}).value.value();
    const double pull = axial_stress(plain.section, load.axial).value.value();
    ShaftUnitStress unit{notch.bending * bending, notch.torsion * shear, notch.bending * pull, notch.worked};
    append(unit.worked, local_stress_steps(plain.section, load.axial.value(), {bending, shear, pull, {}},
                                           {notch.bending, notch.torsion}, unit));
    return unit;
}

SurfaceFinish finish_of(BarSurface surface)
{
    switch (surface)
    {
        case BarSurface::ground: return SurfaceFinish::ground;
        case BarSurface::machined: return SurfaceFinish::machined;
        case BarSurface::hot_rolled: return SurfaceFinish::hot_rolled;
        case BarSurface::forged: return SurfaceFinish::forged;
    }
    return SurfaceFinish::forged;
}

// Factor that takes the endurance limit from 99 % of survivors to more, when the case asks for more: 1 - 0.08 z over
// the 0.814 of 99 %. Source: [Shigley2011] eq. 6-29, from memory.
double more_than_99_percent(const Rating& rating)
{
    return rating.survival.value_or(0) > 0.99 ? (1 - 0.08 * deviations_below_mean(*rating.survival)) / 0.814 : 1;
}

double life_at_upper_end(std::vector<StressBlock> blocks, const ShaftSnLine& line, double error_pct)
{
    for (StressBlock& block : blocks)
    {
        block.stress.alternating = (1 + error_pct / 100) * block.stress.alternating;
        block.stress.mean = (1 + error_pct / 100) * block.stress.mean;
    }
    const double damage = shaft_fatigue(blocks, line, shaft_miner_limit).value.damage;
    return damage > 0 ? shaft_miner_limit / damage : INFINITY;
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
    const BarSurface surface = asked.bar[index(side_of(site.id))]->surface;
    const EnduranceQuery query{plain.material->tensile, plain.section.outer_diameter, finish_of(surface)};
    const Sourced<std::optional<EnduranceLimit>> endurance = endurance_limit(query);
    const Sourced<std::optional<double>> share = thousand_cycle_share(plain.material->tensile);
    row.error_pct = combined_error_pct(site, peak_load(asked));
    row.provenance = weaker(weaker(endurance.provenance, share.provenance), strength_provenance(*plain.material));
    row.source = endurance.source;
    row.method =
        "machine-design practice: Marin factors (surface, size, 99 %), notch sensitivity, Goodman, Miner sum 1";
    row.note = notch.note;
    EXPECTS(endurance.value.has_value());  // the case rules keep diameters within the size factor's range
    const double survival = more_than_99_percent(asked.rating);
    const Megapascal limit = survival * endurance.value->limit;
    const double f = share.value.value_or(stretched_share);
    if (!share.value) row.provenance = weaker(row.provenance, Provenance::judgement);
    if (!share.value)
        append_note(row.note, fmt::format("tensile strength above the chart: {} of it taken at 1000 cycles (judgement)",
                                          stretched_share));
    const ShaftUnitStress unit = shaft_unit_stress(asked.load, plain, notch);
    const std::vector<ShaftEvent> events = shaft_events(asked.load);
    const std::vector<StressBlock> blocks = shaft_blocks(events, unit);
    const ShaftSnLine line{plain.material->tensile, limit, f};
    const Sourced<ShaftFatigue> fatigue = shaft_fatigue(blocks, line, shaft_miner_limit);
    row.demand = fatigue.value.utilisation;
    row.life = life_at_upper_end(blocks, line, row.error_pct);
    row.brief = fmt::format("damage {:.2g}", fatigue.value.damage);
    row.utilisation = fatigue.value.utilisation * (1 + row.error_pct / 100);
    row.worked = endurance_steps(query, *endurance.value);
    if (survival < 1)
        row.worked.push_back(worked_step("endurance limit with the survival asked", "S_e' = k S_e",
                                         put_in("{}*{}", {survival, endurance.value->limit.value()}), limit.value(),
                                         "MPa"));
    row.worked.push_back(thousand_cycle_step(plain.material->tensile.value(), share.value, f));
    append(row.worked, unit.worked);
    append(row.worked, shaft_steps(events, unit, blocks, line, fatigue.value));
    row.worked.push_back(utilisation_step(row.demand, row.error_pct, row.utilisation));
    row.source += "; " + fatigue.source;
    row.provenance = weaker(row.provenance, fatigue.provenance);
    append_note(row.note, fmt::format("{} surface {:.3f}, size {:.3f}; endurance limit {:.0f} MPa, {}",
                                      name_of(surface), endurance.value->surface, endurance.value->size, limit.value(),
                                      damage_words(fatigue.value.damage)));
    append_note(row.note, strength_words(*plain.material));
    if (survival < 1)
        append_note(row.note, fmt::format("survival {:.4g} %: endurance limit times {:.3f} (from memory: verify)",
                                          100 * *asked.rating.survival, survival));
    if (fatigue.value.low_cycle) append_note(row.note, "a load allows fewer than 1000 cycles: strength governs");
    return row;
}

}  // namespace

std::vector<CheckRow> fatigue_checks(const Case& asked, const SolvedScenario& solved)
{
    std::vector<CheckRow> rows;
    if (asked.load.blocks.empty() && asked.load.running_bending.value() == 0) return rows;
    const auto add = [&](const std::vector<CheckRow>& more)
    {
        for (const CheckRow& row : more)
            if (!carries_nothing(solved.answer, row.site)) rows.push_back(row);
    };
    add(notch_checks(asked, solved.notched));
    if (solved.small_notch) add(small_notch_checks(asked, *solved.small_notch));
    add(hot_spot_checks(asked, solved.answer));
    add(nominal_checks(asked, solved.answer));
    for (const SiteAnswer& site : solved.answer.sites)
    {
        if (site.id == "butt-surface") rows.push_back(ground_butt_row(asked, site));
        if (is_plain_metal(site.id)) rows.push_back(shaft_row(asked, site));
    }
    return rows;
}

}  // namespace splicewright
