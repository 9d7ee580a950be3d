// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "tests/fracture/cracked_bar.h"
#include "tests/mesh/sample_cases.h"

namespace splicewright
{
namespace
{

const TipAnswer& tip_named(const StressIntensities& found, const std::string& id)
{
    const auto tip = std::find_if(found.tips.begin(), found.tips.end(), [&](const auto& t) { return t.id == id; });
    EXPECT_NE(tip, found.tips.end()) << id;
    return *tip;
}

bool is_absent(const StressIntensities& found, const std::string& id)
{
    return std::any_of(found.absent_tips.begin(), found.absent_tips.end(),
                       [&](const std::string& text) { return text.starts_with(id + ":"); });
}

void expect_within_bars(const ModeIntensities& a, const ModeIntensities& b, double sign_of_sliding)
{
    EXPECT_NEAR(a.I.value, b.I.value, a.I.error + b.I.error);
    EXPECT_NEAR(a.II.value, sign_of_sliding * b.II.value, a.II.error + b.II.error);
}

TEST(SpliceIntensity, IsGivenAtTheLandAndAtBothRoots)
{
    const StressIntensities found = stress_intensities(sample::splice(), {}, {1});
    EXPECT_TRUE(found.reached);
    EXPECT_LE(found.worst_error_pct, 1);
    EXPECT_TRUE(found.absent_tips.empty());
    for (const char* id : {"land-edge", "root.left", "root.right"})
    {
        const TipAnswer& tip = tip_named(found, id);
        EXPECT_LT(tip.energy_mismatch_pct, 1) << id;  // two integrals of one solution, within the accuracy asked
        EXPECT_EQ(tip.brackets.size(), 1u) << id;
        EXPECT_GT(std::abs(tip.brackets[0].torsion.III.value), tip.brackets[0].torsion.III.error) << id;
    }
    EXPECT_GT(tip_named(found, "land-edge").brackets[0].axial.I.value, 0);
}

TEST(SpliceIntensity, OfTheMirroredSpliceIsMirrored)
{
    const StressIntensities one = stress_intensities(sample::splice(), {}, {1});
    const StressIntensities two = stress_intensities(sample::mirrored(sample::splice()), {}, {1});
    for (const auto& [a, b] :
         {std::pair{"root.left", "root.right"}, {"root.right", "root.left"}, {"land-edge", "land-edge"}})
    {
        SCOPED_TRACE(a);
        const TipIntensities& left = tip_named(one, a).brackets[0];
        const TipIntensities& right = tip_named(two, b).brackets[0];
        // Up is to the right at the land, so sliding changes its sign there, and away from the axis at the roots.
        const double sliding = std::string(a) == "land-edge" ? -1 : 1;
        expect_within_bars(left.axial, right.axial, sliding);
        expect_within_bars(left.bending, right.bending, sliding);
        EXPECT_NEAR(std::abs(left.torsion.III.value), std::abs(right.torsion.III.value),
                    left.torsion.III.error + right.torsion.III.error);
    }
}

TEST(SpliceIntensity, BarsCoverWhatAFinerMeshSays)
{
    const StressIntensities coarse = stress_intensities(sample::splice(), {}, {1});
    const StressIntensities fine = stress_intensities(sample::splice(), {}, {0.01, 60000});
    ASSERT_GT(fine.nodes, 3 * coarse.nodes);
    for (const TipAnswer& tip : coarse.tips)
        for (const auto load : {&TipIntensities::torsion, &TipIntensities::bending, &TipIntensities::axial})
            for (const auto mode : {&ModeIntensities::I, &ModeIntensities::II, &ModeIntensities::III})
            {
                const Measured& known = tip.brackets[0].*load.*mode;
                const Measured& truth = tip_named(fine, tip.id).brackets[0].*load.*mode;
                EXPECT_NEAR(known.value, truth.value, known.error + truth.error) << tip.id;
            }
}

TEST(SpliceIntensity, OfTheLandIsThatOfTheBareBarWithoutASleeve)
{
    // Equal 30 mm bars without a sleeve and without a blend are the plain bar with an internal crack.
    Case bare = sample::tapered_splice();
    bare.sleeve.reset();
    bare.joint->penetration = Millimetre{7};
    const double length =
        std::min(bare.bar[0]->sections.front().length.value(), bare.bar[1]->sections.front().length.value());
    const StressIntensities found = stress_intensities(bare, {}, {0.3});
    const StressIntensities plain =
        stress_intensities(sample::cracked_bar(sample::RingCrack::internal, 8, 15, length), {0.3});
    const TipIntensities& a = tip_named(found, "land-edge").brackets[0];
    const TipIntensities& b = plain.tips.at(0).brackets[0];
    expect_within_bars(a.axial, b.axial, 1);
    expect_within_bars(a.bending, b.bending, 1);
    EXPECT_NEAR(a.torsion.III.value, b.torsion.III.value, a.torsion.III.error + b.torsion.III.error);
}

TEST(SpliceIntensity, OfASnugSlitIsGivenFreeAndHeld)
{
    const Case snug = sample::with_slit(sample::splice(), SlitState::snug, SlitState::snug);
    const StressIntensities found = stress_intensities(snug, {}, {1});
    const TipAnswer& root = tip_named(found, "root.right");
    ASSERT_EQ(root.brackets.size(), 2u);
    EXPECT_NE(root.brackets[0].bending.I.value, 0);
    EXPECT_EQ(root.brackets[1].bending.I.value, 0);
    EXPECT_NEAR(root.brackets[0].torsion.III.value, root.brackets[1].torsion.III.value,
                1e-9 * std::abs(root.brackets[0].torsion.III.value));
}

TEST(SpliceIntensity, SaysWhichTipsAreAbsentAndWhy)
{
    Scenario lost;
    lost.butt_fused = false;
    EXPECT_TRUE(is_absent(stress_intensities(sample::splice(), lost, {5}), "land-edge"));
    Scenario one_weld;
    one_weld.sleeve_weld_fused[0] = false;
    EXPECT_TRUE(is_absent(stress_intensities(sample::splice(), one_weld, {5}), "root.left"));
    EXPECT_TRUE(is_absent(stress_intensities(sample::tapered_splice(), {}, {5}), "land-edge"));
    const Case bonded = sample::with_slit(sample::splice(), SlitState::bonded, SlitState::open);
    EXPECT_TRUE(is_absent(stress_intensities(bonded, {}, {5}), "root.left"));
}

TEST(SpliceIntensity, BetweenAlmostEqualSteelsCarriesANoteAndAWiderBar)
{
    const Case equal = sample::splice();
    Case other = equal;
    other.sleeve->material.elastic_modulus = Megapascal{206000};
    const StressIntensities one = stress_intensities(equal, {}, {1}), two = stress_intensities(other, {}, {1});
    const TipAnswer& root = tip_named(two, "root.left");
    EXPECT_FALSE(root.note.empty());
    const Measured& wide = root.brackets[0].torsion.III;
    EXPECT_GT(wide.error, 0.5 * (210.0 / 206 - 1) * std::abs(wide.value));
    EXPECT_LT(wide.error, 0.03 * std::abs(wide.value));
    EXPECT_TRUE(tip_named(one, "root.left").note.empty());
    EXPECT_TRUE(tip_named(two, "land-edge").note.empty());
}

TEST(SpliceIntensity, IsRefusedBetweenUnlikeMetals)
{
    Case other = sample::splice();
    other.sleeve->material.elastic_modulus = Megapascal{70000};
    const StressIntensities found = stress_intensities(other, {}, {1});
    EXPECT_TRUE(is_absent(found, "root.left"));
    EXPECT_TRUE(is_absent(found, "root.right"));
    EXPECT_EQ(found.tips.size(), 1u);
}

TEST(SpliceIntensity, OfAPlainShaftIsEmpty)
{
    const Case plain = sample::plain_shaft({{Millimetre{100}, Millimetre{30}, Millimetre{0}}});
    EXPECT_TRUE(stress_intensities(plain, {}, {1}).tips.empty());
}

}  // namespace
}  // namespace splicewright
