// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/soak.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>

#include "cases/random_case.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

// A folder of its own for each process: tests run side by side.
fs::path own_folder() { return fs::path(testing::TempDir()) / ("splicewright-soak-" + std::to_string(::getpid())); }

TEST(Soak, TellsOfACaseThatTakesTooLongAndGoesOn)
{
    SoakPlan plan;
    plan.n_cases = 2;
    plan.n_mutations = 0;
    plan.seconds_allowed = 0.001;  // no splice is meshed in six milliseconds
    plan.failure_folder = own_folder();
    int n_watched = 0;
    const std::vector<SoakResult> results = soak(plan, [&](const SoakResult&) { ++n_watched; });
    EXPECT_EQ(n_watched, 2);
    ASSERT_EQ(results.size(), 2U);
    for (const SoakResult& result : results)
    {
        EXPECT_EQ(result.outcome, SoakOutcome::failed);
        ASSERT_FALSE(result.faults.empty());
        EXPECT_EQ(result.faults.front(), "no answer within 0.001 s of computing");
    }
    EXPECT_TRUE(fs::exists(plan.failure_folder / "case-1.toml"));
    EXPECT_TRUE(fs::exists(plan.failure_folder / "case-2.txt"));
    EXPECT_NE(soak_summary(results).find("2 failed"), std::string::npos);
    fs::remove_all(plan.failure_folder);
}

TEST(Soak, ADamagedTextIsRefusedWithClearProblems)
{
    const SoakResult result = soaked("mutation", "title = 3\n", 1);
    EXPECT_EQ(result.outcome, SoakOutcome::refused);
    EXPECT_TRUE(result.faults.empty());
}

}  // namespace
}  // namespace splicewright
