// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

// Sums and differences of lengths near 40 mm.
constexpr double round_off = 1e-12;

std::string with_fit(const std::string& lines) { return splice_with("clearance = \"0.02 mm\"", lines); }

TEST(Fit, IsGivenForBothSidesOrForEach)
{
    const Sleeve sleeve = *accepted(with_fit("clearance_left = \"0.05 mm\"\nclearance_right = \"-0.02 mm\"")).sleeve;
    EXPECT_EQ(sleeve.clearance[0], Millimetre(0.05));
    EXPECT_EQ(sleeve.clearance[1], Millimetre(-0.02));
    EXPECT_EQ(sleeve.slit[0], SlitState::open);
    EXPECT_EQ(sleeve.slit[1], SlitState::press);
    expect_only_problem(with_fit("clearance_left = \"0.05 mm\""), "sleeve.clearance_right", "both sides",
                        "clearance_left");
    expect_only_problem(with_fit("clearance = \"0.05 mm\"\nclearance_right = \"0 mm\""), "sleeve.clearance",
                        "must not stand beside", "keep either");
}

TEST(Fit, FollowsFromTheBore)
{
    const Sleeve sleeve = *accepted(with_fit("bore_left = \"28.05 mm\"\nbore_right = \"27 mm\"")).sleeve;
    EXPECT_NEAR(sleeve.clearance[0].value(), 0.05, round_off);
    EXPECT_EQ(sleeve.clearance[1], Millimetre(0));
    EXPECT_EQ(sleeve.slit[1], SlitState::snug);
    const Sleeve straight = *accepted(with_fit("bore = \"28 mm\"")).sleeve;
    EXPECT_NEAR(straight.clearance[1].value(), 1.0, round_off);
    expect_only_problem(with_fit("bore_left = \"28.05 mm\""), "sleeve.bore_right", "both sides", "bore");
    expect_only_problem(with_fit("clearance = \"0 mm\"\nbore = \"28 mm\""), "sleeve.bore",
                        "must not stand beside a clearance", "keep either");
}

TEST(Fit, ABoreSmallerThanItsBarNeedsAStatedPress)
{
    expect_only_problem(with_fit("bore_left = \"27.98 mm\"\nbore_right = \"27 mm\""), "sleeve.bore_left",
                        "0.02 mm smaller than the left bar", "press = \"0.02 mm\"");
    const std::string bores = "bore_left = \"27.98 mm\"\nbore_right = \"27 mm\"\n";
    const Sleeve pressed = *accepted(with_fit(bores + "press = \"0.02 mm\"")).sleeve;
    EXPECT_NEAR(pressed.clearance[0].value(), -0.02, round_off);
    EXPECT_EQ(pressed.slit[0], SlitState::press);
    expect_only_problem(with_fit(bores + "press = \"0.01 mm\""), "sleeve.bore_left", "more than the press of 0.01 mm",
                        "press = \"0.02 mm\"");
    expect_only_problem(with_fit("clearance = \"-0.02 mm\"\npress = \"0.03 mm\""), "sleeve.press", "goes with a bore",
                        "remove press");
    EXPECT_NE(problem_of(with_fit(bores + "press = \"-0.02 mm\""), "sleeve.press").rule, "");
}

TEST(Fit, ABoreFarTooSmallIsToldOnceAndWithoutAPressThatIsNotAllowed)
{
    // 0.002 of 28 mm and of 27 mm.
    expect_only_problem(with_fit("bore_left = \"26.9 mm\"\nbore_right = \"27 mm\""), "sleeve.bore_left",
                        "1.1 mm smaller than the left bar of 28 mm",
                        "a bore of at least 27.944 mm: on this bar a press of at most 0.056 mm is allowed");
    EXPECT_EQ(messages(with_fit("bore = \"26.9 mm\"")).size(), 2U);
    expect_only_problem(with_fit("bore_left = \"27.9 mm\"\nbore_right = \"27 mm\"\npress = \"0.2 mm\""),
                        "sleeve.bore_left", "presses by 0.1 mm on the left",
                        "a bore of at least 27.95 mm: bore_left = \"... mm\" with your value");
    expect_only_problem(with_fit("bore_left = \"28 mm\"\nbore_right = \"39 mm\""), "sleeve.bore_right",
                        "10 mm above the diameter of the right bar, and is 12 mm above it", "bore_right = \"... mm\"");
}

TEST(Fit, IsNotDisturbedByTheRoundOffOfInches)
{
    std::string text = with_fit("bore_left = \"1.1025 in\"\nbore_right = \"27 mm\"");
    text = with(text, "diameter = \"28 mm\"", "diameter = \"28.0035 mm\"");
    EXPECT_EQ(accepted(text).sleeve->clearance[0], Millimetre(0));
}

TEST(Slit, StatedMustAgreeWithTheFit)
{
    EXPECT_EQ(accepted(with_fit("clearance = \"0.02 mm\"\nslit = \"snug\"")).sleeve->slit[0], SlitState::snug);
    EXPECT_EQ(accepted(with_fit("clearance = \"0 mm\"\nslit = \"open\"")).sleeve->slit[1], SlitState::open);
    EXPECT_EQ(accepted(with_fit("clearance = \"0.02 mm\"\nslit = \"bonded\"")).sleeve->slit[1], SlitState::bonded);
    EXPECT_EQ(accepted(with_fit("clearance = \"-0.02 mm\"\nslit = \"press\"")).sleeve->slit[1], SlitState::press);
    const auto refused = [](const std::string& fit, const std::string& part)
    { EXPECT_NE(problem_of(with_fit(fit), "sleeve.slit").rule.find(part), std::string::npos) << fit; };
    refused("clearance = \"0.02 mm\"\nslit = \"press\"", "presses only with a negative clearance");
    refused("clearance = \"-0.02 mm\"\nslit = \"open\"", "cannot be open");
    refused("clearance = \"-0.02 mm\"\nslit = \"snug\"", "cannot be snug");
    expect_only_problem(with_fit("clearance = \"0 mm\"\nslit = \"glued\""), "sleeve.slit", "must be \"open\"",
                        "remove slit");
}

TEST(Wall, IsMeasuredOverTheLargerBore)
{
    const Sleeve sleeve = *accepted(splice_with("outer_diameter = \"42 mm\"", "wall = \"7 mm\"")).sleeve;
    EXPECT_NEAR(sleeve.outer_diameter.value(), 28.02 + 14.0, round_off);
    EXPECT_NEAR(sleeve.end_diameter.value(), 28.02 + 14.0, round_off);
    expect_only_problem(splice_with("outer_diameter = \"42 mm\"", "outer_diameter = \"42 mm\"\nwall = \"7 mm\""),
                        "sleeve.wall", "must not stand beside outer_diameter", "keep either");
}

TEST(Taper, NeedsEndWallAndLength)
{
    const std::string tapered = "outer_diameter = \"50 mm\"\nend_wall = \"7 mm\"\ntaper_length = \"12 mm\"";
    const Sleeve sleeve = *accepted(splice_with("outer_diameter = \"42 mm\"", tapered)).sleeve;
    EXPECT_NEAR(sleeve.end_diameter.value(), 28.02 + 14.0, round_off);
    EXPECT_EQ(sleeve.taper_length, Millimetre(12));
    expect_only_problem(splice_with("outer_diameter = \"42 mm\"", "outer_diameter = \"50 mm\"\nend_wall = \"7 mm\""),
                        "sleeve.taper_length", "needs both", "or neither");
    expect_only_problem(
        splice_with("outer_diameter = \"42 mm\"", "outer_diameter = \"50 mm\"\ntaper_length = \"9 mm\""),
        "sleeve.end_wall", "needs both", "or neither");
}

TEST(Legs, AreGivenTogetherOrEach)
{
    const SleeveWeld weld =
        accepted(splice_with("leg = \"6 mm\"", "leg_on_bar = \"7 mm\"\nleg_on_sleeve = \"5 mm\"")).sleeve->weld;
    EXPECT_EQ(weld.leg_on_bar, Millimetre(7));
    EXPECT_EQ(weld.leg_on_sleeve, Millimetre(5));
    expect_only_problem(splice_with("leg = \"6 mm\"", "leg_on_bar = \"6 mm\""), "sleeve.weld.leg_on_sleeve",
                        "both legs", "leg for both");
    expect_only_problem(splice_with("leg = \"6 mm\"", "leg = \"6 mm\"\nleg_on_bar = \"6 mm\""), "sleeve.weld.leg",
                        "must not stand beside", "keep either");
}

TEST(Passes, AreAWholeNumberFromOneToTwenty)
{
    EXPECT_EQ(accepted(splice_with("leg = \"6 mm\"", "leg = \"6 mm\"\npasses = 3")).sleeve->weld.passes, 3);
    for (const char* passes : {"0", "21", "1.5", "-1", "1e30"})
        expect_only_problem(splice_with("leg = \"6 mm\"", std::string("leg = \"6 mm\"\npasses = ") + passes),
                            "sleeve.weld.passes", "whole number from 1 to 20", "passes = ...");
}

TEST(Penetration, IsFullOrADepth)
{
    EXPECT_FALSE(accepted(splice_with("\"9 mm\"", "\"full\"")).joint->penetration.has_value());
    EXPECT_FALSE(accepted(splice_with("\"9 mm\"", "\"Full\"")).joint->penetration.has_value());
    expect_only_problem(splice_with("\"9 mm\"", "\"deep\""), "joint.penetration", "must be \"full\" or a depth",
                        "full");
    expect_only_problem(splice_with("\"9 mm\"", "\"9\""), "joint.penetration", "must be a length with its unit",
                        "penetration = \"9 mm\"");
}

TEST(Sleeve, NeedsItsWelds)
{
    const std::string& text = sound_splice_text();
    const std::size_t from = text.find("[sleeve.weld]"), to = text.find("[load]");
    expect_only_problem(text.substr(0, from) + text.substr(to), "sleeve.weld", "a sleeve needs its welds",
                        "[sleeve.weld] with leg = \"... mm\"");
}

}  // namespace
}  // namespace splicewright
