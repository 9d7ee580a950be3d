// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "post/picture_pages.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;

// Section lines on the two cut faces: nothing of the rest stands in front of them.
void add_cut_face_lines(Sheet& sheet, const PictureContent& content, const View& view)
{
    const auto on_face = [&](const Eigen::Vector2d& p, int face)
    { return view.on_sheet(face == 0 ? Eigen::Vector3d(p(1), 0, p(0)) : Eigen::Vector3d(0, p(1), p(0))); };
    std::vector<Segment> lines = clipped(content.outlines, content.splice);
    if (content.whole.bottom < 1e-9) lines.push_back({{content.splice.left, 0}, {content.splice.right, 0}});
    for (int face = 0; face < 2; ++face)
    {
        for (const auto& [from, to] : lines) add_line(sheet, {on_face(from, face), on_face(to, face)}, {1.3, ink, {}});
        View plane = view;
        plane.right = {view.right(2), view.right(face), 0};
        plane.up = {view.up(2), view.up(face), 0};
        plane.centre = {0, 0, 0};
        for (const auto& chain : chains(clipped(content.unfused, content.splice), plane)) add_unfused(sheet, chain);
    }
}

}  // namespace

View oblique_view()
{
    const double around = 17 * pi / 180, above = 30 * pi / 180;
    const Eigen::Vector3d toward(std::sin(above), std::cos(above) * std::cos(around),
                                 std::cos(above) * std::sin(around));
    View view;
    view.right = Eigen::Vector3d(1, 0, 0).cross(toward).normalized();
    view.up = toward.cross(view.right);
    return view;
}

void fit(View& view, const std::vector<Eigen::Vector3d>& points, const Box& box)
{
    view.mm_per_unit = 1;
    view.at = {0, 0};
    view.centre = {0, 0, 0};
    Eigen::Vector2d low = view.on_sheet(points.front()), high = low;
    for (const Eigen::Vector3d& point : points)
    {
        low = low.cwiseMin(view.on_sheet(point));
        high = high.cwiseMax(view.on_sheet(point));
    }
    view.mm_per_unit = std::max((high - low).x() / box.width(), (high - low).y() / box.height());
    view.at = SheetPoint((box.left + box.right) / 2, (box.bottom + box.top) / 2) - (low + high) / 2 / view.mm_per_unit;
}

void add_end(Sheet& sheet, const PictureContent& content, const Scene& scene, Side side)
{
    const double outward = side == Side::left ? -1 : 1,
                 z = side == Side::left ? content.splice.left : content.splice.right;
    const double true_end = side == Side::left ? content.whole.left : content.whole.right;
    const SheetPoint end = scene.view.on_sheet({0, 0, z});
    const SheetPoint along = scene.view.on_sheet({0, 0, z + outward}) - end;
    add_line(sheet, {end, end + along.normalized() * 62}, {1.8, ink, {16, 4, 4, 4}});

    const std::string name = fmt::format("{} end, z = {} mm", name_of(side), short_number(z, 0));
    const std::string cut = fmt::format("{}, cut at z = {} mm", name_of(side), short_number(z, 0));
    const std::string words = std::abs(z - true_end) < 1e-6 ? name : cut;
    const double wide = content.width(words, 20, Weight::bold);
    double edge = end.y();
    for (const Eigen::Vector3d& point : scene.surface[0].shape.point)
        if (const SheetPoint at = scene.view.on_sheet(point);
            side == Side::left ? at.x() < 60 + wide : at.x() > sheet_width - 60 - wide)
            edge = side == Side::left ? std::min(edge, at.y()) : std::max(edge, at.y());
    sheet.text.push_back({words,
                          {side == Side::left ? 50 : sheet_width - 50, edge + outward * 30},
                          20,
                          Weight::bold,
                          ink,
                          side == Side::left ? Align::left : Align::right});
}

void add_governing(Sheet& sheet, const PictureContent& content, const View& view, double label_y)
{
    const SiteMark site = governing_site(content);
    if (!is_in_view(content, site))
    {
        const std::string words = fmt::format("The governing site, {} ({}), is not in view: {}", site.id, site.value,
                                              place_text(site.z, site.r));
        sheet.text.push_back(
            {fitted(words, 20, Weight::bold, sheet_width - 100, content.width), {50, 816}, 20, Weight::bold});
        return;
    }
    const SheetPoint point = view.on_sheet({site.r, 0, site.z});
    const std::string words = fmt::format("{}: {}", site.id, site.value);
    const double wide = content.width(words, 22, Weight::bold);
    const double x = std::clamp(point.x(), 64 + wide / 2, sheet_width - 64 - wide / 2);
    const Box chip{x - wide / 2 - 14, label_y - 19, x + wide / 2 + 14, label_y + 19};
    const std::vector<SheetPoint> leader{point, {std::clamp(point.x(), chip.left + 10, chip.right - 10), chip.bottom}};
    add_line(sheet, leader, {4.2, paper, {}});
    add_line(sheet, leader, {1.8, ink, {}});
    add_disc(sheet, point, 7, white);
    add_disc(sheet, point, 5, ink);
    add_box(sheet, chip, ink);
    sheet.text.push_back({words, {x, label_y}, 22, Weight::bold, white, Align::centre});
}

void add_axial_scale(Sheet& sheet, const View& view, const SheetPoint& middle)
{
    const SheetPoint per_mm = view.on_sheet({0, 0, 1}) - view.on_sheet({0, 0, 0});
    const double mm = round_below(300 / per_mm.norm());
    const SheetPoint half = per_mm * mm / 2;
    const SheetPoint aside = SheetPoint(-per_mm.y(), per_mm.x()).normalized() * 8;
    add_line(sheet, {middle - half, middle + half}, {3, ink, {}});
    for (const double end : {-1.0, 1.0})
        add_line(sheet, {middle + end * half - aside, middle + end * half + aside}, {3, ink, {}});
    sheet.text.push_back({short_number(mm, mm < 1 ? 2 : 0) + " mm along the axis", middle + SheetPoint(0, -48), 20,
                          Weight::regular, ink, Align::centre});
}

Page cutaway_page(const PictureContent& content)
{
    Page page{"cutaway.png", {}, {}};
    Sheet& sheet = page.sheet;
    const std::string what =
        "The assembly with a quarter cut away; the cut faces show true colours, the outside is shaded";
    add_heading(sheet, content,
                content.request.load.bending != 0 ? what + "; the tension side of bending is at the top" : what);
    Scene& scene = page.scene;
    const DrawnSection part = clipped(content.section, content.splice);
    scene.surface = {{swept(part, pi / 2, 2 * pi, 90), Lighting::lit},
                     {cut_faces(part, pi / 2, 2 * pi), Lighting::flat}};
    scene.range = content.range;
    scene.view = oblique_view();
    const std::vector<Eigen::Vector3d>& points = scene.surface[0].shape.point;
    fit(scene.view, points, {110, 220, sheet_width - 110, 740});
    double highest = 0;
    for (const Eigen::Vector3d& point : points) highest = std::max(highest, scene.view.on_sheet(point).y());
    add_cut_face_lines(sheet, content, scene.view);
    for (const Side side : both_sides) add_end(sheet, content, scene, side);
    add_governing(sheet, content, scene.view, std::min(highest + 50, 812.0));
    add_line(sheet, {{50, strip_top}, {sheet_width - 50, strip_top}}, {1.5, hair, {}});
    add_colour_bar(sheet, content.range, {60, 30}, 520);
    add_axial_scale(sheet, scene.view, {beside_bar(content.range) + 130, 102});
    add_unfused_key(sheet, content, {1188, 54});
    if (has_round_notch(content)) add_notch_key(sheet, {1188, 24});
    return page;
}

}  // namespace splicewright
