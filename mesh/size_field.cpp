// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/size_field.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "mesh/crack_outline.h"

namespace splicewright
{
namespace
{

constexpr double least_part_per_arc = 2;  // a shallow arc has at least half as many elements as a quarter turn

double length_of(double z, double r) { return std::sqrt(z * z + r * r); }
double distance_between(OutlinePoint a, OutlinePoint b) { return length_of(a.z - b.z, a.r - b.r); }

// Both ends on the same side of the chord's normal: whether `where`, seen from the centre, lies within the arc.
bool faces_arc(OutlinePoint where, OutlinePoint centre, OutlinePoint start, OutlinePoint end)
{
    const double turn = (start.z - centre.z) * (end.r - centre.r) - (start.r - centre.r) * (end.z - centre.z);
    const double from = (start.z - centre.z) * (where.r - centre.r) - (start.r - centre.r) * (where.z - centre.z);
    const double to = (where.z - centre.z) * (end.r - centre.r) - (where.r - centre.r) * (end.z - centre.z);
    return from * turn >= 0 && to * turn >= 0;
}

// The stress of these notches peaks close to where the curvature of the surface jumps.
bool leaves_plain_surface(const std::string& curve)
{
    return curve.starts_with("shoulder.") || curve.starts_with("bar-toe.") || curve.starts_with("sleeve-toe.");
}

}  // namespace

SizeField::SizeField(const Outline& outline, const MeshSize& size) : spots_(size.spots), growth_(size.growth)
{
    for (const OutlineCurve& curve : outline.curves)
    {
        if (curve.notch_radius <= 0) continue;
        const OutlinePoint start = outline.points[static_cast<std::size_t>(curve.start)];
        const OutlinePoint end = outline.points[static_cast<std::size_t>(curve.end)];
        const auto finer = size.finer.find(curve.name);
        const double factor = finer == size.finer.end() ? 1.0 : finer->second;
        const double length = distance_between(start, end);
        const double reach = std::min(std::numbers::pi / 2 * curve.notch_radius, least_part_per_arc * length);
        const double edge = reach / (size.elements_per_quarter_turn * factor);
        arcs_.push_back({*curve.centre, start, end, distance_between(*curve.centre, start), edge});
        if (!leaves_plain_surface(curve.name)) continue;
        for (const OutlinePoint& place : {start, end}) spots_.push_back({place, edge * size.tangent_factor});
    }
    for (const OutlineTip& tip : outline.tips)
        spots_.push_back({outline.points[static_cast<std::size_t>(tip.point)],
                          tip_reach(outline, tip) / size.elements_per_tip_reach});
    for (const OutlineRegion& region : outline.regions)
    {
        constexpr double infinity = std::numeric_limits<double>::infinity();
        Wall wall{infinity, -infinity, infinity, -infinity, 0};
        for (const int c : region.curves)
            for (const int p :
                 {outline.curves[static_cast<std::size_t>(c)].start, outline.curves[static_cast<std::size_t>(c)].end})
            {
                const OutlinePoint point = outline.points[static_cast<std::size_t>(p)];
                wall.z_low = std::min(wall.z_low, point.z);
                wall.z_high = std::max(wall.z_high, point.z);
                wall.r_low = std::min(wall.r_low, point.r);
                wall.r_high = std::max(wall.r_high, point.r);
            }
        wall.size = (wall.r_high - wall.r_low) / size.sections_per_wall;
        walls_.push_back(wall);
    }
}

double SizeField::at(OutlinePoint where) const
{
    double edge = std::numeric_limits<double>::infinity();
    for (const Arc& arc : arcs_)
    {
        const double away = faces_arc(where, arc.centre, arc.start, arc.end)
                                ? std::abs(distance_between(where, arc.centre) - arc.radius)
                                : std::min(distance_between(where, arc.start), distance_between(where, arc.end));
        edge = std::min(edge, arc.size + growth_ * away);
    }
    for (const FineSpot& spot : spots_)
        edge = std::min(edge, spot.size + growth_ * distance_between(where, spot.place));
    for (const Wall& wall : walls_)
    {
        const double outside_z = std::max({wall.z_low - where.z, where.z - wall.z_high, 0.0});
        const double outside_r = std::max({wall.r_low - where.r, where.r - wall.r_high, 0.0});
        edge = std::min(edge, wall.size + growth_ * length_of(outside_z, outside_r));
    }
    return edge;
}

}  // namespace splicewright
