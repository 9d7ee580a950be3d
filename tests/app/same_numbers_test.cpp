// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "tests/app/program.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;
using Json = nlohmann::json;

const std::string metric = R"(title = "twin"
[left]
material = "C45 +QT"
[[left.section]]
length = "177.8 mm"
diameter = "28.575 mm"
[right]
material = "C45 +QT"
[[right.section]]
length = "203.2 mm"
diameter = "27.94 mm"
[joint]
penetration = "9.525 mm"
blend = "3.81 mm"
[sleeve]
material = "E355 tube +N"
length = "83.82 mm"
outer_diameter = "41.275 mm"
clearance = "0.0254 mm"
[sleeve.weld]
leg = "6.35 mm"
[load]
peak_torque = "406.7453844973548 N*m"
bending = "40.67453844973548 N*m"
axial = "444.82216152605 N"
)";

// 1 in = 25.4 mm and 1 lbf = 4.4482216152605 N, exact; so 1 lbf*ft = 1.3558179483314004 N*m.
const std::string inch = R"(title = "twin"
[left]
material = "C45 +QT"
[[left.section]]
length = "7 in"
diameter = "1.125 in"
[right]
material = "C45 +QT"
[[right.section]]
length = "8 in"
diameter = "1.1 in"
[joint]
penetration = "3/8 in"
blend = "0.15 in"
[sleeve]
material = "E355 tube +N"
length = "3.3 in"
outer_diameter = "1 5/8 in"
clearance = "1 thou"
[sleeve.weld]
leg = "1/4 in"
[load]
peak_torque = "300 lbf*ft"
bending = "30 lbf*ft"
axial = "100 lbf"
)";

Json result_of(const fs::path& here, const std::string& name, const std::string& text)
{
    write_file(here / (name + ".toml"), text);
    const Ended ended = program({"check", name + ".toml", "--json"}, {here, {}, {}});
    Json result = Json::parse(ended.out, nullptr, false);
    EXPECT_FALSE(result.is_discarded()) << ended.err;
    return result;
}

void erase_worked(Json& checks)
{
    for (Json& check : checks) check.erase("worked");
}

// What may differ between two runs: how long they took, and the digits of numbers put into formulas as text, some of
// which are round-off alone.
Json comparable(Json result)
{
    result["evidence"].erase("seconds");
    erase_worked(result["checks"]);
    for (Json& scenario : result["what_if"])
    {
        scenario["evidence"].erase("seconds");
        erase_worked(scenario["checks"]);
    }
    return result;
}

// Differences of two nearly equal numbers, which magnify the last digits of both.
bool is_difference(const std::string& path)
{
    for (const char* part : {"error", "residual", "imbalance", "difference"})
        if (path.find(part) != std::string::npos) return true;
    return false;
}

void expect_same_leaf(const Json& first, const Json& second, const std::string& path)
{
    if (!first.is_number_float())
    {
        EXPECT_EQ(first, second) << path;
        return;
    }
    if (is_difference(path)) return;
    // Conversion rounds in the 16th digit, and the mesher moves its points by up to 1e-10 of their place for that.
    // Stresses follow the points; a hundred times that leaves room for other machines.
    constexpr double same_by_mesh = 1e-8;
    constexpr double zero = 1e-9;  // MPa, share or mm: a weld without load carries what round-off leaves
    const double a = first.get<double>(), b = second.get<double>();
    EXPECT_NEAR(a, b, same_by_mesh * std::max(std::abs(a), std::abs(b)) + zero) << path;
}

void expect_same_numbers(const Json& first, const Json& second)
{
    const Json flat_first = first.flatten(), flat_second = second.flatten();
    ASSERT_EQ(flat_first.size(), flat_second.size());
    for (const auto& item : flat_first.items())
    {
        ASSERT_TRUE(flat_second.contains(item.key())) << item.key();
        expect_same_leaf(item.value(), flat_second[item.key()], item.key());
    }
}

TEST(SameNumbers, InchAndMetricTwinsAgree)
{
    const TemporaryFolder here;
    Json first = comparable(result_of(here.path(), "metric", metric)),
         second = comparable(result_of(here.path(), "inch", inch));
    for (Json* result : {&first, &second}) result->erase("case_text");
    expect_same_numbers(first, second);
}

TEST(SameNumbers, TwoRunsDifferOnlyInTheirSeconds)
{
    const TemporaryFolder here;
    const Json first = comparable(result_of(here.path(), "a", metric)),
               second = comparable(result_of(here.path(), "a", metric));
    EXPECT_EQ(first.dump(), second.dump());
}

TEST(SameNumbers, APathWithSpacesAndOtherLettersWorks)
{
    const TemporaryFolder here;
    const fs::path folder = here.path() / "Welle \xC3\xB6stlich \xE8\xBD\xB4";
    fs::create_directory(folder);
    write_file(folder / "a b \xC3\xA9.toml", plain_bar_text("letters", "50 N*m"));
    const Ended ended = program({"check", (folder / "a b \xC3\xA9.toml").string()}, {folder, {}, {}});
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_TRUE(fs::exists(folder / "a b \xC3\xA9-result" / "result.json"));
}

}  // namespace
}  // namespace splicewright
