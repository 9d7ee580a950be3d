// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>

#include "post/making.h"
#include "tests/making/shop_cases.h"

namespace splicewright
{
namespace
{

// Middle of the range of each steel's chemistry and what another hand worked out for it (30 mm, 5 ml/100 g, 1 kJ/mm),
// as printed.
struct KnownSteel
{
    const char* name;
    Composition steel;
    double ce, cet, pcm, martensite_hv, martensite_start, preheat;
    bool is_within;
};
const KnownSteel known_steels[] = {
    {"1045", {0.465, 0.25, 0.75, 0, 0, 0, 0, 0}, 0.590, 0.540, 0.511, 678, 320, 265, false},
    {"4140", {0.405, 0.25, 0.875, 0.95, 0.2, 0, 0, 0}, 0.781, 0.560, 0.518, 634, 328, 280, false},
    {"4340", {0.405, 0.25, 0.7, 0.8, 0.25, 1.825, 0, 0}, 0.853, 0.586, 0.535, 634, 303, 299, false},
    {"300M", {0.42, 1.625, 0.75, 0.825, 0.475, 1.825, 0.075, 0}, 0.942, 0.629, 0.622, 646, 293, 332, false},
    {"8620", {0.205, 0.25, 0.8, 0.5, 0.2, 0.55, 0, 0}, 0.515, 0.344, 0.301, 473, 411, 118, true},
    {"1026", {0.25, 0, 0.75, 0, 0, 0, 0, 0}, 0.375, 0.325, 0.287, 511, 410, 104, true},
};

TEST(CarbonEquivalents, AreThoseWorkedOutByHand)
{
    for (const KnownSteel& known : known_steels)
    {
        constexpr double printed = 0.00051;  // three decimals
        EXPECT_NEAR(carbon_equivalent_iiw(known.steel), known.ce, printed) << known.name;
        EXPECT_NEAR(carbon_equivalent_cet(known.steel), known.cet, printed) << known.name;
        EXPECT_NEAR(carbon_equivalent_pcm(known.steel), known.pcm, printed) << known.name;
    }
}

TEST(Martensite, HasTheHardnessAndTheStartWorkedOutByHand)
{
    for (const KnownSteel& known : known_steels)
    {
        EXPECT_NEAR(martensite_hardness(known.steel), known.martensite_hv, 0.51) << known.name;
        EXPECT_NEAR(martensite_start(known.steel), known.martensite_start, 0.51) << known.name;
    }
}

TEST(PreheatMethodB, IsWorkedOutAndItsRangeKept)
{
    const Welding welding{30, 1, 5};
    for (const KnownSteel& known : known_steels)
    {
        const double cet = carbon_equivalent_cet(known.steel);
        EXPECT_NEAR(preheat_method_b(cet, welding), known.preheat, 0.51) << known.name;
        EXPECT_EQ(outside_method_b(known.steel, cet, Megapascal(500), welding).empty(), known.is_within) << known.name;
    }
}

TEST(PreheatMethodB, SaysWhatIsOutside)
{
    const Composition steel{0.18, 0.3, 1.2, 0, 0, 0, 0, 0};
    const auto outside = [&](double yield, const Welding& welding)
    { return outside_method_b(steel, 0.3, Megapascal(yield), welding); };
    EXPECT_EQ(outside(355, {30, 1, 5}), "");
    EXPECT_NE(outside(1001, {30, 1, 5}).find("yield"), std::string::npos);
    EXPECT_NE(outside(355, {91, 1, 5}).find("thickness"), std::string::npos);
    EXPECT_NE(outside(355, {30, 0.49, 5}).find("heat input"), std::string::npos);
    EXPECT_NE(outside(355, {30, 1, 21}).find("hydrogen"), std::string::npos);
}

TEST(PreheatSeferian, IsThatWorkedOutByHand)
{
    // 1045 at 28 mm: (0.465 + 0.75/9) 1.14 = 0.6251; 350 sqrt(0.3751) = 214.36.
    EXPECT_NEAR(preheat_seferian({0.465, 0.25, 0.75, 0, 0, 0, 0, 0}, 28), 214.36, 0.01);
    EXPECT_EQ(preheat_seferian({0.1, 0, 0.5, 0, 0, 0, 0, 0}, 28), 0);
}

// Thick part, 1 kJ/mm, factor 1, as printed: 5.3 s at 20, 9.5 s at 200, 15.6 s at 300 deg C.
TEST(CoolingTime, IsThatWorkedOutByHand)
{
    EXPECT_NEAR(cooling_time(20, 1, 1), 5.3, 0.051);
    EXPECT_NEAR(cooling_time(200, 1, 1), 9.5, 0.051);
    EXPECT_NEAR(cooling_time(300, 1, 1), 15.6, 0.051);
    EXPECT_NEAR(cooling_time(200, 2, 0.67), 2 * 0.67 * cooling_time(200, 1, 1), 1e-9);
}

// Recomputed with another program from the formulas of the source.
TEST(HeatAffectedHardness, IsThatWorkedOutElsewhere)
{
    EXPECT_NEAR(heat_affected_hardness({0.465, 0.25, 0.75, 0, 0, 0, 0, 0}, 12), 464.557, 0.001);
    EXPECT_NEAR(heat_affected_hardness({0.18, 0.3, 1.2, 0, 0, 0, 0, 0}, 8), 284.204, 0.001);
    EXPECT_NEAR(heat_affected_hardness({0.405, 0.25, 0.875, 0.95, 0.2, 0, 0, 0}, 10), 617.682, 0.001);
}

TEST(HeatAffectedHardness, FallsWithSlowerCoolingBetweenMartensiteAndBainite)
{
    const Composition steel{0.465, 0.25, 0.75, 0, 0, 0, 0, 0};
    double before = heat_affected_hardness(steel, 0.1);
    // The arc tangent of the source ends 0.3 % of the difference beyond full martensite.
    EXPECT_NEAR(before, martensite_hardness(steel), 0.005 * martensite_hardness(steel));
    for (const double seconds : {1.5, 5.0, 20.0, 100.0})
    {
        const double here = heat_affected_hardness(steel, seconds);
        EXPECT_LT(here, before) << seconds;
        before = here;
    }
    EXPECT_EQ(heat_affected_hardness(steel, 1000), heat_affected_hardness(steel, 10000));
}

TEST(SteelAdvice, CountsTheWeldMetalWhenItIsTheRicher)
{
    // ER70S-6 of the library: 0.105 + 1.625/10 + 0.03 = 0.2975; E355 tube: 0.132 + 0.96/10 = 0.228.
    const std::vector<SteelAdvice> steels = steel_advice(made_splice("", ""));
    ASSERT_EQ(steels.size(), 3U);
    EXPECT_NEAR(steels[2].known->cet.value, 0.228, 1e-9);
    EXPECT_NEAR(steels[2].known->cet_taken, 0.2975, 1e-9);
    EXPECT_EQ(steels[0].known->cet_taken, steels[0].known->cet.value);
}

}  // namespace
}  // namespace splicewright
