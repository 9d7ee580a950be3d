// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/elements.h"

#include <gtest/gtest.h>

#include <Eigen/Eigenvalues>

#include "tests/solver/hand_made.h"

namespace splicewright
{
namespace
{

constexpr LoadKind kinds[] = {LoadKind::torsion, LoadKind::axial, LoadKind::bending};

TriangleNodes bent_triangle()
{
    TriangleNodes nodes;
    nodes << 1, 4, 2, 2.4, 3.1, 1.3,  //
        5, 6, 9, 5.3, 7.6, 7.1;
    return nodes;
}

TriangleNodes triangle_on_the_axis()
{
    TriangleNodes nodes;
    nodes << 1, 3, 2, 2, 2.6, 1.4,  //
        0, 0, 2, 0, 1.1, 1;
    return nodes;
}

// Rigid motions seen as amplitudes u_r, u_theta, u_z. Torsion: turning about the axis. Axial: moving along it.
// Bending: moving across the axis, u_x = 1, so u_r = cos, u_theta = -sin; and turning about a line across it,
// u_x = -z, u_z = x = r cos.
std::vector<sample::Field> rigid_motions(LoadKind kind)
{
    switch (kind)
    {
        case LoadKind::torsion: return {[](double, double r) { return Eigen::Vector3d(0, r, 0); }};
        case LoadKind::axial: return {[](double, double) { return Eigen::Vector3d(0, 0, 1); }};
        case LoadKind::bending:
            return {[](double, double) { return Eigen::Vector3d(1, -1, 0); },
                    [](double z, double r) { return Eigen::Vector3d(-z, z, r); }};
    }
    return {};
}

Eigen::VectorXd at_nodes(LoadKind kind, const TriangleNodes& nodes, const sample::Field& field)
{
    Mesh one;
    one.node = nodes;
    return sample::nodal(one, kind, field);
}

TEST(ElementStiffness, IsSymmetric)
{
    for (const LoadKind kind : kinds)
    {
        const ElementMatrix K = element_stiffness(kind, sample::plain_steel, bent_triangle());
        // Products of seven points added in one order on both sides of the diagonal, but multiplied in two.
        EXPECT_LT((K - K.transpose()).norm(), 1e-14 * K.norm());
    }
}

TEST(ElementStiffness, HasExactlyTheRigidMotionsAsModesWithoutEnergy)
{
    for (const TriangleNodes& nodes : {bent_triangle(), triangle_on_the_axis()})
        for (const LoadKind kind : kinds)
        {
            const ElementMatrix K = element_stiffness(kind, sample::plain_steel, nodes);
            const Eigen::VectorXd energy = Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd>(K).eigenvalues();
            const auto expected = static_cast<Eigen::Index>(rigid_motions(kind).size());  // 1, 1, 2
            const double largest = energy(energy.size() - 1);
            for (Eigen::Index i = 0; i < energy.size(); ++i)
                if (i < expected) EXPECT_LT(std::abs(energy(i)), 1e-13 * largest) << "round-off";
                else EXPECT_GT(energy(i), 1e-5 * largest) << "a soft mode that is no rigid motion";
        }
}

TEST(ElementStiffness, RigidMotionsGiveNeitherStressNorForce)
{
    for (const TriangleNodes& nodes : {bent_triangle(), triangle_on_the_axis()})
        for (const LoadKind kind : kinds)
            for (const sample::Field& field : rigid_motions(kind))
            {
                const Eigen::VectorXd u = at_nodes(kind, nodes, field);
                const ElementMatrix K = element_stiffness(kind, sample::plain_steel, nodes);
                EXPECT_LT((K * u).norm(), 1e-13 * K.norm() * u.norm());  // round-off
                for (const QuadraturePoint& point : quadrature())
                    EXPECT_LT((strain_at(kind, nodes, point.at).B * u).norm(), 1e-13 * u.norm());
            }
}

TEST(ElementStiffness, IsTheEnergyOfTheWholeRing)
{
    // Uniform stretch e of a ring with free contraction: energy E e^2 / 2 times the volume (2 pi times the moment of
    // area).
    TriangleNodes nodes;
    nodes << 0, 6, 0, 3, 3, 0,  //
        3, 3, 9, 3, 6, 6;
    const double moment = 18 * 5;  // area 18 mm^2, centroid at r = 5 mm
    const Eigen::VectorXd u =
        at_nodes(LoadKind::axial, nodes, [](double z, double r) { return Eigen::Vector3d(-0.3 * r, 0, z); });
    const double energy = u.dot(element_stiffness(LoadKind::axial, sample::plain_steel, nodes) * u) / 2;
    EXPECT_NEAR(energy, 210000.0 / 2 * 2 * 3.14159265358979 * moment, 1e-12 * energy);  // round-off
}

TEST(StrainAt, IsTheDerivativeOfTheDisplacement)
{
    const sample::Field linear_in_space = [](double z, double r)
    { return Eigen::Vector3d(0.3 * z + 0.7 * r, 0.4 * r - 0.2 * z, 0.1 * z - 0.6 * r); };
    for (const LoadKind kind : kinds)
        for (const QuadraturePoint& point : quadrature())
        {
            const TriangleNodes nodes = bent_triangle();
            const Eigen::Vector2d place = nodes * shape_values(point.at);
            const Eigen::Matrix<double, 6, 1> expected = sample::strain_of(kind, linear_in_space, place(0), place(1));
            Eigen::Matrix<double, 6, 1> relevant = expected;
            if (kind == LoadKind::torsion) relevant(0) = relevant(1) = relevant(2) = relevant(5) = 0;
            if (kind == LoadKind::axial) relevant(3) = relevant(4) = 0;
            const Eigen::VectorXd u = at_nodes(kind, nodes, linear_in_space);
            const Eigen::Matrix<double, 6, 1> strain = strain_at(kind, nodes, point.at).B * u;
            EXPECT_LT((strain - relevant).norm(), 1e-11);  // differences over 1e-3 mm of numbers of order 5
        }
}

TEST(StressOf, IsHookesLaw)
{
    Eigen::Matrix<double, 6, 1> strain;
    strain << -0.3e-3, -0.3e-3, 1e-3, 2e-3, 0, 0;  // pulled along z with free contraction, sheared in r-theta
    const Eigen::Matrix<double, 6, 1> stress = stress_of(sample::plain_steel, strain);
    EXPECT_NEAR(stress(2), 210, 1e-11);  // E e; round-off of 1e2
    EXPECT_NEAR(stress(0), 0, 1e-11);
    EXPECT_NEAR(stress(1), 0, 1e-11);
    EXPECT_NEAR(stress(3), 210000 / 2.6 * 2e-3, 1e-11);  // G gamma
}

}  // namespace
}  // namespace splicewright
