// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/crack_outline.h"

#include <algorithm>
#include <cmath>

namespace splicewright
{
namespace
{

double distance_between(OutlinePoint a, OutlinePoint b) { return std::hypot(a.z - b.z, a.r - b.r); }

double distance_to_line(OutlinePoint where, OutlinePoint start, OutlinePoint end)
{
    const double z = end.z - start.z, r = end.r - start.r;
    const double share = ((where.z - start.z) * z + (where.r - start.r) * r) / (z * z + r * r);
    const double kept = std::clamp(share, 0.0, 1.0);
    return distance_between(where, {start.z + kept * z, start.r + kept * r});
}

double cross(OutlinePoint a, OutlinePoint b) { return a.z * b.r - a.r * b.z; }
OutlinePoint from(OutlinePoint origin, OutlinePoint to) { return {to.z - origin.z, to.r - origin.r}; }

// Arcs of less than half a turn.
double distance_to_arc(OutlinePoint where, OutlinePoint start, OutlinePoint end, OutlinePoint centre)
{
    const OutlinePoint s = from(centre, start), e = from(centre, end), w = from(centre, where);
    const double turn = cross(s, e);
    if (cross(s, w) * turn >= 0 && cross(w, e) * turn >= 0)
        return std::abs(distance_between(where, centre) - distance_between(start, centre));
    return std::min(distance_between(where, start), distance_between(where, end));
}

}  // namespace

double tip_reach(const Outline& outline, const OutlineTip& tip)
{
    const OutlinePoint place = outline.points[static_cast<std::size_t>(tip.point)];
    double reach = place.r;
    for (const OutlineCurve& curve : outline.curves)
    {
        const OutlinePoint start = outline.points[static_cast<std::size_t>(curve.start)];
        const OutlinePoint end = outline.points[static_cast<std::size_t>(curve.end)];
        if (curve.start == tip.point || curve.end == tip.point) reach = std::min(reach, distance_between(start, end));
        else if (curve.centre) reach = std::min(reach, distance_to_arc(place, start, end, *curve.centre));
        else reach = std::min(reach, distance_to_line(place, start, end));
    }
    return reach;
}

}  // namespace splicewright
