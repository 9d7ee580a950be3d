// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_answer.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>

#include "cases/bar_shape.h"
#include "cases/problem.h"
#include "cases/random_case.h"
#include "cases/read_case.h"
#include "solver/solid_nested.h"
#include "tests/mesh/sample_cases.h"
#include "tests/mesh/solid_measure.h"

namespace splicewright
{
namespace
{

SolidBudget unknowns(std::size_t dofs)
{
    SolidBudget budget;
    budget.dofs = dofs;
    return budget;
}

// Nothing else touches an open sleeve: what passes the joint through it came in by its weld and its plugs. Nodal forces
// are in balance to the residual of the solution, 1e-8.
TEST(SolidAnswer, WeldAndPlugsOfASideHandTheSleeveWhatItCarriesPastTheJoint)
{
    const Case asked = sample::plugged_splice();
    const SolidModelAnswer solid = solid_model_answer(asked, {}, unknowns(150000), 40);
    for (const Side side : both_sides)
    {
        ASSERT_TRUE(solid.answer.weld[index(side)]);
        const WeldForce& weld = *solid.answer.weld[index(side)];
        double torque = 2 * std::numbers::pi * weld.radius * weld.radius * weld.torsion_tangential;
        for (const WeldMetalForce& plug : solid.weld_metal.front())
            if ((plug.place.z() < 0) == (side == Side::left))
                torque -= plug.torsion(1) * std::hypot(plug.place.x(), plug.place.y());
        EXPECT_NEAR(std::abs(torque), solid.answer.share.torsion.value, 1e-3);
    }
}

// The sleeve then hangs on its plugs alone, three on each side.
TEST(SolidAnswer, PlugsCarryTheSleeveWhereBothOfItsWeldsAreLost)
{
    Scenario lost;
    lost.sleeve_weld_fused[0] = lost.sleeve_weld_fused[1] = false;
    const SolidModelAnswer solid = solid_model_answer(sample::plugged_splice(), lost, unknowns(150000), 40);
    std::array<double, 2> torque{0, 0};
    for (const WeldMetalForce& plug : solid.weld_metal.front())
        torque[plug.place.z() < 0 ? 0 : 1] += plug.torsion(1) * std::hypot(plug.place.x(), plug.place.y());
    EXPECT_GT(solid.answer.share.torsion.value, 0.05);
    for (const double by_plugs : torque) EXPECT_NEAR(std::abs(by_plugs), solid.answer.share.torsion.value, 1e-3);
}

// With the butt lost all torque passes through the sleeve welds. What the places along one of them read, each over one
// leg length, times the radius of the throat is that torque; the sum of trapezia over places a leg apart is good to 2
// %.
TEST(SolidAnswer, AWeldThatDoesNotGoAllRoundHandsOverTheTorqueAtTheRadiusOfItsThroat)
{
    Case asked = sample::splice();
    asked.sleeve->weld.coverage = Radian(300 * std::numbers::pi / 180);
    Scenario lost;
    lost.butt_fused = false;
    const SolidModelAnswer solid = solid_model_answer(asked, lost, unknowns(150000), 40);
    const WeldThroat throat = weld_throat(asked, Side::right);
    const double length = throat.radius * asked.sleeve->weld.coverage.value();
    std::vector<double> ends, inner;  // N/mm around, by 1 N*mm
    for (const WeldMetalForce& metal : solid.weld_metal.front())
    {
        if (metal.place.z() < 0) continue;
        (metal.site.starts_with("weld-end") ? ends : inner).push_back(metal.torsion(1) / metal.length);
    }
    ASSERT_EQ(ends.size(), 2U);
    ASSERT_GT(inner.size(), 5U);
    const double step = length / static_cast<double>(inner.size() + 1);
    const double between = std::accumulate(inner.begin(), inner.end(), 0.0) - (inner.front() + inner.back()) / 2;
    const double torque = throat.radius * step * (between + ends[0] + ends[1]);
    EXPECT_NEAR(std::abs(torque), 1, 0.02);
}

TEST(SolidAnswer, AgreesWithTheMeridianModelAwayFromNotchesAndTrustsNoCoarseOne)
{
    const Case asked = sample::splice();
    const SolidModelAnswer solid = solid_model_answer(asked, {}, unknowns(250000), 40);
    const MeridianAnswer meridian = meridian_answer(asked, {}, {1});
    // A coarse mesh is too stiff, by the square of its energy error: seen 0.02 %.
    EXPECT_NEAR(solid.answer.twist.value / meridian.twist.value, 1, 2e-3);
    EXPECT_NEAR(solid.answer.share.torsion.value, meridian.share.torsion.value, 5e-3);
    ASSERT_FALSE(solid.evidence.coarse_sites.empty());
    EXPECT_FALSE(solid.answer.evidence.reached);
    int compared = 0;
    for (const SiteAnswer& site : solid.answer.sites)
    {
        if (!site.id.starts_with("bar.") && site.id != "sleeve-mid" && site.id != "butt-surface") continue;
        const auto same = std::find_if(meridian.sites.begin(), meridian.sites.end(),
                                       [&](const SiteAnswer& other) { return other.id == site.id; });
        ASSERT_NE(same, meridian.sites.end()) << site.id;
        for (const auto load : {&SiteAnswer::torsion, &SiteAnswer::bending, &SiteAnswer::axial})
        {
            const Measured &one = ((*same).*load).von_mises, &other = (site.*load).von_mises;
            EXPECT_NEAR(other.value, one.value, one.error + other.error) << site.id;
            ++compared;
        }
    }
    EXPECT_EQ(compared, 12);
}

// A linear field is met by the shape functions of any element whose nodes carry it, straight or curved. Some nodes of
// the finer mesh stand outside of a strongly curved coarse element, where its map cannot be turned round.
TEST(SolidAnswer, ACoarserMeshHandsItsDisplacementToTheFinerOne)
{
    const NestedSolids meshes = nested_solid_meshes(sample::splice(), {}, {200000, 0.2});
    Eigen::Matrix3d slope;
    slope << 1, 2, 3, -2, 1, 0.5, 0, 1, -1;
    const auto field = [&](const SolidMesh& mesh)
    {
        Eigen::Matrix3Xd u(3, static_cast<Eigen::Index>(mesh.nodes.size()));
        for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
            u.col(static_cast<Eigen::Index>(i)) =
                slope * Eigen::Vector3d(mesh.nodes[i][0], mesh.nodes[i][1], mesh.nodes[i][2]);
        return u;
    };
    const Eigen::Matrix3Xd coarse = field(meshes.coarse.mesh), wanted = field(meshes.fine.mesh);
    const Eigen::Matrix3Xd carried = carried_to_finer(meshes.coarse.mesh, meshes.fine.mesh, {&coarse})[0];
    const Eigen::VectorXd off = (carried - wanted).colwise().norm();
    EXPECT_GT(static_cast<double>((off.array() < 1e-6).count()), 0.95 * static_cast<double>(off.size()));
}

TEST(SolidAnswer, AModelThatDoesNotFitIntoTheMemoryIsRefusedBeforeItIsMeshed)
{
    SolidBudget budget = unknowns(5000000);
    budget.memory_limit = 1'000'000'000;
    try
    {
        solid_model_answer(sample::splice(), {}, budget, 40);
        FAIL() << "not refused";
    }
    catch (const CannotCompute& refusal)
    {
        EXPECT_EQ(refusal.problem().field, "--solid-dofs");
        EXPECT_NE(refusal.problem().rule.find("GB are free"), std::string::npos);
    }
}

// Narrow faces of this shape ask for 30 million unknowns, which once filled the memory of a machine (27 November 2026).
TEST(SolidAnswer, AShapeThatNeedsFarMoreThanAskedIsRefusedBeforeItIsMeshed)
{
    const Result<Case> read = read_case(random_case_text(9011), "random.toml");
    ASSERT_TRUE(read.has_value());
    try
    {
        solid_model_answer(read.value(), {}, unknowns(1000000), 40);
        FAIL() << "not refused";
    }
    catch (const CannotCompute& refusal)
    {
        EXPECT_EQ(refusal.problem().field, "--solid-dofs");
        EXPECT_NE(refusal.problem().rule.find("narrow faces"), std::string::npos);
    }
}

}  // namespace
}  // namespace splicewright
