// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <numbers>

#include "cases/beyond_revolution.h"
#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

constexpr double degree = std::numbers::pi / 180;

std::string welded_over(const std::string& keys)
{
    return splice_with("toe_radius = \"1.5 mm\"\n", "toe_radius = \"1.5 mm\"\n" + keys + "\n");
}

std::string plugged(const std::string& keys) { return sound_splice_text() + "[[sleeve.plug]]\n" + keys; }

std::string joined(const std::string& keys)
{
    return splice_with("blend = \"3 mm\"\n", "blend = \"3 mm\"\n" + keys + "\n");
}

const std::string four_plugs = "count = 4\ndiameter = \"10 mm\"\nat = \"-20 mm\"\n";

TEST(PartialWelds, CoverageAndStartAnglesAreRead)
{
    const Case asked = accepted(welded_over("coverage = \"270 deg\"\nstart_left = \"30 deg\""));
    EXPECT_NEAR(asked.sleeve->weld.coverage.value(), 270 * degree, 1e-12);
    EXPECT_NEAR(asked.sleeve->weld.start[0].value(), 30 * degree, 1e-12);
    EXPECT_EQ(asked.sleeve->weld.start[1].value(), 0);
    EXPECT_FALSE(asked.sleeve->weld.goes_all_round());
    EXPECT_EQ(default_of(asked, "sleeve.weld.start_right"), "0 deg (the weld starts at the cut plane of the lap)");
    EXPECT_TRUE(accepted(welded_over("coverage = \"360°\"")).sleeve->weld.goes_all_round());
}

TEST(PartialWelds, CoverageIsThirtyTo340DegreesOrAllRound)
{
    expect_only_problem(welded_over("coverage = \"20 deg\""), "sleeve.weld.coverage", "30 deg to 340 deg",
                        "coverage = \"30 deg\"");
    expect_only_problem(welded_over("coverage = \"350 deg\""), "sleeve.weld.coverage",
                        "or 360 deg for a weld all round", "coverage = \"340 deg\"");
    expect_only_problem(welded_over("coverage = \"270 deg\"\nstart_left = \"400 deg\""), "sleeve.weld.start_left",
                        "0 deg to 360 deg", "start_left = \"360 deg\"");
    expect_only_problem(welded_over("start_right = \"40 deg\""), "sleeve.weld.start_right",
                        "goes with a coverage below 360 deg", "remove start_right");
}

TEST(PlugWelds, AreRead)
{
    const Case asked = accepted(plugged(four_plugs + "depth = \"5 mm\"\nstart = \"45 deg\"\n"));
    ASSERT_EQ(asked.sleeve->plugs.size(), 1U);
    const PlugRing& ring = asked.sleeve->plugs[0];
    EXPECT_EQ(ring.count, 4);
    EXPECT_EQ(ring.diameter, Millimetre(10));
    EXPECT_EQ(ring.at, Millimetre(-20));
    EXPECT_EQ(ring.depth, Millimetre(5));
    EXPECT_NEAR(ring.start.value(), 45 * degree, 1e-12);
    EXPECT_FALSE(accepted(plugged(four_plugs)).sleeve->plugs[0].depth.has_value());
}

TEST(PlugWelds, LeaveMetalAroundTheHoles)
{
    expect_only_problem(plugged("count = 8\ndiameter = \"10 mm\"\nat = \"-20 mm\"\n"), "sleeve.plug[1].count",
                        "must leave 3 mm between the holes", "count = 6");
    expect_only_problem(plugged("count = 2.5\ndiameter = \"10 mm\"\nat = \"-20 mm\"\n"), "sleeve.plug[1].count",
                        "whole number from 1 to 12", "count = ...");
    expect_only_problem(plugged("diameter = \"10 mm\"\nat = \"-20 mm\"\n"), "sleeve.plug[1].count", "is missing",
                        "count = ...");
    expect_only_problem(plugged("count = 2\ndiameter = \"15 mm\"\nat = \"20 mm\"\n"), "sleeve.plug[1].diameter",
                        "at most 13.5 mm", "diameter = \"13.5 mm\"");
    expect_only_problem(plugged("count = 2\ndiameter = \"8 mm\"\nat = \"10 mm\"\n"), "sleeve.plug[1].at",
                        "must lie 14 mm to 35 mm from the joint", "at = \"24.5 mm\"");
    expect_only_problem(plugged(four_plugs + "depth = \"7 mm\"\n"), "sleeve.plug[1].depth", "at most 6.7 mm",
                        "depth = \"6.7 mm\"");
    expect_only_problem(plugged(four_plugs) + "[[sleeve.plug]]\n" + "count = 1\ndiameter = \"6 mm\"\nat = \"-28 mm\"\n",
                        "sleeve.plug[2].at", "must lie 11 mm off plug ring 1", "move one of the rings");
    expect_only_problem(plugged(four_plugs + "start = \"-5 deg\"\n"), "sleeve.plug[1].start", "0 deg to 360 deg",
                        "start = \"0 deg\"");
}

TEST(HalfLap, CornerRadiusHasRoom)
{
    EXPECT_EQ(accepted(joined("lap_corner_radius = \"0.5 mm\"")).joint->lap_corner_radius, Millimetre(0.5));
    const Case asked = accepted(sound_splice_text());
    EXPECT_EQ(asked.joint->lap_corner_radius, Millimetre(1));
    EXPECT_NE(default_of(asked, "joint.lap_corner_radius").find("1 mm"), std::string::npos);
    expect_only_problem(joined("lap_corner_radius = \"2 mm\""), "joint.lap_corner_radius",
                        "a third of the land's radius", "lap_corner_radius = \"1.58 mm\"");
    expect_only_problem(with(joined("lap_corner_radius = \"1 mm\""), "half_lap = \"14 mm\"\n", ""),
                        "joint.lap_corner_radius", "goes with a half lap", "remove lap_corner_radius");
    expect_only_problem(joined("offset_angle = \"361 deg\""), "joint.offset_angle", "0 deg to 360 deg",
                        "offset_angle = \"360 deg\"");
}

TEST(HalfLap, BarOutOfLineLeavesHalfOfTheSleevesWall)
{
    // 42 mm at 1 deg are 0.733 mm, and 2 mm of offset; the sleeve stands 7.5 mm and then 4.5 mm over the 27 mm bar.
    EXPECT_TRUE(messages(joined("offset = \"2 mm\"\ntilt = \"1 deg\"")).empty());
    const std::string thin = with(with(joined("offset = \"2 mm\"\ntilt = \"1 deg\""), "\"42 mm\"", "\"36 mm\""),
                                  "leg = \"6 mm\"", "leg = \"4 mm\"");
    expect_only_problem(thin, "joint.tilt", "2.73304 mm out of line where the sleeve ends, and at most 2.25 mm",
                        "straighten the shaft");
}

TEST(BeyondRevolution, NamesWhatTheMeridianModelCannotShow)
{
    const auto found = beyond_revolution(accepted(plugged(four_plugs)));
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].what, "a half lap of 14 mm with unfused faces");
    EXPECT_TRUE(found[0].has_stand_in);
    EXPECT_EQ(found[1].what, "4 plug welds");
    EXPECT_FALSE(found[1].has_stand_in);
    EXPECT_EQ(beyond_revolution(accepted(welded_over("coverage = \"200 deg\"")))[1].what,
              "sleeve welds over 200 deg of the circumference");
    EXPECT_EQ(beyond_revolution(accepted(joined("offset = \"0.2 mm\"\ntilt = \"0.1 deg\""))).size(), 3U);
    EXPECT_TRUE(beyond_revolution(accepted(splice_with("half_lap = \"14 mm\"\n", ""))).empty());
}

}  // namespace
}  // namespace splicewright
