// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/variation.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <map>
#include <set>
#include <stdexcept>

#include "cases/compare_table.h"
#include "cases/key_kinds.h"
#include "cases/known_keys.h"
#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

using Values = std::vector<std::string>;

Variation accepted_words(const std::string& words)
{
    const Result<Variation> read = variation_from_words(words);
    if (!read.has_value()) throw std::runtime_error(to_string(read.problems().front()));
    return read.value();
}

// The one problem of these words.
Problem refused_words(const std::string& words)
{
    const Result<Variation> read = variation_from_words(words);
    if (read.has_value()) throw std::runtime_error("was accepted: " + words);
    EXPECT_EQ(read.problems().size(), 1U) << words;
    return read.problems().front();
}

void expect_refused(const std::string& words, const std::string& rule, const std::string& fix)
{
    const Problem problem = refused_words(words);
    EXPECT_NE(problem.rule.find(rule), std::string::npos) << words << ": " << problem.rule;
    EXPECT_NE(problem.fix.find(fix), std::string::npos) << words << ": " << problem.fix;
}

std::string with_compare(const std::string& lines) { return sound_splice_text() + "[compare]\n" + lines + "\n"; }

TEST(Variation, TakesARangeWithBothOfItsEnds)
{
    const Variation read = accepted_words("sleeve.length=60mm..120mm:7");
    EXPECT_EQ(read.key, "sleeve.length");
    EXPECT_EQ(read.values,
              (Values{"\"60 mm\"", "\"70 mm\"", "\"80 mm\"", "\"90 mm\"", "\"100 mm\"", "\"110 mm\"", "\"120 mm\""}));
    EXPECT_EQ(accepted_words("sleeve.weld.leg = 8 mm .. 5 mm : 4").values,
              (Values{"\"8 mm\"", "\"7 mm\"", "\"6 mm\"", "\"5 mm\""}));
    EXPECT_EQ(accepted_words("load.revolutions=1e6..3e6:3").values, (Values{"1000000", "2000000", "3000000"}));
}

TEST(Variation, KeepsTheUnitOfTheFirstEndOfARange)
{
    // 50.8 mm = 2 in, exactly.
    EXPECT_EQ(accepted_words("sleeve.length=1in..50.8mm:3").values, (Values{"\"1 in\"", "\"1.5 in\"", "\"2 in\""}));
}

TEST(Variation, TakesListsOfQuantitiesNamesAndNumbers)
{
    EXPECT_EQ(accepted_words("sleeve.wall=4mm,6 mm,\"8 mm\"").values, (Values{"\"4mm\"", "\"6 mm\"", "\"8 mm\""}));
    EXPECT_EQ(accepted_words("sleeve.material=\"E355 tube +N\",4130 N tube").values,
              (Values{"\"E355 tube +N\"", "\"4130 N tube\""}));
    EXPECT_EQ(accepted_words("joint.penetration=full,9mm").values, (Values{"\"full\"", "\"9mm\""}));
    EXPECT_EQ(accepted_words("sleeve.weld.passes=1,2").values, (Values{"1", "2"}));
    EXPECT_EQ(accepted_words("left.section[2].diameter=24mm").key, "left.section[2].diameter");
}

TEST(Variation, RefusesWordsWithRuleAndFix)
{
    expect_refused("sleeve.lenght=60mm", "unknown key", "did you mean sleeve.length?");
    expect_refused("=60mm", "unknown key", "");
    expect_refused("sleeve.length", "has no values", "sleeve.length=60mm..120mm:7");
    expect_refused("sleeve=60mm", "is no single value", "vary a key in it");
    expect_refused("sleeve.length=60", "must be a length with its unit", "60 mm");
    expect_refused("sleeve.length=60 deg", "must be a length, not an angle", "... mm");
    expect_refused("sleeve.length=60mm..120mm", "must be the number of values, 2 to", "60 mm..120 mm:7");
    expect_refused("sleeve.length=60mm..120mm:1", "must be the number of values, 2 to", ":7");
    expect_refused("sleeve.length=60mm..60mm:2", "must differ from the other end", "one value");
    expect_refused("sleeve.length=60mm..120:3", "must be a length with its unit", "120 mm");
    expect_refused("sleeve.weld.passes=1.5", "must be a whole number", "2");
    expect_refused("load.revolutions=1e6 mm", "must be a plain number without unit", "1e6");
    expect_refused("sleeve.length=60mm,,80mm", "must not be empty", "remove it");
    expect_refused("sleeve.length=6 mm +- 1 mm..9mm:3", "no tolerance", "6 mm");
}

TEST(Variation, TellsEveryProblemOfOneKey)
{
    const Result<Variation> read = variation_from_words("sleeve.length=60,70 deg,80mm,parsec");
    ASSERT_FALSE(read.has_value());
    ASSERT_EQ(read.problems().size(), 3U);
    for (const Problem& problem : read.problems()) EXPECT_EQ(problem.field, "sleeve.length");
    EXPECT_EQ(read.problems()[0].value, "\"60\"");
    EXPECT_EQ(read.problems()[1].value, "\"70 deg\"");
}

TEST(Variation, NeedsAPlaceInTheCase)
{
    const auto misfit = [](const std::vector<Variation>& variations)
    {
        const std::vector<Problem> problems = misfit_problems(variations, sound_splice_text());
        return problems.size() == 1 ? to_string(problems.front()) : fmt::format("{} problems", problems.size());
    };
    EXPECT_EQ(misfit({{"left.section[2].diameter", {"\"24 mm\""}}, {"making.root_gap", {"\"2 mm\""}}}), "0 problems");
    EXPECT_NE(misfit({{"left.section[3].diameter", {"\"24 mm\""}}}).find("has no place"), std::string::npos);
    EXPECT_NE(misfit({{"left.section.diameter", {"\"24 mm\""}}}).find("Fix: left.section[1].diameter"),
              std::string::npos);
    EXPECT_NE(misfit({{"load.vehicle.grip", {"1"}}}).find("the case has no [load.vehicle]"), std::string::npos);
    EXPECT_NE(misfit({{"sleeve.length", {"\"84 mm\"", "\"84 mm\""}}}).find("twice"), std::string::npos);
    EXPECT_NE(misfit({{"sleeve.length", {"\"84 mm\""}}, {"sleeve.length", {"\"85 mm\""}}}).find("is given twice"),
              std::string::npos);
    EXPECT_NE(misfit({{"sleeve.wall", {"\"5 mm\""}}, {"sleeve.outer_diameter", {"\"42 mm\""}}})
                  .find("stands for the same thing as sleeve.wall"),
              std::string::npos);
    const Values many(most_values, "\"1 mm\"");
    EXPECT_NE(to_string(misfit_problems({{"sleeve.length", many}, {"left.bore", many}}, sound_splice_text()).back())
                  .find("options are more than"),
              std::string::npos);
}

TEST(Variation, CountsThroughEveryCombinationOnce)
{
    const std::vector<Variation> study{{"a", {"1", "2", "3"}}, {"b", {"1"}}, {"c", {"1", "2"}}};
    ASSERT_EQ(n_options(study), 6U);
    std::set<std::vector<std::size_t>> seen;
    for (std::uint64_t index = 0; index < 6; ++index)
    {
        const std::vector<std::size_t> choice = choice_at(study, index);
        EXPECT_EQ(index_of(study, choice), index);
        seen.insert(choice);
    }
    EXPECT_EQ(seen.size(), 6U);
    EXPECT_EQ(choice_at(study, 1), (std::vector<std::size_t>{0, 0, 1}));
    EXPECT_EQ(n_options({}), 1U);
}

TEST(CompareTable, HoldsRangesListsAndTexts)
{
    const std::string text = with_compare(
        "\"sleeve.length\" = [\"60 mm\", \"120 mm\", 3]\n"
        "sleeve.material = [\"E355 tube +N\", \"4130 N tube\"]\n"
        "\"sleeve.weld.passes\" = [1, 2, 3]\n"
        "\"load.revolutions\" = \"1e6..2e6:2\"\n"
        "\"joint.penetration\" = [\"full\", \"9 mm\"]");
    ASSERT_TRUE(messages(text).empty()) << messages(text).front();
    std::map<std::string, Values> values;
    for (const Variation& variation : stated_variations(text)) values[variation.key] = variation.values;
    EXPECT_EQ(values.at("sleeve.length"), (Values{"\"60 mm\"", "\"90 mm\"", "\"120 mm\""}));
    EXPECT_EQ(values.at("sleeve.material"), (Values{"\"E355 tube +N\"", "\"4130 N tube\""}));
    EXPECT_EQ(values.at("sleeve.weld.passes"), (Values{"1", "2", "3"}));
    EXPECT_EQ(values.at("load.revolutions"), (Values{"1000000", "2000000"}));
    EXPECT_EQ(values.at("joint.penetration"), (Values{"\"full\"", "\"9 mm\""}));
    EXPECT_TRUE(stated_variations(sound_splice_text()).empty());
}

TEST(CompareTable, TellsPlaceKeyValueRuleAndFix)
{
    expect_only_problem(with_compare("\"sleeve.lenght\" = [\"60 mm\"]"), "compare.sleeve.lenght", "unknown key",
                        "did you mean \"sleeve.length\"?");
    expect_only_problem(with_compare("slleve.length = [\"60 mm\"]"), "compare.slleve", "unknown key", "sleeve");
    expect_only_problem(with_compare("\"sleeve.length\" = [60, \"70 mm\"]"), "compare.sleeve.length",
                        "must be a length with its unit", "60 mm");
    expect_only_problem(with_compare("\"sleeve.length\" = []"), "compare.sleeve.length", "must be a list of 1 to",
                        "for a range");
    expect_only_problem(with_compare("\"sleeve.length\" = [\"60 mm\", \"70 mm\", 1]"), "compare.sleeve.length",
                        "must be the number of values", ":7");
    expect_only_problem(with_compare("\"left.section\" = [\"60 mm\"]"), "compare.left.section", "is no single value",
                        "vary a key in it");
    expect_only_problem(with_compare("\"left.section[9].length\" = [\"60 mm\"]"), "compare.left.section[9].length",
                        "has no place", "leave this key out");
    EXPECT_EQ(messages(with_compare("\"sleeve.length\" = [60]\n\"sleeve.wall\" = [\"5 deg\"]\nnonsense = 1")).size(),
              3U);
}

TEST(KeyKinds, KnowEveryKeyOfTheCaseFile)
{
    for (const std::string& key : known_keys()) EXPECT_TRUE(kind_of_key(key)) << key << ": add it to key_kinds.cpp";
    EXPECT_FALSE(kind_of_key("sleeve.colour"));
    EXPECT_EQ(kind_of_key("left.section[1].length")->dimension, Dimension::length);
}

}  // namespace
}  // namespace splicewright
