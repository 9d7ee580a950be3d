// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <string>
#include <vector>

#include "solver/meridian.h"
#include "tests/mesh/sample_cases.h"

namespace splicewright
{
namespace
{

constexpr UnitPeak SiteAnswer::*loads[] = {&SiteAnswer::torsion, &SiteAnswer::bending, &SiteAnswer::axial};
constexpr const char* load_names[] = {" torsion", " bending", " axial"};
constexpr const char* peak_names[] = {" von Mises", " principal", " shear"};
constexpr Measured UnitPeak::*peaks[] = {&UnitPeak::von_mises, &UnitPeak::principal, &UnitPeak::shear};

struct Count
{
    int within = 0, all = 0;
};

struct Named
{
    std::string name;
    Measured number;
};

// Numbers of an answer, each with its error bar, in a fixed order.
std::vector<Named> numbers_of(const MeridianAnswer& answer)
{
    std::vector<Named> numbers{{"twist", answer.twist},
                               {"end rotation", answer.end_rotation},
                               {"extension", answer.extension},
                               {"torsion share", answer.share.torsion},
                               {"bending share", answer.share.bending},
                               {"axial share", answer.share.axial}};
    for (const SiteAnswer& here : answer.sites)
        for (std::size_t load = 0; load < 3; ++load)
            for (std::size_t peak = 0; peak < 3; ++peak)
                numbers.push_back({here.id + load_names[load] + peak_names[peak], (here.*loads[load]).*peaks[peak]});
    return numbers;
}

Count honest(const Case& asked, const char* name)
{
    const MeridianAnswer answer = meridian_answer(asked, {}, {1}),
                         reference = meridian_answer(asked, {}, {0.1, 300000});
    const std::vector<Named> found = numbers_of(answer), truth = numbers_of(reference);
    EXPECT_EQ(found.size(), truth.size());
    Count count;
    double worst = 0;
    for (std::size_t i = 0; i < found.size(); ++i)
    {
        const Measured &number = found[i].number, &exact = truth[i].number;
        if (exact.value == 0) continue;
        const double off = std::abs(number.value - exact.value);
        ++count.all;
        // The reference has an error of its own; 1e-6: below it, a bar says nothing that matters.
        if (off <= number.error + exact.error + 1e-6 * exact.value)
        {
            ++count.within;
            continue;
        }
        worst = std::max(worst, off / exact.value);
        std::printf("    %s: %s off by %.3f %%, bar %.3f %%\n", name, found[i].name.c_str(), 100 * off / exact.value,
                    100 * number.error / exact.value);
    }
    std::printf(
        "    %s: %d of %d true errors within the bar, largest beyond it %.2f %% of its value; reference at %.2f %%, %d "
        "nodes\n",
        name, count.within, count.all, 100 * worst, reference.evidence.worst_error_pct, reference.evidence.nodes);
    return count;
}

// DESIGN asks 95 of 100 over all published checks; 90 here, where a third of the numbers are of one and the same field.
TEST(ErrorBar, HoldsTheTrueErrorInNineOfTenNumbers)
{
    Count all;
    const auto add = [&](const Count& count) { all.within += count.within, all.all += count.all; };
    add(honest(sample::splice(), "splice"));
    add(honest(sample::tapered_splice(), "tapered"));
    add(honest(sample::pressed_splice(26, 40, 90, 0.03), "pressed"));
    std::printf("    all: %d of %d\n", all.within, all.all);
    EXPECT_GE(all.within, 0.9 * all.all);
}

}  // namespace
}  // namespace splicewright
