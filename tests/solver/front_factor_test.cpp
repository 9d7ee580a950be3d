// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/front_factor.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "mesh/gmsh_mesher.h"
#include "solver/meridian.h"
#include "solver/sparse_solve.h"
#include "solver/unit_solution.h"
#include "tests/mesh/sample_cases.h"

namespace splicewright
{
namespace
{

Mesh coarse_mesh(const Case& asked)
{
    MeshSize size;
    size.elements_per_quarter_turn = 4;
    return generate_mesh(outline(asked, {}), size);
}

Ties held_both() { return {{FaceTie::held, FaceTie::held}, {0, 0}}; }

TEST(Elimination, LetsEveryNodeLeaveOnceAndItsBorderAfterIt)
{
    const Mesh mesh = coarse_mesh(sample::splice());
    const Elimination order = elimination_of(mesh, held_both());
    std::vector<int> leaves_at(static_cast<std::size_t>(mesh.n_nodes()), -1);
    int n_left = 0;
    for (const Front& front : order.fronts)
        for (const int node : front.own)
        {
            ASSERT_EQ(leaves_at[static_cast<std::size_t>(node)], -1);
            leaves_at[static_cast<std::size_t>(node)] = n_left++;
        }
    EXPECT_EQ(n_left, mesh.n_nodes());
    for (const Front& front : order.fronts)
        for (const int node : front.border)
            EXPECT_GT(leaves_at[static_cast<std::size_t>(node)], leaves_at[static_cast<std::size_t>(front.own.back())]);
}

TEST(Elimination, HandsTheBorderOfAFrontToItsParentAndEveryElementToOneFront)
{
    const Mesh mesh = coarse_mesh(sample::splice());
    const Elimination order = elimination_of(mesh, {});
    std::multiset<int> given, children;
    for (std::size_t f = 0; f < order.fronts.size(); ++f)
    {
        const Front& front = order.fronts[f];
        std::set<int> nodes(front.own.begin(), front.own.end());
        nodes.insert(front.border.begin(), front.border.end());
        given.insert(front.groups.begin(), front.groups.end());
        children.insert(front.children.begin(), front.children.end());
        for (const int child : front.children)
        {
            ASSERT_LT(child, static_cast<int>(f));
            for (const int node : order.fronts[static_cast<std::size_t>(child)].border)
                EXPECT_TRUE(nodes.contains(node));
        }
    }
    EXPECT_EQ(given.size(), static_cast<std::size_t>(mesh.n_triangles()));
    EXPECT_EQ(std::set<int>(given.begin(), given.end()).size(), given.size());
    EXPECT_EQ(std::set<int>(children.begin(), children.end()).size(), children.size());
}

// An independent path: the matrix put together and given to CHOLMOD, which finds an order of its own. What both leave
// is round-off times the condition of a slender shaft that is held at one node.
TEST(FrontFactor, SolvesWhatTheGeneralSolverDoes)
{
    constexpr double round_off = 1e-9;
    const Case asked = sample::splice();
    const Mesh mesh = coarse_mesh(asked);
    const std::vector<ElasticConstants> steel = steel_by_region(asked, mesh.region);
    for (const Ties& ties : {Ties{}, held_both(), Ties{{FaceTie::merged, FaceTie::held}, {0, 0}}})
    {
        const Elimination order = elimination_of(mesh, ties);
        for (const LoadKind kind : {LoadKind::torsion, LoadKind::axial, LoadKind::bending})
        {
            const Freedoms free = freedoms(mesh, kind, ties);
            const ElementStiffness K = element_stiffness(mesh, steel, kind, free);
            const auto factor = FrontFactor::factorised(K, order, free.node_of_free, mesh.n_nodes());
            ASSERT_TRUE(factor.has_value());
            const Eigen::VectorXd f = Eigen::VectorXd::LinSpaced(free.n_free, -1, 2);
            const Eigen::VectorXd general = sparse_solution(assembled(K), f);
            EXPECT_LT((factor->solution(f) - general).norm(), round_off * general.norm());
        }
    }
}

TEST(FrontFactor, IsNothingWithoutPositivePivots)
{
    const Case asked = sample::splice();
    const Mesh mesh = coarse_mesh(asked);
    const Freedoms free = freedoms(mesh, LoadKind::torsion, {});
    ElementStiffness K = element_stiffness(mesh, steel_by_region(asked, mesh.region), LoadKind::torsion, free);
    for (double& value : K.value) value = -value;
    EXPECT_FALSE(FrontFactor::factorised(K, elimination_of(mesh, {}), free.node_of_free, mesh.n_nodes()).has_value());
}

TEST(ElementStiffnesses, MultiplyAsTheirMatrixDoes)
{
    const Case asked = sample::splice();
    const Mesh mesh = coarse_mesh(asked);
    const Freedoms free = freedoms(mesh, LoadKind::bending, held_both());
    const ElementStiffness K = element_stiffness(mesh, steel_by_region(asked, mesh.region), LoadKind::bending, free);
    const Eigen::VectorXd x = Eigen::VectorXd::LinSpaced(free.n_free, 0, 1);
    const Eigen::VectorXd whole = assembled(K).selfadjointView<Eigen::Lower>() * x;
    constexpr double round_off = 1e-12;
    EXPECT_LT((product(K, x) - whole).norm(), round_off * whole.norm());
}

}  // namespace
}  // namespace splicewright
