// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>

#include "app/check_splice.h"
#include "app/scenarios.h"
#include "cases/read_case.h"

namespace splicewright
{
namespace
{

Case example(const char* name)
{
    return read_case_file(fmt::format("{}/cases/examples/{}.toml", SPLICEWRIGHT_SOURCE_DIR, name)).value();
}

TEST(WhatIf, HalvesThePenetrationThatWasAsked)
{
    const std::vector<WhatIf> partly = what_ifs(example("partial-penetration"));
    ASSERT_EQ(partly.back().scenario.name, "half penetration");
    EXPECT_EQ(partly.back().asked.joint->penetration->value(),
              example("partial-penetration").joint->penetration->value() / 2);
    // A full weld of the smaller bar of 27.5 mm.
    const std::vector<WhatIf> fully = what_ifs(example("hill-climb-rear-left"));
    ASSERT_EQ(fully.back().scenario.name, "half penetration");
    EXPECT_NEAR(fully.back().asked.joint->penetration->value(), 27.5 / 4, 1e-12);
}

TEST(WhatIf, AsksNothingOfAPlainShaft)
{
    EXPECT_TRUE(what_ifs(example("plain-stepped-shaft")).empty());
    EXPECT_TRUE(what_if_notes(example("plain-stepped-shaft")).empty());
}

TEST(WhatIf, SaysHowMuchAShallowWeldWeakensTheButt)
{
    constexpr double coarse_pct = 5;
    const Report report = check_splice(example("partial-penetration"), {coarse_pct});
    ASSERT_EQ(report.what_if.back().answer.scenario.name, "half penetration");
    const auto used = [](const Judgement& judged, const std::string& site)
    { return governing(judged.checks, CheckKind::fatigue, site)->utilisation; };
    EXPECT_GT(used(report.what_if.back(), "land-edge"), 1.02 * used(report.sound, "land-edge"));
    EXPECT_LT(report.what_if.back().answer.share.torsion.value - report.sound.answer.share.torsion.value, 0.5);
    EXPECT_GT(report.what_if.back().answer.share.torsion.value, report.sound.answer.share.torsion.value);
}

// Two bars of 30 and 20 mm, 100 mm each, no sleeve: the twist of a 30 mm shaft of 200 mm is known, and so is the ratio.
TEST(OverBar, ComparesTheTwistWithAShaftOfOneDiameter)
{
    const std::string text =
        "title = \"twist\"\n[left]\nmaterial = \"C45 +N\"\n[[left.section]]\nlength = \"100 mm\"\ndiameter = \"25 "
        "mm\"\n[right]\nmaterial = \"C45 +N\"\n[[right.section]]\nlength = \"100 mm\"\ndiameter = \"24 mm\"\n"
        "[joint]\npenetration = \"full\"\n[load]\npeak_torque = \"100 N*m\"\n";
    const Report report = check_splice(read_case(text, "twist").value(), {2});
    const double left = 1 / std::pow(25, 4), right = 1 / std::pow(24, 4);
    ASSERT_TRUE(report.over_bar[0] && report.over_bar[1]);
    constexpr double blend = 0.01;  // a blend of 3 mm between the bars, and the mesh
    EXPECT_NEAR(report.over_bar[0]->twist, (left + right) / (2 * left), blend);
    EXPECT_NEAR(report.over_bar[1]->twist, (left + right) / (2 * right), blend);
    EXPECT_EQ(report.over_bar[0]->diameter.value(), 25);
    // Strength: the splice is no stronger than its smaller bar; over the larger it is weaker by the cube.
    EXPECT_NEAR(report.over_bar[1]->strength / report.over_bar[0]->strength, std::pow(25. / 24., 3), blend);
}

}  // namespace
}  // namespace splicewright
