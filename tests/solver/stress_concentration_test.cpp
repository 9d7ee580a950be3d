// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/stress_concentration.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>
#include <vector>

#include "solver/meridian.h"
#include "tests/mesh/sample_cases.h"

namespace splicewright
{
namespace
{

constexpr double d = 30;  // net diameter, mm

// Factors on the net section, nu 0.3: largest shear in torsion, largest first principal stress otherwise.
// Computed for this project by a separate program (nine-node axisymmetric elements, two meshes each), which gives
// Neuber's exact hyperbolic groove to 0.016 %: an independent computation, not a published value.
struct Row
{
    double step, radius;  // D/d, r/d
    double torsion, bending, tension;
};

constexpr Row shoulders[] = {
    {2, 0.1, 1.3930, 1.8245, 2.2293},     {1.5, 0.1, 1.3798, 1.8011, 2.1148}, {1.2, 0.05, 1.5277, 2.0929, 2.3152},
    {1.5, 0.05, 1.6160, 2.2748, 2.6953},  {2, 0.2, 1.2293, 1.4818, 1.7548},   {1.1, 0.03, 1.5883, 2.2040, 2.3416},
    {1.09, 0.03, 1.5668, 2.1605, 2.2848},
};

// The first two are half round (depth = radius), the others have parallel walls.
constexpr Row grooves[] = {
    {1.2, 0.1, 1.4944, 1.9859, 2.3194},
    {1.1, 0.05, 1.6684, 2.3623, 2.6401},
    {1.5, 0.1, 1.5542, 2.0447, 2.5185},
    {1.2, 0.05, 1.8030, 2.5746, 3.0322},
};

struct Factors
{
    Measured torsion, bending, tension;
};

Factors factors_of(const Case& asked, const std::string& id)
{
    const MeridianAnswer answer = meridian_answer(asked, {}, {0.5});
    const auto site = std::find_if(answer.sites.begin(), answer.sites.end(), [&](const auto& s) { return s.id == id; });
    EXPECT_NE(site, answer.sites.end()) << id;
    EXPECT_TRUE(answer.evidence.reached);
    const double pi = std::numbers::pi;
    const auto over = [](const Measured& peak, double nominal) {
        return Measured{peak.value / nominal, peak.error / nominal};
    };
    return {over(site->torsion.shear, 16 / (pi * d * d * d)), over(site->bending.principal, 32 / (pi * d * d * d)),
            over(site->axial.principal, 4 / (pi * d * d))};
}

Factors shoulder_of(const Row& row)
{
    const double D = d * row.step;
    return factors_of(sample::plain_shaft({{Millimetre{2 * D}, Millimetre{D}, Millimetre{0}},
                                           {Millimetre{3 * d}, Millimetre{d}, Millimetre{row.radius * d}}}),
                      "shoulder.left.1");
}

Factors groove_of(const Row& row)
{
    const double D = d * row.step, depth = (D - d) / 2;
    return factors_of(sample::plain_shaft({{Millimetre{5 * D}, Millimetre{D}, Millimetre{0}}},
                                          {{Millimetre{2.5 * D}, Millimetre{depth}, Millimetre{row.radius * d}}}),
                      "groove.left.1");
}

// 1 %: 0.5 % asked here, and the other program's two meshes still differ by up to 0.6 % where the step is shallow
// (D/d 1.09 and 1.10), falling.
void expect_near_other_program(const Factors& found, const Row& row)
{
    const auto compare = [&](const char* load, const Measured& factor, double other)
    {
        std::printf("    %-8s D/d %.2f r/d %.2f: %.4f +- %.4f, other program %.4f, %+.2f %%\n", load, row.step,
                    row.radius, factor.value, factor.error, other, 100 * (factor.value / other - 1));
        EXPECT_NEAR(factor.value, other, 0.01 * other) << load << " D/d " << row.step << " r/d " << row.radius;
    };
    compare("torsion", found.torsion, row.torsion);
    compare("bending", found.bending, row.bending);
    compare("tension", found.tension, row.tension);
}

void expect_in_bands(const Measured& found, const std::vector<ConcentrationFactor>& handbook, const Row& row)
{
    int compared = 0;
    for (const ConcentrationFactor& factor : handbook)
    {
        if (!factor.factor) continue;
        ++compared;
        const double difference_pct = 100 * (found.value / *factor.factor - 1),
                     bar_pct = 100 * found.error / found.value;
        EXPECT_GE(difference_pct + bar_pct, factor.band.low_pct)
            << factor.source << " D/d " << row.step << " r/d " << row.radius;
        EXPECT_LE(difference_pct - bar_pct, factor.band.high_pct)
            << factor.source << " D/d " << row.step << " r/d " << row.radius;
    }
    const bool outside_every_fit = row.step >= 1.5 && row.radius <= 0.1;  // torsion charts end there
    EXPECT_TRUE(compared > 0 || outside_every_fit) << "D/d " << row.step << " r/d " << row.radius;
}

TEST(ShoulderFactors, AgreeWithAnIndependentProgramAndEachPublishedFitWithinItsBand)
{
    for (const Row& row : shoulders)
    {
        const Factors found = shoulder_of(row);
        expect_near_other_program(found, row);
        const ShoulderFillet fillet{Millimetre{d * row.step}, Millimetre{d}, Millimetre{d * row.radius}, Millimetre{0}};
        expect_in_bands(found.torsion, shoulder_factors(fillet, Loading::torsion), row);
        expect_in_bands(found.bending, shoulder_factors(fillet, Loading::bending), row);
        expect_in_bands(found.tension, shoulder_factors(fillet, Loading::tension), row);
    }
}

TEST(GrooveFactors, AgreeWithAnIndependentProgramAndEachPublishedFitWithinItsBand)
{
    for (const Row& row : grooves)
    {
        const Factors found = groove_of(row);
        expect_near_other_program(found, row);
        const RingGroove groove{Millimetre{d * row.step}, Millimetre{d * (row.step - 1) / 2},
                                Millimetre{d * row.radius}, Millimetre{0}};
        expect_in_bands(found.torsion, groove_factors(groove, Loading::torsion), row);
        expect_in_bands(found.bending, groove_factors(groove, Loading::bending), row);
        expect_in_bands(found.tension, groove_factors(groove, Loading::tension), row);
    }
}

TEST(ShoulderFactors, DoNotDependOnTheSideOfTheShaft)
{
    const Row& row = shoulders[2];
    const Case left = sample::plain_shaft({{Millimetre{72}, Millimetre{36}, Millimetre{0}},
                                           {Millimetre{90}, Millimetre{30}, Millimetre{row.radius * d}}});
    const Factors a = factors_of(left, "shoulder.left.1"), b = factors_of(sample::mirrored(left), "shoulder.right.1");
    EXPECT_NEAR(a.torsion.value, b.torsion.value, a.torsion.error + b.torsion.error);
    EXPECT_NEAR(a.bending.value, b.bending.value, a.bending.error + b.bending.error);
    EXPECT_NEAR(a.tension.value, b.tension.value, a.tension.error + b.tension.error);
}

}  // namespace
}  // namespace splicewright
