// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/running_true.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/making/shop_cases.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;
constexpr double rpm = pi / 30;
constexpr double round_off = 1e-9;

// Two equal bars of 30 mm, 250 mm each, are one uniform shaft: pi^2/L^2 sqrt(E I/(rho A)), I/A = d^2/16.
TEST(RunningTrue, CriticalSpeedOfAUniformShaftIsTheThinBeams)
{
    const double exact = pi * pi / (500.0 * 500) * std::sqrt(210000 / 7.85e-9 * 30 * 30 / 16.0);
    const RunningTrue running = running_true(butted_bars("30 mm", "250 mm", "", ""));
    EXPECT_NEAR(running.critical_speed, exact, 1e-5 * exact);  // 16 elements or more
    // A maker's graph of drive shafts: 1.21e8 d/L^2 rpm in mm, for E = 207 GPa; sqrt(210/207) is 1.007.
    EXPECT_NEAR(running.critical_speed / rpm, 1.007 * 1.21e8 * 30 / (500.0 * 500), 0.005 * exact / rpm);
    EXPECT_NEAR(running.mass, pi / 4 * 30 * 30 * 500 * 7.85e-9, round_off);
    EXPECT_FALSE(running.margin.has_value());
}

// Half of a shaft that is pinned at its end and, by symmetry, level in its middle: from 0 to `from` bare, from there
// to `half` with the sleeve. Deflection A sin kx + B sinh kx, then C cos qy + D cosh qy with y from the middle; the
// determinant of deflection, slope, moment and shear at the sleeve's end.
struct SteppedHalf
{
    double from, half;       // mm
    double EI_bare, bare_m;  // N*mm^2, tonne/mm
    double EI_sleeve, sleeve_m;
};

double determinant(const SteppedHalf& s, double speed)
{
    const double k = std::pow(s.bare_m * speed * speed / s.EI_bare, 0.25),
                 q = std::pow(s.sleeve_m * speed * speed / s.EI_sleeve, 0.25), x = k * s.from,
                 y = q * (s.half - s.from);
    const double ek = s.EI_bare * k * k, eq = s.EI_sleeve * q * q;
    // Slopes along y run against those along x.
    double row[4][4] = {{std::sin(x), std::sinh(x), -std::cos(y), -std::cosh(y)},
                        {k * std::cos(x), k * std::cosh(x), -q * std::sin(y), q * std::sinh(y)},
                        {-ek * std::sin(x), ek * std::sinh(x), eq * std::cos(y), -eq * std::cosh(y)},
                        {-ek * k * std::cos(x), ek * k * std::cosh(x), eq * q * std::sin(y), eq * q * std::sinh(y)}};
    double product = 1;
    for (int pivot = 0; pivot < 4; ++pivot)
    {
        product *= row[pivot][pivot];
        for (int below = pivot + 1; below < 4; ++below)
        {
            const double factor = row[below][pivot] / row[pivot][pivot];
            for (int column = pivot; column < 4; ++column) row[below][column] -= factor * row[pivot][column];
        }
    }
    return product;
}

TEST(RunningTrue, CriticalSpeedWithASleeveSolvesTheSteppedBeam)
{
    std::string text = splice_with("diameter = \"27 mm\"", "diameter = \"28 mm\"");
    text = with(text, "diameter = \"24 mm\"\nfillet = \"2 mm\"", "diameter = \"28 mm\"");
    text = with(with(text, "blend = \"3 mm\"\n", ""), "length = \"205 mm\"", "length = \"250 mm\"");
    const RunningTrue running = running_true(accepted(text));
    const double bore = 28.02, outer = 42, density = 7.85e-9, modulus = 210000;
    const double bar_area = pi / 4 * 28 * 28, sleeve_area = pi / 4 * (outer * outer - bore * bore);
    const double EI_bar = modulus * pi / 64 * std::pow(28, 4),
                 EI_sleeve = modulus * pi / 64 * (std::pow(outer, 4) - std::pow(bore, 4));
    const SteppedHalf half{
        208, 250, EI_bar, density * bar_area, EI_bar + EI_sleeve, density * (bar_area + sleeve_area)};
    double low = 700, high = 2200;  // rad/s; one root between
    ASSERT_LT(determinant(half, low) * determinant(half, high), 0);
    for (int i = 0; i < 60; ++i)
    {
        const double middle = (low + high) / 2;
        (determinant(half, low) * determinant(half, middle) <= 0 ? high : low) = middle;
    }
    EXPECT_NEAR(running.critical_speed, low, 1e-5 * low);  // 16 elements or more
    EXPECT_NEAR(running.mass, density * (bar_area * 500 + sleeve_area * 84), round_off);
    EXPECT_NEAR(*running.margin, running.critical_speed / (1200 * rpm), round_off);
}

// Equal halves, offset e: the bars lean as e x/L either way. Left end: e M (-1/12 + 1/24), so e/12 off its half mass.
TEST(Balance, OfAnOffsetIsATwelfthOfItAtEachEnd)
{
    const Balance balance = *running_true(butted_bars("30 mm", "250 mm", "offset = \"0.6 mm\"\n", "1300 rpm")).balance;
    EXPECT_NEAR(balance.eccentricity, 0.05, round_off);
    EXPECT_NEAR(balance.plane[0].offset, balance.plane[1].offset, round_off);
    EXPECT_NEAR(*balance.grade, 0.05 * 1300 * rpm, round_off);
    // G 16 at 1300 rpm allows 0.1175 mm, twelve times that of offset.
    EXPECT_NEAR(*balance.offset_allowed, 12 * 16 / (1300 * rpm), 1e-6);
}

// A tilt t bows equal halves into a triangle of height t L/4, whose mean is t L/8.
TEST(Balance, OfATiltIsTheMeanOfTheBow)
{
    const Balance balance = *running_true(butted_bars("30 mm", "250 mm", "tilt = \"0.2 deg\"\n", "")).balance;
    EXPECT_NEAR(balance.eccentricity, 0.2 * pi / 180 * 500 / 8, round_off);
    EXPECT_FALSE(balance.grade.has_value());
}

TEST(Balance, OfALooseSleeveIsHalfItsClearanceTimesItsMass)
{
    const std::string text = splice_with("clearance = \"0.02 mm\"", "clearance = \"0.08 mm\"");
    const Balance balance = *running_true(accepted(text)).balance;
    const double left = pi / 4 * (42 * 42 - 28.08 * 28.08) * 42 * 7.85e-9;
    const double right = pi / 4 * (42 * 42 - 27.08 * 27.08) * 42 * 7.85e-9;
    EXPECT_NEAR(balance.plane[0].sleeve + balance.plane[1].sleeve, 0.04 * (left + right), 1e-12);
    // By the lever: the middles of its halves lie 229 and 271 mm from the left end of 455 mm.
    EXPECT_NEAR(balance.plane[1].sleeve, 0.04 * (left * 229 + right * 271) / 455, 1e-12);
    const std::string press = splice_with("clearance = \"0.02 mm\"", "clearance = \"-0.02 mm\"");
    EXPECT_EQ(running_true(accepted(press)).balance->eccentricity, 0);
}

TEST(RunningCautions, SpeakBelowTheMarginAndAboveTheGrade)
{
    // 1.21e8 * 10/1100^2 = 1000 rpm.
    const auto said = [](const char* joint, const char* speed)
    {
        const Case asked = butted_bars("10 mm", "550 mm", joint, speed);
        return running_cautions(asked, running_true(asked));
    };
    EXPECT_TRUE(said("", "600 rpm").empty());
    ASSERT_EQ(said("", "800 rpm").size(), 1U);
    EXPECT_NE(said("", "800 rpm")[0].find("may whirl"), std::string::npos);
    // 1 deg over 1100 mm is 2.4 mm off the axis: G 100 at 400 rpm.
    ASSERT_EQ(said("tilt = \"1 deg\"\n", "400 rpm").size(), 1U);
    EXPECT_NE(said("tilt = \"1 deg\"\n", "400 rpm")[0].find("above G 40"), std::string::npos);
}

TEST(RunningTrue, OfAPlainShaftHasNoBalance)
{
    const Case asked = accepted(
        "[left]\nmaterial = \"C45 +N\"\n[[left.section]]\nlength = \"500 mm\"\ndiameter = \"30 mm\"\n"
        "[load]\npeak_torque = \"500 N*m\"\nspeed = \"1300 rpm\"\n");
    EXPECT_FALSE(running_true(asked).balance.has_value());
    EXPECT_NEAR(running_true(asked).critical_speed, running_true(butted_bars("30 mm", "250 mm", "", "")).critical_speed,
                1e-2);
}

}  // namespace
}  // namespace splicewright
