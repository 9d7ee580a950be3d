// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_weld.h"

#include <fmt/format.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

#include "cases/bar_shape.h"
#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;

SharedForces between(const SolidLevel& level, const Eigen::Matrix3Xd& displacement, const std::string& on,
                     const std::string& from)
{
    const auto number = [&](const std::string& name)
    {
        const auto found = std::ranges::find(level.mesh.regions, name);
        EXPECTS(found != level.mesh.regions.end());
        return static_cast<std::int32_t>(found - level.mesh.regions.begin());
    };
    const std::int32_t other = number(from);
    return shared_forces(level.mesh.mesh, level.steel, displacement, number(on),
                         [other](std::int32_t region) { return region == other; });
}

// Sums over the ring, the angle counted from `towards`.
struct RingSums
{
    double axial = 0, radial = 0, moment = 0;                         // of harmonic 0
    double axial_cosine = 0, radial_cosine = 0, tangential_sine = 0;  // of harmonic 1
};

RingSums ring_sums(const SharedForces& forces, double towards)
{
    RingSums sums;
    for (Eigen::Index i = 0; i < forces.force.cols(); ++i)
    {
        const Eigen::Vector3d p = forces.place.col(i), f = forces.force.col(i);
        const double angle = std::atan2(p.y(), p.x()), c = std::cos(angle), s = std::sin(angle);
        const double radial = c * f.x() + s * f.y(), tangential = c * f.y() - s * f.x();
        sums.axial += f.z(), sums.radial += radial, sums.moment += p.x() * f.y() - p.y() * f.x();
        sums.axial_cosine += f.z() * std::cos(angle - towards);
        sums.radial_cosine += radial * std::cos(angle - towards);
        sums.tangential_sine += tangential * std::sin(angle - towards);
    }
    return sums;
}

void keep_larger(double& keep, double candidate)
{
    if (std::abs(candidate) > std::abs(keep)) keep = candidate;
}

// Weighted sum of the forces, in axes along the shaft, around it and outward at each place. Around: their moment about
// the shaft over `radius`, so that a weld that meets the sleeve farther out hands over the same torque at its throat.
Eigen::Vector3d weighted(const SharedForces& forces, double radius,
                         const std::function<double(const Eigen::Vector3d&)>& weight)
{
    Eigen::Vector3d sum(0, 0, 0);
    for (Eigen::Index i = 0; i < forces.force.cols(); ++i)
    {
        const Eigen::Vector3d p = forces.place.col(i), f = forces.force.col(i);
        const double w = weight(p), r = std::hypot(p.x(), p.y());
        if (w == 0 || r == 0) continue;
        sum +=
            w * Eigen::Vector3d(f.z(), (p.x() * f.y() - p.y() * f.x()) / radius, (p.x() * f.x() + p.y() * f.y()) / r);
    }
    return sum;
}

// A part of a joint between two regions, of which the force is asked.
struct Part
{
    std::string site;
    double area = 0, length = 0;
    Eigen::Vector3d place{0, 0, 0};
    std::function<double(const Eigen::Vector3d&)> weight;
};

void add_parts(std::vector<WeldMetalForce>& list, const SolidLevel& level, const SolidUnitDisplacements& unit,
               const std::string& on, const std::string& from, const std::vector<Part>& parts)
{
    if (parts.empty()) return;
    const SharedForces torsion = between(level, unit.torsion, on, from), x = between(level, unit.towards_x, on, from),
                       y = between(level, unit.towards_y, on, from), axial = between(level, unit.axial, on, from);
    const SharedForces press = unit.press.size() > 0 ? between(level, unit.press, on, from) : SharedForces{};
    for (const Part& part : parts)
    {
        WeldMetalForce force;
        force.site = part.site, force.area = part.area, force.length = part.length, force.place = part.place;
        const auto through = [&](const SharedForces& forces)
        { return weighted(forces, std::hypot(part.place.x(), part.place.y()), part.weight); };
        force.torsion = through(torsion), force.towards_x = through(x), force.towards_y = through(y);
        force.axial = through(axial), force.press = through(press);
        list.push_back(std::move(force));
    }
}

// Along a weld that starts at an angle, the length of arc from there to a place; in [0, whole turn).
double arc_from(double start, double radius, const Eigen::Vector3d& p)
{
    const double turn = std::fmod(std::atan2(p.y(), p.x()) - start, 2 * pi);
    return radius * (turn < 0 ? turn + 2 * pi : turn);
}

// The last length `over` of a weld counts whole, and what lies behind it falls off so that the sum is that of `over`.
double end_weight(double from_end, double over) { return std::clamp(1.5 - from_end / over, 0.0, 1.0); }

std::vector<Part> weld_parts(const Case& asked, Side side)
{
    const SleeveWeld& weld = asked.sleeve->weld;
    const WeldThroat throat = weld_throat(asked, side);
    const double start = weld.start[index(side)].value(), length = throat.radius * weld.coverage.value();
    const double over = std::min(weld.leg_on_bar.value(), length / 3), radius = throat.radius;
    const double z = (side == Side::right ? 1 : -1) * sleeve_reach(*asked.sleeve, side);
    const auto place = [&](double arc)
    {
        const double angle = start + arc / radius;
        return Eigen::Vector3d(radius * std::cos(angle), radius * std::sin(angle), z);
    };
    // Places just before the start count as the start: round-off puts them a whole turn away.
    const auto along = [=](const Eigen::Vector3d& p)
    {
        const double arc = arc_from(start, radius, p), gap = 2 * pi * radius - length;
        return arc > length + gap / 2 ? 0.0 : std::min(arc, length);
    };
    const int first = side == Side::left ? 1 : 3;
    std::vector<Part> parts;
    parts.push_back({fmt::format("weld-end.{}", first), throat.size * over, over, place(0),
                     [=](const Eigen::Vector3d& p) { return end_weight(along(p), over); }});
    parts.push_back({fmt::format("weld-end.{}", first + 1), throat.size * over, over, place(length),
                     [=](const Eigen::Vector3d& p) { return end_weight(length - along(p), over); }});
    const int n = std::max(1, static_cast<int>(length / over) - 1);
    for (int i = 1; i <= n; ++i)
    {
        const double middle = length * i / (n + 1);
        parts.push_back({fmt::format("throat.{}", name_of(side)), throat.size * over, over, place(middle),
                         [=](const Eigen::Vector3d& p)
                         { return std::max(0.0, 1 - std::abs(along(p) - middle) / over); }});
    }
    return parts;
}

std::vector<Part> plug_parts(const std::vector<PlugShape>& plugs, Side side)
{
    std::vector<Part> parts;
    for (const PlugShape& plug : plugs)
    {
        if ((plug.z < 0) != (side == Side::left)) continue;
        const Eigen::Vector3d axis(std::cos(plug.angle), std::sin(plug.angle), 0);
        const double reach = 1.2 * plug.radius, z = plug.z;
        parts.push_back({plug.name, pi * plug.radius * plug.radius, 0,
                         plug.bar_radius * axis + plug.z * Eigen::Vector3d::UnitZ(),
                         [axis, reach, z](const Eigen::Vector3d& p)
                         {
                             const Eigen::Vector3d from = p - z * Eigen::Vector3d::UnitZ();
                             const bool here = from.dot(axis) > 0 && (from - from.dot(axis) * axis).norm() < reach;
                             return here ? 1.0 : 0.0;
                         }});
    }
    return parts;
}

bool has_region(const SolidLevel& level, const std::string& name)
{
    return std::ranges::find(level.mesh.regions, name) != level.mesh.regions.end();
}

}  // namespace

WeldForce solid_weld_force(const Case& asked, const SolidLevel& level, Side side)
{
    EXPECTS(asked.sleeve && asked.sleeve->weld.goes_all_round());
    const std::string s = name_of(side);
    WeldForce weld;
    weld.radius = weld_throat(asked, side).radius;
    const double ring = 2 * pi * weld.radius, half_ring = ring / 2, outward = side == Side::right ? 1 : -1;
    for (const SolidBracket& bracket : level.brackets)
    {
        const auto forces = [&](const Eigen::Matrix3Xd& u) { return between(level, u, "sleeve." + s, "fillet." + s); };
        keep_larger(weld.torsion_tangential, ring_sums(forces(bracket.unit.torsion), 0).moment / (weld.radius * ring));
        const RingSums axial = ring_sums(forces(bracket.unit.axial), 0);
        keep_larger(weld.axial_outward, outward * axial.axial / ring);
        keep_larger(weld.axial_radial, axial.radial / ring);
        for (const RingSums& bending :
             {ring_sums(forces(bracket.unit.towards_x), 0), ring_sums(forces(bracket.unit.towards_y), pi / 2)})
        {
            keep_larger(weld.bending_outward, outward * bending.axial_cosine / half_ring);
            keep_larger(weld.bending_radial, bending.radial_cosine / half_ring);
            keep_larger(weld.bending_tangential, bending.tangential_sine / half_ring);
        }
    }
    return weld;
}

std::vector<WeldMetalForce> weld_metal_forces(const Case& asked, const SolidLevel& level, const SolidBracket& bracket)
{
    std::vector<WeldMetalForce> list;
    if (!asked.sleeve) return list;
    const std::vector<PlugShape> plugs = solid_geometry(asked, {}).plugs;
    for (const Side side : both_sides)
    {
        const std::string s = name_of(side);
        if (!asked.sleeve->weld.goes_all_round() && has_region(level, "fillet." + s))
            add_parts(list, level, bracket.unit, "sleeve." + s, "fillet." + s, weld_parts(asked, side));
        if (has_region(level, "plug"))
            add_parts(list, level, bracket.unit, "bar." + s, "plug", plug_parts(plugs, side));
    }
    return list;
}

}  // namespace splicewright
