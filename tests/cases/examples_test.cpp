// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>

#include "cases/known_keys.h"
#include "cases/materials.h"
#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

std::vector<std::string> example_names()
{
    std::vector<std::string> names;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(SPLICEWRIGHT_SOURCE_DIR) + "/cases/examples"))
        if (entry.path().extension() == ".toml") names.push_back("cases/examples/" + entry.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
}

TEST(Cases, EveryShippedCaseParses)
{
    EXPECT_GE(example_names().size(), 4U);
    for (const std::string& name : example_names())
    {
        const Result<Case> read = read_case_file(std::string(SPLICEWRIGHT_SOURCE_DIR) + "/" + name);
        EXPECT_TRUE(read.has_value()) << name << ": " << to_string(read.problems().front());
    }
}

TEST(Cases, EveryShippedCaseSaysThatItIsInvented)
{
    for (const std::string& name : example_names())
    {
        EXPECT_NE(file_text(name).find("Invented example"), std::string::npos) << name;
        const Result<Case> read = read_case_file(std::string(SPLICEWRIGHT_SOURCE_DIR) + "/" + name);
        EXPECT_NE(read.value().title.find("(invented)"), std::string::npos) << name;
    }
}

// Converted by different factors and written with other digits: equal to round-off of a few operations.
void expect_same(double first, double second, const std::string& what)
{
    EXPECT_NEAR(first, second, 1e-12 * std::max(std::abs(first), 1.0)) << what;
}

void expect_same(const Bar& first, const Bar& second)
{
    ASSERT_EQ(first.sections.size(), second.sections.size());
    ASSERT_EQ(first.grooves.size(), second.grooves.size());
    EXPECT_EQ(first.material.name, second.material.name);
    expect_same(first.bore.value(), second.bore.value(), "bore");
    for (std::size_t at = 0; at < first.sections.size(); ++at)
    {
        expect_same(first.sections[at].length.value(), second.sections[at].length.value(), "length");
        expect_same(first.sections[at].diameter.value(), second.sections[at].diameter.value(), "diameter");
        expect_same(first.sections[at].fillet.value(), second.sections[at].fillet.value(), "fillet");
    }
    for (std::size_t at = 0; at < first.grooves.size(); ++at)
    {
        expect_same(first.grooves[at].at.value(), second.grooves[at].at.value(), "at");
        expect_same(first.grooves[at].depth.value(), second.grooves[at].depth.value(), "depth");
        expect_same(first.grooves[at].radius.value(), second.grooves[at].radius.value(), "radius");
    }
}

TEST(Cases, InchesAndMillimetresGiveTheSameNumbers)
{
    const Case inch = accepted(file_text("cases/examples/buggy-inch.toml"));
    const Case metric = accepted(file_text("tests/cases/data/buggy-metric.toml"));
    for (const Side side : both_sides) expect_same(*inch.bar[index(side)], *metric.bar[index(side)]);
    expect_same(inch.joint->penetration->value(), metric.joint->penetration->value(), "penetration");
    expect_same(inch.joint->blend.value(), metric.joint->blend.value(), "blend");
    expect_same(inch.sleeve->length.value(), metric.sleeve->length.value(), "sleeve length");
    expect_same(inch.sleeve->outer_diameter.value(), metric.sleeve->outer_diameter.value(), "outer diameter");
    expect_same(inch.sleeve->end_diameter.value(), metric.sleeve->end_diameter.value(), "end diameter");
    for (const Side side : both_sides)
        expect_same(inch.sleeve->clearance[index(side)].value(), metric.sleeve->clearance[index(side)].value(),
                    "clearance");
    EXPECT_EQ(inch.sleeve->slit, metric.sleeve->slit);
    expect_same(inch.sleeve->weld.leg_on_bar.value(), metric.sleeve->weld.leg_on_bar.value(), "leg on bar");
    expect_same(inch.sleeve->weld.leg_on_sleeve.value(), metric.sleeve->weld.leg_on_sleeve.value(), "leg on sleeve");
    expect_same(inch.load.peak_torque.value(), metric.load.peak_torque.value(), "peak torque");
    expect_same(inch.load.running_torque.value(), metric.load.running_torque.value(), "running torque");
    expect_same(inch.load.peak_bending.value(), metric.load.peak_bending.value(), "peak bending");
    expect_same(inch.load.running_bending.value(), metric.load.running_bending.value(), "running bending");
    expect_same(inch.load.axial.value(), metric.load.axial.value(), "axial");
    expect_same(inch.load.speed.value(), metric.load.speed.value(), "speed");
    ASSERT_EQ(inch.load.blocks.size(), metric.load.blocks.size());
    expect_same(inch.load.blocks[0].low.value(), metric.load.blocks[0].low.value(), "block low");
    expect_same(inch.load.blocks[0].high.value(), metric.load.blocks[0].high.value(), "block high");
}

TEST(CaseFormatPage, NamesEveryKeyAndEveryMaterial)
{
    const std::string page = file_text("docs/case-format.md");
    for (const std::string& key : known_keys())
    {
        const std::string last = key.substr(key.rfind('.') + 1);
        EXPECT_NE(page.find("`" + last + "`"), std::string::npos) << key;
    }
    for (const LibraryMaterial& entry : material_library())
        EXPECT_NE(page.find("`" + entry.material.name + "`"), std::string::npos) << entry.material.name;
}

}  // namespace
}  // namespace splicewright
