// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "cases/chance.h"
#include "cases/check_geometry.h"
#include "cases/random_case.h"
#include "cases/read_case.h"
#include "mesh/solid_mesher.h"
#include "tests/mesh/solid_measure.h"

namespace splicewright
{
namespace
{

constexpr double turn = 2 * std::numbers::pi;

bool is_valid(const Case& asked) { return geometry_problems(asked, {}, "random case").empty(); }

// A random case, with plug welds and partial welds where they are valid.
Case random_solid_case(std::uint64_t seed)
{
    const Case plain = read_case(random_case_text(seed), "random case").value();
    if (!plain.sleeve) return plain;
    Chance chance(seed + 1000003);
    Case asked = plain;
    if (chance.happens(0.4))
    {
        Case changed = asked;
        changed.sleeve->weld.coverage = Radian{chance.between(30, 340) * turn / 360};
        for (Radian& start : changed.sleeve->weld.start)
            start = Radian{chance.happens(0.3) ? 0 : chance.between(0, turn)};
        if (is_valid(changed)) asked = changed;
    }
    for (int tries = 0; tries < 6; ++tries)
    {
        Case changed = asked;
        PlugRing ring;
        ring.count = 1 + static_cast<int>(chance.below(4));
        ring.diameter = Millimetre{chance.between(4, 12)};
        ring.at = Millimetre{chance.between(-60, 60)};
        if (chance.happens(0.5)) ring.depth = Millimetre{chance.between(2, 8)};
        ring.start = Radian{chance.happens(0.3) ? 0 : chance.between(0, turn)};
        changed.sleeve->plugs.push_back(ring);
        if (is_valid(changed)) asked = changed;
    }
    return asked;
}

class RandomSolid : public testing::TestWithParam<std::uint64_t>
{
};

TEST_P(RandomSolid, IsMeshedWithoutAFoldAndHangsTogether)
{
    const Case asked = random_solid_case(GetParam());
    SolidMeshSize size;
    size.dofs = 60000;
    size.tolerance = 1;
    const SolidMeshAnswer answer = solid_mesh(asked, {}, size);
    EXPECT_GT(answer.smallest_jacobian_ratio, 0);
    EXPECT_EQ(sample::parts_of(answer, answer.regions), 1);
    double volume = 0;
    for (const std::string& region : answer.regions) volume += sample::measure_of(answer, region).volume;
    EXPECT_GT(volume, 0);
    EXPECT_TRUE(std::isfinite(volume));
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomSolid, testing::Range<std::uint64_t>(1, 21));

}  // namespace
}  // namespace splicewright
