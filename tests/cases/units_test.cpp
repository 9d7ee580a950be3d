// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/units.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace splicewright
{
namespace
{

// A product and a quotient of doubles: a few units in the last place.
constexpr double round_off = 4 * std::numeric_limits<double>::epsilon();

double value(const std::string& text, Dimension dimension)
{
    const Result<Measurement> read = measurement(text, dimension);
    return read.has_value() ? read.value().value : std::nan("");
}

std::string fix(const std::string& text, Dimension dimension)
{
    const Result<Measurement> read = measurement(text, dimension);
    return read.has_value() ? "accepted" : read.problems().front().fix;
}

std::string rule(const std::string& text, Dimension dimension)
{
    const Result<Measurement> read = measurement(text, dimension);
    return read.has_value() ? "accepted" : read.problems().front().rule;
}

void expect_all(const std::vector<std::string>& texts, Dimension dimension, double expected)
{
    for (const std::string& text : texts)
        EXPECT_NEAR(value(text, dimension), expected, round_off * std::abs(expected)) << text;
}

TEST(Length, ReadsEveryUsualSpellingOfMillimetres)
{
    expect_all({"28.4 mm", "28.4mm", " 28.4  mm ", "28.4 MM", "2.84 cm", "0.0284 m", "2.84e1 mm", "+28.4 mm",
                "28.4 millimetres", "28400 um", "28400 µm"},
               Dimension::length, 28.4);
}

TEST(Length, ReadsEveryUsualSpellingOfInches)
{
    // 1 in = 25.4 mm, exact.
    expect_all({"2 in", "2in", "2 inch", "2 inches", "2\"", "2''", "2 in.", "2 IN", "2″", "2000 thou", "16/8 in"},
               Dimension::length, 50.8);
}

TEST(Length, ReadsFractionsOfInches)
{
    expect_all({"1 1/8 in", "1-1/8 in", "9/8 in", "1.125 in", "1 1/8\"", "1 1/8in"}, Dimension::length, 28.575);
    expect_all({"7/8 in"}, Dimension::length, 22.225);
    expect_all({"-1 1/8 in"}, Dimension::length, -28.575);
}

TEST(Moment, ReadsEveryUsualSpellingOfNewtonMetres)
{
    expect_all({"900 N*m", "900 N·m", "900 Nm", "900 N m", "900 N.m", "900 N-m", "900 N * m", "900 m*N", "900 N⋅m",
                "900000 N*mm", "900000 Nmm", "0.9 kN*m", "0.9 kNm", "0.9 KNm", "0.9 kN·m", "90000 Ncm", "9e2 Nm"},
               Dimension::moment, 900e3);
}

TEST(Moment, ReadsEveryUsualSpellingOfPoundFeet)
{
    // 1 lbf = 4.4482216152605 N and 1 ft = 304.8 mm, both exact.
    expect_all({"2 lbf*ft", "2 ft*lbf", "2 ft-lb", "2 lb-ft", "2 ft-lbf", "2 lbf-ft", "2 lbf ft", "2 ft lbs", "2 ftlb",
                "2 lbft", "2 FT-LB", "24 lbf-in", "24 lbf*in", "24 in-lb", "24 inlb", "2 foot-pounds", "2 pound-feet"},
               Dimension::moment, 2 * 4.4482216152605 * 304.8);
}

TEST(Force, ReadsNewtonAndPoundForce)
{
    expect_all({"1500 N", "1.5 kN", "1.5 KN"}, Dimension::force, 1500.0);
    expect_all({"2 lbf", "2 LBF"}, Dimension::force, 8.896443230521);
}

TEST(Stress, ReadsMegapascalAndPsi)
{
    expect_all({"430 MPa", "430 N/mm2", "430 N/mm^2", "430 N/mm²", "430 N / mm2", "0.43 GPa", "430 MPA"},
               Dimension::stress, 430.0);
    // 1 psi = 4.4482216152605 N / (25.4 mm)^2.
    expect_all({"1 ksi", "1000 psi", "1000 lbf/in2", "1 KSI"}, Dimension::stress, 4448.2216152605 / 645.16);
}

TEST(Angle, ReadsDegreesAndRadians)
{
    expect_all({"180 deg", "180°", "180 °", "180 degrees", "180 degree", "180 DEG", "3.14159265358979323846 rad"},
               Dimension::angle, std::acos(-1.0));
}

TEST(Speed, ReadsRevolutionsPerMinuteAndRadiansPerSecond)
{
    expect_all({"30 rpm", "30 RPM", "30 rev/min", "30 r/min", "30 1/min", "30 min-1", "30 min^-1", "30 min⁻¹",
                "3.14159265358979323846 rad/s"},
               Dimension::speed, std::acos(-1.0));
}

TEST(Mass, ReadsKilogramAndPound)
{
    expect_all({"12 kg", "12000 g", "0.012 tonne"}, Dimension::mass, 0.012);
    expect_all({"10 lb", "10 lbs", "10 lbm"}, Dimension::mass, 4.5359237e-3);
}

TEST(Density, ReadsTheUsualUnits)
{
    expect_all({"7850 kg/m3", "7850 kg/m^3", "7850 kg/m³", "7.85 g/cm3", "7.85 kg/dm3"}, Dimension::density, 7.85e-9);
}

TEST(Tolerance, IsReadWithItsOwnUnit)
{
    for (const char* text : {"6 mm +- 1 mm", "6 mm ± 1 mm", "6mm+-1mm", "6 mm +/- 0.1 cm"})
    {
        const Result<Measurement> read = measurement(text, Dimension::length);
        ASSERT_TRUE(read.has_value()) << text;
        EXPECT_DOUBLE_EQ(read.value().value, 6.0) << text;
        ASSERT_TRUE(read.value().plus_minus.has_value()) << text;
        EXPECT_DOUBLE_EQ(*read.value().plus_minus, 1.0) << text;
    }
    EXPECT_FALSE(measurement("6 mm", Dimension::length).value().plus_minus.has_value());
}

TEST(Tolerance, WithoutUnitIsMendedWithTheUnitOfTheValue)
{
    EXPECT_EQ(fix("6 in +- 1", Dimension::length), "6 in +- 1 in");
    EXPECT_EQ(fix("6 +- 1 mm", Dimension::length), "6 mm +- 1 mm");
    EXPECT_EQ(fix("6 mm +- 0 mm", Dimension::length), "6 mm");
    EXPECT_EQ(fix("6 mm +- -1 mm", Dimension::length), "6 mm");
    EXPECT_NE(fix("6 mm +-", Dimension::length), "accepted");
    EXPECT_NE(fix("6 mm +- 1 mm +- 1 mm", Dimension::length), "accepted");
}

TEST(Quantity, WithoutUnitIsMendedWithTheLikelyUnit)
{
    EXPECT_EQ(fix("28.4", Dimension::length), "28.4 mm");
    EXPECT_EQ(fix("1 1/8", Dimension::length), "1 1/8 mm");
    EXPECT_EQ(fix("900", Dimension::moment), "900 N*m");
    EXPECT_EQ(fix("7", Dimension::angle), "7 deg");
    EXPECT_EQ(fix("1300", Dimension::speed), "1300 rpm");
}

TEST(Quantity, WithCommaIsMendedWithPoint)
{
    EXPECT_EQ(fix("28,4 mm", Dimension::length), "28.4 mm");
    EXPECT_EQ(fix("28,4", Dimension::length), "28.4 mm");
    EXPECT_EQ(fix("1,234.5 mm", Dimension::length), "1234.5 mm");
    EXPECT_EQ(fix("-28,4 mm", Dimension::length), "-28.4 mm");
    for (const char* unclear : {"1,000 mm", "1.5,5 mm", "1,2,3 mm", "-1,000 mm"})
        EXPECT_EQ(fix(unclear, Dimension::length), "... mm") << unclear;
}

TEST(Quantity, OfAnotherDimensionNamesWhatWasExpected)
{
    EXPECT_EQ(rule("12 kg", Dimension::length), "must be a length, not a mass");
    EXPECT_EQ(rule("30 N", Dimension::moment), "must be a moment, not a force");
    EXPECT_EQ(rule("30 N*m", Dimension::force), "must be a force, not a moment");
    EXPECT_EQ(rule("5 lb", Dimension::force), "must be a force, not a mass");
    EXPECT_EQ(rule("7 mm", Dimension::angle), "must be an angle, not a length");
}

// 70 kgm are 686 N*m: the number of one unit under another is the most dangerous fix there is.
TEST(Quantity, WithAnotherUnitIsNeverRepeatedUnderTheExpectedOne)
{
    for (const char* text : {"70 kgm", "70 kgf m", "500 N", "70,5 kgm", "12 kg"})
        EXPECT_EQ(fix(text, Dimension::moment), "... N*m") << text;
    EXPECT_EQ(fix("110 km/h", Dimension::speed), "... rpm");
    EXPECT_EQ(fix("3 furlong", Dimension::length), "... mm");
    EXPECT_EQ(fix("6 kg +- 1 mm", Dimension::length), "... mm +- 1 mm");
    EXPECT_EQ(fix("6 mm +- 1 kg", Dimension::length), "6 mm +- ... mm");
}

TEST(Quantity, OfUnknownUnitListsTheAcceptedOnes)
{
    const std::string said = rule("3 furlong", Dimension::length);
    EXPECT_NE(said.find("mm, cm, m, in"), std::string::npos) << said;
    EXPECT_NE(said.find("\"furlong\""), std::string::npos) << said;
    // Letter case counts where it changes the meaning: nm is no newton metre, M no metre.
    EXPECT_NE(rule("5 nm", Dimension::moment), "accepted");
    EXPECT_NE(rule("5 M", Dimension::length), "accepted");
    EXPECT_NE(rule("5 mpa", Dimension::stress), "accepted");
}

TEST(Quantity, ThatIsNoPlainFiniteNumberIsRefused)
{
    for (const char* text :
         {"nan mm", "NaN mm",  "inf mm", "-inf mm", "Infinity mm", "0x1C mm", "1e400 mm", "1e308 m",        "",
          " ",      "mm",      "-",      "+",       ".",           "1/0 in",  "1 1/0 in", "1_000 mm",       "1 000 mm",
          "5 5 mm", "5 mm mm", "5 mm x", "5 mm 3",  "--5 mm",      "5e mm e", "five mm",  "5 mm +- nan mm", "½ in"})
        EXPECT_NE(rule(text, Dimension::length), "accepted") << text;
    EXPECT_NE(rule(std::string(100000, '9') + " mm", Dimension::length), "accepted");
    EXPECT_NE(rule("1" + std::string(70, '0') + " mm x", Dimension::length), "accepted");
}

TEST(Quantity, RefusedAlwaysHasARuleAndAFixThatIsAcceptedOrLeavesTheValueOpen)
{
    for (const char* text : {"28.4", "28,4 mm", "12 kg", "3 furlong", "nan mm", "0x1C mm", "1e400 mm", "1/0 in",
                             "1 000 mm", "6 mm +- 1", "6 +- 1 mm", "6 mm +- 1 kg", "6 kg +- 1 mm", "five", ""})
    {
        EXPECT_FALSE(rule(text, Dimension::length).empty()) << text;
        const std::string mended = fix(text, Dimension::length);
        EXPECT_TRUE(mended.find("... mm") != std::string::npos || measurement(mended, Dimension::length).has_value())
            << text << " -> " << mended;
    }
}

TEST(InWords, ShowsTheUnitThatPeopleExpect)
{
    EXPECT_EQ(in_words(6.3, Dimension::length), "6.3 mm");
    EXPECT_EQ(in_words(1150e3, Dimension::moment), "1150 N*m");
    EXPECT_EQ(in_words(std::acos(-1.0) / 4, Dimension::angle), "45 deg");
    EXPECT_EQ(in_words(7.85e-9, Dimension::density), "7850 kg/m^3");
}

}  // namespace
}  // namespace splicewright
