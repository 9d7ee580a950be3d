// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <regex>
#include <set>
#include <sstream>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

std::vector<std::string> lines_of(const std::string& text)
{
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) lines.push_back(line);
    return lines;
}

std::string joined(const std::vector<std::string>& lines)
{
    std::string text;
    for (const std::string& line : lines) text += line + "\n";
    return text;
}

// Whether the fix can be written into the file as it stands, `key = value` or another header.
bool is_ready(const Problem& problem)
{
    static const std::regex assignment(R"(^\w+ = ("[^"]*"|[-+0-9.e]+)$)"), header(R"(^write \[\[.*\]\] in place of)");
    return problem.fix.find("...") == std::string::npos &&
           (std::regex_search(problem.fix, assignment) || std::regex_search(problem.fix, header));
}

// The line of the problem as the fix says; nothing when the fix speaks of another key.
bool apply(std::vector<std::string>& lines, const Problem& problem)
{
    std::string& line = lines.at(static_cast<std::size_t>(problem.line) - 1);
    if (problem.fix.starts_with("write "))
    {
        line = problem.fix.substr(6, problem.fix.find(' ', 6) - 6);
        return true;
    }
    const std::string key = problem.fix.substr(0, problem.fix.find(' '));
    if (!line.starts_with(key + " ")) return false;
    line = problem.fix;
    return true;
}

struct Followed
{
    bool all = true;  // every problem had a fix that could be written as it stands
    std::string text;
};

Followed followed(const std::string& text)
{
    Followed result{true, text};
    const Result<Case> read = read_case(text, "t.toml");
    if (read.has_value()) return result;
    std::vector<std::string> lines = lines_of(text);
    for (const Problem& problem : read.problems())
        result.all = is_ready(problem) && apply(lines, problem) && result.all;
    result.text = joined(lines);
    return result;
}

// The numbers of a text, 100 for "1e2"; with a decimal comma as well.
std::set<double> numbers_of(std::string text)
{
    std::replace(text.begin(), text.end(), ',', '.');
    static const std::regex number(R"([0-9]+\.?[0-9]*(e\+?[0-9]+)?)");
    std::set<double> found;
    for (std::sregex_iterator match(text.begin(), text.end(), number), end; match != end; ++match)
        found.insert(std::stod(match->str()));
    return found;
}

// Every value of the sound splice in turn made wrong in these ways.
std::vector<std::string> spoilt_texts()
{
    std::vector<std::string> texts;
    const std::vector<std::string> lines = lines_of(sound_splice_text());
    static const std::regex quantity(R"re(^(\w+) = "(-?[0-9.]+) (\S+)"$)re"), plain(R"(^(\w+) = ([0-9e.]+)$)");
    for (std::size_t at = 0; at < lines.size(); ++at)
    {
        std::vector<std::string> wrong;
        std::smatch part;
        if (std::regex_match(lines[at], part, quantity))
        {
            const std::string key = part[1], unit = part[3];
            const double value = std::stod(part[2]);
            for (const double factor : {-1.0, 0.0, 0.01, 0.1, 0.3, 0.5, 0.8, 1.2, 1.5, 2.0, 3.0, 10.0, 1000.0, 1e9})
                wrong.push_back(fmt::format("{} = \"{:g} {}\"", key, factor * value, unit));
            for (const char* form : {"{0} = {1:g}", "{0} = \"{1:g}\"", "{0} = \"nan {2}\"", "{0} = \"inf {2}\"",
                                     "{0} = nan", "{0} = \"about {1:g} {2}\"", "{0} = \"{1:g},5 {2}\"", "{0} = true"})
                wrong.push_back(fmt::format(fmt::runtime(form), key, value, unit));
        }
        else if (std::regex_match(lines[at], part, plain))
            for (const char* form : {"{} = \"{}\"", "{} = -{}", "{} = 0", "{} = nan", "{} = \"many\"", "{} = 1e30"})
                wrong.push_back(fmt::format(fmt::runtime(form), part[1].str(), part[2].str()));
        for (const std::string& line : wrong)
        {
            std::vector<std::string> spoilt = lines;
            spoilt[at] = line;
            texts.push_back(joined(spoilt));
        }
    }
    return texts;
}

TEST(Fixes, ThatCanBeWrittenAsTheyStandLeadToAnAcceptedFileAtOnce)
{
    int n_followed = 0;
    for (const std::string& text : spoilt_texts())
    {
        const Followed result = followed(text);
        if (!result.all || result.text == text) continue;
        ++n_followed;
        const std::vector<std::string> left = messages(result.text), before = messages(text);
        EXPECT_TRUE(left.empty()) << before.front() << "\n  and then: " << (left.empty() ? "" : left.front());
    }
    EXPECT_GT(n_followed, 60);
}

// Sizes of bars, proven depths, loads and strengths are the user's: a fix may repeat a number of the file, and no
// other.
TEST(Fixes, NeverMakeUpWhatWasMeasured)
{
    int n_looked_at = 0;
    for (const std::string& text : spoilt_texts())
    {
        const Result<Case> read = read_case(text, "t.toml");
        if (read.has_value()) continue;
        const std::set<double> known = numbers_of(text);
        for (const Problem& problem : read.problems())
        {
            const bool is_users = problem.field.starts_with("left") || problem.field.starts_with("right") ||
                                  problem.field.starts_with("load") || problem.field == "joint.penetration";
            if (!is_users) continue;
            ++n_looked_at;
            for (const double number : numbers_of(problem.fix))
                EXPECT_TRUE(known.contains(number)) << to_string(problem);
        }
    }
    EXPECT_GT(n_looked_at, 200);
}

TEST(Fixes, OfMissingKeysLeaveTheDatumToThePerson)
{
    for (const std::string& line : lines_of(sound_splice_text()))
    {
        if (line.find(" = ") == std::string::npos) continue;
        std::vector<std::string> kept;
        bool removed = false;
        for (const std::string& each : lines_of(sound_splice_text()))
            if (each == line && !removed) removed = true;
            else kept.push_back(each);
        const Result<Case> read = read_case(joined(kept), "t.toml");
        if (read.has_value()) continue;
        for (const Problem& problem : read.problems())
            EXPECT_TRUE(numbers_of(problem.fix).empty() || problem.fix.find("1] ") != std::string::npos)
                << to_string(problem);
    }
}

TEST(Fixes, RepeatANumberThatWasOnlyQuoted)
{
    EXPECT_EQ(problem_of(splice_with("count = 4000", "count = \"3000\""), "load.block[1].count").fix, "count = 3000");
    EXPECT_EQ(problem_of(splice_with("count = 4000", "count = \"3e5\""), "load.block[1].count").fix, "count = 300000");
}

TEST(Fixes, OfAnotherUnitNameTheOneToConvertTo)
{
    expect_only_problem(splice_with("\"6 deg\"", "\"5 kgm\""), "load.joint_angle", "\"kgm\" is none",
                        "joint_angle = \"... deg\" with your value in deg");
}

TEST(Fixes, OfAPenetrationInPercentAreTheDepthOrFull)
{
    for (const char* share : {"\"100 %\"", "\"80 percent\""})
        expect_only_problem(splice_with("\"9 mm\"", share), "joint.penetration", "must be \"full\" or a depth",
                            "penetration = \"full\" where that can be proven");
}

TEST(Fixes, OfAThinSleeveLeaveRoomForItsWeld)
{
    for (const char* thin : {"wall = \"2 mm\"", "outer_diameter = \"31 mm\"", "wall = \"0.05 in\""})
    {
        const std::string text = splice_with("outer_diameter = \"42 mm\"", thin);
        const Followed result = followed(text);
        EXPECT_TRUE(result.all) << messages(text).front();
        EXPECT_TRUE(messages(result.text).empty()) << messages(result.text).front();
    }
}

TEST(Fixes, OfAnUnknownSteelProposeNoStrength)
{
    const Problem problem = problem_of(splice_with("\"C45 +QT\"", "\"Unobtainium\""), "left.material");
    EXPECT_TRUE(numbers_of(problem.fix).empty()) << problem.fix;
    EXPECT_NE(problem.fix.find("yield = \"... MPa\""), std::string::npos) << problem.fix;
}

TEST(Fixes, OfASingleBracketIsTheSecondOne)
{
    const std::string text = splice_with("[[right.section]]", "[right.section]");
    expect_only_problem(text, "right.section", "is one table", "write [[right.section]] in place of [right.section]");
    EXPECT_TRUE(messages(followed(text).text).empty());
}

TEST(Fixes, TellABoreThatCannotBeOnce)
{
    expect_only_problem(splice_with("material = \"C45 +QT\"", "material = \"C45 +QT\"\nbore = \"24.8 mm\""),
                        "left.bore", "must be at most 18 mm", "bore = \"... mm\"");
}

TEST(Minus, IsTakenInEveryWayThatEditorsWriteIt)
{
    for (const char* minus : {"-", "\u2212", "\u2010", "\u2011", "\u2012", "\u2013"})
        EXPECT_EQ(accepted(splice_with("\"800 N\"", fmt::format("\"{}500 N\"", minus))).load.axial.value(), -500)
            << minus;
}

}  // namespace
}  // namespace splicewright
