// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/app/program.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::json;

const std::string csv = "time [s], torque [N*m]\n0, 0\n1, 300\n2, 100\n3, 400\n4, 0\n";

// The cycles of the file run 1000 times, worked out by hand: 100 to 300 closes within each run; 0 to 400 closes across
// each of the 999 seams, and its two halves stay open at the end.
const std::string as_blocks =
    "[[load.block]]\nname = \"inner\"\ntorque = [\"100 N*m\", \"300 N*m\"]\ncount = 1000\n"
    "[[load.block]]\nname = \"outer\"\ntorque = [\"0 N*m\", \"400 N*m\"]\ncount = 1000\n";

const std::string vehicle =
    "[load.vehicle]\nengine_torque = \"200 N*m\"\ngear_ratio = 3\nfinal_drive = 4\naxle_mass = \"600 kg\"\n"
    "tyre_radius = \"300 mm\"\ngrip = 0.9\nload_transfer = 1.2\n";

Json result_of(const TemporaryFolder& folder, const std::string& text)
{
    write_file(folder.path() / "case.toml", text);
    write_file(folder.path() / "run.csv", csv);
    const Ended ended = program({"check", "case.toml", "--json"}, {folder.path(), {}, {}});
    return Json::parse(ended.out);
}

double fatigue_used(const Json& result)
{
    for (const Json& check : result["checks"])
        if (check["id"] == "fatigue/bar.left") return check["utilisation"];
    return -1;
}

TEST(Check, JudgesAHistoryAsTheBlocksThatItCounts)
{
    const TemporaryFolder folder;
    const std::string text = plain_bar_text("a bar", "400 N*m");
    const Json history = result_of(folder, text + "torque_history = \"run.csv\"\nhistory_repeats = 1000\n");
    const Json blocks = result_of(folder, text + as_blocks);
    ASSERT_GT(fatigue_used(blocks), 0.01);
    EXPECT_NEAR(fatigue_used(history), fatigue_used(blocks), 1e-12);
    const Json& told = history["loads"]["history"];
    EXPECT_EQ(told["file"], "run.csv");
    EXPECT_EQ(told["rows"], 5);
    EXPECT_EQ(told["cycles"], 2000);
    EXPECT_EQ(told["highest_Nm"], 400);
    EXPECT_FALSE(blocks["loads"].contains("history"));
}

TEST(Check, TellsABadRowOfTheHistoryWithItsLine)
{
    const TemporaryFolder folder;
    write_file(folder.path() / "case.toml", plain_bar_text("a bar", "400 N*m") + "torque_history = \"run.csv\"\n");
    write_file(folder.path() / "run.csv", csv + "5, much\n");
    const Ended ended = program({"check", "case.toml"}, {folder.path(), {}, {}});
    EXPECT_EQ(ended.status, 2);
    EXPECT_NE(ended.err.find("run.csv:7:4: torque: is \"much\", must be a number"), std::string::npos) << ended.err;
}

TEST(Check, ChecksThePeakTorqueOfTheVehicle)
{
    const TemporaryFolder folder;
    std::string text = plain_bar_text("a bar", "400 N*m");
    text = text.substr(0, text.find("peak_torque")) + vehicle;
    const Json result = result_of(folder, text);
    // 0.9 x 1.2 x 600 x 9.80665 / 2 x 0.3 N*m.
    EXPECT_NEAR(result["loads"]["peak_torque_Nm"], 953.20638, 1e-6);
    EXPECT_EQ(result["loads"]["vehicle"]["governs"], "grip");
    EXPECT_EQ(result["loads"]["vehicle"]["is_the_peak_torque"], true);
    const Ended words = program({"check", "case.toml"}, {folder.path(), {}, {}});
    EXPECT_NE(words.out.find("governs, taken as the peak torque"), std::string::npos) << words.out;
    EXPECT_NE(words.out.find("A shock can exceed both"), std::string::npos);
}

TEST(Check, SaysUnknownSteelInBoldOnATerminalOnly)
{
    if (const std::string why = why_no_terminal(); !why.empty()) GTEST_SKIP() << why;
    const TemporaryFolder folder;
    std::string text = plain_bar_text("a bar", "400 N*m");
    text.replace(text.find("C45 +QT"), 7, "unknown");
    write_file(folder.path() / "case.toml", text);
    const std::vector<std::string> words{"check", "case.toml"};
    EXPECT_NE(shown_on_terminal(words, {folder.path(), {}, {}}).find("\x1b[1mUNKNOWN STEEL in the left bar"),
              std::string::npos);
    const std::string plain = program(words, {folder.path(), {}, {}}).out;
    EXPECT_EQ(plain.find('\x1b'), std::string::npos);
    EXPECT_NE(plain.find("\nUNKNOWN STEEL in the left bar"), std::string::npos);
    EXPECT_EQ(shown_on_terminal(words, {folder.path(), {{"NO_COLOR", "1"}}, {}}).find('\x1b'), std::string::npos);
}

}  // namespace
}  // namespace splicewright
