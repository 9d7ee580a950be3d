// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/stress_concentration.h"

#include "cases/problem.h"
#include "tests/handbook/close.h"

namespace splicewright
{
namespace
{

// Factors evaluated from the fits by a separate program, four decimals, beside the converged axisymmetric
// finite-element factor (nu 0.3) that the trust bands rest on; 0: outside the range of the fit.
struct Row
{
    Loading loading;
    double step, radius;  // D/d, r/d
    double finite_elements, first, second;
};
constexpr double absent = 0;

// First: [Pilkey1997]; second: [Roark2002] in torsion, [Tipton1996] otherwise.
const Row shoulders[] = {
    {Loading::torsion, 2, 0.1, 1.3930, absent, absent},     {Loading::bending, 2, 0.1, 1.8245, 1.8021, 1.8433},
    {Loading::tension, 2, 0.1, 2.2293, 1.9645, 2.1686},     {Loading::torsion, 1.5, 0.1, 1.3798, 1.4126, 1.3752},
    {Loading::bending, 1.5, 0.1, 1.8011, 1.7430, 1.8153},   {Loading::tension, 1.5, 0.1, 2.1148, 1.8603, 2.0681},
    {Loading::torsion, 1.2, 0.05, 1.5277, 1.5600, 1.5183},  {Loading::bending, 1.2, 0.05, 2.0929, 1.9564, 2.0950},
    {Loading::tension, 1.2, 0.05, 2.3152, 2.0180, 2.2621},  {Loading::torsion, 1.5, 0.05, 1.6160, absent, absent},
    {Loading::bending, 1.5, 0.05, 2.2748, 2.1686, 2.2792},  {Loading::tension, 1.5, 0.05, 2.6953, 2.2614, 2.6191},
    {Loading::torsion, 2, 0.2, 1.2293, 1.2518, 1.2212},     {Loading::bending, 2, 0.2, 1.4818, 1.4753, 1.4937},
    {Loading::tension, 2, 0.2, 1.7548, 1.6290, 1.7196},     {Loading::torsion, 1.1, 0.03, 1.5883, 1.6197, 1.5777},
    {Loading::bending, 1.1, 0.03, 2.2040, 2.0446, 2.1930},  {Loading::tension, 1.1, 0.03, 2.3416, 2.0603, 2.2712},
    {Loading::torsion, 1.09, 0.03, 1.5668, 1.5980, 1.5584}, {Loading::bending, 1.09, 0.03, 2.1605, 2.0131, 2.1497},
    {Loading::tension, 1.09, 0.03, 2.2848, 2.0203, 2.2134},
};

// U and half-round grooves. First: [Pilkey1997]; second: [Roark2002], torsion only.
const Row grooves[] = {
    {Loading::torsion, 1.2, 0.1, 1.4944, 1.5326, 1.5434},  {Loading::bending, 1.2, 0.1, 1.9859, 2.0589, absent},
    {Loading::tension, 1.2, 0.1, 2.3194, 2.1864, absent},  {Loading::torsion, 1.1, 0.05, 1.6684, 1.7155, 1.7250},
    {Loading::bending, 1.1, 0.05, 2.3623, 2.4386, absent}, {Loading::tension, 1.1, 0.05, 2.6401, 2.5161, absent},
    {Loading::torsion, 1.5, 0.1, 1.5542, 1.5205, 1.5156},  {Loading::bending, 1.5, 0.1, 2.0447, 1.9141, absent},
    {Loading::tension, 1.5, 0.1, 2.5185, 2.3136, absent},  {Loading::torsion, 1.2, 0.05, 1.8030, 1.8068, 1.8560},
    {Loading::bending, 1.2, 0.05, 2.5746, 2.5231, absent}, {Loading::tension, 1.2, 0.05, 3.0322, 2.8240, absent},
};

ShoulderFillet shoulder_of(const Row& row)
{
    return {Millimetre{30 * row.step}, Millimetre{30}, Millimetre{30 * row.radius}, Millimetre{0}};
}

RingGroove groove_of(const Row& row)
{
    return {Millimetre{30 * row.step}, Millimetre{15 * (row.step - 1)}, Millimetre{30 * row.radius}, Millimetre{0}};
}

void expect_tabulated(const ConcentrationFactor& computed, double tabulated, const Row& row)
{
    SCOPED_TRACE(testing::Message() << name_of(row.loading) << " D/d " << row.step << " r/d " << row.radius << " "
                                    << computed.source);
    ASSERT_EQ(computed.factor.has_value(), tabulated != absent);
    EXPECT_EQ(computed.absent_because.empty(), computed.factor.has_value());
    if (computed.factor)
    {
        EXPECT_TRUE(close(*computed.factor, tabulated, printed_decimals(4)));
    }
}

void expect_in_band(const ConcentrationFactor& computed, const Row& row)
{
    if (!computed.factor) return;
    const double difference_pct = 100 * (row.finite_elements / *computed.factor - 1);
    EXPECT_GE(difference_pct, computed.band.low_pct) << computed.source << " D/d " << row.step << " r/d " << row.radius;
    EXPECT_LE(difference_pct, computed.band.high_pct)
        << computed.source << " D/d " << row.step << " r/d " << row.radius;
}

TEST(ShoulderFillet, FitsReproduceTheTabulatedFactors)
{
    for (const Row& row : shoulders)
    {
        const std::vector<ConcentrationFactor> factors = shoulder_factors(shoulder_of(row), row.loading);
        ASSERT_EQ(factors.size(), 2U);
        expect_tabulated(factors[0], row.first, row);
        expect_tabulated(factors[1], row.second, row);
    }
}

TEST(RingGroove, FitsReproduceTheTabulatedFactors)
{
    for (const Row& row : grooves)
    {
        const std::vector<ConcentrationFactor> factors = groove_factors(groove_of(row), row.loading);
        ASSERT_EQ(factors.size(), row.loading == Loading::torsion ? 2U : 1U);
        expect_tabulated(factors[0], row.first, row);
        if (factors.size() == 2) expect_tabulated(factors[1], row.second, row);
    }
}

TEST(TrustBand, HoldsTheFiniteElementFactors)
{
    for (const Row& row : shoulders)
        for (const ConcentrationFactor& factor : shoulder_factors(shoulder_of(row), row.loading))
            expect_in_band(factor, row);
    for (const Row& row : grooves)
        for (const ConcentrationFactor& factor : groove_factors(groove_of(row), row.loading))
            expect_in_band(factor, row);
}

TEST(TrustBand, IsWiderWhereNothingWasCompared)
{
    const ShoulderFillet sharp{Millimetre{40}, Millimetre{30}, Millimetre{0.4}, Millimetre{0}};
    const ShoulderFillet usual{Millimetre{36}, Millimetre{30}, Millimetre{2}, Millimetre{0}};
    const TrustBand wide = shoulder_factors(sharp, Loading::bending)[0].band;
    const TrustBand narrow = shoulder_factors(usual, Loading::bending)[0].band;
    EXPECT_GT(wide.high_pct, narrow.high_pct);
    EXPECT_LT(wide.low_pct, narrow.low_pct);
    EXPECT_NE(wide.reason, narrow.reason);
}

TEST(ShoulderFillet, OutsideTheFitNoFactorIsMadeUp)
{
    const ShoulderFillet sharp{Millimetre{60}, Millimetre{30}, Millimetre{0.5}, Millimetre{0}};
    for (const Loading loading : {Loading::torsion, Loading::bending, Loading::tension})
    {
        const ConcentrationFactor first = shoulder_factors(sharp, loading)[0];
        EXPECT_FALSE(first.factor.has_value());
        EXPECT_NE(first.absent_because.find("30"), std::string::npos) << first.absent_because;
    }
}

TEST(ShoulderFillet, HollowBarsAreOutsideTheCharts)
{
    const ShoulderFillet hollow{Millimetre{36}, Millimetre{30}, Millimetre{2}, Millimetre{10}};
    for (const ConcentrationFactor& factor : shoulder_factors(hollow, Loading::tension))
        EXPECT_FALSE(factor.factor.has_value());
    EXPECT_THROW(shoulder_factors({Millimetre{30}, Millimetre{30}, Millimetre{2}, Millimetre{0}}, Loading::torsion),
                 BrokenPromise);
}

// The two torsion fits are of different origin; they part by at most 3.5 % wherever both speak.
TEST(ShoulderFillet, TorsionFitsAgree)
{
    for (const double step : {1.05, 1.1, 1.3, 1.6, 2.0})
        for (const double ratio : {0.3, 0.7, 1.5, 3.0, 4.0})
        {
            const Millimetre radius{15 * (step - 1) / ratio};
            const auto factors =
                shoulder_factors({Millimetre{30 * step}, Millimetre{30}, radius, Millimetre{0}}, Loading::torsion);
            EXPECT_TRUE(close(*factors[0].factor, *factors[1].factor,
                              relative(0.035, *factors[1].factor, "spread of two chart fits")));
        }
}

// The two halves of a fit are separate regressions; they must nearly meet where they join.
TEST(ShoulderFillet, BranchesMeetAtDepthTwiceTheRadius)
{
    for (const Loading loading : {Loading::bending, Loading::tension})
        for (const double step : {1.05, 1.2, 1.5, 2.0})
        {
            const double radius = 7.5 * (step - 1);
            const auto factor = [&](double r) {
                return *shoulder_factors({Millimetre{30 * step}, Millimetre{30}, Millimetre{r}, Millimetre{0}},
                                         loading)[0]
                            .factor;
            };
            const double below = factor(radius * 1.0001), above = factor(radius * 0.9999);
            EXPECT_TRUE(close(above, below, relative(0.006, below, "two regressions of one chart")));
        }
}

TEST(ShoulderFillet, FactorFallsWithRadius)
{
    for (const Loading loading : {Loading::torsion, Loading::bending, Loading::tension})
    {
        double before = 10;
        for (double radius = 1.0; radius <= 6; radius += 0.25)
        {
            const auto factors =
                shoulder_factors({Millimetre{38}, Millimetre{30}, Millimetre{radius}, Millimetre{0}}, loading);
            if (!factors[0].factor) continue;
            EXPECT_LT(*factors[0].factor, before) << name_of(loading) << " r " << radius;
            EXPECT_GT(*factors[0].factor, 1);
            before = *factors[0].factor;
        }
        EXPECT_LT(before, 10);
    }
}

// Nine digits of the exact solution at a/rho = 2, 8 and 100, nu 0.3.
TEST(DeepGroove, MatchesTheHyperbolicSolution)
{
    struct Exact
    {
        double ratio, tension, bending, torsion;
    };
    for (const Exact& exact :
         {Exact{2, 1.709738757, 1.481632273, 1.254020785}, Exact{8, 3.016949153, 2.396462786, 1.714285714},
          Exact{100, 10.17636916, 7.651701837, 4.340089719}})
    {
        const auto factor = [&](Loading loading)
        { return *deep_groove_factor(Millimetre{exact.ratio}, Millimetre{1}, 0.3, loading).factor; };
        EXPECT_TRUE(close(factor(Loading::tension), exact.tension, printed_digits(10, exact.tension)));
        EXPECT_TRUE(close(factor(Loading::bending), exact.bending, printed_digits(10, exact.bending)));
        EXPECT_TRUE(close(factor(Loading::torsion), exact.torsion, printed_digits(10, exact.torsion)));
    }
}

TEST(DeepGroove, VanishesForAGrooveWiderThanTheBar)
{
    for (const Loading loading : {Loading::torsion, Loading::bending, Loading::tension})
        EXPECT_TRUE(close(*deep_groove_factor(Millimetre{1}, Millimetre{1e9}, 0.3, loading).factor, 1,
                          {2e-9, "first order in a/rho"}));
}

// In oblate spheroidal coordinates u_theta/r depends on u alone, with slope A/cosh^3 u, so that the torque is
// 2 pi G A c^3 times the integral of sin^3 v over the neck and the peak shear is G A tan(edge).
TEST(DeepGroove, TorsionIsTheQuadratureOfTheNeckShear)
{
    const double ratio = 8, edge = std::atan(std::sqrt(ratio));  // tan^2 of the asymptote angle is a/rho
    constexpr int n_steps = 20000;
    double integral = 0;  // of sin^3
    for (int step = 0; step < n_steps; ++step)
        integral += std::pow(std::sin(edge * (step + 0.5) / n_steps), 3) * edge / n_steps;
    // Nominal shear 2 T/(pi a^3) with a = c sin(edge).
    const double expected = std::tan(edge) * std::pow(std::sin(edge), 3) / (4 * integral);
    EXPECT_TRUE(close(*deep_groove_factor(Millimetre{8}, Millimetre{1}, 0.3, Loading::torsion).factor, expected,
                      relative(1e-8, expected, "midpoint rule with 20000 steps")));
}

}  // namespace
}  // namespace splicewright
