// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

std::string made(const std::string& line) { return fmt::format("{}[making]\n{}\n", sound_splice_text(), line); }

std::string as_built(const std::string& line) { return splice_with("[joint]\n", fmt::format("[joint]\n{}\n", line)); }

bool has_default(const Case& asked, const std::string& field, const std::string& part)
{
    return std::any_of(asked.defaults.begin(), asked.defaults.end(),
                       [&](const DefaultUsed& used)
                       { return used.field == field && used.value.find(part) != std::string::npos; });
}

TEST(Making, IsReadInItsUnits)
{
    const Case asked = accepted(
        made("overall_length = \"18 in\"\nadjust = \"left\"\nroot_gap = \"1/16 in\"\ngroove_angle = \"70 deg\"\n"
             "heat_input = \"25.4 kJ/in\"\nhydrogen = \"3 ml/100 g\"\nquality = \"c\"\nbore_grade = \"IT8\"\n"
             "plunge_available = \"2 cm\""));
    const Making& making = *asked.making;
    EXPECT_DOUBLE_EQ(making.overall_length->value(), 457.2);
    EXPECT_EQ(making.adjusted, AdjustedBar::left);
    EXPECT_DOUBLE_EQ(making.root_gap.value(), 25.4 / 16);
    EXPECT_NEAR(making.groove_angle.value(), 70 * std::acos(-1.0) / 180, 1e-15);
    EXPECT_NEAR(making.heat_input.value(), 1e6, 1e-6);  // N: 1 kJ/mm
    EXPECT_DOUBLE_EQ(making.hydrogen, 3);
    EXPECT_EQ(making.quality, QualityLevel::C);
    EXPECT_EQ(making.bore_grade, 8);
    EXPECT_DOUBLE_EQ(making.plunge_available->value(), 20);
    EXPECT_TRUE(has_default(asked, "making.plunge_used", "0 mm"));
    EXPECT_TRUE(has_default(asked, "making.root_face", "1 mm"));
}

TEST(Making, DefaultsAreToldWithAndWithoutItsTable)
{
    const Case asked = accepted(sound_splice_text());
    ASSERT_TRUE(asked.making.has_value());
    for (const char* part : {"root_gap 2 mm", "root_face 1 mm", "groove_angle 60 deg", "weld_shrink 0.61 mm",
                             "heat_input 1 kJ/mm", "hydrogen 5 ml/100g", "quality B", "bore_grade IT7"})
        EXPECT_TRUE(has_default(asked, "making", part)) << part;
    EXPECT_FALSE(asked.making->overall_length.has_value());
    EXPECT_TRUE(has_default(accepted(made("quality = \"B\"")), "making.root_gap", "2 mm"));
}

TEST(Making, RefusesWhatIsOutOfRange)
{
    expect_only_problem(made("root_gap = \"7 mm\""), "making.root_gap", "at most 6 mm", "root_gap = \"... mm\"");
    expect_only_problem(made("weld_shrink = \"-1 mm\""), "making.weld_shrink", "at least 0 mm", "weld_shrink");
    expect_only_problem(made("root_face = \"6 mm\""), "making.root_face", "at most 5 mm", "root_face");
    expect_only_problem(made("groove_angle = \"20 deg\""), "making.groove_angle", "at least 30 deg",
                        "groove_angle = \"... deg\"");
    expect_only_problem(made("heat_input = \"20 kJ/mm\""), "making.heat_input", "at most 10 kJ/mm", "heat_input");
    expect_only_problem(made("hydrogen = \"0 ml/100g\""), "making.hydrogen", "at least 0.5", "hydrogen");
    expect_only_problem(made("plunge_available = \"10 mm\"\nplunge_used = \"12 mm\""), "making.plunge_used",
                        "at most 10 mm", "plunge_used = \"... mm\"");
    expect_only_problem(made("quality = \"D\""), "making.quality", "one of \"B\", \"C\"", "one of these");
    expect_only_problem(made("bore_grade = \"IT5\""), "making.bore_grade", "\"IT7\"", "bore_grade");
}

TEST(Making, RefusesABareNumberAndTheWrongUnit)
{
    expect_only_problem(made("root_gap = 2"), "making.root_gap", "unit", "\"2 mm\"");
    expect_only_problem(made("heat_input = \"1 kN\""), "making.heat_input", "must be a heat input",
                        "heat_input = \"... kJ/mm\" with your value in kJ/mm");
}

// The welds need 42 + 6 + 1 mm of each first section; drawn 455 mm, 190 mm of it the left first section.
TEST(Making, RefusesALengthThatLeavesNoRoomForTheWelds)
{
    const std::string fix = "overall_length = \"... mm\"";
    expect_only_problem(made("overall_length = \"300 mm\"\nadjust = \"left\""), "making.overall_length",
                        "at least 314 mm: the welds need 49 mm of the first section of the left bar", fix);
    EXPECT_TRUE(messages(made("overall_length = \"314 mm\"\nadjust = \"left\"")).empty());
    expect_only_problem(made("overall_length = \"700 mm\""), "making.overall_length", "at most 682.5 mm",
                        "overall_length = \"... mm\"");
}

TEST(Making, AsksForWhatItsKeysBelongTo)
{
    expect_only_problem(made("adjust = \"left\""), "making.adjust", "needs overall_length", "overall_length");
    expect_only_problem(made("plunge_used = \"3 mm\""), "making.plunge_used", "needs plunge_available",
                        "plunge_available");
    expect_only_problem(
        "[left]\nmaterial = \"C45 +N\"\n[[left.section]]\nlength = \"200 mm\"\ndiameter = \"28 mm\"\n"
        "[load]\npeak_torque = \"500 N*m\"\n[making]\nquality = \"B\"\n",
        "making", "needs a joint", "remove [making]");
}

TEST(Making, WarnsThatAnotherShaftIsChecked)
{
    EXPECT_TRUE(has_caution(accepted(made("overall_length = \"460 mm\"")), "to be made is 460 mm long"));
    EXPECT_FALSE(has_caution(accepted(made("overall_length = \"455.5 mm\"")), "to be made"));
}

TEST(AsBuilt, OffsetAndTiltAreReadAndBounded)
{
    const Case asked = accepted(as_built("offset = \"0.2 mm\"\ntilt = \"0.1 deg\""));
    EXPECT_DOUBLE_EQ(asked.joint->offset.value(), 0.2);
    EXPECT_NEAR(asked.joint->tilt.value(), 0.1 * std::acos(-1.0) / 180, 1e-15);
    EXPECT_TRUE(has_caution(asked, "the bending it brings is in the stresses of the solid model and of no other"));
    EXPECT_FALSE(has_caution(accepted(sound_splice_text()), "out of line"));
    EXPECT_TRUE(has_default(accepted(sound_splice_text()), "joint.offset", "0 mm"));
    expect_only_problem(as_built("offset = \"2.5 mm\""), "joint.offset", "at most 2 mm", "offset = \"... mm\"");
    expect_only_problem(as_built("offset = \"-0.1 mm\""), "joint.offset", "at least 0 mm", "offset = \"... mm\"");
    expect_only_problem(as_built("tilt = \"1.1 deg\""), "joint.tilt", "at most 1 deg", "tilt = \"... deg\"");
}

}  // namespace
}  // namespace splicewright
