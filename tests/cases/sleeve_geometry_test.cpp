// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

// Bars in line that an impossible sleeve makes no crooked ones.
TEST(SleeveWall, TooThinTellsNothingOfTheOffsetOfTheBars)
{
    const std::string text = splice_with("outer_diameter = \"42 mm\"", "outer_diameter = \"26 mm\"");
    EXPECT_EQ(problem_of(text, "joint.offset").rule, "");
    EXPECT_NE(problem_of(text, "sleeve.outer_diameter").rule, "");
}

TEST(SleeveShape, OuterDiameterIsAtMostFourTimesTheBar)
{
    expect_only_problem(splice_with("\"42 mm\"", "\"109 mm\""), "sleeve.outer_diameter", "at most 108 mm",
                        "thinner sleeve");
    EXPECT_TRUE(messages(splice_with("\"42 mm\"", "\"108 mm\"")).empty());
}

TEST(SleeveShape, WallIsAtLeastTwoAndAHalfMillimetres)
{
    const std::string text = with(splice_with("\"42 mm\"", "\"33 mm\""), "leg = \"6 mm\"",
                                  "leg_on_bar = \"6 mm\"\nleg_on_sleeve = \"3 mm\"");
    const Problem problem = problem_of(text, "sleeve.outer_diameter");
    EXPECT_EQ(problem.rule, "must leave a wall of at least 2.5 mm over the left bore of 28.02 mm, not 2.49 mm");
    EXPECT_EQ(problem.fix, "outer_diameter = \"34 mm\"");  // the leg of 3 mm on the bar of 28 mm asks for more
    EXPECT_FALSE(messages(splice_with("\"42 mm\"", "\"20 mm\"")).empty());
    EXPECT_FALSE(messages(splice_with("outer_diameter = \"42 mm\"", "wall = \"-6 mm\"")).empty());
}

TEST(SleeveShape, ClearanceIsAtMostAMillimetre)
{
    expect_only_problem(
        splice_with("clearance = \"0.02 mm\"", "clearance_left = \"1.2 mm\"\nclearance_right = \"0 mm\""),
        "sleeve.clearance_left", "at most 1 mm is allowed", "bore the sleeve to fit its bar");
    expect_only_problem(splice_with("clearance = \"0.02 mm\"", "bore_left = \"29.2 mm\"\nbore_right = \"27 mm\""),
                        "sleeve.bore_left", "at most 1 mm is allowed", "bore the sleeve to fit its bar");
}

TEST(SleeveShape, PressIsAtMostTwoThousandthsOfTheDiameter)
{
    expect_only_problem(splice_with("\"0.02 mm\"", "\"-0.055 mm\""), "sleeve.clearance", "at most 0.054 mm is allowed",
                        "clearance = \"-0.05 mm\"");
    EXPECT_TRUE(messages(splice_with("\"0.02 mm\"", "\"-0.054 mm\"")).empty());
}

TEST(SleeveShape, ReachesBeyondTheBlendOnBothSides)
{
    const std::string offset = splice_with("length = \"84 mm\"", "length = \"84 mm\"\noffset = \"36 mm\"");
    const std::string square = with(offset, "half_lap = \"14 mm\"\n", "");
    expect_only_problem(square, "sleeve.length", "at least 7 mm beyond the joint on the left, not 6 mm",
                        "length = \"86 mm\"");
    EXPECT_FALSE(messages(splice_with("length = \"84 mm\"", "length = \"-84 mm\"")).empty());
    EXPECT_FALSE(messages(splice_with("length = \"84 mm\"", "length = \"0 mm\"")).empty());
}

TEST(SleeveShape, EndsOnTheBars)
{
    std::string all;
    for (const std::string& line : messages(splice_with("length = \"84 mm\"", "length = \"480 mm\""))) all += line;
    EXPECT_NE(all.find("it reaches 240 mm to the right, and that bar is 205 mm long"), std::string::npos) << all;
    EXPECT_NE(all.find("a shorter sleeve, or longer bars"), std::string::npos) << all;
    EXPECT_EQ(all.find("240 mm to the left"), std::string::npos) << all;
}

TEST(SleeveShape, WeldEndsBeforeTheShoulder)
{
    // The first section on the left is the larger one, 190 mm long: 184 + 6 + 0.6213 + 1 is 1.6213 too much, and each
    // end moves by half of what the sleeve is shortened.
    std::string text = splice_with("length = \"84 mm\"", "length = \"250 mm\"\noffset = \"-59 mm\"");
    text = with(text, "at = \"120 mm\"", "at = \"140 mm\"");
    expect_only_problem(text, "sleeve.length", "weld end on the first section of the left bar",
                        "shorten the sleeve by 3.25 mm");
    EXPECT_TRUE(messages(with(text, "length = \"250 mm\"", "length = \"246.75 mm\"")).empty());
}

TEST(SleeveShape, WeldEndsBeforeTheFilletOfALargerSection)
{
    // First section 60 mm at 28 mm, then 34 mm with a fillet of 3 mm: plain up to 57 mm.
    const std::string bar =
        "length = \"60 mm\"\ndiameter = \"28 mm\"\n[[left.section]]\nlength = \"80 mm\"\ndiameter = \"34 mm\"\nfillet "
        "= \"3 mm\"\n";
    std::string text = splice_with(
        "length = \"190 mm\"\ndiameter = \"28 mm\"\n[[left.section]]\nlength = \"60 mm\"\n"
        "diameter = \"24 mm\"\nfillet = \"2 mm\"\n",
        bar);
    EXPECT_TRUE(messages(text).empty());
    text = with(text, "length = \"84 mm\"", "length = \"100 mm\"");
    expect_only_problem(text, "sleeve.length", "that section is plain up to 57 mm", "shorten the sleeve by 1.25 mm");
    EXPECT_TRUE(messages(with(text, "length = \"100 mm\"", "length = \"98.75 mm\"")).empty());
}

TEST(Taper, IsThinnerAndLongEnoughAndShortOfTheJoint)
{
    const auto tapered = [](const std::string& end_wall, const std::string& length)
    {
        return splice_with("outer_diameter = \"42 mm\"", "outer_diameter = \"50.02 mm\"\nend_wall = \"" + end_wall +
                                                             "\"\ntaper_length = \"" + length + "\"");
    };
    EXPECT_TRUE(messages(tapered("7 mm", "12 mm")).empty());
    expect_only_problem(tapered("11 mm", "12 mm"), "sleeve.end_wall", "thinner than the wall of 11 mm",
                        "remove end_wall");
    // Rise 4 mm, twice that; reach 42 mm less 3 mm.
    expect_only_problem(tapered("7 mm", "7.9 mm"), "sleeve.taper_length", "at least 8 mm", "taper_length = \"8 mm\"");
    expect_only_problem(tapered("7 mm", "39.1 mm"), "sleeve.taper_length", "at most 39 mm", "taper_length = \"39 mm\"");
    EXPECT_EQ(problem_of(tapered("2.4 mm", "30 mm"), "sleeve.end_wall").fix, "end_wall = \"2.5 mm\"");
}

TEST(SleeveWeldShape, LegsAreFromThreeToThirtyMillimetres)
{
    expect_only_problem(splice_with("leg = \"6 mm\"", "leg = \"0 mm\""), "sleeve.weld.leg", "at least 3 mm",
                        "leg = \"... mm\"");
    expect_only_problem(splice_with("leg = \"6 mm\"", "leg = \"-6 mm\""), "sleeve.weld.leg", "at least 3 mm",
                        "leg = \"... mm\"");
    std::string text = with(splice_with("leg = \"6 mm\"", "leg = \"31 mm\""), "\"42 mm\"", "\"100 mm\"");
    expect_only_problem(text, "sleeve.weld.leg", "at most 30 mm", "leg = \"... mm\"");
}

TEST(SleeveWeldShape, LegIsAtMostTheEndOfTheSleeve)
{
    expect_only_problem(splice_with("leg = \"6 mm\"", "leg = \"7.5 mm\""), "sleeve.weld.leg", "at most 7 mm",
                        "leg = \"7 mm\"");
    EXPECT_TRUE(messages(splice_with("leg = \"6 mm\"", "leg = \"7 mm\"")).empty());
    expect_only_problem(splice_with("leg = \"6 mm\"", "leg = \"6.998 mm\""), "sleeve.weld.leg", "must reach the corner",
                        "leg = \"7 mm\"");
}

TEST(SleeveWeldShape, LegReachesTheCornerInInchesToo)
{
    // Wall 1/4 in over a snug bore of 1.1 in; leg 1/4 in.
    std::string text = splice_with("diameter = \"28 mm\"", "diameter = \"1.1 in\"");
    text = with(text, "outer_diameter = \"42 mm\"\nclearance = \"0.02 mm\"",
                "outer_diameter = \"1.6 in\"\nclearance = \"0 mm\"");
    EXPECT_TRUE(messages(with(text, "leg = \"6 mm\"", "leg = \"1/4 in\"")).empty());
}

TEST(SleeveWeldShape, OneLegIsAtMostThreeTimesTheOther)
{
    const std::string text = with(splice_with("leg = \"6 mm\"", "leg_on_bar = \"9.1 mm\"\nleg_on_sleeve = \"3 mm\""),
                                  "toe_radius = \"1.5 mm\"", "toe_radius = \"1 mm\"");
    expect_only_problem(text, "sleeve.weld.leg_on_bar", "three times the other leg of 3 mm", "closer together");
    EXPECT_TRUE(messages(with(text, "9.1 mm", "9 mm")).empty());
}

TEST(SleeveWeldShape, ToeRadiusFitsOnTheFaceOfTheWeld)
{
    expect_only_problem(splice_with("toe_radius = \"1.5 mm\"", "toe_radius = \"0.1 mm\""), "sleeve.weld.toe_radius",
                        "at least 0.2 mm", "toe_radius = \"0.2 mm\"");
    expect_only_problem(splice_with("toe_radius = \"1.5 mm\"", "toe_radius = \"2.5 mm\""), "sleeve.weld.toe_radius",
                        "at most 2.4 mm", "toe_radius = \"2.4 mm\"");
}

}  // namespace
}  // namespace splicewright
