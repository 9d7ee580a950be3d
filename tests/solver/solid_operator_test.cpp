// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_operator.h"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>

#include "solver/regular_solids.h"
#include "solver/solid_element.h"

namespace splicewright
{
namespace
{

using regular::Curving;

const std::vector<ElasticConstants> steels{{210000, 0.3}, {90000, 0.35}};

// A bar with straight and bent elements and two steels.
SolidMesh two_steels(Curving curving)
{
    SolidMesh mesh = regular::round_bar({10, 40, 4, 9, curving});
    regular::set_regions(mesh, [](const Eigen::Vector3d& p) { return p.z() > 18 ? 1 : 0; });
    return mesh;
}

// Every way in which this processor can run the kernels.
std::vector<const SolidKernels*> kernels_here()
{
    std::vector<const SolidKernels*> all;
    for (const SolidKernels* kernels : {portable_kernels(), avx2_kernels(), avx512_kernels()})
        if (kernels != nullptr) all.push_back(kernels);
    return all;
}

struct Applied
{
    Eigen::Matrix3Xd forces;    // [3, n mesh nodes]
    double largest_unused = 0;  // of the fourth number of a node
};

template <class Real>
Applied applied(const SolidMesh& mesh, const Eigen::Matrix3Xd& u, const SolidKernels& kernels, int n_threads)
{
    SolidTeam team(n_threads);
    const SolidLayout layout = solid_layout(team, mesh, {}, {});
    const ElementFactors<double> factors = element_factors(team, mesh, layout, steels);
    const ElementFactors<float> single = in_single_precision(team, factors);
    SolidOperator<Real> K;
    K.kernels = &kernels;
    K.layout = &layout;
    if constexpr (sizeof(Real) == 4) K.factors = &single;
    else K.factors = &factors;
    NodeValues<Real> x(static_cast<std::size_t>(layout.n_nodes) * node_stride),
        y(static_cast<std::size_t>(layout.n_rows) * node_stride);
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        for (std::size_t a = 0; a < 3; ++a)
            x[static_cast<std::size_t>(layout.node_of[i]) * node_stride + a] =
                static_cast<Real>(u(static_cast<int>(a), static_cast<Eigen::Index>(i)));
    K.apply(team, x.data(), y.data());
    Applied result;
    result.forces.resizeLike(u);
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
    {
        const Real* row = y.data() + static_cast<std::size_t>(layout.node_of[i]) * node_stride;
        for (int a = 0; a < 3; ++a) result.forces(a, static_cast<Eigen::Index>(i)) = row[a];
        result.largest_unused = std::max(result.largest_unused, std::abs(static_cast<double>(row[3])));
    }
    return result;
}

Eigen::Matrix3Xd element_by_element(const SolidMesh& mesh, const Eigen::Matrix3Xd& u)
{
    Eigen::Matrix3Xd forces = Eigen::Matrix3Xd::Zero(3, u.cols());
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
    {
        SolidElementNodes local;
        for (int n = 0; n < 10; ++n) local.col(n) = u.col(mesh.elements[e][static_cast<std::size_t>(n)]);
        const Eigen::Matrix<double, 30, 1> f =
            solid_stiffness(steels[static_cast<std::size_t>(mesh.regions[e])], nodes_of(mesh, e)) *
            Eigen::Map<const Eigen::Matrix<double, 30, 1>>(local.data());
        for (int n = 0; n < 10; ++n) forces.col(mesh.elements[e][static_cast<std::size_t>(n)]) += f.segment<3>(3 * n);
    }
    return forces;
}

Eigen::Matrix3Xd wavy(const SolidMesh& mesh)
{
    return regular::at_nodes(
        mesh, [](const Eigen::Vector3d& p)
        { return Eigen::Vector3d(std::sin(p.x() + 2 * p.z()), p.y() * p.y() - p.z(), std::cos(p.y() - p.x())); });
}

}  // namespace

TEST(SolidOperator, IsTheSumOfTheElementStiffnesses)
{
    for (const Curving curving : {Curving::none, Curving::skin, Curving::all})
    {
        const SolidMesh mesh = two_steels(curving);
        const Eigen::Matrix3Xd u = wavy(mesh), expected = element_by_element(mesh, u);
        for (const SolidKernels* kernels : kernels_here())
        {
            EXPECT_LT((applied<double>(mesh, u, *kernels, 1).forces - expected).norm(), 1e-13 * expected.norm())
                << kernels->name;
            EXPECT_LT((applied<float>(mesh, u, *kernels, 1).forces - expected).norm(), 1e-6 * expected.norm())
                << kernels->name;
        }
    }
}

TEST(SolidOperator, GivesTheSameBitsOnAnyNumberOfThreads)
{
    const SolidMesh mesh = two_steels(Curving::skin);
    const Eigen::Matrix3Xd u = wavy(mesh);
    const Eigen::Matrix3Xd alone = applied<double>(mesh, u, best_kernels(), 1).forces;
    for (const int n_threads : {2, 3, 8}) EXPECT_EQ(applied<double>(mesh, u, best_kernels(), n_threads).forces, alone);
}

TEST(SolidOperator, KeepsTheUnusedNumberOfANodeZero)
{
    const SolidMesh mesh = two_steels(Curving::all);
    for (const SolidKernels* kernels : kernels_here())
    {
        EXPECT_EQ(applied<float>(mesh, wavy(mesh), *kernels, 2).largest_unused, 0.0) << kernels->name;
        EXPECT_EQ(applied<double>(mesh, wavy(mesh), *kernels, 2).largest_unused, 0.0) << kernels->name;
    }
}

TEST(SolidOperator, RigidMotionsGiveNoForce)
{
    const SolidMesh mesh = two_steels(Curving::all);
    const double scale = element_by_element(mesh, wavy(mesh)).norm();
    for (int motion = 0; motion < 6; ++motion)
    {
        const Eigen::Vector3d axis = Eigen::Vector3d::Unit(motion % 3);
        const Eigen::Matrix3Xd u = regular::at_nodes(
            mesh, [&](const Eigen::Vector3d& p) { return motion < 3 ? axis : Eigen::Vector3d(axis.cross(p) / 10); });
        EXPECT_LT(applied<double>(mesh, u, best_kernels(), 1).forces.norm(), 1e-12 * scale);
    }
}

}  // namespace splicewright
