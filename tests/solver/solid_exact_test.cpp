// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>
#include <functional>
#include <numbers>

#include "solver/solid_loads.h"
#include "solver/solid_stress.h"
#include "tests/solver/solid_exact_bodies.h"

namespace splicewright
{
namespace
{

using samples::Curving;
using samples::ExactBody;
using samples::hold;

constexpr double pi = std::numbers::pi;
const ElasticConstants steel{210000, 0.3};

// Largest error of the surface stress over the largest stress.
double surface_error(const ExactBody& exact)
{
    double worst = 0, largest = 0;
    for (const SurfacePlace& place :
         free_surface_stress(exact.mesh, exact.body.steel, samples::displacement_of(exact), exact.face, exact.pressure)
             .places)
    {
        const Eigen::Vector3d p = samples::place(exact.mesh, static_cast<std::size_t>(place.node));
        if (!exact.counts(p)) continue;
        largest = std::max(largest, exact.stress(p).norm());
        worst = std::max(worst, (place.stress - exact.stress(p)).norm());
    }
    return worst / largest;
}

double work(const ExactBody& exact) { return exact.load.cwiseProduct(samples::displacement_of(exact)).sum(); }

Eigen::Matrix3Xd twisted(const SolidMesh& mesh, double torque)
{
    SolidBody body;
    body.steel = {steel};
    return SolidSystem(mesh, body)
        .solution({face_forces(mesh, "right", {{0, 0, 0}, {0, 0, torque}}) -
                   face_forces(mesh, "left", {{0, 0, 0}, {0, 0, torque}})})
        .loads[0]
        .displacement;
}

// Rotation per length between two heights, each the mean over its nodes about their centre.
double twist_rate(const SolidMesh& mesh, const Eigen::Matrix3Xd& u, double from, double to)
{
    const auto rotation = [&](double z)
    {
        Eigen::Vector2d centre(0, 0), shift(0, 0);
        std::vector<Eigen::Index> there;
        for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
            if (std::abs(mesh.nodes[i][2] - z) < 1e-6) there.push_back(static_cast<Eigen::Index>(i));
        for (const Eigen::Index i : there)
        {
            centre += samples::place(mesh, static_cast<std::size_t>(i)).head<2>() / static_cast<double>(there.size());
            shift += u.col(i).head<2>() / static_cast<double>(there.size());
        }
        double turn = 0, arms = 0;
        for (const Eigen::Index i : there)
        {
            const Eigen::Vector2d arm = samples::place(mesh, static_cast<std::size_t>(i)).head<2>() - centre;
            const Eigen::Vector2d moved = u.col(i).head<2>() - shift;
            turn += arm.x() * moved.y() - arm.y() * moved.x();
            arms += arm.squaredNorm();
        }
        EXPECT_GT(there.size(), 3U);
        return turn / arms;
    };
    return (rotation(to) - rotation(from)) / (to - from);
}

Stress6 surface_value(const SolidMesh& mesh, const FreeSurfaceStress& surface, const Eigen::Vector3d& where)
{
    for (const SurfacePlace& place : surface.places)
        if ((samples::place(mesh, static_cast<std::size_t>(place.node)) - where).norm() < 1e-6) return place.stress;
    ADD_FAILURE() << "no place there";
    return Stress6::Constant(NAN);
}

double value_at(const SolidMesh& mesh, const SolidStress& stress, const Eigen::Vector3d& where, Eigen::Index component)
{
    for (std::size_t i = 0; i < stress.node.size(); ++i)
        if ((samples::place(mesh, static_cast<std::size_t>(stress.node[i])) - where).norm() < 1e-6)
            return stress.value(component, static_cast<Eigen::Index>(i));
    ADD_FAILURE() << "no node there";
    return NAN;
}

}  // namespace

TEST(SolidExact, ThickBodiesUnderPressureConvergeWithSecondOrderInStressAndFourthInEnergy)
{
    using Make = std::function<ExactBody(int)>;
    using Work = std::function<double(int)>;
    const auto check = [](const Make& make, const Work& exact_work, int n)
    {
        const ExactBody coarse = make(n), fine = make(2 * n);
        EXPECT_GT(std::log2(surface_error(coarse) / surface_error(fine)), 1.5) << coarse.name;
        EXPECT_LT(surface_error(fine), 0.03) << coarse.name;
        const double off = std::abs(work(coarse) / exact_work(n) - 1),
                     less = std::abs(work(fine) / exact_work(2 * n) - 1);
        EXPECT_GT(std::log2(off / less), 3) << coarse.name;
        EXPECT_LT(less, 1e-3) << coarse.name;
    };
    // Displacement at the inside, [TimoshenkoGoodier1970] articles 28 and 136, times pressure and area.
    constexpr double p = 100, a = 20, b = 40, nu = 0.3;
    const double u_cylinder = (1 + nu) * p * a / (steel.E * (b * b - a * a)) * ((1 - 2 * nu) * a * a + b * b);
    EXPECT_NEAR(u_cylinder, 0.0181587, 5e-8);
    check([](int n) { return samples::thick_cylinder(n); },
          [=](int n) { return p * u_cylinder * pi / 2 * a * (b - a) / n; }, 3);
    const double hoop = p / 7 * (1 + 4), u_sphere = a / steel.E * ((1 - nu) * hoop + nu * p);
    EXPECT_NEAR(u_sphere, 0.00761905, 5e-9);
    check([](int n) { return samples::thick_sphere(n); }, [=](int) { return p * u_sphere * pi / 2 * a * a; }, 2);
}

TEST(SolidExact, AHoleInAWidePlateTriplesTheStress)
{
    const ExactBody exact = samples::plate_with_hole(8, 0);
    double largest = 0;
    for (const SurfacePlace& place :
         free_surface_stress(exact.mesh, exact.body.steel, samples::displacement_of(exact), "x0").places)
        largest = std::max(largest, place.stress(0));
    EXPECT_NEAR(largest, 300, 3);
    EXPECT_LT(surface_error(exact), 0.015);
}

// [TimoshenkoGoodier1970] articles 109 and 110: rectangle J = k1 b c^3; half-round J = 0.297557 R^4, from its series.
TEST(SolidExact, RectanglesAndTheHalfRoundTwistByTheirTorsionConstants)
{
    constexpr double T = 1e5;
    for (const auto& [b_over_c, k1] : {std::pair{1.0, 0.140577}, {1.5, 0.195761}, {4.0, 0.280813}})
    {
        constexpr double c = 12;
        const double b = b_over_c * c, length = 4 * b + 36;
        const SolidMesh mesh = samples::box({b, c, length, static_cast<int>(6 * std::sqrt(b_over_c)), 6, 24});
        const double exact = T / (steel.G() * k1 * b * c * c * c);
        EXPECT_NEAR(twist_rate(mesh, twisted(mesh, T), length / 3, 2 * length / 3), exact, 2e-3 * exact) << b_over_c;
    }
    constexpr double R = 10, length = 72;
    const SolidMesh half = samples::kept_part(samples::round_bar({R, length, 6, 24, Curving::skin}), "flat",
                                              [](const Eigen::Vector3d& p) { return p.y() > 0; });
    const double exact = T / (steel.G() * 0.297557 * std::pow(R, 4));
    EXPECT_NEAR(twist_rate(half, twisted(half, T), length / 3, 2 * length / 3), exact, 2e-3 * exact);
}

// Shear at mid-length, [TimoshenkoGoodier1970] article 122: at the centre V (3 + 2 nu) R^2 / (8 I (1 + nu)).
TEST(SolidExact, ARoundCantileverHasTheShearOfItsSection)
{
    constexpr double R = 25, L = 200, V = 10000, nu = 0.3;
    const double I = pi / 4 * std::pow(R, 4);
    const SolidMesh mesh = samples::round_bar({R, L, 6, 24, Curving::skin});
    SolidBody body;
    body.steel = {steel};
    hold(body, mesh, [](const Eigen::Vector3d& p) { return p.z() == 0 ? 7 : 0; });
    const SolidAnswer answer =
        SolidSystem(mesh, body).solution({face_forces(mesh, "right", {{0, V, 0}, {0, 0, 0}})}).loads[0];
    const SolidStress stress = recovered_stress(mesh, {steel}, answer.displacement);
    const double centre = V * (3 + 2 * nu) * R * R / (8 * I * (1 + nu));
    EXPECT_NEAR(centre, 7.05179, 1e-5);
    EXPECT_NEAR(std::abs(value_at(mesh, stress, {0, 0, L / 2}, 4)), centre, 0.01 * centre);
    const double bend = V * L / 2 * R / I;
    const auto outside = free_surface_stress(mesh, {steel}, answer.displacement, "outside");
    const auto at = [&](const Eigen::Vector3d& where) { return surface_value(mesh, outside, where); };
    EXPECT_NEAR(std::abs(at({R, 0, L / 2})(4)), V * (1 + 2 * nu) * R * R / (4 * I * (1 + nu)), 0.02 * centre);
    EXPECT_NEAR(std::abs(at({R / 2, R * std::sqrt(0.75), L / 2})(2)), bend * std::sqrt(0.75), 0.005 * bend);
    // More than a beam without shear, less than one with it: the clamp lets no section warp or shrink there.
    double tip = 0, n = 0;
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        if (mesh.nodes[i][2] == L) tip += answer.displacement(1, static_cast<Eigen::Index>(i)), n += 1;
    const double beam = V * L * L * L / (3 * steel.E * I), shear = V * L * 10 / 9 / (steel.G() * pi * R * R);
    EXPECT_GT(tip / n, beam);
    EXPECT_LT(tip / n, beam + shear);
}

// Elliptic membrane and thick plate, in m and MPa; 92.7 MPa at (2, 0) and -5.38 MPa at (2, 0, 0.6).
// Source: [NAFEMS1990] LE1 and LE10.
TEST(SolidExact, TheEllipticMembraneAndThickPlateHaveTheirPublishedStress)
{
    const auto ring = [](double thick, int layers, int n)
    {
        SolidMesh mesh = samples::box({1, 1, thick, n, 2 * n, layers});
        samples::move_nodes(mesh,
                            [](const Eigen::Vector3d& p)
                            {
                                const double s = std::sin(pi / 2 * p.y()), c = std::cos(pi / 2 * p.y());
                                return Eigen::Vector3d((2 + 1.25 * p.x()) * c, (1 + 1.75 * p.x()) * s, p.z());
                            });
        return mesh;
    };
    const auto on_axes = [](const Eigen::Vector3d& p)
    { return (std::abs(p.x()) < 1e-9 ? 1 : 0) + (std::abs(p.y()) < 1e-9 ? 2 : 0); };
    {
        const SolidMesh mesh = ring(0.1, 1, 12);
        SolidBody body;
        body.steel = {steel};
        hold(body, mesh,
             [&](const Eigen::Vector3d& p)
             { return on_axes(p) + ((p - Eigen::Vector3d(2, 0, 0)).norm() < 1e-9 ? 4 : 0); });
        const SolidAnswer answer = SolidSystem(mesh, body).solution({pressure_forces(mesh, "x1", -10)}).loads[0];
        const auto inside = free_surface_stress(mesh, {steel}, answer.displacement, "x0");
        EXPECT_NEAR(surface_value(mesh, inside, {2, 0, 0})(1), 92.7, 0.01 * 92.7);
    }
    const SolidMesh mesh = ring(0.6, 8, 20);
    SolidBody body;
    body.steel = {steel};
    hold(body, mesh,
         [&](const Eigen::Vector3d& p)
         {
             const bool outside = std::abs(std::pow(p.x() / 3.25, 2) + std::pow(p.y() / 2.75, 2) - 1) < 1e-9;
             return on_axes(p) | (outside ? 3 : 0) | (outside && std::abs(p.z() - 0.3) < 1e-9 ? 4 : 0);
         });
    const SolidAnswer answer = SolidSystem(mesh, body).solution({pressure_forces(mesh, "right", 1)}).loads[0];
    const auto top = free_surface_stress(mesh, {steel}, answer.displacement, "right", 1);
    EXPECT_NEAR(surface_value(mesh, top, {2, 0, 0.6})(1), -5.38, 0.02 * 5.38);
    const auto inside = free_surface_stress(mesh, {steel}, answer.displacement, "x0");
    EXPECT_NEAR(surface_value(mesh, inside, {2, 0, 0.6})(1), -5.38, 0.02 * 5.38);
}

}  // namespace splicewright
