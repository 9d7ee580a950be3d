// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "mesh/outline.h"
#include "post/picture_pages.h"

namespace splicewright
{
namespace
{

constexpr Box frame{50, 60, 1090, 820};
constexpr double column = 1130, column_right = sheet_width - 50;

Window window_around(const PictureContent& content, const SiteMark& site)
{
    const double half = content.request.close_up_half_width.value_or(8 * reference_notch_radius.value());
    const double half_height = half * frame.height() / frame.width();
    const double middle = std::max(site.r, half_height * 0.94);  // little empty space below the axis
    return {site.z - half, middle - half_height, site.z + half, middle + half_height};
}

void add_lines(Sheet& sheet, const PictureContent& content, const View& view, const Window& window)
{
    for (const auto& [from, to] : clipped(content.elements, window))
        add_line(sheet, {view.on_sheet({from(0), from(1), 0}), view.on_sheet({to(0), to(1), 0})},
                 {0.8, {0.45, 0.40, 0.38}, {}});
    for (const auto& chain : chains(clipped(content.outlines, window), view)) add_line(sheet, chain, {2.2, ink, {}});
    for (const auto& chain : chains(clipped(content.unfused, window), view)) add_unfused(sheet, chain);
    if (window.bottom < 0)
    {
        const double y = view.on_sheet({0, 0, 0}).y();
        add_line(sheet, {{frame.left, y}, {frame.right, y}}, {1.6, soft_ink, {22, 5, 4, 5}});
        sheet.text.push_back(
            {"axis", {frame.left + 14, y > frame.bottom + 32 ? y - 16 : y + 16}, 18, Weight::regular, soft_ink});
    }
}

// The greatest stress in view; its value stands beside the part.
void add_peak(Sheet& sheet, const View& view, const FieldPeak& top)
{
    const SheetPoint point = view.on_sheet({top.place(0), top.place(1), 0});
    add_ring(sheet, point, 15, {6, white, {}});
    add_ring(sheet, point, 15, {2.6, ink, {}});
}

void add_column(Sheet& sheet, const PictureContent& content, const SiteMark& site, const Window& window,
                const FieldPeak& top)
{
    const double room = column_right - column;
    double y = 796;
    const auto line = [&](const std::string& words, double size, Weight weight, const Colour& colour)
    {
        sheet.text.push_back({fitted(words, size, weight, room, content.width), {column, y}, size, weight, colour});
        y -= 1.65 * size;
    };
    line(site.id, 28, Weight::bold, ink);
    line(site.value, 24, Weight::regular, ink);
    line(place_text(site.z, site.r), 20, Weight::regular, soft_ink);
    if (top.value > 0 && content.range.tells_peak)
        line(fmt::format("ringed: peak in view, {} MPa", short_number(top.value, top.value < 10 ? 2 : 0)), 20,
             Weight::bold, ink);
    y -= 16;
    line("Where it is", 20, Weight::bold, ink);
    const Box box{column + 12, y - 90, column_right - 12, y - 10};
    add_locator(sheet, content, window, {box.left, box.bottom + 24, box.right, box.top});
    sheet.text.push_back({"left", {box.left - 12, box.bottom + 4}, 18, Weight::regular, soft_ink});
    sheet.text.push_back({"right", {box.right + 12, box.bottom + 4}, 18, Weight::regular, soft_ink, Align::right});
    y = box.bottom - 60;
    add_unfused_key(sheet, content, {column, y});
    if (!content.unfused.empty()) y -= 36;
    if (has_round_notch(content))
    {
        add_notch_key(sheet, {column, y});
        y -= 36;
    }
    add_line(sheet, {{column, y}, {column + 50, y}}, {0.8, {0.45, 0.40, 0.38}, {}});
    sheet.text.push_back({"edges of the elements", {column + 62, y}, 20});
}

}  // namespace

Page close_up_page(const PictureContent& content)
{
    Page page{"governing-site.png", {}, {}};
    Sheet& sheet = page.sheet;
    const SiteMark site = governing_site(content);
    const Window window = window_around(content, site);
    add_heading(sheet, content, "The governing site, close up; " + worst_words(content));
    Scene& scene = page.scene;
    const DrawnSection part = clipped(content.section, window);
    scene.surface = {{flat(part), Lighting::flat}};
    const double highest = part.triangle.empty() ? 0 : content.peak.value;
    scene.range =
        content.is_solid() ? stress_range(part) : StressRange{highest > 0 ? round_above(highest) : 1, highest};
    scene.range.tells_peak = content.range.tells_peak;
    scene.view.mm_per_unit = window.width() / frame.width();
    scene.view.centre = {window.left, window.bottom, 0};
    scene.view.at = {frame.left, frame.bottom};
    add_lines(sheet, content, scene.view, window);
    const FieldPeak top = part.triangle.empty() ? FieldPeak{} : peak(part, {site.z, site.r});
    if (top.value > 0 && content.range.tells_peak) add_peak(sheet, scene.view, top);
    add_frame(sheet, frame, {1.5, ink, {}});
    add_scale_bar(sheet, scene.view.mm_per_unit, {column, 210}, 230);
    add_column(sheet, content, site, window, top);
    add_colour_bar(sheet, scene.range, {column, 40}, column_right - column - 24);
    return page;
}

}  // namespace splicewright
