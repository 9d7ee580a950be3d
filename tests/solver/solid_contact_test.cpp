// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_contact.h"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "solver/solid_loads.h"
#include "solver/solid_stress.h"
#include "tests/solver/solid_bar.h"

namespace splicewright
{
namespace
{

using samples::Curving;

constexpr double pi = std::numbers::pi;
const ElasticConstants steel{210000, 0.3};

NodeForces no_load(const SolidMesh& mesh) { return NodeForces::Zero(3, static_cast<Eigen::Index>(mesh.nodes.size())); }

// Holds the axes of the nodes that `axes` names: 1 x, 2 y, 4 z, added.
void hold(SolidBody& body, const SolidMesh& mesh, const std::function<int(const Eigen::Vector3d&)>& axes)
{
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        for (int axis = 0; axis < 3; ++axis)
            if (((axes(samples::place(mesh, i)) >> axis) & 1) != 0)
                body.held.push_back({static_cast<std::int32_t>(i), axis, 0});
}

void expect_settled(const ContactAnswer& answer)
{
    EXPECT_LE(answer.penetration, 1e-4);
    EXPECT_LE(answer.tension, 1e-6);
    EXPECT_LE(answer.solid.relative_residual, 1e-8);
    for (const ContactState& state : answer.surfaces)
        for (const double force : state.force) EXPECT_GE(force, -1e-6 * answer.peak_pressure);
}

// Two thick cylinders, 50 and 100 mm, radial interference 0.025 mm, between two planes that hold z: plane strain.
struct PressFit
{
    SolidMesh mesh;
    SolidBody body;
    static constexpr double b = 25, c = 50, interference = 0.025, thick = 12;  // mm
};
PressFit press_fit(int rings)
{
    PressFit made{samples::round_bar({PressFit::c, PressFit::thick, rings, rings / 2, Curving::all}), {}};
    made.body.steel = {steel, steel};
    samples::set_regions(made.mesh, [&](const Eigen::Vector3d& p)
                         { return p.head<2>().norm() > PressFit::b * std::cos(pi / (3 * rings)) ? 1 : 0; });
    samples::split_between(made.mesh, 0, 1, "fit", [](const Eigen::Vector3d&) { return true; });
    hold(made.body, made.mesh,
         [](const Eigen::Vector3d& p)
         {
             return (std::abs(p.x()) < 1e-9 ? 1 : 0) + (std::abs(p.y()) < 1e-9 ? 2 : 0) +
                    (p.z() == 0 || p.z() == PressFit::thick ? 4 : 0);
         });
    return made;
}

// Source: [TimoshenkoGoodier1970] article 28, with E / (1 - nu^2) for plane strain.
double lame_pressure()
{
    constexpr double b = PressFit::b, c = PressFit::c;
    return steel.E / (1 - steel.nu * steel.nu) * PressFit::interference * (c * c - b * b) / (2 * b * c * c);
}

ContactAnswer solved(const PressFit& fit)
{
    SolidContact contact(
        fit.mesh, fit.body,
        {contact_surface(fit.mesh, "fit", [](const Eigen::Vector3d&) { return -PressFit::interference; })});
    return contact.solution(fit.mesh, no_load(fit.mesh));
}

}  // namespace

TEST(SolidContact, PressesTwoCylindersAsLameSays)
{
    std::vector<double> worst;
    for (const int rings : {4, 8})
    {
        const PressFit fit = press_fit(rings);
        const ContactAnswer answer = solved(fit);
        expect_settled(answer);
        double off = 0, mean = 0;
        for (const double pressure : answer.surfaces[0].pressure)
        {
            off = std::max(off, std::abs(pressure / lame_pressure() - 1));
            mean += pressure / static_cast<double>(answer.surfaces[0].pressure.size());
        }
        worst.push_back(off);
        EXPECT_NEAR(mean, lame_pressure(), 0.005 * lame_pressure());
    }
    // Second order: a quarter at half the size.
    EXPECT_LT(worst[1], 0.008);
    EXPECT_LT(worst[1], 0.4 * worst[0]);
}

TEST(SolidContact, LeavesLameStressInShaftAndHub)
{
    const PressFit fit = press_fit(8);
    const ContactAnswer answer = solved(fit);
    const double p = lame_pressure();
    constexpr double b2 = fit.b * fit.b, c2 = fit.c * fit.c;
    for (const SurfacePlace& place :
         free_surface_stress(fit.mesh, fit.body.steel, answer.solid.displacement, "outside").places)
    {
        const Eigen::Vector3d at = samples::place(fit.mesh, static_cast<std::size_t>(place.node));
        const Eigen::Vector2d turn = Eigen::Vector2d(-at.y(), at.x()).normalized();
        const double hoop = turn.x() * turn.x() * place.stress(0) + turn.y() * turn.y() * place.stress(1) +
                            2 * turn.x() * turn.y() * place.stress(3);
        EXPECT_NEAR(hoop, 2 * p * b2 / (c2 - b2), 0.005 * p);
    }
    const SolidStress stress = recovered_stress(fit.mesh, fit.body.steel, answer.solid.displacement);
    for (std::size_t i = 0; i < stress.node.size(); ++i)
    {
        const Eigen::Vector3d at = samples::place(fit.mesh, static_cast<std::size_t>(stress.node[i]));
        if (stress.region[i] != 0 || at.head<2>().norm() > 20 || std::abs(at.z() - 6) > 1) continue;
        EXPECT_NEAR(stress.value(0, static_cast<Eigen::Index>(i)), -p, 0.01 * p);
        EXPECT_NEAR(stress.value(1, static_cast<Eigen::Index>(i)), -p, 0.01 * p);
    }
}

// Half of two blocks in plane strain, the gap between them that of a cylinder on a flat.
// Source: [Johnson1985] chapter 4: p0 = sqrt(q E* / (pi R)), b = sqrt(4 q R / (pi E*)), E* = E / (2 (1 - nu^2)).
TEST(SolidContact, PressesACylinderOnAFlatAsHertzSays)
{
    constexpr double R = 25, block = 16, thick = 1;  // mm
    std::vector<double> off;
    for (const int n : {3, 6})
    {
        SolidMesh mesh = samples::box({block, thick, block, 3 * n, 1, 4 * n});
        samples::move_nodes(mesh,
                            [](const Eigen::Vector3d& p)
                            {
                                const double x = p.x() / block, s = 2 * p.z() / block - 1;
                                return Eigen::Vector3d(block * x * (0.12 + 0.88 * x * x), p.y(),
                                                       block / 2 * (1 + s * (0.15 + 0.85 * s * s)));
                            });
        samples::set_regions(mesh, [](const Eigen::Vector3d& p) { return p.z() > block / 2 ? 1 : 0; });
        samples::split_between(mesh, 0, 1, "touch", [](const Eigen::Vector3d&) { return true; });
        SolidBody body;
        body.steel = {steel, steel};
        hold(body, mesh,
             [](const Eigen::Vector3d& p)
             { return (p.x() == 0 ? 1 : 0) + 2 + (p.z() == 0 || p.z() == block ? 4 : 0); });
        for (HeldFreedom& held : body.held)
            if (held.axis == 2 && samples::place(mesh, static_cast<std::size_t>(held.node)).z() == block)
                held.displacement = -0.01;
        SolidContact contact(
            mesh, body,
            {contact_surface(mesh, "touch", [](const Eigen::Vector3d& p) { return p.x() * p.x() / (2 * R); })});
        const ContactAnswer answer = contact.solution(mesh, no_load(mesh));
        expect_settled(answer);
        const double q = 2 * answer.surfaces[0].resultant.z() / thick;
        const double Es = steel.E / (2 * (1 - steel.nu * steel.nu));
        const double b = std::sqrt(4 * q * R / (pi * Es));
        const double p0 = std::sqrt(q * Es / (pi * R));
        off.push_back(std::abs(answer.peak_pressure / p0 - 1));
        const ContactSurface surface = contact_surface(mesh, "touch", [](const Eigen::Vector3d&) { return 0.0; });
        for (std::size_t i = 0; i < surface.places.size(); ++i)
        {
            const double x = samples::place(mesh, static_cast<std::size_t>(surface.places[i].first)).x() / b;
            const double pressure = answer.surfaces[0].pressure[i] / p0;
            // Beside the edge of the contact the pressure is a mean over elements of a third of b; so is a middle's.
            if (surface.places[i].hat == 0 || (x > 0.6 && x < 1.6)) continue;
            EXPECT_NEAR(pressure, x < 1 ? std::sqrt(1 - x * x) : 0, n == 6 ? 0.05 : 0.1) << x;
        }
    }
    EXPECT_LT(off[0], 0.04);
    EXPECT_LT(off[1], 0.01);
}

// Statics: nothing but the contact turns the right half against the left one, because what guides it stands on the
// axis. Held at a sharp edge the peak pressure has no limit, but forces times arms do not depend on the mesh.
TEST(SolidContact, CarriesThePureTorqueOfALapByForcesTimesArms)
{
    for (const double torque : {1e5, -1e5})
        for (const int rings : {3, 5})
        {
            SolidMesh mesh = samples::round_bar({12, 60, rings, 12});
            samples::set_regions(mesh,
                                 [](const Eigen::Vector3d& p) {
                                     return p.z() < 20 ? 0 : p.z() > 40 ? 1 : p.y() > 0 ? 0 : 1;
                                 });
            samples::split_between(mesh, 0, 1, "lap", [](const Eigen::Vector3d&) { return true; });
            SolidBody body;
            body.steel = {steel, {198000, 0.29}};
            hold(body, mesh,
                 [](const Eigen::Vector3d& p)
                 {
                     const bool guided = p.head<2>().norm() < 1e-9 && p.z() > 40.1;
                     return p.z() == 0 ? 7 : (guided ? 3 : 0) + (guided && p.z() == 60 ? 4 : 0);
                 });
            SolidContact contact(mesh, body,
                                 {contact_surface(mesh, "lap", [](const Eigen::Vector3d&) { return 0.0; })});
            const ContactAnswer answer =
                contact.solution(mesh, face_forces(mesh, "right", {{0, 0, 0}, {0, 0, torque}}));
            expect_settled(answer);
            EXPECT_NEAR(answer.surfaces[0].moment.z(), -torque, 1e-6 * std::abs(torque));
            EXPECT_NEAR(answer.solid.reaction_moment.z(), -torque, 1e-6 * std::abs(torque));
            EXPECT_LT(answer.solid.reaction_imbalance, 1e-8);
            // Pushing alone: some of the lap has opened.
            EXPECT_LT(answer.closed, static_cast<int>(answer.surfaces[0].force.size()) / 2);
        }
}

TEST(SolidContact, GivesEvenPressureThoughCornersCarryNoForce)
{
    // One face of two triangles between two blocks under even pressure: forces at the middles alone.
    SolidMesh mesh = samples::box({10, 10, 10, 3, 3, 4});
    samples::set_regions(mesh, [](const Eigen::Vector3d& p) { return p.z() > 5 ? 1 : 0; });
    samples::split_between(mesh, 0, 1, "touch", [](const Eigen::Vector3d&) { return true; });
    SolidBody body;
    body.steel = {steel, steel};
    hold(body, mesh,
         [](const Eigen::Vector3d& p) { return (p.x() == 0 ? 1 : 0) + (p.y() == 0 ? 2 : 0) + (p.z() == 0 ? 4 : 0); });
    SolidContact contact(mesh, body, {contact_surface(mesh, "touch", [](const Eigen::Vector3d&) { return 0.0; })});
    const ContactAnswer answer = contact.solution(mesh, pressure_forces(mesh, "right", 80));
    expect_settled(answer);
    for (const double pressure : answer.surfaces[0].pressure) EXPECT_NEAR(pressure, 80, 0.1);
    EXPECT_NEAR(answer.surfaces[0].resultant.z(), 8000, 1e-2);
    // A gap that the load does not close stays a gap, and says that the block is loose.
    SolidContact apart(mesh, body, {contact_surface(mesh, "touch", [](const Eigen::Vector3d&) { return 0.0; })});
    EXPECT_THROW(static_cast<void>(apart.solution(mesh, pressure_forces(mesh, "right", -80))), CannotCompute);
}

TEST(SolidContact, HasANormalForEachSideOfASharpEdge)
{
    SolidMesh mesh = samples::box({12, 12, 12, 4, 4, 4});
    samples::set_regions(mesh, [](const Eigen::Vector3d& p) { return p.z() > 6 && p.y() > 6 ? 1 : 0; });
    samples::split_between(mesh, 0, 1, "step", [](const Eigen::Vector3d&) { return true; });
    const ContactSurface step = contact_surface(mesh, "step", [](const Eigen::Vector3d& p) { return 0.01 * p.x(); });
    // 2 faces of 2 x 4 cells, two triangles each.
    EXPECT_EQ(step.faces.size(), 32U);
    double area = 0, hats = 0;
    for (const ContactPlace& place : step.places)
    {
        area += place.area / 2;
        hats += place.hat;
        EXPECT_NEAR(place.gap, 0.01 * samples::place(mesh, static_cast<std::size_t>(place.first)).x(), 1e-12);
        EXPECT_NEAR(std::max(place.normal.y(), place.normal.z()), 1, 1e-12);
    }
    EXPECT_NEAR(area, 144, 1e-9);
    EXPECT_NEAR(hats, 144, 1e-9);
    EXPECT_EQ(step.places.size(), 2U * 5U * 9U);
}

TEST(SolidContact, RefusesANameWithoutFaces)
{
    const SolidMesh mesh = samples::box({10, 10, 10, 2, 2, 2});
    EXPECT_THROW(static_cast<void>(contact_surface(mesh, "slit", [](const Eigen::Vector3d&) { return 0.0; })),
                 CannotCompute);
}

}  // namespace splicewright
