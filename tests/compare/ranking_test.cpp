// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "post/compare_ranking.h"
#include "post/compare_table.h"
#include "post/compare_text.h"
#include "post/number_words.h"

namespace splicewright
{
namespace
{

OptionOutcome judged_as(double utilisation, double mass_kg, const std::string& site = "bar.left")
{
    OptionOutcome outcome;
    outcome.end = OptionEnd::judged;
    outcome.passes = utilisation <= 1;
    outcome.site = site;
    outcome.check = "fatigue/" + site;
    outcome.utilisation = utilisation;
    outcome.error_pct = 0.5;
    outcome.strength = utilisation / 2;
    outcome.fatigue = utilisation;
    outcome.life = 2;
    outcome.mass_kg = mass_kg;
    outcome.twist_deg = 1.5;
    return outcome;
}

std::vector<std::uint64_t> order(const Ranking& ranking)
{
    std::vector<std::uint64_t> indices;
    for (const StudyOption& option : ranking.best()) indices.push_back(option.index);
    return indices;
}

KeyLine line_of(const std::vector<double>& utilisations)
{
    KeyLine line{"sleeve.length", {}};
    double value = 60;
    for (const double utilisation : utilisations)
    {
        line.points.push_back({value, std::to_string(static_cast<int>(value)) + " mm", judged_as(utilisation, 1)});
        value += 10;
    }
    return line;
}

TEST(Ranking, PutsTheLightestThatPassFirstThenTheLeastUsed)
{
    Ranking ranking(1);
    ranking.add({0, {}, judged_as(0.9, 3)});
    ranking.add({1, {}, judged_as(1.4, 1)});
    ranking.add({2, {}, judged_as(0.5, 4)});
    ranking.add({3, {}, judged_as(1.1, 2)});
    ranking.add({4, {}, invalid_outcome({{"", 0, 0, "sleeve.length", "", "must be longer", ""}})});
    ranking.add({5, {}, judged_as(0.8, 3)});
    EXPECT_EQ(order(ranking), (std::vector<std::uint64_t>{5, 0, 2, 3, 1}));
    EXPECT_EQ(ranking.counts().passing, 3U);
    EXPECT_EQ(ranking.counts().not_passing, 2U);
    EXPECT_EQ(ranking.counts().invalid, 1U);
    EXPECT_EQ(ranking.examples().front().outcome.reason, "sleeve.length: must be longer.");
}

TEST(Ranking, AsksForItsReserve)
{
    Ranking ranking(1.5);
    ranking.add({0, {}, judged_as(0.7, 1)});   // 1.05 with the reserve
    ranking.add({1, {}, judged_as(0.65, 2)});  // 0.975
    EXPECT_EQ(order(ranking), (std::vector<std::uint64_t>{1, 0}));
    EXPECT_EQ(ranking.counts().passing, 1U);
}

TEST(Ranking, KeepsAFewHoweverManyThereAre)
{
    Ranking ranking(1, 3);
    for (std::uint64_t index = 0; index < 1000; ++index)
        ranking.add({index, {}, judged_as(0.5, 1000.0 - static_cast<double>(index))});
    EXPECT_EQ(order(ranking), (std::vector<std::uint64_t>{999, 998, 997}));
    EXPECT_EQ(ranking.counts().options, 1000U);
}

TEST(Ranking, SaysWhenNoKeyMovesWhatGoverns)
{
    const StudyOrigin origin{"a.toml", "00", 1, 1, {{"sleeve.length", {"\"60 mm\"", "\"31.33333333 mm\""}}}};
    Ranking unmoved(1), moved(1), elsewhere(1);
    unmoved.add({0, {"60 mm"}, judged_as(1.07, 3)});
    EXPECT_FALSE(unmoved.is_unmoved()) << "one option says nothing";
    unmoved.add({1, {"31.33333333 mm"}, judged_as(1.071, 2)});
    EXPECT_TRUE(unmoved.is_unmoved());
    const std::string text = compare_text(origin, unmoved, Merit::life, {line_of({1.07, 1.071})});
    const std::string flat = [](std::string lines)
    {
        for (std::size_t at = lines.find("\n  "); at != std::string::npos; at = lines.find("\n  "))
            lines.replace(at, 3, " ");
        return lines;
    }(text);
    EXPECT_NE(flat.find("governed by fatigue/bar.left: none of the varied keys moves it"), std::string::npos) << text;
    EXPECT_NE(flat.find("a place of the bar itself"), std::string::npos) << text;
    EXPECT_EQ(text.find("gains less"), std::string::npos) << text;
    EXPECT_NE(text.find("31.333 mm"), std::string::npos) << text;
    EXPECT_EQ(text.find("31.3333333"), std::string::npos) << text;
    moved.add({0, {"60 mm"}, judged_as(1.07, 3)});
    moved.add({1, {"70 mm"}, judged_as(1.02, 3)});
    EXPECT_FALSE(moved.is_unmoved());
    elsewhere.add({0, {"60 mm"}, judged_as(1.07, 3)});
    elsewhere.add({1, {"70 mm"}, judged_as(1.07, 3, "root.left")});
    EXPECT_FALSE(elsewhere.is_unmoved());
}

TEST(ShortValue, RoundsOnlyWhatIsLong)
{
    EXPECT_EQ(short_value("31.33333333 mm"), "31.333 mm");
    for (const char* kept : {"60 mm", "1 1/8 in", "0.0625 mm", "C45 +N", "full", "2000000"})
        EXPECT_EQ(short_value(kept), kept);
}

TEST(OptionOutcomeLine, ComesBackAsItWas)
{
    const OptionOutcome outcome = judged_as(0.84, 2.25, "bar-toe.right");
    const auto back = outcome_from_line(outcome_line(outcome));
    ASSERT_TRUE(back);
    EXPECT_EQ(outcome_line(*back), outcome_line(outcome));
    EXPECT_EQ(back->site, "bar-toe.right");
    EXPECT_EQ(back->life, 2.0);
    const auto failed = outcome_from_line(outcome_line(failed_outcome("no mesh")));
    EXPECT_EQ(failed->end, OptionEnd::failed);
    EXPECT_EQ(failed->reason, "no mesh");
    EXPECT_FALSE(outcome_from_line("{\"version\": 0}"));
    EXPECT_FALSE(outcome_from_line("{\"version\": 1, \"end\": \"judged\"}"));
    EXPECT_FALSE(outcome_from_line("nonsense"));
}

TEST(KeyLineText, SaysWhereMoreStopsHelping)
{
    // 0.502 is within 1 % of the least, 0.5.
    EXPECT_EQ(key_line_text(line_of({0.9, 0.7, 0.502, 0.5, 0.5})),
              "sleeve.length: more than 80 mm gains less than 1 % (50.2 % used, bar.left governs)");
    EXPECT_EQ(key_line_text(line_of({0.9, 0.7, 0.5})),
              "sleeve.length: more helps up to the largest value tried, 80 mm (50 % used, bar.left governs); at 60 mm "
              "it is 90 %");
    EXPECT_EQ(key_line_text(line_of({0.9, 0.5, 0.7})),
              "sleeve.length: 70 mm is best (50 % used, bar.left governs); more than 70 mm makes it worse, 70 % at 80 "
              "mm");
    EXPECT_EQ(key_line_text(line_of({0.9})), "");
}

TEST(CompareTables, QuoteCellsAndHoldEveryOption)
{
    const StudyOrigin origin{"a.toml", "00", 5, 1, {{"sleeve.material", {"\"A, B\"", "\"C\""}}}};
    EXPECT_EQ(csv_line({0, {"A, \"B\""}, failed_outcome("no, mesh")}, 1),
              "1,\"A, \"\"B\"\"\",failed,,,,,,,,,,,,,\"no, mesh\"\r\n");
    EXPECT_EQ(csv_line({1, {"C"}, judged_as(0.5, 2)}, 1),
              "2,C,judged,yes,bar.left,fatigue/bar.left,0.5,0.5,no,0.25,0.5,2,2,1.5,no,\r\n");
    const auto cells = [](const std::string& line) { return std::count(line.begin(), line.end(), ','); };
    EXPECT_EQ(cells(csv_head(origin)), cells(csv_line({1, {"C"}, judged_as(0.5, 2)}, 1)));

    Ranking ranking(1);
    std::string text = json_head(origin);
    for (std::uint64_t index = 0; index < 2; ++index)
    {
        const StudyOption option{index, {index == 0 ? "A, B" : "C"}, judged_as(0.5 + static_cast<double>(index), 2)};
        text += json_option(option, origin);
        ranking.add(option);
    }
    const nlohmann::json json = nlohmann::json::parse(text + json_tail(ranking, Merit::life));
    EXPECT_EQ(json["options"].size(), 2U);
    EXPECT_EQ(json["options"][1]["values"]["sleeve.material"], "C");
    EXPECT_EQ(json["options"][1]["passes"], false);
    EXPECT_EQ(json["recommended_option"], 1);
    EXPECT_EQ(json["counts"]["pass"], 1);
    EXPECT_EQ(json["varied"][0]["values"][0], "A, B");
}

TEST(CompareText, RecommendsTheLightestAndSaysWhenNonePasses)
{
    const StudyOrigin origin{"a.toml", "00", 5, 1, {{"sleeve.length", {"\"60 mm\"", "\"70 mm\""}}}};
    Ranking passing(1);
    passing.add({0, {"60 mm"}, judged_as(1.2, 1)});
    passing.add({1, {"70 mm"}, judged_as(0.8, 2)});
    const std::string text = compare_text(origin, passing, Merit::life, {});
    EXPECT_NE(text.find("a.toml: 2 options, 1 pass, 1 do not"), std::string::npos) << text;
    EXPECT_NE(text.find("Recommended: option 2, sleeve.length = 70 mm"), std::string::npos) << text;
    Ranking none(1);
    none.add({0, {"60 mm"}, judged_as(1.2, 1)});
    EXPECT_NE(compare_text(origin, none, Merit::life, {}).find("No option passes. The nearest is option 1"),
              std::string::npos);
    EXPECT_NE(compare_text(origin, Ranking(1), Merit::life, {}).find("No option could be judged."), std::string::npos);
}

}  // namespace
}  // namespace splicewright
