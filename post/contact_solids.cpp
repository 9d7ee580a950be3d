// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/contact_solids.h"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "solver/regular_solids.h"
#include "solver/solid_loads.h"

namespace splicewright::exact
{

namespace
{

using regular::box;
using regular::Curving;
using regular::everywhere;
using regular::hold;
using regular::move_nodes;
using regular::place;
using regular::round_bar;
using regular::set_regions;
using regular::split_between;

constexpr double pi = std::numbers::pi;
const ElasticConstants steel{210000, 0.3};
constexpr double strip = 2.5;  // of half-widths that are meshed evenly

double plane_modulus() { return steel.E / (1 - steel.nu * steel.nu); }

NodeForces no_load(const SolidMesh& mesh) { return NodeForces::Zero(3, static_cast<Eigen::Index>(mesh.nodes.size())); }

}  // namespace

ContactAnswer contact_answer(const TouchingSolids& solids)
{
    ContactSettings contact;
    contact.friction = solids.friction;
    return SolidContact(solids.mesh, solids.body, {solids.surface}, {}, contact).solution(solids.mesh, solids.load);
}

double PressFitSolids::pressure()
{
    return plane_modulus() * interference * (sleeve * sleeve - bar * bar) / (2 * bar * sleeve * sleeve);
}

TouchingSolids press_fit(int rings)
{
    using Fit = PressFitSolids;
    TouchingSolids made{round_bar({Fit::sleeve, Fit::thick, rings, rings / 2, Curving::all}), {}, {}, {}};
    made.body.steel = {steel, steel};
    // Chords lie inside the circle by this factor.
    const double chord = std::cos(pi / (3 * rings));
    set_regions(made.mesh, [&](const Eigen::Vector3d& p) { return p.head<2>().norm() > Fit::bar * chord ? 1 : 0; });
    split_between(made.mesh, 0, 1, "fit", everywhere);
    hold(made.body, made.mesh,
         [](const Eigen::Vector3d& p)
         {
             return (std::abs(p.x()) < 1e-9 ? 1 : 0) + (std::abs(p.y()) < 1e-9 ? 2 : 0) +
                    (p.z() == 0 || p.z() == Fit::thick ? 4 : 0);
         });
    made.surface = contact_surface(made.mesh, "fit", [](const Eigen::Vector3d&) { return -Fit::interference; });
    made.load = no_load(made.mesh);
    return made;
}

double HertzSolids::half_width() { return std::sqrt(4 * load * radius / (pi * plane_modulus() / 2)); }

double HertzSolids::peak_pressure() { return std::sqrt(load * plane_modulus() / 2 / (pi * radius)); }

double HertzSolids::pressure(const Eigen::Vector3d& place, double half_width)
{
    const double x = place.x() / half_width;
    return std::abs(x) < 1 ? 2 * load / (pi * half_width) * std::sqrt(1 - x * x) : 0;
}

double even_size(int n) { return strip * HertzSolids::half_width() / n; }

namespace
{

// Two blocks with the gap of a cylinder between; `whole`: on both sides of the middle, else on one.
TouchingSolids touching_blocks(int n, bool whole)
{
    using Hertz = HertzSolids;
    const double h = even_size(n), even = n * h;
    // Outside each element is larger than the one before by about 2 / n.
    const int outer = static_cast<int>(std::ceil(std::log(Hertz::block / even) / std::log1p(1.0 / n) / 2));
    const auto graded = [&](double part)
    {
        const double i = part * (n + outer);
        return i <= n ? i * h : even * std::pow(Hertz::block / even, (i - n) / outer);
    };
    const auto both_ways = [&](double part)
    {
        const double s = 2 * part - 1;
        return std::copysign(graded(std::abs(s)), s);
    };
    TouchingSolids made{box({1, h, 1, (whole ? 2 : 1) * (n + outer), 1, 2 * (n + outer)}), {}, {}, {}};
    move_nodes(made.mesh, [&](const Eigen::Vector3d& p)
               { return Eigen::Vector3d(whole ? both_ways(p.x()) : graded(p.x()), p.y(), both_ways(p.z())); });
    made.body.steel = {steel, steel};
    set_regions(made.mesh, [](const Eigen::Vector3d& p) { return p.z() > 0 ? 1 : 0; });
    split_between(made.mesh, 0, 1, "touch", everywhere);
    made.surface = contact_surface(made.mesh, "touch",
                                   [](const Eigen::Vector3d& p) { return p.x() * p.x() / (2 * Hertz::radius); });
    made.load = pressure_forces(made.mesh, "right", Hertz::load / (2 * Hertz::block));
    return made;
}

}  // namespace

TouchingSolids cylinder_on_flat(int n)
{
    TouchingSolids made = touching_blocks(n, false);
    hold(made.body, made.mesh,
         [](const Eigen::Vector3d& p)
         { return (p.x() == 0 ? 1 : 0) + 2 + (p.z() < -HertzSolids::block * (1 - 1e-9) ? 4 : 0); });
    return made;
}

double PushedSolids::stuck_half_width() { return HertzSolids::half_width() * std::sqrt(1 - share); }

double PushedSolids::traction(const Eigen::Vector3d& place, double stuck_half_width)
{
    const double b = HertzSolids::half_width(), c = stuck_half_width, x = place.x();
    const auto arc = [&](double half_width)
    { return std::abs(x) < half_width ? std::sqrt(1 - x * x / (half_width * half_width)) : 0; };
    return friction * HertzSolids::peak_pressure() * (arc(b) - c / b * arc(c));
}

TouchingSolids pushed_cylinder(int n, double share)
{
    using Hertz = HertzSolids;
    using Pushed = PushedSolids;
    TouchingSolids made = touching_blocks(n, true);
    made.friction = Pushed::friction;
    // Both blocks bend alike: the lower one stands on its load as well, and what holds it takes nothing.
    hold(made.body, made.mesh,
         [](const Eigen::Vector3d& p)
         {
             const bool at_edge = p.z() < -Hertz::block * (1 - 1e-9) && std::abs(p.x()) > Hertz::block * (1 - 1e-9);
             return 2 + (at_edge ? 4 : 0) + (at_edge && p.x() < 0 ? 1 : 0);
         });
    const double push = share * Pushed::friction * Hertz::load * even_size(n);
    made.load += face_forces(made.mesh, "right", {{push, 0, 0}, {0, -push * Hertz::block, 0}});
    made.load += face_forces(made.mesh, "left", {{-push, 0, 0}, {0, -push * Hertz::block, 0}});
    made.load += pressure_forces(made.mesh, "left", Hertz::load / (2 * Hertz::block));
    return made;
}

// The mean distance of half an ellipse of pressure from the middle is 4 b / (3 pi).
double contact_half_width(const TouchingSolids& solids, const ContactState& state)
{
    double moment = 0, force = 0;
    for (std::size_t i = 0; i < solids.surface.places.size(); ++i)
    {
        const auto node = static_cast<std::size_t>(solids.surface.places[i].first);
        force += state.force[i];
        moment += state.force[i] * place(solids.mesh, node).x();
    }
    EXPECTS(force > 0);
    return 3 * pi / 4 * moment / force;
}

TouchingSolids twisted_lap(int rings, double torque)
{
    TouchingSolids made{round_bar({12, 60, rings, 12}), {}, {}, {}};
    set_regions(made.mesh,
                [](const Eigen::Vector3d& p) {
                    return p.z() < 20 ? 0 : p.z() > 40 ? 1 : p.y() > 0 ? 0 : 1;
                });
    split_between(made.mesh, 0, 1, "lap", everywhere);
    made.body.steel = {steel, {198000, 0.29}};
    hold(made.body, made.mesh,
         [](const Eigen::Vector3d& p)
         {
             const bool guided = p.head<2>().norm() < 1e-9 && p.z() > 40.1;
             return p.z() == 0 ? 7 : (guided ? 3 : 0) + (guided && p.z() == 60 ? 4 : 0);
         });
    made.surface = contact_surface(made.mesh, "lap", [](const Eigen::Vector3d&) { return 0.0; });
    made.load = face_forces(made.mesh, "right", {{0, 0, 0}, {0, 0, torque}});
    return made;
}

std::vector<double> corner_means(const TouchingSolids& solids,
                                 const std::function<double(const Eigen::Vector3d&)>& pressure)
{
    // Midpoints of so many strips each way: to a thousandth of an element at the root of a square root.
    constexpr int cuts = 60;
    const auto corner = [&](std::int32_t i)
    { return place(solids.mesh, static_cast<std::size_t>(solids.surface.places[static_cast<std::size_t>(i)].first)); };
    std::vector<double> sum(solids.surface.places.size(), 0), mean = sum;
    for (const auto& face : solids.surface.faces)
    {
        const Eigen::Vector3d a = corner(face[0]), b = corner(face[1]), c = corner(face[2]);
        const double part = (b - a).cross(c - a).norm() / (2 * cuts * cuts);
        for (int i = 0; i < cuts; ++i)
            for (int j = 0; j < 2 * (cuts - i) - 1; ++j)
            {
                // Small triangles of a row stand upright and on their heads in turn.
                const int column = j / 2;
                const double centre = (j % 2 == 0 ? 1 : 2) / 3.0, u = (i + centre) / cuts, v = (column + centre) / cuts;
                const std::array<double, 3> hat{1 - u - v, u, v};
                const double here = pressure(hat[0] * a + hat[1] * b + hat[2] * c);
                for (std::size_t k = 0; k < 3; ++k) sum[static_cast<std::size_t>(face[k])] += hat[k] * here * part;
            }
    }
    for (std::size_t i = 0; i < sum.size(); ++i)
        if (solids.surface.places[i].hat > 0) mean[i] = sum[i] / solids.surface.places[i].hat;
    return mean;
}

}  // namespace splicewright::exact
