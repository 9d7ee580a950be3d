// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "app/check_splice.h"
#include "cases/random_case.h"
#include "cases/read_case.h"
#include "post/explain_text.h"
#include "tests/docs/documents.h"
#include "tests/docs/evaluated.h"

namespace splicewright
{
namespace
{

constexpr double seven_digits = 1e-4;  // numbers carry seven digits; a power of 45 and a difference cost the others
constexpr const char* quick_example = "cases/examples/plain-stepped-shaft.toml";

// Every judged scenario of a report.
std::vector<const Judgement*> judgements(const Report& report)
{
    std::vector<const Judgement*> list{&report.sound};
    for (const Judgement& scenario : report.what_if) list.push_back(&scenario);
    return list;
}

void expect_that_it_works_out(const WorkedStep& step, const std::string& where)
{
    EXPECT_TRUE(std::isfinite(step.result)) << where;
    EXPECT_FALSE(step.what.empty()) << where;
    if (step.numbers.empty()) return;
    EXPECT_FALSE(step.formula.empty()) << where;
    try
    {
        EXPECT_NEAR(evaluated(step.numbers), step.result, seven_digits * std::abs(step.result))
            << where << ": " << step.numbers;
    }
    catch (const std::exception& error)
    {
        ADD_FAILURE() << where << ": " << error.what();
    }
}

// Number of lines that could be evaluated.
int expect_worked(const Report& report, const std::string& name)
{
    int n_evaluated = 0;
    for (const Judgement* judged : judgements(report))
        for (const CheckRow& row : judged->checks)
        {
            const std::string where = fmt::format("{}, {}, {}", name, judged->answer.scenario.name, row.id);
            EXPECT_FALSE(row.worked.empty()) << where;
            if (row.worked.empty()) continue;
            EXPECT_EQ(row.worked.back().result, row.utilisation) << where;
            for (const WorkedStep& step : row.worked)
            {
                expect_that_it_works_out(step, fmt::format("{}, {}", where, step.what));
                n_evaluated += step.numbers.empty() ? 0 : 1;
            }
        }
    return n_evaluated;
}

TEST(Worked, EveryLineOfEveryRowOfTheExamplesWorksOut)
{
    for (const std::string& path : example_paths()) EXPECT_GT(expect_worked(coarse_report(path), path), 20) << path;
}

TEST(Worked, EveryLineWorksOutOnRandomSplices)
{
    // 45: the mean stress all but reaches the strength; 14 and 20: the steep end of the S-N line.
    for (const unsigned seed : {11U, 14U, 20U, 45U})
        expect_worked(check_splice(read_case(random_case_text(seed), "random").value(), {20}),
                      fmt::format("seed {}", seed));
}

// The evaluator itself, or no line above could fail.
TEST(Worked, TheEvaluatorKnowsArithmetic)
{
    EXPECT_DOUBLE_EQ(evaluated("2 + 3*4^2/8 - (-1)"), 9);
    EXPECT_DOUBLE_EQ(evaluated("2^3^2"), 512);
    EXPECT_DOUBLE_EQ(evaluated("min(3,2)*max(4,5) + sqrt(2.25) + log10(1e3)"), 14.5);
    EXPECT_NEAR(evaluated("16*450000/(pi*24^3)"), 165.786, 0.001);
    EXPECT_THROW(evaluated("2*"), std::runtime_error);
    EXPECT_THROW(evaluated("f(2)"), std::runtime_error);
}

TEST(Explain, PageHoldsFormulaNumbersSourceAndResult)
{
    const Report report = coarse_report(quick_example);
    for (const CheckRow& row : report.sound.checks)
    {
        const std::string page = explain_text(report.asked, report.sound, row);
        EXPECT_EQ(page.find(report.asked.title), 0U);
        for (const std::string& part : {row.id, row.check, std::string("Source "), std::string("Provenance ")})
            EXPECT_NE(page.find(part), std::string::npos) << row.id << ": " << part;
        for (const WorkedStep& step : row.worked)
        {
            EXPECT_NE(page.find(step.formula), std::string::npos) << row.id;
            EXPECT_NE(page.find(step.numbers), std::string::npos) << row.id;
        }
        EXPECT_NE(page.find(fmt::format("{:.1f} % of what is allowed", 100 * row.utilisation)), std::string::npos);
        EXPECT_NE(page.find(!row.valid()   ? "does not govern"
                            : row.passes() ? ": passes"
                                           : "DOES NOT PASS"),
                  std::string::npos)
            << row.id;
    }
}

TEST(Explain, ListNamesEveryCheckOnce)
{
    const Report report = coarse_report(quick_example);
    const std::string list = explainable_text(report.sound);
    EXPECT_EQ(static_cast<std::size_t>(std::count(list.begin(), list.end(), '\n')), report.sound.checks.size());
    std::set<std::string> ids;
    for (const CheckRow& row : report.sound.checks)
    {
        EXPECT_TRUE(ids.insert(row.id).second) << row.id;
        EXPECT_NE(list.find(fmt::format("{} ", row.id)), std::string::npos) << row.id;
    }
}

}  // namespace
}  // namespace splicewright
