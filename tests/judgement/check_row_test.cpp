// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/check_row.h"

#include <gtest/gtest.h>

#include <cmath>

#include "post/site_loads.h"

namespace splicewright
{
namespace
{

CheckRow row(const char* site, double utilisation, const char* not_valid_because)
{
    CheckRow result;
    result.site = site;
    result.utilisation = utilisation;
    result.not_valid_because = not_valid_because;
    return result;
}

TEST(CheckRow, ThatIsNotValidNeverGovernsAndDecidesNothing)
{
    const std::vector<CheckRow> rows{row("a", 0.5, ""), row("a", 3, "outside its scope"), row("b", 0.7, "")};
    EXPECT_TRUE(rows[1].passes());
    EXPECT_EQ(governing(rows), &rows[2]);
    EXPECT_EQ(governing(rows, CheckKind::strength), &rows[2]);
    EXPECT_EQ(governing(rows, CheckKind::strength, "a"), &rows[0]);
    EXPECT_EQ(governing(rows, CheckKind::fatigue), nullptr);
}

TEST(CheckRow, IsMissedAtASiteWhereNoneOfItsKindHolds)
{
    std::vector<CheckRow> rows{row("a", 0.5, ""),
                               row("a", 3, "outside its scope"),
                               row("b", 0.7, "outside its scope"),
                               row("b", 0.6, "outside its scope"),
                               row("c", 0.2, ""),
                               row("c", 0.2, "outside its scope")};
    rows.back().kind = CheckKind::fatigue;
    EXPECT_EQ(sites_without_valid_row(rows), (std::vector<std::string>{"b", "c"}));
}

TEST(CheckRow, OfNoValidMethodGovernsNothing) { EXPECT_EQ(governing({row("a", 0.5, "outside its scope")}), nullptr); }

// Torsion of 1 +- 0.01 and bending of 0.4: the root of their squares feels 0.01/1.16 of the error of the first.
TEST(SiteLoads, ErrorOfJoinedStressIsNoLessThanTheRootOfSquaresFeels)
{
    SiteAnswer site;
    site.torsion.von_mises = {1, 0.01};
    site.bending.von_mises = {0.4, 0};
    EXPECT_NEAR(combined_error_pct(site, {1, 1, 0, 0}), 100 * 0.01 / 1.16, 1e-9);
    EXPECT_GE(combined_error_pct(site, {1, 1, 0, 0}) / 100,
              0.999 * (std::sqrt(1.01 * 1.01 + 0.16) / std::sqrt(1.16) - 1));
    site.torsion.von_mises.error = 0, site.bending.von_mises.error = 0.004;
    EXPECT_NEAR(combined_error_pct(site, {1, 1, 0, 0}), 100 * 0.004 / 1.4, 1e-9);  // the sum says more
    EXPECT_EQ(combined_error_pct(site, {0, 0, 1, 0}), 0);
}

}  // namespace
}  // namespace splicewright
