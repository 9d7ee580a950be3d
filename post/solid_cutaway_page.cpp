// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "post/depth_map.h"
#include "post/picture_pages.h"
#include "post/solid_parts.h"
#include "post/view_sites.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;

void turn(ShadedSurface& surface, const Eigen::Matrix3d& turned)
{
    for (Eigen::Vector3d& point : surface.point) point = turned * point;
    for (Eigen::Vector3d& normal : surface.normal) normal = turned * normal;
}

// The quarter from the cut plane on is left out.
struct QuarterCut
{
    ShadedSurface outside;
    std::array<SolidCut, 2> face;  // at the angle, and a quarter turn on
};

QuarterCut quarter_cut(const PictureContent& content, double around)
{
    const SolidFields& fields = *content.request.solid;
    const Eigen::Vector3d x(std::cos(around), std::sin(around), 0), y(-std::sin(around), std::cos(around), 0);
    const Piece window = within(content.splice);
    QuarterCut cut;
    cut.outside = shown_stretch(content, {{{x, 0}}, {{-x, 0}, {y, 0}}});
    cut.face[0] = solid_cut(fields, content.skin, {y, 0}, {joined({{-x, 0}}, window)});
    cut.face[1] = solid_cut(fields, content.skin, {x, 0}, {joined({{-y, 0}}, window)});
    const Eigen::Matrix3d turned = turned_by(-around);
    turn(cut.outside, turned);
    for (SolidCut& face : cut.face)
    {
        turn(face.surface, turned);
        for (auto* lines : {&face.outline, &face.unfused, &face.elements})
            for (auto& [from, to] : *lines) from = turned * from, to = turned * to;
    }
    return cut;
}

void add_cut_lines(Sheet& sheet, const SolidCut& cut, const View& view, int across)
{
    for (const auto& [from, to] : cut.outline)
        add_line(sheet, {view.on_sheet(from), view.on_sheet(to)}, {1.3, ink, {}});
    // The face as a plane of z and the distance from the axis.
    View plane = view;
    plane.right = {view.right(2), view.right(across), 0};
    plane.up = {view.up(2), view.up(across), 0};
    plane.centre = {0, 0, 0};
    std::vector<Segment> unfused;
    for (const auto& [from, to] : cut.unfused)
        unfused.emplace_back(Eigen::Vector2d(from(2), from(across)), Eigen::Vector2d(to(2), to(across)));
    for (const auto& chain : chains(unfused, plane)) add_unfused(sheet, chain);
}

Eigen::Vector3d place_of(const SiteMark& site, double turned)
{
    return {site.r * std::cos(site.around - turned), site.r * std::sin(site.around - turned), site.z};
}

// A name beside its place, where room is left: the nearest of a few places around that touches no other text and no
// other mark.
void add_name(Sheet& sheet, const SheetPoint& point, const std::string& words, const std::vector<SheetPoint>& marks,
              const TextWidth& width)
{
    const Box room{40, strip_top + 6, page_right, 840};
    const auto holds = [](const Box& box, const SheetPoint& at)
    { return at.x() > box.left - 8 && at.x() < box.right + 8 && at.y() > box.bottom - 8 && at.y() < box.top + 8; };
    for (const double away : {34.0, 52.0, 74.0, 100.0, 130.0})
        for (int k = 0; k < 16; ++k)
        {
            const double angle = pi / 2 + 2 * pi * k / 16;
            const SheetPoint at = point + away * SheetPoint(1.6 * std::cos(angle), std::sin(angle));
            const Text text{words, at, 18, Weight::regular, ink, Align::centre};
            Box box = box_of(text, width);
            box = {box.left - 6, box.bottom - 2, box.right + 6, box.top + 2};
            if (box.left < room.left || box.right > room.right || box.bottom < room.bottom || box.top > room.top)
                continue;
            if (std::ranges::any_of(sheet.text,
                                    [&](const Text& other) { return overlap(box, box_of(other, width)); }) ||
                std::ranges::any_of(marks, [&](const SheetPoint& mark) { return holds(box, mark); }))
                continue;
            const SheetPoint end(std::clamp(point.x(), box.left, box.right), at.y());
            for (const Stroke& stroke : {Stroke{3.6, paper, {}}, Stroke{1.4, ink, {}}})
                add_line(sheet, {point, end}, stroke);
            add_box(sheet, box, paper);
            add_frame(sheet, box, {1, soft_ink, {}});
            sheet.text.push_back(text);
            return;
        }
}

// Sites that the picture shows; the governing one has a label of its own.
void add_names(Sheet& sheet, const PictureContent& content, const Scene& scene, double turned)
{
    constexpr double from_surface = 0.7;  // mm, of rounding and straight edges
    const DepthMap depth(scene);
    std::vector<SheetPoint> marks{scene.view.on_sheet(place_of(governing_site(content), turned))};
    std::vector<std::string> names{""};
    for (const SiteMark& site : content.request.sites)
    {
        if (site.importance == Importance::governing || !is_in_view(content, site)) continue;
        // Marked where it is worst; what goes all round else on a face of the cut.
        std::vector<Eigen::Vector3d> places{place_of(site, turned)};
        if (goes_round(site.id))
            places.insert(places.end(), {Eigen::Vector3d(site.r, 0, site.z), Eigen::Vector3d(0, site.r, site.z)});
        for (const Eigen::Vector3d& place : places)
        {
            if (!depth.shows(place, from_surface)) continue;
            marks.push_back(scene.view.on_sheet(place));
            names.push_back(site.id);
            break;
        }
    }
    for (std::size_t i = 1; i < marks.size(); ++i) add_name(sheet, marks[i], names[i], marks, content.width);
    for (std::size_t i = 1; i < marks.size(); ++i)
    {
        add_disc(sheet, marks[i], 6, white);
        add_disc(sheet, marks[i], 4.4, ink);
    }
}

}  // namespace

Page solid_cutaway_page(const PictureContent& content)
{
    Page page{content.is_solid() ? "cutaway.png" : "solid-cutaway.png", {}, {}};
    Sheet& sheet = page.sheet;
    add_heading(sheet, content,
                "The solid model with a quarter cut away at the governing site; the cut faces show true colours, the "
                "worst over a turn of the bending");
    const double around = content.is_solid() ? content.around : governing_site(content).around + beside_faces_rad;
    const QuarterCut cut = quarter_cut(content, around);
    Scene& scene = page.scene;
    scene.surface = {
        {cut.outside, Lighting::lit}, {cut.face[0].surface, Lighting::flat}, {cut.face[1].surface, Lighting::flat}};
    scene.range = content.range;
    scene.view = oblique_view();
    fit(scene.view, cut.outside.point, {110, 220, sheet_width - 110, 740});
    double highest = 0;
    for (const Eigen::Vector3d& point : cut.outside.point) highest = std::max(highest, scene.view.on_sheet(point).y());
    add_cut_lines(sheet, cut.face[0], scene.view, 0);
    add_cut_lines(sheet, cut.face[1], scene.view, 1);
    for (const Side side : both_sides) add_end(sheet, content, scene, side);
    add_governing(sheet, content, scene.view, std::min(highest + 50, 812.0));
    add_foot(sheet, content);
    add_axial_scale(sheet, scene.view, {beside_bar(content.range) + 130, 102});
    add_unfused_key(sheet, content, {1188, 54});
    if (has_round_notch(content)) add_notch_key(sheet, {1188, 24});
    add_names(sheet, content, scene, around);
    return page;
}

}  // namespace splicewright
