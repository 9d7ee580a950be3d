// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/markup.h"

#include <gtest/gtest.h>

#include "post/line_chart.h"
#include "post/page_terms.h"

namespace splicewright
{

TEST(Markup, EscapesEveryCharacterThatCouldBecomeMarkup)
{
    EXPECT_EQ(words("<script>alert(\"1\" & '2')</script>").text(),
              "&lt;script&gt;alert(&quot;1&quot; &amp; &#39;2&#39;)&lt;/script&gt;");
    EXPECT_EQ(element("a", {{"href", "\"><script>"}}, {}).text(), "<a href=\"&quot;&gt;&lt;script&gt;\"></a>");
}

TEST(Markup, KeepsLineEndsAndTakesOutWhatIsNoText)
{
    EXPECT_EQ(words("a\nb").text(), "a\nb");
    EXPECT_EQ(words(std::string("a\0b\x1b[1m", 7)).text(), "a b [1m");
    EXPECT_EQ(words("\xff").text(), "?");
}

TEST(Markup, SetsWordsOfAUserApartFromTheDirectionOfWriting)
{
    EXPECT_EQ(user_words("שלום").text(), "<bdi dir=\"auto\">שלום</bdi>");
}

TEST(Markup, WritesCoordinatesWithoutExponentAndTrailingZeros)
{
    EXPECT_EQ(coordinate(28.4), "28.4");
    EXPECT_EQ(coordinate(-0.0001), "0");
    EXPECT_EQ(coordinate(1e-7), "0");
    EXPECT_EQ(coordinate(120), "120");
}

// Expected: the test vectors of RFC 4648 section 10, from memory: verify.
TEST(Base64, WritesTheBytesOfThePublishedVectors)
{
    EXPECT_EQ(base64(""), "");
    EXPECT_EQ(base64("f"), "Zg==");
    EXPECT_EQ(base64("fo"), "Zm8=");
    EXPECT_EQ(base64("foo"), "Zm9v");
    EXPECT_EQ(base64("foobar"), "Zm9vYmFy");
    EXPECT_EQ(base64("\xff\xfe"), "//4=");
}

TEST(PageTable, HeadsEveryCellForScreensThatShowCards)
{
    const std::string html =
        table({"Caption", {"What", "Value"}, {{{words_cell("a"), number_cell("1")}, {}, false}}}).text();
    EXPECT_NE(html.find("<caption>Caption</caption>"), std::string::npos);
    EXPECT_NE(html.find("<th scope=\"col\" role=\"columnheader\">Value</th>"), std::string::npos);
    EXPECT_NE(html.find("data-head=\"Value\""), std::string::npos);
}

TEST(Terms, AreExplainedOnceAtTheirFirstUse)
{
    Terms terms;
    EXPECT_NE(terms.explain({"fatigue"}).text().find("<dfn>fatigue</dfn>"), std::string::npos);
    EXPECT_TRUE(terms.explain({"fatigue"}).empty());
}

TEST(LineChart, TellsCurvesApartByDashesAndIsReadAloud)
{
    LineChart chart{"id", "Title", "Words", "x", "y", {{"one", {{0, 0}, {1, 2}}}, {"two", {{0, 1}, {1, 1}}}},
                    {},   {},      0};
    const std::string svg = chart_svg(chart).text();
    EXPECT_NE(svg.find("aria-labelledby=\"id-title id-words\""), std::string::npos);
    EXPECT_NE(svg.find("curve c0"), std::string::npos);
    EXPECT_NE(svg.find("curve c1"), std::string::npos);
}

}  // namespace splicewright
