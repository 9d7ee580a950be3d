// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "app/check_splice.h"
#include "app/scenarios.h"
#include "cases/read_case.h"
#include "post/crack_checks.h"
#include "post/scenario_notes.h"
#include "post/service.h"

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

const Judgement& scenario(const Report& report, const std::string& name)
{
    return *std::find_if(report.what_if.begin(), report.what_if.end(),
                         [&](const Judgement& judged) { return judged.answer.scenario.name == name; });
}

const CheckRow* crack_row(const Judgement& judged, const std::string& site)
{
    const auto row = std::find_if(judged.checks.begin(), judged.checks.end(),
                                  [&](const CheckRow& each) { return is_crack_growth(each) && each.site == site; });
    return row == judged.checks.end() ? nullptr : &*row;
}

// Resultant intensity of a unit torque, before the crack has grown.
double intensity_by_torque(const CheckRow& row)
{
    return std::find_if(row.worked.begin(), row.worked.end(),
                        [](const WorkedStep& step) { return step.formula.starts_with("K_T = "); })
        ->result;
}

// With the hidden weld lost the sleeve passes all of the torque, with it only its share. The intensity grows with the
// torque through the weld, and by more, because the bar under the slit no longer turns along with the sleeve.
TEST(WhatIf, GrowsTheCracksThatALostWeldLeaves)
{
    const Report report = check_splice(example("undersized-sleeve"), {10});
    const Judgement& lost = scenario(report, "hidden weld lost");
    for (const char* site : {"root.left", "root.right"})
    {
        const CheckRow *sound = crack_row(report.sound, site), *alone = crack_row(lost, site);
        ASSERT_TRUE(sound && alone) << site;
        EXPECT_TRUE(alone->valid());
        const double by_torque = intensity_by_torque(*alone) / intensity_by_torque(*sound);
        EXPECT_GT(by_torque * report.sound.answer.share.torsion.value, 1) << site;
        EXPECT_LT(by_torque * report.sound.answer.share.torsion.value, 2) << site;
        EXPECT_LE(*alone->life, *sound->life);
    }
    EXPECT_EQ(crack_row(lost, "land-edge"), nullptr);
    const Judgement& left = scenario(report, "left sleeve weld lost");
    ASSERT_NE(crack_row(left, "land-edge"), nullptr);
    EXPECT_LE(*crack_row(left, "land-edge")->life, *crack_row(report.sound, "land-edge")->life);
    EXPECT_EQ(crack_row(left, "root.left"), nullptr);
}

TEST(WhatIf, NeverShowsALongerLifeThanTheSoundSpliceWithoutAWord)
{
    const Report report = check_splice(example("hill-climb-rear-left"), {10});
    const double sound = least_life(report.sound.checks)->least;
    int n_longer = 0;
    for (const Judgement& judged : report.what_if)
    {
        const bool said = std::any_of(judged.notes.begin(), judged.notes.end(),
                                      [](const std::string& note)
                                      { return note.find("longer than the sound splice") != std::string::npos; });
        EXPECT_EQ(said, least_life(judged.checks)->least > 1.02 * sound) << judged.answer.scenario.name;
        n_longer += said ? 1 : 0;
    }
    EXPECT_GE(n_longer, 1);  // the right weld lost leaves no toe on the right bar, which governs the sound splice
}

TEST(WhatIf, SaysWhereACrackCouldNotBeJudged)
{
    Judgement sound, hollow;
    CheckRow row;
    row.kind = CheckKind::fatigue;
    row.site = "land-edge";
    row.id = "fatigue/land-edge/crack-growth";
    row.not_valid_because = "the bar is hollow: the growth formula is for a crack in a solid bar";
    hollow.checks = {row};
    const std::vector<std::string> notes = notes_beside_sound(sound, hollow);
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_EQ(notes.front().find("crack growth not judged here at land-edge: the bar is hollow"), 0U) << notes.front();
    EXPECT_TRUE(notes_beside_sound(sound, sound).empty());
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
