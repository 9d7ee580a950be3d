// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <optional>

#include "cases/beyond_revolution.h"
#include "cases/problem.h"
#include "cases/random_case.h"
#include "cases/read_case.h"
#include "solver/solid_answer.h"

namespace splicewright
{
namespace
{

constexpr int n_cases = 20;
constexpr double least_share = 0.95;  // what error bars are held to everywhere in the program

// Slow: twenty random bodies of revolution by both models.
TEST(SolidAgreement, TwentyRandomBodiesOfRevolutionAgreeWithinTheSumOfTheBars)
{
    int compared = 0, within = 0, cases = 0;  // with a million unknowns each
    for (std::uint64_t seed = 9001; cases < n_cases; ++seed)
    {
        const Result<Case> read = read_case(random_case_text(seed), "random.toml");
        ASSERT_TRUE(read.has_value());
        const Case& asked = read.value();
        if (!beyond_revolution(asked).empty()) continue;
        SolidBudget budget;
        std::optional<SolidModelAnswer> answer;
        try
        {
            answer = solid_model_answer(asked, {}, budget, 40);
        }
        catch (const CannotCompute& refusal)
        {
            // Faces so narrow that a million unknowns are far from enough: refused with words, by name.
            ASSERT_EQ(refusal.problem().field, "--solid-dofs");
            std::cout << "seed " << seed << " left out: " << refusal.what() << std::endl;
            continue;
        }
        ++cases;
        const SolidModelAnswer& solid = *answer;
        const MeridianAnswer meridian = meridian_answer(asked, {}, {1});
        for (const SiteAnswer& site : solid.answer.sites)
            for (const SiteAnswer& same : meridian.sites)
                for (const auto load : {&SiteAnswer::torsion, &SiteAnswer::bending, &SiteAnswer::axial})
                {
                    if (same.id != site.id) continue;
                    const Measured &one = (same.*load).von_mises, &other = (site.*load).von_mises;
                    const bool agrees = std::abs(one.value - other.value) <= one.error + other.error;
                    ++compared, within += agrees ? 1 : 0;
                    if (!agrees)
                        std::cout << "seed " << seed << " " << site.id << ": meridian " << one.value << " +- "
                                  << one.error << ", solid " << other.value << " +- " << other.error << "\n";
                }
        std::cout << "seed " << seed << ": " << within << " of " << compared << " so far" << std::endl;
    }
    EXPECT_GE(within, least_share * compared) << within << " of " << compared;
}

}  // namespace
}  // namespace splicewright
