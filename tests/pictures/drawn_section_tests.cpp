// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "post/drawn_section.h"
#include "post/picture_pages.h"
#include "post/revolve.h"
#include "sample_fields.h"

namespace splicewright
{
namespace
{

double area(const DrawnSection& section)
{
    double sum = 0;
    for (const auto& [a, b, c] : section.triangle)
    {
        const auto place = [&](int i) { return section.vertex[std::size_t(i)].place; };
        const Eigen::Vector2d one = place(b) - place(a), other = place(c) - place(a);
        sum += (one(0) * other(1) - one(1) * other(0)) / 2;
    }
    return sum;
}

TEST(DrawnSection, ClippingKeepsExactlyTheAreaOfTheWindow)
{
    const sample::Shape shape;
    const DrawnSection section = drawn_section(sample::solved_fields(shape, 1), {1e6, 0, 0, 0});
    // 20 mm of bar of radius 14 and of sleeve of 6.5 mm wall, cut off the nodes' grid. Round-off of some 1e3 triangles.
    EXPECT_NEAR(area(clipped(section, {-30.3, 0, -10.3, 30})), 20 * (14 + 6.5), 1e-9);
    EXPECT_NEAR(area(clipped(section, {-30.3, 2.2, -10.3, 7.7})), 20 * 5.5, 1e-9);
}

TEST(DrawnSection, SkinOfAPieceOfBarIsItsOutsideAndItsTwoCuts)
{
    sample::Shape shape;
    shape.sleeve = 0;
    const DrawnSection piece = clipped(drawn_section(sample::solved_fields(shape, 0), {}), {-30.3, 0, -10.3, 30});
    double length = 0;
    for (const auto& [a, b] : piece.skin)
        length += (piece.vertex[std::size_t(b)].place - piece.vertex[std::size_t(a)].place).norm();
    EXPECT_NEAR(length, 20 + 2 * 14, 1e-9);  // the axis is no skin; round-off
}

TEST(DrawnSection, WorstAngleCombinesBendingAndTorsionWhereBothAreGreatest)
{
    sample::Shape shape;
    shape.sleeve = 0;
    const double torque = 1e6, moment = 4e5, d = 28;
    const FieldPeak top = peak(drawn_section(sample::solved_fields(shape, 0), {torque, moment, 0, 0}), {0, 14});
    const double tau = 16 * torque / (std::numbers::pi * d * d * d), sigma = 2 * tau * moment / torque;
    EXPECT_NEAR(top.value, std::sqrt(sigma * sigma + 3 * tau * tau), 1e-9 * top.value);  // round-off
    EXPECT_NEAR(top.place(1), 14, 1e-12);
}

TEST(DrawnSection, SlitIsShownOnceAndIsNoOutline)
{
    const sample::Shape shape;
    const Mesh mesh = sample::solved_fields(shape, 0).mesh;
    double slit = 0, land = 0;
    for (const auto& [from, to] : unfused_faces(mesh))
        (std::abs(from(1) - shape.bar) < 1e-9 && std::abs(to(1) - shape.bar) < 1e-9 ? slit : land) +=
            (to - from).norm();
    EXPECT_NEAR(slit, 2 * shape.sleeve_half, 1e-9);  // round-off
    EXPECT_NEAR(land, shape.land, 1e-9);
    for (const auto& [from, to] : region_outlines(mesh))
        EXPECT_FALSE(std::abs(from(1) - shape.bar) < 1e-9 && std::abs(to(1) - shape.bar) < 1e-9 &&
                     std::abs(from(0) + to(0)) / 2 < shape.sleeve_half - 1e-9);
}

TEST(StressRange, IsCutOnlyForATinySpotAndSaysSo)
{
    sample::Shape shape;
    shape.element = 0.75;
    const StressRange mild = stress_range(drawn_section(sample::solved_fields(shape, 0.5), {1e6, 0, 0, 0}));
    EXPECT_FALSE(mild.is_cut());
    EXPECT_GE(mild.top, mild.peak);
    const StressRange sharp = stress_range(drawn_section(sample::solved_fields(shape, 9), {1e6, 0, 0, 0}));
    EXPECT_TRUE(sharp.is_cut());
    EXPECT_LT(sharp.top, 0.4 * sharp.peak);
}

TEST(Swept, OutsideNormalsPointAwayFromTheMaterial)
{
    sample::Shape shape;
    shape.sleeve = 0;
    const ShadedSurface skin = swept(drawn_section(sample::solved_fields(shape, 0), {}), 0, std::numbers::pi, 8);
    int n_outside = 0;
    for (std::size_t i = 0; i < skin.point.size(); ++i)
        if (std::abs(skin.normal[i](2)) < 1e-12)
        {
            ++n_outside;
            EXPECT_GT(skin.normal[i].head<2>().dot(skin.point[i].head<2>()), 0);
        }
        else EXPECT_GT(skin.normal[i](2) * skin.point[i](2), 0);
    EXPECT_GT(n_outside, 0);
}

}  // namespace
}  // namespace splicewright
