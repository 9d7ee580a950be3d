// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/weld_rating.h"

#include <gtest/gtest.h>

#include <cmath>

#include "solver/hot_spot.h"

namespace splicewright
{
namespace
{

constexpr double round_off = 1e-9;
constexpr double life_precision = 1e-5;  // the search for the life stops at 1e-6 of its logarithm

WeldCurves curves(InteractionRule rule)
{
    if (rule == InteractionRule::squares)
        return {normal_curve(Megapascal{80}, 1, Provenance::from_memory),
                shear_curve(Megapascal{100}, 1, Provenance::from_memory), rule};
    return {eurocode_normal_curve(Megapascal{80}, 1), eurocode_shear_curve(Megapascal{100}, 1), rule};
}

WeldSpectrum spectrum(double normal, double shear, double count)
{
    WeldSpectrum result;
    if (normal > 0) result.normal.push_back({Megapascal{normal}, count});
    if (shear > 0) result.shear.push_back({Megapascal{shear}, count});
    return result;
}

TEST(WeldRating, OfOneRangeFollowsTheSlopeOfItsCurve)
{
    // 2e6 cycles at the class are a damage of 1: half of it allowed by squares, all of it by cubes and fifths.
    const WeldRating normal = weld_rating(spectrum(80, 0, 2e6), curves(InteractionRule::squares));
    EXPECT_NEAR(normal.interaction.value.utilisation, std::cbrt(2.0), round_off);
    EXPECT_NEAR(normal.life, 0.5, life_precision);
    const WeldRating shear = weld_rating(spectrum(0, 100, 2e6), curves(InteractionRule::squares));
    EXPECT_NEAR(shear.interaction.value.utilisation, std::pow(2.0, 0.2), round_off);
    EXPECT_NEAR(shear.life, 0.5, life_precision);
    const WeldRating eurocode = weld_rating(spectrum(80, 0, 1e6), curves(InteractionRule::cubes_and_fifths));
    EXPECT_NEAR(eurocode.interaction.value.utilisation, std::cbrt(0.5), round_off);
    EXPECT_NEAR(eurocode.life, 2, 2 * life_precision);
}

TEST(WeldRating, LifeOfBothStressesSolvesTheInteraction)
{
    // One range each, far above the knees: u_n = (2x n/2e6)^(1/3) s_n/80 and u_s = (2x n/2e6)^(1/5) s_s/100, squares
    // sum to 0.5; with cubes and fifths the damages n/N sum to 1.
    constexpr double count = 1e4, normal = 150, shear = 180;
    const double x = weld_rating(spectrum(normal, shear, count), curves(InteractionRule::squares)).life;
    const double u_n = std::cbrt(2 * x * count / 2e6) * normal / 80;
    const double u_s = std::pow(2 * x * count / 2e6, 0.2) * shear / 100;
    EXPECT_NEAR(u_n * u_n + u_s * u_s, 0.5, 0.5 * life_precision);
    const double y = weld_rating(spectrum(normal, shear, count), curves(InteractionRule::cubes_and_fifths)).life;
    EXPECT_NEAR(y * count / 2e6 * (std::pow(normal / 80, 3) + std::pow(shear / 100, 5)), 1, 3 * life_precision);
}

TEST(WeldRating, LifeStandsAtTheUpperEndOfTheErrorOfTheStress)
{
    const WeldRating normal = weld_rating(spectrum(80, 0, 2e6), curves(InteractionRule::squares), 10);
    EXPECT_NEAR(normal.interaction.value.utilisation, std::cbrt(2.0), round_off);
    EXPECT_NEAR(normal.life, 0.5 / std::pow(1.1, 3), life_precision);
}

TEST(WeldRating, WithoutAnyRangeHasNoEnd)
{
    EXPECT_TRUE(std::isinf(weld_rating({}, curves(InteractionRule::squares)).life));
}

TEST(WeldSpectrum, CountsTorqueItsBendingAndTheRevolutions)
{
    Load load;
    load.peak_torque = NewtonMillimetre{1000};
    load.peak_bending = NewtonMillimetre{100};
    load.running_bending = NewtonMillimetre{10};
    load.revolutions = 1e6;
    load.blocks = {{"", NewtonMillimetre{-200}, NewtonMillimetre{500}, 30}};
    const WeldSpectrum found = weld_spectrum(load, {0.2, 0.4, 0.1, 0, 0});
    ASSERT_EQ(found.normal.size(), 2U);
    ASSERT_EQ(found.shear.size(), 3U);
    EXPECT_NEAR(found.shear[0].range.value(), 0.2 * 700, round_off);  // the whole range of torque
    EXPECT_NEAR(found.shear[1].range.value(), 0.1 * 100, round_off);  // bending of 50, fully reversed
    EXPECT_NEAR(found.normal[0].range.value(), 0.4 * 100, round_off);
    EXPECT_EQ(found.normal[0].count, 30);
    EXPECT_NEAR(found.normal[1].range.value(), 0.4 * 20, round_off);
    EXPECT_EQ(found.normal[1].count, 1e6);
    const Spectrum mises = equivalent_spectrum(load, {0.2, 0.4, 0, 0, 0}, Equivalent::von_mises);
    EXPECT_NEAR(mises.at(0).range.value(), std::sqrt(40 * 40 + 3 * 140 * 140.0), round_off);
    const Spectrum principal = equivalent_spectrum(load, {0.2, 0.4, 0, 0, 0}, Equivalent::first_principal);
    EXPECT_NEAR(principal.at(0).range.value(), 20 + std::hypot(20, 140), round_off);
}

TEST(EurocodeCurve, HasThePublishedRatiosAtItsCorners)
{
    // Source: [Eurocode3Fatigue2005] sec. 7.1, from memory: 0.737 of the category at 5e6, 0.549 of that at 1e8, and
    // 0.457 in shear at 1e8.
    constexpr double printed = 0.0005;
    const SnCurve normal = eurocode_normal_curve(Megapascal{100}, 1), shear = eurocode_shear_curve(Megapascal{100}, 1);
    EXPECT_NEAR(allowable_range(normal, 5e6, Amplitude::variable).value() / 100, 0.737, printed);
    EXPECT_NEAR(allowable_range(normal, 1e8, Amplitude::variable).value() / 73.7, 0.549, printed);
    EXPECT_NEAR(allowable_range(shear, 1e8, Amplitude::variable).value() / 100, 0.457, printed);
}

TEST(SmallNotchCurve, HasTheClassesOfTheSmallRadius)
{
    // Source: [Fricke2012], from memory.
    EXPECT_EQ(small_notch_curve(NotchStress::first_principal, 1).fatigue_class.value(), 630);
    EXPECT_EQ(small_notch_curve(NotchStress::von_mises, 1).fatigue_class.value(), 560);
    EXPECT_EQ(small_notch_curve(NotchStress::shear, 1).fatigue_class.value(), 250);
    EXPECT_EQ(small_notch_curve(NotchStress::shear, 1).slope, 5);
}

TEST(ThicknessFactor, IsOneUpToTwentyFiveMillimetres)
{
    EXPECT_EQ(thickness_factor(Millimetre{25}, 0.3), 1);
    EXPECT_NEAR(thickness_factor(Millimetre{50}, 0.3), std::pow(0.5, 0.3), round_off);
}

// Value at 0 of the polynomial through the readings, by Lagrange.
double lagrange_weight(const std::vector<double>& points, std::size_t i)
{
    double weight = 1;
    for (std::size_t j = 0; j < points.size(); ++j)
        if (j != i) weight *= points[j] / (points[j] - points[i]);
    return weight;
}

TEST(HotSpotReadings, HaveTheWeightsOfThePolynomialThroughThem)
{
    constexpr double printed = 0.005;  // two decimals
    const std::vector<double> two{0.4, 1.0}, three{0.4, 0.9, 1.4};
    for (std::size_t i = 0; i < two.size(); ++i)
    {
        EXPECT_EQ(linear_readings.at(i).distance, two[i]);
        EXPECT_NEAR(linear_readings.at(i).weight, lagrange_weight(two, i), printed);
    }
    for (std::size_t i = 0; i < three.size(); ++i)
    {
        EXPECT_EQ(quadratic_readings.at(i).distance, three[i]);
        EXPECT_NEAR(quadratic_readings.at(i).weight, lagrange_weight(three, i), printed);
    }
}

}  // namespace
}  // namespace splicewright
