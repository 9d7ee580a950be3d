// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/published_check.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "cases/problem.h"
#include "post/validation_text.h"

namespace splicewright
{
namespace
{

ProvenCheck row_of(double computed, double expected, CheckTolerance allowed)
{
    return {{"shaft.sample", "a sample", expected, "MPa", std::move(allowed), "Mises [Mises1913]",
             SourceKind::exact_theory, Provenance::theory},
            computed,
            ""};
}

TEST(CheckTolerance, OfDigitsIsHalfAUnitOfTheLastOnePrinted)
{
    EXPECT_TRUE(row_of(58.549, 58.5, decimals_printed(1)).agrees());
    EXPECT_FALSE(row_of(58.551, 58.5, decimals_printed(1)).agrees());
    EXPECT_TRUE(row_of(68490, 68000, digits_printed(2, 68000)).agrees());
    EXPECT_FALSE(row_of(68510, 68000, digits_printed(2, 68000)).agrees());
}

TEST(CheckTolerance, OfAChartIsOneSidedWhenTheChartIs)
{
    const CheckTolerance band = chart_band(4, 24, 2, "low");
    EXPECT_TRUE(row_of(2.1, 2, band).agrees());
    EXPECT_FALSE(row_of(2.0, 2, band).agrees());
    EXPECT_FALSE(row_of(2.5, 2, band).agrees());
}

TEST(CheckTolerance, OfANegativeNumberKeepsItsOrder)
{
    const CheckTolerance band = idealisation(-1, 3, -100, "sample");
    EXPECT_LT(band.low, band.high);
    EXPECT_TRUE(row_of(-102.9, -100, band).agrees());
    EXPECT_FALSE(row_of(-98.9, -100, band).agrees());
}

TEST(ProvenCheck, WithoutANumberDoesNotAgree)
{
    EXPECT_FALSE(row_of(std::numeric_limits<double>::quiet_NaN(), 1, discretisation(0.5, 1, "wide")).agrees());
}

TEST(ProvenCheck, OfACaseThatCannotBeComputedSaysWhy)
{
    CheckGroup group{"sample", {row_of(0, 1, round_off(1)).check}, {}};
    group.computed = []() -> std::vector<double> {
        throw CannotCompute({"", 0, 0, "mesher", "", "no mesh", "draw it"});
    };
    const std::vector<ProvenCheck> rows = proven(group);
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_FALSE(rows.front().agrees());
    EXPECT_NE(rows.front().why_not_computed.find("no mesh"), std::string::npos);
    EXPECT_NE(terminal_row(rows.front()).find("MISS"), std::string::npos);
}

TEST(CheckGroup, GivesOneNumberForEachCheck)
{
    CheckGroup group{"sample", {row_of(0, 1, round_off(1)).check}, [] { return std::vector<double>{1, 2}; }};
    EXPECT_THROW(proven(group), BrokenPromise);
}

TEST(ValidationText, MarksWhatMissed)
{
    const ProvenCheck good = row_of(100.1, 100, discretisation(0.002, 100, "mesh")),
                      bad = row_of(103, 100, discretisation(0.002, 100, "mesh"));
    EXPECT_EQ(terminal_row(good).find("MISS"), std::string::npos);
    EXPECT_NE(terminal_row(bad).find("MISS"), std::string::npos);
    EXPECT_EQ(validation_document({good}, "1").find("missed"), std::string::npos);
    EXPECT_NE(validation_document({bad}, "1").find("missed"), std::string::npos);
    EXPECT_EQ(summary({good, bad}), "1 of 2 checks agree, from 1 documents.");
}

TEST(ValidationText, WritesDifferencesAndAllowances)
{
    EXPECT_EQ(difference_text(row_of(103, 100, discretisation(0.002, 100, "mesh"))), "+3.00 %");
    EXPECT_EQ(allowed_text(row_of(103, 100, discretisation(0.002, 100, "mesh")).check), "±0.2 %");
    EXPECT_EQ(allowed_text(row_of(103, 100, chart_band(-2, 10, 100, "chart")).check), "-2 to +10 %");
    EXPECT_EQ(allowed_text(row_of(1.6, 1.63, decimals_printed(2)).check), "±0.005");
}

}  // namespace
}  // namespace splicewright
