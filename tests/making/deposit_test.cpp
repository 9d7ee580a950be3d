// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "post/making.h"
#include "tests/making/shop_cases.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;
constexpr double round_off = 1e-9;  // relative

// A cone's frustum from R + 6 to R over 6 mm, less the bar inside it.
TEST(FilletDeposit, IsTheFrustumLessTheBar)
{
    const WeldDeposit weld = fillet_deposit(made_splice("", ""), Side::left);
    const double bar = 14, top = 20;
    const double volume = pi * 6 / 3 * (top * top + top * bar + bar * bar) - pi * bar * bar * 6;
    EXPECT_NEAR(weld.volume, volume, round_off * volume);
    EXPECT_NEAR(weld.mass, 7.85e-9 * volume, round_off);
    EXPECT_NEAR(weld.throat, 6 / std::sqrt(2.0), round_off);
}

// To the centre of a solid bar and bevelled from there: a cylinder of the gap and two cones' worth of opening.
TEST(ButtDeposit, OfAFullyBevelledBarIsCylinderAndCones)
{
    Case asked = butted_bars("30 mm", "200 mm", "", "");
    asked.making->root_face = Millimetre(0);
    asked.making->root_gap = Millimetre(2);
    const double slope = std::tan(pi / 6);
    const double volume = pi * 2 * 15 * 15 + 4 * pi * slope * std::pow(15, 3) / 3;
    EXPECT_NEAR(butt_deposit(asked).volume, volume, round_off * volume);
    EXPECT_NEAR(butt_deposit(asked).width, 2 + 2 * 15 * slope, round_off);
}

// Shell by shell: radius 13.75 mm, 9 mm deep, face 1 mm, gap 3 mm, 60 deg; the half lap adds two seams of 14 mm.
TEST(ButtDeposit, OfARingIsTheSumOfItsShells)
{
    const WeldDeposit weld = butt_deposit(made_splice("", "root_gap = \"3 mm\"\nroot_face = \"1 mm\"\n"));
    const int n = 100000;
    double volume = 0, area = 0;
    for (int i = 0; i < n; ++i)
    {
        const double depth = 9 * (i + 0.5) / n, radius = 13.75 - 9 + depth;
        const double width = 3 + (depth > 1 ? 2 * (depth - 1) * std::tan(pi / 6) : 0);
        area += width * 9 / n;
        volume += 2 * pi * radius * width * 9 / n;
    }
    EXPECT_NEAR(weld.area, area, 1e-8 * area);  // the midpoint rule's error at the kink
    EXPECT_NEAR(weld.volume, volume + 2 * 14 * area, 1e-8 * volume);
}

int fillet_passes(double leg, double kilojoule_per_millimetre)
{
    Case asked = made_splice("", "");
    asked.sleeve->weld.leg_on_bar = asked.sleeve->weld.leg_on_sleeve = Millimetre(leg);
    asked.making->heat_input = Newton(kilojoule_per_millimetre * 1e6);
    return fillet_deposit(asked, Side::left).passes_needed;
}

TEST(Passes, GrowWithTheSectionAndFallWithTheHeat)
{
    EXPECT_EQ(fillet_passes(6, 1), 1);    // 18 of 20 mm^2
    EXPECT_EQ(fillet_passes(8, 1), 2);    // 32 of 20
    EXPECT_EQ(fillet_passes(8, 2), 1);    // 32 of 32: the largest single pass
    EXPECT_EQ(fillet_passes(10, 4), 2);   // 50 of 32, whatever the heat
    EXPECT_EQ(fillet_passes(6, 0.5), 2);  // 18 of 10
}

TEST(Passes, OfAButtAreRootAndCapAtLeast)
{
    Case asked = butted_bars("30 mm", "200 mm", "", "");
    asked.bar[0]->bore = asked.bar[1]->bore = Millimetre(24);  // 3 mm of wall: 2 * 3 + 2^2 tan 30 = 8.3 mm^2
    EXPECT_EQ(butt_deposit(asked).passes_needed, 2);
}

// A tenth of the mean width: 2 + 8^2 tan 30/9 = 6.106 mm over the 9 mm of the sound splice.
TEST(WeldShrink, DefaultsToATenthOfTheMeanWidth)
{
    EXPECT_NEAR(made_splice("", "").making->weld_shrink.value(), 0.61, round_off);
}

}  // namespace
}  // namespace splicewright
