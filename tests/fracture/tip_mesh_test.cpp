// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "mesh/crack_outline.h"
#include "mesh/gmsh_mesher.h"
#include "tests/fracture/cracked_bar.h"
#include "tests/mesh/sample_cases.h"

namespace splicewright
{
namespace
{

TEST(TipReach, StopsAtTheNearestSurfaceOrAxis)
{
    const auto reach = [](sample::RingCrack crack, double a)
    {
        const CrackedSection section = sample::cracked_bar(crack, a, 10, 40);
        return tip_reach(section.outline, section.outline.tips[0]);
    };
    EXPECT_DOUBLE_EQ(reach(sample::RingCrack::internal, 2), 2);  // the axis
    EXPECT_DOUBLE_EQ(reach(sample::RingCrack::internal, 7), 3);  // the surface
    EXPECT_DOUBLE_EQ(reach(sample::RingCrack::external, 9), 1);
    const CrackedSection slit = sample::slit_bar(10, 15, 80);
    EXPECT_DOUBLE_EQ(tip_reach(slit.outline, slit.outline.tips[0]), 5);  // the outside of the tube
}

TEST(TipReach, OfARootEndsWithinItsWeld)
{
    Scenario sharp;
    sharp.root_shape = RootShape::sharp;
    const Case asked = sample::splice();
    const Outline shape = outline(asked, sharp);
    ASSERT_EQ(shape.tips.size(), 3u);
    const double leg = asked.sleeve->weld.leg_on_bar.value();
    for (const OutlineTip& tip : shape.tips)
    {
        EXPECT_GT(tip_reach(shape, tip), 0.5 * leg) << tip.name;
        const double far =
            tip.name.starts_with("root") ? leg / std::sqrt(2.0) : shape.points[static_cast<std::size_t>(tip.point)].r;
        EXPECT_LE(tip_reach(shape, tip), far) << tip.name;
    }
}

TEST(SharpRoots, LeaveTheKeyholeOutlineAsItWas)
{
    const Outline shape = outline(sample::splice(), {});
    EXPECT_TRUE(shape.tips.empty());
    EXPECT_TRUE(
        std::any_of(shape.curves.begin(), shape.curves.end(), [](const auto& c) { return c.name == "land-edge"; }));
}

TEST(TipMesh, HasQuarterPointsOnEveryEdgeThatEndsAtTheTipAndNowhereElse)
{
    const CrackedSection section = sample::cracked_bar(sample::RingCrack::internal, 4, 10, 30);
    const Mesh mesh = generate_mesh(section.outline, sample::fine_at_tip(16));
    const Eigen::Vector2d tip(0, 4);
    int at_tip = 0;
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int e = 0; e < 3; ++e)
        {
            Eigen::Vector2d a = mesh.node.col(mesh.triangle(e, t)), b = mesh.node.col(mesh.triangle((e + 1) % 3, t));
            if ((b - tip).norm() < 1e-12) std::swap(a, b);
            const double share = (a - tip).norm() < 1e-12 ? 0.25 : 0.5;
            if (share < 0.5) ++at_tip;
            const Eigen::Vector2d middle = mesh.node.col(mesh.triangle(3 + e, t));
            EXPECT_NEAR((middle - a - share * (b - a)).norm(), 0, 1e-12);
        }
    EXPECT_GE(at_tip, 12);  // two edges of each of at least six triangles
}

TEST(TipMesh, OpensWithTheRootOfTheDistance)
{
    // Within the triangles at the tip the opening at the quarter point is half that at the corner plus what the next
    // term of the expansion adds: exactly half for a pure root, 1/4 for a straight line.
    const CrackedSection section = sample::cracked_bar(sample::RingCrack::internal, 4, 10, 30);
    const Mesh mesh = generate_mesh(section.outline, sample::fine_at_tip(54));
    const UnitSolution solution = unit_solution(mesh, section.steel, LoadKind::axial, {});
    double nearest = INFINITY, next = INFINITY, opening_nearest = 0, opening_next = 0;
    for (const FacePair& pair : mesh.pair)
    {
        const double away = 4 - mesh.node(1, pair.inner);
        const double opening = solution.u(2 * pair.outer + 1) - solution.u(2 * pair.inner + 1);
        if (away < nearest) next = nearest, opening_next = opening_nearest, nearest = away, opening_nearest = opening;
        else if (away < next) next = away, opening_next = opening;
    }
    EXPECT_NEAR(next, 4 * nearest, 1e-9);
    EXPECT_NEAR(opening_nearest / opening_next, 0.5, 0.02);
}

}  // namespace
}  // namespace splicewright
