// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <string_view>

#include "tests/house/rules.h"

namespace splicewright::house
{

namespace
{

// The rules on the project itself. That each rule can fail is shown in rules_test.cpp.

const std::filesystem::path root = SPLICEWRIGHT_SOURCE_DIR;

testing::AssertionResult holds(const Complaints& complaints)
{
    if (complaints.empty()) return testing::AssertionSuccess();
    return testing::AssertionFailure() << fmt::format("\n{}", fmt::join(complaints, "\n"));
}

}  // namespace

TEST(Tree, HoldsTheFilesThatTheRulesSpeakOf)
{
    const Files files = project_text(root);
    const auto has = [&](std::string_view path)
    { return std::ranges::any_of(files, [&](const TextFile& file) { return file.path == path; }); };
    EXPECT_TRUE(has("cases/quantity.h"));
    EXPECT_TRUE(has("docs/references.bib"));
    EXPECT_TRUE(has("tests/house/house_test.cpp"));
    EXPECT_TRUE(has("run"));
}

TEST(Layering, EachFloorIncludesOnlyFloorsToItsLeft) { EXPECT_TRUE(holds(floor_complaints(project_text(root)))); }

TEST(Layering, GmshAndVtkStayBehindTheirAdapters) { EXPECT_TRUE(holds(adapter_complaints(project_text(root)))); }

TEST(Citations, EveryCitedKeyHasAReference) { EXPECT_TRUE(holds(unknown_citation_complaints(project_text(root)))); }

TEST(Citations, EveryReferenceIsCited) { EXPECT_TRUE(holds(unused_reference_complaints(project_text(root)))); }

TEST(Layout, TopLevelHoldsWhatItShouldAndNothingElse) { EXPECT_TRUE(holds(top_level_complaints(project_paths(root)))); }

TEST(Layout, NoWordOnlyMakesSenseElsewhere) { EXPECT_TRUE(holds(foreign_word_complaints(project_text(root)))); }

TEST(SourceText, EveryFileStartsWithTheLicenceTag) { EXPECT_TRUE(holds(licence_tag_complaints(project_text(root)))); }

TEST(SourceText, NoFileIsTooLongForOneSubject) { EXPECT_TRUE(holds(length_complaints(project_text(root)))); }

TEST(SourceText, NothingIsLeftOpen) { EXPECT_TRUE(holds(left_open_complaints(project_text(root)))); }

TEST(SourceText, OnlyTheProgramPrints) { EXPECT_TRUE(holds(printing_complaints(project_text(root)))); }

TEST(SourceText, NoHeaderOpensANamespace) { EXPECT_TRUE(holds(using_namespace_complaints(project_text(root)))); }

TEST(SourceText, TestsAreNamedByClaims) { EXPECT_TRUE(holds(test_name_complaints(project_text(root)))); }

TEST(Documents, HoldOneSentencePerLine) { EXPECT_TRUE(holds(sentence_complaints(project_text(root)))); }

}  // namespace splicewright::house
