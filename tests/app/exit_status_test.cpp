// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/app/program.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

// A round bar of 30 mm: 16 T / (pi d^3) is 9.4 MPa at 50 N*m and 943 MPa at 5 kN*m, and no shear yield of C45 reaches
// 300.
const std::string passing = plain_bar_text("sound", "50 N*m"), failing = plain_bar_text("overloaded", "5 kN*m");

bool has_escape_codes(const std::string& text) { return text.find('\x1B') != std::string::npos; }

TEST(ExitStatus, IsZeroWhenItPasses)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", passing);
    const Ended ended = program({"check", "a.toml"}, {here.path(), {}, {}});
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_TRUE(fs::exists(here.path() / "a-result" / "result.json"));
}

TEST(ExitStatus, IsOneWhenItDoesNotPass)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", failing);
    EXPECT_EQ(program({"check", "a.toml"}, {here.path(), {}, {}}).status, 1);
    EXPECT_TRUE(fs::exists(here.path() / "a-result" / "result.json"));
}

TEST(ExitStatus, IsTwoForBadInputAndNothingIsWritten)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", "title = \"a\"\n[left]\nmateriel = 3\n");
    const Ended ended = program({"check", "a.toml"}, {here.path(), {}, {}});
    EXPECT_EQ(ended.status, 2);
    EXPECT_TRUE(ended.out.empty()) << ended.out;
    EXPECT_NE(ended.err.find("a.toml:3:"), std::string::npos) << ended.err;
    EXPECT_NE(ended.err.find("Fix: "), std::string::npos) << ended.err;
    EXPECT_FALSE(fs::exists(here.path() / "a-result"));
}

TEST(ExitStatus, IsTwoForAFileThatIsNotThere)
{
    const TemporaryFolder here;
    const Ended ended = program({"check", "nowhere.toml"}, {here.path(), {}, {}});
    EXPECT_EQ(ended.status, 2);
    EXPECT_NE(ended.err.find("nowhere.toml"), std::string::npos) << ended.err;
}

TEST(ExitStatus, IsTwoForAnUnknownWordOnTheCommandLine)
{
    EXPECT_EQ(program({"chekc", "a.toml"}).status, 2);
    EXPECT_EQ(program({"check"}).status, 2);
    EXPECT_EQ(program({}).status, 2);
    EXPECT_EQ(program({"check", "a.toml", "--accuracy", "0"}).status, 2);
    EXPECT_EQ(program({"soak", "--cases", "-1"}).status, 2);
}

TEST(ExitStatus, IsThreeWhenTheResultCannotBeWritten)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", passing);
    const Ended ended = program({"check", "a.toml", "--out", "/proc/splicewright-result"}, {here.path(), {}, {}});
    EXPECT_EQ(ended.status, 3);
    EXPECT_NE(ended.err.find("/proc/splicewright-result"), std::string::npos) << ended.err;
    EXPECT_NE(ended.err.find("--out"), std::string::npos) << ended.err;
    EXPECT_EQ(ended.err.find("Meshing"), std::string::npos) << "told before an hour is spent: " << ended.err;
}

// Arguments, and what must be told of them.
TEST(CommandLine, ASlipIsNamedWithWhatWasMeant)
{
    const std::pair<std::vector<std::string>, std::string> slips[] = {
        {{"chek", "a.toml"}, "\"chek\" is no command; did you mean check?"},
        {{"a.toml"}, "splicewright check a.toml"},
        {{"check", "a.toml", "--model", "meridain"}, "none of meridian, solid, both; did you mean meridian?"},
        {{"check", "a.toml", "--accuracy", "0,5"}, "\"0,5\" has a comma; write a decimal point: 0.5"},
        {{"check", "a.toml", "--accuracy", "50"}, "\"50\" is no number from 0.05 to 20"},
        {{"compare", "a.toml", "--reserve", "1,2"}, "write a decimal point: 1.2"},
    };
    for (const auto& [arguments, told] : slips)
    {
        const Ended ended = program(arguments);
        EXPECT_EQ(ended.status, 2) << told;
        EXPECT_NE(ended.err.find(told), std::string::npos) << ended.err;
    }
}

TEST(ExitStatus, IsZeroForHelpAndVersion)
{
    EXPECT_EQ(program({"--help"}).status, 0);
    const Ended ended = program({"--version"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_FALSE(ended.out.empty());
}

TEST(Output, TheVerdictIsOnStandardOutputAndProgressIsNot)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", passing);
    const Ended ended = program({"check", "a.toml"}, {here.path(), {}, {}});
    EXPECT_EQ(ended.out, file_bytes(here.path() / "a-result" / "verdict.txt"));
    EXPECT_NE(ended.err.find("Meshing"), std::string::npos) << ended.err;
    EXPECT_EQ(ended.out.find("Meshing"), std::string::npos);
}

TEST(Output, APipeGetsNoEscapeCodes)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", passing);
    const Ended ended = program({"check", "a.toml"}, {here.path(), {{"TERM", "xterm-256color"}}, {}});
    EXPECT_FALSE(has_escape_codes(ended.out));
    EXPECT_FALSE(has_escape_codes(ended.err));
}

TEST(Output, ATerminalGetsEmphasisUnlessNoColorIsSet)
{
    if (const std::string why = why_no_terminal(); !why.empty()) GTEST_SKIP() << why;
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", failing);
    EXPECT_TRUE(has_escape_codes(shown_on_terminal({"check", "a.toml"}, {here.path(), {{"NO_COLOR", ""}}, {}})));
    const std::string plain = shown_on_terminal({"check", "a.toml"}, {here.path(), {{"NO_COLOR", "1"}}, {}});
    EXPECT_FALSE(has_escape_codes(plain));
    EXPECT_NE(plain.find("overloaded"), std::string::npos) << plain;
}

TEST(Output, TheShopSheetFollowsTheVerdictWhenAskedFor)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", passing);
    const Ended ended = program({"check", "a.toml", "--shop"}, {here.path(), {}, {}});
    EXPECT_EQ(ended.status, 0);
    EXPECT_EQ(ended.out.find(file_bytes(here.path() / "a-result" / "verdict.txt")), 0U);
    EXPECT_NE(ended.out.find("No shop sheet: a plain shaft is not welded"), std::string::npos) << ended.out;
    EXPECT_EQ(program({"check", "a.toml"}, {here.path(), {}, {}}).out.find("shop sheet"), std::string::npos);
}

TEST(Output, JsonIsThatOfTheResultFolder)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", passing);
    const Ended ended = program({"check", "a.toml", "--json"}, {here.path(), {}, {}});
    EXPECT_EQ(ended.status, 0);
    EXPECT_TRUE(nlohmann::json::accept(ended.out));
    EXPECT_EQ(ended.out, file_bytes(here.path() / "a-result" / "result.json"));
}

}  // namespace
}  // namespace splicewright
