// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/check_row.h"

#include <gtest/gtest.h>

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

}  // namespace
}  // namespace splicewright
