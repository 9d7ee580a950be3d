// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <Eigen/Core>
#include <cmath>

#include "post/colour_map.h"

namespace splicewright
{
namespace
{

// From the sRGB colour that is shown back to OKLab: the forward way of the source, not the way of the code.
// Source: [Ottosson2020].
Eigen::Vector3d linear(const Colour& colour)
{
    const auto channel = [](double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
    return {channel(colour.red), channel(colour.green), channel(colour.blue)};
}

Eigen::Vector3d oklab(const Eigen::Vector3d& rgb)
{
    Eigen::Matrix3d to_cones, to_lab;
    to_cones << 0.4122214708, 0.5363325363, 0.0514459929, 0.2119034982, 0.6806995451, 0.1073969566, 0.0883024619,
        0.2817188376, 0.6299787005;
    to_lab << 0.2104542553, 0.7936177850, -0.0040720468, 1.9779984951, -2.4285922050, 0.4505937099, 0.0259040371,
        0.7827717662, -0.8086757660;
    const Eigen::Vector3d cones = to_cones * rgb;
    return to_lab * cones.unaryExpr([](double v) { return std::cbrt(v); });
}

// Linear RGB as a person sees it who lacks one kind of cone. Source: [Machado2009] table 1, severity 1.0.
Eigen::Vector3d without_red_cones(const Eigen::Vector3d& rgb)
{
    Eigen::Matrix3d seen;
    seen << 0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998;
    return (seen * rgb).cwiseMax(0).cwiseMin(1);
}

Eigen::Vector3d without_green_cones(const Eigen::Vector3d& rgb)
{
    Eigen::Matrix3d seen;
    seen << 0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881;
    return (seen * rgb).cwiseMax(0).cwiseMin(1);
}

TEST(StressRamp, StepsAreEquallyLongInOkLab)
{
    const auto ramp = stress_ramp();
    double shortest = 1, longest = 0;
    for (std::size_t i = 1; i < ramp.size(); ++i)
    {
        const double step = (oklab(linear(srgb(ramp[i]))) - oklab(linear(srgb(ramp[i - 1])))).norm();
        shortest = std::min(shortest, step);
        longest = std::max(longest, step);
    }
    // The curve's bends shorten a chord by under 1e-4; the published matrices invert each other to about 1e-6 against
    // a step of 3e-3.
    EXPECT_LT(longest / shortest, 1.002);
    EXPECT_GT(shortest, 0.003);
}

TEST(StressRamp, DarkensAtEachStepForEveryEye)
{
    const auto ramp = stress_ramp();
    for (std::size_t i = 1; i < ramp.size(); ++i)
    {
        const Eigen::Vector3d before = linear(srgb(ramp[i - 1])), after = linear(srgb(ramp[i]));
        EXPECT_LT(oklab(after)(0), oklab(before)(0)) << i;
        EXPECT_LT(oklab(without_red_cones(after))(0), oklab(without_red_cones(before))(0)) << i;
        EXPECT_LT(oklab(without_green_cones(after))(0), oklab(without_green_cones(before))(0)) << i;
    }
}

TEST(StressRamp, ColourAboveTheRangeIsFarFromTheRampForEveryEye)
{
    const Eigen::Vector3d above = linear(above_range_colour);
    for (const OkLab& colour : stress_ramp())
    {
        const Eigen::Vector3d other = linear(srgb(colour));
        // A tenth of the black-to-white distance: about thirty steps of the ramp.
        EXPECT_GT((oklab(above) - oklab(other)).norm(), 0.1);
        EXPECT_GT((oklab(without_red_cones(above)) - oklab(without_red_cones(other))).norm(), 0.1);
        EXPECT_GT((oklab(without_green_cones(above)) - oklab(without_green_cones(other))).norm(), 0.1);
    }
}

TEST(StressTable, IsTheRampUpToTheRangeAndOneColourBeyond)
{
    const auto table = stress_table(400, 1000);
    ASSERT_EQ(table.size(), 640U);  // 256 times 1000 over 400
    EXPECT_NE(table[255].blue, above_range_colour.blue);
    for (std::size_t i = 256; i < table.size(); ++i) EXPECT_EQ(table[i].blue, above_range_colour.blue);
}

}  // namespace
}  // namespace splicewright
