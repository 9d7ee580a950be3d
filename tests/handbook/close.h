// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <cmath>

namespace splicewright
{

// How near two numbers must be, and why.
struct Allowance
{
    double absolute = 0;
    const char* reason = "";
};

// Formulas evaluated in another order.
inline Allowance round_off(double expected) { return {1e-12 * std::abs(expected) + 1e-15, "round-off"}; }

// Half a unit in the last printed digit: decimals after the point.
inline Allowance printed_decimals(int decimals) { return {0.5001 * std::pow(10.0, -decimals), "digits printed"}; }

// Half a unit in the last of so many printed significant digits.
inline Allowance printed_digits(int digits, double expected)
{
    const double magnitude = std::floor(std::log10(std::abs(expected)));
    return {0.5001 * std::pow(10.0, magnitude + 1 - digits), "digits printed"};
}

// A number that the check itself states only to a share of its value.
inline Allowance relative(double share, double expected, const char* reason)
{
    return {share * std::abs(expected), reason};
}

inline testing::AssertionResult close(double computed, double expected, Allowance within)
{
    if (std::abs(computed - expected) <= within.absolute) return testing::AssertionSuccess();
    return testing::AssertionFailure() << computed << " against " << expected << ", off by " << computed - expected
                                       << ", allowed " << within.absolute << " (" << within.reason << ")";
}

}  // namespace splicewright
