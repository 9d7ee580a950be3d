// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/read_case.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <fstream>

#include "cases/known_keys.h"
#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

TEST(ReadCase, FillsEveryFieldFromTheFile)
{
    const Case asked = accepted(sound_splice_text());
    EXPECT_EQ(asked.title, "test splice");
    EXPECT_EQ(asked.file, "t.toml");
    EXPECT_EQ(asked.text, sound_splice_text());
    ASSERT_TRUE(asked.bar[0] && asked.bar[1] && asked.joint && asked.sleeve);
    ASSERT_EQ(asked.bar[0]->sections.size(), 2U);
    EXPECT_EQ(asked.bar[0]->sections[1].length, Millimetre(60));
    EXPECT_EQ(asked.bar[0]->sections[1].diameter, Millimetre(24));
    EXPECT_EQ(asked.bar[0]->sections[1].fillet, Millimetre(2));
    EXPECT_EQ(asked.bar[1]->material.name, "C45 +N");
    ASSERT_EQ(asked.bar[1]->grooves.size(), 1U);
    EXPECT_EQ(asked.bar[1]->grooves[0].at, Millimetre(120));
    EXPECT_EQ(asked.bar[1]->grooves[0].depth, Millimetre(1.5));
    EXPECT_EQ(asked.bar[1]->grooves[0].radius, Millimetre(1));
    EXPECT_EQ(*asked.joint->penetration, Millimetre(9));
    EXPECT_EQ(asked.joint->half_lap, Millimetre(14));
    EXPECT_EQ(asked.joint->blend, Millimetre(3));
    EXPECT_EQ(asked.sleeve->length, Millimetre(84));
    EXPECT_EQ(asked.sleeve->outer_diameter, Millimetre(42));
    EXPECT_EQ(asked.sleeve->end_diameter, Millimetre(42));
    EXPECT_EQ(asked.sleeve->clearance[0], Millimetre(0.02));
    EXPECT_EQ(asked.sleeve->clearance[1], Millimetre(0.02));
    EXPECT_EQ(asked.sleeve->slit[0], SlitState::open);
    EXPECT_EQ(asked.sleeve->weld.leg_on_bar, Millimetre(6));
    EXPECT_EQ(asked.sleeve->weld.leg_on_sleeve, Millimetre(6));
    EXPECT_EQ(asked.sleeve->weld.toe_radius, Millimetre(1.5));
    EXPECT_TRUE(asked.sleeve->weld.toe_radius_stated);
    EXPECT_EQ(asked.load.axial, Newton(800));
    EXPECT_DOUBLE_EQ(asked.load.revolutions, 2e7);
    ASSERT_EQ(asked.load.blocks.size(), 1U);
    EXPECT_EQ(asked.load.blocks[0].name, "start");
    EXPECT_EQ(asked.load.blocks[0].low, NewtonMillimetre(-50e3));
    EXPECT_EQ(asked.load.blocks[0].high, NewtonMillimetre(1000e3));
    EXPECT_DOUBLE_EQ(asked.load.blocks[0].count, 4000);
}

TEST(ReadCase, NamesFileLineColumnFieldValueRuleAndFix)
{
    EXPECT_EQ(
        messages(splice_with("leg = \"6 mm\"", "leg = \"8 mm\"")).front(),
        "t.toml:30:7: sleeve.weld.leg: is \"8 mm\", must be at most 7 mm, the height of the sleeve's end above the "
        "left bar. Fix: leg = \"7 mm\"");
    EXPECT_EQ(messages(splice_with("axial = \"800 N\"", "axial = 800")).front(),
              "t.toml:36:9: load.axial: is 800, must be a force in quotes with its unit (N, kN, lbf). "
              "Fix: axial = \"800 N\"");
}

TEST(ReadCase, TellsAllProblemsOfAFileInTheOrderOfTheFile)
{
    std::string text = splice_with("length = \"84 mm\"", "lenght = \"84 mm\"");
    text = with(text, "diameter = \"28 mm\"", "diameter = 28");
    text = with(text, "count = 4000", "count = \"many\"");
    text = with(text, "[joint]", "[jont]");
    const Result<Case> read = read_case(text, "t.toml");
    ASSERT_FALSE(read.has_value());
    ASSERT_GE(read.problems().size(), 5U);
    int line = 0;
    for (const Problem& problem : read.problems())
    {
        EXPECT_GE(problem.line, line) << to_string(problem);
        EXPECT_FALSE(problem.fix.empty()) << to_string(problem);
        line = problem.line;
    }
    EXPECT_EQ(problem_of(text, "jont").fix, "did you mean joint?");
    EXPECT_EQ(problem_of(text, "sleeve.lenght").fix, "did you mean sleeve.length?");
}

// 2026-11-25: "lenght" was reported twice, as unknown and as a missing "length" with a number made up.
TEST(ReadCase, TellsAMisspeltKeyOnce)
{
    const Result<Case> read = read_case(splice_with("length = \"84 mm\"", "lenght = \"84 mm\""), "t.toml");
    ASSERT_FALSE(read.has_value());
    ASSERT_EQ(read.problems().size(), 1U);
    EXPECT_EQ(read.problems()[0].fix, "did you mean sleeve.length?");
}

TEST(ReadCase, SuggestsTheTableWhereAKeyBelongs)
{
    expect_only_problem(splice_with("[sleeve.weld]", "passes = 2\n[sleeve.weld]"), "sleeve.passes", "unknown key",
                        "sleeve.weld.passes");
}

TEST(ReadCase, SaysThatASyntaxErrorHidesTheRest)
{
    const std::string text = splice_with("length = \"205 mm\"", "length = 205 mm");
    ASSERT_EQ(messages(text).size(), 1U);
    const std::string message = messages(text).front();
    EXPECT_EQ(message.rfind("t.toml:14:", 0), 0U) << message;
    EXPECT_NE(message.find("not read beyond this place"), std::string::npos) << message;
    EXPECT_NE(message.find("Fix: length = \"205 mm\""), std::string::npos) << message;
}

TEST(ReadCase, RefusesAWrongTomlTypeForEveryKey)
{
    for (const std::string& key : known_keys())
    {
        const std::string table = key.find('.') == std::string::npos ? "" : key.substr(0, key.rfind('.'));
        if (!table.empty()) continue;
        EXPECT_FALSE(messages(key + " = 2020-02-02\n").empty()) << key;
    }
    expect_only_problem(splice_with("title = \"test splice\"", "title = 7"), "title", "must be a text in quotes",
                        "title");
    expect_only_problem(splice_with("fillet = \"2 mm\"", "fillet = [\"2 mm\"]"), "left.section[2].fillet", "not a list",
                        "fillet = \"... mm\"");
    expect_only_problem(splice_with("fillet = \"2 mm\"", "fillet = {}"), "left.section[2].fillet", "not a table",
                        "fillet");
    expect_only_problem(splice_with("fillet = \"2 mm\"", "fillet = false"), "left.section[2].fillet",
                        "not true or false", "fillet");
    expect_only_problem(splice_with("revolutions = 2e7", "revolutions = \"2e7\""), "load.revolutions",
                        "must be a plain number without quotes", "revolutions = 20000000");
    expect_only_problem(splice_with("[[right.groove]]", "[right.groove]"), "right.groove", "must be a list of tables",
                        "[[right.groove]]");
    expect_only_problem(splice_with("torque = [\"-50 N*m\", \"1000 N*m\"]", "torque = \"1000 N*m\""),
                        "load.block[1].torque", "must be a list of two values", "torque = [");
    expect_only_problem(splice_with("torque = [\"-50 N*m\", \"1000 N*m\"]", "torque = [\"-50 N*m\", 1000]"),
                        "load.block[1].torque[2]", "must be a moment in quotes", "\"1000 N*m\"");
}

TEST(ReadCase, AsksForThePartsThatBelongTogether)
{
    const std::string bar =
        "[left]\nmaterial = \"C45 +N\"\n[[left.section]]\nlength = \"200 mm\"\ndiameter = \"28 mm\"\n";
    const std::string load = "[load]\npeak_torque = \"500 N*m\"\n";
    EXPECT_TRUE(messages(bar + load).empty());
    expect_only_problem(load, "left", "a case needs a bar", "add [left]");
    expect_only_problem(bar, "load", "is missing", "[load]");
    expect_only_problem(bar + load + "[joint]\npenetration = \"full\"\n", "joint", "[right] is missing",
                        "remove [joint]");
    expect_only_problem(bar + load +
                            "[sleeve]\nmaterial = \"E355 tube\"\nlength = \"84 mm\"\nwall = \"7 mm\"\n"
                            "clearance = \"0 mm\"\n[sleeve.weld]\nleg = \"6 mm\"\n",
                        "sleeve", "needs a joint", "remove [sleeve]");
    const std::string right = with(with(bar, "[left]", "[right]"), "left.section", "right.section");
    expect_only_problem(bar + right + load, "joint", "two bars need one", "add [joint]");
    EXPECT_TRUE(messages(bar + right + load + "[joint]\npenetration = \"full\"\n").empty());
}

TEST(ReadCase, AsksForEveryValueThatHasNoDefault)
{
    const std::pair<const char*, const char*> lines[] = {
        {"material = \"C45 +QT\"\n", "left.material"},
        {"length = \"190 mm\"\n", "left.section[1].length"},
        {"diameter = \"24 mm\"\n", "left.section[2].diameter"},
        {"fillet = \"2 mm\"\n", "left.section[2].fillet"},
        {"at = \"120 mm\"\n", "right.groove[1].at"},
        {"depth = \"1.5 mm\"\n", "right.groove[1].depth"},
        {"\nradius = \"1 mm\"", "right.groove[1].radius"},
        {"penetration = \"9 mm\"\n", "joint.penetration"},
        {"material = \"E355 tube +N\"\n", "sleeve.material"},
        {"length = \"84 mm\"\n", "sleeve.length"},
        {"outer_diameter = \"42 mm\"\n", "sleeve.outer_diameter"},
        {"clearance = \"0.02 mm\"\n", "sleeve.clearance"},
        {"leg = \"6 mm\"\n", "sleeve.weld.leg"},
        {"name = \"start\"\n", "load.block[1].name"},
        {"torque = [\"-50 N*m\", \"1000 N*m\"]\n", "load.block[1].torque"},
        {"count = 4000\n", "load.block[1].count"},
    };
    for (const auto& [line, field] : lines)
    {
        SCOPED_TRACE(line);
        expect_only_problem(splice_with(line, "\n"), field, "is missing", "");
    }
    EXPECT_EQ(problem_of(splice_with("length = \"84 mm\"\n", ""), "sleeve.length").line, 24);
}

TEST(ReadCase, RecordsTolerancesInHouseUnits)
{
    const Case asked = accepted(splice_with("penetration = \"9 mm\"", "penetration = \"9 mm +- 0.1 cm\""));
    ASSERT_EQ(asked.tolerances.size(), 1U);
    EXPECT_EQ(asked.tolerances[0].field, "joint.penetration");
    EXPECT_DOUBLE_EQ(asked.tolerances[0].nominal, 9.0);
    EXPECT_DOUBLE_EQ(asked.tolerances[0].plus_minus, 1.0);
}

TEST(ReadCase, RefusesTextsWithControlCharacters)
{
    expect_only_problem(splice_with("title = \"test splice\"", "title = \"a\\u001b[31mb\""), "title",
                        "without control characters", "title");
    expect_only_problem(splice_with("title = \"test splice\"", "title = \" \""), "title", "must not be empty", "title");
    EXPECT_EQ(messages(splice_with("title = \"test splice\"", "title = \"a\\u001b[31mb\"")).front().find('\x1b'),
              std::string::npos);
}

class Scratch
{
public:
    Scratch() : path_(std::filesystem::temp_directory_path() / ("splicewright_test_" + std::to_string(::getpid())))
    {
        std::filesystem::create_directories(path_);
    }
    ~Scratch() { std::filesystem::remove_all(path_); }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    [[nodiscard]] std::filesystem::path file(const std::string& name, const std::string& bytes) const
    {
        std::ofstream(path_ / name, std::ios::binary) << bytes;
        return path_ / name;
    }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

std::string rule_of_file(const std::filesystem::path& path)
{
    const Result<Case> read = read_case_file(path);
    return read.has_value() ? "accepted" : read.problems().front().rule;
}

TEST(ReadCaseFile, ReadsTheBytesOfTheFile)
{
    const Scratch scratch;
    const Result<Case> read = read_case_file(scratch.file("case.toml", sound_splice_text()));
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(read.value().text, sound_splice_text());
    EXPECT_EQ(read.value().file, (scratch.path() / "case.toml").string());
}

TEST(ReadCaseFile, AcceptsAByteOrderMarkAndWindowsLineEnds)
{
    const Scratch scratch;
    std::string text = "\xEF\xBB\xBF";
    for (const char letter : sound_splice_text()) text += letter == '\n' ? std::string("\r\n") : std::string(1, letter);
    EXPECT_EQ(rule_of_file(scratch.file("case.toml", text)), "accepted");
}

TEST(ReadCaseFile, SaysWhyAFileCannotBeRead)
{
    const Scratch scratch;
    EXPECT_EQ(rule_of_file(scratch.path() / "none.toml"), "there is no such file");
    EXPECT_EQ(rule_of_file(scratch.path()), "is a directory, not a case file");
    EXPECT_EQ(rule_of_file("/dev/null"), "is not a regular file");
    EXPECT_NE(rule_of_file(scratch.file("large.toml", std::string(1024 * 1024 + 1, '#'))).find("at most 1048576"),
              std::string::npos);
    EXPECT_EQ(rule_of_file(scratch.file("latin.toml", "title = \"\xE9\"\n")), "byte 0xE9 is not UTF-8 text");
}

}  // namespace
}  // namespace splicewright
