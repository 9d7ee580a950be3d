// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <numbers>
#include <set>

#include "app/check_splice.h"
#include "app/scenarios.h"
#include "cases/bar_shape.h"
#include "post/fatigue_checks.h"
#include "post/weld_metal_checks.h"
#include "tests/docs/documents.h"
#include "tests/judgement/second_opinion.h"

namespace splicewright
{
namespace
{

constexpr double accuracy_pct = 20;  // the rows are those of any accuracy

MeridianAnswer with_notches(const Case& asked, double radius_mm, double pct)
{
    Scenario notched = sound_splice();
    notched.toe_radius = notched.root_radius = Millimetre{radius_mm};
    return meridian_answer(asked, notched, {pct});
}

SolvedCase solved_case(const Report& report)
{
    const Case& asked = report.asked;
    SolvedCase solved{asked, report.sound.answer, report.sound.answer, {}, {}, {}};
    if (asked.sleeve && asked.sleeve->weld.toe_radius != Millimetre{1})
        solved.notched = with_notches(asked, 1, accuracy_pct);
    for (const CheckRow& row : report.sound.checks)
        if (row.id.ends_with("notch-small") && !solved.small)
            solved.small = with_notches(asked, 0.05, 3 * accuracy_pct);
    if (asked.joint) solved.tips = stress_intensities(asked, sound_splice(), {3 * accuracy_pct});
    return solved;
}

// What the scenario adds to the load of a row is not in the numbers of the sound splice.
std::set<std::string> kinds_of(const Judgement& judged)
{
    std::set<std::string> kinds;
    for (const CheckRow& row : judged.checks) kinds.insert(without_side_and_number(row.id));
    return kinds;
}

// Every row of every example a second time; a row of a kind that has no second opinion fails, and so does a kind that
// only a scenario has.
TEST(EveryRow, OfTheExamplesIsWhatASecondComputationGives)
{
    std::set<std::string> computed, occurring;
    for (const std::string& path : example_paths())
    {
        const Report report = coarse_report(path);
        ASSERT_TRUE(report.sound.notes.empty()) << path << ": the slit was settled otherwise than the case has it";
        for (const Judgement& scenario : report.what_if) occurring.merge(kinds_of(scenario));
        occurring.merge(kinds_of(report.sound));
        const SolvedCase solved = solved_case(report);
        for (const CheckRow& row : report.sound.checks)
        {
            if (row.brief == "not computed") continue;
            const std::optional<Opinion> opinion = second_opinion(solved, row.id);
            ASSERT_TRUE(opinion.has_value()) << path << ": nobody computes " << row.id << " a second time";
            const double used = row.utilisation / (1 + row.error_pct / 100);
            EXPECT_NEAR(used, opinion->utilisation, opinion->tolerance * std::max(used, 1e-9))
                << path << ": " << row.id;
            computed.insert(without_side_and_number(row.id));
        }
    }
    for (const std::string& kind : occurring) EXPECT_TRUE(computed.contains(kind)) << kind;
    EXPECT_GE(computed.size(), 52U);
}

// Four equal plugs under torque alone: an error in bending or in pull, which do not act, is none of theirs; that of a
// load that acts counts with its size.
TEST(EveryRow, OfWeldMetalHasTheErrorOfTheLoadsThatAct)
{
    Case asked = example_case("cases/examples/hill-climb-rear-left.toml");
    asked.load.peak_bending = asked.load.running_bending = NewtonMillimetre{0};
    asked.load.axial = Newton{0};
    WeldMetalForce plug;
    plug.site = "plug-edge.1", plug.area = 50, plug.place = {15, 0, -25};
    plug.torsion = {0, 1.0 / 60, 0}, plug.torsion_error = 0.01 / 60;
    plug.towards_x = {0.01, 0, 0}, plug.bending_error = 0.01;
    plug.axial = {0.25, 0, 0}, plug.axial_error = 0.125;
    SolidModelAnswer solid;
    solid.weld_metal = {{plug}};
    for (const CheckRow& row : weld_metal_checks(asked, solid)) EXPECT_NEAR(row.error_pct, 1, 1e-9) << row.id;
    asked.load.axial = Newton{1e4};
    for (const CheckRow& row : weld_metal_checks(asked, solid))
        EXPECT_TRUE(row.kind != CheckKind::strength || row.error_pct > 5) << row.id;
}

// An error in shear weighs more beside a pull than beside shear, in the von Mises stress by the root of three.
TEST(EveryRow, OfWeldMetalHasTheErrorOfItsOwnMeasureOfStress)
{
    Case asked = example_case("cases/examples/hill-climb-rear-left.toml");
    asked.load.peak_bending = asked.load.running_bending = NewtonMillimetre{0};
    asked.load.axial = Newton{0};
    WeldMetalForce plug;
    plug.site = "plug-edge.1", plug.area = 50, plug.place = {15, 0, -25};
    plug.torsion = {0, 0, 1.0 / 60}, plug.torsion_error = 0.01 / 60;
    SolidModelAnswer solid;
    solid.weld_metal = {{plug}};
    for (const CheckRow& row : weld_metal_checks(asked, solid))
        EXPECT_NEAR(row.error_pct, row.id.ends_with("/yield") ? std::sqrt(3.0) : 1, 1e-9) << row.id;
    plug.torsion = {0, 0.6 / 60, 0.8 / 60};
    solid.weld_metal = {{plug}};
    const double t = 0.6, s = 0.8, q = 80.0 / 36;
    for (const CheckRow& row : weld_metal_checks(asked, solid))
    {
        if (row.kind != CheckKind::fatigue) continue;
        EXPECT_NEAR(row.error_pct, std::hypot(t, q * q * s) / (t * t + q * q * s * s), 1e-9) << row.id;
    }
}

// A weld of 60 degrees on this bar is 17 mm long, a hole of 10 mm in a wall of 6 mm leaves no 8 mm more.
TEST(EveryRow, OfWeldMetalSmallerThanTheCodeDesignsDoesNotGovernByIt)
{
    Case asked = example_case("cases/examples/hill-climb-rear-left.toml");
    for (auto& bar : asked.bar) bar->material.name = "S355";
    asked.sleeve->material.name = "S355";
    WeldMetalForce end, plug;
    end.site = "weld-end.1", end.area = 25, end.length = 6, end.place = {16, 0, -42}, end.torsion = {0, 0.01, 0};
    plug.site = "plug-edge.1", plug.area = 80, plug.place = {14, 0, -25}, plug.torsion = {0, 0.01, 0};
    SolidModelAnswer solid;
    solid.weld_metal = {{end, plug}};
    const auto reason = [&](const std::string& id)
    {
        for (const CheckRow& row : weld_metal_checks(asked, solid))
            if (row.id == id) return row.not_valid_because;
        return std::string("no such row");
    };
    asked.sleeve->plugs = {{3, Millimetre{15}, Millimetre{-25}, std::nullopt, Radian{0}}};
    asked.sleeve->weld.coverage = Radian{5};
    EXPECT_EQ(reason("strength/weld-end.1"), "");
    EXPECT_EQ(reason("strength/plug-edge.1"), "");
    asked.sleeve->plugs[0].diameter = Millimetre{10};
    asked.sleeve->weld.coverage = Radian{std::numbers::pi / 3};
    EXPECT_NE(reason("strength/weld-end.1").find("4.5.1"), std::string::npos);
    EXPECT_NE(reason("strength/plug-edge.1").find("4.3.5"), std::string::npos);
    EXPECT_EQ(reason("strength/weld-end.1/yield"), "");
    EXPECT_EQ(reason("strength/plug-edge.1/yield"), "");
}

// Forces that are made up: the solid model's own are held against statics in tests/solver.
TEST(EveryRow, OfWeldMetalIsWhatASecondComputationGives)
{
    SolvedCase solved;
    solved.asked = example_case("cases/examples/hill-climb-rear-left.toml");
    ASSERT_FALSE(solved.asked.load.blocks.empty());
    const std::vector<std::string> sites{"plug-edge.1", "plug-edge.2", "weld-end.1", "weld-end.2", "throat.right"};
    double z = -25;
    for (const std::string& site : sites)
        for (const double turn : {0.3, 1.9})  // of one site two places: the worse counts
        {
            WeldMetalForce metal;
            metal.site = site, metal.area = 30 + turn, metal.length = 6, metal.place = {14, turn, z};
            if (!site.starts_with("plug"))
                metal.area = metal.length * weld_throat(solved.asked, z < 0 ? Side::left : Side::right).size;
            metal.torsion = {2e-3 * std::cos(turn), 8e-3 * std::sin(turn), -3e-3};
            metal.towards_x = {0.02 * turn, 0.004, 0.003}, metal.towards_y = {-0.01, 0.015, 0.005 * turn};
            metal.axial = {0.01, -0.02, 0.03}, metal.press = {20, 10, -15};
            solved.metal.push_back(metal);
            z += 11;
        }
    SolidModelAnswer solid;
    solid.weld_metal = {solved.metal};
    const double stated = solved.asked.load.blocks[0].count;
    for (const double count : {stated, 5e6, 3e7})  // beyond 2e6 the curves of pull and shear part
    {
        solved.asked.load.blocks[0].count = count;
        const std::vector<CheckRow> rows = weld_metal_checks(solved.asked, solid);
        EXPECT_EQ(rows.size(), 3 * sites.size());
        for (const CheckRow& row : rows)
        {
            const std::optional<Opinion> opinion = second_opinion(solved, row.id);
            ASSERT_TRUE(opinion.has_value()) << row.id;
            EXPECT_GT(row.utilisation, 0.01) << row.id;
            EXPECT_NEAR(row.utilisation, opinion->utilisation, opinion->tolerance * row.utilisation)
                << row.id << ", " << count << " cycles";
        }
    }
}

// Beside the end of a weld of 340 degrees torque was seen to make 615 MPa of principal stress and 339 MPa of shear by
// 1 kN*m, at the inner corner of a lap seven times its shear: shear alone does not tell what cracks there.
TEST(EveryRow, WhereTorquePullsItsPrincipalStressIsJudgedAsASecondComputationDoes)
{
    SolvedCase solved;
    solved.asked = example_case("cases/examples/hill-climb-rear-left.toml");
    for (TorqueBlock& block : solved.asked.load.blocks) block.count = 1e6;
    const auto site = [](const char* id, double principal, double shear)
    {
        SiteAnswer answer;
        answer.id = id;
        answer.torsion = {{1.7e-6 * shear, 0}, {1e-6 * principal, 0}, {1e-6 * shear, 0}};
        answer.bending = {{50e-6, 0}, {47e-6, 0}, {9e-6, 0}};
        return answer;
    };
    solved.answer.sites = {site("bar-toe.left", 615, 339), site("lap-corner.right", 47, 7), site("sleeve-mid", 77, 76)};
    solved.notched = solved.answer;
    solved.answer.scenario.butt_fused = false;
    std::map<std::string, double> used;
    for (const CheckRow& row : fatigue_checks(solved.asked, {solved.answer, solved.notched, nullptr}))
    {
        used[row.id] = row.utilisation;
        if (!row.id.ends_with("-principal") || row.id.ends_with("nominal-principal")) continue;
        const std::optional<Opinion> opinion = second_opinion(solved, row.id);
        ASSERT_TRUE(opinion.has_value()) << row.id;
        EXPECT_NEAR(row.utilisation, opinion->utilisation, opinion->tolerance * row.utilisation) << row.id;
    }
    ASSERT_TRUE(used.contains("fatigue/bar-toe.left/notch-principal"));
    ASSERT_TRUE(used.contains("fatigue/lap-corner.right/parent-principal"));
    EXPECT_FALSE(used.contains("fatigue/sleeve-mid/parent-principal"));
    EXPECT_GT(used["fatigue/bar-toe.left/notch-principal"], used["fatigue/bar-toe.left/notch-shear"]);
    EXPECT_GT(used["fatigue/lap-corner.right/parent-principal"], 1.5 * used["fatigue/lap-corner.right/parent-iiw"]);
}

TEST(EveryRow, OfAKindThatIsNotKnownHasNoSecondOpinion)
{
    const SolvedCase nothing;
    EXPECT_FALSE(second_opinion(nothing, "strength/elsewhere").has_value());
    EXPECT_FALSE(second_opinion(nothing, "fatigue/elsewhere/nominal-new").has_value());
}

}  // namespace
}  // namespace splicewright
