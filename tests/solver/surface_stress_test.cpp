// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/surface_stress.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "mesh/gmsh_mesher.h"
#include "solver/meridian.h"
#include "solver/recover_stress.h"
#include "solver/sites.h"
#include "tests/mesh/sample_cases.h"

namespace splicewright
{
namespace
{

constexpr double round_off = 1e-9;  // relative, of turning a tensor

// One stress everywhere, seen on the round toe of a weld, whose direction turns from place to place.
TEST(LoadedSurface, KeepsTheVonMisesStressInEveryDirection)
{
    const Case asked = sample::splice();
    Mesh mesh = generate_mesh(outline(asked, {}), {});
    const std::vector<ElasticConstants> steel = steel_by_region(asked, mesh.region);
    const RegionNodes nodes = region_nodes(mesh);
    Eigen::Matrix<double, 6, 1> tensor;
    tensor << 70, -20, 130, 35, -55, 90;  // rr, tt, zz, rt, tz, rz
    const StressAmplitude uniform{tensor.replicate(1, static_cast<Eigen::Index>(nodes.node.size()))};
    const double normal = std::pow(70 + 20, 2) + std::pow(-20 - 130, 2) + std::pow(130 - 70, 2);
    const double expected = std::sqrt(normal / 2 + 3 * (35 * 35 + 55 * 55 + 90 * 90));

    const std::vector<SurfaceChain> chains = surface_chains(mesh, mesh.curve.at("bar-toe.left"), steel);
    ASSERT_FALSE(chains.empty());
    double least_turn = 1, greatest_turn = -1;
    for (const SurfaceChain& chain : chains)
    {
        const SurfaceStress seen = loaded_surface_stress(mesh, chain, surface_places(mesh, chain), nodes, uniform);
        for (Eigen::Index i = 0; i < seen.along.size(); ++i)
        {
            const PointStress stress{seen.along(i),  seen.hoop(i),         seen.shear(i),
                                     seen.across(i), seen.across_along(i), seen.across_hoop(i)};
            EXPECT_NEAR(von_mises(stress), expected, round_off * expected);
            EXPECT_NEAR(stress.along + stress.across, 200, round_off * 200);
            const double turn = stress.along / 200;
            least_turn = std::min(least_turn, turn), greatest_turn = std::max(greatest_turn, turn);
        }
    }
    EXPECT_GT(greatest_turn - least_turn, 0.1);  // the toe does turn
}

// u_z = sin(z / k), u_r = 0 at the nodes; k in mm.
UnitSolution waves_along(const Mesh& mesh, double k)
{
    UnitSolution solution;
    solution.kind = LoadKind::axial;
    const Eigen::Index n = mesh.node.cols();
    solution.u = Eigen::VectorXd::Zero(2 * n);
    for (Eigen::Index i = 0; i < n; ++i) solution.u(2 * i + 1) = std::sin(mesh.node(0, i) / k);
    return solution;
}

// Largest error at the two ends of a chain of a stress known at every place, relative to the largest stress.
double error_at_ends(const Mesh& mesh, const SurfaceChain& chain, double k)
{
    const SurfacePlaces places = surface_places(mesh, chain);
    const SurfaceStress found = free_surface_stress(mesh, chain, places, waves_along(mesh, k));
    const double E = chain.steel.E, nu = chain.steel.nu;
    double error = 0;
    for (const Eigen::Index i : {Eigen::Index{0}, found.along.size() - 1})
    {
        const double exact = E / (1 - nu * nu) * std::cos(places.z[static_cast<std::size_t>(i)] / k) / k;
        error = std::max(error, std::abs(found.along(i) - exact));
    }
    return error / (E / (1 - nu * nu) / k);
}

// The plain part of a bar, over which the surface runs straight on to its neighbours.
TEST(FreeSurface, IsKnownBetterAtItsEndsWhenTheChainIsCarriedOn)
{
    const Case asked = sample::splice();
    Mesh mesh = generate_mesh(outline(asked, {}), {});
    const std::vector<ElasticConstants> steel = steel_by_region(asked, mesh.region);
    std::vector<SurfaceChain> chains = surface_chains(mesh, mesh.curve.at("bar.left"), steel);
    const auto shorter = [](const SurfaceChain& a, const SurfaceChain& b) { return a.edges.size() < b.edges.size(); };
    chains = {*std::max_element(chains.begin(), chains.end(), shorter)};
    std::vector<MeshEdge>& edges = chains.front().edges;
    ASSERT_GT(edges.size(), 12U);
    edges = {edges.begin() + 4, edges.end() - 4};
    const double k = 5;
    const double alone = error_at_ends(mesh, chains.front(), k);
    carry_on(chains, mesh, free_edges(mesh, {}), steel);
    EXPECT_EQ(chains.front().before.size(), 2U);
    EXPECT_EQ(chains.front().after.size(), 2U);
    const double carried_on = error_at_ends(mesh, chains.front(), k);
    EXPECT_LT(carried_on, alone / 2);
    std::printf("    error at the ends: %.3g of the largest stress alone, %.3g carried on\n", alone, carried_on);
}

}  // namespace
}  // namespace splicewright
