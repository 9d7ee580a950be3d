// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "post/making.h"
#include "tests/making/shop_cases.h"

namespace splicewright
{
namespace
{

constexpr double round_off = 1e-9;  // mm, lengths of some hundreds

StandardFit fit(double diameter, const std::string& name)
{
    for (const StandardFit& each : standard_fits(Millimetre(diameter)))
        if (each.name == name) return each;
    ADD_FAILURE() << name;
    return {};
}

void expect_micrometres(double diameter, const std::string& name, double least, double greatest)
{
    EXPECT_NEAR(fit(diameter, name).least_clearance * 1e3, least, round_off) << diameter << " " << name;
    EXPECT_NEAR(fit(diameter, name).greatest_clearance * 1e3, greatest, round_off) << diameter << " " << name;
}

// The sound splice: 190 + 60 mm and 205 mm, a half lap of 14 mm.
TEST(CutPlan, AddsUpToTheWantedLengthOnceTackedAndShrunk)
{
    const CutPlan cut =
        cut_plan(made_splice("", "overall_length = \"460 mm\"\nroot_gap = \"3 mm\"\nweld_shrink = \"1 mm\"\n"));
    // By hand: 5 mm more than drawn, 2.5 mm on each; half of 14 mm; (1 - 3)/2.
    EXPECT_NEAR(cut.cut[0], 250 + 2.5 + 7 - 1, round_off);
    EXPECT_NEAR(cut.cut[1], 205 + 2.5 + 7 - 1, round_off);
    EXPECT_NEAR(cut.first_section[0], 192.5, round_off);
    EXPECT_NEAR(cut.first_section[1], 207.5, round_off);
    // Laid on the bench: both bars overlap by the half lap, stand off by the gap and are drawn together by the shrink.
    EXPECT_NEAR(cut.cut[0] + cut.cut[1] - 14 + 3 - 1, 460, round_off);
}

TEST(CutPlan, LeavesTheDrawnShaftWithoutAWantedLength)
{
    const CutPlan cut = cut_plan(made_splice("", "root_gap = \"1 mm\"\nweld_shrink = \"1 mm\"\n"));
    EXPECT_NEAR(cut.overall, 455, round_off);
    EXPECT_NEAR(cut.cut[0], 257, round_off);
    EXPECT_NEAR(cut.cut[1], 212, round_off);
    EXPECT_FALSE(cut.plunge.has_value());
}

TEST(CutPlan, CanLeaveOneBarAlone)
{
    const CutPlan cut = cut_plan(made_splice("", "overall_length = \"445 mm\"\nadjust = \"right\"\n"));
    EXPECT_NEAR(cut.first_section[0], 190, round_off);
    EXPECT_NEAR(cut.first_section[1], 195, round_off);
}

TEST(CutPlan, WeighsThePlungeAgainstTheLengthThatMayBeOff)
{
    const std::string lines = "weld_shrink = \"1 mm\"\nplunge_available = \"20 mm\"\nplunge_used = ";
    const auto plunge = [&](const char* used) { return *cut_plan(made_splice("", lines + used + "\n")).plunge; };
    // Two cuts of 0.5 mm and half of the shrink.
    EXPECT_NEAR(plunge("\"15 mm\"").length_error, 1.5, round_off);
    EXPECT_TRUE(plunge("\"15 mm\"").suffices());
    EXPECT_TRUE(plunge("\"18.5 mm\"").suffices());
    EXPECT_FALSE(plunge("\"18.6 mm\"").suffices());
}

// Limits of holes and shafts as printed in the tables of ISO 286-2: 28 mm in 18 to 30 mm, 42 mm in 30 to 50 mm.
TEST(StandardFits, AreTheHolesLessTheShaftsOfTheTables)
{
    expect_micrometres(28, "H7/h6", 0, 21 + 13);
    expect_micrometres(28, "H7/g6", 7, 21 + 20);
    expect_micrometres(28, "H7/p6", -35, 21 - 22);
    expect_micrometres(28, "H8/k6", -15, 33 - 2);
    expect_micrometres(42, "H7/s6", -59, 25 - 43);
    expect_micrometres(42, "H7/n6", -33, 25 - 17);
    expect_micrometres(30, "H7/h7", 0, 21 + 21);  // a range holds its upper end
    // From memory: 100 H7 is 0/+35, 100 g6 -12/-34, 100 s6 +71/+93, 10 p6 +15/+24, 10 H7 0/+15.
    expect_micrometres(100, "H7/g6", 12, 35 + 34);
    expect_micrometres(100, "H7/s6", -93, 35 - 71);
    expect_micrometres(10, "H7/p6", -24, 15 - 15);
}

TEST(StandardFits, SayWhichLimitsAreFromMemory)
{
    EXPECT_EQ(fit(28, "H7/g6").provenance, Provenance::secondary);
    EXPECT_EQ(fit(60, "H7/g6").provenance, Provenance::from_memory);
}

BoreBand band_of(const std::string& clearance, const std::string& making)
{
    std::string text = made_splice_text("", making);
    text = with(text, "clearance = \"0.02 mm\"", "clearance = \"" + clearance + "\"");
    return bore_band(accepted(text), Side::left);
}

// The bar is 28 mm as bought, IT7 there 0.021 mm.
TEST(BoreBand, HoldsTheClearanceInItsMiddle)
{
    const BoreBand band = band_of("0.02 mm", "");
    EXPECT_NEAR(band.least, 28.0095, round_off);
    EXPECT_NEAR(band.greatest, 28.0305, round_off);
    EXPECT_EQ(band.nearest_fit, "H7/h7");  // middle 0.021; h6 0.017, g6 0.024
    const BoreBand press = band_of("-0.03 mm", "bore_grade = \"IT6\"\n");
    EXPECT_NEAR(press.least, 27.9635, round_off);
    EXPECT_NEAR(press.greatest, 27.9765, round_off);
}

TEST(BoreBand, NeverTurnsASlidingFitIntoAPressOrBack)
{
    EXPECT_NEAR(band_of("0 mm", "").least, 28, round_off);
    EXPECT_NEAR(band_of("0 mm", "").greatest, 28.021, round_off);
    EXPECT_EQ(band_of("0 mm", "").nearest_fit, "H7/h6");       // never presses
    EXPECT_EQ(band_of("-0.005 mm", "").nearest_fit, "H7/p6");  // never slides
    EXPECT_NEAR(band_of("-0.005 mm", "").least, 27.979, round_off);
    EXPECT_NEAR(band_of("-0.005 mm", "").greatest, 28, round_off);
}

TEST(BoreBand, NamesNoFitBeyondTheTable)
{
    EXPECT_FALSE(band_of("-0.05 mm", "").nearest_fit.has_value());  // H7/s6 ends at -0.048
    EXPECT_FALSE(band_of("0.2 mm", "").nearest_fit.has_value());
    const BoreBand loose = band_of("0.025 mm", "");
    EXPECT_EQ(loose.nearest_fit, "H7/g6");
    EXPECT_NE(std::find(loose.fits.begin(), loose.fits.end(), "H8/h6"), loose.fits.end());
    EXPECT_EQ(std::find(loose.fits.begin(), loose.fits.end(), "H7/k6"), loose.fits.end());  // ends at 0.019
}

}  // namespace
}  // namespace splicewright
