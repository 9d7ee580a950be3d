// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/triangle.h"

#include <gtest/gtest.h>

#include <cmath>

namespace splicewright
{
namespace
{

constexpr std::array<ReferencePoint, 4> somewhere{{{0.2, 0.3}, {0.7, 0.05}, {0.11, 0.83}, {1.0 / 3, 1.0 / 3}}};

double factorial(int n) { return std::tgamma(n + 1.0); }

TEST(ShapeFunctions, SumToOneAndTheirGradientsToZero)
{
    for (const ReferencePoint at : somewhere)
    {
        EXPECT_NEAR(shape_values(at).sum(), 1, 1e-15);  // round-off of six terms of order one
        EXPECT_NEAR(shape_gradients(at).colwise().sum().norm(), 0, 2e-15);
    }
}

TEST(ShapeFunctions, AreOneAtTheirOwnNodeAndZeroAtTheOthers)
{
    for (std::size_t i = 0; i < 6; ++i)
    {
        const ShapeValues N = shape_values(jacobian_sample_points[i]);
        for (int k = 0; k < 6; ++k) EXPECT_EQ(N(k), k == static_cast<int>(i) ? 1.0 : 0.0);
    }
}

TEST(ShapeFunctions, GradientsAreTheDifferenceQuotients)
{
    constexpr double step = 1e-3;  // central differences of a quadratic are exact, so only round-off / step is left
    for (const ReferencePoint at : somewhere)
    {
        const ShapeGradients exact = shape_gradients(at);
        const ShapeValues dx = (shape_values({at.x + step, at.y}) - shape_values({at.x - step, at.y})) / (2 * step);
        const ShapeValues dy = (shape_values({at.x, at.y + step}) - shape_values({at.x, at.y - step})) / (2 * step);
        EXPECT_LT((exact.col(0) - dx).norm(), 1e-12);
        EXPECT_LT((exact.col(1) - dy).norm(), 1e-12);
    }
}

TEST(ShapeFunctions, ReproduceEveryQuadratic)
{
    const auto quadratic = [](ReferencePoint p)
    { return 1 + 2 * p.x - 3 * p.y + 4 * p.x * p.y - p.x * p.x + 5 * p.y * p.y; };
    ShapeValues nodal;
    for (std::size_t i = 0; i < 6; ++i) nodal(static_cast<Eigen::Index>(i)) = quadratic(jacobian_sample_points[i]);
    for (const ReferencePoint at : somewhere)
        EXPECT_NEAR(shape_values(at).dot(nodal), quadratic(at), 1e-14);  // round-off
}

// Integral of x^p y^q over the reference triangle: p! q! / (p + q + 2)!, by parts.
TEST(Quadrature, IsExactToDegreeFiveAndNoFurther)
{
    double worst_of_degree_six = 0;
    for (int p = 0; p <= 6; ++p)
        for (int q = 0; p + q <= 6; ++q)
        {
            double sum = 0;
            for (const QuadraturePoint& point : quadrature())
                sum += point.weight * std::pow(point.at.x, p) * std::pow(point.at.y, q);
            const double exact = factorial(p) * factorial(q) / factorial(p + q + 2);
            if (p + q <= 5)
                EXPECT_NEAR(sum, exact, 1e-15) << "x^" << p << " y^" << q;  // round-off of seven terms below one
            else worst_of_degree_six = std::max(worst_of_degree_six, std::abs(sum - exact));
        }
    EXPECT_GT(worst_of_degree_six, 1e-6);  // the check above is able to fail
}

}  // namespace
}  // namespace splicewright
