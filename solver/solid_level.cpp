// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_level.h"

#include <fmt/format.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <chrono>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "solver/meridian_level.h"
#include "solver/slit_ties.h"
#include "solver/solid_body.h"
#include "solver/solid_loads.h"
#include "solver/solid_weld.h"

namespace splicewright
{
namespace
{

// Of a tie in the normal direction, over E times the root of the area of its place: a layer of a hundredth of that root
// in thickness.
constexpr double tie_stiffness = 100;
constexpr double reaction_allowed = 1e-6, section_allowed = 1e-6;

using Clock = std::chrono::steady_clock;

double seconds_since(Clock::time_point start) { return std::chrono::duration<double>(Clock::now() - start).count(); }

std::vector<NodeForces> unit_forces(const SolidMesh& mesh)
{
    const Eigen::Vector3d left = face_area(mesh, "end.left").centre, right = face_area(mesh, "end.right").centre;
    const Eigen::Vector3d line = (right - left).normalized();
    const auto both_ends = [&](const Eigen::Vector3d& force, const Eigen::Vector3d& moment)
    {
        NodeForces forces = face_forces(mesh, "end.right", {force, moment});
        forces += face_forces(mesh, "end.left", {-force, -moment});
        return forces;
    };
    const Eigen::Vector3d none(0, 0, 0);
    return {both_ends(none, Eigen::Vector3d::UnitZ()), both_ends(none, -Eigen::Vector3d::UnitY()),
            both_ends(none, Eigen::Vector3d::UnitX()), both_ends(line, none)};
}

bool has_pairs(const SolidMesh& mesh, const std::string& name)
{
    const auto found = mesh.pairs.find(name);
    return found != mesh.pairs.end() && !found->second.empty();
}

std::vector<std::string> lap_faces(const SolidMesh& mesh)
{
    std::vector<std::string> faces;
    for (const char* name : {"lap", "land", "lap-corner.left", "lap-corner.right"})
        if (has_pairs(mesh, name)) faces.emplace_back(name);
    return faces;
}

double least_modulus(const std::vector<ElasticConstants>& steel)
{
    double least = INFINITY;
    for (const ElasticConstants& metal : steel) least = std::min(least, metal.E);
    return least;
}

// Solves a mesh in one bracket after the other.
class Solver
{
public:
    Solver(const Case& asked, SolidLevel& level, const SolidSettings& settings, LapContactUse use)
        : use_(use),
          asked_(asked),
          level_(level),
          mesh_(level.mesh.mesh),
          settings_(settings),
          loads_(unit_forces(mesh_))
    {
    }

    void solve()
    {
        const std::vector<std::string> lap =
            use_ == LapContactUse::solved ? lap_faces(mesh_) : std::vector<std::string>{};
        for (const Ties& ties : slit_ties(asked_))
        {
            // Free faces leave most to sleeve and welds. Faces that touch load the corners of the lap; what they hold
            // in tension during a part of a turn in bending would part, so that the sleeve is judged by the free ones
            // too.
            add(ties, {});
            if (!lap.empty()) add(ties, lap);
        }
    }

private:
    // touching: faces of the lap that touch; none: all are free.
    void add(const Ties& ties, const std::vector<std::string>& touching)
    {
        SolidBracket bracket;
        SolidBody body;
        body.steel = level_.steel;
        NodeForces press = NodeForces::Zero(3, static_cast<Eigen::Index>(mesh_.nodes.size()));
        const bool pressed = tie_slits(ties, body, press);
        if (!touching.empty()) body = with_closed_lap(std::move(body), touching, pressed ? &press : nullptr, bracket);
        std::vector<NodeForces> loads = loads_;
        if (pressed) loads.push_back(press);
        const Clock::time_point begin = Clock::now();
        const SolidSystem system(mesh_, body, settings_);
        level_.set_up_seconds += seconds_since(begin);
        const Clock::time_point ready = Clock::now();
        SolidSolution solution = system.solution(loads);
        level_.solve_seconds += seconds_since(ready);
        level_.bytes = std::max(level_.bytes, system.set_up().bytes + static_cast<std::int64_t>(loads.size()) *
                                                                          system.set_up().bytes_for_load);
        for (const SolidAnswer& answer : solution.loads)
        {
            level_.residual = std::max(level_.residual, answer.relative_residual);
            level_.reaction_imbalance = std::max(level_.reaction_imbalance, answer.reaction_imbalance);
            level_.iterations = std::max(level_.iterations, answer.iterations);
        }
        bracket.unit = {std::move(solution.loads[0].displacement),
                        std::move(solution.loads[1].displacement),
                        std::move(solution.loads[2].displacement),
                        std::move(solution.loads[3].displacement),
                        {}};
        if (pressed) bracket.unit.press = std::move(solution.loads[4].displacement);
        if (bracket.contact) judge_relief(bracket);
        level_.brackets.push_back(std::move(bracket));
    }

    // True with a press fit, whose forces are then in `press`.
    bool tie_slits(const Ties& ties, SolidBody& body, NodeForces& press) const
    {
        const std::array<double, 2> overlap = press_overlap(asked_);
        bool pressed = false;
        for (const Side side : both_sides)
            for (const char* face : {"slit.", "butt-surface."})
            {
                const std::string name = face + std::string(name_of(side));
                const FaceTie tie = ties.slit[index(side)];
                if (tie == FaceTie::free || !has_pairs(mesh_, name)) continue;
                if (tie == FaceTie::merged)
                {
                    const auto& pairs = mesh_.pairs.at(name);
                    body.bonded.insert(body.bonded.end(), pairs.begin(), pairs.end());
                    continue;
                }
                const double gap = -overlap[index(side)];
                pressed = pressed || gap != 0;
                for (const ContactPlace& place : contact_surface(mesh_, name, [](auto&) { return 0.0; }).places)
                    hold(place, gap, body, press);
            }
        return pressed;
    }

    void hold(const ContactPlace& place, double gap, SolidBody& body, NodeForces& press) const
    {
        if (place.first == place.second) return;
        const double stiffness = tie_stiffness * least_modulus(level_.steel) * std::sqrt(place.area);
        body.springs.push_back({place.first, place.second, place.normal, stiffness});
        press.col(place.second) -= stiffness * gap * place.normal;
        press.col(place.first) += stiffness * gap * place.normal;
    }

    // The faces that the peak load presses together are held in their normal direction for all unit loads.
    SolidBody with_closed_lap(SolidBody body, const std::vector<std::string>& lap, const NodeForces* press,
                              SolidBracket& bracket)
    {
        LapContact contact;
        for (const std::string& name : lap)
            contact.surfaces.push_back(contact_surface(mesh_, name, [](auto&) { return 0.0; }));
        const double torque = asked_.load.peak_torque.value();
        NodeForces load = (torque != 0 ? torque : 1.0) * loads_[0] + asked_.load.axial.value() * loads_[3];
        if (press != nullptr) load += *press;
        const Clock::time_point begin = Clock::now();
        SolidContact system(mesh_, body, contact.surfaces, settings_);
        ContactAnswer answer = system.solution(mesh_, load);
        level_.solve_seconds += seconds_since(begin);
        level_.residual = std::max(level_.residual, answer.solid.relative_residual);
        contact.penetration = answer.penetration, contact.tension = answer.tension;
        contact.peak_pressure = answer.peak_pressure;
        contact.closed = answer.closed, contact.steps = answer.steps;
        for (std::size_t s = 0; s < contact.surfaces.size(); ++s)
        {
            contact.torque += answer.surfaces[s].moment.z();
            const std::vector<ContactPlace>& places = contact.surfaces[s].places;
            contact.places += static_cast<int>(places.size());
            for (std::size_t i = 0; i < places.size(); ++i)
            {
                if (answer.surfaces[s].force[i] <= 0 || places[i].first == places[i].second) continue;
                body.springs.push_back({places[i].first, places[i].second, places[i].normal,
                                        tie_stiffness * least_modulus(level_.steel) * std::sqrt(places[i].area)});
            }
        }
        contact.states = std::move(answer.surfaces);
        bracket.contact = std::move(contact);
        return body;
    }

    // Over all closed places together: what bending takes away of the pressing force, at its worst direction.
    void judge_relief(SolidBracket& bracket) const
    {
        LapContact& contact = *bracket.contact;
        const double bending = asked_.load.peak_bending.value();
        double pressed = 0, taken = 0;
        for (std::size_t s = 0; s < contact.surfaces.size(); ++s)
            for (std::size_t i = 0; i < contact.surfaces[s].places.size(); ++i)
            {
                const ContactPlace& place = contact.surfaces[s].places[i];
                const double force = contact.states[s].force[i];
                if (force <= 0 || place.first == place.second) continue;
                const double stiffness = tie_stiffness * least_modulus(level_.steel) * std::sqrt(place.area);
                const auto opens = [&](const Eigen::Matrix3Xd& u)
                { return stiffness * place.normal.dot(u.col(place.second) - u.col(place.first)); };
                pressed += force;
                taken += std::abs(bending) * std::hypot(opens(bracket.unit.towards_x), opens(bracket.unit.towards_y));
            }
        contact.relieved_by_bending = pressed > 0 ? taken / pressed : 0;
    }

    LapContactUse use_;
    const Case& asked_;
    SolidLevel& level_;
    const SolidMesh& mesh_;
    const SolidSettings& settings_;
    std::vector<NodeForces> loads_;
};

void read_sites(const Case& asked, const Scenario& scenario, SolidLevel& level)
{
    const std::vector<SolidSite> paths = solid_sites(asked, scenario, level.mesh.mesh);
    std::vector<SiteAnswer> sites(paths.size());
    for (const SolidBracket& bracket : level.brackets)
    {
        const SolidSurfaces surfaces(level.mesh.mesh, level.steel, bracket.unit);
        for (std::size_t i = 0; i < paths.size(); ++i)
        {
            SiteAnswer& site = sites[i];
            site.id = paths[i].id;
            add_bracket(site, surfaces.at(paths[i]));
        }
    }
    for (SiteAnswer& site : sites)
        if (site.brackets.front().z.size() > 0) level.sites.push_back(std::move(site));
}

std::int32_t region_named(const SolidLevel& level, const std::string& name)
{
    const auto found = std::ranges::find(level.mesh.regions, name);
    return found == level.mesh.regions.end() ? -1 : static_cast<std::int32_t>(found - level.mesh.regions.begin());
}

// Forces on the right half of the sleeve at the joint plane.
Resultant sleeve_at_joint(const SolidLevel& level, const Eigen::Matrix3Xd& displacement)
{
    const std::int32_t left = region_named(level, "sleeve.left"), right = region_named(level, "sleeve.right");
    const SharedForces forces = shared_forces(level.mesh.mesh, level.steel, displacement, right,
                                              [&](std::int32_t other) { return other == left; });
    return resultant_of(forces.place, forces.force);
}

// Relative turn of the ends about an axis, or their relative motion, by the work of the unit load.
double work(const NodeForces& forces, const Eigen::Matrix3Xd& displacement)
{
    return forces.cwiseProduct(displacement).sum();
}

void read_sections(const Case& asked, SolidLevel& level)
{
    const std::vector<NodeForces> loads = unit_forces(level.mesh.mesh);
    const SolidUnitDisplacements& unit = level.brackets.front().unit;
    level.twist.value = work(loads[0], unit.torsion);
    level.end_rotation.value = std::max(work(loads[1], unit.towards_x), work(loads[2], unit.towards_y));
    level.extension.value = work(loads[3], unit.axial);
    if (!asked.sleeve) return;
    level.share.torsion.value = std::abs(sleeve_at_joint(level, unit.torsion).moment.z());
    level.share.bending.value = std::max(std::abs(sleeve_at_joint(level, unit.towards_x).moment.y()),
                                         std::abs(sleeve_at_joint(level, unit.towards_y).moment.x()));
    level.share.axial.value = std::abs(sleeve_at_joint(level, unit.axial).force.z());
}

// Largest closing movement of the free faces of the slit, mm per unit load.
double closing(const SolidMesh& mesh, const std::vector<const Eigen::Matrix3Xd*>& directions)
{
    double worst = 0;
    for (const char* name : {"slit.left", "slit.right"})
    {
        if (!has_pairs(mesh, name)) continue;
        for (const SolidMesh::NodePair& pair : mesh.pairs.at(name))
        {
            const auto& p = mesh.nodes[static_cast<std::size_t>(pair.first)];
            const Eigen::Vector3d outward = Eigen::Vector3d(p[0], p[1], 0).normalized();
            double squares = 0;
            for (const Eigen::Matrix3Xd* u : directions)
                squares += std::pow(outward.dot(u->col(pair.second) - u->col(pair.first)), 2);
            worst = std::max(worst, std::sqrt(squares));
        }
    }
    return worst;
}

void refuse_poor_balance(const SolidLevel& level)
{
    if (level.reaction_imbalance <= reaction_allowed && level.section_imbalance <= section_allowed) return;
    throw CannotCompute({"", 0, 0, "solid model", "",
                         fmt::format("forces of the solution do not balance: {:.1e} (allowed {:.0e})",
                                     std::max(level.reaction_imbalance, level.section_imbalance), reaction_allowed),
                         "please report this case file"});
}

}  // namespace

SolidLevel solved_solid_level(const Case& asked, const Scenario& scenario, SolidMeshAnswer mesh,
                              const SolidSettings& settings, LapContactUse use)
{
    SolidLevel level;
    level.mesh = std::move(mesh);
    level.steel = steel_by_region(asked, level.mesh.regions);
    Solver(asked, level, settings, use).solve();
    const Clock::time_point solved = Clock::now();
    read_sites(asked, scenario, level);
    read_sections(asked, level);
    const SolidUnitDisplacements& unit = level.brackets.front().unit;
    level.closing_by_torque = closing(level.mesh.mesh, {&unit.torsion});
    level.closing_by_bending = closing(level.mesh.mesh, {&unit.towards_x, &unit.towards_y});
    level.closing_by_axial = closing(level.mesh.mesh, {&unit.axial});
    for (SolidBracket& bracket : level.brackets) bracket.weld_metal = weld_metal_forces(asked, level, bracket);
    if (asked.sleeve && asked.sleeve->weld.goes_all_round())
        for (const Side side : both_sides)
            if (scenario.sleeve_weld_fused[index(side)]) level.weld[index(side)] = solid_weld_force(asked, level, side);
    refuse_poor_balance(level);
    level.recover_seconds = seconds_since(solved);
    return level;
}

}  // namespace splicewright
