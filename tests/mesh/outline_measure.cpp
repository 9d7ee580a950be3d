// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/mesh/outline_measure.h"

#include <Eigen/LU>
#include <cmath>
#include <numbers>
#include <set>
#include <stdexcept>
#include <vector>

#include "mesh/triangle.h"

namespace splicewright::sample
{
namespace
{

const OutlineCurve& curve_at(const Outline& outline, int c) { return outline.curves[static_cast<std::size_t>(c)]; }
OutlinePoint point_at(const Outline& outline, int p) { return outline.points[static_cast<std::size_t>(p)]; }

double cross(OutlinePoint a, OutlinePoint b) { return a.z * b.r - a.r * b.z; }
OutlinePoint minus(OutlinePoint a, OutlinePoint b) { return {a.z - b.z, a.r - b.r}; }

// Line integrals (z dr - r dz)/2 and -r^2 dz/2 from a to b.
Measure along_line(OutlinePoint a, OutlinePoint b)
{
    return {cross(a, b) / 2, -(b.z - a.z) * (a.r * a.r + a.r * b.r + b.r * b.r) / 6};
}

// The same along an arc of less than 180 degrees; r^2 dz = -(c + R sin)^2 R sin dphi in closed form.
Measure along_arc(OutlinePoint centre, OutlinePoint a, OutlinePoint b)
{
    const OutlinePoint from = minus(a, centre), to = minus(b, centre);
    const double R = std::hypot(from.z, from.r), start = std::atan2(from.r, from.z);
    const double turn = std::atan2(cross(from, to), from.z * to.z + from.r * to.r);
    const auto integral = [&](double phi)  // of (c + R sin)^2 sin
    {
        const double c = centre.r, s = std::sin(phi), k = std::cos(phi);
        return -c * c * k + 2 * c * R * (phi / 2 - s * k / 2) + R * R * (k * k * k / 3 - k);
    };
    return {(cross(centre, minus(b, a)) + R * R * turn) / 2, R / 2 * (integral(start + turn) - integral(start))};
}

double angle_between(OutlinePoint centre, const Eigen::Vector2d& a, const Eigen::Vector2d& b)
{
    const Eigen::Vector2d c(centre.z, centre.r), from = a - c, to = b - c;
    return std::abs(std::atan2(from(0) * to(1) - from(1) * to(0), from.dot(to)));
}

}  // namespace

Measure measure_of(const Outline& outline, const OutlineRegion& region)
{
    Measure total;
    std::set<int> left(region.curves.begin(), region.curves.end());
    int at = curve_at(outline, region.curves.front()).start;
    while (!left.empty())
    {
        int next = -1;
        for (const int c : left)
            if (curve_at(outline, c).start == at || curve_at(outline, c).end == at) next = c;
        if (next < 0) throw std::logic_error("more than one loop in " + region.name);
        left.erase(next);
        const OutlineCurve& curve = curve_at(outline, next);
        const int end = curve.start == at ? curve.end : curve.start;
        const OutlinePoint a = point_at(outline, at), b = point_at(outline, end);
        const Measure part = curve.centre ? along_arc(*curve.centre, a, b) : along_line(a, b);
        total.area += part.area;
        total.moment += part.moment;
        at = end;
    }
    return {std::abs(total.area), std::abs(total.moment)};
}

Measure measure_of(const Mesh& mesh, int region)
{
    Measure total;
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        if (mesh.region_of[static_cast<std::size_t>(t)] != region) continue;
        const TriangleNodes nodes = mesh.node(Eigen::all, mesh.triangle.col(t));
        for (const QuadraturePoint& point : quadrature())
        {
            const double area = point.weight * (nodes * shape_gradients(point.at)).determinant();
            total.area += area;
            total.moment += area * nodes.row(1).dot(shape_values(point.at));
        }
    }
    return total;
}

double area_allowance(const Outline& outline, const OutlineRegion& region, const Mesh& mesh)
{
    double allowed = 0;
    for (const int c : region.curves)
    {
        const OutlineCurve& curve = curve_at(outline, c);
        if (!curve.centre) continue;
        const OutlinePoint from = point_at(outline, curve.start), to = point_at(outline, curve.end);
        const double R = std::hypot(from.z - curve.centre->z, from.r - curve.centre->r);
        const double whole = angle_between(*curve.centre, {from.z, from.r}, {to.z, to.r});
        double largest = 0;
        for (const MeshEdge& edge : mesh.curve.at(curve.name))
        {
            const Eigen::Vector2d centre(curve.centre->z, curve.centre->r);
            if (std::abs((mesh.node.col(edge.first) - centre).norm() - R) > 1e-6 * R) continue;
            const double angle = angle_between(*curve.centre, mesh.node.col(edge.first), mesh.node.col(edge.last));
            if (angle < 1.0001 * whole) largest = std::max(largest, angle);
        }
        allowed += 1.1 * whole / largest * R * R * std::pow(largest / 2, 5) / 30;
    }
    return allowed;
}

}  // namespace splicewright::sample
