// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "app/check_splice.h"
#include "cases/read_case.h"
#include "post/flat_element.h"
#include "post/option_outcome.h"
#include "post/result_json.h"
#include "post/verdict_text.h"

namespace splicewright
{
namespace
{

constexpr double coarse_pct = 10;

Case example(const char* name)
{
    return read_case_file(fmt::format("{}/cases/examples/{}.toml", SPLICEWRIGHT_SOURCE_DIR, name)).value();
}

const Report& passing_report()
{
    static const Report report = check_splice(example("partial-penetration"), {coarse_pct});
    return report;
}

// The report as it would be if the finite elements had read this much more shear at the left bar.
Report with_shear(double factor)
{
    Report report = passing_report();
    for (SiteAnswer& site : report.sound.answer.sites)
        if (site.id == "bar.left") site.torsion.shear.value *= factor;
    report.handbook = handbook_rows(report.asked, report.sound.answer);
    report.cautions = cautions(report);
    return report;
}

TEST(Verdict, PassesOnlyWhereTheFiniteElementsAgreeWithExactTheory)
{
    EXPECT_TRUE(passing_report().passes());
    for (const double factor : {1.3, 0.7, 1.05, 0.95})
    {
        const Report report = with_shear(factor);
        EXPECT_TRUE(report.sound.passes());  // every check as before
        EXPECT_FALSE(report.passes()) << factor;
        const std::string text = verdict_text(report, Emphasis::plain);
        EXPECT_NE(text.find("\nCOULD NOT BE COMPUTED"), std::string::npos) << text.substr(0, 300);
        EXPECT_NE(text.find("bar.left: surface shear"), std::string::npos);
        EXPECT_EQ(text.find("\nPASSES"), std::string::npos);
        EXPECT_EQ(nlohmann::json::parse(result_json(report))["verdict"]["passes"], false);
        EXPECT_NE(report.cautions.end(), std::find_if(report.cautions.begin(), report.cautions.end(),
                                                      [](const std::string& caution) {
                                                          return caution.starts_with("COULD NOT BE COMPUTED: bar.left");
                                                      }));
        EXPECT_EQ(outcome_of(report.asked, report.sound).end, OptionEnd::failed);
    }
    EXPECT_TRUE(with_shear(1.01).passes());  // shown as a disagreement, as it may come from a notch nearby
    EXPECT_TRUE(with_shear(NAN).passes() == false);
}

TEST(Verdict, IsNotStoppedByAChartThatDisagrees)
{
    Report report = passing_report();
    for (HandbookRow& row : report.handbook) row.agrees = false;
    EXPECT_TRUE(report.passes());
}

TEST(Verdict, GivesNoPassWhereNothingJudgesASite)
{
    Report report = passing_report();
    ASSERT_TRUE(report.passes());
    for (CheckRow& row : report.sound.checks)
        if (row.site == "bar-toe.left" && row.kind == CheckKind::fatigue) row.not_valid_because = "the wall is thin";
    EXPECT_FALSE(report.passes());
    EXPECT_EQ(no_pass_because(report.sound), "no check may judge bar-toe.left");
    report.cautions = cautions(report);
    EXPECT_NE(verdict_text(report, Emphasis::plain).find("DOES NOT PASS: no check may judge bar-toe.left"), std::string::npos)
        << verdict_text(report, Emphasis::plain);
    EXPECT_NE(verdict_text(report, Emphasis::plain).find("No check holds for bar-toe.left"), std::string::npos);
}

TEST(Verdict, OfABondedSleeveComparesNoThroat)
{
    Report report = passing_report();
    const auto throats = [&]
    {
        const std::vector<HandbookRow> rows = handbook_rows(report.asked, report.sound.answer);
        return std::count_if(rows.begin(), rows.end(),
                             [](const HandbookRow& row) { return row.what.starts_with("throat."); });
    };
    EXPECT_EQ(throats(), 2);
    report.asked.sleeve->slit = {SlitState::bonded, SlitState::bonded};
    EXPECT_EQ(throats(), 0);
}

// Thin triangles: a needle of 1 by 100 has angles of 0.57 and 89.7 degrees, one with its point pressed down to the base
// 178.9 degrees.
Mesh one_triangle(OutlinePoint top)
{
    Mesh mesh;
    mesh.node.resize(2, 3);
    mesh.node << 0, 100, top.z, 0, 0, top.r;
    mesh.triangle.resize(6, 1);
    mesh.triangle << 0, 1, 2, 0, 0, 0;
    return mesh;
}

TEST(Evidence, TellsWhetherAThinElementMatters)
{
    MeridianAnswer answer;
    SiteAnswer site;
    site.id = "bar.left";
    site.z = 100.0 / 3, site.r = 3 + 1.0 / 3;
    answer.sites = {site};
    answer.fields.mesh = one_triangle({0, 1});
    EXPECT_NEAR(flattest_element(answer.fields.mesh).smallest_deg, 0.573, 0.001);
    EXPECT_NEAR(flattest_element(answer.fields.mesh).largest_deg, 90, 1e-9);
    const std::string needle = flat_element_words(answer);
    EXPECT_NE(needle.find("0.57°"), std::string::npos) << needle;
    EXPECT_NE(needle.find("3 mm from the hottest place of bar.left"), std::string::npos) << needle;
    EXPECT_NE(needle.find("costs no accuracy"), std::string::npos) << needle;
    answer.fields.mesh = one_triangle({50, 1});
    EXPECT_NEAR(flattest_element(answer.fields.mesh).largest_deg, 177.7, 0.1);
    EXPECT_NE(flat_element_words(answer).find("finer --accuracy"), std::string::npos) << flat_element_words(answer);
    answer.fields.mesh = one_triangle({50, 80});
    EXPECT_TRUE(flat_element_words(answer).empty());
}

TEST(Notes, SayThatTheSizeOfASolidBarIsItsWholeDiameter)
{
    int n_told = 0;
    for (const CheckRow& row : passing_report().sound.checks)
        n_told += row.note.find("size 32 mm, the whole diameter of a solid bar") != std::string::npos ? 1 : 0;
    EXPECT_EQ(n_told, 8);  // two toes by four methods each; of a butt that is not fused through it is the depth
}

TEST(Verdict, FitsOnOneScreenAndCountsWhatItLeavesOut)
{
    const Report& report = passing_report();
    const std::string brief = verdict_text(report, Emphasis::plain);
    const std::string all = verdict_text(report, Emphasis::plain, RowsShown::all);
    EXPECT_LE(std::count(brief.begin(), brief.end(), '\n'), 66);
    ASSERT_FALSE(report.asked.defaults.empty());
    EXPECT_NE(brief.find(fmt::format("Defaults: {} values", report.asked.defaults.size())), std::string::npos);
    EXPECT_NE(all.find(report.asked.defaults.front().field), std::string::npos);
    for (const std::string& caution : report.asked.cautions)
        EXPECT_NE(brief.find(caution.substr(0, 60)), std::string::npos) << caution;
    for (const std::string& caution : general_cautions())
        EXPECT_NE(all.find(caution.substr(0, 60)), std::string::npos) << caution;
    EXPECT_NE(brief.find(general_cautions().front().substr(0, 60)), std::string::npos);
}

// A broken weld may move the crack to where it takes longer: that is no gain, and each such line says so.
TEST(Verdict, CountsNoGainWhereABrokenWeldSeemsToLastLonger)
{
    Report report = passing_report();
    ASSERT_FALSE(report.what_if.empty());
    const std::string words = "; count no gain";
    const auto n_told = [&]
    {
        const std::string text = verdict_text(report, Emphasis::plain);
        std::size_t n = 0;
        for (std::size_t at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) ++n;
        return n;
    };
    const std::size_t before = n_told();
    for (CheckRow& row : report.what_if.front().checks)
        if (row.life) *row.life *= 1e6;
    EXPECT_GT(n_told(), before);
}

TEST(Verdict, ShowsAllIdsAndTheWholeHandbookWhenAsked)
{
    const Report& report = passing_report();
    const std::string all = verdict_text(report, Emphasis::plain, RowsShown::all);
    for (const CheckRow& row : report.sound.checks)
        EXPECT_NE(all.find(fmt::format("\n{} ", row.id)), std::string::npos) << row.id;
    for (const HandbookRow& row : report.handbook)
        EXPECT_NE(all.find(fmt::format("\n{} ", row.what)), std::string::npos) << row.what;
    for (const std::string& text : {all, verdict_text(report, Emphasis::plain)})
        EXPECT_EQ(text.find("see the handbook table"), std::string::npos);
}

}  // namespace
}  // namespace splicewright
