// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>
#include <malloc.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <sstream>
#include <streambuf>

#include "cases/cycle_bins.h"
#include "cases/history_rows.h"
#include "cases/rainflow.h"
#include "cases/torque_history.h"
#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

const std::string header = "time [s], torque [N*m]\n";

Result<CountedHistory> counted(const std::string& text, double repeats = 1)
{
    std::istringstream stream(text);
    return counted_history(stream, "run.csv", repeats);
}

// The first problem of a history that is wrong, as the user sees it.
std::string complaint(const std::string& text)
{
    const Result<CountedHistory> result = counted(text);
    return result.has_value() ? "accepted" : to_string(result.problems().front());
}

double count_of(const std::vector<TorqueBlock>& blocks, double low, double high)
{
    for (const TorqueBlock& block : blocks)
        if (std::abs(block.low.value() - low) < 1e-6 && std::abs(block.high.value() - high) < 1e-6) return block.count;
    return 0;
}

// Source: [ASTM-E1049] 5.4.4, fig. 6, its peaks as N*m.
TEST(History, GivesTheStandardsTableAsBlocksWithTheirMeans)
{
    const Result<CountedHistory> result =
        counted(header + "0, -2\n1, 1\n2, -3\n3, 5\n4, -1\n5, 3\n6, -4\n7, 4\n8, -2\n");
    ASSERT_TRUE(result.has_value());
    const auto& blocks = result.value().blocks;
    EXPECT_EQ(blocks.size(), 7U);
    EXPECT_EQ(count_of(blocks, -2e3, 1e3), 0.5);
    EXPECT_EQ(count_of(blocks, -3e3, 1e3), 0.5);
    EXPECT_EQ(count_of(blocks, -3e3, 5e3), 0.5);
    EXPECT_EQ(count_of(blocks, -1e3, 3e3), 1);
    EXPECT_EQ(count_of(blocks, -4e3, 5e3), 0.5);
    EXPECT_EQ(count_of(blocks, -4e3, 4e3), 0.5);
    EXPECT_EQ(count_of(blocks, -2e3, 4e3), 0.5);
    for (const TorqueBlock& block : blocks) EXPECT_EQ(block.origin, BlockOrigin::history);
    const TorqueHistory& summary = result.value().summary;
    EXPECT_EQ(summary.rows, 9);
    EXPECT_EQ(summary.duration, 8);
    EXPECT_EQ(summary.lowest, NewtonMillimetre(-4e3));
    EXPECT_EQ(summary.highest, NewtonMillimetre(5e3));
    EXPECT_EQ(summary.cycles, 4);
    EXPECT_EQ(summary.bin_width, NewtonMillimetre(0));
}

// 0 to 100 and back, ten times over: nine whole cycles close across the seams, two halves stay open.
TEST(History, RunSeveralTimesClosesAcrossItsSeam)
{
    const Result<CountedHistory> result = counted(header + "0, 0\n1, 100\n2, 0\n", 10);
    ASSERT_TRUE(result.has_value());
    EXPECT_EQ(count_of(result.value().blocks, 0, 100e3), 10);
    EXPECT_EQ(result.value().summary.cycles, 10);
    EXPECT_EQ(result.value().summary.repeats, 10);
}

TEST(History, IsReadInOtherUnitsColumnsAndSeparators)
{
    const std::string texts[] = {"torque [kN*m]; time [ms]\n0; 0\n0.1; 500\n0; 1000\n",
                                 "\xEF\xBB\xBF# logged\r\n\r\n Time [min]\tTorque "
                                 "[N·m]\r\n0\t0\r\n0.008333333333333333\t100\r\n0.016666666666666666\t0",
                                 "time [h], torque [N*mm]\n0, 0\n0.0001, 1e5\n0.0002777777777777778, 0\n"};
    for (const std::string& text : texts)
    {
        const Result<CountedHistory> result = counted(text);
        ASSERT_TRUE(result.has_value()) << complaint(text);
        EXPECT_EQ(result.value().summary.highest, NewtonMillimetre(100e3));
        EXPECT_NEAR(result.value().summary.duration, 1, 1e-12);
        EXPECT_EQ(result.value().summary.rows, 3);
    }
}

TEST(History, TellsWhatIsWrongWithFileAndLine)
{
    const std::pair<std::string, std::string> wrong[] = {
        {"", "run.csv: torque_history: is empty"},
        {"# only this\n", "run.csv: torque_history: is empty"},
        {"0, 1\n1, 2\n", "run.csv:1:1: torque_history: is \"0, 1\", must begin with a header"},
        {"time, torque\n0, 1\n", "must begin with a header that names time and torque with their units"},
        {"time [s], torque [N*m], speed [rpm]\n", "leave out other columns"},
        {"time [d], torque [N*m]\n", "run.csv:1:1: time: is \"time [d]\", must have a unit of time: s, ms, min, h"},
        {"time [s], torque [bar]\n", "run.csv:1:11: torque: is \"torque [bar]\", must have the unit of a moment"},
        {"time [s], torque [mm]\n", "must have the unit of a moment"},
        {header, "run.csv: torque_history: has fewer than two rows"},
        {header + "0, 5\n", "has fewer than two rows"},
        {header + "0, 5\n1, 5\n", "never changes its torque"},
        {header + "0, 5\n1\n", "run.csv:3:1: torque_history: is \"1\", must have two values in each row, not 1"},
        {header + "0, 5\n1, 2, 3\n", "must have two values in each row, not 3"},
        {header + "0, 5\n1, \n", "run.csv:3:3: torque: is missing"},
        {header + "0, 5\n1, x\n", "run.csv:3:4: torque: is \"x\", must be a number"},
        {header + "0, 5\n1, nan\n", "must be a finite number"},
        {header + "0, 5\n1, 1e999\n", "beyond any number"},
        {header + "0, 5\n1, 6 N*m\n", "must be a plain number: its unit stands in the header"},
        {"time [s]; torque [N*m]\n0; 5\n1; 6,5\n", "must have a decimal point, not a comma"},
        {header + "0, 5\n1, 2e6\n", "run.csv:3:4: torque: is \"2e6\", must be from -1e+06 N*m to 1e+06 N*m"},
        {header + "0, 5\n0, 6\n", "run.csv:3:1: time: is \"0\", must be later than in the row before"},
        {header + "0, 5\n-1, 6\n", "must be later than in the row before"},
        {header + "0, " + std::string(500, '1') + "\n", "run.csv:2:1: torque_history: must have rows of at most 400"},
        {std::string("\0\x01\x02", 3), "must begin with a header"},
    };
    for (const auto& [text, part] : wrong)
    {
        EXPECT_NE(complaint(text).find(part), std::string::npos) << part << "\n" << complaint(text);
        EXPECT_NE(complaint(text).find(" Fix: "), std::string::npos) << complaint(text);
    }
}

TEST(History, TellsEveryBadRowUpToTwentyAndGoesOnBehindThem)
{
    std::string text = header;
    for (int i = 0; i < 3; ++i) text += fmt::format("{}, {}\n{}, bad\n", 2 * i, i, 2 * i + 1);
    ASSERT_EQ(counted(text).problems().size(), 3U);
    EXPECT_EQ(counted(text).problems()[2].line, 7);
    for (int i = 3; i < 1000; ++i) text += fmt::format("{}, bad\n", 2 * i);
    const std::vector<Problem> problems = counted(text).problems();
    ASSERT_EQ(problems.size(), 21U);
    EXPECT_NE(problems.back().rule.find("the rest was not read"), std::string::npos);
}

TEST(CycleBins, KeepValuesWhileTheyFitAndThenRoundOutward)
{
    CycleBins bins(4);
    for (int i = 0; i < 4; ++i) bins.add(-0.25 * i, 10.5 + i, 1);
    EXPECT_EQ(bins.width(), 0);
    EXPECT_EQ(bins.counts().at({-0.25, 11.5}), 1);
    for (int i = 4; i < 40; ++i) bins.add(-0.25 * i, 10.5 + i, 1);
    EXPECT_LE(bins.counts().size(), 4U);
    EXPECT_GT(bins.width(), 0);
    double count = 0;
    for (const auto& [ends, many] : bins.counts()) count += many;
    EXPECT_EQ(count, 40);
    // Each cycle lies within a bin that is less than one width longer at either end.
    for (int i = 0; i < 40; ++i)
    {
        const double low = -0.25 * i, high = 10.5 + i;
        EXPECT_TRUE(std::any_of(bins.counts().begin(), bins.counts().end(),
                                [&](const auto& bin)
                                {
                                    return bin.first.first <= low && bin.first.second >= high &&
                                           low - bin.first.first < bins.width() &&
                                           bin.first.second - high < bins.width();
                                }))
            << i;
    }
}

double wandering_torque(int row) { return 400 * std::sin(0.9 * row) + 300 * std::sin(0.00737 * row); }  // N*m

// A million rows made as they are read: a torque that wanders, never twice the same cycle.
class EndlessRun : public std::streambuf
{
public:
    static constexpr int n_rows = 1'000'000;
    [[nodiscard]] std::size_t most_in_use() const { return most_in_use_; }

private:
    int_type underflow() override
    {
        most_in_use_ = std::max(most_in_use_, mallinfo2().uordblks);
        if (row_ == n_rows) return traits_type::eof();
        text_ = row_ == 0 ? header : "";
        for (int i = 0; i < 100; ++i, ++row_) text_ += fmt::format("{}, {:.6f}\n", row_, wandering_torque(row_));
        setg(text_.data(), text_.data(), text_.data() + text_.size());
        return traits_type::to_int_type(text_.front());
    }

    int row_ = 0;
    std::string text_;
    std::size_t most_in_use_ = 0;
};

TEST(History, OfAMillionRowsTakesLittleMemoryAndBlocks)
{
    EndlessRun run;
    std::istream stream(&run);
    const std::size_t before = mallinfo2().uordblks;
    const Result<CountedHistory> result = counted_history(stream, "run.csv", 1);
    ASSERT_TRUE(result.has_value());
    const TorqueHistory& summary = result.value().summary;
    EXPECT_EQ(summary.rows, EndlessRun::n_rows);
    // The rows are some 20 MB as text and 16 MB as numbers.
    EXPECT_LT(run.most_in_use() - std::min(before, run.most_in_use()), 2'000'000U);
    EXPECT_LE(summary.n_blocks, most_history_blocks);
    EXPECT_GT(summary.bin_width, NewtonMillimetre(0));
    EXPECT_LT(summary.bin_width, NewtonMillimetre(20e3));
    // Each turning point begins half a cycle: a sine of period 2 pi/0.9 samples turns twice in it. The slow sine moves
    // turning points by less than one in a thousand.
    EXPECT_NEAR(summary.cycles, EndlessRun::n_rows * 0.9 / (2 * std::acos(-1.0)), 1e-3 * EndlessRun::n_rows);
    for (const TorqueBlock& block : result.value().blocks)
    {
        EXPECT_LT(block.low, block.high);
        EXPECT_GE(block.low, summary.lowest);
        EXPECT_LE(block.high, summary.highest);
    }
}

// Mean range of a cycle to the power of a slope.
double mean_range(const std::vector<TorqueBlock>& blocks, double slope)
{
    double sum = 0, count = 0;
    for (const TorqueBlock& block : blocks)
    {
        sum += block.count * std::pow((block.high - block.low).value(), slope);
        count += block.count;
    }
    return std::pow(sum / count, 1 / slope);
}

TEST(History, RoundedOutwardDamagesMoreByAFewPercentOfTheStress)
{
    EndlessRun run;
    std::istream stream(&run);
    const auto blocks = counted_history(stream, "run.csv", 1).value().blocks;
    RainflowCounter counter;
    std::vector<TorqueBlock> exact;
    const auto keep = [&](const std::vector<RainflowCycle>& cycles)
    {
        for (const RainflowCycle& cycle : cycles)
            exact.push_back({"", NewtonMillimetre(0), NewtonMillimetre(1e3 * cycle.range), cycle.count});
    };
    for (int row = 0; row < EndlessRun::n_rows; ++row) keep(counter.next(wandering_torque(row)));
    keep(counter.rest());
    for (const double slope : {3.0, 5.0, 9.0})
    {
        EXPECT_GT(mean_range(blocks, slope), mean_range(exact, slope));
        EXPECT_LT(mean_range(blocks, slope), 1.04 * mean_range(exact, slope));
    }
}

// A case whose history is the given text.
Result<Case> read_with(const std::string& case_text, const std::string& history)
{
    return read_case(case_text, "t.toml",
                     [&](const std::string& name) {
                         return Companion{"beside/" + name, std::make_unique<std::istringstream>(history), ""};
                     });
}

const std::string with_history =
    splice_with("[[load.block]]", "torque_history = \"run.csv\"\nhistory_repeats = 50\n[[load.block]]");
const std::string run = header + "0, 0\n1, 700\n2, -100\n3, 300\n4, 0\n";

TEST(TorqueHistoryKey, AddsItsCyclesBehindTheStatedBlocks)
{
    const Result<Case> read = read_with(with_history, run);
    ASSERT_TRUE(read.has_value()) << to_string(read.problems().front());
    const Load& load = read.value().load;
    ASSERT_TRUE(load.history.has_value());
    EXPECT_EQ(load.history->file, "run.csv");
    EXPECT_EQ(load.history->repeats, 50);
    EXPECT_EQ(load.blocks.front().name, "start");
    EXPECT_EQ(load.blocks.size(), 1 + load.history->n_blocks);
    // -100 to 700 in each run; 0 to 300 within -100 .. 700 .. in each seam.
    EXPECT_EQ(count_of(load.blocks, -100e3, 700e3), 49.5);
    EXPECT_EQ(load.peak_torque, NewtonMillimetre(1000e3));
}

TEST(TorqueHistoryKey, GivesThePeakTorqueWhenNothingElseDoes)
{
    std::string text = with(with_history, "peak_torque = \"1000 N*m\"\nrunning_torque = \"200 N*m\"\n", "");
    text = with(text, "history_repeats = 50\n", "");
    text = text.substr(0, text.find("[[load.block]]"));
    const Result<Case> read = read_with(text, header + "0, 0\n1, 100\n2, -650\n");
    ASSERT_TRUE(read.has_value()) << to_string(read.problems().front());
    EXPECT_EQ(read.value().load.peak_torque, NewtonMillimetre(650e3));
    const auto has_default = [&](const std::string& field, const std::string& value)
    {
        return std::any_of(read.value().defaults.begin(), read.value().defaults.end(),
                           [&](const DefaultUsed& used) { return used.field == field && used.value == value; });
    };
    EXPECT_TRUE(has_default("load.peak_torque", "650 N*m"));
    EXPECT_TRUE(has_default("load.history_repeats", "1"));
}

TEST(TorqueHistoryKey, StaysWithinThePeakTorque)
{
    const Result<Case> read = read_with(with_history, header + "0, 0\n1, -1200\n");
    ASSERT_FALSE(read.has_value());
    ASSERT_EQ(read.problems().size(), 1U);
    EXPECT_EQ(read.problems()[0].field, "load.torque_history");
    EXPECT_EQ(read.problems()[0].rule,
              "must stay within the peak torque of 1000 N*m in both directions, not reach 1200 N*m");
    EXPECT_EQ(read.problems()[0].fix, "peak_torque = \"1200 N*m\": what was measured counts");
}

TEST(TorqueHistoryKey, TellsBadRowsBehindTheProblemsOfTheCase)
{
    const Result<Case> read =
        read_with(with(with_history, "speed = \"1200 rpm\"", "speed = 7"), header + "0, 0\n1, x\n");
    ASSERT_FALSE(read.has_value());
    ASSERT_EQ(read.problems().size(), 2U);
    EXPECT_EQ(read.problems()[0].field, "load.speed");
    EXPECT_EQ(to_string(read.problems()[1]).find("beside/run.csv:3:4: torque: is \"x\", must be a number"), 0U);
}

TEST(TorqueHistoryKey, RefusesWrongKeys)
{
    expect_only_problem(with_history, "load.torque_history", "does not come from a file", "CSV file");
    expect_only_problem(splice_with("axial", "history_repeats = 5\naxial"), "load.history_repeats",
                        "needs a torque_history", "give torque_history as well");
    for (const char* repeats : {"0", "0.5", "2e9", "-1"})
        expect_only_problem(with(with_history, "history_repeats = 50", fmt::format("history_repeats = {}", repeats)),
                            "load.history_repeats", "must be from 1 to 1e9", "history_repeats = ...");
    expect_only_problem(with(with_history, "torque_history = \"run.csv\"", "torque_history = 7"), "load.torque_history",
                        "must be a text", "torque_history = \"...\"");
}

TEST(Companions, AreRegularFilesBesideTheCase)
{
    const CompanionFiles beside = companions_beside(std::string(SPLICEWRIGHT_SOURCE_DIR) + "/cases/examples");
    EXPECT_NE(beside("autotest-run.csv").stream, nullptr);
    EXPECT_EQ(beside("nowhere.csv").why_not.find("names no file"), 0U);
    EXPECT_EQ(beside("../examples").why_not, "must name a regular file");
    EXPECT_EQ(beside("nowhere.csv").stream, nullptr);
}

}  // namespace
}  // namespace splicewright
