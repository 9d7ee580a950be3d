// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "solver/recover_stress.h"
#include "solver/surface_stress.h"
#include "tests/solver/exact_fields.h"

namespace splicewright
{
namespace
{

using sample::Field;

struct Errors
{
    double displacement = 0, energy = 0, stress = 0, recovered = 0;  // relative, over the volume; energy: squared norm
};

Errors errors_of(const Mesh& mesh, LoadKind kind, const Field& field)
{
    const ElasticConstants steel = sample::plain_steel;
    UnitSolution solution;
    solution.kind = kind;
    solution.u = sample::solved_inside(mesh, kind, steel, field);
    const RegionNodes seen = region_nodes(mesh);
    const StressAmplitude recovered = recovered_stress(mesh, seen, {steel}, solution);
    const int n = unknowns_per_node(kind);
    Errors off, whole;
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        const TriangleNodes nodes = mesh.node(Eigen::all, mesh.triangle.col(t));
        Eigen::VectorXd u(6 * n);
        Eigen::Matrix<double, 6, 6> at_nodes;
        for (int i = 0; i < 6; ++i)
        {
            u.segment(i * n, n) = solution.u.segment(mesh.triangle(i, t) * n, n);
            at_nodes.col(i) = recovered.value.col(seen.triangle(i, t));
        }
        for (const QuadraturePoint& point : quadrature())
        {
            const StrainAt strain = strain_at(kind, nodes, point.at);
            const ShapeValues N = shape_values(point.at);
            const double z = nodes.row(0).dot(N), r = strain.radius, weight = point.weight * strain.jacobian * r;
            Mesh place;
            place.node = Eigen::Vector2d(z, r);
            const Eigen::VectorXd exact_u = sample::nodal(place, kind, field);
            Eigen::VectorXd found = Eigen::VectorXd::Zero(n);
            for (int i = 0; i < 6; ++i) found += N(i) * u.segment(i * n, n);
            const Eigen::Matrix<double, 6, 1> exact_strain = sample::strain_of(kind, field, z, r);
            const Eigen::Matrix<double, 6, 1> strain_off = strain.B * u - exact_strain;
            const Eigen::Matrix<double, 6, 1> exact = stress_of(steel, exact_strain),
                                              stress_off = stress_of(steel, strain_off);
            off.displacement += weight * (found - exact_u).squaredNorm();
            whole.displacement += weight * exact_u.squaredNorm();
            off.energy += weight * strain_off.dot(stress_off);
            whole.energy += weight * exact_strain.dot(exact);
            off.stress += weight * stress_off.squaredNorm();
            whole.stress += weight * exact.squaredNorm();
            off.recovered += weight * (at_nodes * N - exact).squaredNorm();
        }
    }
    return {std::sqrt(off.displacement / whole.displacement), off.energy / whole.energy,
            std::sqrt(off.stress / whole.stress), std::sqrt(off.recovered / whole.stress)};
}

struct Study
{
    std::vector<double> size, displacement, energy, stress, recovered;

    void add(double h, const Errors& errors)
    {
        size.push_back(h);
        displacement.push_back(errors.displacement);
        energy.push_back(errors.energy);
        stress.push_back(errors.stress);
        recovered.push_back(errors.recovered);
    }
};

// Theory for quadratic elements on a smooth solution: displacement 3, energy 4, stress 2, recovered stress at least 2
// over the volume. The allowances of 0.15 and of 0.3 on the squared norm are what the coarsest mesh, not yet
// asymptotic, takes off the slope. Source: [Hughes2000] section 4.1 and appendix 4.I.
void expect_orders(const Study& study, double distance)
{
    const double displacement = sample::observed_order(study.size, study.displacement);
    const double energy = sample::observed_order(study.size, study.energy);
    const double stress = sample::observed_order(study.size, study.stress);
    const double recovered = sample::observed_order(study.size, study.recovered);
    const auto tell = [](const char* what, double order, double error)
    { std::printf("    %-12s order %.2f, finest %.2e\n", what, order, error); };
    tell("displacement", displacement, study.displacement.back());
    tell("energy", energy, study.energy.back());
    tell("stress", stress, study.stress.back());
    tell("recovered", recovered, study.recovered.back());
    EXPECT_GT(displacement, 3 - 0.15);
    EXPECT_GT(energy, 4 - 0.3);
    EXPECT_GT(stress, 2 - 0.15);
    EXPECT_GT(recovered, 2 - 0.15);
    // Relative errors over the volume stay below (h/distance)^order, the remainder of the Taylor series of 1/R at the
    // place next to its singular point: the norm over the whole body is less than that at its worst place.
    const double step = study.size.back() / distance;
    EXPECT_LT(study.displacement.back(), std::pow(step, 3));
    EXPECT_LT(study.energy.back(), std::pow(step, 4));
    EXPECT_LT(study.stress.back(), std::pow(step, 2));
    EXPECT_LT(study.recovered.back(), std::pow(step, 2));
}

// A bar of radius 10 and length 20 mm, the singular point 8 mm beyond its end.
Study bar_study(LoadKind kind, const Field& field)
{
    Study study;
    for (const int n : {4, 8, 16, 32})
        study.add(10.0 / n,
                  errors_of(sample::distorted(sample::grid(0, 10, 20, n), 0.12, sample::Edges::straight), kind, field));
    return study;
}

// Around a cavity of radius 5 mm with the singular point in its middle: curved elements.
Study ring_study(LoadKind kind, const Field& field)
{
    Study study;
    for (const int n : {4, 8, 16, 32}) study.add(10.0 / n, errors_of(sample::half_ring(5, 15, n), kind, field));
    return study;
}

constexpr double bar_distance = 8, ring_distance = 5;  // mm, from the singular point to the nearest metal

TEST(Convergence, OfTorsionInABarIsThatOfQuadraticElements)
{
    expect_orders(bar_study(LoadKind::torsion, sample::point_couple(-8)), bar_distance);
}

TEST(Convergence, OfTensionInABarIsThatOfQuadraticElements)
{
    expect_orders(bar_study(LoadKind::axial, sample::point_force_along(-8, 0.3)), bar_distance);
}

TEST(Convergence, OfBendingInABarIsThatOfQuadraticElements)
{
    expect_orders(bar_study(LoadKind::bending, sample::point_force_across(-8, 0.3)), bar_distance);
}

TEST(Convergence, OfTorsionOnCurvedElementsIsThatOfQuadraticElements)
{
    expect_orders(ring_study(LoadKind::torsion, sample::point_couple(0)), ring_distance);
}

TEST(Convergence, OfTensionOnCurvedElementsIsThatOfQuadraticElements)
{
    expect_orders(ring_study(LoadKind::axial, sample::point_force_along(0, 0.3)), ring_distance);
}

TEST(Convergence, OfBendingOnCurvedElementsIsThatOfQuadraticElements)
{
    expect_orders(ring_study(LoadKind::bending, sample::point_force_across(0, 0.3)), ring_distance);
}

// Largest error of the surface stress of a cavity over the largest exact value.
double surface_error(LoadKind kind, const Field& field, int n)
{
    const ElasticConstants steel = sample::plain_steel;
    const Mesh mesh = sample::half_ring(5, 15, n);
    UnitSolution solution;
    solution.kind = kind;
    solution.u = sample::solved_inside(mesh, kind, steel, field, "cavity");
    double worst = 0, largest = 0;
    for (const SurfaceChain& chain : surface_chains(mesh, mesh.curve.at("cavity"), {steel}))
    {
        const SurfacePlaces places = surface_places(mesh, chain);
        const SurfaceStress found = free_surface_stress(mesh, chain, places, solution);
        for (std::size_t i = 0; i < places.s.size(); ++i)
        {
            const double z = places.z[i], r = places.r[i];
            if (r < 1) continue;  // on the axis the hoop strain is 0/0
            const double R = std::hypot(z, r), c = z / R, s = r / R;
            const auto exact = stress_of(steel, sample::strain_of(kind, field, z, r));
            const double along = s * s * exact(2) + c * c * exact(0) - 2 * s * c * exact(5);
            const double shear = s * exact(4) - c * exact(3);
            const auto k = static_cast<Eigen::Index>(i);
            worst = std::max({worst, std::abs(found.along(k) - along), std::abs(found.hoop(k) - exact(1)),
                              std::abs(std::abs(found.shear(k)) - std::abs(shear))});
            largest = std::max({largest, std::abs(along), std::abs(shear)});
        }
    }
    return worst / largest;
}

// The derivative of a quadratic interpolant is of order 2. On meshes of equal triangles in one direction the derivative
// along an edge gains one order at its two Gauss points, on others it does not: there the surface strain is of order 2
// with a small constant. The largest error over a surface falls a little slower (a logarithm of the element size in
// the theory of the maximum norm), hence 0.35. Source: [Barlow1976] for the points, [Hughes2000] for the order.
void expect_surface_order(LoadKind kind, const Field& field)
{
    std::vector<double> size, error;
    for (const int n : {6, 12, 24, 48})
    {
        size.push_back(10.0 / n);
        error.push_back(surface_error(kind, field, n));
        std::printf("    %d elements per quarter turn: off by %.2e of the peak\n", n * 3 / 2, error.back());
    }
    const double order = sample::observed_order(size, error);
    std::printf("    order %.2f\n", order);
    EXPECT_GT(order, 2 - 0.35);
    EXPECT_LT(error.front(), 0.02);   // 9 elements per quarter turn, (h/a)^2 = 0.03 with h/a = pi/2/9
    EXPECT_LT(error.back(), 0.0005);  // 75 elements, (h/a)^2 = 0.00044
}

TEST(SurfaceStressRecovery, OfATwistedCavityIsOfSecondOrder)
{
    expect_surface_order(LoadKind::torsion, sample::twisted_cavity(5));
}

TEST(SurfaceStressRecovery, OfAPulledCavityIsOfSecondOrder)
{
    const sample::PulledCavity cavity = sample::pulled_cavity(5, sample::plain_steel);
    ASSERT_LT(cavity.traction, 1e-8);  // difference quotients of step 1e-3
    expect_surface_order(LoadKind::axial, cavity.field);
}

}  // namespace
}  // namespace splicewright
