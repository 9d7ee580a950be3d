// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/random_case.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <vector>

#include "cases/chance.h"
#include "cases/read_case.h"
#include "cases/shape_limits.h"

namespace splicewright
{
namespace
{

constexpr std::uint64_t n_seeds = 300;

const std::vector<Case>& many_cases()
{
    static const std::vector<Case> cases = []
    {
        std::vector<Case> read;
        for (std::uint64_t seed = 1; seed <= n_seeds; ++seed)
            read.push_back(read_case(random_case_text(seed), "random").value());
        return read;
    }();
    return cases;
}

template <class Property>
std::ptrdiff_t n_cases_with(Property property)
{
    return std::count_if(many_cases().begin(), many_cases().end(), property);
}

TEST(Chance, GivesTheNumbersOfTheStandardEngine)
{
    // The C++ standard fixes the 10000th number of the default engine (28.5.5); ours is that engine with a seed.
    std::mt19937_64 engine;
    engine.discard(9999);
    const std::uint64_t ten_thousandth = 9981545732273789042U;
    EXPECT_EQ(engine(), ten_thousandth);
    Chance chance(std::mt19937_64::default_seed);
    for (int i = 0; i < 9999; ++i) chance.fraction();
    // The upper 53 bits of that number as a fraction; exact in a double.
    EXPECT_EQ(chance.fraction(), static_cast<double>(ten_thousandth >> 11U) * 0x1p-53);
}

TEST(RandomCase, SameSeedGivesTheSameTextAndOthersDiffer)
{
    std::set<std::string> texts;
    for (std::uint64_t seed = 1; seed <= 50; ++seed)
    {
        EXPECT_EQ(random_case_text(seed), random_case_text(seed));
        texts.insert(random_case_text(seed));
    }
    EXPECT_EQ(texts.size(), 50U);
}

// One in 50 is the least that lets a soak of 300 meet a kind several times.
TEST(RandomCase, EveryKindOfShapeComesUp)
{
    const auto at_least = static_cast<std::ptrdiff_t>(n_seeds / 50);
    EXPECT_GE(n_cases_with([](const Case& c) { return !c.joint; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.joint && !c.sleeve; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.joint && c.joint->penetration; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.joint && c.joint->half_lap.value() > 0; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.sleeve && c.sleeve->taper_length.value() > 0; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.sleeve && c.sleeve->offset.value() != 0; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.sleeve && c.sleeve->slit[0] != c.sleeve->slit[1]; }), at_least);
    for (const SlitState state : {SlitState::open, SlitState::snug, SlitState::press, SlitState::bonded})
        EXPECT_GE(n_cases_with([&](const Case& c) { return c.sleeve && c.sleeve->slit[0] == state; }), at_least)
            << name_of(state);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.joint && c.joint->offset.value() > 0; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.joint && c.joint->tilt.value() > 0; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.making && c.making->overall_length; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.making && c.making->plunge_available; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.making && c.making->quality == QualityLevel::C; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.making && c.making->bore_grade != 7; }), at_least);
    const auto bar_with = [](auto property)
    {
        return [property](const Case& c)
        { return std::ranges::any_of(c.bar, [&](const auto& bar) { return bar && property(*bar); }); };
    };
    EXPECT_GE(n_cases_with(bar_with([](const Bar& bar) { return bar.bore.value() > 0; })), at_least);
    EXPECT_GE(n_cases_with(bar_with([](const Bar& bar) { return !bar.grooves.empty(); })), at_least);
    EXPECT_GE(n_cases_with(bar_with([](const Bar& bar) { return bar.sections.size() > 3; })), at_least);
    EXPECT_GE(n_cases_with(bar_with([](const Bar& bar) { return bar.material.elastic_modulus.value() < 150e3; })),
              at_least);
}

TEST(RandomCase, LoadsComeFromVehiclesAndSteelsFromHardnessNowAndThen)
{
    const auto at_least = static_cast<std::ptrdiff_t>(n_seeds / 50);
    for (const TorqueLimit limit : {TorqueLimit::engine, TorqueLimit::grip})
        EXPECT_GE(n_cases_with([&](const Case& c) { return c.load.vehicle && c.load.vehicle->governs == limit; }),
                  at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.text.find("hardness = ") != std::string::npos; }), at_least);
    EXPECT_GE(n_cases_with([](const Case& c) { return c.text.find("unknown steel") != std::string::npos; }), at_least);
}

// Limits as docs/case-format.md states them, each hit exactly.
TEST(RandomCase, LimitsAreHitExactlyAndOften)
{
    const auto at_least = static_cast<std::ptrdiff_t>(n_seeds / 50);
    const auto is = [](Millimetre value, double limit)
    { return std::abs(value.value() - limit) < same_length.value(); };
    EXPECT_GE(
        n_cases_with([&](const Case& c) { return c.joint && c.joint->penetration && is(*c.joint->penetration, 2.5); }),
        at_least);
    EXPECT_GE(n_cases_with([&](const Case& c) { return c.sleeve && is(c.sleeve->weld.toe_radius, 0.2); }), at_least);
    EXPECT_GE(n_cases_with([&](const Case& c) { return c.sleeve && is(c.sleeve->weld.leg_on_bar, 3); }), at_least);
    EXPECT_GE(n_cases_with(
                  [&](const Case& c)
                  {
                      if (!c.sleeve) return false;
                      const double larger =
                          std::max(c.bar[0]->sections[0].diameter.value(), c.bar[1]->sections[0].diameter.value());
                      return is(c.sleeve->weld.leg_on_sleeve, (c.sleeve->end_diameter.value() - larger) / 2);
                  }),
              at_least);
}

TEST(MutatedCase, SameSeedGivesTheSameTextAndMostAreDamaged)
{
    const std::string text = random_case_text(1);
    std::size_t n_changed = 0, n_accepted = 0;
    for (std::uint64_t seed = 1; seed <= n_seeds; ++seed)
    {
        const std::string mutated = mutated_case_text(text, seed);
        EXPECT_EQ(mutated, mutated_case_text(text, seed));
        n_changed += mutated != text ? 1U : 0U;
        n_accepted += mutated != text && read_case(mutated, "mutated").has_value() ? 1U : 0U;
    }
    EXPECT_GT(n_changed, n_seeds * 9 / 10);
    // Some must get past the reader, or nothing behind it is tried.
    EXPECT_GT(n_accepted, n_seeds / 50);
}

TEST(MutatedCase, EmptyTextStaysAText)
{
    for (std::uint64_t seed = 1; seed <= 100; ++seed) EXPECT_EQ(mutated_case_text("", seed), "");
}

}  // namespace
}  // namespace splicewright
