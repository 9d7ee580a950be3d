// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/progress.h"

#include <gtest/gtest.h>

namespace splicewright
{
namespace
{

TEST(Progress, TellsShareRateAndTimeLeft)
{
    // 125 in 50 s are 2.5 a second; 375 more take 150 s.
    EXPECT_EQ(progress_text(125, 500, 50, "options"),
              "[#####---------------]  25 % 125 of 500 options, 2.5/s, 2 min 30 s left");
    EXPECT_EQ(progress_text(500, 500, 200, "options"), "[####################] 100 % 500 of 500 options, 2.5/s");
    EXPECT_EQ(progress_text(0, 500, 0, "options"), "[--------------------]   0 % 0 of 500 options");
    // 2 in 100 s are 1.2 a minute; 118 more take 5900 s.
    EXPECT_EQ(progress_text(2, 120, 100, "options"),
              "[--------------------]   1 % 2 of 120 options, 1.2/min, 1 h 38 min left");
}

}  // namespace
}  // namespace splicewright
