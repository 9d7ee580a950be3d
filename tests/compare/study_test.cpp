// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/study.h"

#include <gtest/gtest.h>

#include <set>

#include "app/compare.h"
#include "app/computing_order.h"
#include "app/scenarios.h"
#include "cases/option_text.h"
#include "cases/read_case.h"
#include "post/service.h"
#include "tests/app/program.h"
#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

Study study_in(const fs::path& folder, const std::string& text, const std::vector<std::string>& vary,
               const Accuracy& accuracy = {5})
{
    write_file(folder / "a.toml", text);
    const Result<Study> study = study_of(folder / "a.toml", vary, accuracy);
    if (!study.has_value()) throw std::runtime_error(to_string(study.problems().front()));
    return study.value();
}

std::string key_in(const fs::path& folder, const std::string& text, std::uint64_t index = 0, double accuracy_pct = 5)
{
    return option_key(study_in(folder, text, {"sleeve.length=80mm,90mm"}, {accuracy_pct}), index, this_program());
}

TEST(Study, KeysChangeWithWhatChangesTheNumbersAndWithNothingElse)
{
    const TemporaryFolder here;
    const std::string key = key_in(here.path(), sound_splice_text());
    EXPECT_EQ(key_in(here.path(), "# a comment\n" + sound_splice_text()), key);
    EXPECT_EQ(key_in(here.path(), splice_with("test splice", "another")), key);
    EXPECT_EQ(key_in(here.path(), splice_with("length = \"84 mm\"", "length = \"86 mm\"")), key);  // varied anyway
    EXPECT_NE(key_in(here.path(), sound_splice_text(), 1), key);
    EXPECT_NE(key_in(here.path(), splice_with("axial = \"800 N\"", "axial = \"801 N\"")), key);
    EXPECT_NE(key_in(here.path(), sound_splice_text(), 0, 4), key);
}

TEST(Study, KeysChangeWithTheVersion)
{
    const TemporaryFolder here;
    const Study study = study_in(here.path(), sound_splice_text(), {"sleeve.length=80mm,90mm"});
    const ProgramVersion now = this_program();
    const std::string key = option_key(study, 0, now);
    EXPECT_EQ(option_key(study, 0, now), key);
    EXPECT_NE(option_key(study, 0, {now.program + "x", now.result, now.sources}), key);
    EXPECT_NE(option_key(study, 0, {now.program, now.result + 1, now.sources}), key);
    EXPECT_NE(option_key(study, 0, {now.program, now.result, now.sources + "x"}), key);
    EXPECT_EQ(now.sources.size(), 64U);
}

TEST(Study, KeysChangeWithTheContentOfTheTorqueHistory)
{
    const TemporaryFolder here;
    const std::string text = splice_with("revolutions = 2e7", "revolutions = 2e7\ntorque_history = \"log.csv\"");
    const std::string head = "time [s], torque [N*m]\n0, 0\n1, 300\n";
    write_file(here.path() / "log.csv", head + "2, 0\n");
    const std::string key = key_in(here.path(), text);
    write_file(here.path() / "log.csv", head + "2, 10\n");
    EXPECT_NE(key_in(here.path(), text), key);
    write_file(here.path() / "log.csv", head + "2, 0\n");
    EXPECT_EQ(key_in(here.path(), text), key);
}

TEST(Study, RefusesWithEveryProblemAtOnce)
{
    const TemporaryFolder here;
    write_file(here.path() / "a.toml", sound_splice_text());
    const Result<Study> study =
        study_of(here.path() / "a.toml", {"sleeve.length=80", "sleeve.colour=1mm", "load.vehicle.grip=1"}, {5});
    ASSERT_FALSE(study.has_value());
    EXPECT_EQ(study.problems().size(), 3U);
    const Result<Study> nothing = study_of(here.path() / "a.toml", {}, {5});
    ASSERT_FALSE(nothing.has_value());
    EXPECT_NE(nothing.problems().front().rule.find("nothing to compare"), std::string::npos);
}

OptionOutcome judged_alone(const Study& study, std::uint64_t index)
{
    LastSolution none;
    return judged_option(study, index, none);
}

TEST(Study, JudgesAnOptionAsCheckDoes)
{
    const TemporaryFolder here;
    const Study study =
        study_in(here.path(), sound_splice_text(), {"sleeve.length=80mm,90mm", "sleeve.weld.leg=5mm,8mm"});
    const OptionOutcome outcome = judged_alone(study, 2);  // 90 mm, 5 mm
    ASSERT_EQ(outcome.end, OptionEnd::judged) << outcome.reason;
    const std::string text =
        with(with(sound_splice_text(), "length = \"84 mm\"", "length = \"90 mm\""), "leg = \"6 mm\"", "leg = \"5 mm\"");
    const Judgement sound = judged(accepted(text), sound_splice(), {5});
    const CheckRow* row = governing(sound.checks);
    ASSERT_NE(row, nullptr);
    EXPECT_EQ(outcome.site, row->site);
    EXPECT_EQ(outcome.check, row->id);
    EXPECT_EQ(outcome.passes, sound.passes());
    EXPECT_NEAR(outcome.utilisation, row->utilisation, 1e-5 * row->utilisation);  // six digits are kept
    // Peak torque 1000 N*m = 1e6 N*mm.
    EXPECT_NEAR(outcome.twist_deg, sound.answer.twist.value * 1e6 * 57.29578, 1e-4 * outcome.twist_deg);

    const OptionOutcome invalid = judged_alone(study, 1);  // a leg of 8 mm on a wall of 7 mm
    EXPECT_EQ(invalid.end, OptionEnd::invalid);
    EXPECT_NE(invalid.reason.find("sleeve.weld.leg"), std::string::npos);
}

TEST(Study, JudgesByTheSolutionBeforeAsByOneOfItsOwn)
{
    const TemporaryFolder here;
    const Study study = study_in(
        here.path(), sound_splice_text(),
        {"load.peak_torque=1000N*m,1200N*m", "left.material=\"C45 +N\",\"1045 CD\"", "sleeve.length=84mm,90mm"});
    ASSERT_EQ(study.size(), 8U);
    const ComputingOrder order(study);
    LastSolution last;
    for (std::uint64_t run = 0; run < order.n_runs(); ++run)
        for (std::uint64_t place = 0; place < order.run_length(); ++place)
        {
            const std::uint64_t index = order.index_at(run, place);
            const OptionOutcome kept = judged_option(study, index, last);
            ASSERT_EQ(kept.end, OptionEnd::judged) << kept.reason;
            EXPECT_EQ(outcome_line(kept), outcome_line(judged_alone(study, index))) << index;
        }
    EXPECT_EQ(last.n_solved(), 2);  // lengths
}

TEST(LastSolution, IsNotTakenWhereAnotherLoadClosesTheSlit)
{
    const std::string narrow = splice_with("clearance = \"0.02 mm\"", "clearance = \"0.002 mm\"");
    const auto with_angle = [&](const char* angle)
    { return accepted(with(narrow, "joint_angle = \"6 deg\"", std::string("joint_angle = ") + angle)); };
    const Case straight = with_angle("\"0.01 deg\""), bent = with_angle("\"20 deg\""), more = with_angle("\"21 deg\"");
    LastSolution last;
    EXPECT_FALSE(last.of(straight, sound_splice(), {5}).closed);
    ASSERT_TRUE(last.of(bent, sound_splice(), {5}).closed);
    EXPECT_EQ(last.n_solved(), 2);
    const double closes = last.of(bent, sound_splice(), {5}).closed->closes;
    const MeridianSolution& kept = last.of(more, sound_splice(), {5});
    EXPECT_EQ(last.n_solved(), 2);
    ASSERT_TRUE(kept.closed);
    EXPECT_GT(kept.closed->closes, closes);
    EXPECT_EQ(kept.closed->closes, meridian_solution(more, sound_splice(), {5}).closed->closes);
}

TEST(ComputingOrder, HasEveryOptionOnceAndKeepsShapesTogether)
{
    const TemporaryFolder here;
    const Study study = study_in(here.path(), sound_splice_text(),
                                 {"load.peak_torque=1000N*m,1100N*m,1200N*m", "sleeve.length=84mm,90mm",
                                  "left.material=\"C45 +N\",\"1045 CD\"", "sleeve.wall=6mm,7mm"});
    const ComputingOrder order(study);
    EXPECT_EQ(order.n_runs(), 4U);
    EXPECT_EQ(order.run_length(), 6U);
    std::set<std::uint64_t> seen;
    for (std::uint64_t run = 0; run < order.n_runs(); ++run)
    {
        const std::vector<KeyValue> first = study.values_at(order.index_at(run, 0));
        for (std::uint64_t place = 0; place < order.run_length(); ++place)
        {
            const std::uint64_t index = order.index_at(run, place);
            EXPECT_TRUE(seen.insert(index).second) << index;
            EXPECT_EQ(order.run_of(index), run);
            const std::vector<KeyValue> values = study.values_at(index);
            EXPECT_EQ(values[1], first[1]);
            EXPECT_EQ(values[3], first[3]);
        }
    }
    EXPECT_EQ(seen.size(), study.size());
    EXPECT_EQ(*seen.rbegin(), study.size() - 1);
}

TEST(Study, WeighsTheBarsTheSleeveAndItsWelds)
{
    // Plain tube of 40 mm on 20 mm, 300 mm long, of 7.85e-6 kg/mm^3: pi/4 (40^2 - 20^2) 300 7.85e-6 = 2.2195 kg.
    const std::string tube =
        "[left]\nmaterial = \"C45 +N\"\nbore = \"20 mm\"\n[[left.section]]\nlength = \"300 mm\"\n"
        "diameter = \"40 mm\"\n[load]\npeak_torque = \"500 N*m\"\n";
    const TemporaryFolder here;
    const OptionOutcome plain = judged_alone(study_in(here.path(), tube, {"left.bore=20mm"}), 0);
    EXPECT_NEAR(plain.mass_kg, 2.2195, 2e-3);  // the library's density of this steel is 7850 kg/m^3 to 0.1 %

    // A sleeve that is longer by 10 mm: pi/4 (42^2 - d^2) 10 7.85e-6, d = 28.02 and 27.02 on half of it each.
    const Study study = study_in(here.path(), sound_splice_text(), {"sleeve.length=80mm,90mm"});
    const double longer = judged_alone(study, 1).mass_kg - judged_alone(study, 0).mass_kg;
    const double derived = 3.14159265 / 4 * 5 * (2 * 42 * 42 - 28.02 * 28.02 - 27.02 * 27.02) * 7.85e-6;
    EXPECT_NEAR(longer, derived, 2e-4);  // masses of 2 kg are kept to 1e-5 kg; the weld's root notch moves with the end
}

}  // namespace
}  // namespace splicewright
