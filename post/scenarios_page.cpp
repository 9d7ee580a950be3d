// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>

#include "post/picture_pages.h"

namespace splicewright
{
namespace
{

constexpr double page_left = 50, page_right = sheet_width - 50, words_right = 560;
constexpr double rows_top = 836;

// A scenario as one strip of the page.
struct Strip
{
    const ScenarioView& shown;
    DrawnSection section;
    std::vector<Segment> outlines, unfused;
    View view;
    double bottom = 0, top = 0;  // room on the sheet
};

// The section moved up so that its axis lies at the strip's own axis while one camera shows them all.
ShadedSurface lifted(const DrawnSection& section, double mm)
{
    ShadedSurface surface = flat(section);
    for (Eigen::Vector3d& point : surface.point) point.y() += mm;
    return surface;
}

// One range for all, over everything that is shown.
StressRange shared_range(const std::vector<Strip>& strips)
{
    DrawnSection all;
    for (const Strip& strip : strips)
    {
        const int shift = static_cast<int>(all.vertex.size());
        all.vertex.insert(all.vertex.end(), strip.section.vertex.begin(), strip.section.vertex.end());
        for (const auto& [a, b, c] : strip.section.triangle) all.triangle.push_back({a + shift, b + shift, c + shift});
    }
    return stress_range(all);
}

void add_strip_words(Sheet& sheet, const Strip& strip, const TextWidth& width)
{
    const double middle = (strip.bottom + strip.top) / 2, room = words_right - page_left - 20;
    const auto add = [&](const std::string& words, double y, Weight weight) {
        sheet.text.push_back({fitted(words, 20, weight, room, width), {page_left, y}, 20, weight});
    };
    add(strip.shown.name, middle + 28, Weight::bold);
    add(strip.shown.used, middle, Weight::regular);
    add(strip.shown.place, middle - 28, Weight::regular);
}

void add_strip_lines(Sheet& sheet, const Strip& strip, const Window& window)
{
    for (const auto& chain : chains(strip.outlines, strip.view)) add_line(sheet, chain, {1.3, ink, {}});
    for (const auto& chain : chains(strip.unfused, strip.view)) add_unfused(sheet, chain);
    const SheetPoint left = strip.view.on_sheet({window.left, 0, 0}), right = strip.view.on_sheet({window.right, 0, 0});
    add_line(sheet, {left - SheetPoint(16, 0), right + SheetPoint(16, 0)}, {1.4, soft_ink, {22, 5, 4, 5}});
}

}  // namespace

Page scenarios_page(const PictureContent& content)
{
    Page page{"scenarios.png", {}, {}};
    Sheet& sheet = page.sheet;
    add_heading(sheet, content,
                content.is_solid()
                    ? "The same splice with a weld lost, one range of colours for all; " + worst_words(content)
                    : "The same splice with a weld lost: one camera, one scale and one range of "
                      "colours for all");
    const std::vector<ScenarioView>& scenarios = content.request.scenarios;
    const Window& window = content.splice;
    const double row = (rows_top - strip_top - 12) / static_cast<double>(scenarios.size());
    View& view = page.scene.view;
    view.mm_per_unit = std::max(window.width() / (page_right - words_right - 30), window.top / (row - 26));
    const double part = window.top / view.mm_per_unit, wide = window.width() / view.mm_per_unit;
    view.centre = {window.left, 0, 0};
    view.at = {(words_right + page_right - wide) / 2, rows_top - (row + part) / 2};
    std::vector<Strip> strips;
    for (const ScenarioView& scenario : scenarios)
    {
        const double down = row * static_cast<double>(strips.size());
        const SolidSection section = scenario_section(scenario, content.around);
        Strip strip{scenario,
                    clipped(section.section, window),
                    clipped(section.outlines, window),
                    clipped(section.unfused, window),
                    view,
                    rows_top - down - row,
                    rows_top - down};
        strip.view.at.y() -= down;
        strips.push_back(std::move(strip));
    }
    page.scene.range = shared_range(strips);
    page.scene.range.tells_peak = content.range.tells_peak;
    for (const Strip& strip : strips)
    {
        page.scene.surface.push_back(
            {lifted(strip.section, (strip.view.at.y() - view.at.y()) * view.mm_per_unit), Lighting::flat});
        add_strip_lines(sheet, strip, window);
        add_strip_words(sheet, strip, content.width);
    }
    add_line(sheet, {{page_left, strip_top}, {page_right, strip_top}}, {1.5, hair, {}});
    add_colour_bar(sheet, page.scene.range, {60, 30}, 520);
    add_scale_bar(sheet, view.mm_per_unit, {beside_bar(page.scene.range), 48}, 240);
    add_sharp_key(sheet, content, {1120, 126});
    add_unfused_key(sheet, content, {1188, 54});
    if (has_round_notch(content)) add_notch_key(sheet, {1188, 24});
    return page;
}

}  // namespace splicewright
