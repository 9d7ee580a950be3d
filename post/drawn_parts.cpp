// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/drawn_parts.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "cases/problem.h"
#include "mesh/outline.h"

namespace splicewright
{
namespace
{

constexpr double chord_rad = 0.15;      // arcs are drawn in steps of this angle at most
constexpr double edge_turn_rad = 0.12;  // a smaller turn of the outside is no edge

SheetPoint place(const OutlinePoint& point) { return {point.z, point.r}; }

// A curve as points, from its start to its end.
std::vector<SheetPoint> points_of(const Outline& outline, const OutlineCurve& curve)
{
    const SheetPoint from = place(outline.points[static_cast<std::size_t>(curve.start)]),
                     to = place(outline.points[static_cast<std::size_t>(curve.end)]);
    if (!curve.centre) return {from, to};
    const SheetPoint centre = place(*curve.centre), a = from - centre, b = to - centre;
    const double sweep = std::atan2(a.x() * b.y() - a.y() * b.x(), a.dot(b));
    const int n = std::max(2, static_cast<int>(std::ceil(std::abs(sweep) / chord_rad)));
    std::vector<SheetPoint> points;
    for (int i = 0; i <= n; ++i)
    {
        const double angle = sweep * i / n, c = std::cos(angle), s = std::sin(angle);
        points.emplace_back(centre + SheetPoint(c * a.x() - s * a.y(), s * a.x() + c * a.y()));
    }
    points.front() = from;
    points.back() = to;
    return points;
}

void join(std::vector<SheetPoint>& line, const std::vector<SheetPoint>& more)
{
    line.insert(line.end(), more.begin() + (line.empty() ? 0 : 1), more.end());
}

// The curves one after the other from `start`; stops where none goes on.
std::vector<SheetPoint> walked(const Outline& outline, std::vector<int> curves, int start)
{
    std::vector<SheetPoint> line;
    for (bool found = true; found;)
    {
        found = false;
        for (auto it = curves.begin(); it != curves.end() && !found; ++it)
        {
            const OutlineCurve& curve = outline.curves[static_cast<std::size_t>(*it)];
            if (curve.start != start && curve.end != start) continue;
            std::vector<SheetPoint> points = points_of(outline, curve);
            if (curve.start != start) std::reverse(points.begin(), points.end());
            join(line, points);
            start = curve.start == start ? curve.end : curve.start;
            curves.erase(it);
            found = true;
            break;
        }
    }
    return line;
}

bool lies_inside(const std::string& name)
{
    return name == "axis" || name == "butt" || name == "land" || name == "sleeve section" || name.starts_with("fusion");
}

// Free curves but axis and bore.
std::vector<int> outside_of(const Outline& outline)
{
    std::map<int, int> uses;
    for (const OutlineRegion& region : outline.regions)
        for (const int curve : region.curves) ++uses[curve];
    std::vector<int> outside;
    for (const auto& [curve, n] : uses)
    {
        const std::string& name = outline.curves[static_cast<std::size_t>(curve)].name;
        if (n == 1 && name != "axis" && name != "bore") outside.push_back(curve);
    }
    return outside;
}

int leftmost_inner_point(const Outline& outline)
{
    int best = 0;
    for (int i = 1; i < static_cast<int>(outline.points.size()); ++i)
    {
        const OutlinePoint &point = outline.points[static_cast<std::size_t>(i)],
                           &kept = outline.points[static_cast<std::size_t>(best)];
        if (point.z < kept.z - 1e-9 || (point.z < kept.z + 1e-9 && point.r < kept.r)) best = i;
    }
    return best;
}

std::vector<double> sharp_edges(const std::vector<SheetPoint>& skin)
{
    std::vector<double> edges;
    for (std::size_t i = 1; i + 1 < skin.size(); ++i)
    {
        const SheetPoint a = skin[i] - skin[i - 1], b = skin[i + 1] - skin[i];
        const double turn = std::abs(std::atan2(a.x() * b.y() - a.y() * b.x(), a.dot(b)));
        // The steps of an arc turn by less than they are drawn with.
        if (turn > std::max(edge_turn_rad, 1.05 * chord_rad)) edges.push_back(skin[i].x());
    }
    return edges;
}

}  // namespace

DrawnShaft drawn_shaft(const Case& asked)
{
    Scenario sharp;
    sharp.root_shape = RootShape::sharp;
    const Outline whole = outline(asked, sharp);
    DrawnShaft shaft;
    for (const OutlineRegion& region : whole.regions)
    {
        EXPECTS(!region.curves.empty());
        std::vector<SheetPoint> corner =
            walked(whole, region.curves, whole.curves[static_cast<std::size_t>(region.curves.front())].start);
        corner.pop_back();
        shaft.parts.push_back({region.name, corner});
    }
    for (const OutlineCurve& curve : whole.curves)
        if (!lies_inside(curve.name)) shaft.edges.push_back(points_of(whole, curve));
    // Where weld metal meets its parts, the edges that were fused are drawn as in a weld's symbolic section.
    for (const OutlineCurve& curve : whole.curves)
        if (curve.name.starts_with("fusion")) shaft.edges.push_back(points_of(whole, curve));
    shaft.skin = walked(whole, outside_of(whole), leftmost_inner_point(whole));
    shaft.skin_edges = sharp_edges(shaft.skin);
    return shaft;
}

std::vector<SheetPoint> between(const std::vector<SheetPoint>& corner, double left, double right)
{
    std::vector<SheetPoint> kept = corner;
    for (const auto& [limit, sign] : {std::pair(left, 1.0), std::pair(right, -1.0)})
    {
        const std::vector<SheetPoint> all = std::move(kept);
        kept.clear();
        for (std::size_t i = 0; i < all.size(); ++i)
        {
            const SheetPoint& a = all[i];
            const SheetPoint& b = all[(i + 1) % all.size()];
            const double from = sign * (a.x() - limit), to = sign * (b.x() - limit);
            if (from >= 0) kept.push_back(a);
            if ((from < 0) != (to < 0)) kept.emplace_back(a + from / (from - to) * (b - a));
        }
    }
    return kept;
}

std::vector<std::vector<SheetPoint>> pieces_between(const std::vector<SheetPoint>& line, double left, double right)
{
    std::vector<std::vector<SheetPoint>> pieces;
    bool open = false;
    for (std::size_t i = 0; i + 1 < line.size(); ++i)
    {
        const SheetPoint along = line[i + 1] - line[i];
        double from = 0, to = 1;
        if (std::abs(along.x()) < 1e-12)
        {
            if (line[i].x() < left - 1e-9 || line[i].x() > right + 1e-9) from = 2;
        }
        else
        {
            const double at_left = (left - line[i].x()) / along.x(), at_right = (right - line[i].x()) / along.x();
            from = std::max(from, std::min(at_left, at_right));
            to = std::min(to, std::max(at_left, at_right));
        }
        if (from > to)
        {
            open = false;
            continue;
        }
        if (!open || from > 0) pieces.push_back({line[i] + from * along});
        pieces.back().push_back(line[i] + to * along);
        open = to >= 1;
    }
    return pieces;
}

double height_at(const std::vector<SheetPoint>& skin, double z)
{
    double height = 0;
    for (std::size_t i = 0; i + 1 < skin.size(); ++i)
    {
        const SheetPoint &a = skin[i], &b = skin[i + 1];
        if (std::min(a.x(), b.x()) > z + 1e-9 || std::max(a.x(), b.x()) < z - 1e-9) continue;
        const double share = std::abs(b.x() - a.x()) < 1e-12 ? 0 : (z - a.x()) / (b.x() - a.x());
        height = std::max(height, a.y() + std::clamp(share, 0.0, 1.0) * (b.y() - a.y()));
        if (std::abs(b.x() - a.x()) < 1e-12) height = std::max(height, b.y());
    }
    return height;
}

}  // namespace splicewright
