// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "post/label_layout.h"
#include "post/picture_pages.h"

namespace splicewright
{
namespace
{

constexpr double page_left = 60, page_right = sheet_width - 60;
constexpr double stand_off = 34;
constexpr double row_height = 33;
constexpr std::size_t most_sites = 24;  // that the list holds beside a part of a fair size

// A site with the leader to its balloon.
struct NumberedSite
{
    SiteMark mark;
    Leader leader;
};

std::string short_place(const SiteMark& mark)
{
    return fmt::format("z {}, r {} mm", short_number(mark.z, 1), short_number(mark.r, 1));
}

// The sites in the window; of more than the list holds those that come first in the request.
std::vector<SiteMark> listed_sites(const PictureContent& content)
{
    std::vector<SiteMark> marks;
    for (const SiteMark& site : content.request.sites)
        if (site.z >= content.splice.left && site.z <= content.splice.right) marks.push_back(site);
    std::stable_partition(marks.begin(), marks.end(),
                          [](const SiteMark& mark) { return mark.importance == Importance::governing; });
    if (marks.size() > most_sites) marks.resize(most_sites);
    for (SiteMark& mark : marks)
    {
        mark.id = fitted(mark.id, 20, Weight::bold, 190, content.width);
        mark.value = fitted(mark.value, 20, Weight::bold, 305, content.width);
    }
    return marks;
}

std::vector<NumberedSite> numbered_sites(const std::vector<SiteMark>& marks, const View& view, const LabelRoom& room)
{
    std::vector<SheetPoint> points;
    for (const SiteMark& mark : marks) points.push_back(view.on_sheet({mark.z, mark.r, 0}));
    const std::vector<Leader> leaders = placed_labels(points, room);
    std::vector<NumberedSite> numbered;
    for (std::size_t i = 0; i < marks.size(); ++i) numbered.push_back({marks[i], leaders[i]});
    std::stable_sort(numbered.begin(), numbered.end(),
                     [](const NumberedSite& a, const NumberedSite& b) { return a.mark.number < b.mark.number; });
    return numbered;
}

// Columns of the list of sites.
struct ListShape
{
    int columns = 1, rows = 0;
    double id_width = 0, value_width = 0, column_width = 0;
};

ListShape list_shape(const std::vector<SiteMark>& sites, const TextWidth& width)
{
    ListShape shape;
    double place_width = 0;
    for (const SiteMark& site : sites)
    {
        shape.id_width = std::max(shape.id_width, width(site.id, 20, Weight::bold));
        shape.value_width = std::max(shape.value_width, width(site.value, 20, Weight::bold));
        place_width = std::max(place_width, width(short_place(site), 18, Weight::regular));
    }
    shape.column_width = 36 + shape.id_width + 12 + shape.value_width + 12 + place_width;
    const auto n = static_cast<int>(sites.size());
    const int fitting = std::max(1, static_cast<int>((page_right - page_left + 16) / (shape.column_width + 16)));
    shape.rows = (n + fitting - 1) / fitting;
    if (n > 0) shape.columns = (n + shape.rows - 1) / shape.rows;
    return shape;
}

void add_list(Sheet& sheet, const std::vector<NumberedSite>& sites, const ListShape& shape, double top)
{
    const double room = page_right - page_left - shape.columns * shape.column_width;
    const double gap = shape.columns == 1 ? 0 : std::min(90.0, room / (shape.columns - 1));
    for (std::size_t i = 0; i < sites.size(); ++i)
    {
        const SiteMark& mark = sites[i].mark;
        const int column = static_cast<int>(i) / shape.rows, row = static_cast<int>(i) % shape.rows;
        const double x = page_left + column * (shape.column_width + gap);
        const double y = top - row_height * (row + 0.5);
        const bool governs = mark.importance == Importance::governing;
        const Weight weight = governs ? Weight::bold : Weight::regular;
        if (governs) add_box(sheet, {x - 8, y - 16, x + shape.column_width + 8, y + 16}, {0.89, 0.87, 0.81});
        const double value_right = x + 36 + shape.id_width + 12 + shape.value_width;
        sheet.text.push_back({std::to_string(mark.number), {x + 12, y}, 20, Weight::bold, ink, Align::centre});
        sheet.text.push_back({mark.id, {x + 36, y}, 20, weight});
        sheet.text.push_back({mark.value, {value_right, y}, 20, weight, ink, Align::right});
        sheet.text.push_back({short_place(mark), {value_right + 12, y}, 18, Weight::regular, soft_ink});
    }
}

// A wavy line across a shaft that goes on.
void add_break(Sheet& sheet, const View& view, double z, double r)
{
    const SheetPoint foot = view.on_sheet({z, 0, 0}), head = view.on_sheet({z, r, 0});
    std::vector<SheetPoint> wave;
    for (int i = 0; i <= 48; ++i)
        wave.emplace_back(foot.x() + 5 * std::sin(i * 2 * std::numbers::pi / 24),
                          foot.y() - 6 + (head.y() - foot.y() + 12) * i / 48);
    add_line(sheet, wave, {9, paper, {}});
    add_line(sheet, wave, {1.8, ink, {}});
}

double outer_radius_at(const PictureContent& content, double z)
{
    double radius = 0;
    for (const auto& [from, to] : content.outlines)
        if (std::min(from(0), to(0)) <= z + 0.5 && std::max(from(0), to(0)) >= z - 0.5)
            radius = std::max({radius, from(1), to(1)});
    return radius;
}

void add_part_lines(Sheet& sheet, const PictureContent& content, const View& view)
{
    const Window& window = content.splice;
    for (const auto& chain : chains(clipped(content.outlines, window), view)) add_line(sheet, chain, {1.5, ink, {}});
    for (const auto& chain : chains(clipped(content.unfused, window), view)) add_unfused(sheet, chain);
    const SheetPoint left = view.on_sheet({window.left, 0, 0}), right = view.on_sheet({window.right, 0, 0});
    add_line(sheet, {left - SheetPoint(26, 0), right + SheetPoint(26, 0)}, {1.6, soft_ink, {22, 5, 4, 5}});
    for (const Side side : both_sides)
    {
        const std::string words = fmt::format("{}, z = {} mm", name_of(side),
                                              short_number(side == Side::left ? window.left : window.right, 0));
        const SheetPoint at = (side == Side::left ? left : right) + SheetPoint(0, -20);
        sheet.text.push_back(
            {words, at, 18, Weight::regular, soft_ink, side == Side::left ? Align::left : Align::right});
    }
    for (const double z : {window.left, window.right})
        if (z > content.whole.left + 1e-6 && z < content.whole.right - 1e-6)
            add_break(sheet, view, z, outer_radius_at(content, z));
}

void add_marks(Sheet& sheet, const std::vector<NumberedSite>& sites)
{
    for (const Stroke& stroke : {Stroke{4.2, paper, {}}, Stroke{1.6, ink, {}}})
        for (const auto& [mark, leader] : sites) add_line(sheet, {leader.site, leader.knee, leader.balloon}, stroke);
    for (const auto& [mark, leader] : sites)
    {
        add_disc(sheet, leader.site, 6.0, white);
        add_disc(sheet, leader.site, 4.4, ink);
        add_balloon(sheet, leader.balloon, std::to_string(mark.number), mark.importance);
    }
}

void add_strip(Sheet& sheet, const PictureContent& content, const View& view)
{
    add_line(sheet, {{50, strip_top}, {sheet_width - 50, strip_top}}, {1.5, hair, {}});
    add_colour_bar(sheet, content.range, {page_left, 30}, 520);
    const FieldPeak& top = content.peak;
    const double x = beside_bar(content.range);
    const bool is_drawn = top.place(0) >= content.splice.left && top.place(0) <= content.splice.right;
    const std::string outside = is_drawn ? "" : ", not in view";
    if (top.value > 0 && content.range.tells_peak)
        sheet.text.push_back(
            {fitted(fmt::format("Peak {} MPa at {}{}{}", short_number(top.value, 0),
                                place_text(top.place(0), top.place(1)), nearest_site(content, top.place), outside),
                    20, Weight::bold, page_right - 640, content.width),
             {page_right, 126},
             20,
             Weight::bold,
             ink,
             Align::right});
    if (top.value > 0 && content.range.tells_peak && is_drawn && !nearest_site(content, top.place).empty())
        sheet.text.push_back({"peak of the colours; the list reads each site along its own surface",
                              {page_right, 98},
                              18,
                              Weight::regular,
                              soft_ink,
                              Align::right});
    add_scale_bar(sheet, view.mm_per_unit, {x, 48}, 240);
    add_sharp_key(sheet, content, {1120, 126});
    add_unfused_key(sheet, content, {1188, 54});
    if (has_round_notch(content)) add_notch_key(sheet, {1188, 24});
}

// What the picture does not show, in words.
std::string left_out(const PictureContent& content, std::size_t n_shown)
{
    const std::size_t n = content.request.sites.size();
    std::string words = n > n_shown ? fmt::format("; {} of {} sites shown", n_shown, n) : std::string();
    const SiteMark site = governing_site(content);
    if (!is_in_view(content, site)) words += fmt::format(", not in view the governing one, {}", site.id);
    return words;
}

}  // namespace

Page section_page(const PictureContent& content)
{
    Page page{"section.png", {}, {}};
    Sheet& sheet = page.sheet;
    const Window& window = content.splice;
    const std::vector<SiteMark> marks = listed_sites(content);
    const char* peaks =
        content.is_solid() ? "" : "; peaks at toes, roots and fillets count in fatigue, not against yield";
    add_heading(sheet, content, "Half section; " + worst_words(content) + left_out(content, marks.size()) + peaks);
    const ListShape list = list_shape(marks, content.width);

    const double rails = 2 * (stand_off + 2 * balloon_radius), list_height = list.rows * row_height;
    const double free_height = 836 - strip_top - 10 - rails - list_height;
    View& view = page.scene.view;
    view.mm_per_unit =
        std::max(window.width() / (page_right - page_left), window.top / std::min(360.0, free_height - 60));
    const double part_height = window.top / view.mm_per_unit, part_width = window.width() / view.mm_per_unit;
    const double spare = (free_height - part_height) / 3;
    const double axis_y = strip_top + 10 + spare + list_height + spare + rails / 2;
    view.centre = {window.left, 0, 0};
    view.at = {(sheet_width - part_width) / 2, axis_y};

    page.scene.surface = {{flat(clipped(content.section, window)), Lighting::flat}};
    page.scene.range = content.range;
    add_part_lines(sheet, content, view);
    const std::vector<NumberedSite> sites =
        numbered_sites(marks, view,
                       {{view.at.x(), axis_y, view.at.x() + part_width, axis_y + part_height},
                        40,
                        sheet_width - 40,
                        balloon_radius,
                        6,
                        stand_off,
                        30});
    add_marks(sheet, sites);
    add_list(sheet, sites, list, strip_top + 10 + spare + list_height);
    add_strip(sheet, content, view);
    return page;
}

}  // namespace splicewright
