// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/solid_size.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "mesh/solid_section.h"

namespace splicewright
{
namespace
{

// Chosen by trial: see the table of docs/solid-model.md.
constexpr double growth = 0.7;  // element size gained per mm of distance from a notch
constexpr double sections_per_wall = 1.3;
constexpr double parts_per_tip_reach = 6;  // of a sharp edge of an unfused face
constexpr double parts_of_land = 10;       // element at the edge of the lap's land over the land's radius, inverse
constexpr double parts_of_leg = 5;         // element at a weld end over the leg, inverse
constexpr double parts_of_plug = 5;        // element at a plug's edge over its radius, inverse
constexpr double greatest_stretch = 6;     // chord over the width of a narrow ring
constexpr double chord_of_radius = 0.5;    // longest chord of a circle over its radius
constexpr double sagitta_share = 0.15;     // of that width, that a chord may stand off its circle
// Tetrahedra for each cube of the edge length: a regular one has a volume of 0.118; steeply graded meshes have more.
constexpr double tetrahedra_per_cube = 17;
constexpr double chord_of_plug = 0.6;  // longest edge in a plug over its radius: coarser ones leave flat elements
constexpr int steps_of_a_turn = 12;

MeshSize section_size()
{
    MeshSize size;
    size.elements_per_quarter_turn = SolidSizeField::elements_per_quarter_turn;
    size.tangent_factor = 1;
    size.growth = growth;
    size.sections_per_wall = sections_per_wall;
    size.elements_per_tip_reach = parts_per_tip_reach;
    return size;
}

double distance(OutlinePoint a, OutlinePoint b) { return std::hypot(a.z - b.z, a.r - b.r); }

double distance_to_line(OutlinePoint p, OutlinePoint a, OutlinePoint b)
{
    const double dz = b.z - a.z, dr = b.r - a.r, length = dz * dz + dr * dr;
    const double t = length == 0 ? 0 : std::clamp(((p.z - a.z) * dz + (p.r - a.r) * dr) / length, 0.0, 1.0);
    return distance(p, {a.z + t * dz, a.r + t * dr});
}

double outside(double value, double low, double high) { return std::max({low - value, value - high, 0.0}); }

}  // namespace

SolidSizeField::SolidSizeField(const SolidGeometry& geometry)
    : geometry_(&geometry), section_(geometry.section, section_size())
{
    const Outline& section = geometry.section;
    for (const OutlineCurve& curve : section.curves)
    {
        const OutlinePoint a = section.points[static_cast<std::size_t>(curve.start)],
                           b = section.points[static_cast<std::size_t>(curve.end)];
        const double width = distance(a, b), radius = std::max(a.r, b.r);
        largest_ = std::max(largest_, radius);
        if (radius > 0)
            narrow_.push_back({a, b,
                               std::min({greatest_stretch * width, std::sqrt(8 * sagitta_share * width * radius),
                                         chord_of_radius * radius})});
    }
    for (std::size_t i = 0; i < section.regions.size(); ++i)
    {
        const Sweep& sweep = geometry.sweep[i];
        if (sweep.weld_end_after == 0) continue;
        WeldEnd end{0, 1e300, -1e300, 1e300, -1e300, 0};
        for (const int c : section.regions[i].curves)
        {
            const OutlinePoint p =
                section.points[static_cast<std::size_t>(section.curves[static_cast<std::size_t>(c)].start)];
            end.z_low = std::min(end.z_low, p.z), end.z_high = std::max(end.z_high, p.z);
            end.r_low = std::min(end.r_low, p.r), end.r_high = std::max(end.r_high, p.r);
        }
        end.size = std::min(end.z_high - end.z_low, end.r_high - end.r_low) / parts_of_leg;
        for (const double angle : {sweep.start, sweep.start + sweep.extent})
        {
            end.angle = angle;
            weld_ends_.push_back(end);
        }
    }
    divide_section();
}

double SolidSizeField::lap_size(SolidPoint where) const
{
    const LapShape& lap = *geometry_->lap;
    const double h = lap.half_length, rho = lap.corner_radius, r = std::hypot(where.x, where.y);
    double size = 1e300;
    for (const double side : {1.0, -1.0})
    {
        const double to_corner = std::abs(std::hypot(side * where.y - rho, side * where.z - (h - rho)) - rho);
        size = std::min(size, std::numbers::pi / 2 * rho / elements_per_quarter_turn +
                                  growth * (to_corner + outside(r, 0, lap.fused_from)));
    }
    if (lap.fused_from < lap.outer)
        size = std::min(size, lap.fused_from / parts_of_land +
                                  growth * std::hypot(distance_from_lap(lap, where), r - lap.fused_from));
    return size;
}

double SolidSizeField::asked_at(SolidPoint where) const
{
    const double r = std::hypot(where.x, where.y), angle = std::atan2(where.y, where.x);
    double size = std::min(section_.at({where.z, r}), largest_);
    if (geometry_->lap) size = std::min(size, lap_size(where));
    for (const PlugShape& plug : geometry_->plugs)
    {
        const double along = r * std::remainder(angle - plug.angle, full_turn);
        const double to_edge = std::abs(std::hypot(along, where.z - plug.z) - plug.radius);
        size = std::min(
            size, plug.radius / parts_of_plug +
                      growth * std::hypot(to_edge, 0.5 * outside(r, plug.bar_radius, plug.top.value_or(plug.outer))));
    }
    for (const WeldEnd& end : weld_ends_)
    {
        const double around = r * std::remainder(angle - end.angle, full_turn);
        size = std::min(size, end.size + growth * std::hypot(around, outside(where.z, end.z_low, end.z_high),
                                                             outside(r, end.r_low, end.r_high)));
    }
    return size;
}

double SolidSizeField::needed_at(OutlinePoint where) const
{
    double size = largest_;
    for (const Narrow& curve : narrow_)
        if (curve.size < size)
            size = std::min(size, curve.size + growth * distance_to_line(where, curve.start, curve.end));
    return size;
}

double SolidSizeField::plug_needs(SolidPoint where) const
{
    double size = largest_;
    for (const PlugShape& plug : geometry_->plugs)
    {
        const double along = where.x * std::cos(plug.angle) + where.y * std::sin(plug.angle);
        const double across = where.y * std::cos(plug.angle) - where.x * std::sin(plug.angle);
        if (along > 0)
            size = std::min(size, chord_of_plug * plug.radius +
                                      growth * outside(std::hypot(across, where.z - plug.z), 0, plug.radius));
    }
    return size;
}

double SolidSizeField::at(SolidPoint where, double scale) const
{
    return std::min({scale * asked_at(where), needed_at({where.z, std::hypot(where.x, where.y)}), plug_needs(where)});
}

// Cells of the section are halved until they are no larger than an element at scale 1, and swept around in steps.
void SolidSizeField::divide_section()
{
    struct Cell
    {
        double z, r, half;
    };
    double z_low = 1e300, z_high = -1e300;
    for (const OutlinePoint& p : geometry_->section.points)
        z_low = std::min(z_low, p.z), z_high = std::max(z_high, p.z);
    std::vector<Cell> open;
    for (double z = z_low + largest_ / 2; z < z_high + largest_ / 2; z += largest_)
        open.push_back({z, largest_ / 2, largest_ / 2});
    const bool is_round = !geometry_->lap && geometry_->plugs.empty() && weld_ends_.empty();
    const int steps_around = is_round ? 1 : steps_of_a_turn;
    while (!open.empty())
    {
        const Cell cell = open.back();
        open.pop_back();
        if (cell.half > at({cell.r, 0, cell.z}, 1))
        {
            const double h = cell.half / 2;
            for (const double dz : {-h, h})
                for (const double dr : {-h, h}) open.push_back({cell.z + dz, cell.r + dr, h});
            continue;
        }
        const double volume = full_turn / steps_around * cell.r * 4 * cell.half * cell.half;
        for (int i = 0; i < steps_around; ++i)
        {
            const double angle = full_turn * (i + 0.5) / steps_around;
            const SolidPoint p{cell.r * std::cos(angle), cell.r * std::sin(angle), cell.z};
            if (region_at(*geometry_, p) >= 0) parts_.push_back({volume, asked_at(p), needed_at({cell.z, cell.r})});
        }
    }
}

double SolidSizeField::expected_elements(double scale) const
{
    double sum = 0;
    for (const Part& part : parts_)
        sum += tetrahedra_per_cube * part.volume / std::pow(std::min(scale * part.asked, part.needed), 3);
    return sum;
}

}  // namespace splicewright
