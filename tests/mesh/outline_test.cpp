// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/outline.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <tuple>

#include "tests/mesh/sample_cases.h"

namespace splicewright
{
namespace
{

Scenario lost(const std::string& what)
{
    Scenario scenario{
        what, what != "hidden weld lost", {what != "left sleeve weld lost", what != "right sleeve weld lost"}, {}};
    return scenario;
}

const std::vector<Scenario>& scenarios()
{
    static const std::vector<Scenario> all{
        {}, lost("hidden weld lost"), lost("left sleeve weld lost"), lost("right sleeve weld lost")};
    return all;
}

std::vector<Case> cases()
{
    Case offset = sample::splice();
    offset.sleeve->offset = Millimetre{5};
    return {sample::splice(), sample::tapered_splice(), sample::pressed_splice(26, 40, 90, 0.03), offset};
}

// Everything that a curve says, independent of numbering and of the direction in which it was drawn.
// Coordinates in nanometres, so that round-off of a mirrored drawing does not matter.
using Place = std::pair<long, long>;
using CurveText = std::tuple<Place, Place, Place, std::string, bool, long>;

long nanometres(double mm) { return std::lround(1e6 * mm); }
Place place(OutlinePoint p) { return {nanometres(p.z), nanometres(p.r)}; }

std::string other_side(std::string text)
{
    const auto exchange = [&](const std::string& from, const std::string& to)
    {
        const std::size_t at = text.find(from);
        if (at == std::string::npos) return false;
        text.replace(at, from.size(), to);
        return true;
    };
    if (!exchange(".left", ".right")) exchange(".right", ".left");
    return text;
}

enum class View
{
    as_drawn,
    mirrored,
};

CurveText said(const Outline& outline, const OutlineCurve& curve, View view)
{
    const double sign = view == View::mirrored ? -1 : 1;
    const auto seen = [&](OutlinePoint p) { return place({sign * p.z, p.r}); };
    const Place start = seen(outline.points[static_cast<std::size_t>(curve.start)]);
    const Place end = seen(outline.points[static_cast<std::size_t>(curve.end)]);
    return {std::min(start, end),
            std::max(start, end),
            curve.centre ? seen(*curve.centre) : Place{-1, -1},
            view == View::mirrored ? other_side(curve.name) : curve.name,
            curve.unfused,
            nanometres(curve.notch_radius)};
}

std::multiset<CurveText> curves_said(const Outline& outline, View view)
{
    std::multiset<CurveText> all;
    for (const OutlineCurve& curve : outline.curves) all.insert(said(outline, curve, view));
    return all;
}

std::map<std::string, std::multiset<CurveText>> regions_said(const Outline& outline, View view)
{
    std::map<std::string, std::multiset<CurveText>> all;
    for (const OutlineRegion& region : outline.regions)
        for (const int c : region.curves)
            all[view == View::mirrored ? other_side(region.name) : region.name].insert(
                said(outline, outline.curves[static_cast<std::size_t>(c)], view));
    return all;
}

bool names_a_curve(const Outline& outline, const std::string& name)
{
    return std::any_of(outline.curves.begin(), outline.curves.end(), [&](const auto& c) { return c.name == name; });
}

std::string absent_text(const Outline& outline, const std::string& site)
{
    for (const std::string& text : outline.absent_sites)
        if (text.starts_with(site + ":")) return text;
    return "";
}

TEST(Outline, IsTheSameForTheSameCase)
{
    for (const Case& asked : cases())
        for (const Scenario& scenario : scenarios())
        {
            const Outline once = outline(asked, scenario), again = outline(asked, scenario);
            ASSERT_EQ(once.points.size(), again.points.size());
            for (std::size_t i = 0; i < once.points.size(); ++i)
            {
                EXPECT_EQ(once.points[i].z, again.points[i].z);
                EXPECT_EQ(once.points[i].r, again.points[i].r);
            }
            EXPECT_TRUE(curves_said(once, View::as_drawn) == curves_said(again, View::as_drawn));
            EXPECT_EQ(once.absent_sites, again.absent_sites);
        }
}

TEST(Outline, CurvesOfEachRegionCloseLoops)
{
    for (const Case& asked : cases())
        for (const Scenario& scenario : scenarios())
        {
            const Outline shape = outline(asked, scenario);
            for (const OutlineRegion& region : shape.regions)
            {
                std::map<int, int> ends_at;
                std::set<int> distinct;
                for (const int c : region.curves)
                {
                    EXPECT_TRUE(distinct.insert(c).second) << region.name << " lists a curve twice";
                    ++ends_at[shape.curves[static_cast<std::size_t>(c)].start];
                    ++ends_at[shape.curves[static_cast<std::size_t>(c)].end];
                }
                for (const auto& [point, count] : ends_at)
                    EXPECT_EQ(count % 2, 0) << region.name << " is open at " << point;
            }
        }
}

TEST(Outline, EveryCurveBoundsOneRegionOrPartsTwo)
{
    for (const Case& asked : cases())
        for (const Scenario& scenario : scenarios())
        {
            const Outline shape = outline(asked, scenario);
            std::vector<int> uses(shape.curves.size(), 0);
            for (const OutlineRegion& region : shape.regions)
                for (const int c : region.curves) ++uses[static_cast<std::size_t>(c)];
            for (std::size_t c = 0; c < uses.size(); ++c)
            {
                EXPECT_GE(uses[c], 1) << shape.curves[c].name;
                EXPECT_LE(uses[c], 2) << shape.curves[c].name;
                if (shape.curves[c].unfused)
                {
                    EXPECT_EQ(uses[c], 2) << shape.curves[c].name << " has two faces";
                }
            }
        }
}

TEST(Outline, BothEndsOfAnArcLieOnItsCircle)
{
    for (const Case& asked : cases())
    {
        const Outline shape = outline(asked, {});
        for (const OutlineCurve& curve : shape.curves)
        {
            if (!curve.centre) continue;
            const auto radius = [&](int p)
            {
                const OutlinePoint& at = shape.points[static_cast<std::size_t>(p)];
                return std::hypot(at.z - curve.centre->z, at.r - curve.centre->r);
            };
            // 1e-9 mm is the distance within which the drawing takes two points for one.
            EXPECT_NEAR(radius(curve.start), radius(curve.end), 2e-9) << curve.name;
        }
    }
}

TEST(Outline, OfTheMirroredCaseIsTheMirroredOutline)
{
    for (const Case& asked : cases())
        for (const Scenario& scenario : scenarios())
        {
            Scenario seen_from_behind = scenario;
            std::swap(seen_from_behind.sleeve_weld_fused[0], seen_from_behind.sleeve_weld_fused[1]);
            const Outline straight = outline(asked, scenario);
            const Outline mirror = outline(sample::mirrored(asked), seen_from_behind);
            EXPECT_TRUE(curves_said(straight, View::mirrored) == curves_said(mirror, View::as_drawn)) << scenario.name;
            EXPECT_TRUE(regions_said(straight, View::mirrored) == regions_said(mirror, View::as_drawn))
                << scenario.name;
            std::multiset<std::string> absent, mirrored_absent(mirror.absent_sites.begin(), mirror.absent_sites.end());
            for (const std::string& text : straight.absent_sites) absent.insert(other_side(text));
            EXPECT_EQ(absent, mirrored_absent) << scenario.name;
        }
}

TEST(Outline, HasASleeveToeWhereTheEndFaceHasRoom)
{
    const Outline shape = outline(sample::splice(), {});
    EXPECT_TRUE(names_a_curve(shape, "sleeve-toe.right"));
    EXPECT_TRUE(absent_text(shape, "sleeve-toe.right").empty());
}

TEST(Outline, HasNoSleeveToeWhereTheLegReachesTheCornerAndSaysWhy)
{
    Case asked = sample::splice();
    asked.sleeve->weld.leg_on_sleeve = Millimetre{7};  // the whole wall over the 28 mm bar
    const Outline shape = outline(asked, {});
    EXPECT_FALSE(names_a_curve(shape, "sleeve-toe.left"));
    const std::string why = absent_text(shape, "sleeve-toe.left");
    EXPECT_NE(why.find("leg of 7 mm reaches the sleeve's outer corner"), std::string::npos) << why;
}

TEST(Outline, ATaperMakesTheWeldMeetTheThinnerEnd)
{
    const Outline shape = outline(sample::tapered_splice(), {});
    double highest_at_end = 0, highest = 0;
    for (const OutlinePoint& p : shape.points)
    {
        if (std::abs(p.z - 50) < 1e-9) highest_at_end = std::max(highest_at_end, p.r);
        highest = std::max(highest, p.r);
    }
    EXPECT_NEAR(highest_at_end, 21, 1e-9);  // end diameter 42 mm, exact but for round-off
    EXPECT_NEAR(highest, 23, 1e-9);
}

TEST(Outline, WithoutTheButtHasALandOverTheWholeSection)
{
    const Outline shape = outline(sample::splice(), lost("hidden weld lost"));
    EXPECT_FALSE(names_a_curve(shape, "butt"));
    EXPECT_FALSE(names_a_curve(shape, "land-edge"));
    double highest = 0;
    for (const OutlineCurve& curve : shape.curves)
        if (curve.name == "land")
        {
            EXPECT_TRUE(curve.unfused);
            highest = std::max(highest, shape.points[static_cast<std::size_t>(curve.end)].r);
        }
    EXPECT_NEAR(highest, 13.75, 1e-12);  // mean of the two bar radii
    EXPECT_FALSE(absent_text(shape, "land-edge").empty());
    EXPECT_FALSE(absent_text(shape, "butt-surface").empty());
}

TEST(Outline, WithoutASleeveWeldHasNoFilletOnThatSideAndSaysWhy)
{
    const Outline shape = outline(sample::splice(), lost("left sleeve weld lost"));
    for (const OutlineRegion& region : shape.regions) EXPECT_NE(region.name, "fillet.left");
    for (const char* site : {"bar-toe.left", "sleeve-toe.left", "root.left"})
    {
        EXPECT_FALSE(names_a_curve(shape, site)) << site;
        EXPECT_FALSE(absent_text(shape, site).empty()) << site;
    }
    EXPECT_TRUE(names_a_curve(shape, "bar-toe.right"));
}

TEST(Outline, TakesTheToeRadiusOfTheScenarioBeforeThatOfTheCase)
{
    Scenario sharper;
    sharper.toe_radius = Millimetre{0.25};
    for (const OutlineCurve& curve : outline(sample::splice(), sharper).curves)
        if (curve.name == "bar-toe.left")
        {
            EXPECT_EQ(curve.notch_radius, 0.25);
        }
}

TEST(Outline, PutsNotchesOfTheReferenceRadiusAtRootsAndLandEdge)
{
    const Outline shape = outline(sample::splice(), {});
    int found = 0;
    for (const OutlineCurve& curve : shape.curves)
        if (curve.name.starts_with("root") || curve.name == "land-edge")
        {
            ++found;
            EXPECT_EQ(curve.notch_radius, reference_notch_radius.value());
        }
    EXPECT_EQ(found, 4 + 4 + 4);  // each root a circle of four arcs, the land's edge as well
}

}  // namespace
}  // namespace splicewright
