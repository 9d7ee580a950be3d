// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/critical_speed.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;

RotorLength length_of(double length, double diameter, double bore, double density)
{
    return {{Millimetre{diameter}, Millimetre{bore}}, Millimetre{length}, Megapascal{210000}, density};
}

// Sixteen cubic elements leave an error of the order (pi/16)^4/720.
constexpr double element_share = 1e-5;

TEST(CriticalSpeed, OfAUniformTubeIsTheThinBeams)
{
    const RoundSection section{Millimetre{40}, Millimetre{30}};
    const double exact = pi * pi / (900.0 * 900) *
                         std::sqrt(210000 * second_moment_of_area(section) / (7.85e-9 * section_area(section)));
    EXPECT_NEAR(first_critical_speed({length_of(900, 40, 30, 7.85e-9)}, {}).value.value(), exact,
                element_share * exact);
}

TEST(CriticalSpeed, DoesNotDependOnHowTheShaftIsCutUp)
{
    const double whole = first_critical_speed({length_of(900, 40, 0, 7.85e-9)}, {}).value.value();
    const double parts =
        first_critical_speed({length_of(130, 40, 0, 7.85e-9), length_of(770, 40, 0, 7.85e-9)}, {}).value.value();
    EXPECT_NEAR(parts, whole, element_share * whole);
}

// One mass on a light shaft: deflection under a unit load a^2 b^2/(3 E I L), exact for cubic elements.
TEST(CriticalSpeed, OfOneMassAnywhereIsThatOfItsSpring)
{
    const double a = 137, L = 900, I = pi / 64 * std::pow(40, 4), m = 3e-3;
    const double exact = std::sqrt(3 * 210000 * I * L / (m * a * a * (L - a) * (L - a)));
    const double found = first_critical_speed({length_of(L, 40, 0, 0)}, {{Millimetre{a}, Tonne{m}}}).value.value();
    EXPECT_NEAR(found, exact, 1e-8 * exact);  // round-off of a stiffness matrix of condition 1e6
}

TEST(CriticalSpeed, OfAllMassesLiesAboveDunkerleysBound)
{
    const std::vector<RotorLength> shaft{length_of(400, 30, 0, 7.85e-9), length_of(300, 45, 0, 7.85e-9)};
    const std::vector<RotorLength> light{length_of(400, 30, 0, 0), length_of(300, 45, 0, 0)};
    const RotorMass disc{Millimetre{250}, Tonne{2e-3}};
    const double together = first_critical_speed(shaft, {disc}).value.value();
    const double bound =
        combined_critical_speed({first_critical_speed(shaft, {}).value, first_critical_speed(light, {disc}).value})
            .value();
    EXPECT_GT(together, bound);
    EXPECT_LT(together, 1.1 * bound);  // the two shapes are alike, so the bound is close
}

}  // namespace
}  // namespace splicewright
