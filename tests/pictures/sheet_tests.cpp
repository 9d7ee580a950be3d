// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include "post/sheet.h"

namespace splicewright
{
namespace
{

TEST(SheetText, BrokenUtf8AndControlCharactersBecomeHarmless)
{
    EXPECT_EQ(clean_text("a\xC3(b"), "a?(b");      // a lead byte without its follower
    EXPECT_EQ(clean_text("\xED\xA0\x80"), "???");  // half of a surrogate pair
    EXPECT_EQ(clean_text("one\ntwo\x7F"), "one two ");
    EXPECT_EQ(clean_text("70 N·m, σ, 日本"), "70 N·m, σ, 日本");
    EXPECT_EQ(clean_text("\xE6\x97"), "??");  // cut off at the end
}

TEST(SheetText, PlainTypefaceGetsWordsForSigns)
{
    EXPECT_EQ(ascii_text("σ = 512 MPa at θ = −7°, 70 N·m"), "sigma = 512 MPa at theta = -7 deg, 70 N*m");
    EXPECT_EQ(ascii_text("é"), "?");
}

TEST(SheetText, LongTextIsShortenedAtAWholeCharacter)
{
    const TextWidth ten_each = [](const std::string& words, double, Weight) { return 10.0 * double(words.size()); };
    EXPECT_EQ(fitted("short", 20, Weight::regular, 100, ten_each), "short");
    EXPECT_EQ(fitted("aσσσσσσσσσ", 20, Weight::regular, 100, ten_each), "aσσσ…");  // 1 + 3 * 2 + 3 bytes
}

TEST(SheetNumbers, RoundNumbersEncloseTheValue)
{
    EXPECT_DOUBLE_EQ(round_below(19.9), 10);
    EXPECT_DOUBLE_EQ(round_below(20), 20);
    EXPECT_DOUBLE_EQ(round_below(0.07), 0.05);
    EXPECT_DOUBLE_EQ(round_above(512), 600);
    EXPECT_DOUBLE_EQ(round_above(801), 1000);
    EXPECT_DOUBLE_EQ(round_above(0.0021), 0.0025);
}

TEST(SheetNumbers, NegativeZeroHasNoSign)
{
    EXPECT_EQ(short_number(-0.02, 1), "0.0");
    EXPECT_EQ(short_number(-48, 1), "−48.0");
}

TEST(SheetLines, DashesCoverTheShareOfTheirPattern)
{
    Sheet sheet;
    add_line(sheet, {{0, 0}, {3, 0}, {100, 0}}, {2, ink, {6, 4}});
    double length = 0;
    for (const Fill& fill : sheet.fill) length += fill.corner[2].x() - fill.corner[0].x();
    EXPECT_NEAR(length, 60, 1e-9);  // ten periods of ten, six on; sums of a few dozen numbers
}

}  // namespace
}  // namespace splicewright
