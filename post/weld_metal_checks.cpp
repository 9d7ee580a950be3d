// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/weld_metal_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "post/nominal_checks.h"
#include "post/section_checks.h"
#include "post/site_loads.h"
#include "post/sn_curve.h"
#include "post/strength_limits.h"
#include "post/weld_places.h"
#include "post/worked_weld.h"

namespace splicewright
{
namespace
{

constexpr int angles_of_bending = 120;                 // over a turn: within (1 - cos 1.5 deg), 0.03 %, of the largest
constexpr double normal_class = 36, shear_class = 80;  // MPa. Source: [Hobbacher2016] no. 414 and shear, from memory

bool is_plug(const std::string& site) { return site.starts_with("plug-edge"); }

Side side_of_metal(const WeldMetalForce& force) { return force.place.z() < 0 ? Side::left : Side::right; }

struct Acting
{
    const WeldMetalForce* metal = nullptr;
    Eigen::Vector3d force{0, 0, 0};  // along, around, outward: N
    double angle = 0;                // of the bending's tension side, rad
    double error = 0;                // size of its error from the loads that act, N
};

double error_of(const WeldMetalForce& metal, const CombinedLoad& load)
{
    return std::abs(load.torque) * metal.torsion_error + std::abs(load.bending) * metal.bending_error +
           std::abs(load.axial) * metal.axial_error + std::abs(load.press) * metal.press_error;
}

double error_pct(double error, double size) { return size > 0 ? 100 * error / size : 0; }

Eigen::Vector3d bending_force(const WeldMetalForce& metal, double angle)
{
    return std::cos(angle) * metal.towards_x + std::sin(angle) * metal.towards_y;
}

// Where `demand` of the force is largest around the turn; the first of equals.
template <class Demand>
Acting worst_direction(const WeldMetalForce& metal, const CombinedLoad& load, const Demand& demand)
{
    const double error = error_of(metal, load);
    Acting worst{&metal, {0, 0, 0}, 0, error};
    double largest = -1;
    const Eigen::Vector3d steady = load.torque * metal.torsion + load.axial * metal.axial + load.press * metal.press;
    for (int k = 0; k < angles_of_bending; ++k)
    {
        const double angle = 2 * std::numbers::pi * k / angles_of_bending;
        const Eigen::Vector3d force = steady + load.bending * bending_force(metal, angle);
        const double here = demand(force);
        if (here > largest) worst = {&metal, force, angle, error}, largest = here;
    }
    return worst;
}

double resultant(const Eigen::Vector3d& force) { return force.norm(); }

std::string where(const WeldMetalForce& metal)
{
    return fmt::format("at {:.0f}° around, z = {:.4g} mm",
                       std::atan2(metal.place.y(), metal.place.x()) * 180 / std::numbers::pi, metal.place.z());
}

// Which plug or end of a weld a site is: 1 and 2 start and end of the left weld, 3 and 4 of the right one.
std::string which(const WeldMetalForce& metal)
{
    if (!metal.site.starts_with("weld-end.")) return where(metal);
    const bool starts = metal.site.ends_with("1") || metal.site.ends_with("3");
    return fmt::format("where the {} sleeve weld {}, {}", name_of(side_of_metal(metal)), starts ? "starts" : "ends",
                       where(metal));
}

std::string area_words(const WeldMetalForce& metal)
{
    return is_plug(metal.site) ? "area of the hole" : fmt::format("throat times {:.3g} mm of weld", metal.length);
}

std::vector<WorkedStep> force_steps(const Acting& acting)
{
    const WeldMetalForce& metal = *acting.metal;
    return {read_step(fmt::format("force along the axis under the peak load {}, bending towards {:.0f}°, {}",
                                  where(metal), acting.angle * 180 / std::numbers::pi,
                                  by_finite_elements(error_pct(acting.error, acting.force.norm()))),
                      acting.force(0), "N"),
            read_step("force around the axis there", acting.force(1), "N"),
            read_step("force outward there", acting.force(2), "N"), read_step(area_words(metal), metal.area, "mm^2")};
}

// Why the sizes of a weld are below those that the code designs: a fillet of an effective length under 30 mm or six
// throats, a plug whose hole is less than 8 mm wider than the sleeve is thick; empty: they are not.
// Source: [Eurocode3Joints2005] 4.5.1, read in a secondary source, and 4.3.5, from memory: verify.
std::string outside_detailing(const Case& asked, const WeldMetalForce& metal)
{
    const Side side = side_of_metal(metal);
    if (is_plug(metal.site))
    {
        const double wall =
            (asked.sleeve->outer_diameter - asked.bar[index(side)]->sections.front().diameter).value() / 2;
        double narrowest = INFINITY;
        for (const PlugRing& ring : asked.sleeve->plugs) narrowest = std::min(narrowest, ring.diameter.value());
        if (narrowest >= wall + 8) return "";
        return fmt::format(
            "EN 1993-1-8 4.3.5 (from memory: verify) asks for a hole 8 mm wider than the part is thick, "
            "{:.3g} mm here; the narrowest is {:.3g} mm",
            wall + 8, narrowest);
    }
    const FilletWeld fillet = fillet_weld(asked, side);
    const double thick = throat(fillet).value(), least = std::max(30.0, 6 * thick);
    const double effective = asked.sleeve->weld.coverage.value() * throat_mean_radius(fillet).value() - 2 * thick;
    if (effective >= least) return "";
    return fmt::format(
        "EN 1993-1-8 4.5.1 asks for an effective length of {:.3g} mm, the weld without a throat at each end; it is "
        "{:.3g} mm",
        least, effective);
}

CheckRow strength_row(const Case& asked, const Acting& acting)
{
    const WeldMetalForce& metal = *acting.metal;
    const Side side = side_of_metal(metal);
    const EurocodeThroat eurocode = eurocode_throat(asked, side);
    CheckRow row;
    row.id = "strength/" + metal.site;
    row.site = metal.site;
    row.check = is_plug(metal.site) ? "plug weld, simplified method" : "sleeve weld, simplified method";
    row.demand = acting.force.norm() / metal.area;
    row.capacity = eurocode.tensile.value() / (std::numbers::sqrt3 * eurocode.beta_w * weld_partial_factor);
    row.unit = "MPa";
    row.error_pct = error_pct(acting.error, acting.force.norm());
    row.utilisation = row.demand / row.capacity * (1 + row.error_pct / 100);
    row.method =
        fmt::format("resultant force on the weld by the solid model over the {}, simplified method", area_words(metal));
    row.source = fmt::format("[Eurocode3Joints2005] {}; fu of {}",
                             is_plug(metal.site) ? "4.8 with 4.5.3.3, from memory" : "4.5.3.3, eq. 4.2 to 4.4",
                             eurocode.weakest);
    row.provenance = is_plug(metal.site) ? weaker(eurocode.provenance, Provenance::from_memory) : eurocode.provenance;
    row.not_valid_because = outside_eurocode(asked, side);
    if (row.not_valid_because.empty()) row.not_valid_because = outside_detailing(asked, metal);
    row.note = which(metal);
    append_note(row.note, "structural stress: a mean, its edge has no notch radius and so no stress of its own");
    row.worked = force_steps(acting);
    append(
        row.worked,
        {worked_step("resultant over the area", "F = sqrt(f_z^2 + f_t^2 + f_r^2)/A",
                     put_in("sqrt({}^2+{}^2+{}^2)/{}", {acting.force(0), acting.force(1), acting.force(2), metal.area}),
                     row.demand, "MPa"),
         worked_step("what the method allows, f_u of the weaker part", "f = f_u/(sqrt(3) beta_w gamma_M2)",
                     put_in("{}/(sqrt(3)*{}*{})", {eurocode.tensile.value(), eurocode.beta_w, weld_partial_factor}),
                     row.capacity, "MPa"),
         utilisation_step(row.demand, row.capacity, row.error_pct, row.utilisation)});
    return row;
}

// The force on a stretch of fillet as one on each millimetre of it.
LineForce line_force(const WeldMetalForce& metal, const Eigen::Vector3d& force)
{
    const double outward = side_of_metal(metal) == Side::right ? force(0) : -force(0);
    return {outward / metal.length, force(2) / metal.length, force(1) / metal.length};
}

// Von Mises stress of the mean stress on the throat, or of a plug on the bar's surface, MPa. Source: [Mises1913].
double mean_von_mises(const Case& asked, const WeldMetalForce& metal, const Eigen::Vector3d& force)
{
    if (is_plug(metal.site))
        return std::sqrt(force(2) * force(2) + 3 * (force(0) * force(0) + force(1) * force(1))) / metal.area;
    const ThroatPlaneStress stress =
        throat_plane_stress(fillet_weld(asked, side_of_metal(metal)), line_force(metal, force)).value;
    const double normal = stress.normal.value(),
                 shear = std::hypot(stress.shear_across.value(), stress.shear_along.value());
    return std::sqrt(normal * normal + 3 * shear * shear);
}

std::vector<WorkedStep> mean_stress_steps(const Case& asked, const Acting& acting, double von_mises)
{
    const WeldMetalForce& metal = *acting.metal;
    const Eigen::Vector3d& force = acting.force;
    if (is_plug(metal.site))
        return {worked_step("von Mises stress of the plug", "sigma_v = sqrt(f_r^2 + 3 (f_z^2 + f_t^2))/A",
                            put_in("sqrt({}^2+3*({}^2+{}^2))/{}", {force(2), force(0), force(1), metal.area}),
                            von_mises, "MPa")};
    const FilletWeld fillet = fillet_weld(asked, side_of_metal(metal));
    const LineForce line = line_force(metal, force);
    const ThroatPlaneStress stress = throat_plane_stress(fillet, line).value;
    const double length = metal.length;
    std::vector<WorkedStep> steps{
        worked_step("force outward along the axis, on each mm", "f_o = F_z/l, positive away from the joint",
                    put_in("{}/{}", {line.outward * length, length}), line.outward, "N/mm"),
        worked_step("force along the radius", "f_r = F_r/l", put_in("{}/{}", {force(2), length}), line.radial, "N/mm"),
        worked_step("force along the ring", "f_t = F_t/l", put_in("{}/{}", {force(1), length}), line.tangential,
                    "N/mm")};
    append(steps, throat_steps(fillet, line, stress, "MPa"));
    steps.push_back(worked_step("von Mises stress of the throat", "sigma_v = sqrt(sigma^2 + 3 (tau_c^2 + tau_l^2))",
                                put_in("sqrt({}^2+3*({}^2+{}^2))", {stress.normal.value(), stress.shear_across.value(),
                                                                    stress.shear_along.value()}),
                                von_mises, "MPa"));
    return steps;
}

// Holds for any steel: of the rows of EN 1993-1-8 none governs on a shaft that is no structural steel.
CheckRow yield_row(const Case& asked, const Acting& acting)
{
    const WeldMetalForce& metal = *acting.metal;
    const Limit limit = throat_limit(asked, side_of_metal(metal));
    CheckRow row;
    row.id = "strength/" + metal.site + "/yield";
    row.site = metal.site;
    row.check = is_plug(metal.site) ? "plug weld, mean von Mises stress" : "throat, mean von Mises stress";
    row.demand = mean_von_mises(asked, metal, acting.force);
    row.capacity = limit.stress.value();
    row.unit = "MPa";
    // All of the error may be shear, which the von Mises stress counts with the root of three.
    row.error_pct = error_pct(std::numbers::sqrt3 * acting.error, row.demand * metal.area);
    row.utilisation = row.demand * (1 + row.error_pct / 100) / row.capacity;
    row.method = fmt::format("structural stress: force on the weld by the solid model over the {}, von Mises",
                             area_words(metal));
    row.source = fmt::format("von Mises [Mises1913]; limit: {}", limit.whose);
    row.provenance = limit.provenance;
    row.note = which(metal);
    append_note(row.note,
                "no partial factor: mechanics, not a code; the weld is taken as sound and of the stated size");
    row.worked = force_steps(acting);
    append(row.worked, mean_stress_steps(asked, acting, row.demand));
    row.worked.push_back(limit_step(limit));
    row.worked.push_back(utilisation_step(row.demand, row.capacity, row.error_pct, row.utilisation));
    return row;
}

// How much less pull than shear the curves allow for the most frequent torque: the ratio of the classes up to the 2e6
// cycles of which they speak, more beyond, where the curves part. Judgement.
double shear_for_pull(const Load& load)
{
    double count = class_cycles;
    for (const TorqueBlock& block : load.blocks) count = std::max(count, block.count);
    const WeldCurves curves = iiw_curves(normal_class, shear_class);
    return allowable_range(curves.shear, count, Amplitude::variable).value() /
           allowable_range(curves.normal, count, Amplitude::variable).value();
}

// Torque also pulls at the ends of a weld. That part is counted as so much more shear as its curve allows less of it:
// judgement.
WeldUnitStress unit_stress(const WeldMetalForce& metal, const Load& load)
{
    const auto parts = [&](const Eigen::Vector3d& force) -> std::array<double, 2>
    {
        const bool plug = is_plug(metal.site);
        const double across = plug ? std::abs(force(2)) : std::hypot(force(0), force(2));
        const double along = plug ? std::hypot(force(0), force(1)) : std::abs(force(1));
        return {across / metal.area, along / metal.area};
    };
    const auto [pull, shear] = parts(metal.torsion);
    WeldUnitStress stress;
    const double ratio = shear_for_pull(load);
    stress.shear_by_torque = std::hypot(shear, ratio * pull);
    for (int k = 0; k < angles_of_bending; ++k)
    {
        const auto [across, along] = parts(bending_force(metal, std::numbers::pi * k / angles_of_bending));
        stress.normal_by_bending = std::max(stress.normal_by_bending, across);
        stress.shear_by_bending = std::max(stress.shear_by_bending, along);
    }
    // Of sqrt(t^2 + (q s)^2), which both of them make together: to first order, the error in its worst direction.
    const auto error_of_both = [&](double along, double across, double error)
    {
        const double both = std::hypot(along, ratio * across);
        return both > 0 ? 100 * error / metal.area * std::hypot(along, ratio * ratio * across) / (both * both) : 0;
    };
    const double of_torque = error_of_both(shear, pull, metal.torsion_error),
                 of_bending = error_of_both(stress.shear_by_bending, stress.normal_by_bending, metal.bending_error);
    const bool bends = load.peak_bending.value() > 0 || load.running_bending.value() > 0;
    stress.shear_error_pct = bends ? std::max(of_torque, of_bending) : of_torque;
    stress.normal_error_pct = of_bending;
    const char* const per_couple = "MPa per N·mm";
    const std::string place = fmt::format("{}, {}", where(metal), by_finite_elements(stress.shear_error_pct));
    stress.torque_worked = {
        read_step(fmt::format("shear along the weld by 1 N·mm of torque {}", place), shear, per_couple),
        read_step("stress across the weld by it", pull, per_couple),
        read_step("ratio of what the curves of FAT 80 in shear and FAT 36 allow for the most frequent torque", ratio,
                  ""),
        worked_step("both as shear, the one across by that ratio", "k_tau = sqrt(t^2 + (q s)^2)",
                    put_in("sqrt({}^2+({}*{})^2)", {shear, ratio, pull}), stress.shear_by_torque, per_couple)};
    stress.bending_worked = {
        read_step(fmt::format("k_sigma, stress across the weld by 1 N·mm of bending in its worst direction {}", place),
                  stress.normal_by_bending, per_couple),
        read_step("k_tauM, shear along the weld by bending in its worst direction", stress.shear_by_bending,
                  per_couple)};
    return stress;
}

CheckRow fatigue_row(const Case& asked, const WeldMetalForce& metal)
{
    CheckRow row = weld_row(
        asked,
        {metal.site, "throat-iiw", is_plug(metal.site) ? "plug weld, IIW class" : "weld by throat, IIW class",
         fmt::format("structural stress: force on the weld by the solid model over the {}; IIW detail 414, FAT 36, "
                     "shear 80, squares with 0.5, Miner sum 0.5 or 0.2",
                     area_words(metal))},
        unit_stress(metal, asked.load), iiw_curves(normal_class, shear_class));
    append_note(row.note, which(metal));
    append_note(row.note,
                "stress across the weld by torque is counted as shear, larger by the ratio of the curves (judgement)");
    if (is_plug(metal.site)) append_note(row.note, "a class of fillet welds, taken for a plug weld (judgement)");
    return row;
}

}  // namespace

std::vector<CheckRow> weld_metal_checks(const Case& asked, const SolidModelAnswer& solid)
{
    const CombinedLoad load = peak_load(asked);
    const bool cycles = !asked.load.blocks.empty() || asked.load.running_bending.value() > 0;
    std::map<std::string, std::array<std::optional<CheckRow>, 3>> worst;
    const auto keep = [](std::optional<CheckRow>& kept, CheckRow row)
    {
        if (!kept || row.utilisation > kept->utilisation) kept = std::move(row);
    };
    for (const std::vector<WeldMetalForce>& bracket : solid.weld_metal)
        for (const WeldMetalForce& metal : bracket)
        {
            auto& [strength, yield, fatigue] = worst[metal.site];
            keep(strength, strength_row(asked, worst_direction(metal, load, resultant)));
            const auto von_mises = [&](const Eigen::Vector3d& force) { return mean_von_mises(asked, metal, force); };
            keep(yield, yield_row(asked, worst_direction(metal, load, von_mises)));
            if (cycles) keep(fatigue, fatigue_row(asked, metal));
        }
    std::vector<CheckRow> rows;
    for (auto& [site, kept] : worst)
        for (std::optional<CheckRow>& row : kept)
            if (row) rows.push_back(std::move(*row));
    return rows;
}

}  // namespace splicewright
