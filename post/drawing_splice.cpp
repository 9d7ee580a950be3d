// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/bar_shape.h"
#include "cases/problem.h"
#include "post/dimensions.h"
#include "post/drawing_views.h"
#include "post/drawn_parts.h"
#include "post/making_weld.h"

namespace splicewright
{
namespace
{

constexpr Colour weld_grey{0.62, 0.64, 0.66};
constexpr double degree = std::numbers::pi / 180;

// What the view is drawn from; lengths in mm of metal, z from the joint.
struct SpliceDrawing
{
    const Case& asked;
    const DrawingScale& scale;
    DrawnShaft shaft;
    double left = 0, right = 0;  // where the view is broken off
    double seam = 0;             // of the butt in the cut half: the joint, or the left end of the half lap
    double top = 0;              // largest radius
    Draft draft{};
    [[nodiscard]] SheetPoint on_paper(double z, double r) const { return scale.paper_per_metal * SheetPoint(z, r); }
};

double radius_of(const Case& asked, Side side) { return asked.bar[index(side)]->sections.front().diameter.value() / 2; }

// From the joint to the toe of the sleeve's weld; of a joint without sleeve the end of its blend.
double toe_distance(const Case& asked, Side side)
{
    if (!asked.sleeve) return asked.joint->blend.value() / 2;
    return sleeve_reach(*asked.sleeve, side) + asked.sleeve->weld.leg_on_bar.value();
}

SpliceDrawing splice_drawing(const Case& asked, const DrawingScale& scale)
{
    SpliceDrawing drawing{asked, scale, drawn_shaft(asked)};
    const double margin = 1.5 * std::max(radius_of(asked, Side::left), radius_of(asked, Side::right));
    drawing.left = -std::min(toe_distance(asked, Side::left) + margin, length_of(*asked.bar[0]));
    drawing.right = std::min(toe_distance(asked, Side::right) + margin, length_of(*asked.bar[1]));
    drawing.seam = -asked.joint->half_lap.value() / 2;
    for (const SheetPoint& point : drawing.shaft.skin)
        if (point.x() > drawing.left && point.x() < drawing.right) drawing.top = std::max(drawing.top, point.y());
    return drawing;
}

std::vector<SheetPoint> on_paper(const SpliceDrawing& drawing, const std::vector<SheetPoint>& points, double sign)
{
    std::vector<SheetPoint> paper;
    for (const SheetPoint& point : points) paper.push_back(drawing.on_paper(point.x(), sign * point.y()));
    return paper;
}

// Of the sleeve's outside.
double sleeve_radius_at(const SpliceDrawing& drawing, double z) { return height_at(drawing.shaft.skin, z); }

void hatch_part(SpliceDrawing& drawing, const DrawnPart& part, double left, double right, double angle, double spacing)
{
    const std::vector<SheetPoint> corner = between(part.corner, left, right);
    if (corner.size() >= 3) add_hatch(drawing.draft, on_paper(drawing, corner, 1), angle, spacing * drawing.scale.text);
}

void hatch_parts(SpliceDrawing& drawing)
{
    for (const DrawnPart& part : drawing.shaft.parts)
        if (part.name == "bar.left")
        {
            hatch_part(drawing, part, drawing.left, drawing.seam, 45 * degree, 1.0);
            hatch_part(drawing, part, drawing.seam, 0, 135 * degree, 1.0);
        }
        else if (part.name == "bar.right") hatch_part(drawing, part, 0, drawing.right, 135 * degree, 1.0);
        else if (part.name.starts_with("sleeve"))
            hatch_part(drawing, part, drawing.left, drawing.right, 62 * degree, 0.6);
        else drawing.draft.fill.push_back({on_paper(drawing, part.corner, 1), weld_grey});
}

// Weld metal of the butt as its groove is prepared, and the faces below it that stay apart.
void add_seam(SpliceDrawing& drawing)
{
    const Case& asked = drawing.asked;
    const Joint& joint = *asked.joint;
    const double outer = (radius_of(asked, Side::left) + radius_of(asked, Side::right)) / 2;
    const double inner = asked.bar[0]->bore.value() / 2;
    const double root = joint.penetration ? outer - joint.penetration->value() : inner;
    const double bevel = std::min(root + asked.making->root_face.value(), outer);
    const double gap = asked.making->root_gap.value() / 2, slope = std::tan(asked.making->groove_angle.value() / 2);
    const double wide = gap + (outer - bevel) * slope;
    // The surface under the weld, blended between the bars.
    std::vector<SheetPoint> corner{{drawing.seam - gap, root}, {drawing.seam - gap, bevel}};
    constexpr int n = 12;
    for (int i = 0; i <= n; ++i)
    {
        const double z = drawing.seam - wide + 2 * wide * i / n;
        double surface = radius_of(asked, z < 0 ? Side::left : Side::right);
        for (const DrawnPart& part : drawing.shaft.parts)
            if (part.name == (z < 0 ? "bar.left" : "bar.right")) surface = height_at(part.corner, z);
        corner.emplace_back(z, surface);
    }
    corner.insert(corner.end(), {{drawing.seam + gap, bevel}, {drawing.seam + gap, root}});
    drawing.draft.fill.push_back({on_paper(drawing, corner, 1), weld_grey});
    corner.push_back(corner.front());
    drawing.draft.line.push_back({on_paper(drawing, corner, 1), Pen::thin});
    if (root > inner)
        drawing.draft.line.push_back(
            {on_paper(drawing, {{drawing.seam, inner}, {drawing.seam, root}}, 1), Pen::outline});
    const double lap = joint.half_lap.value() / 2;
    if (lap <= 0)
    {
        drawing.draft.line.push_back({on_paper(drawing, {{0, inner}, {0, outer}}, -1), Pen::hidden});
        return;
    }
    drawing.draft.line.push_back({on_paper(drawing, {{-lap, inner}, {lap, inner}}, 1), Pen::outline});
    drawing.draft.line.push_back({on_paper(drawing, {{lap, inner}, {lap, outer}}, -1), Pen::hidden});
}

void add_lines(SpliceDrawing& drawing)
{
    Draft& draft = drawing.draft;
    for (const auto& edge : drawing.shaft.edges)
        for (const auto& piece : pieces_between(edge, drawing.left, drawing.right))
            draft.line.push_back({on_paper(drawing, piece, 1), Pen::outline});
    for (const auto& piece : pieces_between(drawing.shaft.skin, drawing.left, drawing.right))
        draft.line.push_back({on_paper(drawing, piece, -1), Pen::outline});
    for (const double z : drawing.shaft.skin_edges)
        if (z > drawing.left + 1e-6 && z < drawing.right - 1e-6)
            draft.line.push_back(
                {on_paper(drawing, {{z, 0}, {z, height_at(drawing.shaft.skin, z)}}, -1), Pen::outline});
    for (const Side side : both_sides)
    {
        // The weld's toe is rounded: seen from outside, a thin line.
        const double z = (side == Side::right ? 1 : -1) * toe_distance(drawing.asked, side);
        if (drawing.asked.sleeve)
            draft.line.push_back({on_paper(drawing, {{z, 0}, {z, radius_of(drawing.asked, side)}}, -1), Pen::thin});
    }
    const double bore = drawing.asked.bar[0]->bore.value() / 2;
    if (bore > 0)
        draft.line.push_back({on_paper(drawing, {{drawing.left, bore}, {drawing.right, bore}}, -1), Pen::hidden});
    const double text = drawing.scale.text;
    const SheetPoint left = drawing.on_paper(drawing.left, 0), right = drawing.on_paper(drawing.right, 0);
    draft.line.push_back({{left - SheetPoint(2 * text, 0), right + SheetPoint(2 * text, 0)}, Pen::centre});
    for (const double z : {drawing.left, drawing.right})
    {
        const SheetPoint end = drawing.on_paper(z, height_at(drawing.shaft.skin, z));
        add_break_line(draft, end.x(), -end.y(), end.y(), text);
    }
}

// A hole seen from outside: an ellipse, its far side left out; y along the axis of the paper.
std::vector<SheetPoint> seen_hole(double z, double radius, double hole, double angle)
{
    std::vector<SheetPoint> points;
    constexpr int n = 48;
    for (int i = 0; i <= n; ++i)
    {
        const double turn = 2 * std::numbers::pi * i / n;
        points.emplace_back(z + hole * std::cos(turn), radius * std::sin(angle + std::sin(turn) * hole / radius));
    }
    return points;
}

// Up is a quarter turn from the plane of the lap: the cut half shows holes that lie there, the half from outside those
// between half a turn and three quarters; those behind are hidden.
void add_plugs(SpliceDrawing& drawing)
{
    const Sleeve& sleeve = *drawing.asked.sleeve;
    for (const PlugRing& ring : sleeve.plugs)
    {
        const double z = ring.at.value(), hole = ring.diameter.value() / 2, outer = sleeve_radius_at(drawing, z);
        const double bar = radius_of(drawing.asked, z < 0 ? Side::left : Side::right);
        for (int i = 0; i < ring.count; ++i)
        {
            const double angle = ring.start.value() + 2 * std::numbers::pi * i / ring.count;
            const double x = std::cos(angle), y = std::sin(angle);
            if (y > 1 - 1e-6)
            {
                const double top = ring.depth ? bar + ring.depth->value() : outer;
                std::vector<SheetPoint> corner{{z - hole, bar}, {z + hole, bar}, {z + hole, top}, {z - hole, top}};
                drawing.draft.fill.push_back({on_paper(drawing, corner, 1), weld_grey});
                corner = {{z - hole, bar}, {z - hole, outer}, {z + hole, outer}, {z + hole, bar}};
                drawing.draft.line.push_back({on_paper(drawing, corner, 1), Pen::outline});
            }
            if (y > 1e-6 || y * outer + hole > 0) continue;
            drawing.draft.line.push_back(
                {on_paper(drawing, seen_hole(z, outer, hole, angle), 1), x < 1e-6 ? Pen::outline : Pen::hidden});
        }
        drawing.draft.line.push_back({on_paper(drawing, {{z, -outer - 2}, {z, outer + 2}}, 1), Pen::centre});
    }
}

// Along the bar, at the root of the weld, to a tenth of a millimetre.
double weld_length(const SleeveWeld& weld, double bar_radius)
{
    return std::round(10 * weld.coverage.value() * bar_radius) / 10;
}

std::optional<double> plug_depth(const PlugRing& ring)
{
    return ring.depth ? std::optional<double>(ring.depth->value()) : std::nullopt;
}

void add_sleeve_labels(const SpliceDrawing& drawing, std::vector<RailLabel>& labels)
{
    const Sleeve& sleeve = *drawing.asked.sleeve;
    const double text = drawing.scale.text;
    for (const Side side : both_sides)
    {
        const double sign = side == Side::right ? 1 : -1, reach = sleeve_reach(sleeve, side);
        const double radius = radius_of(drawing.asked, side);
        FilletSymbol weld{sleeve.weld.leg_on_bar.value(), sleeve.weld.leg_on_sleeve.value()};
        if (!sleeve.weld.goes_all_round()) weld.length = weld_length(sleeve.weld, radius);
        labels.push_back(fillet_label(drawing.on_paper(sign * (reach + sleeve.weld.leg_on_bar.value() / 2),
                                                       radius + sleeve.weld.leg_on_sleeve.value() / 2),
                                      weld, text));
        const double bore = 2 * radius + sleeve.clearance[index(side)].value();
        labels.push_back(text_label(drawing.on_paper(sign * (side == Side::right ? 0.5 : 0.66) * reach, radius),
                                    "bore Ø" + mm_text(bore), fine_inch_text(bore), text));
    }
    for (const PlugRing& ring : sleeve.plugs)
        labels.push_back(plug_label(drawing.on_paper(ring.at.value(), sleeve_radius_at(drawing, ring.at.value())),
                                    {ring.count, ring.diameter.value(), plug_depth(ring)}, text));
    const double outer = sleeve.outer_diameter.value();
    labels.push_back(text_label(drawing.on_paper(-0.38 * sleeve_reach(sleeve, Side::left), outer / 2),
                                "Ø" + mm_text(outer), inch_text(outer), text));
    if (sleeve.taper_length.value() > 0)
        labels.push_back(
            text_label(drawing.on_paper(sleeve_reach(sleeve, Side::right) - 0.05 * sleeve.taper_length.value(),
                                        sleeve.end_diameter.value() / 2),
                       "end Ø" + mm_text(sleeve.end_diameter.value()), inch_text(sleeve.end_diameter.value()), text));
}

void add_labels(SpliceDrawing& drawing)
{
    const Case& asked = drawing.asked;
    const double text = drawing.scale.text,
                 surface = (radius_of(asked, Side::left) + radius_of(asked, Side::right)) / 2;
    const bool full = !asked.joint->penetration.has_value();
    std::vector<RailLabel> labels;
    if (asked.sleeve) add_sleeve_labels(drawing, labels);
    labels.push_back(butt_label(drawing.on_paper(drawing.seam, surface),
                                {full, full ? 0 : asked.joint->penetration->value(), !full}, text));
    const double width = rail_width(labels, text), k = drawing.scale.paper_per_metal;
    const double middle = k * (drawing.left + drawing.right) / 2;
    const double half = std::max(width, k * (drawing.right - drawing.left) + 8 * text) / 2;
    add_rail(
        drawing.draft, labels,
        {k * drawing.top + rail_height * text, middle - half, middle + half, drawing.on_paper(drawing.seam, 0).x()},
        text);
    const auto balloon = [&](double z, double r, const char* number)
    { add_balloon(drawing.draft, drawing.on_paper(z, -r), number, text); };
    const double toe_left = -toe_distance(asked, Side::left), toe_right = toe_distance(asked, Side::right);
    balloon((drawing.left + toe_left) / 2, 0.5 * radius_of(asked, Side::left), "1");
    balloon((drawing.right + toe_right) / 2, 0.5 * radius_of(asked, Side::right), "2");
    if (asked.sleeve) balloon(0.55 * sleeve_reach(*asked.sleeve, Side::right), 0.5 * drawing.top, "3");
}

void add_lengths(SpliceDrawing& drawing)
{
    const Case& asked = drawing.asked;
    const double k = drawing.scale.paper_per_metal, low = -k * drawing.top, text = drawing.scale.text;
    std::vector<std::vector<LengthDimension>> rows(4);
    const double blend = asked.joint->blend.value(), lap = asked.joint->half_lap.value();
    const double under = asked.sleeve ? low : -k * radius_of(asked, Side::left);
    if (blend > 0) rows[0].push_back({-k * blend / 2, k * blend / 2, under, under, blend, "blend"});
    if (lap > 0) rows[1].push_back({-k * lap / 2, k * lap / 2, under, under, lap, "half lap"});
    if (asked.sleeve)
    {
        const Sleeve& sleeve = *asked.sleeve;
        const double left = -k * sleeve_reach(sleeve, Side::left), right = k * sleeve_reach(sleeve, Side::right);
        const double end = -k * sleeve.end_diameter.value() / 2, taper = sleeve.taper_length.value();
        if (taper > 0)
        {
            rows[1].push_back({left, left + k * taper, end, low, taper, "taper"});
            rows[1].push_back({right - k * taper, right, low, end, taper, "taper"});
        }
        rows[2] = {{left, 0, end, low, -left / k}, {0, right, low, end, right / k}};
        rows[3] = {{left, right, end, end, sleeve.length.value(), "sleeve"}};
    }
    double row_y = low - first_row * text;
    for (const auto& row : rows)
        if (!row.empty()) row_y = add_length_row(drawing.draft, row, row_y, text);
    for (const Side side : both_sides)
    {
        const double end = side == Side::left ? drawing.left : drawing.right;
        add_diameter(drawing.draft,
                     {k * end + (side == Side::left ? -5.5 : 5.5) * text, k * end, k * radius_of(asked, side),
                      2 * radius_of(asked, side)},
                     text);
    }
}

}  // namespace

Draft splice_view(const Case& asked, const DrawingScale& scale)
{
    EXPECTS(asked.joint && asked.making && asked.bar[0] && asked.bar[1]);
    SpliceDrawing drawing = splice_drawing(asked, scale);
    hatch_parts(drawing);
    add_seam(drawing);
    add_lines(drawing);
    if (asked.sleeve) add_plugs(drawing);
    add_labels(drawing);
    add_lengths(drawing);
    clear_texts(drawing.draft);
    return std::move(drawing.draft);
}

}  // namespace splicewright
