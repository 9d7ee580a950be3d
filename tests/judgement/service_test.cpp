// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/service.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "post/number_words.h"

namespace splicewright
{
namespace
{

constexpr double round_off = 1e-9;

CheckRow strength_row(const char* site, double utilisation)
{
    CheckRow row;
    row.site = site;
    row.utilisation = utilisation;
    return row;
}

CheckRow fatigue_row(const char* site, double life, const char* not_valid_because = "")
{
    CheckRow row;
    row.kind = CheckKind::fatigue;
    row.site = site;
    row.life = life;
    row.not_valid_because = not_valid_because;
    return row;
}

Case loaded()
{
    Case asked;
    asked.load.peak_torque = NewtonMillimetre(9e5);
    asked.load.running_bending = NewtonMillimetre(1e4);
    asked.load.revolutions = 1e6;
    asked.load.tyre_radius = Millimetre(300);
    asked.load.blocks = {{"gear change", NewtonMillimetre(-2e5), NewtonMillimetre(5e5), 5000},
                         {"reversing", NewtonMillimetre(-9e5), NewtonMillimetre(0), 120},
                         {"measured", NewtonMillimetre(0), NewtonMillimetre(2e6), 7, BlockOrigin::history}};
    return asked;
}

TEST(Service, CarriesThePeakTorqueOverTheWorstStrengthCheck)
{
    const Service service =
        service_of(loaded(), {strength_row("a", 0.5), strength_row("b", 1.5), fatigue_row("c", INFINITY)});
    EXPECT_NEAR(service.torque_carried, 6e5, 6e5 * round_off);
    EXPECT_EQ(service.strength_site, "b");
}

TEST(Service, LivesAsLongAsTheShortestValidMethod)
{
    const std::vector<CheckRow> rows{fatigue_row("toe", 8), fatigue_row("toe", 2.5), fatigue_row("root", 3),
                                     fatigue_row("bar", 0.1, "outside its scope"), fatigue_row("toe", 40)};
    const Service service = service_of(loaded(), rows);
    ASSERT_TRUE(service.life.has_value());
    EXPECT_EQ(service.life->site, "toe");
    EXPECT_EQ(service.life->least, 2.5);
    EXPECT_EQ(service.life->longest, 40);
    EXPECT_FALSE(service_of(loaded(), {strength_row("a", 0.5)}).life.has_value());
}

TEST(Service, CountsTheStatedBlockWithTheLargestTorqueInEitherDirection)
{
    Case asked = loaded();
    EXPECT_EQ(starts_asked(asked.load)->count, 120);
    EXPECT_NE(starts_asked(asked.load)->what.find("reversing"), std::string::npos);
    asked.load.blocks.clear();
    EXPECT_FALSE(starts_asked(asked.load).has_value());
    asked.load.history = TorqueHistory{};
    asked.load.history->repeats = 30;
    EXPECT_EQ(starts_asked(asked.load)->count, 30);
}

TEST(Service, TurnsRevolutionsIntoKilometresOnlyWhereTheyBendTheShaft)
{
    Case asked = loaded();
    // A million turns of a tyre whose circumference is 0.6 pi metres.
    EXPECT_NEAR(*kilometres_asked(asked.load), 600 * std::numbers::pi, 1e-6);
    asked.load.running_bending = NewtonMillimetre(0);
    EXPECT_FALSE(kilometres_asked(asked.load).has_value());
}

TEST(Service, TellsALifeInStartsAndKilometresRoundedDown)
{
    const std::string text = life_text(loaded().load, {"toe", 2.5, 40});
    EXPECT_NE(text.find("300 times \"reversing\""), std::string::npos) << text;  // 2.5 x 120
    EXPECT_NE(text.find("4\u00A0700 km"), std::string::npos) << text;            // 2.5 x 1884.96 = 4712
    EXPECT_NE(life_text(loaded().load, {"toe", 1e-6, 1}).find("< 0.001 x"), std::string::npos);
    EXPECT_EQ(life_text(loaded().load, {"toe", INFINITY, INFINITY}), "> 10\u00A0000 x");
}

TEST(NumberWords, RoundDownToTwoDigitsThatCount)
{
    EXPECT_EQ(rounded_down(0.9), "0");
    EXPECT_EQ(rounded_down(9.99), "9");
    EXPECT_EQ(rounded_down(99.9), "99");
    EXPECT_EQ(rounded_down(1999), "1\u00A0900");
    EXPECT_EQ(rounded_down(1234567), "1\u00A0200\u00A0000");
    EXPECT_EQ(counted(123456), "123\u00A0456");
    EXPECT_EQ(counted(123), "123");
}

}  // namespace
}  // namespace splicewright
