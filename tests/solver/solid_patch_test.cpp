// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <Eigen/Eigenvalues>
#include <cmath>
#include <random>

#include "solver/regular_solids.h"
#include "solver/solid_element.h"
#include "solver/solid_loads.h"
#include "solver/solid_stress.h"
#include "solver/solid_system.h"

namespace splicewright
{
namespace
{

using regular::Curving;

const ElasticConstants steel{210000, 0.3};
constexpr double round_off = 1e-8;  // of the iteration, tolerance 1e-12, times the arms of a body of a few elements

// Any constant strain with a rotation.
const Eigen::Matrix3d slope{{1.1e-3, 4e-4, -2e-4}, {-7e-4, -5e-4, 9e-4}, {3e-4, 6e-4, 8e-4}};

// A round bar whose inner nodes are pushed about, middle nodes too; those on the boundary stay.
SolidMesh distorted(Curving curving, double push)
{
    SolidMesh mesh = regular::round_bar({10, 24, 3, 6, curving});
    std::vector<char> outer(mesh.nodes.size(), 0);
    for (const auto& [name, faces] : mesh.faces)
        for (const SolidMesh::Face& face : faces)
            for (const std::int32_t node : face.nodes) outer[static_cast<std::size_t>(node)] = 1;
    std::mt19937 random(7);
    std::uniform_real_distribution<double> amount(-push, push);
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        if (outer[i] == 0)
            for (double& coordinate : mesh.nodes[i]) coordinate += amount(random);
    return mesh;
}

SolidBody with_boundary_moved(const SolidMesh& mesh)
{
    SolidBody body;
    body.steel = {steel};
    for (const auto& [name, faces] : mesh.faces)
        for (const SolidMesh::Face& face : faces)
            for (const std::int32_t node : face.nodes)
                for (int axis = 0; axis < 3; ++axis)
                    body.held.push_back(
                        {node, axis, (slope * regular::place(mesh, static_cast<std::size_t>(node)))(axis)});
    return body;
}

Eigen::Matrix<double, 6, 1> exact_stress()
{
    const Eigen::Matrix3d e = 0.5 * (slope + slope.transpose());
    return solid_stress(steel, {e(0, 0), e(1, 1), e(2, 2), 2 * e(0, 1), 2 * e(1, 2), 2 * e(0, 2)});
}

SolidSettings fine()
{
    SolidSettings settings;
    settings.tolerance = 1e-12;
    return settings;
}

}  // namespace

TEST(SolidPatch, LinearDisplacementIsExactOnDistortedCurvedElements)
{
    for (const auto& [curving, push] :
         {std::pair{Curving::none, 0.0}, std::pair{Curving::skin, 0.2}, std::pair{Curving::all, 0.2}})
    {
        const SolidMesh mesh = distorted(curving, push);
        const NodeForces none = NodeForces::Zero(3, static_cast<Eigen::Index>(mesh.nodes.size()));
        const Eigen::Matrix3Xd u =
            SolidSystem(mesh, with_boundary_moved(mesh), fine()).solution({none}).loads[0].displacement;
        const Eigen::Matrix3Xd exact = regular::at_nodes(mesh, [](const Eigen::Vector3d& p) { return slope * p; });
        EXPECT_LT((u - exact).norm(), round_off * exact.norm());
        const SolidStress stress = recovered_stress(mesh, {steel}, u);
        EXPECT_LT((stress.value.colwise() - exact_stress()).cwiseAbs().maxCoeff(), 1e-6 * exact_stress().norm());
    }
}

TEST(SolidPatch, ConstantStressBalancesItsTractionsOnDistortedCurvedElements)
{
    // The forces of a constant stress on inner nodes vanish, because the rule integrates them exactly.
    const SolidMesh mesh = distorted(Curving::all, 0.2);
    const Eigen::Matrix3Xd u = regular::at_nodes(mesh, [](const Eigen::Vector3d& p) { return slope * p; });
    Eigen::Matrix3Xd forces = Eigen::Matrix3Xd::Zero(3, u.cols());
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
    {
        SolidElementNodes local;
        for (int n = 0; n < 10; ++n) local.col(n) = u.col(mesh.elements[e][static_cast<std::size_t>(n)]);
        const Eigen::Matrix<double, 30, 1> f =
            solid_stiffness(steel, nodes_of(mesh, e)) * Eigen::Map<const Eigen::Matrix<double, 30, 1>>(local.data());
        for (int n = 0; n < 10; ++n) forces.col(mesh.elements[e][static_cast<std::size_t>(n)]) += f.segment<3>(3 * n);
    }
    const double largest = forces.cwiseAbs().maxCoeff();
    std::vector<char> outer(mesh.nodes.size(), 0);
    for (const auto& [name, faces] : mesh.faces)
        for (const SolidMesh::Face& face : faces)
            for (const std::int32_t node : face.nodes) outer[static_cast<std::size_t>(node)] = 1;
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
    {
        if (outer[i] != 0) continue;
        EXPECT_LT(forces.col(static_cast<Eigen::Index>(i)).norm(), 1e-11 * largest) << i;
    }
}

TEST(SolidElement, ShapeFunctionsSumToOneAndAreOneAtTheirNodes)
{
    for (const TetrahedronPoint& point : eight_points()) EXPECT_NEAR(solid_shape_values(point.at).sum(), 1, 1e-14);
    for (std::size_t e = 0; e < 6; ++e)
    {
        Barycentric at{};
        for (const int corner : edge_corners[e]) at[static_cast<std::size_t>(corner)] = 0.5;
        EXPECT_NEAR(solid_shape_values(at)(static_cast<int>(4 + e)), 1, 1e-14);
        EXPECT_NEAR(solid_shape_values(at).cwiseAbs().sum(), 1, 1e-14);
    }
}

TEST(SolidElement, QuadratureIsExactToItsDegree)
{
    // Integral of l0^a l1^b l2^c over the reference element: a! b! c! / (a + b + c + 3)!.
    const auto factorial = [](int n) { return std::tgamma(n + 1); };
    for (int a = 0; a <= 3; ++a)
        for (int b = 0; a + b <= 3; ++b)
            for (int c = 0; a + b + c <= 3; ++c)
            {
                const double exact = factorial(a) * factorial(b) * factorial(c) / factorial(a + b + c + 3);
                const auto sum = [&](const auto& points)
                {
                    double total = 0;
                    for (const TetrahedronPoint& p : points)
                        total += p.weight * std::pow(p.at[0], a) * std::pow(p.at[1], b) * std::pow(p.at[2], c);
                    return total;
                };
                EXPECT_NEAR(sum(eight_points()), exact, 1e-15);
                if (a + b + c > 2) continue;
                EXPECT_NEAR(sum(four_points()), exact, 1e-15);
            }
}

TEST(SolidElement, StiffnessHasExactlySixMotionsWithoutForce)
{
    const SolidMesh mesh = distorted(Curving::all, 0.2);
    for (const std::size_t element : {std::size_t{0}, std::size_t{40}, std::size_t{200}})
    {
        const Eigen::VectorXd sorted = Eigen::SelfAdjointEigenSolver<Eigen::Matrix<double, 30, 30>>(
                                           solid_stiffness(steel, nodes_of(mesh, element)))
                                           .eigenvalues();
        EXPECT_LT(std::abs(sorted(5)), 1e-10 * sorted(29));
        EXPECT_GT(sorted(6), 1e-5 * sorted(29));
    }
}

}  // namespace splicewright
