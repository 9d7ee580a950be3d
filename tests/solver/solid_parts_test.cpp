// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>
#include <sys/resource.h>

#include <Eigen/Eigenvalues>
#include <atomic>
#include <set>

#include "solver/regular_solids.h"
#include "solver/solid_aggregation.h"
#include "solver/solid_layout.h"
#include "solver/solid_linear.h"
#include "solver/solid_loads.h"
#include "solver/solid_system.h"
#include "solver/solid_team.h"

namespace splicewright
{
namespace
{

// The matrix of a chain of nodes, each fastened to its neighbours by 3 x 3 blocks of one strong direction.
BlockMatrix<double, 3, 3> chain(std::int64_t n)
{
    BlockMatrix<double, 3, 3> A;
    A.n_rows = A.n_columns = n;
    A.starts.push_back(0);
    const Eigen::Vector3d strong(1, 0.5, -0.25);
    const Eigen::Matrix3d link = Eigen::Matrix3d::Identity() + 20 * strong * strong.transpose();
    for (std::int64_t i = 0; i < n; ++i)
    {
        const auto add = [&](std::int64_t j, const Eigen::Matrix3d& block)
        {
            A.places.push_back(static_cast<std::int32_t>(j));
            A.blocks.insert(A.blocks.end(), block.data(), block.data() + 9);
        };
        add(i, 2 * link + (i == 0 ? 1.0 : 0.0) * link);
        if (i > 0) add(i - 1, -link);
        if (i + 1 < n) add(i + 1, -link);
        A.starts.push_back(static_cast<std::int64_t>(A.places.size()));
    }
    return A;
}

double peak_bytes()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return 1024.0 * static_cast<double>(usage.ru_maxrss);
}

}  // namespace

TEST(SolidTeam, DoesEachTaskOnce)
{
    SolidTeam team(4);
    for (int round = 0; round < 2000; ++round)
    {
        const std::int64_t n = 1 + round % 17;
        std::vector<std::atomic<int>> done(static_cast<std::size_t>(n));
        team.run(n, [&](std::int64_t i) { ++done[static_cast<std::size_t>(i)]; });
        for (const auto& count : done) ASSERT_EQ(count.load(), 1);
    }
}

TEST(SolidTeam, PiecesCoverEverythingOnce)
{
    SolidTeam team(3);
    std::vector<std::atomic<int>> seen(1003);
    team.run_pieces(1003, 100,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (std::int64_t i = first; i < last; ++i) ++seen[static_cast<std::size_t>(i)];
                    });
    for (const auto& count : seen) EXPECT_EQ(count.load(), 1);
}

TEST(SolidLayout, HoldsEachElementOnceAndSplitsNodesIntoOwnAndShared)
{
    const SolidMesh mesh = regular::spliced_bar(4, 24);
    SolidTeam team(2);
    const SolidLayout layout = solid_layout(team, mesh, {}, {});
    std::multiset<std::int32_t> elements;
    for (const SolidBatches* batches : {&layout.straight, &layout.curved})
        for (const std::int32_t element : batches->elements)
            if (element >= 0) elements.insert(element);
    EXPECT_EQ(elements.size(), mesh.elements.size());
    EXPECT_EQ(std::set<std::int32_t>(elements.begin(), elements.end()).size(), mesh.elements.size());
    EXPECT_EQ(layout.parts.back().last_node, layout.n_own_nodes);
    EXPECT_LT(layout.n_own_nodes, layout.n_nodes);
    EXPECT_EQ(std::set<std::int32_t>(layout.node_of.begin(), layout.node_of.end()).size(), mesh.nodes.size());
}

TEST(SolidAggregation, EstimatesTheLargestEigenvalueFromBelow)
{
    const BlockMatrix<double, 3, 3> A = chain(40);
    SolidTeam team(1);
    Eigen::MatrixXd dense = Eigen::MatrixXd::Zero(120, 120), D = dense;
    for (std::int64_t i = 0; i < 40; ++i)
        for (std::int64_t n = A.start(i); n < A.end(i); ++n)
        {
            dense.block<3, 3>(3 * i, 3 * A.place(n)) = A.block(n);
            if (A.place(n) == i) D.block<3, 3>(3 * i, 3 * i) = A.block(n);
        }
    const double exact = Eigen::GeneralizedSelfAdjointEigenSolver<Eigen::MatrixXd>(dense, D).eigenvalues().maxCoeff();
    const double estimate = largest_eigenvalue<3>(team, A);
    EXPECT_LE(estimate, exact * (1 + 1e-12));
    EXPECT_GE(estimate, 0.97 * exact);
}

// Of straight elements: over curved ones a turn of the corners is not quite rigid.
TEST(SolidAggregation, CoarseMatrixHasNoEnergyInRigidMotions)
{
    const SolidMesh mesh = regular::round_bar({10, 60, 4, 20, regular::Curving::none});
    SolidTeam team(2);
    const SolidLayout layout = solid_layout(team, mesh, {}, {});
    const LinearLevel level = linear_level(team, mesh, layout, {{210000, 0.3}}, {}, {});
    const CoarseStep<3> step =
        coarse_step<3>(team, level.K, rigid_motions(level.places, level.held), largest_eigenvalue<3>(team, level.K));
    double largest = 0, scale = 0;
    for (std::int64_t i = 0; i < step.A.n_rows; ++i)
    {
        Eigen::Matrix<double, 6, 6> force = Eigen::Matrix<double, 6, 6>::Zero();
        for (std::int64_t n = step.A.start(i); n < step.A.end(i); ++n)
        {
            const Eigen::Matrix<double, 6, 6> part =
                step.A.block(n) * step.motions[static_cast<std::size_t>(step.A.place(n))];
            force += part;
            scale = std::max(scale, part.norm());
        }
        largest = std::max(largest, force.norm());
    }
    EXPECT_LT(largest, 1e-11 * scale);
    EXPECT_LT(10 * step.A.n_rows, level.n_nodes);
}

// One process for each test, so the peak is that of this model.
TEST(SolidSystem, NeedsTheMemoryThatItEstimates)
{
    SolidMesh mesh = regular::spliced_bar(7, 86);
    SolidBody body;
    body.steel = {{210000, 0.3}, {198000, 0.29}};
    for (const SolidMesh::Face& face : mesh.faces.at("left"))
        for (const std::int32_t node : face.nodes)
            for (int axis = 0; axis < 3; ++axis) body.held.push_back({node, axis, 0});
    const std::vector<NodeForces> loads{face_forces(mesh, "right", {{0, 0, 0}, {0, 0, 1e6}})};
    const double before = peak_bytes();
    const double residual = SolidSystem(mesh, body).solution(loads).loads[0].relative_residual;
    EXPECT_LE(residual, 1e-8);
    const double used = peak_bytes() - before, estimate = static_cast<double>(estimated_memory(mesh, 1));
    EXPECT_LT(used, 1.15 * estimate);
    EXPECT_GT(used, 0.5 * estimate);
}

}  // namespace splicewright
