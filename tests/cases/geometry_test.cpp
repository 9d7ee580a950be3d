// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>

#include "cases/bar_shape.h"
#include "cases/check_geometry.h"
#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

// A stepped plain shaft with a groove, one key to a line.
const std::string shaft =
    "[left]\nmaterial = \"C45 +N\"\n"
    "[[left.section]]\nlength = \"80 mm\"\ndiameter = \"30 mm\"\n"
    "[[left.section]]\nlength = \"40 mm\"\ndiameter = \"38 mm\"\nfillet = \"3 mm\"\n"
    "[[left.section]]\nlength = \"110 mm\"\ndiameter = \"32 mm\"\nfillet = \"2.5 mm\"\n"
    "[[left.groove]]\nat = \"160 mm\"\ndepth = \"1.2 mm\"\nradius = \"0.8 mm\"\n"
    "[load]\npeak_torque = \"500 N*m\"\n";

std::string shaft_with(const std::string& line, const std::string& replacement)
{
    return with(shaft, line, replacement);
}

TEST(FilletExtent, IsTheRadiusBesideAHighStep)
{
    EXPECT_DOUBLE_EQ(fillet_extent(2.0, 5.0), 2.0);
    EXPECT_DOUBLE_EQ(fillet_extent(2.0, 2.0), 2.0);
}

TEST(FilletExtent, IsShorterBesideALowStep)
{
    // A radius of 5 over a step of 2: 5-3-4 triangle.
    EXPECT_DOUBLE_EQ(fillet_extent(5.0, 2.0), 4.0);
}

TEST(Bars, PlainSteppedShaftIsSound) { EXPECT_TRUE(messages(shaft).empty()) << messages(shaft).front(); }

TEST(Bars, DiametersAreFromSixToFourHundredMillimetres)
{
    expect_only_problem(
        "[left]\nmaterial = \"C45 +N\"\n[[left.section]]\nlength = \"900 mm\"\ndiameter = \"5.9 mm\"\n"
        "[load]\npeak_torque = \"5 N*m\"\n",
        "left.section[1].diameter", "at least 6 mm and at most 250 mm", "diameter = \"... mm\"");
    expect_only_problem(
        "[left]\nmaterial = \"C45 +N\"\n[[left.section]]\nlength = \"900 mm\"\ndiameter = \"0.5 m\"\n"
        "[load]\npeak_torque = \"5 N*m\"\n",
        "left.section[1].diameter", "at least 6 mm and at most 250 mm", "diameter = \"... mm\"");
    EXPECT_FALSE(messages(shaft_with("\"30 mm\"", "\"-30 mm\"")).empty());
    EXPECT_FALSE(messages(shaft_with("\"30 mm\"", "\"0 mm\"")).empty());
}

// What follows from an absurd value is not told: the joint, the blend and the penetration depend on this diameter.
TEST(Bars, AnAbsurdValueIsToldOnce)
{
    for (const char* diameter : {"2700 mm", "0 mm", "-27 mm", "1e300 m"})
        expect_only_problem(splice_with("\"27 mm\"", std::string("\"") + diameter + "\""), "right.section[1].diameter",
                            "at least 6 mm and at most 250 mm", "diameter");
    for (const char* length : {"1e6 m", "-84 mm", "0 mm"})
        expect_only_problem(splice_with("\"84 mm\"", std::string("\"") + length + "\""), "sleeve.length",
                            "at least 10 mm", "length");
}

TEST(Bars, SectionsAreFromHalfAMillimetreToFiveMetresLong)
{
    expect_only_problem(shaft_with("\"110 mm\"", "\"5.1 m\""), "left.section[3].length", "at most 5000 mm",
                        "length = \"... mm\"");
    EXPECT_NE(problem_of(shaft_with("\"40 mm\"", "\"0.4 mm\""), "left.section[2].length").rule.find("at least 0.5 mm"),
              std::string::npos);
    EXPECT_NE(problem_of(shaft_with("\"40 mm\"", "\"-40 mm\""), "left.section[2].length").rule.find("at least 0.5 mm"),
              std::string::npos);
}

TEST(Bars, AreAtMostTenMetresLong)
{
    std::string text = shaft_with("\"110 mm\"", "\"5 m\"");
    text = with(text, "\"80 mm\"", "\"5 m\"");
    text = text.substr(0, text.find("[[left.groove]]")) + "[load]\npeak_torque = \"500 N*m\"\n";
    expect_only_problem(text, "left.section", "at most 10000 mm long together, not 10040 mm", "shorten");
}

TEST(Bars, AreNoMoreSlenderThanAHundredAndTwentyDiameters)
{
    std::string text = shaft_with("\"80 mm\"", "\"5 m\"");
    text = text.substr(0, text.find("[[left.groove]]")) + "[load]\npeak_torque = \"500 N*m\"\n";
    expect_only_problem(text, "left.section", "120 times its smallest diameter", "shorten");
}

TEST(Bars, HaveAtMostFortySectionsAndGrooves)
{
    std::string text = "[left]\nmaterial = \"C45 +N\"\n", grooves = shaft;
    for (int number = 0; number < 41; ++number) text += "[[left.section]]\nlength = \"40 mm\"\ndiameter = \"30 mm\"\n";
    expect_only_problem(text + "[load]\npeak_torque = \"500 N*m\"\n", "left.section", "at most 40 entries, not 41",
                        "leave out");
    for (int number = 0; number < 40; ++number)
        grooves += "[[left.groove]]\nat = \"163 mm\"\ndepth = \"1 mm\"\nradius = \"0.8 mm\"\n";
    EXPECT_NE(problem_of(grooves, "left.groove").rule.find("at most 40 entries, not 41"), std::string::npos);
}

TEST(Fillets, StandWhereTheDiameterChangesAndNowhereElse)
{
    expect_only_problem(shaft_with("fillet = \"3 mm\"\n", ""), "left.section[2].fillet", "changes from 30 mm to 38 mm",
                        "fillet = \"... mm\"");
    expect_only_problem(shaft_with("\"3 mm\"", "\"0 mm\""), "left.section[2].fillet", "a sharp corner has no stress",
                        "fillet");
    expect_only_problem(shaft_with("diameter = \"30 mm\"", "diameter = \"30 mm\"\nfillet = \"1 mm\""),
                        "left.section[1].fillet", "no section stands before", "remove fillet");
    expect_only_problem(shaft_with("\"30 mm\"", "\"38 mm\""), "left.section[2].fillet", "does not change",
                        "remove fillet");
}

TEST(Fillets, AreFromATenthToFiftyMillimetres)
{
    expect_only_problem(shaft_with("\"3 mm\"", "\"0.05 mm\""), "left.section[2].fillet", "at least 0.1 mm",
                        "fillet = \"... mm\"");
    expect_only_problem(shaft_with("\"3 mm\"", "\"-3 mm\""), "left.section[2].fillet", "at least 0.1 mm", "fillet");
    expect_only_problem(shaft_with("\"3 mm\"", "\"51 mm\""), "left.section[2].fillet", "at most 50 mm",
                        "fillet = \"... mm\"");
    std::string wide =
        "[left]\nmaterial = \"C45 +N\"\n[[left.section]]\nlength = \"300 mm\"\ndiameter = \"100 mm\"\n"
        "[[left.section]]\nlength = \"300 mm\"\ndiameter = \"120 mm\"\nfillet = \"0.2 mm\"\n"
        "[load]\npeak_torque = \"500 N*m\"\n";
    expect_only_problem(wide, "left.section[2].fillet", "at least 0.25 mm", "fillet = \"... mm\"");
}

TEST(Fillets, NeedRoomOnTheSmallerSection)
{
    // Waisted: a fillet of 12 mm over a step of 4 mm takes sqrt(12^2 - 8^2) = 8.94 mm at each end, and 1 mm stays
    // plain.
    std::string waist =
        "[left]\nmaterial = \"C45 +N\"\n[[left.section]]\nlength = \"80 mm\"\ndiameter = \"38 mm\"\n"
        "[[left.section]]\nlength = \"18.8 mm\"\ndiameter = \"30 mm\"\nfillet = \"12 mm\"\n"
        "[[left.section]]\nlength = \"80 mm\"\ndiameter = \"38 mm\"\nfillet = \"12 mm\"\n"
        "[load]\npeak_torque = \"500 N*m\"\n";
    expect_only_problem(waist, "left.section[2].length", "must be at least 18.8885 mm", "length = \"... mm\"");
    EXPECT_TRUE(messages(with(waist, "\"18.8 mm\"", "\"18.89 mm\"")).empty());
}

TEST(Bars, AStepIsNoLessThanATenth)
{
    expect_only_problem(shaft_with("\"30 mm\"", "\"37.95 mm\""), "left.section[2].diameter",
                        "differ from it by at least 0.1 mm", "diameter = \"... mm\"");
}

TEST(Bore, LeavesAWall)
{
    const auto bored = [](const std::string& bore)
    { return shaft_with("\"C45 +N\"\n", "\"C45 +N\"\nbore = \"" + bore + "\"\n"); };
    EXPECT_TRUE(messages(bored("12 mm")).empty());
    expect_only_problem(bored("24.1 mm"), "left.bore", "at most 24 mm", "bore = \"... mm\"");
    expect_only_problem(bored("-1 mm"), "left.bore", "must not be negative", "remove bore");
    expect_only_problem(bored("0.5 mm"), "left.bore", "at least 1 mm", "remove bore");
    // The groove of 1.2 mm in 32 mm leaves (32 - 24)/2 - 1.2 = 2.8 mm over a bore of 24 mm.
    expect_only_problem(bored("24 mm"), "left.groove[1].depth", "a wall of at least 3 mm over the bore",
                        "depth = \"... mm\"");
}

TEST(Bores, AreEqualWhereTheBarsAreWelded)
{
    expect_only_problem(splice_with("[[right.section]]", "bore = \"6 mm\"\n[[right.section]]"), "right.bore",
                        "must be that of the left bar", "measure both: one bore runs through both bars");
    expect_only_problem(splice_with("material = \"C45 +QT\"\n", "material = \"C45 +QT\"\nbore = \"5 mm\"\n"),
                        "right.bore", "must be that of the left bar, 5 mm",
                        "measure both: one bore runs through both bars");
}

TEST(Grooves, HaveASizeThatTheMeshCanShow)
{
    expect_only_problem(shaft_with("\"0.8 mm\"", "\"0.1 mm\""), "left.groove[1].radius", "at least 0.2 mm",
                        "radius = \"... mm\"");
    expect_only_problem(shaft_with("\"1.2 mm\"", "\"0.05 mm\""), "left.groove[1].depth", "at least 0.1 mm",
                        "depth = \"... mm\"");
    expect_only_problem(shaft_with("\"1.2 mm\"", "\"9.7 mm\""), "left.groove[1].depth", "0.3 of the diameter of 32 mm",
                        "depth = \"... mm\"");
    EXPECT_FALSE(messages(shaft_with("\"0.8 mm\"", "\"-0.8 mm\"")).empty());
    EXPECT_FALSE(messages(shaft_with("\"1.2 mm\"", "\"-1.2 mm\"")).empty());
}

TEST(Grooves, LieWithinOneSectionAndOffItsFillets)
{
    for (const char* at : {"120 mm", "121 mm", "119.5 mm", "80.5 mm", "77.5 mm"})
        EXPECT_NE(problem_of(shaft_with("\"160 mm\"", std::string("\"") + at + "\""), "left.groove[1].at")
                      .rule.find("within one section"),
                  std::string::npos)
            << at;
    EXPECT_NE(problem_of(shaft_with("\"160 mm\"", "\"900 mm\""), "left.groove[1].at").rule.find("must be on the bar"),
              std::string::npos);
    EXPECT_NE(problem_of(shaft_with("\"160 mm\"", "\"-5 mm\""), "left.groove[1].at").rule.find("must be at least"),
              std::string::npos);
}

TEST(Grooves, StandInOrderAndApart)
{
    const std::string second = "[[left.groove]]\nat = \"162 mm\"\ndepth = \"1.2 mm\"\nradius = \"0.8 mm\"\n";
    // 160 + 0.8 + 1 + 0.8
    expect_only_problem(shaft + second, "left.groove[2].at", "must be at least 162.6 mm", "at = \"... mm\"");
    EXPECT_TRUE(messages(shaft + with(second, "162 mm", "162.6 mm")).empty());
}

TEST(Grooves, KeepClearOfTheSleeveWeld)
{
    // Reach 42, leg 6, toe 1.5 tan(22.5 deg) = 0.62, then 1 mm and the half width of 1 mm.
    const double least = 42 + 6 + 1.5 * std::tan(std::acos(-1.0) / 8) + 1 + 1;
    ASSERT_NEAR(least, 50.62, 0.005);
    expect_only_problem(splice_with("at = \"120 mm\"", "at = \"50.6 mm\""), "right.groove[1].at",
                        "the sleeve weld ends at 48.6213 mm", "at = \"... mm\"");
    EXPECT_TRUE(messages(splice_with("at = \"120 mm\"", "at = \"50.63 mm\"")).empty());
}

TEST(LoadedEnd, NeedsADiameterOfPlainBar)
{
    expect_only_problem(splice_with("length = \"60 mm\"", "length = \"25 mm\""), "left.section[2].length",
                        "must be at least 26 mm", "length = \"... mm\"");
    EXPECT_TRUE(messages(splice_with("length = \"60 mm\"", "length = \"26 mm\"")).empty());
    expect_only_problem(splice_with("length = \"205 mm\"", "length = \"147 mm\""), "right.section[1].length",
                        "must be at least 148 mm", "length = \"... mm\"");
    expect_only_problem(with(shaft_with("\"160 mm\"", "\"100 mm\""), "\"80 mm\"", "\"32.9 mm\""),
                        "left.section[1].length", "both ends of a plain shaft are loaded", "lengthen");
}

TEST(Joint, BarsDifferByAtMostAQuarter)
{
    const std::string text =
        with(splice_with("diameter = \"27 mm\"", "diameter = \"22 mm\""), "blend = \"3 mm\"", "blend = \"7 mm\"");
    EXPECT_EQ(problem_of(text, "left.section[1].diameter").rule,
              "must be at most 27.5 mm at the joint: 25 % more than the other bar's 22 mm");
}

TEST(Joint, PenetrationLeavesALandOrIsFull)
{
    expect_only_problem(splice_with("\"9 mm\"", "\"2.4 mm\""), "joint.penetration", "at least 2.5 mm",
                        "penetration = \"... mm\"");
    // Mean radius (28 + 27)/4 = 13.75, less the land of 2.
    expect_only_problem(splice_with("\"9 mm\"", "\"11.8 mm\""), "joint.penetration", "at most 11.75 mm",
                        "penetration = \"... mm\"");
    EXPECT_FALSE(messages(splice_with("\"9 mm\"", "\"-9 mm\"")).empty());
    std::string hollow = splice_with("material = \"C45 +QT\"\n", "material = \"C45 +QT\"\nbore = \"19 mm\"\n");
    hollow = with(hollow, "material = \"C45 +N\"\n", "material = \"C45 +N\"\nbore = \"19 mm\"\n");
    hollow = with(with(hollow, "\"9 mm\"", "\"3 mm\""), "\"1.5 mm\"\nradius", "\"0.5 mm\"\nradius");
    hollow = with(with(hollow, "diameter = \"24 mm\"", "diameter = \"28 mm\""), "fillet = \"2 mm\"\n", "");
    expect_only_problem(hollow, "joint.penetration", "cannot be a depth here", "full");
}

TEST(Joint, BlendIsAsLongAsTheDifferenceAsks)
{
    expect_only_problem(splice_with("blend = \"3 mm\"", "blend = \"0.9 mm\""), "joint.blend", "at least 1 mm",
                        "blend = \"1 mm\"");
    expect_only_problem(splice_with("blend = \"3 mm\"", "blend = \"0 mm\""), "joint.blend", "at least 1 mm",
                        "blend = \"1 mm\"");
    expect_only_problem(splice_with("blend = \"3 mm\"", "blend = \"22 mm\""), "joint.blend", "at most 21.6 mm",
                        "blend = \"21.6 mm\"");
    expect_only_problem(splice_with("diameter = \"27 mm\"", "diameter = \"28 mm\""), "joint.blend", "must be absent",
                        "remove blend");
}

TEST(Joint, HalfLapIsCoveredByTheSleeve)
{
    expect_only_problem(splice_with("half_lap = \"14 mm\"", "half_lap = \"1 mm\""), "joint.half_lap", "at least 2 mm",
                        "half_lap = \"2 mm\"");
    expect_only_problem(splice_with("half_lap = \"14 mm\"", "half_lap = \"55 mm\""), "joint.half_lap", "at most 54 mm",
                        "half_lap = \"54 mm\"");
    const std::string text =
        with(splice_with("half_lap = \"14 mm\"", "half_lap = \"50 mm\""), "length = \"84 mm\"", "length = \"48 mm\"");
    expect_only_problem(text, "joint.half_lap", "it reaches 24 mm to the left", "half_lap = \"42 mm\"");
}

TEST(Joint, WithoutSleeveStillNeedsRoomOnTheFirstSections)
{
    const std::string text =
        "[left]\nmaterial = \"C45 +N\"\n[[left.section]]\nlength = \"2.9 mm\"\ndiameter = \"28 mm\"\n"
        "[[left.section]]\nlength = \"90 mm\"\ndiameter = \"32 mm\"\nfillet = \"1 mm\"\n"
        "[right]\nmaterial = \"C45 +N\"\n[[right.section]]\nlength = \"90 mm\"\ndiameter = \"28 mm\"\n"
        "[joint]\npenetration = \"full\"\n[load]\npeak_torque = \"300 N*m\"\n";
    // Butt weld 2 mm, plain 1 mm, fillet 1 mm.
    expect_only_problem(text, "left.section[1].length", "must be at least 4 mm", "length = \"... mm\"");
    EXPECT_TRUE(messages(with(text, "\"2.9 mm\"", "\"4 mm\"")).empty());
}

}  // namespace
}  // namespace splicewright
