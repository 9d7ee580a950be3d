// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/passing_share.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "app/sample_points.h"

namespace splicewright
{
namespace
{

// With no failure in n trials the lower end is (alpha/2)^(1/n), exactly; with no success the upper end mirrors it.
TEST(ShareInterval, IsThatOfTheClosedFormWhereAllOrNonePass)
{
    for (const int n : {1, 10, 100, 1000})
    {
        const double end = std::pow(0.025, 1.0 / n);
        EXPECT_NEAR(share_interval(n, n, 0.95).low, end, 1e-9);
        EXPECT_EQ(share_interval(n, n, 0.95).high, 1);
        EXPECT_NEAR(share_interval(0, n, 0.95).high, 1 - end, 1e-9);
        EXPECT_EQ(share_interval(0, n, 0.95).low, 0);
    }
}

// At its ends the observed count is just as rare as the confidence allows: summed here by recursion, not by logarithms.
TEST(ShareInterval, LeavesHalfOfTheRestBeyondEachEnd)
{
    const auto at_most = [](int k, int n, double p)
    {
        double term = std::pow(1 - p, n), sum = term;
        for (int i = 1; i <= k; ++i) sum += term *= (n - i + 1.0) / i * p / (1 - p);
        return sum;
    };
    for (const auto& [k, n] : {std::pair{3, 10}, std::pair{45, 50}, std::pair{95, 100}})
    {
        const Interval interval = share_interval(k, n, 0.9);
        EXPECT_NEAR(1 - at_most(k - 1, n, interval.low), 0.05, 1e-9);
        EXPECT_NEAR(at_most(k, n, interval.high), 0.05, 1e-9);
    }
}

TEST(SamplePoints, LieInTheCubeEvenlyAndDependOnTheSeedAlone)
{
    const auto points = sample_points(512, 14, 7);
    ASSERT_EQ(points.size(), 512U);
    for (std::size_t k = 0; k < 14; ++k)
    {
        double mean = 0;
        for (const auto& point : points)
        {
            EXPECT_GE(point[k], 0);
            EXPECT_LT(point[k], 1);
            mean += point[k] / 512;
        }
        EXPECT_NEAR(mean, 0.5, k < 12 ? 0.02 : 0.06) << k;  // beyond 12 by chance: 0.06 is more than four deviations
    }
    EXPECT_EQ(sample_points(512, 14, 7), points);
    EXPECT_NE(sample_points(512, 14, 8), points);
}

// A share of the unit square that is known: points by chance miss it by 0.02 on the average.
TEST(SamplePoints, FindAKnownShareBetterThanChance)
{
    double worst = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed)
    {
        const auto points = sample_points(500, 2, seed);
        const auto inside =
            std::count_if(points.begin(), points.end(), [](const auto& p) { return p[0] * p[0] + p[1] * p[1] < 1; });
        worst = std::max(worst, std::abs(static_cast<double>(inside) / 500 - std::atan(1.0)));
    }
    EXPECT_LT(worst, 0.02);
}

TEST(SampledText, SaysHowManyPassAndHowTheValuesAreSpread)
{
    const std::string text = sampled_text({100, 100, 0, 3});
    EXPECT_NE(text.find("100 of 100 sampled parts pass; the share behind it lies between 96.4 % and 100 % with 95 %"),
              std::string::npos)
        << text;
    EXPECT_NE(text.find("equally likely"), std::string::npos);
    EXPECT_NE(sampled_text({10, 8, 2, 1}).find("2 of them break a rule"), std::string::npos);
    EXPECT_EQ(sampled_text({}), "As built: no parts were sampled.");
}

}  // namespace
}  // namespace splicewright
