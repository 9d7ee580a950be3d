// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "solver/recover_stress.h"
#include "solver/unit_solution.h"
#include "tests/solver/hand_made.h"

namespace splicewright
{
namespace
{

// A shape function space of quadratics holds the exact bar solutions on straight-sided triangles of any shape:
// u_theta = c z r in torsion, linear displacement in tension, and quadratics in bending. On bent triangles it holds
// every linear function, so tension stays exact there.

struct Patch
{
    double inner, outer;
    sample::Edges edges;
};

using Stress = Eigen::Matrix<double, 6, 1>;

// Exact stress of the unit load at a radius, rows rr, tt, zz, rt, tz, rz.
Stress exact_stress(LoadKind kind, const Patch& patch, double r)
{
    const double pi = std::numbers::pi;
    const double J = pi / 2 * (std::pow(patch.outer, 4) - std::pow(patch.inner, 4));
    Stress stress = Stress::Zero();
    switch (kind)
    {
        case LoadKind::torsion: stress(4) = r / J; break;
        case LoadKind::axial: stress(2) = 1 / (pi * (patch.outer * patch.outer - patch.inner * patch.inner)); break;
        case LoadKind::bending: stress(2) = r / (J / 2); break;
    }
    return stress;
}

double worst_relative_error(LoadKind kind, const Patch& patch)
{
    const Mesh mesh = sample::distorted(sample::grid(patch.inner, patch.outer, 12, 4), 0.2, patch.edges);
    const std::vector<ElasticConstants> steel{sample::plain_steel};
    const UnitSolution solution = unit_solution(mesh, steel, kind, {});
    const int n = unknowns_per_node(kind);
    double worst = 0;
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        const TriangleNodes nodes = mesh.node(Eigen::all, mesh.triangle.col(t));
        Eigen::VectorXd u(6 * n);
        for (int i = 0; i < 6; ++i) u.segment(i * n, n) = solution.u.segment(mesh.triangle(i, t) * n, n);
        for (const QuadraturePoint& point : quadrature())
        {
            const StrainAt strain = strain_at(kind, nodes, point.at);
            const Stress off = stress_of(sample::plain_steel, strain.B * u) - exact_stress(kind, patch, strain.radius);
            worst = std::max(worst, off.norm() / exact_stress(kind, patch, patch.outer).norm());
        }
    }
    const RegionNodes seen = region_nodes(mesh);
    const StressAmplitude recovered = recovered_stress(mesh, seen, steel, solution);
    for (std::size_t i = 0; i < seen.node.size(); ++i)
    {
        const Stress off =
            recovered.value.col(static_cast<Eigen::Index>(i)) - exact_stress(kind, patch, mesh.node(1, seen.node[i]));
        worst = std::max(worst, off.norm() / exact_stress(kind, patch, patch.outer).norm());
    }
    return worst;
}

// Round-off: condition number of some 1e4 elements' stiffness, 1e5, times 1e-16 and differentiated.
constexpr double round_off = 1e-9;

TEST(PatchTest, TorsionIsExactOnDistortedTriangles)
{
    EXPECT_LT(worst_relative_error(LoadKind::torsion, {0, 5, sample::Edges::straight}), round_off);
    EXPECT_LT(worst_relative_error(LoadKind::torsion, {3, 8, sample::Edges::straight}), round_off);
}

TEST(PatchTest, BendingIsExactOnDistortedTriangles)
{
    EXPECT_LT(worst_relative_error(LoadKind::bending, {0, 5, sample::Edges::straight}), round_off);
    EXPECT_LT(worst_relative_error(LoadKind::bending, {3, 8, sample::Edges::straight}), round_off);
}

TEST(PatchTest, TensionIsExactOnDistortedAndOnBentTriangles)
{
    for (const sample::Edges edges : {sample::Edges::straight, sample::Edges::bent})
    {
        EXPECT_LT(worst_relative_error(LoadKind::axial, {0, 5, edges}), round_off);
        EXPECT_LT(worst_relative_error(LoadKind::axial, {3, 8, edges}), round_off);
    }
}

// The other side of the claim above, so that it can fail: bent triangles do not hold quadratics.
TEST(PatchTest, QuadraticStatesAreNotExactOnBentTriangles)
{
    for (const LoadKind kind : {LoadKind::torsion, LoadKind::bending})
    {
        const double error = worst_relative_error(kind, {3, 8, sample::Edges::bent});
        EXPECT_GT(error, 1e-5);
        EXPECT_LT(error, 0.1);  // edges bent by a tenth of their length
    }
}

}  // namespace
}  // namespace splicewright
