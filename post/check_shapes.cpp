// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/check_shapes.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "cases/problem.h"
#include "solver/surface_stress.h"

// Legend: z, r coordinates mm; R, L radius and half length of a bar; a net radius, b conjugate half axis of the
// hyperbola; in the lap b, i, o outer radii of bar, layer and sleeve, L the lap's length.

namespace splicewright
{
namespace
{

constexpr double nearly_straight = 1e-7;  // sagitta over chord below which an arc is drawn as a line

Material plain_steel(double elastic_modulus)
{
    Material steel;
    steel.name = "steel";
    steel.elastic_modulus = Megapascal{elastic_modulus};
    steel.poisson_ratio = check_steel.nu;
    return steel;
}

int point_at(Outline& outline, OutlinePoint place)
{
    outline.points.push_back(place);
    return static_cast<int>(outline.points.size()) - 1;
}

int line_between(Outline& outline, int start, int end, const std::string& name)
{
    outline.curves.push_back({start, end, std::nullopt, name, false, 0});
    return static_cast<int>(outline.curves.size()) - 1;
}

// Centre of the circle through three points; absent when they lie on a line.
std::optional<OutlinePoint> centre_through(OutlinePoint a, OutlinePoint b, OutlinePoint c)
{
    const double bz = b.z - a.z, br = b.r - a.r, cz = c.z - a.z, cr = c.r - a.r;
    const double cross = bz * cr - br * cz, b2 = bz * bz + br * br, c2 = cz * cz + cr * cr;
    if (std::abs(cross) < nearly_straight * c2) return std::nullopt;
    return OutlinePoint{a.z + (cr * b2 - br * c2) / (2 * cross), a.r + (bz * c2 - cz * b2) / (2 * cross)};
}

// Arcs through points on the curve, each also through the curve half-way between its ends. Returns the curves; the
// first point is `first`, the last one the end of the last curve.
std::vector<int> arcs_along(Outline& outline, int first, const PlaneCurve& curve, const std::vector<double>& parameter,
                            const std::string& name)
{
    std::vector<int> drawn;
    int at = first;
    for (std::size_t i = 0; i + 1 < parameter.size(); ++i)
    {
        const OutlinePoint a = curve(parameter[i]), b = curve((parameter[i] + parameter[i + 1]) / 2),
                           c = curve(parameter[i + 1]);
        const int next = point_at(outline, c);
        const std::optional<OutlinePoint> centre = centre_through(a, b, c);
        const double radius = centre ? std::hypot(a.z - centre->z, a.r - centre->r) : 0;
        outline.curves.push_back({at, next, centre, name, false, radius});
        drawn.push_back(static_cast<int>(outline.curves.size()) - 1);
        at = next;
    }
    return drawn;
}

}  // namespace

Case shaft_case(std::vector<Section> sections, std::vector<Groove> grooves, Millimetre bore)
{
    Case made;
    made.bar[0] = Bar{plain_steel(check_steel.E), std::move(sections), bore, std::move(grooves)};
    return made;
}

Case sleeved_case(const SleevedShape& shape)
{
    Case made;
    const double tail = 2.5 * shape.bar_mm;
    const Bar bar{plain_steel(shape.bar_modulus),
                  {{Millimetre{shape.sleeve_length_mm / 2 + tail}, Millimetre{shape.bar_mm}, Millimetre{0}}},
                  Millimetre{shape.bore_mm},
                  {}};
    made.bar = {bar, bar};
    made.joint = Joint{};
    made.joint->filler = plain_steel(shape.bar_modulus);
    Sleeve sleeve;
    sleeve.material = plain_steel(shape.sleeve_modulus);
    sleeve.length = Millimetre{shape.sleeve_length_mm};
    sleeve.outer_diameter = sleeve.end_diameter = Millimetre{shape.sleeve_mm};
    sleeve.clearance = {Millimetre{-shape.overlap_mm}, Millimetre{-shape.overlap_mm}};
    sleeve.slit = {shape.slit, shape.slit};
    sleeve.weld.leg_on_bar = sleeve.weld.leg_on_sleeve = Millimetre{5};
    sleeve.weld.toe_radius = Millimetre{1};
    sleeve.weld.filler = plain_steel(shape.sleeve_modulus);
    made.sleeve = sleeve;
    return made;
}

Outline outline_of(const BarWithCavity& bar)
{
    constexpr int n_arcs = 49;  // odd: the equator lies in the middle of an arc
    const double R = bar.bar_radius, L = 3 * R, pi = std::numbers::pi;
    const PlaneCurve ellipse = [&](double angle) {
        return OutlinePoint{-bar.along * std::cos(angle), bar.across * std::sin(angle)};
    };
    std::vector<double> angles;
    for (int i = 0; i <= n_arcs; ++i) angles.push_back(pi * i / n_arcs);
    Outline shape;
    const int far_left = point_at(shape, {-L, 0}), left_pole = point_at(shape, {-bar.along, 0});
    const int axis_left = line_between(shape, far_left, left_pole, "axis");
    std::vector<int> boundary = arcs_along(shape, left_pole, ellipse, angles, "cavity");
    const int right_pole = shape.curves[static_cast<std::size_t>(boundary.back())].end;
    shape.points[static_cast<std::size_t>(right_pole)] = {bar.along, 0};  // on the axis, without round-off
    const int far_right = point_at(shape, {L, 0}), top_right = point_at(shape, {L, R}),
              top_left = point_at(shape, {-L, R});
    boundary.insert(boundary.begin(), axis_left);
    boundary.push_back(line_between(shape, right_pole, far_right, "axis"));
    boundary.push_back(line_between(shape, far_right, top_right, "end.right"));
    boundary.push_back(line_between(shape, top_right, top_left, "bar.left"));
    boundary.push_back(line_between(shape, top_left, far_left, "end.left"));
    shape.regions = {{"bar.left", boundary}};
    return shape;
}

Outline outline_of(const HyperbolicGroove& groove)
{
    // z = b sinh(t), r = a cosh(t) with b^2 = a rho.
    constexpr int half_arcs = 80;
    const double a = groove.net_radius, b = std::sqrt(a * groove.groove_radius), end = std::acosh(groove.outer / a);
    const PlaneCurve hyperbola = [&](double t) { return OutlinePoint{b * std::sinh(t), a * std::cosh(t)}; };
    std::vector<double> parameter;
    for (int i = 0; i <= 2 * half_arcs + 1; ++i) parameter.push_back(-end + 2 * end * i / (2 * half_arcs + 1));
    Outline shape;
    const OutlinePoint left = hyperbola(-end), right = hyperbola(end);
    const double half_length = right.z + 2 * groove.outer;
    const int shoulder_left = point_at(shape, left);
    std::vector<int> boundary = arcs_along(shape, shoulder_left, hyperbola, parameter, "groove");
    const int shoulder_right = shape.curves[static_cast<std::size_t>(boundary.back())].end;
    const int top_right = point_at(shape, {half_length, right.r}), axis_right = point_at(shape, {half_length, 0});
    const int axis_left = point_at(shape, {-half_length, 0}), top_left = point_at(shape, {-half_length, left.r});
    boundary.push_back(line_between(shape, shoulder_right, top_right, "bar.left"));
    boundary.push_back(line_between(shape, top_right, axis_right, "end.right"));
    boundary.push_back(line_between(shape, axis_right, axis_left, "axis"));
    boundary.push_back(line_between(shape, axis_left, top_left, "end.left"));
    boundary.push_back(line_between(shape, top_left, shoulder_left, "bar.left"));
    shape.regions = {{"bar.left", boundary}};
    return shape;
}

Outline outline_of(const LappedTubes& lap)
{
    const double b = lap.bar_radius, i = b + lap.layer, o = i + lap.wall, L = lap.length;
    Outline shape;
    std::vector<double> planes{-lap.tail, 0};
    planes.insert(planes.end(), lap.cuts.begin(), lap.cuts.end());
    planes.push_back(L);
    // The bar from plane to plane, with the cuts between its pieces.
    int axis_before = point_at(shape, {planes[0], 0}), top_before = point_at(shape, {planes[0], b});
    int cut_before = line_between(shape, axis_before, top_before, "end.left");
    std::vector<int> under_layer;
    for (std::size_t k = 1; k < planes.size(); ++k)
    {
        const int axis = point_at(shape, {planes[k], 0}), top = point_at(shape, {planes[k], b});
        const std::string name = k == 1 ? "mouth" : k + 1 == planes.size() ? "bar end" : fmt::format("cut.{}", k - 2);
        const int cut = line_between(shape, axis, top, name), along = line_between(shape, axis_before, axis, "axis");
        const int surface = line_between(shape, top_before, top, k == 1 ? "bar surface" : "under layer");
        if (k > 1) under_layer.push_back(surface);
        shape.regions.push_back({fmt::format("bar.{}", k - 1), {cut_before, along, cut, surface}});
        axis_before = axis, top_before = top, cut_before = cut;
    }
    const int layer_start = point_at(shape, {0, i}), layer_end = point_at(shape, {L, i});
    const int bar_start = shape.curves[static_cast<std::size_t>(under_layer.front())].start;
    std::vector<int> layer = under_layer;
    const int over = line_between(shape, layer_start, layer_end, "over layer");
    layer.push_back(over);
    layer.push_back(line_between(shape, bar_start, layer_start, "layer end"));
    layer.push_back(line_between(shape, top_before, layer_end, "layer end"));
    shape.regions.push_back({"layer", layer});
    const int far_inside = point_at(shape, {L + lap.tail, i}), far_outside = point_at(shape, {L + lap.tail, o});
    const int near_outside = point_at(shape, {0, o});
    shape.regions.push_back({"sleeve",
                             {over, line_between(shape, layer_end, far_inside, "bore"),
                              line_between(shape, far_inside, far_outside, "end.right"),
                              line_between(shape, far_outside, near_outside, "sleeve-mid"),
                              line_between(shape, near_outside, layer_start, "sleeve end")}});
    return shape;
}

SurfaceReading surface_reading(const Mesh& mesh, const std::vector<ElasticConstants>& steel, const std::string& curve,
                               const UnitSolution& solution)
{
    SurfaceReading reading;
    const auto append = [](std::vector<double>& to, const auto& from)
    { to.insert(to.end(), from.begin(), from.end()); };
    for (const SurfaceChain& chain : surface_chains(mesh, mesh.curve.at(curve), steel))
    {
        const SurfacePlaces places = surface_places(mesh, chain);
        const SurfaceStress stress = free_surface_stress(mesh, chain, places, solution);
        append(reading.z, places.z);
        append(reading.r, places.r);
        append(reading.along, stress.along);
        append(reading.hoop, stress.hoop);
        append(reading.shear, stress.shear);
    }
    EXPECTS(!reading.z.empty());
    return reading;
}

const SiteAnswer& site_of(const MeridianAnswer& answer, const std::string& id)
{
    const auto site = std::find_if(answer.sites.begin(), answer.sites.end(), [&](const auto& s) { return s.id == id; });
    EXPECTS(site != answer.sites.end());
    return *site;
}

double largest(const std::vector<double>& values)
{
    double most = 0;
    for (const double value : values) most = std::max(most, std::abs(value));
    return most;
}

std::size_t place_nearest(const std::vector<double>& z, double at)
{
    EXPECTS(!z.empty());
    const auto nearer = [&](double a, double b) { return std::abs(a - at) < std::abs(b - at); };
    return static_cast<std::size_t>(std::min_element(z.begin(), z.end(), nearer) - z.begin());
}

}  // namespace splicewright
