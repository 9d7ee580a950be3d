// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/notch_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "post/rated_curves.h"
#include "post/site_loads.h"
#include "post/weld_places.h"
#include "post/worked_weld.h"

namespace splicewright
{
namespace
{

constexpr double least_wall_mm = 5;           // of the 1 mm radius. Source: [Fricke2012], from memory
constexpr double unloaded_weld_share = 0.02;  // of the load: a sleeve weld below it carries nothing

double partial_factor() { return safe_life_partial_factor().value; }

double error_pct(const Measured& value) { return value.value != 0 ? 100 * value.error / std::abs(value.value) : 0; }

std::string thin_wall(const Case& asked, const std::string& site)
{
    const double wall = wall_at(asked, site);
    return wall < least_wall_mm ? fmt::format("{} of {:.3g} mm: the 1 mm radius asks for {:g} mm",
                                              site == "land-edge"     ? "fused depth"
                                              : site.starts_with("b") ? "wall of the bar"
                                                                      : "sleeve wall",
                                              wall, least_wall_mm)
                                : "";
}

std::string place(const SiteAnswer& site) { return fmt::format("at {}", site.id); }

// Torsion gives sqrt(3) times its shear, so that equivalents of the two unit loads come out as solved.
WeldUnitStress von_mises_stress(const SiteAnswer& site)
{
    const double mises = site.torsion.von_mises.value, shear = mises / std::numbers::sqrt3;
    return {shear,
            site.bending.von_mises.value,
            0,
            error_pct(site.torsion.von_mises),
            error_pct(site.bending.von_mises),
            {unit_step("largest von Mises stress by 1 N·mm of torque", place(site), mises,
                       error_pct(site.torsion.von_mises)),
             worked_step("the shear that it stands for", "k_tau = k_v/sqrt(3)", put_in("{}/sqrt(3)", {mises}), shear,
                         "MPa per N·mm")},
            {unit_step("k_sigma, largest von Mises stress by 1 N·mm of bending", place(site),
                       site.bending.von_mises.value, error_pct(site.bending.von_mises))}};
}

WeldUnitStress shear_stress(const SiteAnswer& site)
{
    WeldUnitStress stress = site_unit_stress(site);
    stress.normal_by_bending = stress.normal_error_pct = 0;
    stress.bending_worked.clear();
    return stress;
}

// Whether one of normal and shear is below 15 % of the other, the share below which it may be left out.
bool one_kind_of_stress(const Case& asked, const std::string& site, const WeldUnitStress& stress,
                        const WeldCurves& curves)
{
    const WeldRating rating = weld_rating(
        weld_spectrum(asked.load, rated_stress(asked, site, stress),
                      [&](const TorqueBlock& block) { return shear_relief_factor(asked, curves.rule, block); }),
        rated_curves(asked, curves));
    return rating.interaction.value.limit == 1;
}

void add_notch_rows(std::vector<CheckRow>& rows, const Case& asked, const SiteAnswer& site)
{
    const std::string method = "effective notch stress, reference radius 1 mm";
    const WeldCurves curves{effective_notch_curve(NotchStress::first_principal, partial_factor()),
                            effective_notch_curve(NotchStress::shear, partial_factor()), InteractionRule::squares};
    const std::string reason = thin_wall(asked, site.id);
    CheckRow joint =
        weld_row(asked,
                 {site.id, "", "effective notch stress, 1 mm",
                  method + "; FAT 225 first principal, FAT 160 shear, squares with 0.5, Miner sum 0.5 or 0.2"},
                 site_unit_stress(site), curves);
    CheckRow mises = equivalent_row(
        asked,
        {site.id, "notch-von-mises", "effective notch, 1 mm, von Mises", method + "; FAT 200, Miner sum 0.5 or 0.2"},
        von_mises_stress(site), Equivalent::von_mises, effective_notch_curve(NotchStress::von_mises, partial_factor()));
    CheckRow shear = weld_row(asked,
                              {site.id, "notch-shear", "effective notch, 1 mm, shear",
                               method + "; FAT 160 shear alone, Miner sum 0.5 or 0.2"},
                              shear_stress(site), curves);
    joint.not_valid_because = mises.not_valid_because = shear.not_valid_because = reason;
    if (reason.empty() && !one_kind_of_stress(asked, site.id, site_unit_stress(site), curves))
        mises.not_valid_because =
            "torque and rotating bending are both felt and out of phase: von Mises asks for "
            "stresses that rise and fall together";
    rows.insert(rows.end(), {joint, mises, shear});
    if (!torque_pulls(site)) return;
    CheckRow principal =
        equivalent_row(asked,
                       {site.id, "notch-principal", "effective notch, 1 mm, first principal",
                        method + "; first principal of torque and bending, FAT 225, Miner sum 0.5 or 0.2"},
                       site_principal_stress(site), Equivalent::first_principal, curves.normal);
    append_note(principal.note,
                "the shaft is no body of revolution here: torque pulls at this place, and does not only shear it");
    principal.not_valid_because = reason;
    rows.push_back(principal);
}

}  // namespace

std::vector<CheckRow> notch_checks(const Case& asked, const MeridianAnswer& notched)
{
    std::vector<CheckRow> rows;
    for (const SiteAnswer& site : notched.sites)
        if (is_weld_notch(site.id) && !carries_nothing(notched, site.id)) add_notch_rows(rows, asked, site);
    return rows;
}

std::vector<CheckRow> small_notch_checks(const Case& asked, const MeridianAnswer& small)
{
    const WeldCurves curves{small_notch_curve(NotchStress::first_principal, partial_factor()),
                            small_notch_curve(NotchStress::shear, partial_factor()), InteractionRule::squares};
    std::vector<CheckRow> rows;
    for (const SiteAnswer& site : small.sites)
    {
        if (!is_weld_notch(site.id) || carries_nothing(small, site.id) || thin_wall(asked, site.id).empty()) continue;
        rows.push_back(weld_row(asked,
                                {site.id, "notch-small", "effective notch stress, 0.05 mm",
                                 "effective notch stress, reference radius 0.05 mm; FAT 630 first principal, FAT 250 "
                                 "shear, squares with 0.5, Miner sum 0.5 or 0.2"},
                                site_unit_stress(site), curves));
    }
    return rows;
}

bool has_thin_wall(const Case& asked)
{
    if (!asked.joint) return false;
    std::vector<std::string> sites;
    if (asked.joint->penetration) sites.emplace_back("land-edge");
    if (asked.sleeve)
        for (const Side side : both_sides)
            for (const char* site : {"bar-toe", "root"}) sites.push_back(fmt::format("{}.{}", site, name_of(side)));
    return std::any_of(sites.begin(), sites.end(),
                       [&](const std::string& site) { return !thin_wall(asked, site).empty(); });
}

namespace
{

// The stresses that were read, and the value that they extrapolate to.
std::vector<WorkedStep> reading_steps(const std::vector<ReadStress>& read, const HotSpot& spot, const char* what,
                                      const char* symbol, const Measured& stress)
{
    std::vector<WorkedStep> steps;
    std::string formula, numbers;
    for (const ReadStress& at : read)
    {
        steps.push_back(read_step(fmt::format("{}, from the finite elements, at {:g} t = {:.4g} mm from {}", what,
                                              at.distance, at.distance * spot.thickness, spot.site),
                                  at.value, "MPa per N·mm"));
        formula += fmt::format("{}{:g} s({:g} t)",
                               at.weight < 0     ? " - "
                               : formula.empty() ? ""
                                                 : " + ",
                               std::abs(at.weight), at.distance);
        numbers += fmt::format("{}{}*{}", numbers.empty() ? "" : "+", put(at.weight), put(at.value, Digits::eleven));
    }
    const std::string turned = stress.value < 0 ? fmt::format("(-1)*({})", numbers) : numbers;
    steps.push_back(worked_step(fmt::format("extrapolated to {}, t = {:.4g} mm, error bar {:.2g} %", spot.site,
                                            spot.thickness, error_pct(stress)),
                                fmt::format("{} = |{}|", symbol, formula), turned, std::abs(stress.value),
                                "MPa per N·mm"));
    return steps;
}

WeldUnitStress hot_spot_stress(const ExtrapolatedStress& stress, const HotSpot& spot)
{
    return {std::abs(stress.torsion_shear.value),
            std::abs(stress.bending_normal.value),
            0,
            error_pct(stress.torsion_shear),
            error_pct(stress.bending_normal),
            reading_steps(stress.torsion_read, spot, "shear on the surface by 1 N·mm of torque", "k_tau",
                          stress.torsion_shear),
            reading_steps(stress.bending_read, spot, "stress along the axis by 1 N·mm of bending", "k_sigma",
                          stress.bending_normal)};
}

}  // namespace

std::vector<CheckRow> hot_spot_checks(const Case& asked, const MeridianAnswer& answer)
{
    WeldCurves curves{normal_curve(Megapascal{90}, partial_factor(), Provenance::from_memory),
                      shear_curve(Megapascal{80}, partial_factor(), Provenance::judgement), InteractionRule::squares};
    std::vector<CheckRow> rows;
    for (const HotSpot& spot : answer.hot_spots)
    {
        const auto add = [&](const char* how, const char* points, const ExtrapolatedStress& stress)
        {
            WeldCurves thick = curves;
            thicken(thick, Millimetre{size_at(asked, spot.site)}, 0.3);
            CheckRow row =
                weld_row(asked,
                         {spot.site, fmt::format("hot-spot-{}", how), fmt::format("hot-spot stress, {}", how),
                          fmt::format("surface stress by finite elements at {} of the thickness, extrapolated "
                                      "to the toe; FAT 90, shear 80, squares with 0.5, Miner sum 0.5 or 0.2",
                                      points)},
                         hot_spot_stress(stress, spot), thick);
            append_note(
                row.note,
                fmt::format(
                    "read at shares of {:.3g} mm (half the diameter of a solid bar: judgement), {}; shear class "
                    "as for fillets (judgement)",
                    spot.thickness, size_words(asked, spot.site)));
            rows.push_back(row);
        };
        add("linear", "0.4 and 1.0", spot.linear);
        add("quadratic", "0.4, 0.9 and 1.4", spot.quadratic);
    }
    return rows;
}

bool carries_nothing(const MeridianAnswer& answer, const std::string& site)
{
    if (!site.starts_with("root.")) return false;
    const auto& weld = answer.weld[index(side_of(site))];
    if (!weld) return true;
    const double whole = 1 / (2 * std::numbers::pi * weld->radius * weld->radius);
    return std::abs(weld->torsion_tangential) < unloaded_weld_share * whole;
}

}  // namespace splicewright
