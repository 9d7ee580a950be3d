// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/unbalance.h"

#include <gtest/gtest.h>

namespace splicewright
{
namespace
{

TEST(Unbalance, AtThePermissibleEccentricityHasTheGradeItself)
{
    const RadianPerSecond speed{136};
    const Millimetre offset = permissible_eccentricity(16, speed).value;
    EXPECT_DOUBLE_EQ(balance_grade(offset, speed), 16);
}

TEST(Unbalance, FallsWithSpeedAndGrowsWithMass)
{
    const double slow = permissible_unbalance(16, RadianPerSecond{100}, Tonne{0.003}).value;
    EXPECT_DOUBLE_EQ(permissible_unbalance(16, RadianPerSecond{200}, Tonne{0.003}).value, slow / 2);
    EXPECT_DOUBLE_EQ(permissible_unbalance(16, RadianPerSecond{100}, Tonne{0.006}).value, slow * 2);
    EXPECT_EQ(permissible_unbalance(16, RadianPerSecond{100}, Tonne{1}).provenance, Provenance::from_memory);
}

}  // namespace
}  // namespace splicewright
