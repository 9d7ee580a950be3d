// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "tests/app/program.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

using Json = nlohmann::json;
using Words = std::vector<std::string>;

// Quick to judge, and one of the six options is no case: a bore that leaves too little wall.
const Words six_options{
    "compare",    "a.toml", "--vary", "left.section[1].diameter=30mm..34mm:3", "--vary", "left.bore=10mm,26mm",
    "--accuracy", "5"};

Ended compared(const fs::path& here, const Words& more, const Words& options = six_options)
{
    if (!fs::exists(here / "a.toml")) write_file(here / "a.toml", plain_bar_text("a bar", "400 N*m"));
    Words words = options;
    words.insert(words.end(), more.begin(), more.end());
    Surroundings around;
    around.folder = here;
    return program(words, around);
}

TEST(Compare, WritesTheSameFilesForAnyNumberOfWorkersAndShards)
{
    const TemporaryFolder here;
    const Ended one = compared(here.path(), {"--workers", "1", "--store", "1", "--out", "one"});
    ASSERT_EQ(one.status, 0) << one.err;
    ASSERT_EQ(compared(here.path(), {"--workers", "2", "--store", "2", "--out", "two"}).status, 0);
    for (const char* shard : {"1/2", "2/2"})
        ASSERT_EQ(compared(here.path(), {"--shard", shard, "--store", fs::path(shard).filename().string() + shard[0],
                                         "--out", "never"})
                      .status,
                  0);
    EXPECT_FALSE(fs::exists(here.path() / "never"));
    const Ended merged = compared(here.path(), {}, {"merge", "21", "22", "--store", "all"});
    ASSERT_EQ(merged.status, 0) << merged.err;
    const Ended from_shards = compared(here.path(), {"--store", "all", "--out", "three"});
    ASSERT_EQ(from_shards.status, 0) << from_shards.err;
    EXPECT_NE(from_shards.err.find("0 computed, 6 known before"), std::string::npos) << from_shards.err;

    const auto files = folder_bytes(here.path() / "one");
    for (const char* name : {"options.csv", "options.json", "ranking.txt", "case.toml", "utilisation.svg",
                             "trade-off.svg", "heat-map.svg"})
        EXPECT_TRUE(files.contains(name)) << name;
    EXPECT_NE(files.at("report.html").find("Recommended: option"), std::string::npos);
    EXPECT_EQ(files.at("report.html").find("<script"), std::string::npos);
    // The recommended option is marked for its trade-off as well: that is no failure.
    EXPECT_EQ(files.at("report.html").find(">NO<"), std::string::npos);
    std::size_t n_charts = 0;
    for (std::size_t at = 0; (at = files.at("report.html").find("data:image/svg+xml", at)) != std::string::npos; ++at)
        ++n_charts;
    EXPECT_EQ(n_charts, 3U);
    EXPECT_EQ(folder_bytes(here.path() / "two"), files);
    EXPECT_EQ(folder_bytes(here.path() / "three"), files);
    const auto recommended = folder_bytes(here.path() / "one" / "recommended");
    EXPECT_EQ(folder_bytes(here.path() / "three" / "recommended").at("report.html"), recommended.at("report.html"));
    EXPECT_EQ(one.out, files.at("ranking.txt"));
    EXPECT_EQ(from_shards.out, one.out);
}

// What check writes about the option that is recommended; its case is that option and can be checked again.
TEST(Compare, TheRecommendedOptionHasItsFullReport)
{
    const TemporaryFolder here;
    const Ended ended = compared(here.path(), {"--out", "out"});
    ASSERT_EQ(ended.status, 0) << ended.err;
    const auto study = folder_bytes(here.path() / "out"), full = folder_bytes(here.path() / "out" / "recommended");
    EXPECT_NE(study.at("report.html").find("href=\"recommended/report.html\""), std::string::npos);
    EXPECT_NE(ended.err.find("recommended/report.html"), std::string::npos) << ended.err;
    const std::string& text = study.at("ranking.txt");
    const std::string mark = "Recommended: option ";
    const std::string number = text.substr(text.find(mark) + mark.size(), 1);
    const Json result = Json::parse(full.at("result.json"));
    EXPECT_EQ(result["title"], "a bar, option " + number);
    EXPECT_TRUE(result["verdict"]["passes"].get<bool>());
    // The first row of the page is that option, and it passes.
    const std::string& page = study.at("report.html");
    const std::string row = page.substr(page.find("<tr role=\"row\" class=\"row\">", page.find("id=\"options\"")), 900);
    EXPECT_NE(row.find(">" + number + "<"), std::string::npos) << row;
    EXPECT_NE(row.find("data-head=\"passes\">yes"), std::string::npos) << row;
    const Json options = Json::parse(study.at("options.json"));
    const Json& option = options["options"][static_cast<std::size_t>(std::stoi(number) - 1)];
    EXPECT_NEAR(result["verdict"]["utilisation"].get<double>(), option["utilisation"].get<double>(), 1e-5);
    write_file(here.path() / "again.toml", full.at("case.toml"));
    const Ended again = compared(here.path(), {}, {"check", "again.toml", "--accuracy", "5"});
    EXPECT_EQ(again.status, 0) << again.err;
}

TEST(Compare, WithoutAPassingOptionThereIsNoFullReport)
{
    const TemporaryFolder here;
    ASSERT_EQ(compared(here.path(), {"--out", "out", "--reserve", "10"}).status, 1);
    EXPECT_FALSE(fs::exists(here.path() / "out" / "recommended"));
    EXPECT_EQ(folder_bytes(here.path() / "out").at("report.html").find("recommended/"), std::string::npos);
}

TEST(Compare, JudgesASpliceAlikeInAnyOrder)
{
    const TemporaryFolder here;
    fs::copy_file(fs::path(SPLICEWRIGHT_SOURCE_DIR) / "cases" / "examples" / "hill-climb-rear-left.toml",
                  here.path() / "a.toml");
    const Words study{"compare", "a.toml", "--vary", "sleeve.length=70mm,84mm", "--accuracy", "5"};
    ASSERT_EQ(compared(here.path(), {"--workers", "1", "--store", "1", "--out", "one"}, study).status, 0);
    ASSERT_EQ(compared(here.path(), {"--shard", "2/2", "--store", "2"}, study).status, 0);
    const Ended rest = compared(here.path(), {"--workers", "2", "--store", "2", "--out", "two"}, study);
    EXPECT_NE(rest.err.find("1 computed, 1 known before"), std::string::npos) << rest.err;
    EXPECT_EQ(folder_bytes(here.path() / "two"), folder_bytes(here.path() / "one"));
}

TEST(Compare, ListsEveryOptionAndRecommendsTheLightestThatPasses)
{
    const TemporaryFolder here;
    const Ended ended = compared(here.path(), {});
    ASSERT_EQ(ended.status, 0) << ended.err;
    const auto files = folder_bytes(here.path() / "a-options");
    const Json json = Json::parse(files.at("options.json"));
    ASSERT_EQ(json["options"].size(), 6U);
    const Json* lightest = nullptr;
    for (const Json& option : json["options"])
    {
        EXPECT_EQ(option["end"] == "invalid",
                  option["values"]["left.bore"] == "26mm" && option["values"]["left.section[1].diameter"] != "34 mm")
            << option;
        if (option["end"] != "judged" || !option["passes"].get<bool>()) continue;
        if (lightest == nullptr || option["mass_kg"] < (*lightest)["mass_kg"]) lightest = &option;
    }
    ASSERT_NE(lightest, nullptr);
    EXPECT_EQ(json["recommended_option"], (*lightest)["option"]);
    EXPECT_EQ(std::count(files.at("options.csv").begin(), files.at("options.csv").end(), '\n'), 7);
    EXPECT_EQ(json["case_sha256"].get<std::string>().size(), 64U);
    EXPECT_NE(ended.out.find("Recommended: option"), std::string::npos) << ended.out;
    EXPECT_NE(ended.out.find("Not valid:"), std::string::npos) << ended.out;
}

TEST(Compare, ReadsTheStudyFromTheCase)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", plain_bar_text("a bar", "400 N*m") +
                                           "[compare]\n\"left.section[1].diameter\" = [\"30 mm\", \"32 mm\"]\n");
    const Ended ended = compared(here.path(), {}, {"compare", "a.toml", "--accuracy", "5"});
    ASSERT_EQ(ended.status, 0) << ended.err;
    EXPECT_EQ(Json::parse(file_bytes(here.path() / "a-options" / "options.json"))["options"].size(), 2U);
    EXPECT_EQ(compared(here.path(), {}, {"check", "a.toml", "--accuracy", "5"}).status, 0);
}

TEST(Compare, TellsByItsStatusHowItEnded)
{
    const TemporaryFolder here;
    const auto status = [&](const Words& more)
    {
        Words words{"compare", "a.toml", "--accuracy", "5"};
        words.insert(words.end(), more.begin(), more.end());
        return compared(here.path(), {}, words).status;
    };
    EXPECT_EQ(status({"--vary", "left.section[1].diameter=30mm"}), 0);
    EXPECT_EQ(status({"--vary", "left.section[1].diameter=30mm", "--reserve", "10"}), 1);
    EXPECT_EQ(status({"--vary", "left.section[1].diameter=12mm"}), 1);
    EXPECT_EQ(status({"--vary", "left.bore=29.5mm,29.6mm"}), 2);  // no option is a case
    EXPECT_EQ(status({"--vary", "left.section[1].diameter=30"}), 2);
    EXPECT_EQ(status({"--vary", "left.section[1].diameter=30mm", "--shard", "3/2"}), 2);
    EXPECT_EQ(status({}), 2);
    EXPECT_EQ(status({"--vary", "left.section[1].diameter=30.5mm", "--seconds", "0.001"}), 3);
}

TEST(Compare, TellsItsProgressInLinesWhereThereIsNoTerminal)
{
    const TemporaryFolder here;
    const Ended ended = compared(here.path(), {});
    EXPECT_NE(ended.err.find("6 options"), std::string::npos);
    EXPECT_NE(ended.err.find("100 % 6 of 6 options"), std::string::npos) << ended.err;
    EXPECT_EQ(ended.err.find('\r'), std::string::npos);
}

}  // namespace
}  // namespace splicewright
