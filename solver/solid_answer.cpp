// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_answer.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "solver/solid_bars.h"

namespace splicewright
{
namespace
{

constexpr double bytes_per_dof = 2600;  // 890 to 1230 were seen with 200 thousand to 1.2 million; twice that
// A shape may need so many times the unknowns asked; more is refused before it is meshed. Judgement.
constexpr std::size_t most_times_asked = 4;
constexpr int angles_of_bending = 36;  // over half a turn: within 1 - cos 2.5 deg, 0.1 %, of a peak

Eigen::Matrix3Xd places_of(const SiteStress& site)
{
    Eigen::Matrix3Xd places(3, site.z.size());
    for (Eigen::Index i = 0; i < site.z.size(); ++i)
        places.col(i) =
            Eigen::Vector3d(site.r(i) * std::cos(site.around(i)), site.r(i) * std::sin(site.around(i)), site.z(i));
    return places;
}

// [n places, 3]: von Mises, principal, shear; the largest over the turn and over the brackets.
Eigen::MatrixX3d stresses_of(const SiteAnswer& site, const CombinedLoad& unit)
{
    Eigen::MatrixX3d largest = Eigen::MatrixX3d::Zero(site.brackets.front().z.size(), 3);
    const int n_angles = unit.bending == 0 ? 1 : angles_of_bending;
    for (const SiteStress& bracket : site.brackets)
        for (Eigen::Index i = 0; i < largest.rows(); ++i)
            for (int k = 0; k < n_angles; ++k)
            {
                const PointStress stress = point_stress(bracket, i, unit, std::numbers::pi * k / n_angles);
                largest(i, 0) = std::max(largest(i, 0), von_mises(stress));
                largest(i, 1) = std::max(largest(i, 1), std::abs(largest_principal(stress)));
                largest(i, 2) = std::max(largest(i, 2), std::abs(stress.shear));
            }
    return largest;
}

void set_bars(SiteAnswer& now, const SiteAnswer& before)
{
    const std::vector<Eigen::Index> nearest =
        nearest_places(places_of(before.brackets.front()), places_of(now.brackets.front()));
    const auto set = [&](UnitPeak& peak, const CombinedLoad& unit)
    {
        const Eigen::MatrixX3d here = stresses_of(now, unit), there = stresses_of(before, unit);
        const auto bar = [&](Measured& value, Eigen::Index column)
        { value.error = solid_peak(here.col(column), there.col(column), nearest).error; };
        bar(peak.von_mises, 0), bar(peak.principal, 1), bar(peak.shear, 2);
    };
    set(now.torsion, {1, 0, 0, 0});
    set(now.bending, {0, 1, 0, 0});
    set(now.axial, {0, 0, 1, 0});
}

// Of a number that is no stress: energies and resultants are of order two and more, so a third of the change is left;
// all of it is told.
void set_bar(Measured& now, const Measured& before) { now.error = std::abs(now.value - before.value); }

void set_weld_bar(WeldForce& now, const WeldForce& before)
{
    const auto changed = [](double a, double b, double scale) { return scale > 0 ? std::abs(a - b) / scale : 0; };
    const double bending =
        std::max({std::abs(now.bending_outward), std::abs(now.bending_radial), std::abs(now.bending_tangential)});
    const double axial = std::max(std::abs(now.axial_outward), std::abs(now.axial_radial));
    now.error_pct =
        100 * std::max({changed(now.torsion_tangential, before.torsion_tangential, std::abs(now.torsion_tangential)),
                        changed(now.bending_outward, before.bending_outward, bending),
                        changed(now.bending_radial, before.bending_radial, bending),
                        changed(now.bending_tangential, before.bending_tangential, bending),
                        changed(now.axial_outward, before.axial_outward, axial),
                        changed(now.axial_radial, before.axial_radial, axial)});
}

void set_metal_bars(std::vector<WeldMetalForce>& now, const std::vector<WeldMetalForce>& before)
{
    EXPECTS(now.size() == before.size());
    for (std::size_t i = 0; i < now.size(); ++i)
    {
        const auto moved = [&](Eigen::Vector3d WeldMetalForce::*load)
        { return (now[i].*load - before[i].*load).norm(); };
        now[i].torsion_error = moved(&WeldMetalForce::torsion);
        now[i].bending_error = std::max(moved(&WeldMetalForce::towards_x), moved(&WeldMetalForce::towards_y));
        now[i].axial_error = moved(&WeldMetalForce::axial);
        now[i].press_error = moved(&WeldMetalForce::press);
    }
}

double worst_error(const SolidLevel& level)
{
    double worst = 0;
    for (const SiteAnswer& site : level.sites)
        for (const UnitPeak* peak : {&site.torsion, &site.bending, &site.axial})
            if (peak->von_mises.value > 0) worst = std::max(worst, peak->von_mises.error / peak->von_mises.value);
    return worst;
}

void compare(SolidLevel& now, const SolidLevel& before)
{
    for (SiteAnswer& site : now.sites)
        for (const SiteAnswer& old : before.sites)
            if (old.id == site.id) set_bars(site, old);
    set_bar(now.twist, before.twist), set_bar(now.end_rotation, before.end_rotation);
    set_bar(now.extension, before.extension);
    set_bar(now.share.torsion, before.share.torsion), set_bar(now.share.bending, before.share.bending);
    set_bar(now.share.axial, before.share.axial);
    for (const Side side : both_sides)
        if (now.weld[index(side)]) set_weld_bar(*now.weld[index(side)], *before.weld[index(side)]);
    for (std::size_t b = 0; b < now.brackets.size(); ++b)
        set_metal_bars(now.brackets[b].weld_metal, before.brackets[b].weld_metal);
}

SolidEvidence evidence_of(const SolidLevel& level, const SolidLevel& before)
{
    SolidEvidence evidence;
    evidence.dofs = level.mesh.dofs(), evidence.coarse_dofs = before.mesh.dofs();
    evidence.elements = level.mesh.mesh.elements.size();
    evidence.elements_per_quarter_turn = level.mesh.elements_per_quarter_turn;
    evidence.smallest_jacobian_ratio = level.mesh.smallest_jacobian_ratio;
    evidence.straightened_edges = level.mesh.straightened_edges;
    evidence.within_budget = level.mesh.within_budget;
    evidence.iterations = level.iterations;
    evidence.residual = std::max(level.residual, before.residual);
    evidence.reaction_imbalance = std::max(level.reaction_imbalance, before.reaction_imbalance);
    evidence.mesh_seconds = level.mesh.seconds;
    evidence.solve_seconds = level.set_up_seconds + level.solve_seconds + before.set_up_seconds + before.solve_seconds;
    evidence.recover_seconds = level.recover_seconds + before.recover_seconds;
    evidence.bytes = level.bytes;
    evidence.coarse_sites = level.mesh.coarse_sites;
    return evidence;
}

Evidence common_evidence(const SolidEvidence& solid, const SolidLevel& level, double target_pct)
{
    Evidence evidence;
    evidence.levels = 2;
    evidence.nodes = static_cast<int>(level.mesh.mesh.nodes.size());
    evidence.elements = static_cast<int>(solid.elements);
    evidence.unknowns = static_cast<int>(solid.dofs);
    evidence.residual = solid.residual;
    evidence.reaction_imbalance = solid.reaction_imbalance;
    evidence.smallest_jacobian_ratio = solid.smallest_jacobian_ratio;
    evidence.accuracy_pct = target_pct;
    evidence.worst_error_pct = 100 * worst_error(level);
    // On a notch with too few elements two meshes agree by chance.
    evidence.reached = evidence.worst_error_pct <= target_pct && solid.coarse_sites.empty();
    evidence.mesh_seconds = solid.mesh_seconds;
    evidence.solve_seconds = solid.solve_seconds;
    evidence.recover_seconds = solid.recover_seconds;
    return evidence;
}

void refuse_what_does_not_fit(const Case& asked, const SolidBudget& budget)
{
    const std::int64_t needs = solid_memory(budget.dofs);
    if (budget.memory_limit == 0 || needs <= budget.memory_limit) return;
    const double fits = static_cast<double>(budget.memory_limit) / bytes_per_dof;
    throw CannotCompute(
        {asked.file, 0, 0, "--solid-dofs", fmt::format("{}", budget.dofs),
         fmt::format("a solid model of that many unknowns takes about {:.1f} GB, and {:.1f} GB are free",
                     static_cast<double>(needs) / 1e9, static_cast<double>(budget.memory_limit) / 1e9),
         fmt::format("ask for at most {:.0f} unknowns", std::floor(fits / 1000) * 1000)});
}

std::optional<SolidFields> fields_of(const SolidLevel& level, const SolidShowing& showing)
{
    if (showing.detail == SolidDetail::none) return std::nullopt;
    SolidFields fields = solid_fields(level, showing.load, showing.each);
    return showing.detail == SolidDetail::thinned ? thinned(fields) : std::move(fields);
}

SolidMeshSize mesh_size(const SolidBudget& budget)
{
    SolidMeshSize size{budget.dofs, 0.2, most_times_asked * budget.dofs};
    if (budget.memory_limit > 0)
        size.most_dofs = std::min(size.most_dofs,
                                  static_cast<std::size_t>(static_cast<double>(budget.memory_limit) / bytes_per_dof));
    return size;
}

}  // namespace

std::int64_t solid_memory(std::size_t dofs)
{
    return static_cast<std::int64_t>(bytes_per_dof * static_cast<double>(dofs));
}

SolidModelAnswer solid_model_answer(const Case& asked, const Scenario& scenario, const SolidBudget& budget,
                                    double target_pct, const SolidShowing& showing)
{
    refuse_what_does_not_fit(asked, budget);
    Case shown = asked;
    if (shown.sleeve && shown.sleeve->plugs.empty() && !scenario.sleeve_weld_fused[0] && !scenario.sleeve_weld_fused[1])
        shown.sleeve.reset();
    const NestedSolids meshes = nested_solid_meshes(shown, scenario, mesh_size(budget));
    SolidSettings settings;
    settings.n_threads = budget.n_threads;
    settings.memory_limit = budget.memory_limit;
    const auto solved = [&](LapContactUse use) -> std::array<SolidLevel, 2>
    {
        std::array<SolidLevel, 2> levels;
        levels[0] = solved_solid_level(shown, scenario, meshes.coarse, settings, use);
        levels[1] = solved_solid_level(shown, scenario, meshes.fine, settings, use, &levels[0]);
        return levels;
    };
    SolidModelAnswer result;
    std::array<SolidLevel, 2> levels;
    try
    {
        levels = solved(LapContactUse::solved);
    }
    catch (const ContactUnsettled& failure)
    {
        result.contact_left_out = failure.what();
        levels = solved(LapContactUse::left_out);
    }
    auto& [before, now] = levels;
    compare(now, before);
    result.fields = fields_of(now, showing);
    result.evidence = evidence_of(now, before);
    MeridianAnswer& answer = result.answer;
    answer.scenario = scenario;
    answer.evidence = common_evidence(result.evidence, now, target_pct);
    answer.sites = std::move(now.sites);
    answer.absent_sites = now.mesh.absent_sites;
    if (!result.contact_left_out.empty())
    {
        std::erase_if(answer.sites, [](const SiteAnswer& site) { return site.id.starts_with("lap-corner"); });
        answer.absent_sites.emplace_back("lap-corner: the contact that loads it did not settle");
    }
    answer.weld = now.weld;
    answer.share = now.share;
    answer.twist = now.twist, answer.end_rotation = now.end_rotation, answer.extension = now.extension;
    result.closes = now.closing_by_torque * std::abs(asked.load.peak_torque.value()) +
                    now.closing_by_bending * std::abs(asked.load.peak_bending.value()) +
                    now.closing_by_axial * std::abs(asked.load.axial.value());
    for (SolidBracket& bracket : now.brackets)
    {
        result.weld_metal.push_back(std::move(bracket.weld_metal));
        if (bracket.contact) result.contact = std::move(bracket.contact);
    }
    return result;
}

}  // namespace splicewright
