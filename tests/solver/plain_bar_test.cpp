// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "mesh/gmsh_mesher.h"
#include "solver/meridian.h"
#include "solver/surface_stress.h"
#include "solver/unit_solution.h"
#include "tests/mesh/sample_cases.h"
#include "tests/solver/hand_made.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;
constexpr double away_from_loads = 1e-6;  // the exact solution is quadratic, so only round-off should be left

struct Bar
{
    double outer, inner, length;  // diameters and length, mm

    [[nodiscard]] double J() const { return pi / 32 * (std::pow(outer, 4) - std::pow(inner, 4)); }
    [[nodiscard]] double I() const { return J() / 2; }
    [[nodiscard]] double A() const { return pi / 4 * (outer * outer - inner * inner); }
};

constexpr Bar solid{30, 0, 150}, hollow{60, 40, 200};

Case shaft(const Bar& bar)
{
    return sample::plain_shaft({{Millimetre{bar.length}, Millimetre{bar.outer}, Millimetre{0}}}, {}, bar.inner);
}

Mesh meshed(const Bar& bar, double sections)
{
    MeshSize size;
    size.sections_per_wall = sections;
    return generate_mesh(outline(shaft(bar), {}), size);
}

const std::vector<ElasticConstants> steel{sample::plain_steel};

// Largest relative difference of one part of the surface stress from its exact value, one diameter from the ends.
double worst_off(const Mesh& mesh, const Bar& bar, const std::string& curve, const UnitSolution& solution,
                 Eigen::VectorXd SurfaceStress::*part, double exact)
{
    double worst = 0;
    int count = 0;
    for (const SurfaceChain& chain : surface_chains(mesh, mesh.curve.at(curve), steel))
    {
        const SurfacePlaces places = surface_places(mesh, chain);
        const SurfaceStress stress = free_surface_stress(mesh, chain, places, solution);
        for (std::size_t i = 0; i < places.z.size(); ++i)
        {
            const double from_end = std::min(std::abs(places.z[i]), bar.length - std::abs(places.z[i]));
            if (from_end < bar.outer) continue;
            worst = std::max(worst, std::abs(std::abs((stress.*part)(static_cast<Eigen::Index>(i))) / exact - 1));
            ++count;
        }
    }
    EXPECT_GT(count, 10) << curve;
    return worst;
}

TEST(PlainBar, TorsionIsThatOfSaintVenant)
{
    for (const Bar& bar : {solid, hollow})
        for (const double sections : {1.0, 2.0, 5.0})
        {
            const Mesh mesh = meshed(bar, sections);
            const UnitSolution solution = unit_solution(mesh, steel, LoadKind::torsion, {});
            const auto off = [&](const char* curve, double diameter)
            { return worst_off(mesh, bar, curve, solution, &SurfaceStress::shear, diameter / 2 / bar.J()); };
            EXPECT_LT(off("bar.left", bar.outer), away_from_loads);
            if (bar.inner > 0)
            {
                EXPECT_LT(off("bore", bar.inner), away_from_loads);
            }
            const double twist = bar.length / (steel[0].G() * bar.J());
            EXPECT_NEAR(solution.work, twist, away_from_loads * twist);
        }
    // The familiar form for a solid bar, 16 T / (pi d^3).
    EXPECT_NEAR(solid.outer / 2 / solid.J(), 16 / (pi * std::pow(solid.outer, 3)), 1e-18);
}

TEST(PlainBar, BendingIsThatOfBernoulli)
{
    for (const Bar& bar : {solid, hollow})
        for (const double sections : {1.0, 2.0, 5.0})
        {
            const Mesh mesh = meshed(bar, sections);
            const UnitSolution solution = unit_solution(mesh, steel, LoadKind::bending, {});
            const double exact = bar.outer / 2 / bar.I();  // 32 M / (pi d^3) for a solid bar
            EXPECT_LT(worst_off(mesh, bar, "bar.left", solution, &SurfaceStress::along, exact), away_from_loads);
            const double rotation = bar.length / (steel[0].E * bar.I());
            EXPECT_NEAR(solution.work, rotation, away_from_loads * rotation);
        }
}

TEST(PlainBar, TensionIsForceOverArea)
{
    for (const Bar& bar : {solid, hollow})
        for (const double sections : {1.0, 2.0, 5.0})
        {
            const Mesh mesh = meshed(bar, sections);
            const UnitSolution solution = unit_solution(mesh, steel, LoadKind::axial, {});
            EXPECT_LT(worst_off(mesh, bar, "bar.left", solution, &SurfaceStress::along, 1 / bar.A()), away_from_loads);
            const double extension = bar.length / (steel[0].E * bar.A());
            EXPECT_NEAR(solution.work, extension, away_from_loads * extension);
        }
}

TEST(PlainBar, AnswerIsExactInEveryNumber)
{
    for (const Bar& bar : {solid, hollow})
    {
        const MeridianAnswer answer = meridian_answer(shaft(bar), {}, {});
        ASSERT_EQ(answer.sites.size(), 1U);
        const SiteAnswer& site = answer.sites.front();
        EXPECT_EQ(site.id, "bar.left");
        const auto expect_exact = [](const Measured& found, double exact)
        {
            EXPECT_NEAR(found.value, exact, away_from_loads * exact);
            EXPECT_LT(found.error, away_from_loads * exact);
        };
        const double shear = bar.outer / 2 / bar.J();
        expect_exact(site.torsion.shear, shear);
        expect_exact(site.torsion.principal, shear);
        expect_exact(site.torsion.von_mises, std::sqrt(3.0) * shear);
        expect_exact(site.bending.principal, bar.outer / 2 / bar.I());
        expect_exact(site.bending.von_mises, bar.outer / 2 / bar.I());
        expect_exact(site.axial.von_mises, 1 / bar.A());
        expect_exact(answer.twist, bar.length / (steel[0].G() * bar.J()));
        expect_exact(answer.end_rotation, bar.length / (steel[0].E * bar.I()));
        expect_exact(answer.extension, bar.length / (steel[0].E * bar.A()));
    }
}

}  // namespace
}  // namespace splicewright
