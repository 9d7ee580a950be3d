// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/outline.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/bar_shape.h"
#include "cases/problem.h"
#include "mesh/drawing.h"

namespace splicewright
{
namespace
{

constexpr double least_toe_turn_rad = 0.05;  // a flatter corner is no notch

// The curves at z = 0 that both sides share, by the point where they end.
struct JointPlane
{
    double inner = 0;             // axis or bore
    double land = 0;              // radius of the land's edge; 0: no land
    double surface = 0;           // of the butt, mean of the two bars
    std::vector<int> core, butt;  // land (unfused), fused ring
    std::vector<int> sleeve;      // through the sleeve's wall
};

// One side of the splice in numbers, mm, distances from the joint outward.
struct Half
{
    Side side;
    double bar_radius, blend_half, butt_zone;
    double reach, outer_radius, end_radius, taper;  // of the sleeve
    double leg_on_bar, leg_on_sleeve, toe_radius, root_radius;
    bool weld_fused;
};

// Radius of the circle around the end of an unfused face, mm; 0: the end is sharp.
double root_radius(const Scenario& scenario)
{
    if (scenario.root_shape == RootShape::sharp) return 0;
    return scenario.root_radius.value_or(reference_notch_radius).value();
}

Half half_of(const Case& asked, const Scenario& scenario, Side side)
{
    Half half{};
    half.side = side;
    half.bar_radius = asked.bar[index(side)]->sections.front().diameter.value() / 2;
    half.blend_half = asked.joint->blend.value() / 2;
    half.butt_zone = std::max(half.blend_half, least_butt_zone.value());
    half.root_radius = root_radius(scenario);
    if (!asked.sleeve) return half;
    const Sleeve& sleeve = *asked.sleeve;
    half.reach = sleeve_reach(sleeve, side);
    half.outer_radius = sleeve.outer_diameter.value() / 2;
    half.end_radius = sleeve.end_diameter.value() / 2;
    half.taper = sleeve.taper_length.value();
    half.leg_on_bar = sleeve.weld.leg_on_bar.value();
    half.leg_on_sleeve = sleeve.weld.leg_on_sleeve.value();
    half.toe_radius = scenario.toe_radius.value_or(sleeve.weld.toe_radius).value();
    half.weld_fused = scenario.sleeve_weld_fused[index(side)];
    return half;
}

JointPlane draw_joint_plane(Drawing& drawing, const Case& asked, const Scenario& scenario)
{
    JointPlane plane;
    plane.inner = asked.bar[0]->bore.value() / 2;
    const double left = asked.bar[0]->sections.front().diameter.value() / 2;
    const double right = asked.bar[1]->sections.front().diameter.value() / 2;
    plane.surface = (left + right) / 2;
    const double rho = root_radius(scenario);
    Path core(drawing, Side::right, 0, plane.inner);
    if (!scenario.butt_fused)
    {
        core.line_to(0, plane.surface, "land");
        plane.core = core.curves();
        drawing.unfuse(plane.core);
    }
    else if (asked.joint->penetration)
    {
        plane.land = plane.surface - asked.joint->penetration->value();
        core.line_to(0, plane.land - rho, "land");
        plane.core = core.curves();
        drawing.unfuse(plane.core);
        Path ring(drawing, Side::right, 0, plane.land + rho);
        ring.line_to(0, plane.surface, "butt");
        plane.butt = ring.curves();
        if (rho == 0) drawing.tip({0, plane.land}, "land-edge", {0, 1});
    }
    else
    {
        core.line_to(0, plane.surface, "butt");
        plane.butt = core.curves();
    }
    if (asked.sleeve)
    {
        Path sleeve(drawing, Side::right, 0, plane.surface);
        sleeve.line_to(0, asked.sleeve->outer_diameter.value() / 2, "sleeve section");
        plane.sleeve = sleeve.curves();
    }
    return plane;
}

// Half of the circle around the land's edge, on one side; empty without a land notch.
std::vector<int> draw_land_notch(Drawing& drawing, const JointPlane& plane, Side side, double rho)
{
    if (plane.land == 0 || rho == 0) return {};
    Path notch(drawing, side, 0, plane.land - rho);
    notch.arc_to(0, plane.land, rho, plane.land, "land-edge", rho);
    notch.arc_to(0, plane.land, 0, plane.land + rho, "land-edge", rho);
    return notch.curves();
}

// The bar's surface from the joint to the end of the butt zone: a blend of two equal arcs, one on each side,
// that meet the bars without a corner.
void draw_butt_surface(Path& path, const Half& half, double surface)
{
    const std::string name = fmt::format("butt-surface.{}", name_of(half.side));
    const double rise = half.bar_radius - surface, length = half.blend_half;
    if (length > 0 && rise != 0)
    {
        const double radius = (length * length + rise * rise) / (2 * std::abs(rise));
        path.arc_to(length, half.bar_radius - std::copysign(radius, rise), length, half.bar_radius, name,
                    std::min(radius, length));
    }
    path.line_to(half.butt_zone, half.bar_radius, name);
}

// A toe: the corner, the two points where its fillet touches, the middle of the arc, the arc's centre.
struct ToeFillet
{
    OutlinePoint corner, from, middle, to, centre;
};

// Fillet in a re-entrant corner between the direction that arrives and the one that leaves (unit vectors, z and r).
ToeFillet toe_fillet(OutlinePoint corner, OutlinePoint arrive, OutlinePoint leave, double radius)
{
    const double cosine = arrive.z * leave.z + arrive.r * leave.r;
    const double turn = std::acos(std::clamp(cosine, -1.0, 1.0));
    const double tangent = radius * std::tan(turn / 2);
    const OutlinePoint inward{leave.z - arrive.z, leave.r - arrive.r};
    const double length = std::hypot(inward.z, inward.r), to_centre = radius / std::cos(turn / 2);
    ToeFillet toe;
    toe.corner = corner;
    toe.from = {corner.z - tangent * arrive.z, corner.r - tangent * arrive.r};
    toe.to = {corner.z + tangent * leave.z, corner.r + tangent * leave.r};
    toe.centre = {corner.z + to_centre * inward.z / length, corner.r + to_centre * inward.r / length};
    toe.middle = {corner.z + (to_centre - radius) * inward.z / length,
                  corner.r + (to_centre - radius) * inward.r / length};
    return toe;
}

struct SleeveEnd
{
    std::vector<int> bar_side;     // slit side of the bar from the butt zone to the weld toe's arc
    std::vector<int> slit;         // the part of it that is unfused
    std::vector<int> sleeve_side;  // the sleeve's boundary from the slit's end over the outside to z = 0
    OutlinePoint bar_toe;          // where the plain bar begins
};

// The outside of the sleeve from `path` (at its end face or toe) back to the joint.
void draw_sleeve_outside(Path& path, const Half& half)
{
    if (half.taper > 0) path.line_to(half.reach - half.taper, half.outer_radius, "sleeve-mid");
    path.line_to(0, half.outer_radius, "sleeve-mid");
}

SleeveEnd draw_lost_weld(Drawing& drawing, const Half& half)
{
    const std::string side = name_of(half.side);
    SleeveEnd end;
    Path slit(drawing, half.side, half.butt_zone, half.bar_radius);
    slit.line_to(half.reach, half.bar_radius, "slit." + side);
    end.bar_side = end.slit = slit.curves();
    Path sleeve(drawing, half.side, half.reach, half.bar_radius);
    sleeve.line_to(half.reach, half.end_radius, "sleeve end");
    draw_sleeve_outside(sleeve, half);
    end.sleeve_side = sleeve.curves();
    end.bar_toe = {half.reach, half.bar_radius};
    for (const char* site : {"bar-toe", "sleeve-toe", "root", "throat"})
        drawing.absent(fmt::format("{}.{}: the weld is lost in this scenario", site, side));
    return end;
}

// Direction in which the outline goes on behind the top of the weld face.
OutlinePoint behind_weld_top(const Half& half, double wall_left)
{
    if (wall_left > 0) return {0, 1};
    if (half.taper == 0) return {-1, 0};
    const double rise = half.outer_radius - half.end_radius, length = std::hypot(half.taper, rise);
    return {-half.taper / length, rise / length};
}

// The upper end of the weld face. Where the corner is re-entrant and the end face has room, a toe with its fillet;
// otherwise the face runs on straight through what is left of the sleeve's corner, which takes metal away.
struct WeldTop
{
    OutlinePoint corner, face_end, middle;  // middle: where weld metal and sleeve part on the outline
    std::optional<ToeFillet> toe;
};

WeldTop weld_top(Drawing& drawing, const Half& half, OutlinePoint up_face)
{
    const double stub = half.end_radius - half.bar_radius - half.leg_on_sleeve;
    const double wall_left = stub > 1e-9 ? stub : 0;
    WeldTop top;
    top.corner = {half.reach, half.bar_radius + half.leg_on_sleeve};
    const OutlinePoint next = behind_weld_top(half, wall_left);
    const double turn = std::atan2(up_face.z * next.r - up_face.r * next.z, up_face.z * next.z + up_face.r * next.r);
    const double tangent = half.toe_radius * std::tan(std::abs(turn) / 2);
    const double room = wall_left > 0 ? wall_left : half.taper;
    // up_face points toward the joint, so a re-entrant corner turns clockwise in (distance, r).
    if (turn < -least_toe_turn_rad && tangent + 0.05 * half.toe_radius < room)
    {
        top.toe = toe_fillet(top.corner, up_face, next, half.toe_radius);
        top.face_end = top.toe->from;
        top.middle = top.toe->middle;
        return top;
    }
    top.face_end = top.middle = top.corner;
    drawing.absent(
        fmt::format("sleeve-toe.{}: the weld leg of {:g} mm reaches the sleeve's outer corner "
                    "({:.3g} mm of end face would be left, its toe fillet needs {:.3g} mm)",
                    name_of(half.side), half.leg_on_sleeve, wall_left, tangent));
    return top;
}

// The sleeve's boundary from the top of the weld back to the joint.
void draw_behind_weld(Path& path, const Half& half, const WeldTop& top, OutlinePoint up_face)
{
    const std::string toe_name = fmt::format("sleeve-toe.{}", name_of(half.side));
    if (top.toe)
    {
        path.arc_to(top.toe->centre.z, top.toe->centre.r, top.toe->to.z, top.toe->to.r, toe_name, half.toe_radius);
        if (half.bar_radius + half.leg_on_sleeve < half.end_radius)
            path.line_to(half.reach, half.end_radius, "sleeve end");
    }
    else if (half.bar_radius + half.leg_on_sleeve < half.end_radius && half.taper == 0)
    {
        const double stub = half.end_radius - half.bar_radius - half.leg_on_sleeve;
        path.line_to(half.reach + stub * up_face.z / up_face.r, half.end_radius, "sleeve end");
    }
    else path.line_to(half.reach, half.end_radius, "sleeve end");
    draw_sleeve_outside(path, half);
}

SleeveEnd draw_welded_end(Drawing& drawing, const Half& half)
{
    const std::string side = name_of(half.side);
    const double rho = half.root_radius, root = half.reach, surface = half.bar_radius;
    const double face = std::hypot(half.leg_on_bar, half.leg_on_sleeve);
    const OutlinePoint up_face{-half.leg_on_bar / face, half.leg_on_sleeve / face};
    const ToeFillet bar_toe = toe_fillet({root + half.leg_on_bar, surface}, {-1, 0}, up_face, half.toe_radius);
    const WeldTop top = weld_top(drawing, half, up_face);

    Path slit(drawing, half.side, half.butt_zone, surface);
    slit.line_to(root - rho, surface, "slit." + side);
    Path lower_notch(drawing, half.side, root - rho, surface);
    if (rho > 0)
    {
        lower_notch.arc_to(root, surface, root, surface - rho, "root." + side, rho);
        lower_notch.arc_to(root, surface, root + rho, surface, "root." + side, rho);
    }
    else
        drawing.tip({half.side == Side::right ? root : -root, surface}, "root." + side,
                    {half.side == Side::right ? 1.0 : -1.0, 0});
    Path bar_fusion(drawing, half.side, root + rho, surface);
    bar_fusion.line_to(bar_toe.middle.z, bar_toe.middle.r, "fusion bar." + side);
    Path bar_arc(drawing, half.side, bar_toe.middle.z, bar_toe.middle.r);
    bar_arc.arc_to(bar_toe.centre.z, bar_toe.centre.r, bar_toe.from.z, bar_toe.from.r, "bar-toe." + side,
                   half.toe_radius);

    Path weld_face(drawing, half.side, bar_toe.middle.z, bar_toe.middle.r);
    weld_face.arc_to(bar_toe.centre.z, bar_toe.centre.r, bar_toe.to.z, bar_toe.to.r, "bar-toe." + side,
                     half.toe_radius);
    weld_face.line_to(top.face_end.z, top.face_end.r, "weld face." + side);
    if (top.toe)
        weld_face.arc_to(top.toe->centre.z, top.toe->centre.r, top.middle.z, top.middle.r, "sleeve-toe." + side,
                         half.toe_radius);
    Path sleeve_fusion(drawing, half.side, top.middle.z, top.middle.r);
    sleeve_fusion.line_to(root, surface + rho, "fusion sleeve." + side);
    Path weld_notch(drawing, half.side, root, surface + rho);
    if (rho > 0) weld_notch.arc_to(root, surface, root + rho, surface, "root." + side, rho);
    Path sleeve_notch(drawing, half.side, root, surface + rho);
    if (rho > 0) sleeve_notch.arc_to(root, surface, root - rho, surface, "root." + side, rho);
    Path outside(drawing, half.side, top.middle.z, top.middle.r);
    draw_behind_weld(outside, half, top, up_face);

    drawing.region("fillet." + side,
                   joined({bar_fusion.curves(), weld_face.curves(), sleeve_fusion.curves(), weld_notch.curves()}));
    SleeveEnd end;
    end.slit = slit.curves();
    end.bar_side = joined({slit.curves(), lower_notch.curves(), bar_fusion.curves(), bar_arc.curves()});
    end.sleeve_side = joined({sleeve_notch.curves(), sleeve_fusion.curves(), outside.curves()});
    end.bar_toe = bar_toe.from;
    return end;
}

// Far end and axis (or bore) of a bar, from the outer corner of its end back to the joint.
std::vector<int> draw_end_and_axis(Drawing& drawing, const Bar& bar, Side side)
{
    double length = 0;
    for (const Section& section : bar.sections) length += section.length.value();
    const double inner = bar.bore.value() / 2;
    Path path(drawing, side, length, bar.sections.back().diameter.value() / 2);
    path.line_to(length, inner, fmt::format("end.{}", name_of(side)));
    path.line_to(0, inner, inner > 0 ? "bore" : "axis");
    return path.curves();
}

void draw_half(Drawing& drawing, const Case& asked, const Scenario& scenario, Side side, const JointPlane& plane)
{
    const Half half = half_of(asked, scenario, side);
    const Bar& bar = *asked.bar[index(side)];
    const std::string name = name_of(side);
    Path butt(drawing, side, 0, plane.surface);
    draw_butt_surface(butt, half, plane.surface);
    SleeveEnd end{{}, {}, {}, {half.butt_zone, half.bar_radius}};
    if (asked.sleeve)
    {
        end = half.weld_fused ? draw_welded_end(drawing, half) : draw_lost_weld(drawing, half);
        drawing.unfuse(butt.curves());
        drawing.unfuse(end.slit);
        drawing.region("sleeve." + name, joined({plane.sleeve, butt.curves(), end.slit, end.sleeve_side}));
    }
    Path surface(drawing, side, end.bar_toe.z, end.bar_toe.r);
    draw_bar_surface(surface, bar, name);
    drawing.region("bar." + name,
                   joined({plane.core, draw_land_notch(drawing, plane, side, half.root_radius), plane.butt,
                           butt.curves(), end.bar_side, surface.curves(), draw_end_and_axis(drawing, bar, side)}));
}

// A shaft of one bar: both of its ends are loaded.
Outline plain_shaft(const Bar& bar, Side side)
{
    Drawing drawing;
    const Side other = side == Side::left ? Side::right : Side::left;
    const double inner = bar.bore.value() / 2, radius = bar.sections.front().diameter.value() / 2;
    Path near_end(drawing, side, 0, inner);
    near_end.line_to(0, radius, fmt::format("end.{}", name_of(other)));
    Path surface(drawing, side, 0, radius);
    draw_bar_surface(surface, bar, name_of(side));
    drawing.region(fmt::format("bar.{}", name_of(side)),
                   joined({near_end.curves(), surface.curves(), draw_end_and_axis(drawing, bar, side)}));
    return drawing.take();
}

}  // namespace

const Material& material_of_region(const Case& asked, const std::string& region)
{
    const Side side = region.ends_with("left") ? Side::left : Side::right;
    if (region.starts_with("bar")) return asked.bar[index(side)]->material;
    return region.starts_with("sleeve") ? asked.sleeve->material : asked.sleeve->weld.filler;
}

Outline outline(const Case& asked, const Scenario& scenario)
{
    if (!asked.joint)
    {
        const Side side = asked.bar[0] ? Side::left : Side::right;
        return plain_shaft(*asked.bar[index(side)], side);
    }
    EXPECTS(asked.bar[0] && asked.bar[1]);
    Drawing drawing;
    const JointPlane plane = draw_joint_plane(drawing, asked, scenario);
    for (const Side side : both_sides) draw_half(drawing, asked, scenario, side, plane);
    if (!scenario.butt_fused)
        for (const char* site : {"land-edge", "butt-surface"})
            drawing.absent(fmt::format("{}: the whole butt is taken as lost, its faces are free", site));
    return drawing.take();
}

}  // namespace splicewright
