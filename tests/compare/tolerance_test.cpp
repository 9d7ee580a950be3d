// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>

#include "tests/app/program.h"

namespace splicewright
{
namespace
{

std::string toleranced_text(const std::string& diameter, const std::string& length)
{
    return "[left]\nmaterial = \"C45 +QT\"\n[[left.section]]\nlength = \"" + length + "\"\ndiameter = \"" + diameter +
           "\"\n[load]\npeak_torque = \"400 N*m\"\n";
}

Ended toleranced(const TemporaryFolder& here, const std::string& text)
{
    write_file(here.path() / "a.toml", text);
    Surroundings around;
    around.folder = here.path();
    return program({"compare", "a.toml", "--accuracy", "5", "--tolerances"}, around);
}

double number_behind(const std::string& text, const std::string& words)
{
    const std::size_t at = text.find(words);
    return at == std::string::npos ? 0 : std::strtod(text.c_str() + at + words.size(), nullptr);
}

TEST(Tolerances, FindTheEndAndTheCornerThatUseMost)
{
    const TemporaryFolder here;
    const Ended ended = toleranced(here, toleranced_text("30 mm +- 1 mm", "100 mm +- 5 mm"));
    ASSERT_EQ(ended.status, 0) << ended.err;
    // The stress of a round bar in torsion falls with the cube of its diameter and knows no length:
    // (30/29)^3 = 1.107, printed to two digits.
    EXPECT_NEAR(number_behind(ended.out, "left.section[1].diameter"), 11, 0.5) << ended.out;
    EXPECT_LT(ended.out.find("left.section[1].diameter"), ended.out.find("left.section[1].length")) << ended.out;
    EXPECT_NE(ended.out.find("left.section[1].diameter = 29 mm"), std::string::npos) << ended.out;
    EXPECT_NE(ended.out.find("Every corner was tried."), std::string::npos) << ended.out;
    EXPECT_NE(ended.out.find("Watch left.section[1].diameter.\n"), std::string::npos) << ended.out;
}

TEST(Tolerances, FailWhenTheWorstCornerDoes)
{
    const TemporaryFolder here;
    const Ended ended = toleranced(here, toleranced_text("21 mm +- 2 mm", "100 mm"));
    EXPECT_EQ(ended.status, 1) << ended.out << ended.err;
    EXPECT_NE(ended.out.find("Worst corner (DOES NOT PASS)"), std::string::npos) << ended.out;
}

// The stress of a round bar falls with the cube of its diameter, and the diameter is spread evenly over 4 mm: the share
// that passes is known, and evenly spread points miss it by a few parts in a hundred at most.
TEST(Tolerances, CountThePartsThatPassAsTheirDiameterTells)
{
    const TemporaryFolder here;
    const Ended ended = toleranced(here, toleranced_text("21 mm +- 2 mm", "100 mm +- 5 mm"));
    const double used = number_behind(ended.out, "As drawn ") / 100;
    ASSERT_GT(used, 0) << ended.out;
    const double share = (23 - 21 * std::cbrt(used)) / 4;
    ASSERT_GT(share, 0.1);
    ASSERT_LT(share, 0.9);
    EXPECT_NEAR(number_behind(ended.out, "As built: ") / 100, share, 0.03) << ended.out;
    EXPECT_LT(number_behind(ended.out, "lies between ") / 100, share) << ended.out;
}

TEST(Tolerances, AreToldInAPageAsOnTheTerminal)
{
    const TemporaryFolder here;
    const Ended ended = toleranced(here, toleranced_text("30 mm +- 1 mm", "100 mm"));
    ASSERT_EQ(ended.status, 0) << ended.err;
    const std::filesystem::path folder = here.path() / "a-tolerances";
    const std::string html = file_bytes(folder / "report.html");
    EXPECT_EQ(file_bytes(folder / "tolerances.txt"), ended.out);
    EXPECT_EQ(file_bytes(folder / "case.toml"), file_bytes(here.path() / "a.toml"));
    EXPECT_NE(html.find("Watch left.section[1].diameter."), std::string::npos);
    // The share used at the worse end, as printed.
    const std::size_t end = ended.out.find(" at 29 mm"), start = ended.out.rfind("  ", end) + 2;
    ASSERT_NE(end, std::string::npos) << ended.out;
    EXPECT_NE(html.find(ended.out.substr(start, end - start) + " at 29 mm"), std::string::npos) << ended.out;
    EXPECT_EQ(html.find("<script"), std::string::npos);
}

TEST(Tolerances, AreRefusedWhereThereAreNone)
{
    const TemporaryFolder here;
    const Ended ended = toleranced(here, toleranced_text("30 mm", "100 mm"));
    EXPECT_EQ(ended.status, 2);
    EXPECT_NE(ended.err.find("has no value with a tolerance"), std::string::npos) << ended.err;
}

}  // namespace
}  // namespace splicewright
