// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

const double degree = std::acos(-1.0) / 180;

TEST(Bending, FollowsFromTheJointAngleByTheTangentOfItsHalf)
{
    const Load load = accepted(sound_splice_text()).load;
    // 1000 N*m and 200 N*m at 6 deg; products of doubles: round-off.
    EXPECT_NEAR(load.peak_bending.value(), 1000e3 * std::tan(3 * degree), 1e-9 * 1000e3);
    EXPECT_NEAR(load.running_bending.value(), 200e3 * std::tan(3 * degree), 1e-9 * 200e3);
    EXPECT_NEAR(load.joint_angle.value(), 6 * degree, 1e-15);
}

TEST(Bending, StatedIsTheCoupleAtPeakTorqueAndScalesWithTheRunningTorque)
{
    const std::string text = splice_with("joint_angle = \"6 deg\"", "bending = \"90 N*m\"");
    const Load load = accepted(text).load;
    EXPECT_EQ(load.peak_bending, NewtonMillimetre(90e3));
    EXPECT_EQ(load.running_bending, NewtonMillimetre(18e3));
    EXPECT_EQ(load.joint_angle, Radian(0));
}

TEST(Bending, WithoutTorqueIsTheRunningBendingItself)
{
    std::string text = splice_with("joint_angle = \"6 deg\"", "bending = \"90 N*m\"");
    text = with(text, "peak_torque = \"1000 N*m\"\nrunning_torque = \"200 N*m\"\n", "");
    text = text.substr(0, text.find("[[load.block]]"));
    EXPECT_EQ(accepted(text).load.running_bending, NewtonMillimetre(90e3));
    EXPECT_EQ(accepted(text).load.peak_torque, NewtonMillimetre(0));
}

TEST(Bending, IsGivenInOneWayOnly)
{
    expect_only_problem(splice_with("axial", "bending = \"90 N*m\"\naxial"), "load.bending",
                        "must not stand beside joint_angle", "keep either");
}

TEST(Bending, MustNotBeNegative)
{
    expect_only_problem(splice_with("joint_angle = \"6 deg\"", "bending = \"-90 N*m\""), "load.bending", "from 0 to",
                        "bending = \"... N*m\"");
}

TEST(JointAngle, IsFromZeroToFiftyDegrees)
{
    for (const char* angle : {"50.1 deg", "-1 deg", "180 deg"})
        expect_only_problem(splice_with("joint_angle = \"6 deg\"", std::string("joint_angle = \"") + angle + "\""),
                            "load.joint_angle", "from 0 to 50 deg", "joint_angle");
    EXPECT_TRUE(messages(splice_with("joint_angle = \"6 deg\"", "joint_angle = \"50 deg\"")).empty());
}

TEST(JointAngle, NeedsAPeakTorque)
{
    std::string text = with(sound_splice_text(), "peak_torque = \"1000 N*m\"\nrunning_torque = \"200 N*m\"\n", "");
    text = text.substr(0, text.find("[[load.block]]"));
    expect_only_problem(text, "load.joint_angle", "needs a peak torque", "bending");
}

TEST(Torque, IsNotNegativeAndNotAbsurd)
{
    const std::string text = with(sound_splice_text(), "running_torque = \"200 N*m\"\n", "");
    const std::string no_blocks = text.substr(0, text.find("[[load.block]]"));
    expect_only_problem(with(no_blocks, "\"1000 N*m\"", "\"1e7 N*m\""), "load.peak_torque", "from 0 to 1e+06 N*m",
                        "peak_torque");
    EXPECT_EQ(problem_of(with(no_blocks, "\"1000 N*m\"", "\"-1000 N*m\""), "load.peak_torque").fix,
              "peak_torque = \"1000 N*m\": its direction makes no difference");
    expect_only_problem(splice_with("running_torque = \"200 N*m\"", "running_torque = \"1200 N*m\""),
                        "load.running_torque", "to the peak torque of 1000 N*m", "running_torque = \"... N*m\"");
}

TEST(Loads, MustNotAllBeZero)
{
    const std::string text = sound_splice_text().substr(0, sound_splice_text().find("[load]"));
    expect_only_problem(text + "[load]\n", "load", "no torque, no bending and no axial force", "peak_torque");
    EXPECT_TRUE(messages(text + "[load]\naxial = \"-3 kN\"\n").empty());
}

TEST(Blocks, GoFromLowToHighWithinThePeakTorque)
{
    const std::string line = "torque = [\"-50 N*m\", \"1000 N*m\"]";
    expect_only_problem(splice_with(line, "torque = [\"900 N*m\", \"100 N*m\"]"), "load.block[1].torque",
                        "from the lower to the higher", "torque = [\"100 N*m\", \"900 N*m\"]");
    expect_only_problem(splice_with(line, "torque = [\"100 N*m\", \"100 N*m\"]"), "load.block[1].torque",
                        "from the lower to the higher", "two different");
    expect_only_problem(splice_with(line, "torque = [\"-1100 N*m\", \"100 N*m\"]"), "load.block[1].torque",
                        "within the peak torque of 1000 N*m", "peak_torque = \"1100 N*m\"");
    EXPECT_TRUE(messages(splice_with(line, "torque = [\"-1000 N*m\", \"1000 N*m\"]")).empty());
}

TEST(Blocks, CountFromOneToATrillion)
{
    for (const char* count : {"0", "-4", "0.5", "2e12"})
        expect_only_problem(splice_with("count = 4000", std::string("count = ") + count), "load.block[1].count",
                            "from 1 to 1e12", "count = ...");
    expect_only_problem(splice_with("count = 4000", "count = inf"), "load.block[1].count", "finite", "count");
    EXPECT_TRUE(messages(splice_with("count = 4000", "count = 1e12")).empty());
}

TEST(Blocks, NeedAPeakTorque)
{
    std::string text = with(sound_splice_text(), "peak_torque = \"1000 N*m\"\nrunning_torque = \"200 N*m\"\n", "");
    text = with(text, "joint_angle = \"6 deg\"\n", "");
    expect_only_problem(text, "load.block", "needs a peak torque", "peak_torque");
}

TEST(Blocks, AreNotMoreThanAThousand)
{
    std::string text = sound_splice_text();
    for (int number = 0; number < 1000; ++number)
        text += "[[load.block]]\nname = \"b\"\ntorque = [\"0 Nm\", \"9 Nm\"]\ncount = 1\n";
    expect_only_problem(text, "load.block", "at most 1000 entries, not 1001", "larger count");
}

TEST(Loads, StayWithinTheirBounds)
{
    expect_only_problem(splice_with("axial = \"800 N\"", "axial = \"-2e7 N\""), "load.axial", "10000 kN", "axial");
    expect_only_problem(splice_with("speed = \"1200 rpm\"", "speed = \"60000 rpm\""), "load.speed", "50000 rpm",
                        "speed");
    expect_only_problem(splice_with("speed = \"1200 rpm\"", "speed = \"-1 rpm\""), "load.speed", "50000 rpm", "speed");
    expect_only_problem(splice_with("revolutions = 2e7", "revolutions = 0"), "load.revolutions", "1e13", "revolutions");
    expect_only_problem(splice_with("revolutions = 2e7", "revolutions = nan"), "load.revolutions", "finite",
                        "revolutions");
}

}  // namespace
}  // namespace splicewright
