// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "post/depth_map.h"
#include "post/picture_pages.h"
#include "post/solid_edges.h"
#include "post/solid_parts.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;
constexpr double near_surface = 2.0;  // mm, that a line on a surface may lie behind its flat triangles

// === Strips

// A shaft in a strip of the sheet: turned around its axis, scaled and put there; the page's view stays.
struct Placed
{
    double around = 0, times = 1;
    SheetPoint at{0, 0};  // of the middle
    double z = 0;         // mm, that lies there
};

// The axis lies level, and the right end is seen a little.
View level_view()
{
    const double yaw = 14 * pi / 180;
    View view;
    view.right = {0, -std::sin(yaw), std::cos(yaw)};
    view.up = {1, 0, 0};
    return view;
}

Eigen::Vector3d placed(const Eigen::Vector3d& point, const Placed& how, const View& view)
{
    const Eigen::Vector3d turned = turned_by(how.around) * (point - Eigen::Vector3d(0, 0, how.z));
    return how.times * turned + view.mm_per_unit * (how.at.x() * view.right + how.at.y() * view.up);
}

void place(ShadedSurface& surface, const Placed& how, const View& view)
{
    for (Eigen::Vector3d& point : surface.point) point = placed(point, how, view);
    for (Eigen::Vector3d& normal : surface.normal) normal = turned_by(how.around) * normal;
}

// Times that a stretch is drawn so that it fits into a room of the sheet.
double times_that_fit(const View& view, double length, double radius, double width, double height)
{
    const double wide = length * view.right.z() + 2 * radius * std::abs(view.right.y());
    return std::min(width / wide, height / (2 * radius));
}

void add_strip_name(Sheet& sheet, const std::string& words, double y)
{
    sheet.text.push_back({words, {page_left, y}, 20, Weight::bold});
}

// Where parts meet and where the outside turns sharply, as far as the splice is drawn: outlines of welds and plugs.
std::vector<SpaceSegment> part_lines(const PictureContent& content, const Placed& how, const View& view)
{
    constexpr int n_parts = 4;  // of an edge
    const SolidFields& fields = *content.request.solid;
    std::vector<SpaceSegment> lines;
    for (const SolidEdge& edge : outside_edges(fields, content.skin))
    {
        const Eigen::Vector3d a = fields.place.col(edge.point[0]), b = fields.place.col(edge.point[1]),
                              middle = fields.place.col(edge.point[2]);
        if (std::min(a.z(), b.z()) < content.splice.left || std::max(a.z(), b.z()) > content.splice.right) continue;
        const auto at = [&](int part)
        {
            const double x = double(part) / n_parts;
            return placed((1 - x) * (1 - 2 * x) * a + 4 * x * (1 - x) * middle + x * (2 * x - 1) * b, how, view);
        };
        for (int part = 0; part < n_parts; ++part) lines.emplace_back(at(part), at(part + 1));
    }
    return lines;
}

// === Lines that were straight

// Where a surface crosses half planes through the axis and planes across it, in its points before and after a movement.
std::vector<SpaceSegment> straight_lines(const ShadedSurface& before, const ShadedSurface& after, double step)
{
    constexpr int n_around = 12;
    std::vector<SpaceSegment> lines;
    const auto add = [&](const std::array<int, 3>& triangle, const std::array<double, 3>& level)
    {
        std::vector<Eigen::Vector3d> ends;
        for (std::size_t k = 0; k < 3; ++k)
        {
            const std::size_t next = (k + 1) % 3;
            if ((level[k] < 0) == (level[next] < 0)) continue;
            const double share = level[k] / (level[k] - level[next]);
            const Eigen::Vector3d &a = after.point[static_cast<std::size_t>(triangle[k])],
                                  &b = after.point[static_cast<std::size_t>(triangle[next])];
            ends.emplace_back(a + share * (b - a));
        }
        if (ends.size() == 2) lines.emplace_back(ends[0], ends[1]);
    };
    for (const auto& triangle : before.triangle)
    {
        std::array<Eigen::Vector3d, 3> p;
        for (std::size_t k = 0; k < 3; ++k) p[k] = before.point[static_cast<std::size_t>(triangle[k])];
        for (int i = 0; i < n_around / 2; ++i)
        {
            const double angle = 2 * pi * (i + 0.5) / n_around;
            const Eigen::Vector3d across(-std::sin(angle), std::cos(angle), 0);
            add(triangle, {across.dot(p[0]), across.dot(p[1]), across.dot(p[2])});
        }
        const double low = std::min({p[0].z(), p[1].z(), p[2].z()}), high = std::max({p[0].z(), p[1].z(), p[2].z()});
        for (double z = std::ceil(low / step) * step; z < high; z += step)
            add(triangle, {p[0].z() - z, p[1].z() - z, p[2].z() - z});
    }
    return lines;
}

}  // namespace

Page solid_outside_page(const PictureContent& content)
{
    Page page{"solid-outside.png", {}, {}};
    Sheet& sheet = page.sheet;
    add_heading(sheet, content,
                "The solid model from outside, each point at its worst over a turn of the bending; colours are shaded");
    Scene& scene = page.scene;
    scene.range = content.range;
    scene.view = level_view();
    const SolidFields& fields = *content.request.solid;
    const SolidExtent whole = solid_extent(fields);
    const double wide = page_right - page_left - 60;
    const double all = times_that_fit(scene.view, whole.right - whole.left, whole.radius, wide, 110);
    const double near = times_that_fit(scene.view, content.splice.width(), whole.radius, wide, 200);
    struct Strip
    {
        std::string name;
        double around, times, z, y;
        bool is_whole;
    };
    const double middle = (whole.left + whole.right) / 2, of_splice = (content.splice.left + content.splice.right) / 2;
    const double seen = content.around - pi / 2;  // the governing site faces the eye
    const double degrees = std::fmod(content.around * 180 / pi + 360, 360);
    std::vector<std::vector<SpaceSegment>> lines;
    for (const Strip& strip :
         {Strip{"The whole shaft", -seen, all, middle, 745, true},
          Strip{fmt::format("The splice, seen at {:.0f}° around", degrees), -seen, near, of_splice, 555, false},
          Strip{fmt::format("The splice from behind, at {:.0f}° around", std::fmod(degrees + 180, 360)), -seen + pi,
                near, of_splice, 300, false}})
    {
        ShadedSurface surface =
            strip.is_whole ? solid_surface(fields, content.skin, {{}}) : shown_stretch(content, {{}});
        const Placed how{strip.around, strip.times, {sheet_width / 2, strip.y - 10}, strip.z};
        place(surface, how, scene.view);
        scene.surface.push_back({std::move(surface), Lighting::lit});
        if (!strip.is_whole) lines.push_back(part_lines(content, how, scene.view));
        add_strip_name(sheet, strip.name, strip.y + strip.times * whole.radius + 14);
    }
    const DepthMap depth(scene);
    // A line on the rim of what is seen stands beside its surface for one unit or another.
    const Eigen::Vector3d beside = 1.5 * scene.view.mm_per_unit * scene.view.right;
    const auto is_seen = [&](const Eigen::Vector3d& point)
    {
        return depth.shows(point, near_surface) || depth.shows(point + beside, near_surface) ||
               depth.shows(point - beside, near_surface);
    };
    for (const auto& list : lines)
        for (const auto& [from, to] : list)
            if (is_seen((from + to) / 2))
                add_line(sheet, {scene.view.on_sheet(from), scene.view.on_sheet(to)}, {1.3, ink, {}});
    add_foot(sheet, content);
    const double per_mm = near * scene.view.right.z();
    add_scale_bar(sheet, 1 / per_mm, {beside_bar(content.range), 48}, 240);
    sheet.text.push_back({"along the splice", {beside_bar(content.range), 100}, 20});
    return page;
}

Page solid_deformed_page(const PictureContent& content)
{
    Page page{"solid-deformed.png", {}, {}};
    Sheet& sheet = page.sheet;
    const SolidFields& fields = *content.request.solid;
    const SolidExtent whole = solid_extent(fields);
    const double moved = fields.displacement.colwise().norm().maxCoeff();
    const double times = moved > 0 ? round_below(0.8 * whole.radius / moved) : 1;
    add_heading(sheet, content,
                fmt::format("The solid model deformed, drawn {} times as large as it is; the lines were straight along "
                            "the shaft and round about it",
                            short_number(times, 0)));
    Scene& scene = page.scene;
    scene.range = content.range;
    scene.view = level_view();
    const double wide = page_right - page_left - 60;
    struct Strip
    {
        std::string name;
        double times, z, y;
        Window window;
    };
    const double splice = content.splice.width();
    constexpr double still = 1e-9;  // times: the outside alone, as it was
    const Window all{whole.left - 1, 0, whole.right + 1, 0};
    const double seen = content.around - pi / 2;
    std::vector<std::vector<SpaceSegment>> lines;
    for (const Strip& strip :
         {Strip{"The whole shaft", times_that_fit(scene.view, whole.right - whole.left, 1.5 * whole.radius, wide, 200),
                (whole.left + whole.right) / 2, 690, all},
          Strip{"The splice", times_that_fit(scene.view, splice, 1.4 * whole.radius, wide, 330),
                (content.splice.left + content.splice.right) / 2, 360, content.splice}})
    {
        const Placed how{-seen, strip.times, {sheet_width / 2, strip.y}, strip.z};
        const std::vector<Piece> piece{within(strip.window)};
        const ShadedSurface before = solid_surface(fields, content.skin, piece, still),
                            after = solid_surface(fields, content.skin, piece, times);
        ShadedSurface surface = after;
        place(surface, how, scene.view);
        scene.surface.push_back({std::move(surface), Lighting::lit});
        std::vector<SpaceSegment> found = straight_lines(before, after, round_below(splice / 12));
        for (auto& [from, to] : found) from = placed(from, how, scene.view), to = placed(to, how, scene.view);
        lines.push_back(std::move(found));
        add_strip_name(sheet, strip.name, strip.y + 1.5 * strip.times * whole.radius + 4);
    }
    const DepthMap depth(scene);
    for (const auto& list : lines)
        for (const auto& [from, to] : list)
            if (depth.shows((from + to) / 2, near_surface))
                add_line(sheet, {scene.view.on_sheet(from), scene.view.on_sheet(to)}, {1.2, ink, {}});
    add_foot(sheet, content);
    sheet.text.push_back(
        {fmt::format("Largest movement {} mm, here {} times that", short_number(moved, 3), short_number(times, 0)),
         {beside_bar(content.range), 80},
         20,
         Weight::bold});
    sheet.text.push_back(
        {"measured without the movement of the shaft as a whole", {beside_bar(content.range), 50}, 20});
    return page;
}

}  // namespace splicewright
