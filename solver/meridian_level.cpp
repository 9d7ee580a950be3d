// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/meridian_level.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <numbers>

#include "cases/bar_shape.h"
#include "cases/problem.h"
#include "mesh/gmsh_mesher.h"
#include "solver/fit_pressure.h"
#include "solver/hot_spot.h"
#include "solver/kept_places.h"
#include "solver/recover_stress.h"
#include "solver/slit_ties.h"

namespace splicewright
{
namespace
{

double seconds_since(std::chrono::steady_clock::time_point start)
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

bool has(const Case& asked, SlitState state)
{
    return asked.sleeve && (asked.sleeve->slit[0] == state || asked.sleeve->slit[1] == state);
}

// torsion: where a bracket before has it already, which no tie but a merged one changes.
Bracket solved_bracket(const Case& asked, const Mesh& mesh, const std::vector<ElasticConstants>& steel,
                       const Ties& ties, const UnitSolution* torsion)
{
    Ties with_overlap = ties;
    with_overlap.overlap = press_overlap(asked);
    const Elimination order = elimination_of(mesh, ties);
    std::vector<Outside> pulled{Outside::unit_load};
    if (has(asked, SlitState::press)) pulled.push_back(Outside::none);
    Bracket bracket;
    bracket.torsion = torsion ? *torsion : unit_solution(mesh, steel, LoadKind::torsion, ties, order);
    const std::vector<UnitSolution> axial = unit_solutions(mesh, steel, LoadKind::axial, with_overlap, order, pulled);
    bracket.axial = axial.front();
    if (pulled.size() > 1) bracket.press = axial.back();
    bracket.bending = unit_solution(mesh, steel, LoadKind::bending, ties, order);
    return bracket;
}

SurfaceStress joined_stress(const std::vector<SurfaceStress>& parts)
{
    Eigen::Index n = 0;
    for (const SurfaceStress& part : parts) n += part.along.size();
    SurfaceStress all = zero_surface_stress(n);
    Eigen::Index at = 0;
    for (const SurfaceStress& part : parts)
    {
        for (const auto member : surface_stress_parts) (all.*member).segment(at, part.along.size()) = part.*member;
        at += part.along.size();
    }
    return all;
}

class SiteReader
{
public:
    SiteReader(const Case& asked, const Level& level, const Bracket& bracket)
        : level_(level), bracket_(bracket), butt_is_free_(!has(asked, SlitState::bonded))
    {
        if (!butt_is_free_) nodes_ = region_nodes(level.mesh);
        for (const Side side : both_sides)
            if (asked.sleeve && (asked.sleeve->slit[index(side)] == SlitState::snug ||
                                 asked.sleeve->slit[index(side)] == SlitState::press))
                butt_zone_[index(side)] = butt_zone_end(side) - clear_of_held_slit;
    }

    SiteStress read(const SitePath& path)
    {
        std::vector<double> z, r;
        std::vector<SurfaceStress> torsion, bending, axial, press;
        for (const SurfaceChain& chain : path.chains)
        {
            SurfacePlaces places = kept_places(surface_places(level_.mesh, chain), path.free_of_ends);
            if (path.id == "butt-surface") places = clear_places(places, butt_zone_);
            z.insert(z.end(), places.z.begin(), places.z.end());
            r.insert(r.end(), places.r.begin(), places.r.end());
            torsion.push_back(stress(path, chain, places, bracket_.torsion));
            bending.push_back(stress(path, chain, places, bracket_.bending));
            axial.push_back(stress(path, chain, places, bracket_.axial));
            if (bracket_.press) press.push_back(stress(path, chain, places, *bracket_.press));
        }
        SiteStress site;
        site.z = Eigen::Map<Eigen::VectorXd>(z.data(), static_cast<Eigen::Index>(z.size()));
        site.r = Eigen::Map<Eigen::VectorXd>(r.data(), static_cast<Eigen::Index>(r.size()));
        site.torsion = joined_stress(torsion);
        site.bending = joined_stress(bending);
        site.axial = joined_stress(axial);
        site.press = joined_stress(press);
        return site;
    }

private:
    double butt_zone_end(Side side) const
    {
        double end = 0;
        const auto found = level_.mesh.curve.find(std::string("butt-surface.") + name_of(side));
        if (found == level_.mesh.curve.end()) return end;
        for (const MeshEdge& edge : found->second)
            for (const int node : {edge.first, edge.last}) end = std::max(end, std::abs(level_.mesh.node(0, node)));
        return end;
    }

    SurfaceStress stress(const SitePath& path, const SurfaceChain& chain, const SurfacePlaces& places,
                         const UnitSolution& solution) const
    {
        if (!path.lies_in_slit || butt_is_free_) return free_surface_stress(level_.mesh, chain, places, solution);
        return loaded_surface_stress(level_.mesh, chain, places, nodes_,
                                     recovered_stress(level_.mesh, nodes_, level_.steel, solution));
    }

    const Level& level_;
    const Bracket& bracket_;
    bool butt_is_free_;
    std::array<double, 2> butt_zone_{INFINITY, INFINITY};  // [left, right] mm from the joint: what counts of the butt
    RegionNodes nodes_;
};

UnitPeak unit_peak(const SitePeak& peak) { return {{peak.von_mises, 0}, {peak.principal, 0}, {peak.shear, 0}}; }

UnitPeak worse(const UnitPeak& a, const UnitPeak& b)
{
    return {{std::max(a.von_mises.value, b.von_mises.value), 0},
            {std::max(a.principal.value, b.principal.value), 0},
            {std::max(a.shear.value, b.shear.value), 0}};
}

// Names of curves whose faces touch, or their beginnings.
std::vector<std::string> held_curves(const Case& asked)
{
    std::vector<std::string> held;
    for (const Side side : both_sides)
        if (asked.sleeve && asked.sleeve->slit[index(side)] != SlitState::open)
            for (const char* curve : {"slit.", "butt-surface."}) held.push_back(std::string(curve) + name_of(side));
    return held;
}

std::vector<SiteAnswer> read_sites(const Case& asked, const Level& level)
{
    const std::vector<SitePath> paths = site_paths(level.mesh, level.steel, held_curves(asked));
    std::vector<SiteAnswer> sites(paths.size());
    for (std::size_t b = 0; b < level.brackets.size(); ++b)
    {
        SiteReader reader(asked, level, level.brackets[b]);
        for (std::size_t i = 0; i < paths.size(); ++i)
        {
            SiteAnswer& site = sites[i];
            site.id = paths[i].id;
            add_bracket(site, reader.read(paths[i]));
        }
    }
    return sites;
}

WeldForce weld_force(const Case& asked, const Level& level, Side side)
{
    const std::string s = name_of(side);
    WeldForce weld;
    weld.radius = weld_throat(asked, side).radius;
    const double ring = 2 * std::numbers::pi * weld.radius, half_ring = ring / 2;
    const double outward = side == Side::right ? 1 : -1;
    const auto larger = [](double& keep, double candidate)
    {
        if (std::abs(candidate) > std::abs(keep)) keep = candidate;
    };
    for (const Bracket& bracket : level.brackets)
    {
        const auto force = [&](const UnitSolution& solution)
        { return section_force(level.mesh, level.steel, solution, "fusion sleeve." + s, "fillet." + s); };
        const SectionForce torsion = force(bracket.torsion), bending = force(bracket.bending),
                           axial = force(bracket.axial);
        larger(weld.torsion_tangential, -torsion.moment / (weld.radius * ring));
        larger(weld.bending_outward, -outward * bending.axial / half_ring);
        larger(weld.bending_radial, -bending.radial / half_ring);
        larger(weld.bending_tangential, -bending.tangential / half_ring);
        larger(weld.axial_outward, -outward * axial.axial / ring);
        larger(weld.axial_radial, -axial.radial / ring);
    }
    return weld;
}

void read_sections(const Case& asked, const Scenario& scenario, Level& level)
{
    const Bracket& first = level.brackets.front();
    level.twist.value = first.torsion.work;
    level.end_rotation.value = first.bending.work;
    level.extension.value = first.axial.work;
    if (!asked.sleeve) return;
    // A bar that has lost its butt weld still hangs on a bonded sleeve, down to the corner of its end face.
    const std::string joint_face = level.mesh.curve.contains("butt") ? "butt" : "land";
    double imbalance = 0;
    const auto share = [&](const UnitSolution& solution, double SectionForce::*part)
    {
        const double sleeve = section_force(level.mesh, level.steel, solution, "sleeve section", "sleeve.right").*part;
        const double butt = section_force(level.mesh, level.steel, solution, joint_face, "bar.right").*part;
        imbalance = std::max(imbalance, std::abs(std::abs(sleeve + butt) - 1));
        return std::abs(sleeve);
    };
    level.share.torsion.value = share(first.torsion, &SectionForce::moment);
    level.share.bending.value = share(first.bending, &SectionForce::moment);
    level.share.axial.value = share(first.axial, &SectionForce::axial);
    level.section_imbalance = imbalance;
    for (const Side side : both_sides)
        if (scenario.sleeve_weld_fused[index(side)]) level.weld[index(side)] = weld_force(asked, level, side);
}

void refuse_poor_balance(const Level& level)
{
    if (level.section_imbalance <= section_imbalance_allowed) return;
    throw CannotCompute({"", 0, 0, "solver", "",
                         fmt::format("sleeve and butt do not add up to the load at the joint: {:.1e} (allowed {:.0e})",
                                     level.section_imbalance, section_imbalance_allowed),
                         "please report this case file"});
}

void collect_evidence(Level& level)
{
    const auto take = [&](const UnitSolution& solution)
    {
        level.residual = std::max(level.residual, solution.residual);
        level.reaction_imbalance = std::max(level.reaction_imbalance, solution.reaction_imbalance);
        level.unknowns += solution.n_free;
    };
    for (const Bracket& bracket : level.brackets)
    {
        take(bracket.torsion), take(bracket.bending), take(bracket.axial);
        if (bracket.press) take(*bracket.press);
    }
}

}  // namespace

double closing_movement(const Mesh& mesh, const UnitSolution& solution)
{
    const int n = unknowns_per_node(solution.kind);
    double worst = 0;
    for (const FacePair& pair : mesh.pair)
    {
        if (!pair.curve.starts_with("slit")) continue;
        const auto jump = [&](int c) { return solution.u(pair.outer * n + c) - solution.u(pair.inner * n + c); };
        worst = std::max(worst, std::abs(pair.normal(0) * jump(n - 1) + pair.normal(1) * jump(0)));
    }
    return worst;
}

void add_bracket(SiteAnswer& site, SiteStress stress)
{
    site.brackets.push_back(std::move(stress));
    const SiteStress& read = site.brackets.back();
    if (read.z.size() == 0) return;
    const SitePeak torsion = site_peak(read, {1, 0, 0, 0});
    site.torsion = worse(site.torsion, unit_peak(torsion));
    site.bending = worse(site.bending, unit_peak(site_peak(read, {0, 1, 0, 0})));
    site.axial = worse(site.axial, unit_peak(site_peak(read, {0, 0, 1, 0})));
    site.z = torsion.z;
    site.r = torsion.r;
}

Level solved_level(const Case& asked, const Scenario& scenario, const Outline& outline, const MeshSize& size)
{
    Level level;
    const auto start = std::chrono::steady_clock::now();
    level.mesh = generate_mesh(outline, size);
    level.steel = steel_by_region(asked, level.mesh.region);
    level.mesh_seconds = seconds_since(start);
    const auto meshed = std::chrono::steady_clock::now();
    for (const Ties& ties : slit_ties(asked))
    {
        const UnitSolution* torsion = level.brackets.empty() ? nullptr : &level.brackets.front().torsion;
        level.brackets.push_back(solved_bracket(asked, level.mesh, level.steel, ties, torsion));
    }
    level.solve_seconds = seconds_since(meshed);
    const auto solved = std::chrono::steady_clock::now();
    level.sites = read_sites(asked, level);
    read_sections(asked, scenario, level);
    level.hot_spots = hot_spots(asked, level);
    if (level.brackets.front().press)
        level.fit_pressure.value = fit_pressure(asked, level.mesh, level.steel, *level.brackets.front().press);
    collect_evidence(level);
    refuse_poor_balance(level);
    level.recover_seconds = seconds_since(solved);
    return level;
}

SolvedFields solved_fields(Level&& level)
{
    SolvedFields fields;
    const Bracket& first = level.brackets.front();
    fields.region_nodes = region_nodes(level.mesh);
    const auto stress = [&](const UnitSolution& solution)
    { return recovered_stress(level.mesh, fields.region_nodes, level.steel, solution); };
    fields.torsion = stress(first.torsion);
    fields.bending = stress(first.bending);
    fields.axial = stress(first.axial);
    fields.torsion_displacement = displacement_amplitude(first.torsion);
    fields.bending_displacement = displacement_amplitude(first.bending);
    fields.axial_displacement = displacement_amplitude(first.axial);
    if (first.press)
    {
        fields.press = stress(*first.press);
        fields.press_displacement = displacement_amplitude(*first.press);
    }
    fields.mesh = std::move(level.mesh);
    return fields;
}

}  // namespace splicewright
