// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/meridian.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "cases/problem.h"
#include "solver/meridian_level.h"

namespace splicewright
{
namespace
{

constexpr double refinement = 1.5;        // of the element size at a site from one mesh to the next
constexpr int most_levels = 6;
constexpr double negligible_share = 0.05; // of the bar's nominal stress: below it a site need not reach the accuracy

// Elements on a quarter turn of the first mesh: stress on a notch surface falls about with the third power of the
// element size (tests/convergence), 6 suffice for about 1 %.
double first_elements(double target_pct) { return std::clamp(6 * std::cbrt(1 / target_pct), 4.0, 14.0); }

// Surface stress of the thinnest bar per unit load, the scale against which a site counts as loaded.
struct Nominal
{
    double torsion = 0, bending = 0, axial = 0;
};

Nominal nominal_of(const Case& asked)
{
    double thinnest = INFINITY;
    for (const auto& bar : asked.bar)
        if (bar)
            for (const Section& section : bar->sections) thinnest = std::min(thinnest, section.diameter.value());
    const double pi = std::numbers::pi;
    return {std::sqrt(3.0) * 16 / (pi * std::pow(thinnest, 3)), 32 / (pi * std::pow(thinnest, 3)),
            4 / (pi * thinnest * thinnest)};
}

struct SiteError
{
    double relative = 0;  // of the worst load that matters, 1 = 100 %
};

void set_error(Measured& now, double before, double kept) { now.error = std::max(std::abs(now.value - before), kept); }

void set_errors(UnitPeak& now, const UnitPeak& before, bool refined)
{
    set_error(now.von_mises, before.von_mises.value, refined ? 0 : before.von_mises.error);
    set_error(now.principal, before.principal.value, refined ? 0 : before.principal.error);
    set_error(now.shear, before.shear.value, refined ? 0 : before.shear.error);
}

double relative_error(const UnitPeak& peak, double nominal)
{
    return peak.von_mises.error / std::max(peak.von_mises.value, negligible_share * nominal);
}

double relative_error(const SiteAnswer& site, const Nominal& nominal)
{
    return std::max({relative_error(site.torsion, nominal.torsion), relative_error(site.bending, nominal.bending),
                     relative_error(site.axial, nominal.axial)});
}

// Relative to the force that each load would put on a weld that carries all of it, or to the force itself if larger.
void set_weld_errors(Level& now, const Level& before)
{
    for (std::size_t i = 0; i < 2; ++i)
    {
        if (!now.weld[i] || !before.weld[i]) continue;
        WeldForce& w = *now.weld[i];
        const double ring = 2 * std::numbers::pi * w.radius;
        const auto change = [&](double WeldForce::*part, double whole)
        { return std::abs(w.*part - (*before.weld[i]).*part) / std::max(std::abs(w.*part), negligible_share * whole); };
        const double torque = 1 / (w.radius * ring), couple = 2 / (w.radius * ring), pull = 1 / ring;
        w.error_pct = 100 * std::max({change(&WeldForce::torsion_tangential, torque),
                                      change(&WeldForce::bending_outward, couple), change(&WeldForce::bending_radial, couple),
                                      change(&WeldForce::bending_tangential, couple),
                                      change(&WeldForce::axial_outward, pull), change(&WeldForce::axial_radial, pull)});
    }
}

// Errors of `now` from its change against the mesh before; returns the largest relative error and, by site id,
// which sites still miss the target.
struct Comparison
{
    double worst = 0;
    std::vector<std::string> missed;
};

Comparison compare(Level& now, const Level& before, const Nominal& nominal, double target,
                   const std::map<std::string, double>& refined_sites)
{
    Comparison result;
    for (SiteAnswer& site : now.sites)
    {
        const auto old = std::find_if(before.sites.begin(), before.sites.end(),
                                      [&](const SiteAnswer& candidate) { return candidate.id == site.id; });
        EXPECTS(old != before.sites.end());
        const bool refined = refined_sites.empty() || refined_sites.contains(site.id);
        set_errors(site.torsion, old->torsion, refined);
        set_errors(site.bending, old->bending, refined);
        set_errors(site.axial, old->axial, refined);
        const double error = relative_error(site, nominal);
        result.worst = std::max(result.worst, error);
        if (error > target) result.missed.push_back(site.id);
    }
    set_weld_errors(now, before);
    for (const auto share : {&SleeveShare::torsion, &SleeveShare::bending, &SleeveShare::axial})
        (now.share.*share).error = std::abs((now.share.*share).value - (before.share.*share).value);
    return result;
}

// Curve names that carry a site; empty when the site has no notch of its own.
std::vector<std::string> notch_curves(const std::string& site)
{
    if (site == "butt-surface") return {"butt-surface.left", "butt-surface.right"};
    if (site == "sleeve-mid" || site.starts_with("bar.")) return {};
    return {site};
}

void refine(MeshSize& size, const std::vector<std::string>& sites)
{
    bool everywhere = false;
    for (const std::string& site : sites)
    {
        const std::vector<std::string> curves = notch_curves(site);
        for (const std::string& curve : curves) size.finer.try_emplace(curve, 1.0).first->second *= refinement;
        everywhere = everywhere || curves.empty() || site == "butt-surface";
    }
    if (everywhere) size.sections_per_wall *= refinement;
    size.growth /= 1.15;
}

Evidence evidence_of(const Level& level, int levels, const Comparison& comparison, const Accuracy& accuracy)
{
    Evidence evidence;
    evidence.levels = levels;
    evidence.nodes = level.mesh.n_nodes();
    evidence.elements = level.mesh.n_triangles();
    evidence.unknowns = level.unknowns;
    evidence.residual = level.residual;
    evidence.reaction_imbalance = level.reaction_imbalance;
    evidence.section_imbalance = level.section_imbalance;
    evidence.smallest_angle_deg = level.mesh.smallest_angle_deg;
    evidence.smallest_jacobian_ratio = level.mesh.smallest_jacobian_ratio;
    evidence.accuracy_pct = accuracy.target_pct;
    evidence.worst_error_pct = 100 * comparison.worst;
    evidence.reached = comparison.missed.empty();
    return evidence;
}

}  // namespace

std::vector<ElasticConstants> steel_by_region(const Case& asked, const std::vector<std::string>& regions)
{
    std::vector<ElasticConstants> steel;
    for (const std::string& region : regions)
    {
        const Side side = region.ends_with("left") ? Side::left : Side::right;
        const Material& material = region.starts_with("bar")      ? asked.bar[index(side)]->material
                                   : region.starts_with("sleeve") ? asked.sleeve->material
                                                                  : asked.sleeve->weld.filler;
        steel.push_back({material.elastic_modulus.value(), material.poisson_ratio});
    }
    return steel;
}

MeridianAnswer meridian_answer(const Case& asked, const Scenario& scenario, const Accuracy& accuracy)
{
    const Outline shape = outline(asked, scenario);
    const Nominal nominal = nominal_of(asked);
    const double target = accuracy.target_pct / 100;
    MeshSize size;
    size.elements_per_quarter_turn = first_elements(accuracy.target_pct);
    Level before = solved_level(asked, scenario, shape, size);
    size.elements_per_quarter_turn *= refinement;
    size.sections_per_wall *= refinement;
    Level now = solved_level(asked, scenario, shape, size);
    Comparison comparison = compare(now, before, nominal, target, {});
    double mesh = before.mesh_seconds + now.mesh_seconds, solve = before.solve_seconds + now.solve_seconds,
           recover = before.recover_seconds + now.recover_seconds;
    int levels = 2;
    while (!comparison.missed.empty() && levels < most_levels && now.mesh.n_nodes() < accuracy.most_nodes)
    {
        refine(size, comparison.missed);
        std::map<std::string, double> refined;
        for (const std::string& site : comparison.missed) refined[site] = 1;
        before = std::move(now);
        now = solved_level(asked, scenario, shape, size);
        comparison = compare(now, before, nominal, target, refined);
        mesh += now.mesh_seconds, solve += now.solve_seconds, recover += now.recover_seconds;
        ++levels;
    }
    MeridianAnswer answer;
    answer.scenario = scenario;
    answer.absent_sites = shape.absent_sites;
    answer.evidence = evidence_of(now, levels, comparison, accuracy);
    answer.evidence.mesh_seconds = mesh;
    answer.evidence.solve_seconds = solve;
    answer.evidence.recover_seconds = recover;
    answer.sites = now.sites;
    answer.weld = now.weld;
    answer.share = now.share;
    answer.twist = {now.twist, std::abs(now.twist - before.twist)};
    answer.end_rotation = {now.end_rotation, std::abs(now.end_rotation - before.end_rotation)};
    answer.extension = {now.extension, std::abs(now.extension - before.extension)};
    answer.fit_pressure = {now.fit_pressure, std::abs(now.fit_pressure - before.fit_pressure)};
    answer.closing_by_bending = now.closing_by_bending;
    answer.closing_by_axial = now.closing_by_axial;
    answer.fields = solved_fields(std::move(now));
    return answer;
}

}  // namespace splicewright
