// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/solid_geometry.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "cases/bar_shape.h"
#include "cases/problem.h"
#include "mesh/solid_section.h"

namespace splicewright
{
namespace
{

double first_radius(const Case& asked, Side side)
{
    return asked.bar[index(side)]->sections.front().diameter.value() / 2;
}

bool has_open_lap(const Case& asked, const Scenario& scenario)
{
    return asked.joint && asked.joint->half_lap.value() > 0 && (asked.joint->penetration || !scenario.butt_fused);
}

// The section that is swept: with a half lap the two bars are drawn as one, and parted later.
Outline swept_section(const Case& asked, const Scenario& scenario, bool has_lap)
{
    Case drawn = asked;
    Scenario shown = scenario;
    if (has_lap)
    {
        drawn.joint->penetration.reset();
        shown.butt_fused = true;
    }
    if (asked.sleeve && !asked.sleeve->weld.goes_all_round()) shown.root_shape = RootShape::sharp;
    return outline(drawn, shown);
}

LapShape lap_of(const Case& asked, const Scenario& scenario)
{
    const double left = first_radius(asked, Side::left), right = first_radius(asked, Side::right);
    LapShape lap;
    lap.half_length = asked.joint->half_lap.value() / 2;
    lap.corner_radius = asked.joint->lap_corner_radius.value();
    lap.outer = 1.5 * std::max(left, right);
    lap.fused_from = scenario.butt_fused ? (left + right) / 2 - asked.joint->penetration->value() : lap.outer;
    return lap;
}

std::vector<PlugShape> plugs_of(const Case& asked)
{
    std::vector<PlugShape> plugs;
    if (!asked.sleeve) return plugs;
    for (const PlugRing& ring : asked.sleeve->plugs)
        for (int i = 0; i < ring.count; ++i)
        {
            const Side side = ring.at.value() < 0 ? Side::left : Side::right;
            PlugShape plug;
            plug.z = ring.at.value();
            plug.angle = ring.start.value() + full_turn * i / ring.count;
            plug.radius = ring.diameter.value() / 2;
            plug.bar_radius = first_radius(asked, side);
            plug.outer = 0.75 * asked.sleeve->outer_diameter.value();
            if (ring.depth) plug.top = plug.bar_radius + ring.depth->value();
            plug.sleeve = fmt::format("sleeve.{}", name_of(side));
            plug.name = fmt::format("plug-edge.{}", plugs.size() + 1);
            plugs.push_back(plug);
        }
    return plugs;
}

std::optional<OutOfLine> out_of_line_of(const Case& asked)
{
    if (!asked.joint || (asked.joint->offset.value() == 0 && asked.joint->tilt.value() == 0)) return std::nullopt;
    OutOfLine shift;
    shift.offset = asked.joint->offset.value();
    shift.tilt = asked.joint->tilt.value();
    shift.angle = asked.joint->offset_angle.value();
    shift.blend_half = joint_half_length(*asked.joint);
    if (!asked.sleeve) return shift;
    const SleeveWeld& weld = asked.sleeve->weld;
    shift.sleeve_end = sleeve_reach(*asked.sleeve, Side::right) + weld.leg_on_bar.value() + toe_tangent_on_bar(weld);
    shift.bar_radius = std::max(first_radius(asked, Side::left), first_radius(asked, Side::right));
    shift.sleeve_radius = std::min(asked.sleeve->outer_diameter, asked.sleeve->end_diameter).value() / 2;
    return shift;
}

void name_regions(SolidGeometry& geometry)
{
    const auto add = [&](const std::string& name)
    {
        if (std::find(geometry.regions.begin(), geometry.regions.end(), name) == geometry.regions.end())
            geometry.regions.push_back(name);
    };
    for (const OutlineRegion& region : geometry.section.regions)
        if (region.name == joined_bars)
            for (const Side side : both_sides) add(fmt::format("bar.{}", name_of(side)));
        else add(region.name);
    if (!geometry.plugs.empty()) add("plug");
}

void tell_what_is_absent(SolidGeometry& geometry, const Case& asked, const Scenario& scenario)
{
    auto& absent = geometry.section.absent_sites;
    if (geometry.lap && scenario.butt_fused)
        absent.emplace_back(
            "land-edge: the edge of the unfused faces of a half lap is sharp, it has an intensity and no stress");
    if (geometry.lap && !scenario.butt_fused)
        absent.emplace_back("butt-surface: the whole butt is taken as lost, its faces are free");
    if (!geometry.lap && asked.joint && asked.joint->half_lap.value() > 0)
        absent.emplace_back("lap-corner: the half lap is fused through");
    if (!asked.sleeve || asked.sleeve->weld.goes_all_round()) return;
    for (const char* side : {"left", "right"})
        absent.push_back(
            fmt::format("root.{}: the root of a weld that does not go all round is sharp, it has an "
                        "intensity and no stress",
                        side));
    if (asked.joint->penetration && !geometry.lap)
        absent.emplace_back(
            "land-edge: beside sharp roots the land's edge is sharp, it has an intensity and no stress");
}

}  // namespace

SolidGeometry solid_geometry(const Case& asked, const Scenario& scenario)
{
    SolidGeometry geometry;
    const bool has_lap = has_open_lap(asked, scenario);
    geometry.section = swept_section(asked, scenario, has_lap);
    if (has_lap)
    {
        geometry.lap = lap_of(asked, scenario);
        join_bars(geometry.section);
    }
    geometry.least_length = close_up_short_curves(geometry.section);
    geometry.sweep.assign(geometry.section.regions.size(), {0, full_turn, 0});
    if (asked.sleeve && !asked.sleeve->weld.goes_all_round())
        for (const Side side : both_sides)
            if (scenario.sleeve_weld_fused[index(side)]) open_weld(geometry, asked.sleeve->weld, side);
    geometry.plugs = plugs_of(asked);
    geometry.out_of_line = out_of_line_of(asked);
    name_regions(geometry);
    tell_what_is_absent(geometry, asked, scenario);
    return geometry;
}

SolidPoint OutOfLine::moved(SolidPoint straight) const
{
    // From nothing to the whole way between -blend_half and blend_half, without a kink at either end.
    const double t = std::clamp((straight.z + blend_half) / (2 * blend_half), 0.0, 1.0);
    const double comes_in = t * t * (3 - 2 * t);
    double way = comes_in * (offset + tilt * straight.z);
    const double r = std::hypot(straight.x, straight.y);
    if (straight.z < sleeve_end && r > bar_radius)
        way *= std::clamp((sleeve_radius - r) / (sleeve_radius - bar_radius), 0.0, 1.0);
    return {straight.x + way * std::cos(angle), straight.y + way * std::sin(angle), straight.z};
}

bool is_left_of_lap(const LapShape& lap, SolidPoint where)
{
    const double h = lap.half_length, rho = lap.corner_radius;
    // Seen half a turn about the middle of the lap, left and right change places.
    const bool upper = where.y > 0;
    const double y = upper ? where.y : -where.y, z = upper ? where.z : -where.z;
    bool inside = z < h;
    if (inside && y < rho && z > h - rho) inside = std::hypot(y - rho, z - (h - rho)) < rho;
    return upper ? inside : !inside;
}

double distance_from_lap(const LapShape& lap, SolidPoint where)
{
    const double h = lap.half_length, rho = lap.corner_radius;
    const double flat = std::hypot(where.y, std::max(0.0, std::abs(where.z) - (h - rho)));
    double nearest = flat;
    for (const double side : {1.0, -1.0})
    {
        const double y = side * where.y - rho, z = side * where.z - (h - rho);
        if (y <= 0 && z >= 0) nearest = std::min(nearest, std::abs(std::hypot(y, z) - rho));
        nearest = std::min(nearest, std::hypot(z - rho, std::min(y, 0.0)));
    }
    return nearest;
}

int region_at(const SolidGeometry& geometry, SolidPoint where)
{
    const auto number = [&](const std::string& name)
    {
        const auto found = std::find(geometry.regions.begin(), geometry.regions.end(), name);
        EXPECTS(found != geometry.regions.end());
        return static_cast<int>(found - geometry.regions.begin());
    };
    const double r = std::hypot(where.x, where.y), angle = std::atan2(where.y, where.x);
    for (std::size_t i = 0; i < geometry.section.regions.size(); ++i)
    {
        const Sweep& sweep = geometry.sweep[i];
        if (std::fmod(std::fmod(angle - sweep.start, full_turn) + full_turn, full_turn) > sweep.extent) continue;
        const OutlineRegion& region = geometry.section.regions[i];
        if (!is_inside(geometry.section, region, {where.z, r})) continue;
        if (region.name == joined_bars) return number(is_left_of_lap(*geometry.lap, where) ? "bar.left" : "bar.right");
        for (const PlugShape& plug : geometry.plugs)
        {
            const double along = where.x * std::cos(plug.angle) + where.y * std::sin(plug.angle);
            const double across = where.y * std::cos(plug.angle) - where.x * std::sin(plug.angle);
            if (region.name != plug.sleeve || along < 0 || std::hypot(across, where.z - plug.z) > plug.radius) continue;
            return plug.top && r > *plug.top ? -1 : number("plug");
        }
        return number(region.name);
    }
    return -1;
}

}  // namespace splicewright
