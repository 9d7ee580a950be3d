// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <array>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <utility>
#include <vector>

#include "app/check_splice.h"
#include "app/write_report.h"
#include "cases/read_case.h"
#include "post/verdict_text.h"
#include "tests/docs/documents.h"

namespace splicewright
{
namespace
{

constexpr const char* shown_example = "cases/examples/hill-climb-rear-left.toml";
constexpr std::array pictures{"section.png", "scenarios.png"};  // in docs/pictures, of the shown example
// section.png of cases/examples/solid-model/plug-welds.toml, made by hand: it takes minutes.
constexpr const char* solid_picture = "plug-welds.png";
constexpr double default_accuracy_pct = 1;        // of splicewright check
constexpr std::size_t largest_picture = 200'000;  // bytes, so that the page loads at once
constexpr const char* how_to_update =
    "Is the change wanted? SPLICEWRIGHT_UPDATE_DOCS=yes ./run test -R Readme.ShowsWhatTheProgramSays";

bool update_wanted()
{
    const char* wanted = std::getenv("SPLICEWRIGHT_UPDATE_DOCS");
    return wanted != nullptr && *wanted != '\0';
}

std::string replaced(std::string text, const std::string& old_part, const std::string& new_part)
{
    const std::size_t at = text.find(old_part);
    EXPECT_NE(at, std::string::npos) << old_part;
    return at == std::string::npos ? text : text.replace(at, old_part.size(), new_part);
}

// The case of the README with the mistakes that its text names.
std::string misspelled_case(const std::string& readme)
{
    const std::string text = replaced(block(readme, "case"), "diameter = \"27 mm\"", "diameter = 27");
    return replaced(text, "length = \"90 mm\"", "lenght = \"90 mm\"");
}

std::string misshapen_case(const std::string& readme)
{
    return replaced(block(readme, "case"), "leg = \"6 mm\"", "leg = \"16 mm\"");
}

std::string problem_lines(const std::string& text)
{
    const Result<Case> asked = read_case(text, "my-shaft.toml");
    std::string lines;
    if (!asked.has_value())
        for (const Problem& problem : asked.problems()) lines += fmt::format("{}\n", to_string(problem));
    return lines;
}

// Of the case to start from, with one line left out.
Report case_report(const std::string& readme, const std::string& without = "")
{
    std::string text = block(readme, "case");
    if (!without.empty())
    {
        const std::size_t at = text.find(without);
        EXPECT_NE(at, std::string::npos) << without;
        text.erase(at, text.find('\n', at) + 1 - at);
    }
    return check_splice(read_case(text, "my-shaft.toml").value(), {default_accuracy_pct});
}

std::string first_two_lines(const std::string& text)
{
    return text.substr(0, text.find('\n', text.find('\n') + 1) + 1);
}

void take_pictures(const Report& report)
{
    const WrittenReport written = write_report(report, "readme-result");
    ASSERT_EQ(written.why_no_pictures, "");
    for (const char* picture : pictures)
        std::filesystem::copy_file(fmt::format("readme-result/{}", picture),
                                   fmt::format("{}/docs/pictures/{}", SPLICEWRIGHT_SOURCE_DIR, picture),
                                   std::filesystem::copy_options::overwrite_existing);
}

TEST(Readme, ShowsWhatTheProgramSays)
{
    const Report report = check_splice(example_case(shown_example), {default_accuracy_pct});
    const std::vector<std::pair<std::string, std::string>> printed{
        {"problems", problem_lines(misspelled_case(document("README.md")))},
        {"shape-problems", problem_lines(misshapen_case(document("README.md")))},
        {"case-verdict", first_two_lines(verdict_text(case_report(document("README.md")), Emphasis::plain))},
        {"verdict", verdict_text(report, Emphasis::plain)}};
    if (update_wanted())
    {
        std::string readme = document("README.md");
        for (const auto& [name, text] : printed) readme = with_block(readme, name, text);
        write_document("README.md", readme);
        take_pictures(report);
    }
    for (const auto& [name, text] : printed) EXPECT_EQ(block(document("README.md"), name), text) << how_to_update;
}

TEST(Readme, CaseToStartFromIsAccepted)
{
    const Result<Case> asked = read_case(block(document("README.md"), "case"), "my-shaft.toml");
    ASSERT_TRUE(asked.has_value()) << problem_lines(block(document("README.md"), "case"));
    EXPECT_TRUE(asked.value().sleeve.has_value());
}

TEST(Readme, CaseToStartFromPassesOnlyWithTheRevolutionsThatItStates)
{
    const std::string readme = document("README.md");
    EXPECT_TRUE(case_report(readme).passes());
    EXPECT_FALSE(case_report(readme, "revolutions = ").passes());
    EXPECT_NE(readme.find("Without its line `revolutions` it does not pass"), std::string::npos);
}

TEST(Readme, NamesTheMistakesThatItShows)
{
    const std::string readme = document("README.md");
    for (const char* mistake : {"`diameter = 27`", "`lenght = \"90 mm\"`", "`leg = \"16 mm\"`"})
        EXPECT_NE(readme.find(mistake), std::string::npos) << mistake;
}

TEST(Readme, ExplainsEverySiteOfItsVerdict)
{
    const std::string around = with_block(document("README.md"), "verdict", "");
    const Report report = coarse_report(shown_example);
    for (const CheckRow& row : report.sound.checks)
    {
        const std::string kind = row.site.substr(0, row.site.find('.'));
        EXPECT_NE(around.find(kind), std::string::npos) << row.site;
    }
}

TEST(Readme, PicturesAreSmallPngs)
{
    std::vector<const char*> all(pictures.begin(), pictures.end());
    all.push_back(solid_picture);
    for (const char* picture : all)
    {
        const std::string bytes = document(fmt::format("docs/pictures/{}", picture));
        EXPECT_TRUE(bytes.starts_with("\x89PNG\r\n")) << picture;
        EXPECT_LT(bytes.size(), largest_picture) << picture;
    }
}

}  // namespace
}  // namespace splicewright
