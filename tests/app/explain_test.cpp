// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include "tests/app/program.h"

namespace splicewright
{
namespace
{

// A round bar of 30 mm under 50 N*m.
TEST(Explain, WorksACheckThroughAndWritesNoFolder)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", plain_bar_text("sound", "50 N*m"));
    const Ended ended = program({"explain", "a.toml", "strength/bar.left/plastic"}, {here.path(), {}, {}});
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_NE(ended.out.find("T_p = pi/12 f/sqrt(3) (D^3 - d^3)"), std::string::npos) << ended.out;
    EXPECT_NE(ended.out.find("30^3-0^3"), std::string::npos) << ended.out;
    EXPECT_NE(ended.out.find("[Mises1913]"), std::string::npos) << ended.out;
    EXPECT_EQ(folder_bytes(here.path()).size(), 1U);  // the case file alone
}

TEST(Explain, AnUnknownIdIsBadInputAndTheNearestAreNamed)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", plain_bar_text("sound", "50 N*m"));
    const Ended ended = program({"explain", "a.toml", "strength/bar.lefft"}, {here.path(), {}, {}});
    EXPECT_EQ(ended.status, 2);
    EXPECT_TRUE(ended.out.empty()) << ended.out;
    EXPECT_NE(ended.err.find("Nearest: strength/bar.left"), std::string::npos) << ended.err;
}

TEST(Explain, WithoutAnIdAllAreListed)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", plain_bar_text("sound", "50 N*m"));
    const Ended ended = program({"explain", "a.toml"}, {here.path(), {}, {}});
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_EQ(ended.out.find("strength/bar.left "), 0U) << ended.out;
    EXPECT_NE(ended.out.find("\nstrength/bar.left/plastic "), std::string::npos) << ended.out;
}

TEST(Explain, AnUnknownScenarioAndABadCaseAreBadInput)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", plain_bar_text("sound", "50 N*m"));
    write_file(here.path() / "b.toml", "title = 3\n");
    const Ended ended =
        program({"explain", "a.toml", "strength/bar.left", "--scenario", "weld lost"}, {here.path(), {}, {}});
    EXPECT_EQ(ended.status, 2);
    EXPECT_NE(ended.err.find("No scenario \"weld lost\""), std::string::npos) << ended.err;
    EXPECT_EQ(program({"explain", "b.toml", "strength/bar.left"}, {here.path(), {}, {}}).status, 2);
}

}  // namespace
}  // namespace splicewright
