// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/surface_stress.h"

#include <gtest/gtest.h>

#include <cmath>

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

}  // namespace
}  // namespace splicewright
