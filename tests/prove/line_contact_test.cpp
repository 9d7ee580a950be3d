// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/line_contact.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace splicewright
{
namespace
{

const LineContact roller{Millimetre{12}, 300, {Megapascal{210000}, Megapascal{210000}}, {0.3, 0.3}};

TEST(LineContact, PressureCarriesTheLoad)
{
    const LineContactStress stress = line_contact_stress(roller).value;
    const double carried = std::numbers::pi / 2 * stress.half_width.value() * stress.peak_pressure.value();
    EXPECT_NEAR(carried, 300, 1e-10);  // round-off
}

// Below the middle: p0/b ((b^2 + 2 z^2)/sqrt(b^2 + z^2) - 2 z) across and p0 b/sqrt(b^2 + z^2) down, half their
// difference.
TEST(LineContact, LargestShearIsThatOfTheStressesBelowTheMiddle)
{
    const LineContactStress stress = line_contact_stress(roller).value;
    const double b = stress.half_width.value(), p0 = stress.peak_pressure.value();
    double most = 0, where = 0;
    for (double z = 0; z < 3 * b; z += 1e-4 * b)
    {
        const double root = std::hypot(b, z);
        const double across = p0 / b * ((b * b + 2 * z * z) / root - 2 * z), down = p0 * b / root;
        if (std::abs(down - across) / 2 <= most) continue;
        most = std::abs(down - across) / 2;
        where = z;
    }
    EXPECT_NEAR(stress.peak_shear.value(), most, 1e-4 * most);  // the factor has five digits
    EXPECT_NEAR(stress.depth.value(), where, 1e-3 * where);     // a flat maximum, walked in steps of 1e-4
}

}  // namespace
}  // namespace splicewright
