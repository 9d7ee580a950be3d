// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

// A case or problems that each say where, what and how to mend; nothing else may come out of any bytes.
void expect_clear_answer(const std::string& text)
{
    const Result<Case> read = read_case(text, "t.toml");
    if (read.has_value()) return;
    ASSERT_FALSE(read.problems().empty());
    for (const Problem& problem : read.problems())
    {
        const std::string message = to_string(problem);
        EXPECT_FALSE(problem.rule.empty());
        EXPECT_FALSE(problem.fix.empty()) << message;
        EXPECT_EQ((" " + problem.rule + problem.fix).find("nan "), std::string::npos) << message;
        const bool printable = std::none_of(message.begin(), message.end(),
                                            [](char letter) { return static_cast<unsigned char>(letter) < 0x20; });
        EXPECT_TRUE(printable) << message;
        EXPECT_LT(message.size(), 3000U);
    }
}

std::string first_rule(const std::string& text)
{
    const Result<Case> read = read_case(text, "t.toml");
    return read.has_value() ? "accepted" : read.problems().front().rule;
}

TEST(HostileText, NulAndBytesThatAreNotUtf8AreNamedWithTheirPlace)
{
    const std::string nul("title = \"a\"\n# \0\n", 16);
    EXPECT_EQ(messages(nul).front().rfind("t.toml:2:3: a NUL byte", 0), 0U) << messages(nul).front();
    for (const char* bytes :
         {"\xFF", "\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xC3", "\x80", "\xF0\x9F\x98"})
        EXPECT_NE(first_rule(std::string("# ") + bytes).find("not UTF-8"), std::string::npos);
    expect_clear_answer("# \xF0\x9F\x98\x80 is fine\n");
}

TEST(HostileText, EmptyAndSenselessTextsAreAnswered)
{
    for (const char* text : {"",
                             "\n",
                             " ",
                             "=",
                             "[",
                             "]",
                             "[[",
                             "\"",
                             "'''",
                             "\"\"\"",
                             "{",
                             "a",
                             "a=",
                             "a.b",
                             "[a]\n[a]",
                             "a = 1\na = 2",
                             "[left]\nleft = 1",
                             "left = 1",
                             "[[left]]",
                             "left = []",
                             "\xEF\xBB\xBF",
                             "[left.section]\nlength = 1",
                             "left.section = [1]",
                             "left.section = [[]]",
                             "\\",
                             "a = \\"})
        expect_clear_answer(text);
}

TEST(HostileText, DeepNestingIsRefusedBeforeTheParserCallsItselfToDeath)
{
    EXPECT_NE(first_rule("a = " + std::string(100000, '[')).find("nested too deeply"), std::string::npos);
    std::string dotted = "a";
    for (int depth = 0; depth < 300000; ++depth) dotted += ".a";
    EXPECT_NE(first_rule("[" + dotted + "]").find("nested too deeply"), std::string::npos);
    EXPECT_NE(first_rule(dotted + " = 1").find("nested too deeply"), std::string::npos);
    std::string inline_tables;
    for (int depth = 0; depth < 50000; ++depth) inline_tables += "a={";
    EXPECT_NE(first_rule(inline_tables).find("nested too deeply"), std::string::npos);
    // Brackets and dots within texts and comments do not count.
    const std::string harmless(500, '[');
    expect_clear_answer("title = \"" + harmless + std::string(500, '.') + "\"\n# " + harmless + "\n");
    EXPECT_EQ(first_rule("title = \"" + harmless + "\"\n").find("nested"), std::string::npos);
    EXPECT_EQ(first_rule("title = '" + harmless + "'\n").find("nested"), std::string::npos);
    EXPECT_EQ(first_rule("title = \"\"\"\n" + harmless + "\"\"\"\n").find("nested"), std::string::npos);
}

TEST(HostileText, VeryLongLinesNamesAndListsAreAnswered)
{
    const std::string large(900000, 'x');
    expect_clear_answer("# " + large);
    expect_clear_answer("title = \"" + large + "\"");
    expect_clear_answer(large + " = 1");
    expect_clear_answer("\"" + large + "\" = 1");
    expect_clear_answer(large);
    expect_clear_answer(splice_with("\"C45 +QT\"", "\"" + large + "\""));
    expect_clear_answer(splice_with("length = \"84 mm\"", "length = \"" + std::string(900000, '9') + " mm\""));
    std::string many = "a = [";
    for (int number = 0; number < 200000; ++number) many += "1,";
    expect_clear_answer(many + "]");
    EXPECT_NE(first_rule(std::string(1024 * 1024 + 1, ' ')).find("at most 1048576"), std::string::npos);
}

TEST(HostileText, ThousandsOfKeysAndTablesAreAnsweredInTime)
{
    std::string keys, sections = "[left]\nmaterial = \"C45 +N\"\n", blocks = "[load]\npeak_torque = \"9 N*m\"\n";
    for (int number = 0; number < 10000; ++number) keys += "key_" + std::to_string(number) + " = 1\n";
    for (int number = 0; number < 3000; ++number)
        sections += "[[left.section]]\nlength = \"1 mm\"\ndiameter = \"8 mm\"\n";
    for (int number = 0; number < 3000; ++number)
        blocks += "[[load.block]]\ntorque = [\"9 Nm\", \"1 Nm\"]\ncount = 0\n";
    for (const std::string& text : {keys, sections, blocks}) EXPECT_FALSE(messages(text).empty());
}

TEST(HostileText, ControlCharactersNeverReachAMessage)
{
    expect_clear_answer(splice_with("\"C45 +QT\"", "\"\\u001b[2J\\u0007\""));
    expect_clear_answer(splice_with("length = \"84 mm\"", "length = \"84 \\u001b[2J\\n mm\""));
    expect_clear_answer("\"a\\u001b[2J\\nb\" = 1\n[left.\"\\u0000\"]\n");
    expect_clear_answer("[load]\n\"peak.torque\" = 1\n\"\" = 2\n\"block[1]\" = 3\n");
}

// One byte flipped, taken out, put in, or a piece repeated, a fixed number of times from a fixed seed.
std::string mutated(std::string text, std::mt19937& random)
{
    const auto below = [&](std::size_t limit)
    { return std::uniform_int_distribution<std::size_t>(0, limit - 1)(random); };
    const std::string tokens[] = {"\"",   "'",  "[",       "]",    "[[",       "]]",    "{",  "}",  "=", ".",
                                  ",",    "\n", "#",       "-",    "nan",      "1e999", "mm", "in", "0", "+-",
                                  "true", "\\", "\\u0000", "left", "\xC3\xA9", "\xFF",  "\r", "\t"};
    const std::size_t n_changes = 1 + below(2);
    for (std::size_t change = 0; change < n_changes && !text.empty(); ++change)
    {
        const std::size_t at = below(text.size());
        switch (below(5))
        {
            case 0: text[at] = static_cast<char>(below(256)); break;
            case 1: text.erase(at, 1 + below(12)); break;
            case 2: text.insert(at, tokens[below(std::size(tokens))]); break;
            case 3: text.insert(at, text.substr(below(text.size()), 1 + below(40))); break;
            default: text.resize(at); break;
        }
    }
    return text;
}

TEST(HostileText, AThousandMutationsOfAGoodCaseAreCasesOrClearProblems)
{
    std::mt19937 random(20261125);
    int n_accepted = 0;
    for (int number = 0; number < 1000; ++number)
    {
        const std::string text = mutated(sound_splice_text(), random);
        SCOPED_TRACE(text);
        expect_clear_answer(text);
        n_accepted += read_case(text, "t.toml").has_value() ? 1 : 0;
        if (HasFailure()) return;
    }
    EXPECT_GT(n_accepted, 0);
    EXPECT_LT(n_accepted, 1000);
}

// Every value in turn made unreadable: one problem, and no rule complains about what could not be read.
TEST(HostileText, AnUnreadableValueIsToldOnceAndCausesNoOtherProblem)
{
    const std::string& text = sound_splice_text();
    std::size_t start = 0;
    int n_changed = 0;
    while (start < text.size())
    {
        const std::size_t end = text.find('\n', start), equals = text.find(" = ", start);
        const std::size_t next = end == std::string::npos ? text.size() : end + 1;
        if (equals != std::string::npos && equals < end)
        {
            const std::string bad = text.substr(0, equals) + " = true" + text.substr(end);
            const std::vector<std::string> all = messages(bad);
            EXPECT_EQ(all.size(), 1U) << text.substr(start, end - start) << "\n" << (all.size() > 1 ? all[1] : "");
            expect_clear_answer(bad);
            ++n_changed;
        }
        start = next;
    }
    EXPECT_EQ(n_changed, 31);
}

}  // namespace
}  // namespace splicewright
