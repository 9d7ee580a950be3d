// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "solver/regular_solids.h"
#include "solver/solid_loads.h"
#include "solver/solid_stress.h"
#include "solver/solid_system.h"
#include "solver/stress_field.h"

namespace splicewright
{
namespace
{

using regular::BarShape;
using regular::Curving;

constexpr double pi = std::numbers::pi;
const ElasticConstants steel{210000, 0.3};

struct Round
{
    double r, length;
    [[nodiscard]] double A() const { return pi * r * r; }
    [[nodiscard]] double J() const { return pi / 2 * std::pow(r, 4); }
    [[nodiscard]] double I() const { return J() / 2; }
};
constexpr Round bar{10, 60};

// Nothing holds the bar; both ends carry the load in balance.
Eigen::Matrix3Xd solved(const SolidMesh& mesh, const FaceLoad& right)
{
    SolidBody body;
    body.steel = {steel};
    const NodeForces load =
        face_forces(mesh, "right", right) + face_forces(mesh, "left", {-right.force, -right.moment});
    return SolidSystem(mesh, body).solution({load}).loads[0].displacement;
}

double work(const SolidMesh& mesh, const FaceLoad& right, const Eigen::Matrix3Xd& u)
{
    const NodeForces load =
        face_forces(mesh, "right", right) + face_forces(mesh, "left", {-right.force, -right.moment});
    return load.cwiseProduct(u).sum();
}

SolidMesh refined(int n, Curving curving) { return regular::round_bar({bar.r, bar.length, 2 * n, 6 * n, curving}); }

// Largest error of the surface stress against an exact field, over the exact largest stress, one radius off the ends.
template <class Exact>
double surface_error(const SolidMesh& mesh, const Eigen::Matrix3Xd& u, double largest, const Exact& exact)
{
    double worst = 0;
    for (const SurfacePlace& place : free_surface_stress(mesh, {steel}, u, "outside").places)
    {
        const Eigen::Vector3d p = regular::place(mesh, static_cast<std::size_t>(place.node));
        if (p.z() < bar.r || p.z() > bar.length - bar.r) continue;
        worst = std::max(worst, (place.stress - exact(p)).norm() / largest);
    }
    return worst;
}

using Stress = Eigen::Matrix<double, 6, 1>;

constexpr double T = 1e5, M = 5e4, F = 2e4;  // N mm, N mm, N

Stress torsion_stress(const Eigen::Vector3d& p) { return {0, 0, 0, 0, T * p.x() / bar.J(), -T * p.y() / bar.J()}; }
// Moment about x: tension where y is positive.
Stress bending_stress(const Eigen::Vector3d& p) { return {0, 0, M * p.y() / bar.I(), 0, 0, 0}; }

// Least-squares slope of log error against log size for halved sizes.
double order_of(const std::vector<double>& errors, const std::vector<double>& sizes)
{
    double sx = 0, sy = 0, sxx = 0, sxy = 0;
    const auto n = static_cast<double>(errors.size());
    for (std::size_t i = 0; i < errors.size(); ++i)
    {
        const double x = std::log(sizes[i]), y = std::log(errors[i]);
        sx += x, sy += y, sxx += x * x, sxy += x * y;
    }
    return (n * sxy - sx * sy) / (n * sxx - sx * sx);
}

}  // namespace

TEST(SolidLoads, CarryTheExactResultantsOnFacetedAndCurvedEnds)
{
    for (const Curving curving : {Curving::none, Curving::skin})
    {
        const SolidMesh mesh = regular::round_bar({10, 30, 2, 4, curving});
        const FaceLoad asked{{100, -50, 700}, {3e4, -1e4, 8e4}};
        const NodeForces forces = face_forces(mesh, "right", asked);
        const Eigen::Vector3d centre(0, 0, 30);
        Eigen::Vector3d force(0, 0, 0), moment(0, 0, 0);
        for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        {
            const Eigen::Vector3d f = forces.col(static_cast<Eigen::Index>(i));
            force += f;
            moment += (regular::place(mesh, i) - centre).cross(f);
        }
        EXPECT_LT((force - asked.force).norm(), 1e-10 * asked.force.norm());
        EXPECT_LT((moment - asked.moment).norm(), 1e-10 * asked.moment.norm());
    }
}

TEST(SolidLoads, PressureOnAClosedSurfaceBalances)
{
    const SolidMesh mesh = regular::round_bar({10, 30, 3, 5, Curving::skin});
    NodeForces forces =
        pressure_forces(mesh, "left", 5) + pressure_forces(mesh, "right", 5) + pressure_forces(mesh, "outside", 5);
    EXPECT_LT(forces.rowwise().sum().norm(), 1e-10 * forces.colwise().norm().sum());
    // Even pressure all round is a state of even stress: volume change p (1 - 2 nu) / E in each direction.
    SolidBody body;
    body.steel = {steel};
    const Eigen::Matrix3Xd u = SolidSystem(mesh, body).solution({forces}).loads[0].displacement;
    const SolidStress stress = recovered_stress(mesh, {steel}, u);
    const Stress exact{-5, -5, -5, 0, 0, 0};
    EXPECT_LT((stress.value.colwise() - exact).cwiseAbs().maxCoeff(), 5e-6);
    for (const SurfacePlace& place : free_surface_stress(mesh, {steel}, u, "outside", 5).places)
        EXPECT_LT((place.stress - exact).norm(), 1e-5);
}

TEST(SolidBar, PullsEvenly)
{
    const SolidMesh mesh = refined(2, Curving::none);
    const double area = face_area(mesh, "right").area;
    const FaceLoad pull{{0, 0, F}, {0, 0, 0}};
    const Eigen::Matrix3Xd u = solved(mesh, pull);
    // The exact displacement is linear, so it is found but for the tolerance of the iteration.
    EXPECT_NEAR(work(mesh, pull, u), F * F * bar.length / (steel.E * area),
                1e-7 * F * F * bar.length / (steel.E * area));
    const SolidStress stress = recovered_stress(mesh, {steel}, u);
    EXPECT_LT((stress.value.colwise() - Stress{0, 0, F / area, 0, 0, 0}).cwiseAbs().maxCoeff(), 1e-5 * F / area);
}

TEST(SolidBar, BendsAsTheBeamDoes)
{
    const SolidMesh mesh = refined(2, Curving::skin);
    for (const double turn : {0.0, 0.7})
    {
        const FaceLoad couple{{0, 0, 0}, {M * std::cos(turn), M * std::sin(turn), 0}};
        const double exact = M * M * bar.length / (steel.E * bar.I());
        EXPECT_NEAR(work(mesh, couple, solved(mesh, couple)), exact, 4e-4 * exact);
    }
}

TEST(SolidBar, TwistErrorFallsWithFourthOrder)
{
    const double exact = T * T * bar.length / (steel.G() * bar.J());
    const FaceLoad twist{{0, 0, 0}, {0, 0, T}};
    std::vector<double> errors, sizes;
    for (const int n : {1, 2, 3})
    {
        const SolidMesh mesh = refined(n, Curving::skin);
        errors.push_back(std::abs(work(mesh, twist, solved(mesh, twist)) / exact - 1));
        sizes.push_back(1.0 / n);
    }
    EXPECT_GT(order_of(errors, sizes), 3.5);
    EXPECT_LT(errors.back(), 1e-4);
}

TEST(SolidBar, SurfaceStressErrorFallsWithSecondOrder)
{
    const FaceLoad twist{{0, 0, 0}, {0, 0, T}}, couple{{0, 0, 0}, {M, 0, 0}};
    std::vector<double> torsion_errors, bending_errors, sizes;
    for (const int n : {1, 2, 3})
    {
        const SolidMesh mesh = refined(n, Curving::skin);
        torsion_errors.push_back(
            surface_error(mesh, solved(mesh, twist), std::sqrt(2.0) * T * bar.r / bar.J(), torsion_stress));
        bending_errors.push_back(surface_error(mesh, solved(mesh, couple), M * bar.r / bar.I(), bending_stress));
        sizes.push_back(1.0 / n);
    }
    EXPECT_GT(order_of(torsion_errors, sizes), 1.8);
    EXPECT_GT(order_of(bending_errors, sizes), 1.8);
    EXPECT_LT(torsion_errors.back(), 0.01);
    EXPECT_LT(bending_errors.back(), 0.01);
}

// Torsion constants of [TimoshenkoGoodier1970] chapter 10: ellipse pi a^3 b^3 / (a^2 + b^2), square 0.1406 side^4.
double twist_rate(const SolidMesh& mesh, const Eigen::Matrix3Xd& u, double from, double to)
{
    const auto rotation = [&](double z)
    {
        double turn = 0, arms = 0;
        for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        {
            const Eigen::Vector3d p = regular::place(mesh, i);
            if (std::abs(p.z() - z) > 1e-6) continue;
            turn += p.x() * u(1, static_cast<Eigen::Index>(i)) - p.y() * u(0, static_cast<Eigen::Index>(i));
            arms += p.head<2>().squaredNorm();
        }
        return turn / arms;
    };
    return (rotation(to) - rotation(from)) / (to - from);
}

TEST(SolidBar, AnEllipseTwistsByItsTorsionConstant)
{
    constexpr double a = 12, b = 6, length = 120;
    SolidMesh mesh = regular::round_bar({1, length, 4, 30, Curving::skin});
    regular::move_nodes(mesh, [](const Eigen::Vector3d& p) { return Eigen::Vector3d(a * p.x(), b * p.y(), p.z()); });
    const Eigen::Matrix3Xd u = solved(mesh, {{0, 0, 0}, {0, 0, T}});
    const double J = pi * std::pow(a * b, 3) / (a * a + b * b);
    EXPECT_NEAR(twist_rate(mesh, u, 40, 80), T / (steel.G() * J), 2e-3 * T / (steel.G() * J));
}

TEST(SolidBar, ASquareTwistsByItsTorsionConstant)
{
    constexpr double side = 20, length = 120;
    SolidMesh mesh = regular::box({side, side, length, 6, 6, 24});
    regular::move_nodes(
        mesh, [](const Eigen::Vector3d& p) { return Eigen::Vector3d(p.x() - side / 2, p.y() - side / 2, p.z()); });
    const Eigen::Matrix3Xd u = solved(mesh, {{0, 0, 0}, {0, 0, T}});
    const double J = 0.1406 * std::pow(side, 4);
    // Four digits are printed; the mesh adds half a thousandth.
    EXPECT_NEAR(twist_rate(mesh, u, 40, 80), T / (steel.G() * J), 2e-3 * T / (steel.G() * J));
}

TEST(SolidStress, IsNeverAveragedAcrossMaterials)
{
    // Two steels side by side under the same strain: their stresses differ in the ratio of E, also at shared nodes.
    SolidMesh mesh = regular::box({10, 10, 10, 2, 2, 2});
    regular::set_regions(mesh, [](const Eigen::Vector3d& p) { return p.x() < 5 ? 0 : 1; });
    const std::vector<ElasticConstants> both{{200000, 0.3}, {100000, 0.3}};
    const Eigen::Matrix3Xd u =
        regular::at_nodes(mesh, [](const Eigen::Vector3d& p) { return Eigen::Vector3d(0, 0, 1e-3 * p.z()); });
    const SolidStress stress = recovered_stress(mesh, both, u);
    int shared = 0;
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
    {
        const std::int64_t a = entry_of(stress, static_cast<std::int32_t>(i), 0),
                           b = entry_of(stress, static_cast<std::int32_t>(i), 1);
        if (a < 0 || b < 0) continue;
        ++shared;
        EXPECT_NEAR(stress.value(2, a), 2 * stress.value(2, b), 1e-9 * stress.value(2, a));
    }
    EXPECT_EQ(shared, 25);
}

}  // namespace splicewright
