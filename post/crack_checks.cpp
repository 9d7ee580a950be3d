// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/crack_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/notch_checks.h"
#include "post/rated_curves.h"
#include "post/site_loads.h"
#include "post/strength_limits.h"
#include "post/weld_places.h"
#include "post/worked_crack.h"
#include "post/worked_weld.h"

namespace splicewright
{
namespace
{

// Intensity of a torque and a bending couple that act together, MPa sqrt(mm) per N*mm each, joined by energy.
struct TipUnit
{
    double by_torque = 0, by_bending = 0;
    std::vector<WorkedStep> torque_worked, bending_worked;
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
        const double by_torque = joined(bracket.torsion), by_bending = joined(bracket.bending);
        if (by_torque > unit.by_torque || unit.torque_worked.empty())
            unit.torque_worked = resultant_steps("torque", bracket.torsion, poisson_ratio, by_torque);
        if (by_bending > unit.by_bending || unit.bending_worked.empty())
            unit.bending_worked = resultant_steps("bending", bracket.bending, poisson_ratio, by_bending);
        unit.by_torque = std::max(unit.by_torque, by_torque);
        unit.by_bending = std::max(unit.by_bending, by_bending);
    }
    return unit;
}

// The intensity of bending with the misalignment that the case states.
TipUnit misaligned(TipUnit unit, const Case& asked, const std::string& site)
{
    const double factor = asked.rating.misalignment_factor;
    if (!feels_misalignment(site) || factor == 1) return unit;
    unit.bending_worked.push_back(worked_step("intensity of bending with misalignment", "K_M' = k_m K_M",
                                              put_in("{}*{}", {factor, unit.by_bending}), factor * unit.by_bending,
                                              "MPa·mm^0.5 per N·mm"));
    unit.by_bending *= factor;
    return unit;
}

// Whether any bending acts, at the peak or in the cycles.
bool bends(const Load& load) { return load.peak_bending.value() != 0 || load.running_bending.value() != 0; }

// Errors of the modes over the modes, both as roots of the sum of squares.
double error_pct(const ModeIntensities& modes)
{
    const double size = std::hypot(modes.I.value, modes.II.value, modes.III.value);
    return size > 0 ? 100 * std::hypot(modes.I.error, modes.II.error, modes.III.error) / size : 0;
}

// Worst of the loads that act.
double error_pct(const TipAnswer& tip, const Load& load)
{
    double worst = 0;
    for (const TipIntensities& bracket : tip.brackets)
    {
        if (load.peak_torque.value() != 0) worst = std::max(worst, error_pct(bracket.torsion));
        if (bends(load)) worst = std::max(worst, error_pct(bracket.bending));
    }
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
        cycles.push_back({count,
                          [=](double a)
                          {
                              return std::hypot(unit.by_torque * torque_range * growth.by_torque(a),
                                                unit.by_bending * 2 * bending * growth.by_bending(a));
                          },
                          torque_range, bending});
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

WorkedCrack worked_crack(const Load& load, const TipUnit& unit, const Growth& growth, double first, double most)
{
    WorkedCrack crack;
    crack.plan = {first, most, cycles_of(load, unit, growth), {}};
    crack.by_torque = unit.by_torque, crack.by_bending = unit.by_bending;
    crack.peak_torque = load.peak_torque.value(), crack.peak_bending = load.peak_bending.value();
    crack.growth_by_torque = growth.by_torque, crack.growth_by_bending = growth.by_bending;
    return crack;
}

WorkedCrack land_plan(const Case& asked, const MeridianAnswer& answer, const TipUnit& unit)
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
    WorkedCrack crack = worked_crack(load, unit, growth, first, first + 0.999 * (outer - first));
    const auto ring = [=](double a) { return RoundSection{Millimetre{2 * outer}, Millimetre{2 * a}}; };
    crack.collapse = [=](double a) { return plastic_utilisation(ring(a), yield, peak).value; };
    crack.plan.static_use = [=, collapse = crack.collapse](double a)
    { return std::max(collapse(a), peak_intensity(load, unit, growth, a) / toughness); };
    crack.collapse_steps = [=, collapse = crack.collapse](const CrackLength& at)
    {
        std::vector<WorkedStep> steps{worked_step(fmt::format("inner diameter of the ring that is left at {}", at.name),
                                                  "d = 2 c", put_in("2*{}", {at.mm}), 2 * at.mm, "mm")};
        append(steps, plastic_steps(ring(at.mm), yield, peak, collapse(at.mm)));
        return steps;
    };
    crack.growth_steps = [=](const CrackLength& at)
    {
        std::vector<WorkedStep> steps = penny_torsion_steps(first, at, outer);
        if (bends(load)) append(steps, penny_bending_steps(first, at, outer));
        return steps;
    };
    return crack;
}

WorkedCrack root_plan(const Case& asked, const WeldForce& weld, Side side, const TipUnit& unit)
{
    const double whole = throat(fillet_weld(asked, side)).value();
    const auto ligament = [=](double a) { return 1 / std::sqrt(1 - a / whole); };
    const Growth growth{ligament, ligament};
    const WeldUnitStress stress = throat_unit_stress(asked, weld, side);
    const Load load = asked.load;
    const double shear =
        stress.shear_by_torque * load.peak_torque.value() + stress.shear_by_bending * load.peak_bending.value();
    const double mean = std::hypot(stress.normal_by_bending * load.peak_bending.value(), std::sqrt(3.0) * shear);
    const Limit limit = throat_limit(asked, side);
    const double yield = limit.stress.value(),
                 toughness = crack_toughness(asked, fmt::format("root.{}", name_of(side))).value;
    WorkedCrack crack = worked_crack(load, unit, growth, 0, 0.999 * whole);
    crack.collapse = [=](double a) { return mean / yield / (1 - a / whole); };
    crack.plan.static_use = [=, collapse = crack.collapse](double a)
    { return std::max(collapse(a), peak_intensity(load, unit, growth, a) / toughness); };
    crack.growth_steps = [=](const CrackLength& at)
    {
        return std::vector<WorkedStep>{
            throat_size_step(fillet_weld(asked, side)),
            worked_step(
                fmt::format("growth of the intensity as the throat a shrinks by c = {} = {:.5g} mm", at.name, at.mm),
                "g_T = g_M = 1/sqrt(1 - c/a)", put_in("1/sqrt(1-{}/{})", {at.mm, whole}), ligament(at.mm), "")};
    };
    crack.collapse_steps = [=](const CrackLength& at)
    {
        std::vector<WorkedStep> steps{throat_size_step(fillet_weld(asked, side))};
        append(steps, stress.torque_worked);
        if (bends(load)) append(steps, stress.bending_worked);
        steps.push_back(worked_step("shear of the throat along the weld at the peak load", "tau = k_tau T + k_tauM M",
                                    put_in("{}*{}+{}*{}", {stress.shear_by_torque, load.peak_torque.value(),
                                                           stress.shear_by_bending, load.peak_bending.value()}),
                                    shear, "MPa"));
        steps.push_back(
            worked_step("von Mises stress of the throat", "sigma_v = sqrt((k_sigma M)^2 + 3 tau^2)",
                        put_in("sqrt(({}*{})^2+3*{}^2)", {stress.normal_by_bending, load.peak_bending.value(), shear}),
                        mean, "MPa"));
        steps.push_back(limit_step(limit));
        steps.push_back(worked_step("share of the collapse load of what is left", "u = sigma_v/f/(1 - c/a)",
                                    put_in("{}/{}/(1-{}/{})", {mean, yield, at.mm, whole}),
                                    mean / yield / (1 - at.mm / whole), ""));
        return steps;
    };
    return crack;
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
        row.worked = {read_step(fmt::format("not computed: {}", row.not_valid_because), 0, "")};
        checks.rows.push_back(row);
        return;
    }
    const Side side = side_of(tip.id);
    const TipUnit unit =
        misaligned(tip_unit(tip, land ? asked.bar[0]->material.poisson_ratio : asked.sleeve->weld.filler.poisson_ratio),
                   asked, tip.id);
    const WorkedCrack crack =
        land ? land_plan(asked, answer, unit) : root_plan(asked, *answer.weld[index(side)], side, unit);
    const CrackPlan& plan = crack.plan;
    const ParisLaw law = welded_steel_in_air().value;
    const CrackLife life = crack_life(plan, law, 1);
    row.error_pct = error_pct(tip, asked.load);
    const double scale = crack_scale(plan, law);
    row.demand = 1 / scale;
    row.utilisation = row.demand * (1 + row.error_pct / 100);
    row.worked = unit.torque_worked;
    if (bends(asked.load)) append(row.worked, unit.bending_worked);
    append(row.worked, crack_steps(crack, law, crack_toughness(asked, tip.id).value, scale));
    row.worked = without_repeats(row.worked);
    row.worked.push_back(utilisation_step(row.demand, row.error_pct, row.utilisation));
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
    if (asked.rating.misalignment_factor > 1 && feels_misalignment(tip.id))
        append_note(row.note,
                    fmt::format("misalignment: intensity of bending times {:g}", asked.rating.misalignment_factor));
    checks.rows.push_back(row);
    checks.growth.push_back({tip.id, life});
}

}  // namespace

bool is_crack_growth(const CheckRow& row) { return row.id.ends_with("/crack-growth"); }

CrackChecks crack_checks(const Case& asked, const MeridianAnswer& answer, const StressIntensities& intensities)
{
    CrackChecks checks;
    if (asked.load.blocks.empty() && asked.load.running_bending.value() == 0) return checks;
    for (const TipAnswer& tip : intensities.tips)
        if (tip.id == "land-edge" || !carries_nothing(answer, tip.id)) add_tip(checks, asked, answer, tip);
    for (const std::string& absent : intensities.absent_tips)
    {
        if (absent.find("differ") == std::string::npos) continue;
        const std::string site = absent.substr(0, absent.find(':'));
        if (site != "land-edge" && carries_nothing(answer, site)) continue;
        CheckRow row = growth_row(asked, site);
        row.not_valid_because = absent.substr(absent.find(':') + 2);
        row.brief = "not computed";
        row.worked = {read_step(fmt::format("not computed: {}", row.not_valid_because), 0, "")};
        checks.rows.push_back(row);
    }
    return checks;
}

}  // namespace splicewright
