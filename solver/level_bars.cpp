// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/level_bars.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "solver/site_change.h"

namespace splicewright
{
namespace
{

constexpr double negligible_share = 0.05;  // of the bar's nominal stress: below it a site need not reach the accuracy

// Elements on a quarter turn of a site's notch; of any notch where it has none of its own.
double notch_elements(const MeshSize& size, const std::string& site)
{
    double finer = 1;
    for (const std::string& curve : notch_curves(site))
        if (const auto found = size.finer.find(curve); found != size.finer.end())
            finer = std::max(finer, found->second);
    return size.elements_per_quarter_turn * finer;
}

// Bar over change with eight elements on a quarter turn, judgement from the study in docs/error-bars.md. With an error
// of order p in the element size, what is left after a step of 1.5 is the change over 1.5^p - 1: twice it at order 1,
// 0.8 of it at order 2, 0.4 of it at order 3. The stress at one place changes by order 2, its largest value by order 3,
// so that the part of the change that is left falls with the element size at first.
constexpr double on_notch = 1.07;         // of the typical change over the hot stretch
constexpr double at_one_place = 0.385;    // of the largest change there
constexpr double at_notch_end = 1.35;     // the same where the peak lies at an end of the site
constexpr double at_mid_splice = 1.25;    // of the typical change, where the error comes from elsewhere
constexpr double at_middle_end = 1.6;     // of the largest change, where the peak lies at an end of such a site
constexpr double on_plain_bar = 0.6;      // of the largest change there: its error comes from elsewhere, too
constexpr double at_bar_end = 1.0;        // the same where the peak lies at an end of it
constexpr double of_peak = 0.5;           // of the change of the peak itself
constexpr double of_deformation = 0.63;   // of the largest relative change of the three
constexpr double of_weld_force = 0.74;    // of the largest change of its parts
constexpr double of_share = 1.85;         // of the largest change of the three; no order is seen in it
constexpr double of_fit_pressure = 2;     // read from the recovered stress, of order 1 beside the faces
constexpr double least_in_splice = 3e-5;  // relative: below it two meshes agree by chance
constexpr double refined_at_notch = 0.5;  // least part of the bar before that stays: the rest of the mesh is as it was
constexpr double whole_of_shaft = 0.75;   // the same for a number that every notch has a part in

double part_left(double elements)
{
    return std::clamp(std::max(8 / elements, std::min(0.74, 13 / elements)), 0.54, 1.0);
}

struct BarRule
{
    double over_typical = 0, over_largest = 0, over_end = 0, over_peak = 0, least = 0;
    double kept = 0;  // least part of the bar before
};

BarRule rule_of(const std::string& site, const MeshSize& size, bool shaft_is_plain)
{
    const double part = part_left(notch_elements(size, site));
    const double least = shaft_is_plain ? 0 : least_in_splice;
    if (site.starts_with("bar.")) return {0, part * on_plain_bar, at_bar_end, part * of_peak, least};
    if (site == "butt-surface" || site == "sleeve-mid") return {at_mid_splice, 0, at_middle_end, of_peak, least};
    return {part * on_notch, part * at_one_place, at_notch_end, part * of_peak, least};
}

double kept_part(const MeshStep& step, const std::string& site)
{
    if (step.refined == Refined::everywhere) return 0;
    return std::find(step.sites.begin(), step.sites.end(), site) != step.sites.end() ? refined_at_notch : 1;
}

void set_error(Measured& now, const Measured& before, const StretchChange& change, const BarRule& rule)
{
    now.error = std::max({rule.over_typical * change.typical, rule.over_largest * change.largest,
                          rule.over_end * change.at_end, rule.over_peak * std::abs(now.value - before.value),
                          rule.least * std::abs(now.value), rule.kept * before.error});
}

void set_errors(UnitPeak& now, const UnitPeak& before, const SiteChange& change, const BarRule& rule)
{
    set_error(now.von_mises, before.von_mises, change.von_mises, rule);
    set_error(now.principal, before.principal, change.principal, rule);
    set_error(now.shear, before.shear, change.shear, rule);
}

double relative_error(const UnitPeak& peak, double nominal)
{
    return peak.von_mises.error / std::max(peak.von_mises.value, negligible_share * nominal);
}

double relative_error(const SiteAnswer& site, const NominalStress& nominal)
{
    return std::max({relative_error(site.torsion, nominal.torsion), relative_error(site.bending, nominal.bending),
                     relative_error(site.axial, nominal.axial)});
}

// For numbers of the whole shaft.
struct WholeRule
{
    double part = 1;  // of the factors
    double kept = 0;  // least part of the bar before
};

// Relative to the force that each load would put on a weld that carries all of it, or to the force itself if larger.
void set_weld_errors(Level& now, const Level& before, const WholeRule& rule)
{
    for (std::size_t i = 0; i < 2; ++i)
    {
        if (!now.weld[i] || !before.weld[i]) continue;
        WeldForce& w = *now.weld[i];
        const double ring = 2 * std::numbers::pi * w.radius;
        const auto change = [&](double WeldForce::*part, double whole)
        { return std::abs(w.*part - (*before.weld[i]).*part) / std::max(std::abs(w.*part), negligible_share * whole); };
        const double torque = 1 / (w.radius * ring), couple = 2 / (w.radius * ring), pull = 1 / ring;
        w.error_pct =
            100 * rule.part * of_weld_force *
            std::max({change(&WeldForce::torsion_tangential, torque), change(&WeldForce::bending_outward, couple),
                      change(&WeldForce::bending_radial, couple), change(&WeldForce::bending_tangential, couple),
                      change(&WeldForce::axial_outward, pull), change(&WeldForce::axial_radial, pull)});
        w.error_pct = std::max(w.error_pct, rule.kept * before.weld[i]->error_pct);
    }
}

// One change may vanish by chance, so the largest of the group counts for each of its numbers.
void set_whole_errors(Level& now, const Level& before, const WholeRule& rule)
{
    const auto set = [&](Measured& here, const Measured& there, double error)
    { here.error = std::max(error, rule.kept * there.error); };
    double share_change = 0, deformation_change = 0;
    constexpr std::array shares{&SleeveShare::torsion, &SleeveShare::bending, &SleeveShare::axial};
    constexpr std::array deformations{&Level::twist, &Level::end_rotation, &Level::extension};
    for (const auto share : shares)
        share_change = std::max(share_change, std::abs((now.share.*share).value - (before.share.*share).value));
    for (const auto whole : deformations)
        deformation_change = std::max(deformation_change, std::abs((now.*whole).value / (before.*whole).value - 1));
    for (const auto share : shares) set(now.share.*share, before.share.*share, of_share * share_change);
    for (const auto whole : deformations)
        set(now.*whole, before.*whole, rule.part * of_deformation * deformation_change * (now.*whole).value);
    set(now.fit_pressure, before.fit_pressure,
        of_fit_pressure * std::abs(now.fit_pressure.value - before.fit_pressure.value));
}

void set_hot_spot_errors(Level& now, const Level& before, const MeshStep& step)
{
    for (HotSpot& spot : now.hot_spots)
    {
        const auto old = std::find_if(before.hot_spots.begin(), before.hot_spots.end(),
                                      [&](const HotSpot& candidate) { return candidate.site == spot.site; });
        if (old == before.hot_spots.end()) continue;
        const double over = part_left(notch_elements(step.size, spot.site)) * on_notch;
        for (const auto how : {&HotSpot::linear, &HotSpot::quadratic})
            for (const auto part : {&ExtrapolatedStress::torsion_shear, &ExtrapolatedStress::bending_normal,
                                    &ExtrapolatedStress::axial_normal})
            {
                Measured& here = spot.*how.*part;
                const Measured& there = (*old).*how.*part;
                here.error =
                    std::max({over * std::abs(here.value - there.value), least_in_splice * std::abs(here.value),
                              kept_part(step, spot.site) * there.error});
            }
    }
}

}  // namespace

NominalStress nominal_stress(const Case& asked)
{
    double thinnest = INFINITY;
    for (const auto& bar : asked.bar)
        if (bar)
            for (const Section& section : bar->sections) thinnest = std::min(thinnest, section.diameter.value());
    const double pi = std::numbers::pi;
    return {std::sqrt(3.0) * 16 / (pi * std::pow(thinnest, 3)), 32 / (pi * std::pow(thinnest, 3)),
            4 / (pi * thinnest * thinnest)};
}

std::vector<std::string> notch_curves(const std::string& site)
{
    if (site == "butt-surface") return {"butt-surface.left", "butt-surface.right"};
    if (site == "sleeve-mid" || site.starts_with("bar.")) return {};
    return {site};
}

Comparison compare(Level& now, const Level& before, const NominalStress& nominal, const MeshStep& step)
{
    Comparison result;
    const bool is_plain = std::all_of(now.sites.begin(), now.sites.end(),
                                      [](const SiteAnswer& site) { return site.id.starts_with("bar."); });
    for (SiteAnswer& site : now.sites)
    {
        const auto old = std::find_if(before.sites.begin(), before.sites.end(),
                                      [&](const SiteAnswer& candidate) { return candidate.id == site.id; });
        EXPECTS(old != before.sites.end());
        BarRule rule = rule_of(site.id, step.size, is_plain);
        rule.kept = kept_part(step, site.id);
        set_errors(site.torsion, old->torsion, site_change(site, *old, {1, 0, 0, 0}), rule);
        set_errors(site.bending, old->bending, site_change(site, *old, {0, 1, 0, 0}), rule);
        set_errors(site.axial, old->axial, site_change(site, *old, {0, 0, 1, 0}), rule);
        const double error = relative_error(site, nominal);
        result.worst = std::max(result.worst, error);
        if (error > step.target) result.missed.push_back(site.id);
    }
    const WholeRule whole{part_left(step.size.elements_per_quarter_turn),
                          step.refined == Refined::at_notches ? whole_of_shaft : 0.0};
    set_weld_errors(now, before, whole);
    set_hot_spot_errors(now, before, step);
    set_whole_errors(now, before, whole);
    return result;
}

}  // namespace splicewright
