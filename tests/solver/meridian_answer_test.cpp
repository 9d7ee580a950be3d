// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "mesh/gmsh_mesher.h"
#include "solver/meridian.h"
#include "solver/meridian_level.h"
#include "tests/mesh/sample_cases.h"

namespace splicewright
{
namespace
{

using LoadOfSite = UnitPeak SiteAnswer::*;

constexpr LoadOfSite loads[] = {&SiteAnswer::torsion, &SiteAnswer::bending, &SiteAnswer::axial};

Case with_modulus(Case asked, double factor)
{
    const auto scale = [&](Material& material) { material.elastic_modulus = factor * material.elastic_modulus; };
    for (auto& bar : asked.bar)
        if (bar) scale(bar->material);
    scale(asked.joint->filler);
    scale(asked.sleeve->material);
    scale(asked.sleeve->weld.filler);
    return asked;
}

const SiteAnswer& site(const MeridianAnswer& answer, const std::string& id)
{
    const auto found =
        std::find_if(answer.sites.begin(), answer.sites.end(), [&](const auto& s) { return s.id == id; });
    if (found == answer.sites.end()) throw std::runtime_error("no site " + id);
    return *found;
}

std::string other_side(std::string id)
{
    if (const auto left = id.find(".left"); left != std::string::npos) return id.replace(left, 5, ".right");
    if (const auto right = id.find(".right"); right != std::string::npos) return id.replace(right, 6, ".left");
    return id;
}

MeshSize coarse()
{
    MeshSize size;
    size.elements_per_quarter_turn = 5;
    return size;
}

Level level_of(const Case& asked) { return solved_level(asked, {}, outline(asked, {}), coarse()); }

TEST(MeridianAnswer, StressDoesNotDependOnACommonElasticModulus)
{
    const Case asked = sample::splice();
    const MeridianAnswer once = meridian_answer(asked, {}, {3}),
                         twice = meridian_answer(with_modulus(asked, 2), {}, {3});
    ASSERT_EQ(once.sites.size(), twice.sites.size());
    for (std::size_t i = 0; i < once.sites.size(); ++i)
        for (const LoadOfSite load : loads)
        {
            const double stress = (once.sites[i].*load).von_mises.value;
            // Same mesh, same system but for a factor: round-off of the factorisation, condition number some 1e8.
            EXPECT_NEAR((twice.sites[i].*load).von_mises.value, stress, 1e-7 * stress + 1e-14) << once.sites[i].id;
        }
    EXPECT_NEAR(2 * twice.twist.value, once.twist.value, 1e-9 * once.twist.value);
    EXPECT_NEAR(2 * twice.end_rotation.value, once.end_rotation.value, 1e-9 * once.end_rotation.value);
    EXPECT_NEAR(2 * twice.extension.value, once.extension.value, 1e-9 * once.extension.value);
}

TEST(MeridianAnswer, OfTheMirroredCaseHasItsSitesExchanged)
{
    const Case asked = sample::splice();
    const MeridianAnswer straight = meridian_answer(asked, {}, {1}),
                         mirror = meridian_answer(sample::mirrored(asked), {}, {1});
    ASSERT_EQ(straight.sites.size(), mirror.sites.size());
    for (const SiteAnswer& here : straight.sites)
    {
        const SiteAnswer& there = site(mirror, other_side(here.id));
        for (const LoadOfSite load : loads)
        {
            const Measured a = (here.*load).von_mises, b = (there.*load).von_mises;
            // Two meshes of one shape: each within 1 % of the truth, or of 5 % of the largest where hardly loaded.
            EXPECT_NEAR(a.value, b.value, a.error + b.error + 0.01 * a.value) << here.id;
        }
    }
    EXPECT_NEAR(straight.twist.value, mirror.twist.value, 1e-4 * straight.twist.value);  // an energy: order 4
    EXPECT_NEAR(straight.share.torsion.value, mirror.share.torsion.value, 2e-3);
}

TEST(MeridianAnswer, BalancesItsLoads)
{
    std::vector<Case> cases{sample::splice(), sample::tapered_splice(), sample::pressed_splice(26, 40, 90, 0.03)};
    cases.push_back(sample::with_slit(sample::splice(), SlitState::snug, SlitState::bonded));
    for (const Case& asked : cases)
    {
        const Evidence evidence = meridian_answer(asked, {}, {3, 30000}).evidence;
        // 1e-9: a double carries 16 digits, the condition number of these meshes takes some 6 of them.
        EXPECT_LT(evidence.residual, 1e-9);
        EXPECT_LT(evidence.reaction_imbalance, 1e-9);
        EXPECT_LT(evidence.section_imbalance, 1e-9);
        EXPECT_GT(evidence.residual, 0);  // measured, not left at its start value
    }
}

// The two shares are read from the forces that two different sets of elements put on the plane of the joint.
TEST(MeridianAnswer, SleeveAndButtShareTheWholeLoad)
{
    for (const Case& asked : {sample::splice(), sample::tapered_splice()})
    {
        const Level level = level_of(asked);
        const Bracket& bracket = level.brackets.front();
        const auto force = [&](const UnitSolution& solution, const char* curve, const char* region)
        { return section_force(level.mesh, level.steel, solution, curve, region); };
        const auto expect_whole = [&](const UnitSolution& solution, double SectionForce::*part, const Measured& share)
        {
            const double sleeve = force(solution, "sleeve section", "sleeve.right").*part;
            const double butt = force(solution, "butt", "bar.right").*part;
            EXPECT_NEAR(std::abs(sleeve + butt), 1, 1e-9);  // round-off, as the balance above
            EXPECT_NEAR(share.value, std::abs(sleeve), 1e-12);
            EXPECT_GT(share.value, 0.05);
            EXPECT_LT(share.value, 0.95);
        };
        expect_whole(bracket.torsion, &SectionForce::moment, level.share.torsion);
        expect_whole(bracket.bending, &SectionForce::moment, level.share.bending);
        expect_whole(bracket.axial, &SectionForce::axial, level.share.axial);
    }
}

TEST(MeridianAnswer, HiddenWeldLostPutsEverythingThroughTheSleeve)
{
    Scenario lost;
    lost.name = "hidden weld lost";
    lost.butt_fused = false;
    const MeridianAnswer answer = meridian_answer(sample::splice(), lost, {3});
    EXPECT_NEAR(answer.share.torsion.value, 1, 1e-9);  // balance
    EXPECT_NEAR(answer.share.axial.value, 1, 1e-9);
    EXPECT_GT(answer.twist.value, meridian_answer(sample::splice(), {}, {3}).twist.value);
}

// Minimum of potential energy on one mesh: each tie takes freedom away, so the work of a unit load can only fall.
TEST(SlitState, EachTieMakesTheSpliceStiffer)
{
    const Case open = sample::splice();
    const Level free = level_of(open);
    const Level snug = level_of(sample::with_slit(open, SlitState::snug, SlitState::snug));
    const Level bonded = level_of(sample::with_slit(open, SlitState::bonded, SlitState::bonded));
    EXPECT_LT(bonded.twist.value, free.twist.value);
    ASSERT_EQ(snug.brackets.size(), 2U);
    const Bracket &as_free = snug.brackets[0], &as_held = snug.brackets[1];
    const double round_off = 1 + 1e-10;
    EXPECT_NEAR(as_free.bending.work, free.end_rotation.value, 1e-10 * free.end_rotation.value);
    EXPECT_LT(as_held.bending.work, as_free.bending.work);
    EXPECT_LT(as_held.axial.work, as_free.axial.work);
    EXPECT_LE(bonded.end_rotation.value, as_held.bending.work * round_off);
    EXPECT_LE(bonded.extension.value, as_held.axial.work * round_off);
    EXPECT_NEAR(as_held.torsion.work, as_free.torsion.work,
                1e-10 * as_free.torsion.work);  // it slides without friction
}

TEST(SlitState, SnugIsJudgedByTheWorseOfFreeAndHeld)
{
    const Level snug = level_of(sample::with_slit(sample::splice(), SlitState::snug, SlitState::snug));
    int held_is_worse = 0, free_is_worse = 0;
    for (const SiteAnswer& here : snug.sites)
    {
        ASSERT_EQ(here.brackets.size(), 2U);
        const CombinedLoad unit[] = {{1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}};
        for (int i = 0; i < 3; ++i)
        {
            const double free = site_peak(here.brackets[0], unit[i]).von_mises;
            const double held = site_peak(here.brackets[1], unit[i]).von_mises;
            EXPECT_EQ((here.*loads[i]).von_mises.value, std::max(free, held)) << here.id;
            held_is_worse += held > free * 1.001;
            free_is_worse += free > held * 1.001;
        }
    }
    EXPECT_GT(held_is_worse, 0);  // neither bracket is idle
    EXPECT_GT(free_is_worse, 0);
}

// Two bars of different metals drawn with one force: on the surface where they meet, both strains along the joint are
// shared, so the hoop stress has to jump.
TEST(RecoveredStress, JumpsWhereTheMetalChanges)
{
    Case asked = sample::tapered_splice();
    asked.sleeve.reset();
    asked.bar[1]->material.elastic_modulus = Megapascal{70000};
    const auto largest_jump = [](const Case& joined)
    {
        const SolvedFields fields = solved_fields(level_of(joined));
        const RegionNodes& seen = fields.region_nodes;
        std::map<int, std::vector<Eigen::Index>> copies;
        for (std::size_t i = 0; i < seen.node.size(); ++i) copies[seen.node[i]].push_back(static_cast<Eigen::Index>(i));
        double jump = 0;
        for (const MeshEdge& edge : fields.mesh.curve.at("butt"))
        {
            const auto& both = copies.at(edge.middle);
            EXPECT_EQ(both.size(), 2U) << "one value for each metal";
            if (fields.mesh.node(1, edge.middle) > 12) continue;  // singular at the rim where two metals meet
            jump = std::max(jump, std::abs(fields.axial.value(1, both[0]) - fields.axial.value(1, both[1])));
        }
        return jump * 3.14159265358979 * 225;  // over the nominal stress of a 30 mm bar
    };
    EXPECT_GT(largest_jump(asked), 0.1);  // a steel and a light metal
    EXPECT_LT(largest_jump(sample::with_slit(sample::tapered_splice(), SlitState::open, SlitState::open)), 0.05);
}

}  // namespace
}  // namespace splicewright
