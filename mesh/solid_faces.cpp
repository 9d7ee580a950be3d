// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/solid_faces.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace splicewright
{
namespace
{

constexpr double same_place = 1e-5;  // mm, above the tolerance of the geometry kernel

double dot(SolidPoint a, SolidPoint b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
SolidPoint minus(SolidPoint a, SolidPoint b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
SolidPoint plus(SolidPoint a, double factor, SolidPoint b)
{
    return {a.x + factor * b.x, a.y + factor * b.y, a.z + factor * b.z};
}
double norm(SolidPoint a) { return std::sqrt(dot(a, a)); }
double radius_of(SolidPoint p) { return std::hypot(p.x, p.y); }

// Nearest point of the curve, its line not ended; both in the section.
OutlinePoint nearest_on(const FaceShape& curve, OutlinePoint p)
{
    if (curve.centre)
    {
        const double radius = std::hypot(curve.start.z - curve.centre->z, curve.start.r - curve.centre->r);
        const double away = std::hypot(p.z - curve.centre->z, p.r - curve.centre->r);
        if (away == 0) return curve.start;
        return {curve.centre->z + radius * (p.z - curve.centre->z) / away,
                curve.centre->r + radius * (p.r - curve.centre->r) / away};
    }
    const double dz = curve.end.z - curve.start.z, dr = curve.end.r - curve.start.r;
    const double t = ((p.z - curve.start.z) * dz + (p.r - curve.start.r) * dr) / (dz * dz + dr * dr);
    return {curve.start.z + t * dz, curve.start.r + t * dr};
}

FaceShape revolved(const Outline& section, const OutlineCurve& curve)
{
    FaceShape shape;
    shape.name = curve.name;
    shape.unfused = curve.unfused;
    shape.is_section = curve.name == "butt" || curve.name == "sleeve section";
    shape.start = section.points[static_cast<std::size_t>(curve.start)];
    shape.end = section.points[static_cast<std::size_t>(curve.end)];
    shape.centre = curve.centre;
    shape.z_low = std::min(shape.start.z, shape.end.z);
    shape.z_high = std::max(shape.start.z, shape.end.z);
    shape.r_low = std::min(shape.start.r, shape.end.r);
    shape.r_high = std::max(shape.start.r, shape.end.r);
    if (!curve.centre) return shape;
    // An arc of less than half a turn can bulge beyond its ends.
    const double radius = std::hypot(shape.start.z - curve.centre->z, shape.start.r - curve.centre->r);
    const double bulge = radius - std::hypot((shape.start.z + shape.end.z) / 2 - curve.centre->z,
                                             (shape.start.r + shape.end.r) / 2 - curve.centre->r);
    shape.z_low -= bulge, shape.z_high += bulge, shape.r_low -= bulge, shape.r_high += bulge;
    return shape;
}

FaceShape plane(SolidPoint origin, SolidPoint normal, const std::string& name)
{
    FaceShape shape;
    shape.kind = FaceShape::Kind::plane;
    shape.name = name;
    shape.origin = origin;
    shape.direction = normal;
    return shape;
}

FaceShape cylinder(SolidPoint origin, SolidPoint direction, double radius, const std::string& name)
{
    FaceShape shape = plane(origin, direction, name);
    shape.kind = FaceShape::Kind::cylinder;
    shape.radius = radius;
    return shape;
}

// The stepped face of a half lap: two ends of tongues, the flat between, and two rounded corners; each of them once
// where it is unfused and once where the butt weld fuses it.
void add_lap(std::vector<FaceShape>& shapes, const LapShape& lap)
{
    const double h = lap.half_length, rho = lap.corner_radius;
    std::vector<FaceShape> parts;
    for (const double side : {1.0, -1.0})
    {
        FaceShape end = plane({0, 0, side * h}, {0, 0, 1}, "land");
        (side > 0 ? end.y_low : end.y_high) = side * rho;
        parts.push_back(end);
        FaceShape corner = cylinder({0, side * rho, side * (h - rho)}, {1, 0, 0}, rho,
                                    side > 0 ? "lap-corner.right" : "lap-corner.left");
        corner.y_low = side > 0 ? 0 : -rho, corner.y_high = side > 0 ? rho : 0;
        corner.z_low = side > 0 ? h - rho : -h, corner.z_high = side > 0 ? h : -(h - rho);
        parts.push_back(corner);
    }
    FaceShape flat = plane({0, 0, 0}, {0, 1, 0}, "lap");
    flat.z_low = -(h - rho), flat.z_high = h - rho;
    parts.push_back(flat);
    for (FaceShape part : parts)
    {
        part.unfused = true;
        part.r_high = lap.fused_from;
        shapes.push_back(part);
        part.unfused = false, part.is_section = true;
        part.name = "butt";
        part.r_low = lap.fused_from, part.r_high = lap.outer;
        shapes.push_back(part);
    }
}

void add_weld_ends(std::vector<FaceShape>& shapes, const SolidGeometry& geometry)
{
    for (const Sweep& sweep : geometry.sweep)
    {
        if (sweep.weld_end_after == 0) continue;
        for (const bool at_end : {false, true})
        {
            const double angle = sweep.start + (at_end ? sweep.extent : 0);
            FaceShape end = plane({0, 0, 0}, {-std::sin(angle), std::cos(angle), 0},
                                  fmt::format("weld-end.{}", sweep.weld_end_after - (at_end ? 0 : 1)));
            end.angle = angle;
            (sweep.weld_end_after == 2 ? end.z_high : end.z_low) = 0;
            shapes.push_back(end);
        }
    }
}

void add_plugs(std::vector<FaceShape>& shapes, const SolidGeometry& geometry)
{
    for (const PlugShape& plug : geometry.plugs)
    {
        const SolidPoint direction{std::cos(plug.angle), std::sin(plug.angle), 0};
        FaceShape wall = cylinder({0, 0, plug.z}, direction, plug.radius, "plug wall" + plug.name.substr(9));
        wall.angle = plug.angle;
        shapes.push_back(wall);
        if (!plug.top) continue;
        FaceShape top = cylinder({0, 0, 0}, {0, 0, 1}, *plug.top, "plug top" + plug.name.substr(9));
        top.z_low = plug.z - plug.radius, top.z_high = plug.z + plug.radius;
        top.angle = plug.angle;
        shapes.push_back(top);
    }
}

bool is_meant(const FaceShape& shape, SolidPoint p)
{
    const double r = radius_of(p);
    const auto within = [](double value, double low, double high)
    { return value >= low - same_place && value <= high + same_place; };
    if (!within(p.z, shape.z_low, shape.z_high) || !within(r, shape.r_low, shape.r_high)) return false;
    if (!within(p.y, shape.y_low, shape.y_high)) return false;
    return !shape.angle || p.x * std::cos(*shape.angle) + p.y * std::sin(*shape.angle) > -same_place;
}

}  // namespace

std::vector<FaceShape> face_shapes(const SolidGeometry& geometry)
{
    std::vector<FaceShape> shapes;
    for (const OutlineCurve& curve : geometry.section.curves) shapes.push_back(revolved(geometry.section, curve));
    if (geometry.lap) add_lap(shapes, *geometry.lap);
    add_weld_ends(shapes, geometry);
    add_plugs(shapes, geometry);
    return shapes;
}

SolidPoint projected(const FaceShape& shape, SolidPoint where)
{
    if (shape.kind == FaceShape::Kind::plane)
        return plus(where, -dot(minus(where, shape.origin), shape.direction), shape.direction);
    if (shape.kind == FaceShape::Kind::cylinder)
    {
        const SolidPoint from = minus(where, shape.origin);
        const SolidPoint across = plus(from, -dot(from, shape.direction), shape.direction);
        const double away = norm(across);
        return away == 0 ? where : plus(where, shape.radius / away - 1, across);
    }
    const double r = radius_of(where);
    const OutlinePoint on = nearest_on(shape, {where.z, r});
    if (r == 0) return {on.r, 0, on.z};
    return {where.x * on.r / r, where.y * on.r / r, on.z};
}

double distance_from(const FaceShape& shape, SolidPoint where)
{
    if (!is_meant(shape, where)) return std::numeric_limits<double>::infinity();
    return norm(minus(where, projected(shape, where)));
}

SolidPoint middle_on(const std::vector<const FaceShape*>& shapes, SolidPoint a, SolidPoint b)
{
    SolidPoint middle{(a.x + b.x) / 2, (a.y + b.y) / 2, (a.z + b.z) / 2};
    const double ra = radius_of(a), rb = radius_of(b);
    const auto on_revolved = std::find_if(
        shapes.begin(), shapes.end(), [](const FaceShape* shape) { return shape->kind == FaceShape::Kind::revolved; });
    if (on_revolved != shapes.end() && ra > 0 && rb > 0)
    {
        // Half way in the section and half way around.
        const double x = a.x / ra + b.x / rb, y = a.y / ra + b.y / rb, length = std::hypot(x, y);
        const OutlinePoint on = nearest_on(**on_revolved, {middle.z, (ra + rb) / 2});
        if (length > 0) middle = {on.r * x / length, on.r * y / length, on.z};
    }
    // Where the faces of a lap stop being fused they meet on a circle that none of them knows.
    std::optional<FaceShape> rim;
    for (const FaceShape* inner : shapes)
        for (const FaceShape* outer : shapes)
            if (inner->kind != FaceShape::Kind::revolved && inner->unfused && !outer->unfused &&
                inner->r_high == outer->r_low)
                rim = cylinder({0, 0, 0}, {0, 0, 1}, inner->r_high, "land-edge");
    constexpr int most_rounds = 60;
    for (int round = 0; round < most_rounds; ++round)
    {
        double moved = 0;
        for (const FaceShape* shape : shapes)
        {
            const SolidPoint next = projected(*shape, middle);
            moved = std::max(moved, norm(minus(next, middle)));
            middle = next;
        }
        if (rim) middle = projected(*rim, middle);
        if (moved < 1e-12) break;
    }
    return middle;
}

}  // namespace splicewright
