// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <nlohmann/json.hpp>

#include "tests/app/program.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

using Json = nlohmann::json;

Ended searched(const fs::path& here, const std::string& range, const std::string& target,
               const std::vector<std::string>& more = {})
{
    write_file(here / "a.toml", plain_bar_text("a bar", "400 N*m"));
    std::vector<std::string> words{"compare",
                                   "a.toml",
                                   "--accuracy",
                                   "5",
                                   "--vary",
                                   "left.section[1].diameter=" + range,
                                   "--find",
                                   "left.section[1].diameter",
                                   "--target-utilisation",
                                   target};
    words.insert(words.end(), more.begin(), more.end());
    Surroundings around;
    around.folder = here;
    return program(words, around);
}

TEST(Find, MeetsTheDiameterThatTorsionGives)
{
    const TemporaryFolder here;
    const Ended ended = searched(here.path(), "20mm..40mm:3", "0.5", {"--tolerance", "0.05 mm"});
    ASSERT_EQ(ended.status, 0) << ended.err;
    const Json json = Json::parse(file_bytes(here.path() / "a-options" / "options.json"));
    // The stress of a round bar in torsion falls with the cube of its diameter.
    const double at_30 = json["options"][1]["utilisation"];
    const double expected = 30 * std::cbrt(at_30 / 0.5);
    const std::string head = "left.section[1].diameter = ";
    const std::size_t at = ended.out.rfind(head);
    ASSERT_NE(at, std::string::npos) << ended.out;
    const double found = std::strtod(ended.out.c_str() + at + head.size(), nullptr);
    EXPECT_GE(found, expected - 0.03);  // it may be the safe end of 0.05 mm; error bars of 0.1 % move it by 0.01 mm
    EXPECT_LE(found, expected + 0.08);
    EXPECT_NE(ended.out.find("just meets 50 %"), std::string::npos) << ended.out;
}

TEST(Find, SaysWhenNoValueMeetsTheTarget)
{
    const TemporaryFolder here;
    const Ended above = searched(here.path(), "30mm..40mm:2", "0.05");
    EXPECT_NE(above.out.find("all are above it"), std::string::npos) << above.out << above.err;
    const Ended below = searched(here.path(), "30mm..40mm:2", "0.9");
    EXPECT_NE(below.out.find("all are below it"), std::string::npos) << below.out << below.err;
}

TEST(Find, RefusesWhatItCannotSearch)
{
    const TemporaryFolder here;
    EXPECT_EQ(searched(here.path(), "30mm", "0.5").status, 2);
    EXPECT_EQ(searched(here.path(), "30mm..40mm:2", "0.5", {"--tolerance", "1"}).status, 2);
    EXPECT_EQ(searched(here.path(), "30mm..40mm:2", "0.5", {"--tolerance", "1e-6 mm"}).status, 2);
    EXPECT_EQ(searched(here.path(), "30mm..40mm:2", "0.5", {"--vary", "left.bore=0mm,8mm"}).status, 2);
}

}  // namespace
}  // namespace splicewright
