// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/sn_curve.h"

#include "cases/problem.h"
#include "tests/handbook/close.h"

namespace splicewright
{
namespace
{

SnCurve fat63() { return normal_curve(Megapascal{63}, 1.0, Provenance::from_memory); }
SnCurve shear100() { return shear_curve(Megapascal{100}, 1.0, Provenance::from_memory); }

TEST(SnCurve, ClassIsTheRangeAtTwoMillionCycles)
{
    for (const SnCurve& curve : {fat63(), shear100(), effective_notch_curve(NotchStress::first_principal, 1.0)})
        EXPECT_TRUE(close(cycles(curve, curve.fatigue_class, Amplitude::variable).cycles, 2e6, round_off(2e6)));
}

// FAT 63 endures 36.8 MPa and FAT 36 endures 21 MPa at 1e7 cycles.
TEST(SnCurve, KneeRangesAreThePublishedFatigueLimits)
{
    EXPECT_TRUE(close(knee_range(fat63()).value(), 36.8, printed_decimals(1)));
    EXPECT_TRUE(
        close(knee_range(normal_curve(Megapascal{36}, 1.0, Provenance::from_memory)).value(), 21, printed_decimals(0)));
    // 0.457 of a shear class at 1e8.
    EXPECT_TRUE(close(knee_range(shear100()).value(), 45.7, printed_decimals(1)));
}

// A 28 mm bar under 0 to 1200 N m: 278 MPa of shear range allows 1.2e4 cycles at class 100, 3.9e3 at class 80.
TEST(SnCurve, ShearLivesOfTheExampleBar)
{
    const Megapascal range{16 * 1.2e6 / (3.14159265358979 * 28 * 28 * 28)};
    EXPECT_TRUE(close(cycles(shear100(), range, Amplitude::variable).cycles, 1.2e4, printed_digits(2, 1.2e4)));
    const Life life = cycles(shear_curve(Megapascal{80}, 1.0, Provenance::from_memory), range, Amplitude::variable);
    EXPECT_TRUE(close(life.cycles, 3.9e3, printed_digits(2, 3.9e3)));
    EXPECT_TRUE(life.extrapolated);
}

TEST(SnCurve, ContinuousAtTheKnee)
{
    for (const SnCurve& curve : {fat63(), shear100()})
        for (const Amplitude amplitude : {Amplitude::constant, Amplitude::variable})
        {
            const Megapascal above = (1 + 1e-12) * knee_range(curve), below = (1 - 1e-12) * knee_range(curve);
            EXPECT_TRUE(close(cycles(curve, above, amplitude).cycles, curve.knee_cycles,
                              relative(1e-10, curve.knee_cycles, "slope 22 over 1e-12 of range")));
            EXPECT_TRUE(close(cycles(curve, below, amplitude).cycles, curve.knee_cycles,
                              relative(1e-10, curve.knee_cycles, "slope 22 over 1e-12 of range")));
        }
}

TEST(SnCurve, LifeFallsStrictlyAsRangeGrows)
{
    for (const SnCurve& curve : {fat63(), shear100()})
        for (const Amplitude amplitude : {Amplitude::constant, Amplitude::variable})
        {
            double before = cycles(curve, Megapascal{0}, amplitude).cycles;
            EXPECT_TRUE(std::isinf(before));
            for (double range = 1; range < 2000; range *= 1.05)
            {
                const double now = cycles(curve, Megapascal{range}, amplitude).cycles;
                EXPECT_LT(now, before) << range;
                before = now;
            }
        }
}

TEST(SnCurve, AllowableRangeIsTheInverse)
{
    for (const SnCurve& curve : {fat63(), shear100(), effective_notch_curve(NotchStress::shear, 1.35)})
        for (const Amplitude amplitude : {Amplitude::constant, Amplitude::variable})
            for (double range = 5; range < 1500; range *= 1.3)
            {
                const double n_cycles = cycles(curve, Megapascal{range}, amplitude).cycles;
                EXPECT_TRUE(close(allowable_range(curve, n_cycles, amplitude).value(), range, round_off(range)));
            }
}

TEST(SnCurve, PartialFactorDividesStrength)
{
    const SnCurve plain = effective_notch_curve(NotchStress::von_mises, 1.0);
    const SnCurve safe = effective_notch_curve(NotchStress::von_mises, 1.35);
    const double life = cycles(safe, Megapascal{180}, Amplitude::variable).cycles;
    EXPECT_TRUE(close(life, cycles(plain, Megapascal{180 * 1.35}, Amplitude::variable).cycles, round_off(life)));
    EXPECT_THROW(effective_notch_curve(NotchStress::von_mises, 0.9), BrokenPromise);
}

TEST(SnCurve, VariableAmplitudeIsNeverKinderThanConstant)
{
    for (double range = 5; range < 500; range *= 1.2)
        EXPECT_LE(cycles(fat63(), Megapascal{range}, Amplitude::variable).cycles,
                  cycles(fat63(), Megapascal{range}, Amplitude::constant).cycles);
}

}  // namespace
}  // namespace splicewright
