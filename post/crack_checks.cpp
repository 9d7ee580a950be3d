// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/crack_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/notch_checks.h"
#include "post/site_loads.h"
#include "post/strength_limits.h"
#include "post/weld_places.h"

namespace splicewright
{
namespace
{

// Intensity of a torque and a bending couple that act together, MPa sqrt(mm) per N*mm each, joined by energy.
struct TipUnit
{
    double by_torque = 0, by_bending = 0;
};

// Worst over the ways in which the slit may hang together. An opening that is negative closes the crack in one half of
// the turn and opens it in the other: its size counts.
TipUnit tip_unit(const TipAnswer& tip, double poisson_ratio)
{
    TipUnit unit;
    const auto joined = [&](const ModeIntensities& modes)
    {
        const double tearing = modes.III.value * modes.III.value / (1 - poisson_ratio);
        return std::sqrt(modes.I.value * modes.I.value + modes.II.value * modes.II.value + tearing);
    };
    for (const TipIntensities& bracket : tip.brackets)
    {
        unit.by_torque = std::max(unit.by_torque, joined(bracket.torsion));
        unit.by_bending = std::max(unit.by_bending, joined(bracket.bending));
    }
    return unit;
}

double error_pct(const TipAnswer& tip)
{
    double worst = 0;
    for (const TipIntensities& bracket : tip.brackets)
        if (bracket.torsion.III.value != 0)
            worst = std::max(worst, 100 * bracket.torsion.III.error / std::abs(bracket.torsion.III.value));
    return worst;
}

// How intensities grow with the crack, over those of its first length.
struct Growth
{
    std::function<double(double)> by_torque, by_bending;
};

std::vector<CrackCycles> cycles_of(const Load& load, const TipUnit& unit, const Growth& growth)
{
    std::vector<CrackCycles> cycles;
    const auto add = [&](double torque_range, double bending, double count)
    {
        cycles.push_back({count, [=](double a)
                          {
                              return std::hypot(unit.by_torque * torque_range * growth.by_torque(a),
                                                unit.by_bending * 2 * bending * growth.by_bending(a));
                          }});
    };
    for (const TorqueBlock& block : load.blocks)
        add((block.high - block.low).value(),
            bending_with(load, std::max(std::abs(block.high.value()), std::abs(block.low.value()))), block.count);
    if (load.running_bending.value() > 0) add(0, load.running_bending.value(), load.revolutions);
    return cycles;
}

double peak_intensity(const Load& load, const TipUnit& unit, const Growth& growth, double a)
{
    return std::hypot(unit.by_torque * load.peak_torque.value() * growth.by_torque(a),
                      unit.by_bending * load.peak_bending.value() * growth.by_bending(a));
}

// A crack from the land runs through the butt weld around a bar as thick as its diameter, one from a root through the
// throat of the sleeve weld.
Sourced<double> crack_toughness(const Case& asked, const std::string& site)
{
    if (site == "land-edge")
        return toughness_of(
            asked.joint->filler,
            std::max(asked.bar[0]->sections.front().diameter, asked.bar[1]->sections.front().diameter).value());
    return toughness_of(asked.sleeve->weld.filler, throat(fillet_weld(asked, side_of(site))).value());
}

CrackPlan land_plan(const Case& asked, const MeridianAnswer& answer, const TipUnit& unit)
{
    // As the mesh has it: the land ends at the mean of both radii less the penetration.
    const double outer =
        (asked.bar[0]->sections.front().diameter + asked.bar[1]->sections.front().diameter).value() / 4;
    const double first = outer - asked.joint->penetration->value();
    const Growth growth{[=](double a) { return penny_torsion(a, outer) / penny_torsion(first, outer); },
                        [=](double a) { return penny_bending(a, outer) / penny_bending(first, outer); }};
    const SectionLoad peak{std::abs(butt_torque_share(asked, answer)) * asked.load.peak_torque,
                           std::abs(butt_bending_share(asked, answer)) * asked.load.peak_bending, Newton{0}};
    const Megapascal yield = butt_limit(asked).stress;
    const double toughness = crack_toughness(asked, "land-edge").value;
    const Load load = asked.load;
    CrackPlan plan{first, first + 0.999 * (outer - first), cycles_of(load, unit, growth), {}};
    plan.static_use = [=](double a)
    {
        const double collapse = plastic_utilisation({Millimetre{2 * outer}, Millimetre{2 * a}}, yield, peak).value;
        return std::max(collapse, peak_intensity(load, unit, growth, a) / toughness);
    };
    return plan;
}

CrackPlan root_plan(const Case& asked, const WeldForce& weld, Side side, const TipUnit& unit)
{
    const double whole = throat(fillet_weld(asked, side)).value();
    const auto ligament = [=](double a) { return 1 / std::sqrt(1 - a / whole); };
    const Growth growth{ligament, ligament};
    const WeldUnitStress stress = throat_unit_stress(asked, weld, side);
    const Load load = asked.load;
    const double shear =
        stress.shear_by_torque * load.peak_torque.value() + stress.shear_by_bending * load.peak_bending.value();
    const double mean = std::hypot(stress.normal_by_bending * load.peak_bending.value(), std::sqrt(3.0) * shear);
    const double yield = throat_limit(asked, side).stress.value(), toughness = crack_toughness(asked, "root").value;
    CrackPlan plan{0, 0.999 * whole, cycles_of(load, unit, growth), {}};
    plan.static_use = [=](double a)
    { return std::max(mean / yield / (1 - a / whole), peak_intensity(load, unit, growth, a) / toughness); };
    return plan;
}

CheckRow growth_row(const Case& asked, const std::string& site)
{
    CheckRow row;
    row.id = fmt::format("fatigue/{}/crack-growth", site);
    row.site = site;
    row.kind = CheckKind::fatigue;
    row.check = site == "land-edge" ? "crack growth from the land" : "crack growth from the root";
    row.capacity = 1;
    row.unit = "share of allowed stress";
    row.method =
        site == "land-edge"
            ? "stress intensity by finite elements at the unfused size, growth as a penny-shaped crack in a "
              "round bar; Paris law with threshold, to collapse of the ring or fracture"
            : "stress intensity by finite elements at the slit's root, growth as the throat shrinks; Paris law "
              "with threshold, to collapse of the throat or fracture";
    row.source = fmt::format("{}; Paris and Erdogan 1963 [ParisErdogan1963]; {}", welded_steel_in_air().source,
                             crack_toughness(asked, site).source);
    if (site == "land-edge") row.source += "; Tada, Paris and Irwin 2000 [TadaParisIrwin2000]";
    row.provenance = Provenance::judgement;
    return row;
}

void add_tip(CrackChecks& checks, const Case& asked, const MeridianAnswer& answer, const TipAnswer& tip)
{
    CheckRow row = growth_row(asked, tip.id);
    const bool land = tip.id == "land-edge";
    if (land && (asked.bar[0]->bore.value() > 0 || asked.bar[1]->bore.value() > 0))
    {
        row.not_valid_because = "the bar is hollow: the growth formula is for a crack in a solid bar";
        row.brief = "not computed";
        checks.rows.push_back(row);
        return;
    }
    const Side side = side_of(tip.id);
    const TipUnit unit =
        tip_unit(tip, land ? asked.bar[0]->material.poisson_ratio : asked.sleeve->weld.filler.poisson_ratio);
    const CrackPlan plan =
        land ? land_plan(asked, answer, unit) : root_plan(asked, *answer.weld[index(side)], side, unit);
    const ParisLaw law = welded_steel_in_air().value;
    const CrackLife life = crack_life(plan, law, 1);
    row.error_pct = error_pct(tip);
    row.demand = 1 / crack_scale(plan, law);
    row.utilisation = row.demand * (1 + row.error_pct / 100);
    row.life = life.life;
    double largest = 0;
    for (const CrackCycles& cycles : plan.cycles) largest = std::max(largest, cycles.range(plan.first));
    row.brief = fmt::format("ΔK {:.0f} N/mm^1.5", largest);
    append_note(row.note, fmt::format("starts at {:.3g} mm, ends at {:.3g} mm; largest range at the start {:.0f}, "
                                      "threshold {:.0f}, toughness {:.0f} N/mm^1.5",
                                      plan.first, std::isfinite(life.life) ? life.last : plan.first, largest,
                                      law.threshold, crack_toughness(asked, tip.id).value));
    append_note(row.note, crack_toughness(asked, tip.id).source);
    append_note(
        row.note,
        "no partial factor on load or law; a hard zone beside the weld is less tough than assumed, and bending of a "
        "throat grows a crack faster");
    append_note(row.note,
                "law of an opening crack used for tearing; the load does not move to other parts as it "
                "grows: both on the safe side");
    append_note(row.note, tip.note);
    checks.rows.push_back(row);
    checks.growth.push_back({tip.id, life});
}

}  // namespace

CrackChecks crack_checks(const Case& asked, const MeridianAnswer& answer, const StressIntensities& intensities)
{
    CrackChecks checks;
    if (asked.load.blocks.empty() && asked.load.running_bending.value() == 0) return checks;
    for (const TipAnswer& tip : intensities.tips)
        if (tip.id == "land-edge" || !carries_nothing(answer, tip.id)) add_tip(checks, asked, answer, tip);
    for (const std::string& absent : intensities.absent_tips)
    {
        if (absent.find("differ") == std::string::npos) continue;
        CheckRow row = growth_row(asked, absent.substr(0, absent.find(':')));
        row.not_valid_because = absent.substr(absent.find(':') + 2);
        row.brief = "not computed";
        checks.rows.push_back(row);
    }
    return checks;
}

}  // namespace splicewright
