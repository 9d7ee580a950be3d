// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <random>

#include "cases/problem.h"
#include "post/label_layout.h"

namespace splicewright
{
namespace
{

double turn(const SheetPoint& a, const SheetPoint& b, const SheetPoint& c)
{
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
}

bool cross(const Leader& one, const Leader& other)
{
    return turn(one.site, one.knee, other.site) * turn(one.site, one.knee, other.knee) < -1e-9 &&
           turn(other.site, other.knee, one.site) * turn(other.site, other.knee, one.knee) < -1e-9;
}

TEST(LabelLayout, BalloonsNeverOverlapEachOtherOrThePart)
{
    std::mt19937 random(20261125);
    std::uniform_real_distribution<double> unit(0, 1);
    for (int trial = 0; trial < 2000; ++trial)
    {
        LabelRoom room;
        room.left = 40;
        room.right = 1560;
        room.lean = trial % 2 == 0 ? 0 : 30;
        const double bottom = 300 + 200 * unit(random);
        room.part = {60, bottom, 1540, bottom + 60 + 240 * unit(random)};
        const int n = static_cast<int>(unit(random) * label_capacity(room));
        const double centre = 60 + 1480 * unit(random),
                     spread = trial % 3 == 0 ? 0.0 : 1480 * unit(random) * unit(random);
        std::vector<SheetPoint> sites;
        for (int i = 0; i < n; ++i)
            sites.emplace_back(std::clamp(centre + spread * (unit(random) - 0.5), 60.0, 1540.0),
                               room.part.bottom + room.part.height() * unit(random));
        const std::vector<Leader> leaders = placed_labels(sites, room);
        ASSERT_EQ(leaders.size(), sites.size());
        for (std::size_t i = 0; i < leaders.size(); ++i)
        {
            const SheetPoint& balloon = leaders[i].balloon;
            EXPECT_EQ(leaders[i].site, sites[i]);
            EXPECT_GE(balloon.x() - room.radius, room.left - 1e-6);
            EXPECT_LE(balloon.x() + room.radius, room.right + 1e-6);
            EXPECT_TRUE(balloon.y() - room.radius > room.part.top || balloon.y() + room.radius < room.part.bottom);
            for (std::size_t k = 0; k < i; ++k)
            {
                EXPECT_GE((balloon - leaders[k].balloon).norm(), 2 * room.radius + room.gap - 1e-6);
                EXPECT_FALSE(cross(leaders[i], leaders[k])) << trial;
            }
        }
    }
}

TEST(LabelLayout, LoneBalloonStandsStraightAboveItsSite)
{
    LabelRoom room;
    room.part = {60, 300, 1540, 500};
    room.left = 40;
    room.right = 1560;
    const Leader leader = placed_labels({{700, 480}}, room).front();
    EXPECT_DOUBLE_EQ(leader.balloon.x(), 700);
    EXPECT_GT(leader.balloon.y(), 500);
    EXPECT_LT(placed_labels({{700, 310}}, room).front().balloon.y(), 300);
}

TEST(LabelLayout, MoreSitesThanRoomBreakThePromise)
{
    LabelRoom room;
    room.part = {0, 0, 100, 50};
    room.right = 100;
    const std::vector<SheetPoint> sites(std::size_t(label_capacity(room)) + 1, SheetPoint(50, 20));
    EXPECT_THROW(placed_labels(sites, room), BrokenPromise);
}

}  // namespace
}  // namespace splicewright
