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
#include "solver/solid_nested.h"
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

// Of all unit loads, in the order of the solutions; press only where there is a fit.
std::vector<const Eigen::Matrix3Xd*> displacements_of(const SolidUnitDisplacements& unit)
{
    std::vector<const Eigen::Matrix3Xd*> all{&unit.torsion, &unit.towards_x, &unit.towards_y, &unit.axial};
    if (unit.press.cols() > 0) all.push_back(&unit.press);
    return all;
}

// Solves a mesh in one bracket after the other.
class Solver
{
public:
    Solver(const Case& asked, SolidLevel& level, const SolidSettings& settings, LapContactUse use,
           const SolidLevel* coarser)
        : use_(use),
          asked_(asked),
          level_(level),
          mesh_(level.mesh.mesh),
          settings_(settings),
          coarser_(coarser),
          loads_(unit_forces(mesh_))
    {
    }

    void solve()
    {
        const std::vector<std::string> lap =
            use_ == LapContactUse::solved ? lap_faces(mesh_) : std::vector<std::string>{};
        for (const Ties& ties : slit_ties(asked_))
        {
            SolidBody body;
            body.steel = level_.steel;
            NodeForces press = NodeForces::Zero(3, static_cast<Eigen::Index>(mesh_.nodes.size()));
            std::vector<NodeForces> loads = loads_;
            if (tie_slits(ties, body, press)) loads.push_back(press);
            const Clock::time_point begin = Clock::now();
            SolidSystem system(mesh_, std::move(body), settings_);
            level_.set_up_seconds += seconds_since(begin);
            level_.bytes = std::max(level_.bytes, system.set_up().bytes + static_cast<std::int64_t>(loads.size()) *
                                                                              system.set_up().bytes_for_load);
            // Free faces leave most to sleeve and welds. Faces that touch load the corners of the lap; what they hold
            // in tension during a part of a turn in bending would part, so that the sleeve is judged by the free ones
            // too.
            add_free(system, loads);
            if (!lap.empty()) add_touching(system, loads, lap);
        }
    }

private:
    // What the coarser mesh found for the bracket that comes next; empty without one.
    [[nodiscard]] std::vector<Eigen::Matrix3Xd> carried() const
    {
        if (coarser_ == nullptr) return {};
        const SolidBracket& before = coarser_->brackets[level_.brackets.size()];
        return carried_to_finer(coarser_->mesh.mesh, mesh_, displacements_of(before.unit));
    }

    // With all faces of a lap free.
    void add_free(const SolidSystem& system, const std::vector<NodeForces>& loads)
    {
        const Clock::time_point begin = Clock::now();
        SolidStart start;
        start.displacements = carried();
        SolidSolution solution = system.solution(loads, start);
        level_.solve_seconds += seconds_since(begin);
        SolidBracket bracket;
        bracket.unit = kept(std::move(solution.loads));
        level_.brackets.push_back(std::move(bracket));
    }

    // touching: faces of the lap that touch.
    void add_touching(SolidSystem& system, const std::vector<NodeForces>& loads,
                      const std::vector<std::string>& touching)
    {
        const Clock::time_point begin = Clock::now();
        LapContact contact;
        for (const std::string& name : touching)
            contact.surfaces.push_back(contact_surface(mesh_, name, [](auto&) { return 0.0; }));
        const double torque = asked_.load.peak_torque.value();
        std::vector<ContactUnit> units;
        const std::array<double, 5> factors{torque != 0 ? torque : 1.0, 0, 0, asked_.load.axial.value(), 1};
        for (std::size_t k = 0; k < loads.size(); ++k) units.push_back({loads[k], factors[k]});
        ContactSettings asked;
        asked.nominal_stress = nominal_stress(factors[0]);
        ContactAnswer answer = SolidContact(mesh_, system, contact.surfaces, settings_, asked)
                                   .solution(mesh_, units, contact_start(contact.surfaces, factors));
        level_.solve_seconds += seconds_since(begin);
        contact.penetration = answer.penetration, contact.tension = answer.tension;
        contact.peak_pressure = answer.peak_pressure;
        contact.closed = answer.closed, contact.steps = answer.steps;
        for (const ContactState& state : answer.surfaces) contact.torque += state.moment.z();
        for (const ContactSurface& surface : contact.surfaces)
            contact.places += static_cast<int>(surface.places.size());
        contact.relieved_by_bending = relief(answer);
        contact.states = std::move(answer.surfaces);
        SolidBracket bracket;
        bracket.unit = kept(std::move(answer.units));
        bracket.contact = std::move(contact);
        level_.brackets.push_back(std::move(bracket));
    }

    // Von Mises stress of the load in the thinner bar beside the joint as if it were solid, MPa.
    [[nodiscard]] double nominal_stress(double torque) const
    {
        const double d = std::min(asked_.bar[0]->sections.front().diameter.value(),
                                  asked_.bar[1]->sections.front().diameter.value());
        const double area = std::numbers::pi * d * d / 4;
        return std::hypot(asked_.load.axial.value() / area, std::sqrt(3.0) * 4 * torque / (area * d));
    }

    // Where the coarser mesh ended; else where the free faces overlap.
    [[nodiscard]] ContactStart contact_start(const std::vector<ContactSurface>& surfaces,
                                             const std::array<double, 5>& factors) const
    {
        ContactStart start;
        if (coarser_ != nullptr)
        {
            const LapContact& before = *coarser_->brackets[level_.brackets.size()].contact;
            for (std::size_t s = 0; s < surfaces.size(); ++s)
                start.closed.push_back(
                    closed_as(before.surfaces[s], before.states[s], surfaces[s], coarser_->mesh.mesh, mesh_));
            start.displacements = carried();
            return start;
        }
        for (const Eigen::Matrix3Xd* u : displacements_of(level_.brackets.back().unit))
            start.displacements.push_back(*u);
        for (const ContactSurface& surface : surfaces)
        {
            std::vector<bool> closed;
            for (const ContactPlace& place : surface.places)
            {
                double gap = place.gap;
                for (std::size_t k = 0; k < start.displacements.size(); ++k)
                    gap += factors[k] * place.normal.dot(start.displacements[k].col(place.second) -
                                                         start.displacements[k].col(place.first));
                closed.push_back(gap < 0);
            }
            start.closed.push_back(std::move(closed));
        }
        return start;
    }

    // Takes the displacements over, and what the solutions say of themselves.
    SolidUnitDisplacements kept(std::vector<SolidAnswer> loads)
    {
        for (const SolidAnswer& answer : loads)
        {
            level_.residual = std::max(level_.residual, answer.relative_residual);
            level_.reaction_imbalance = std::max(level_.reaction_imbalance, answer.reaction_imbalance);
            level_.iterations = std::max(level_.iterations, answer.iterations);
        }
        SolidUnitDisplacements unit{std::move(loads[0].displacement),
                                    std::move(loads[1].displacement),
                                    std::move(loads[2].displacement),
                                    std::move(loads[3].displacement),
                                    {}};
        if (loads.size() > 4) unit.press = std::move(loads[4].displacement);
        return unit;
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

    // Over all closed places together: what bending takes away of the pressing force, at its worst direction.
    [[nodiscard]] double relief(const ContactAnswer& answer) const
    {
        const double bending = asked_.load.peak_bending.value();
        double pressed = 0, taken = 0;
        for (std::size_t s = 0; s < answer.surfaces.size(); ++s)
            for (std::size_t i = 0; i < answer.surfaces[s].force.size(); ++i)
            {
                pressed += answer.surfaces[s].force[i];
                taken += std::abs(bending) * std::hypot(answer.unit_forces[1][s][i], answer.unit_forces[2][s][i]);
            }
        return pressed > 0 ? taken / pressed : 0;
    }

    LapContactUse use_;
    const Case& asked_;
    SolidLevel& level_;
    const SolidMesh& mesh_;
    const SolidSettings& settings_;
    const SolidLevel* coarser_;
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
                              const SolidSettings& settings, LapContactUse use, const SolidLevel* coarser)
{
    SolidLevel level;
    level.mesh = std::move(mesh);
    level.steel = steel_by_region(asked, level.mesh.regions);
    Solver(asked, level, settings, use, coarser).solve();
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
