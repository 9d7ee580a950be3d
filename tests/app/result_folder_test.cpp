// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <chrono>
#include <nlohmann/json.hpp>
#include <random>
#include <set>

#include "tests/app/program.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

std::set<std::string> names_in(const fs::path& folder)
{
    std::set<std::string> names;
    for (const fs::directory_entry& entry : fs::directory_iterator(folder))
        names.insert(entry.path().filename().string());
    return names;
}

Ended checked(const fs::path& here, const std::string& text, const Surroundings& around = {})
{
    write_file(here / "a.toml", text);
    Surroundings there = around;
    there.folder = here;
    return program({"check", "a.toml", "--out", "result"}, there);
}

TEST(ResultFolder, HoldsTheCaseTheVerdictTheNumbersAndTheFields)
{
    const TemporaryFolder here;
    const std::string text = plain_bar_text("folder", "50 N*m");
    const Ended ended = checked(here.path(), text);
    ASSERT_EQ(ended.status, 0) << ended.err;
    const std::map<std::string, std::string> bytes = folder_bytes(here.path() / "result");
    ASSERT_TRUE(bytes.contains("case.toml") && bytes.contains("verdict.txt") && bytes.contains("result.json"));
    ASSERT_TRUE(bytes.contains("report.html") && bytes.contains("drawing.svg"));
    EXPECT_TRUE(bytes.at("report.html").starts_with("<!DOCTYPE html>") &&
                bytes.at("report.html").ends_with("</html>\n"));
    EXPECT_TRUE(bytes.at("drawing.svg").ends_with("</svg>"));
    EXPECT_EQ(bytes.at("case.toml"), text);
    EXPECT_EQ(nlohmann::json::parse(bytes.at("result.json"))["title"], "folder");
#ifdef SPLICEWRIGHT_PICTURES
    std::size_t n_fields = 0, n_pictures = 0;
    for (const auto& [name, content] : bytes)
    {
        EXPECT_FALSE(content.empty()) << name;
        n_fields += name.ends_with(".vtu") && content.find("</VTKFile>") != std::string::npos ? 1U : 0U;
        n_pictures += name.ends_with(".png") && content.find("IEND") != std::string::npos ? 1U : 0U;
    }
    EXPECT_EQ(n_fields, 2U);
    if (ended.err.find("No pictures") == std::string::npos)
    {
        EXPECT_GE(n_pictures, 2U);
    }
#endif
    EXPECT_EQ(names_in(here.path()), (std::set<std::string>{"a.toml", "result"}));
}

TEST(ResultFolder, WithoutABrowserThePdfIsMissedAndTheVerdictStays)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", plain_bar_text("pdf", "50 N*m"));
    const Ended ended = program({"check", "a.toml", "--out", "result", "--pdf"},
                                {here.path(), {{"SPLICEWRIGHT_BROWSER", "no-such-browser"}}, {}});
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_NE(ended.err.find("No PDF: no browser"), std::string::npos) << ended.err;
    EXPECT_NE(ended.err.find("open report.html in any browser and print it"), std::string::npos) << ended.err;
    EXPECT_FALSE(fs::exists(here.path() / "result" / "report.pdf"));
    EXPECT_TRUE(fs::exists(here.path() / "result" / "report.html"));
}

TEST(ResultFolder, ThePlaceOfThePdfIsTold)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", plain_bar_text("pdf", "50 N*m"));
    const fs::path browser = here.path() / "browser";
    write_file(browser,
               "#!/bin/sh\nfor word; do case $word in --print-to-pdf=*) echo page > \"${word#*=}\";; esac; done\n");
    fs::permissions(browser, fs::perms::owner_all);
    const Ended ended = program({"check", "a.toml", "--out", "result", "--pdf"},
                                {here.path(), {{"SPLICEWRIGHT_BROWSER", browser.string()}}, {}});
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_TRUE(fs::exists(here.path() / "result" / "report.pdf"));
    EXPECT_NE(ended.err.find((here.path() / "result" / "report.pdf").string()), std::string::npos) << ended.err;
}

// A browser that prints nothing and says that all is well.
TEST(ResultFolder, ABrowserThatPrintsNothingIsToldToo)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", plain_bar_text("pdf", "50 N*m"));
    const Ended ended =
        program({"check", "a.toml", "--out", "result", "--pdf"}, {here.path(), {{"SPLICEWRIGHT_BROWSER", "true"}}, {}});
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_NE(ended.err.find("could not print the page"), std::string::npos) << ended.err;
}

TEST(ResultFolder, AFolderThatHoldsSomethingElseIsLeftAlone)
{
    const TemporaryFolder here;
    fs::create_directory(here.path() / "result");
    write_file(here.path() / "result" / "thesis.txt", "ten years of work");
    const Ended ended = checked(here.path(), plain_bar_text("a", "50 N*m"));
    EXPECT_EQ(ended.status, 3);
    EXPECT_NE(ended.err.find("something else"), std::string::npos) << ended.err;
    EXPECT_EQ(folder_bytes(here.path() / "result"),
              (std::map<std::string, std::string>{{"thesis.txt", "ten years of work"}}));
}

TEST(ResultFolder, AFileInItsPlaceIsLeftAlone)
{
    const TemporaryFolder here;
    write_file(here.path() / "result", "mine");
    EXPECT_EQ(checked(here.path(), plain_bar_text("a", "50 N*m")).status, 3);
    EXPECT_EQ(file_bytes(here.path() / "result"), "mine");
}

TEST(ResultFolder, AnEarlierResultIsReplaced)
{
    const TemporaryFolder here;
    checked(here.path(), plain_bar_text("old", "50 N*m"));
    checked(here.path(), plain_bar_text("new", "50 N*m"));
    EXPECT_EQ(nlohmann::json::parse(file_bytes(here.path() / "result" / "result.json"))["title"], "new");
    EXPECT_EQ(names_in(here.path()), (std::set<std::string>{"a.toml", "result"}));
}

// A disk that takes no more bytes, at any of the files: too little for the first and too little for the last of them.
TEST(ResultFolder, AFullDiskIsToldAndTheEarlierResultStays)
{
    const TemporaryFolder here;
    ASSERT_EQ(checked(here.path(), plain_bar_text("old", "50 N*m")).status, 0);
    const auto before = folder_bytes(here.path() / "result");
    const rlim_t enough_for_half = before.at("result.json").size() / 2;
    for (const rlim_t limit : {rlim_t{0}, rlim_t{100}, enough_for_half})
    {
        const Ended ended = checked(here.path(), plain_bar_text("new", "50 N*m"), {{}, {}, limit});
        EXPECT_EQ(ended.status, 3) << limit << ": " << ended.err;
        EXPECT_NE(ended.err.find("The result could not be kept"), std::string::npos) << ended.err;
        EXPECT_NE(ended.out.find("PASSES"), std::string::npos) << "the verdict is not thrown away";
        EXPECT_TRUE(folder_bytes(here.path() / "result") == before) << limit;
        EXPECT_EQ(names_in(here.path()), (std::set<std::string>{"a.toml", "result"})) << limit;
    }
}

// Each file as it was, or all of the new ones.
void expect_whole(const fs::path& result, const std::map<std::string, std::string>& old)
{
    const std::map<std::string, std::string> found = folder_bytes(result);
    if (found == old) return;
    std::set<std::string> names, wanted;
    for (const auto& [name, content] : found) names.insert(name);
    for (const auto& [name, content] : old) wanted.insert(name);
    EXPECT_EQ(names, wanted);
    EXPECT_EQ(nlohmann::json::parse(found.at("result.json"), nullptr, false).value("title", "broken"), "new");
    for (const auto& [name, content] : found) EXPECT_FALSE(content.empty()) << name;
}

TEST(ResultFolder, StaysWholeWheneverTheProgramIsKilled)
{
    const TemporaryFolder here;
    ASSERT_EQ(checked(here.path(), plain_bar_text("old", "50 N*m")).status, 0);
    const auto old = folder_bytes(here.path() / "result");
    const TemporaryFolder elsewhere;
    const auto start = std::chrono::steady_clock::now();
    ASSERT_EQ(checked(elsewhere.path(), plain_bar_text("new", "50 N*m")).status, 0);
    const double whole_run = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();

    write_file(here.path() / "a.toml", plain_bar_text("new", "50 N*m"));
    std::mt19937_64 engine(20261125);
    int n_killed = 0;
    for (int i = 0; i < 12; ++i)
    {
        const double fraction = static_cast<double>(engine() >> 11U) * 0x1p-53;
        // Half of them near the end, where the folders change places.
        const double delay = whole_run * (i % 2 == 0 ? fraction : 0.8 + 0.2 * fraction);
        n_killed += killed_after(delay, {"check", "a.toml", "--out", "result"}, {here.path(), {}, {}}) ? 1 : 0;
        ASSERT_TRUE(fs::exists(here.path() / "result"));
        expect_whole(here.path() / "result", old);
    }
    EXPECT_GE(n_killed, 3) << "the machine was too fast or too slow for the delays";

    ASSERT_EQ(checked(here.path(), plain_bar_text("last", "50 N*m")).status, 0);
    EXPECT_EQ(names_in(here.path()), (std::set<std::string>{"a.toml", "result"})) << "left-overs stay";
}

}  // namespace
}  // namespace splicewright
