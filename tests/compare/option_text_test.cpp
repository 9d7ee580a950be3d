// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/option_text.h"

#include <gtest/gtest.h>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

Case option(const std::vector<KeyValue>& replaced, const std::string& text = sound_splice_text())
{
    return accepted(option_text(text, replaced));
}

TEST(OptionText, ReplacesKeysAndLeavesTheRest)
{
    const Case base = accepted(sound_splice_text());
    const Case asked = option({{"sleeve.length", "\"90 mm\""}, {"left.section[2].diameter", "\"25 mm\""}});
    EXPECT_EQ(asked.sleeve->length, Millimetre(90));
    EXPECT_EQ(asked.bar[0]->sections[1].diameter, Millimetre(25));
    EXPECT_EQ(asked.bar[0]->sections[0].diameter, base.bar[0]->sections[0].diameter);
    EXPECT_EQ(asked.bar[1]->grooves.size(), 1U);
    EXPECT_EQ(asked.load.revolutions, base.load.revolutions);
    EXPECT_EQ(asked.load.blocks.front().high, base.load.blocks.front().high);
}

TEST(OptionText, DoesNotDependOnCommentsTitleOrderOrStudy)
{
    const std::string plain = option_text(sound_splice_text(), {});
    EXPECT_EQ(option_text("# a comment\n" + sound_splice_text(), {}), plain);
    EXPECT_EQ(option_text(with(sound_splice_text(), "test splice", "another"), {}), plain);
    EXPECT_EQ(option_text(sound_splice_text() + "[compare]\n\"sleeve.length\" = [\"60 mm\"]\n", {}), plain);
    EXPECT_EQ(option_text(splice_with("length = \"84 mm\"\nouter_diameter = \"42 mm\"\n",
                                      "outer_diameter = \"42 mm\"\nlength = \"84 mm\"\n"),
                          {}),
              plain);
    EXPECT_NE(option_text(sound_splice_text(), {{"sleeve.length", "\"85 mm\""}}), plain);
}

TEST(OptionText, WithANameIsTheSameCaseUnderAnotherTitle)
{
    const std::vector<KeyValue> values{{"sleeve.length", "\"90 mm\""}};
    const std::string hostile = with(sound_splice_text(), "test splice", "a \\\"b\\\" <c>");
    const Case asked = accepted(named_option_text(hostile, values, "option 3"));
    EXPECT_EQ(asked.title, "a \"b\" <c>, option 3");
    EXPECT_EQ(option_text(named_option_text(hostile, values, "option 3"), {}), option_text(hostile, values));
}

TEST(OptionText, LetsKeysOfTheSameThingReplaceEachOther)
{
    // Wall over the larger bore, 28 mm and 0.02 mm of clearance.
    EXPECT_NEAR(option({{"sleeve.wall", "\"6 mm\""}}).sleeve->outer_diameter.value(), 28.02 + 12, 1e-9);
    EXPECT_EQ(option({{"sleeve.wall", "\"6 mm\""}, {"sleeve.outer_diameter", "\"41 mm\""}}).sleeve->outer_diameter,
              Millimetre(41));
    EXPECT_EQ(option({{"load.bending", "\"30 N*m\""}}).load.peak_bending, NewtonMillimetre(30e3));
    EXPECT_EQ(option({{"sleeve.bore_left", "\"28.1 mm\""}, {"sleeve.bore_right", "\"27.1 mm\""}}).sleeve->slit[0],
              SlitState::open);
    const std::string bored = splice_with("clearance = \"0.02 mm\"", "bore = \"28.1 mm\"");
    EXPECT_NEAR(option({{"sleeve.clearance", "\"0.04 mm\""}}, bored).sleeve->clearance[1].value(), 0.04, 1e-12);
}

TEST(OptionText, LeavesTheOtherHalfOfAPairAsItWas)
{
    const Case asked = option({{"sleeve.weld.leg_on_bar", "\"7 mm\""}});
    EXPECT_EQ(asked.sleeve->weld.leg_on_bar, Millimetre(7));
    EXPECT_EQ(asked.sleeve->weld.leg_on_sleeve, Millimetre(6));
    const Case looser = option({{"sleeve.clearance_right", "\"0.06 mm\""}});
    EXPECT_NEAR(looser.sleeve->clearance[0].value(), 0.02, 1e-12);
    EXPECT_NEAR(looser.sleeve->clearance[1].value(), 0.06, 1e-12);
}

TEST(OptionText, MakesTheTableOfTheShop)
{
    EXPECT_EQ(option({{"making.root_gap", "\"3 mm\""}}).making->root_gap, Millimetre(3));
}

TEST(OptionText, GivesInvalidCombinationsTheirReason)
{
    const std::string text = option_text(sound_splice_text(), {{"sleeve.weld.leg", "\"8 mm\""}});
    EXPECT_NE(problem_of(text, "sleeve.weld.leg").rule.find("must be at most 7 mm"), std::string::npos);
}

}  // namespace
}  // namespace splicewright
