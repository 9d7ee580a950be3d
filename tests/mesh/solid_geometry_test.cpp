// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/solid_geometry.h"

#include <gtest/gtest.h>

#include <cmath>

#include "mesh/solid_faces.h"
#include "tests/mesh/sample_cases.h"
#include "tests/mesh/solid_measure.h"

namespace splicewright
{
namespace
{

std::string region_name_at(const SolidGeometry& geometry, SolidPoint where)
{
    const int region = region_at(geometry, where);
    return region < 0 ? "nothing" : geometry.regions[static_cast<std::size_t>(region)];
}

SolidPoint at_angle(double r, double degrees, double z)
{
    const double angle = degrees * std::numbers::pi / 180;
    return {r * std::cos(angle), r * std::sin(angle), z};
}

bool tells(const SolidGeometry& geometry, const std::string& part)
{
    for (const std::string& absent : geometry.section.absent_sites)
        if (absent.find(part) != std::string::npos) return true;
    return false;
}

TEST(SolidGeometry, BodyOfRevolutionIsTheSectionOfTheMeridianModelSweptAllRound)
{
    const Case asked = sample::splice();
    const SolidGeometry geometry = solid_geometry(asked, {});
    const Outline section = outline(asked, {});
    ASSERT_EQ(geometry.section.curves.size(), section.curves.size());
    for (const Sweep& sweep : geometry.sweep) EXPECT_EQ(sweep.extent, full_turn);
    EXPECT_FALSE(geometry.lap.has_value());
    EXPECT_EQ(region_name_at(geometry, at_angle(10, 77, -30)), "bar.left");
    EXPECT_EQ(region_name_at(geometry, at_angle(18, 200, 20)), "sleeve.right");
    EXPECT_EQ(region_name_at(geometry, at_angle(17, 300, 44)), "fillet.right");
    EXPECT_EQ(region_name_at(geometry, at_angle(30, 0, 0)), "nothing");
}

TEST(SolidGeometry, TonguesOfAHalfLapLieOnOppositeSidesOfTheCutPlane)
{
    const SolidGeometry geometry = solid_geometry(sample::half_lap_splice(), {});
    ASSERT_TRUE(geometry.lap.has_value());
    EXPECT_EQ(geometry.lap->fused_from, 8);
    EXPECT_EQ(region_name_at(geometry, {2, 3, 9.5}), "bar.left");
    EXPECT_EQ(region_name_at(geometry, {2, 3, 10.5}), "bar.right");
    EXPECT_EQ(region_name_at(geometry, {2, -3, -9.5}), "bar.right");
    EXPECT_EQ(region_name_at(geometry, {2, -3, -10.5}), "bar.left");
    // The corner of the tongue is rounded with 1 mm: half of its diagonal, 0.29 mm, is the other bar's.
    EXPECT_EQ(region_name_at(geometry, {2, 0.2, 9.8}), "bar.right");
    EXPECT_EQ(region_name_at(geometry, {2, 0.4, 9.6}), "bar.left");
    EXPECT_EQ(region_name_at(geometry, {2, -0.2, -9.8}), "bar.left");
    EXPECT_TRUE(tells(geometry, "land-edge: the edge of the unfused faces of a half lap is sharp"));
}

TEST(SolidGeometry, FacesOfALapAreUnfusedInsideTheWeldAndThroughoutWhenItIsLost)
{
    const Case asked = sample::half_lap_splice();
    const auto is_unfused = [](const SolidGeometry& geometry, SolidPoint where)
    {
        for (const FaceShape& shape : face_shapes(geometry))
            if (distance_from(shape, where) < 1e-9) return shape.unfused;
        return false;
    };
    const SolidPoint inner{5, 0, 3}, outer{12, 0, 3}, end{0, 5, 10};
    const SolidGeometry sound = solid_geometry(asked, {});
    EXPECT_TRUE(is_unfused(sound, inner));
    EXPECT_TRUE(is_unfused(sound, end));
    EXPECT_FALSE(is_unfused(sound, outer));
    Scenario lost;
    lost.butt_fused = false;
    EXPECT_TRUE(is_unfused(solid_geometry(asked, lost), outer));
}

TEST(SolidGeometry, HalfLapThatIsFusedThroughHasNoFaces)
{
    Case asked = sample::half_lap_splice();
    asked.joint->penetration.reset();
    EXPECT_FALSE(solid_geometry(asked, {}).lap.has_value());
    EXPECT_TRUE(tells(solid_geometry(asked, {}), "lap-corner: the half lap is fused through"));
    Scenario lost;
    lost.butt_fused = false;
    EXPECT_TRUE(solid_geometry(asked, lost).lap.has_value());
}

TEST(SolidGeometry, PlugsFillTheirHolesToTheirDepth)
{
    const SolidGeometry geometry = solid_geometry(sample::plugged_splice(), {});
    ASSERT_EQ(geometry.plugs.size(), 5U);
    EXPECT_EQ(geometry.plugs[4].name, "plug-edge.5");
    const double first = 0.5 * 180 / std::numbers::pi;
    EXPECT_EQ(region_name_at(geometry, at_angle(24.9, first + 120, -24)), "plug");
    EXPECT_EQ(region_name_at(geometry, at_angle(24.9, first + 60, -24)), "sleeve.left");
    EXPECT_EQ(region_name_at(geometry, at_angle(20.9, 180, 22)), "plug");
    EXPECT_EQ(region_name_at(geometry, at_angle(21.1, 180, 22)), "nothing");
    EXPECT_EQ(region_name_at(geometry, at_angle(15.9, 180, 22)), "bar.right");
}

TEST(SolidGeometry, WeldMetalLiesOnlyWhereTheWeldIs)
{
    const SolidGeometry geometry = solid_geometry(sample::partly_welded_splice(), {});
    // The left weld runs from 30 to 300 degrees, the right one from 100 to 370.
    EXPECT_EQ(region_name_at(geometry, at_angle(17, 31, -57)), "fillet.left");
    EXPECT_EQ(region_name_at(geometry, at_angle(17, 29, -57)), "nothing");
    EXPECT_EQ(region_name_at(geometry, at_angle(17, 301, -57)), "nothing");
    EXPECT_EQ(region_name_at(geometry, at_angle(17, 9, 57)), "fillet.right");
    EXPECT_EQ(region_name_at(geometry, at_angle(17, 11, 57)), "nothing");
    // Just below the bar's surface: the penetration of the weld, and the bar.
    EXPECT_EQ(region_name_at(geometry, at_angle(15.9, 31, -57)), "fillet.left");
    EXPECT_EQ(region_name_at(geometry, at_angle(15.9, 29, -57)), "bar.left");
    EXPECT_TRUE(tells(geometry, "root.left: the root of a weld that does not go all round"));
}

TEST(SolidGeometry, BarOutOfLineMovesWholeAndTheOutsideOfTheSleeveStays)
{
    Case asked = sample::half_lap_splice();
    asked.joint->offset = Millimetre{0.5};
    asked.joint->tilt = Radian{0.01};
    asked.joint->offset_angle = Radian{std::numbers::pi / 2};
    const OutOfLine& shift = *solid_geometry(asked, {}).out_of_line;
    const SolidPoint left = shift.moved({3, 4, -40}), right = shift.moved({3, 4, 40}), far = shift.moved({3, 4, 100}),
                     outside = shift.moved({25, 0, 40});
    EXPECT_EQ(left.y, 4);
    EXPECT_NEAR(right.x, 3, 1e-12);
    EXPECT_NEAR(right.y, 4 + 0.5 + 0.01 * 40, 1e-12);
    EXPECT_NEAR(far.y, 4 + 0.5 + 0.01 * 100, 1e-12);
    EXPECT_NEAR(outside.y, 0, 1e-12);
}

TEST(SolidGeometry, RoundingTooSmallForTetrahedraIsClosedUpAndTold)
{
    Case asked = sample::pressed_splice(200, 260, 400, 0);
    asked.sleeve->weld.toe_radius = Millimetre{0.2};
    const SolidGeometry geometry = solid_geometry(asked, {});
    EXPECT_TRUE(tells(geometry, "bar-toe.left: its rounding is shorter than 0.4 mm"));
    for (const OutlineCurve& curve : geometry.section.curves) EXPECT_EQ(curve.name.find("bar-toe"), std::string::npos);
}

TEST(SolidFaces, MiddleOfAnEdgeLiesOnItsSurfaces)
{
    const SolidGeometry geometry = solid_geometry(sample::plugged_splice(), {});
    const std::vector<FaceShape> shapes = face_shapes(geometry);
    const FaceShape *bar = nullptr, *wall = nullptr;
    for (const FaceShape& shape : shapes)
    {
        if (shape.name == "slit.left") bar = &shape;
        if (shape.name == "plug wall.1") wall = &shape;
    }
    ASSERT_TRUE(bar != nullptr && wall != nullptr);
    const SolidPoint a = middle_on({bar, wall}, at_angle(16, 20, -20), at_angle(16, 20, -20)),
                     b = middle_on({bar, wall}, at_angle(16, 22, -19.5), at_angle(16, 22, -19.5));
    const SolidPoint middle = middle_on({bar, wall}, a, b);
    EXPECT_NEAR(std::hypot(middle.x, middle.y), 16, 1e-11);
    EXPECT_LT(distance_from(*wall, middle), 1e-11);
    EXPECT_NEAR(std::hypot(middle.x - a.x, middle.y - a.y, middle.z - a.z),
                std::hypot(middle.x - b.x, middle.y - b.y, middle.z - b.z), 1e-3);
}

}  // namespace
}  // namespace splicewright
