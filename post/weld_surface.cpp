// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/weld_surface.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "cases/bar_shape.h"
#include "post/drawn_section.h"
#include "post/site_loads.h"
#include "solver/hot_spot.h"

namespace splicewright
{
namespace
{

constexpr double beyond_readings = 1.25;  // of the farthest reading is shown
constexpr double of_sleeve = 0.6;         // of the sleeve's half is shown

using PlaceKey = std::pair<long, long>;

PlaceKey key_of(const Eigen::Vector2d& place) { return {std::lround(place(0) * 1e6), std::lround(place(1) * 1e6)}; }

// The outside from its right end to its left end, without the bore; where two metals meet, both of their values.
std::vector<SurfacePoint> outside(const DrawnSection& section)
{
    std::map<PlaceKey, std::array<int, 2>> from;
    const Eigen::Vector2d* start = nullptr;
    double left_end = INFINITY;
    for (const auto& edge : section.skin)
    {
        const Eigen::Vector2d& place = section.vertex[std::size_t(edge[0])].place;
        from[key_of(place)] = edge;
        left_end = std::min(left_end, place(0));
        const bool better = start == nullptr || place(0) > (*start)(0) + 1e-9 ||
                            (place(0) > (*start)(0) - 1e-9 && place(1) > (*start)(1));
        if (better) start = &place;
    }
    std::vector<SurfacePoint> points;
    if (start == nullptr) return points;
    const auto add = [&](int i)
    {
        const DrawnVertex& v = section.vertex[std::size_t(i)];
        double s = 0;
        if (!points.empty())
            s = points.back().s + std::hypot(v.place(0) - points.back().z, v.place(1) - points.back().r);
        points.push_back({s, v.place(0), v.place(1), std::hypot(v.steady(3), v.steady(4)),
                          v.steady(0) + v.steady(2) + v.bending(0) + v.bending(2)});
    };
    for (auto edge = from.find(key_of(*start)); edge != from.end();)
    {
        const std::array<int, 2> ends = edge->second;
        from.erase(edge);
        const bool repeated =
            !points.empty() && points.back().shear == std::hypot(section.vertex[std::size_t(ends[0])].steady(3),
                                                                 section.vertex[std::size_t(ends[0])].steady(4));
        if (!repeated) add(ends[0]);
        add(ends[1]);
        if (points.back().z < left_end + 1e-9) break;
        edge = from.find(key_of(section.vertex[std::size_t(ends[1])].place));
    }
    return points;
}

double s_nearest(const std::vector<SurfacePoint>& points, double z, double r)
{
    const auto distance = [&](const SurfacePoint& p) { return std::hypot(p.z - z, p.r - r); };
    return std::min_element(points.begin(), points.end(),
                            [&](const auto& a, const auto& b) { return distance(a) < distance(b); })
        ->s;
}

SurfacePoint at(const std::vector<SurfacePoint>& points, double s)
{
    for (std::size_t i = 1; i < points.size(); ++i)
    {
        const SurfacePoint &a = points[i - 1], &b = points[i];
        if ((a.s - s) * (b.s - s) > 0 || a.s == b.s) continue;
        const double share = (s - a.s) / (b.s - a.s);
        const auto mixed = [share](double one, double other) { return one + share * (other - one); };
        return {s, mixed(a.z, b.z), mixed(a.r, b.r), mixed(a.shear, b.shear), mixed(a.normal, b.normal)};
    }
    return {};
}

// Readings run away from the weld: along +s on the bar, along -s on the sleeve.
void add_readings(WeldSurface& surface, const Case& asked, const HotSpot& spot, double toe_s)
{
    const double away = spot.site.starts_with("bar") ? 1 : -1;
    const auto add = [&](const auto& readings, const char* rule, const ExtrapolatedStress& value)
    {
        for (const ReadingPoint& reading : readings)
        {
            const SurfacePoint there = at(surface.points, toe_s + away * reading.distance * spot.thickness);
            surface.readings.push_back({spot.site, rule, there.s, there.shear, there.normal});
        }
        const CombinedLoad load = peak_load(asked);
        surface.extrapolated.push_back(
            {spot.site, rule, toe_s, std::abs(value.torsion_shear.value * load.torque),
             std::abs(value.bending_normal.value) * load.bending + value.axial_normal.value * load.axial});
    };
    add(linear_readings, "linear", spot.linear);
    add(quadratic_readings, "quadratic", spot.quadratic);
}

WeldSurface weld_surface(const Case& asked, const MeridianAnswer& answer, const std::vector<SurfacePoint>& whole,
                         Side side)
{
    const Sleeve& sleeve = *asked.sleeve;
    const Bar& bar = *asked.bar[index(side)];
    const double sign = side == Side::right ? 1 : -1, reach = sleeve_reach(sleeve, side);
    const double radius = bar.sections.front().diameter.value() / 2;
    const double toe = reach + sleeve.weld.leg_on_bar.value() + toe_tangent_on_bar(sleeve.weld);
    const double zero = s_nearest(whole, sign * toe, radius);
    double farthest = 0;
    for (const HotSpot& spot : answer.hot_spots)
        if (side_of(spot.site) == side && spot.site.starts_with("bar"))
            farthest = quadratic_readings.back().distance * spot.thickness;
    const double on_bar = std::max(beyond_readings * farthest, radius);

    WeldSurface surface;
    surface.side = side;
    for (SurfacePoint point : whole)
    {
        // The whole outside runs from right to left: along the right bar that is toward the weld.
        point.s = sign * (zero - point.s);
        if (sign * point.z >= (1 - of_sleeve) * reach && point.s <= on_bar) surface.points.push_back(point);
    }
    if (side == Side::left) std::reverse(surface.points.begin(), surface.points.end());
    for (const HotSpot& spot : answer.hot_spots)
    {
        if (side_of(spot.site) != side) continue;
        const bool on_sleeve = !spot.site.starts_with("bar");
        const double s = on_sleeve ? s_nearest(surface.points, sign * reach, sleeve.end_diameter.value() / 2) : 0;
        add_readings(surface, asked, spot, s);
    }
    return surface;
}

}  // namespace

std::vector<WeldSurface> weld_surfaces(const Case& asked, const MeridianAnswer& answer)
{
    std::vector<WeldSurface> surfaces;
    if (!asked.sleeve) return surfaces;
    const std::vector<SurfacePoint> whole = outside(drawn_section(answer.fields, peak_load(asked)));
    for (const Side side : both_sides) surfaces.push_back(weld_surface(asked, answer, whole, side));
    return surfaces;
}

}  // namespace splicewright
