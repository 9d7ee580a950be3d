// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

Problem told(const std::string& line, const std::string& replacement)
{
    const Result<Case> read = read_case(splice_with(line, replacement), "t.toml");
    if (read.has_value()) return {};
    EXPECT_EQ(read.problems().size(), 1U);
    return read.problems().front();
}

void expect_told(const std::string& line, const std::string& replacement, const std::string& cause,
                 const std::string& fix)
{
    const Problem problem = told(line, replacement);
    EXPECT_EQ(problem.rule, "is not TOML: " + cause + " (the file was not read beyond this place)") << replacement;
    EXPECT_EQ(problem.fix, fix) << replacement;
    EXPECT_GT(problem.line, 0);
    EXPECT_GT(problem.column, 0);
}

TEST(Syntax, CommaInABareNumberIsNamed)
{
    const std::string cause = "a number is written with a decimal point, and this one has a comma";
    expect_told("penetration = \"9 mm\"", "penetration = 9,5 mm", cause, "penetration = \"9.5 mm\"");
    expect_told("penetration = \"9 mm\"", "penetration = 9,5", cause,
                "write 9.5 in place of 9,5, in quotes with its unit where it has one");
    expect_told("count = 4000", "count = 4,000", cause, "count = ... with your number, without commas");
    expect_told("count = 4000", "count = 4,000,000", cause,
                "write 4000000 in place of 4,000,000, in quotes with its unit where it has one");
}

TEST(Syntax, PointsBetweenThousandsAreNamedAndNotQuoted)
{
    expect_told("count = 4000", "count = 4.000.000",
                "a number has one decimal point, and nothing between its thousands",
                "count = ... with your number, without points between its thousands");
}

TEST(Syntax, WhatIsGivenTwiceIsNamedWithItsFirstPlace)
{
    expect_told("penetration = \"9 mm\"", "# first\npenetration = \"9 mm\"\npenetration = \"8 mm\"",
                "penetration is given twice (first at line 22)", "keep one of the two lines");
    expect_told("[load]", "[sleeve]\nlength = \"9 mm\"\n[load]", "sleeve is given twice (first at line 24)",
                "put the keys of both under one [sleeve]");
    expect_told("[joint]", "[load.block]\nname = \"x\"\n[joint]", "load.block is given twice (first at line 20)",
                "write [[load.block]] in both places, or [load.block] once");
}

TEST(Syntax, TypographicAndMissingQuotesAreNamed)
{
    const std::string line = "penetration = \"9 mm\"", mended = line;
    for (const char* quoted : {"\u201c9 mm\u201d", "\u20189 mm\u2019", "\u201e9 mm\u201c", "\u00bb9 mm\u00ab"})
        expect_told(line, std::string("penetration = ") + quoted,
                    "its quotes are typographic, and must be the straight \"", mended);
    expect_told(line, "penetration = \"9 mm", "a closing quote is missing", mended);
    expect_told(line, "penetration = 9 mm\"", "an opening quote is missing", mended);
    expect_told(line, "penetration = 9 mm", "a value with a unit stands in double quotes", mended);
    expect_told(line, "penetration = full", "a text stands in double quotes", "penetration = \"full\"");
}

TEST(Syntax, MissingSignsAreNamed)
{
    const std::string line = "penetration = \"9 mm\"";
    expect_told(line, "penetration: \"9 mm\"", "a key and its value are parted by =, not by a colon", line);
    expect_told(line, "penetration =", "nothing stands behind the =", "penetration = ... with your value");
    expect_told("[joint]", "[joint", "a closing bracket is missing", "[joint]");
}

TEST(Syntax, WhatHasNoKnownCauseIsToldInTheWordsOfTheReader)
{
    const Problem problem = told("penetration = \"9 mm\"", "penetration \"9 mm\"");
    EXPECT_NE(problem.rule.find("expected '='"), std::string::npos) << problem.rule;
    EXPECT_EQ(problem.fix, "write key = \"value\", one to a line, texts and quantities in double quotes");
}

}  // namespace
}  // namespace splicewright
