// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cctype>
#include <cmath>
#include <fstream>
#include <set>
#include <sstream>

#include "app/prove.h"
#include "post/validation_text.h"
#include "post/version.h"

namespace splicewright
{
namespace
{

const std::vector<CheckGroup>& groups()
{
    static const std::vector<CheckGroup> all = published_checks();
    return all;
}

std::vector<PublishedCheck> all_checks()
{
    std::vector<PublishedCheck> checks;
    for (const CheckGroup& group : groups()) checks.insert(checks.end(), group.checks.begin(), group.checks.end());
    return checks;
}

std::vector<std::string> keys_in(const std::string& source)
{
    std::vector<std::string> keys;
    for (std::size_t open = source.find('['); open != std::string::npos; open = source.find('[', open + 1))
        keys.push_back(source.substr(open + 1, source.find(']', open) - open - 1));
    return keys;
}

std::string document()
{
    std::ifstream file(std::string(SPLICEWRIGHT_SOURCE_DIR) + "/docs/validation.md");
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

class Published : public testing::TestWithParam<std::size_t>
{
};

TEST_P(Published, NumbersComeOutWithinWhatTheirSourceDeserves)
{
    for (const ProvenCheck& row : proven(groups()[GetParam()]))
        EXPECT_TRUE(row.agrees()) << row.check.name << ": " << row.check.claim << "\n  computed " << row.computed
                                  << ", published " << row.check.expected << " " << row.check.unit << ", off by "
                                  << difference_text(row) << ", allowed " << allowed_text(row.check) << " ("
                                  << row.check.allowed.reason << ")\n  " << row.check.source << " "
                                  << row.why_not_computed;
}

std::string letters_of(const testing::TestParamInfo<std::size_t>& info)
{
    std::string name;
    for (const char c : groups()[info.index].name) name += std::isalnum(static_cast<unsigned char>(c)) != 0 ? c : 'x';
    return name;
}

INSTANTIATE_TEST_SUITE_P(By, Published, testing::Range(std::size_t{0}, groups().size()), letters_of);

TEST(PublishedChecks, AreManyAndFromManyDocuments)
{
    std::set<std::string> keys;
    for (const PublishedCheck& check : all_checks())
        for (const std::string& key : keys_in(check.source)) keys.insert(key);
    EXPECT_GE(all_checks().size(), 60U);
    EXPECT_GE(keys.size(), 15U);
}

TEST(PublishedChecks, HaveNamesOfTheirOwn)
{
    std::set<std::string> names;
    for (const PublishedCheck& check : all_checks()) EXPECT_TRUE(names.insert(check.name).second) << check.name;
}

TEST(PublishedChecks, SayWhereTheyComeFromAndWhyTheyMayDiffer)
{
    for (const PublishedCheck& check : all_checks())
    {
        const bool is_derived = check.source.find("derived") != std::string::npos;
        EXPECT_TRUE(is_derived || !keys_in(check.source).empty() || check.kind == SourceKind::exact_theory)
            << check.name;
        EXPECT_FALSE(check.claim.empty() || check.allowed.reason.empty()) << check.name;
        EXPECT_TRUE(std::isfinite(check.expected)) << check.name;
        EXPECT_LT(check.allowed.low, check.allowed.high) << check.name;
    }
}

// A band as wide as the number itself would let anything through; zeros are allowed a share of their scale.
TEST(PublishedChecks, AreNeverAllowedAFifthOfTheirValue)
{
    for (const PublishedCheck& check : all_checks())
    {
        if (check.allowed.kind == ToleranceKind::negligible_against) continue;
        EXPECT_LT(check.allowed.high - check.allowed.low, 0.4 * std::abs(check.expected)) << check.name;
    }
}

TEST(Prove, RunsTheChecksWhoseNameBeginsSo)
{
    std::vector<std::string> seen;
    const std::vector<ProvenCheck> rows =
        prove(groups(), "rainflow.range", [&](const ProvenCheck& row) { seen.push_back(row.check.name); });
    ASSERT_EQ(rows.size(), 5U);
    EXPECT_EQ(seen.front(), "rainflow.range3");
    EXPECT_TRUE(prove(groups(), "no such check", [](const ProvenCheck&) {}).empty());
}

// The digits may differ between machines and libraries in their last place; names, sources and allowances may not.
TEST(ValidationDocument, HoldsEveryCheckOfThisVersion)
{
    const std::string text = document();
    EXPECT_NE(text.find(std::string("version ") + version() + ";"), std::string::npos);
    for (const PublishedCheck& check : all_checks())
    {
        const std::size_t at = text.find("| `" + check.name + "` |");
        ASSERT_NE(at, std::string::npos) << check.name << ": run splicewright prove --write docs/validation.md";
        const std::string line = text.substr(at, text.find('\n', at) - at);
        for (const std::string& part : {check.claim, check.source, check.allowed.reason, allowed_text(check)})
            EXPECT_NE(line.find(part), std::string::npos) << check.name << " without " << part;
        EXPECT_EQ(line.find("missed"), std::string::npos) << line;
    }
    std::size_t lines = 0;
    for (std::size_t at = text.find("\n| `"); at != std::string::npos; at = text.find("\n| `", at + 1)) ++lines;
    EXPECT_EQ(lines, all_checks().size());
}

}  // namespace
}  // namespace splicewright
