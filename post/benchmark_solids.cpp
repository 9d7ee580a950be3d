// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/benchmark_solids.h"

#include <cmath>
#include <numbers>

#include "post/solid_readings.h"
#include "solver/regular_solids.h"
#include "solver/solid_loads.h"

namespace splicewright::exact
{

namespace
{

using regular::box;
using regular::Curving;
using regular::hold;
using regular::kept_part;
using regular::move_nodes;
using regular::round_bar;

constexpr double pi = std::numbers::pi;
const ElasticConstants steel{210000, 0.3};
constexpr double ring_inner_x = 2, ring_inner_y = 1, ring_wide_x = 1.25, ring_wide_y = 1.75;  // m
constexpr double plate_thick = 0.6;                                                           // m

SolvedSolid twisted(SolidMesh mesh, double torque)
{
    SolidBody body;
    body.steel = {steel};
    const NodeForces load = face_forces(mesh, "right", {{0, 0, 0}, {0, 0, torque}}) -
                            face_forces(mesh, "left", {{0, 0, 0}, {0, 0, torque}});
    SolidAnswer answer = SolidSystem(mesh, body).solution({load}).loads[0];
    return {std::move(mesh), std::move(body), std::move(answer)};
}

// From 0 to 1, finer at 0 by `finer` in the limit.
double graded(double part, double finer) { return part * (1 - finer + finer * part * part); }

Eigen::Vector3d on_ring(double part, double turn, double z)
{
    return {(ring_inner_x + ring_wide_x * part) * std::cos(turn), (ring_inner_y + ring_wide_y * part) * std::sin(turn),
            z};
}

bool is(double value, double wanted) { return std::abs(value - wanted) < 1e-9; }

}  // namespace

SolvedSolid twisted_rectangle(int n, double b, double c, double torque)
{
    // The long side counts with its root: stress varies less along it.
    return twisted(box({b, c, 4 * b + 3 * c, static_cast<int>(n * std::sqrt(b / c)), n, 4 * n}), torque);
}

SolvedSolid twisted_half_round(int n, double radius, double torque)
{
    return twisted(kept_part(round_bar({radius, 7.2 * radius, n, 4 * n, Curving::skin}), "flat",
                             [](const Eigen::Vector3d& p) { return p.y() > 0; }),
                   torque);
}

SolvedSolid cantilever(int n)
{
    SolidMesh mesh = round_bar({25, 200, n, 4 * n, Curving::skin});
    SolidBody body;
    body.steel = {steel};
    hold(body, mesh, [](const Eigen::Vector3d& p) { return p.z() == 0 ? 7 : 0; });
    SolidAnswer answer =
        SolidSystem(mesh, body).solution({face_forces(mesh, "right", {{0, 10000, 0}, {0, 0, 0}})}).loads[0];
    return {std::move(mesh), std::move(body), std::move(answer)};
}

SolvedSolid elliptic_membrane(int n)
{
    const double thick = ring_wide_x / n;
    SolidMesh mesh = box({1, 2, thick, n, 4 * n, 1});
    move_nodes(mesh, [](const Eigen::Vector3d& p) { return on_ring(p.x(), pi / 2 * (p.y() - 1), p.z()); });
    SolidBody body;
    const double nu = steel.nu;
    body.steel = {{steel.E * (1 + 2 * nu) / ((1 + nu) * (1 + nu)), nu / (1 + nu)}};
    hold(body, mesh,
         [&](const Eigen::Vector3d& p)
         {
             return (is(p.x(), 0) ? 1 : 0) + (is(p.x(), ring_inner_x) && is(p.y(), 0) ? 2 : 0) +
                    (is(p.z(), 0) || is(p.z(), thick) ? 4 : 0);
         });
    SolidAnswer answer = SolidSystem(mesh, body).solution({pressure_forces(mesh, "x1", -10)}).loads[0];
    return {std::move(mesh), std::move(body), std::move(answer)};
}

double membrane_stress(const SolvedSolid& membrane)
{
    const auto inside = free_surface_stress(membrane.mesh, membrane.body.steel, membrane.answer.displacement, "x0");
    double thick = 0;
    for (const auto& node : membrane.mesh.nodes) thick = std::max(thick, node[2]);
    return surface_value(membrane.mesh, inside, {ring_inner_x, 0, thick / 2})(1);
}

SolvedSolid thick_plate(int n)
{
    constexpr double finer = 0.7;
    SolidMesh mesh = box({1, 1, plate_thick, n, 2 * n, 2 * (n / 4)});
    move_nodes(mesh, [](const Eigen::Vector3d& p)
               { return on_ring(graded(p.x(), finer), pi / 2 * graded(p.y(), finer), p.z()); });
    SolidBody body;
    body.steel = {steel};
    hold(body, mesh,
         [](const Eigen::Vector3d& p)
         {
             const bool outside = is(
                 std::pow(p.x() / (ring_inner_x + ring_wide_x), 2) + std::pow(p.y() / (ring_inner_y + ring_wide_y), 2),
                 1);
             return (is(p.x(), 0) ? 1 : 0) | (is(p.y(), 0) ? 2 : 0) | (outside ? 3 : 0) |
                    (outside && is(p.z(), plate_thick / 2) ? 4 : 0);
         });
    SolidAnswer answer = SolidSystem(mesh, body).solution({pressure_forces(mesh, "right", 1)}).loads[0];
    return {std::move(mesh), std::move(body), std::move(answer)};
}

PlateStress plate_stress(const SolvedSolid& plate)
{
    const Eigen::Vector3d at(ring_inner_x, 0, plate_thick);
    const auto& [mesh, body, answer] = plate;
    return {surface_value(mesh, free_surface_stress(mesh, body.steel, answer.displacement, "right", 1), at)(1),
            surface_value(mesh, free_surface_stress(mesh, body.steel, answer.displacement, "x0"), at)(1),
            inside_value(mesh, recovered_stress(mesh, body.steel, answer.displacement), at)(1)};
}

}  // namespace splicewright::exact
