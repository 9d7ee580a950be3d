// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "app/compare_charts.h"
#include "post/number_words.h"
#include "post/sheet_svg.h"
#include "post/study_charts.h"
#include "post/tolerance_chart.h"
#include "post/trade_off.h"

namespace splicewright
{
namespace
{

OptionOutcome judged_as(double utilisation, double mass_kg, double life, const std::string& site = "bar.left")
{
    OptionOutcome outcome;
    outcome.end = OptionEnd::judged;
    outcome.passes = utilisation <= 1;
    outcome.site = site;
    outcome.utilisation = utilisation;
    outcome.life = life;
    outcome.mass_kg = mass_kg;
    return outcome;
}

double width_of(const std::string& words, double size, Weight /*weight*/)
{
    return 0.6 * size * static_cast<double>(words.size());
}

std::vector<std::string> words_of(const Sheet& sheet)
{
    std::vector<std::string> words;
    for (const Text& text : sheet.text) words.push_back(text.words);
    return words;
}

auto count_of(const Sheet& sheet, const std::string& words)
{
    const std::vector<std::string> all = words_of(sheet);
    return std::count(all.begin(), all.end(), words);
}

TEST(TradeOff, KeepsThePassingOptionsThatNoOtherOneBeats)
{
    TradeOff trade_off(1);
    const std::vector<OptionOutcome> outcomes{
        judged_as(0.9, 2, 3), judged_as(0.9, 1, 2), judged_as(0.9, 2.5, 2.5),  // the third is beaten by the first
        judged_as(1.2, 0.5, 9), judged_as(0.9, 4, 30)};                        // the fourth does not pass
    for (std::size_t i = 0; i < outcomes.size(); ++i) trade_off.add({i, {}, outcomes[i]});
    std::vector<std::uint64_t> kept;
    for (const StudyOption& option : trade_off.options()) kept.push_back(option.index);
    EXPECT_EQ(kept, (std::vector<std::uint64_t>{1, 0, 4}));
    EXPECT_TRUE(trade_off.holds(outcomes[0]));
    EXPECT_FALSE(trade_off.holds(outcomes[2]));
    EXPECT_FALSE(trade_off.holds(outcomes[3]));
}

TEST(Cloud, HasABoundedNumberOfPlacesHoweverManyOptionsThereAre)
{
    Cloud cloud(Merit::life);
    for (int i = 0; i < 200; ++i)
        for (int k = 0; k < 100; ++k) cloud.add(judged_as(0.5, 1 + 0.01 * i, std::pow(1.1, k)), 1);
    const auto places = cloud.places();
    EXPECT_LE(places.size(), 1500U);
    EXPECT_GT(places.size(), 300U);
    double lightest = 9, heaviest = 0;
    for (const TradeOffChart::Place& place : places)
    {
        lightest = std::min(lightest, place.mass_kg);
        heaviest = std::max(heaviest, place.mass_kg);
    }
    EXPECT_NEAR(lightest, 1, 0.05);
    EXPECT_NEAR(heaviest, 2.99, 0.1);
}

UtilisationChart changing_site()
{
    UtilisationChart chart{{"a.toml", 1, 1, {}, {}}, "sleeve.length", "sleeve.wall", {}};
    chart.lines.push_back({"6 mm",
                           {{60, "60 mm", judged_as(1.3, 1, 1, "root.left")},
                            {80, "80 mm", judged_as(1.1, 1, 1, "root.left")},
                            {100, "100 mm", judged_as(0.8, 1, 1, "bar-toe.left")}}});
    return chart;
}

TEST(UtilisationSheet, TagsTheGoverningSiteWhereALineBeginsAndWhereItChanges)
{
    const Sheet sheet = utilisation_sheet(changing_site(), width_of);
    EXPECT_EQ(count_of(sheet, "root.left"), 1);
    EXPECT_EQ(count_of(sheet, "bar-toe.left"), 1);
    EXPECT_EQ(count_of(sheet, "1"), 2);  // on the line and in the key
    EXPECT_EQ(count_of(sheet, "2"), 2);
    EXPECT_EQ(count_of(sheet, "0 %"), 1);
    EXPECT_EQ(count_of(sheet, "-0 %"), 0);
    EXPECT_EQ(count_of(sheet, "100 %"), 1);
    for (const char* tick : {"60 mm", "80 mm", "100 mm"}) EXPECT_EQ(count_of(sheet, tick), 1) << tick;
}

// A line under another one is not seen, and two tags on one place are one too many.
TEST(UtilisationSheet, NamesTheLineThatAnEqualOneStandsFor)
{
    UtilisationChart chart = changing_site();
    chart.line_key = "sleeve.wall";
    chart.lines.front().name = "4 mm";
    const Sheet alone = utilisation_sheet(chart, width_of);
    chart.lines.push_back(chart.lines.front());
    chart.lines.back().name = "5 mm";
    const Sheet sheet = utilisation_sheet(chart, width_of);
    EXPECT_EQ(count_of(sheet, "5 mm: as 4 mm"), 1);
    EXPECT_EQ(count_of(sheet, "1"), count_of(alone, "1"));
    chart.lines.back().points.back().outcome.utilisation *= 1.1;
    EXPECT_EQ(count_of(utilisation_sheet(chart, width_of), "5 mm"), 1);
}

TEST(UtilisationSheet, AsksForTheReserve)
{
    UtilisationChart chart = changing_site();
    chart.origin.reserve = 1.25;
    EXPECT_EQ(count_of(utilisation_sheet(chart, width_of), "80 %"), 1);
}

TEST(HeatMapSheet, PartsWhatPassesFromWhatDoesNotAndLeavesInvalidPairsGrey)
{
    OptionOutcome invalid;
    invalid.end = OptionEnd::invalid;
    const HeatMap map{{"a.toml", 1, 1, {}, {}},
                      "x",
                      "y",
                      {"1 mm", "2 mm"},
                      {"3 mm", "4 mm"},
                      {judged_as(0.5, 1, 1), judged_as(1.5, 1, 1), invalid, judged_as(0.7, 1, 1)}};
    const Sheet sheet = heat_map_sheet(map, width_of);
    for (const char* words : {"50 %", "150 %", "70 %", "invalid"}) EXPECT_EQ(count_of(sheet, words), 1) << words;
    const auto thick =
        std::count_if(sheet.fill.begin(), sheet.fill.end(), [](const Fill& fill) { return fill.colour.blue == 0.62; });
    EXPECT_EQ(thick, 2);  // beside and above the pair that fails
}

TEST(HeatMapSheet, KeepsLongNamesOnTheSheet)
{
    const HeatMap map{{"a.toml", 1, 1, {}, {}},
                      "x",
                      "left.material",
                      {"1 mm"},
                      {"42CrMo4 +QT 16-40", "42CrMo4 +QT 40-100", "a steel with a name of its own that goes on and on"},
                      {judged_as(0.5, 1, 1), judged_as(0.6, 1, 1), judged_as(0.7, 1, 1)}};
    const Sheet sheet = heat_map_sheet(map, width_of);
    for (const Text& text : sheet.text) EXPECT_GE(box_of(text, width_of).left, 0) << text.words;
    for (const char* words : {"42CrMo4 +QT 16-40", "42CrMo4 +QT 40-100"}) EXPECT_EQ(count_of(sheet, words), 1) << words;
}

TEST(SheetSvg, HoldsEveryTextOnceAndEscapesIt)
{
    UtilisationChart chart = changing_site();
    chart.origin.case_file = "<script>alert(1)</script>&.toml";
    const Sheet sheet = utilisation_sheet(chart, width_of);
    const std::string svg = sheet_svg(sheet);
    EXPECT_EQ(svg.find("<script"), std::string::npos);
    EXPECT_NE(svg.find("&lt;script&gt;"), std::string::npos);
    std::size_t n_texts = 0;
    for (std::size_t at = svg.find("<text"); at != std::string::npos; at = svg.find("<text", at + 1)) ++n_texts;
    EXPECT_EQ(n_texts, sheet.text.size());
}

TEST(Percent, HasNoExponentAndNoMinusBeforeZero)
{
    EXPECT_EQ(percent(13.27, 3), "1327 %");
    EXPECT_EQ(percent(-0.0, 3), "0 %");
    EXPECT_EQ(percent(0.9368, 3), "93.7 %");
}

TEST(ToleranceChart, HasARowForEachToleranceTheOneThatMovesMostOnTop)
{
    ToleranceAnswer answer;
    answer.nominal = judged_as(0.6, 5, 1);
    answer.effects = {{"sleeve.length", "83 mm", "85 mm", judged_as(0.61, 5, 1), judged_as(0.59, 5, 1)},
                      {"sleeve.weld.leg", "5 mm", "7 mm", judged_as(0.9, 5, 1), judged_as(0.5, 5, 1)},
                      {"left.section[1].diameter", "27 mm", "29 mm", {}, judged_as(0.62, 5, 1)}};
    const Sheet sheet = tolerance_sheet(answer, "a.toml", 1, width_of);
    const auto row_of = [&](const std::string& words)
    {
        const auto found =
            std::find_if(sheet.text.begin(), sheet.text.end(), [&](const Text& text) { return text.words == words; });
        return found == sheet.text.end() ? 0 : found->at.y();
    };
    EXPECT_GT(row_of("sleeve.weld.leg"), row_of("left.section[1].diameter"));
    EXPECT_GT(row_of("left.section[1].diameter"), row_of("sleeve.length"));
    EXPECT_GT(row_of("sleeve.length"), 0);
    EXPECT_GT(row_of("27 mm: not judged; 29 mm: 62 %"), 0);
    for (std::size_t a = 0; a < sheet.text.size(); ++a)
        for (std::size_t b = 0; b < a; ++b)
            EXPECT_FALSE(overlap(box_of(sheet.text[a], width_of), box_of(sheet.text[b], width_of)))
                << sheet.text[a].words << " lies on " << sheet.text[b].words;
}

}  // namespace
}  // namespace splicewright
