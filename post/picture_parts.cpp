// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "cases/problem.h"
#include "mesh/outline.h"
#include "post/picture_pages.h"

namespace splicewright
{
namespace
{

Window splice_window(const PictureRequest& request, const Window& whole)
{
    if (!request.asked.sleeve) return whole;
    const Sleeve& sleeve = *request.asked.sleeve;
    const double half = sleeve.length.value() / 2 + sleeve.weld.leg_on_bar.value();
    double beside = 0;
    for (const auto& bar : request.asked.bar)
        if (bar) beside = std::max(beside, bar->sections.front().diameter.value());
    return {std::max(whole.left, sleeve.offset.value() - half - beside), whole.bottom,
            std::min(whole.right, sleeve.offset.value() + half + beside), whole.top};
}

double area(const DrawnSection& section, const std::array<int, 3>& triangle)
{
    const auto place = [&](std::size_t k) { return section.vertex[std::size_t(triangle[k])].place; };
    const Eigen::Vector2d one = place(1) - place(0), other = place(2) - place(0);
    return (one(0) * other(1) - one(1) * other(0)) / 2;
}

double tick_step(double top)
{
    for (const double digit : {1.0, 2.0, 2.5, 5.0, 10.0, 20.0})
        if (const double step = digit * std::pow(10, std::floor(std::log10(top)) - 1); top / step <= 6.01) return step;
    return top / 5;
}

int decimals_for(double step)
{
    int decimals = 0;
    for (double shown = step; decimals < 9 && std::abs(shown - std::round(shown)) > 1e-6 * shown; shown *= 10)
        ++decimals;
    return decimals;
}

double governing_angle(const PictureRequest& request)
{
    for (const SiteMark& site : request.sites)
        if (site.importance == Importance::governing)
            return angle_in_metal(*request.solid,
                                  {site.r * std::cos(site.around), site.r * std::sin(site.around), site.z});
    return beside_faces_rad;
}

}  // namespace

SolidSection scenario_section(const ScenarioView& scenario, double around)
{
    if (scenario.solid != nullptr) return solid_section(*scenario.solid, solid_skin(*scenario.solid), around);
    const Mesh& mesh = scenario.fields->mesh;
    return {drawn_section(*scenario.fields, scenario.load), region_outlines(mesh), unfused_faces(mesh),
            mesh_edges(mesh), extent(mesh)};
}

std::string worst_words(const PictureContent& content)
{
    if (!content.is_solid()) return "each point at its worst angle around the shaft";
    const double degrees = std::fmod(content.around * 180 / std::numbers::pi + 360, 360);
    return fmt::format("cut at {:.0f}° from the plane of the lap; each point at its worst over a turn of the bending",
                       degrees);
}

StressRange stress_range(const DrawnSection& section)
{
    const double highest = peak(section, {0, 0}).value;
    if (!(highest > 0)) return {1, 0};
    double total = 0;
    std::vector<std::pair<double, double>> share;  // stress, area
    for (const auto& triangle : section.triangle)
    {
        double stress = 0;
        for (const int i : triangle) stress += section.vertex[std::size_t(i)].worst / 3;
        share.emplace_back(stress, area(section, triangle));
        total += share.back().second;
    }
    std::sort(share.begin(), share.end(), std::greater<>());
    double above = 0, level = highest;
    for (const auto& [stress, part] : share)
    {
        level = stress;
        above += part;
        if (above > total / 500) break;
    }
    const double reduced = level > 0 ? round_above(level) : highest;
    return {reduced < 0.4 * highest ? reduced : round_above(highest), highest};
}

SheetPoint View::on_sheet(const Eigen::Vector3d& point) const
{
    const Eigen::Vector3d away = point - centre;
    return at + SheetPoint(away.dot(right), away.dot(up)) / mm_per_unit;
}

PictureContent picture_content(const PictureRequest& request, const TextWidth& width)
{
    const bool is_solid = request.solid != nullptr && request.solid_part == SolidPart::answered;
    const double around = is_solid ? governing_angle(request) : 0;
    SolidSection section =
        scenario_section({"", "", "", &request.fields, request.load, is_solid ? request.solid : nullptr}, around);
    PictureContent content{request,
                           width,
                           std::move(section.section),
                           {},
                           {},
                           section.whole,
                           {},
                           std::move(section.outlines),
                           std::move(section.unfused),
                           std::move(section.elements)};
    content.around = around;
    if (request.solid != nullptr) content.skin = solid_skin(*request.solid);
    content.range = stress_range(content.section);
    content.range.tells_peak = !is_solid;
    Eigen::Vector2d near(0, content.whole.top);
    for (const SiteMark& site : request.sites)
        if (site.importance == Importance::governing) near = {site.z, site.r};
    content.peak = peak(content.section, near);
    content.splice = splice_window(request, content.whole);
    return content;
}

void add_heading(Sheet& sheet, const PictureContent& content, const std::string& what)
{
    add_heading(sheet, content, "von Mises stress under " + content.request.load_text, what);
}

void add_heading(Sheet& sheet, const PictureContent& content, const std::string& second, const std::string& what)
{
    const double room = sheet_width - 100;
    const auto line = [&](const std::string& words, double y, double size, Weight weight, const Colour& colour) {
        sheet.text.push_back({fitted(words, size, weight, room, content.width), {50, y}, size, weight, colour});
    };
    line(content.request.asked.title, 950, 34, Weight::bold, ink);
    line(second, 906, 24, Weight::regular, ink);
    line(what, 870, 20, Weight::regular, soft_ink);
    add_line(sheet, {{50, 846}, {sheet_width - 50, 846}}, {1.5, hair, {}});
}

void add_colour_bar(Sheet& sheet, const StressRange& range, const SheetPoint& lower_left, double length,
                    const std::string& quantity)
{
    const double thick = 24, x0 = lower_left.x(), y0 = lower_left.y() + 34;
    const bool has_peak_mark = !range.is_cut() && range.peak > 0 && range.tells_peak;
    sheet.text.push_back({quantity, {x0, y0 + thick + (has_peak_mark ? 44 : 20)}, 20, Weight::bold});
    const std::vector<Colour> table = stress_table(range.top, range.top);
    const double step = length / double(table.size());
    for (std::size_t i = 0; i < table.size(); ++i)
        add_box(sheet, {x0 + double(i) * step, y0, x0 + std::min(length, double(i + 1) * step + 0.5), y0 + thick},
                table[i]);
    const double tick = tick_step(range.top);
    for (double value = 0; value <= range.top * 1.0001; value += tick)
    {
        const double x = x0 + length * value / range.top;
        add_line(sheet, {{x, y0 - 8}, {x, y0}}, {1.5, ink, {}});
        sheet.text.push_back(
            {short_number(value, decimals_for(tick)), {x, y0 - 21}, 19, Weight::regular, ink, Align::centre});
    }
    add_frame(sheet, {x0, y0, x0 + length, y0 + thick}, {1.2, ink, {}});
    if (has_peak_mark)
    {
        const double x = x0 + length * range.peak / range.top;
        sheet.fill.push_back({{{x, y0 + thick + 1}, {x + 7, y0 + thick + 13}, {x - 7, y0 + thick + 13}}, ink});
        sheet.text.push_back({"peak " + short_number(range.peak, range.peak < 10 ? 2 : 0),
                              {x + 12, y0 + thick + 20},
                              20,
                              Weight::bold,
                              ink,
                              x > x0 + 0.5 * length ? Align::right : Align::left});
        if (x > x0 + 0.5 * length) sheet.text.back().at.x() = x - 12;
    }
    if (!range.is_cut()) return;
    const Box cap{x0 + length + 14, y0, x0 + length + 56, y0 + thick};
    add_box(sheet, cap, above_range_colour);
    add_frame(sheet, cap, {1.2, ink, {}});
    const std::string above = "above " + short_number(range.top, decimals_for(tick));
    sheet.text.push_back({range.tells_peak ? above + ", up to " + short_number(range.peak, 0) : above,
                          {cap.right + 10, y0 + thick / 2},
                          20,
                          Weight::bold});
}

void add_scale_bar(Sheet& sheet, double mm_per_unit, const SheetPoint& left_end, double longest)
{
    const double mm = round_below(longest * mm_per_unit), length = mm / mm_per_unit;
    const double x = left_end.x(), y = left_end.y();
    for (int k = 0; k < 4; ++k)
        add_box(sheet, {x + k * length / 4, y, x + (k + 1) * length / 4, y + 9}, k % 2 == 0 ? ink : white);
    add_frame(sheet, {x, y, x + length, y + 9}, {1.2, ink, {}});
    sheet.text.push_back({"0", {x, y + 24}, 19, Weight::regular, ink, Align::centre});
    sheet.text.push_back(
        {short_number(mm, mm < 1 ? 2 : 0) + " mm", {x + length, y + 24}, 19, Weight::regular, ink, Align::centre});
}

void add_unfused(Sheet& sheet, const std::vector<SheetPoint>& points)
{
    add_line(sheet, points, {5.0, ink, {}});
    add_line(sheet, points, {2.2, white, {9, 7}});
}

std::vector<std::vector<SheetPoint>> chains(const std::vector<Segment>& segments, const View& view)
{
    using Key = std::pair<long, long>;
    const auto key = [](const Eigen::Vector2d& p) { return Key{std::lround(p(0) * 1e6), std::lround(p(1) * 1e6)}; };
    std::map<Key, std::vector<std::size_t>> at;
    for (std::size_t i = 0; i < segments.size(); ++i)
        for (const auto& end : {segments[i].first, segments[i].second}) at[key(end)].push_back(i);
    std::vector<char> used(segments.size(), 0);
    std::vector<std::vector<SheetPoint>> result;
    const auto walk = [&](Eigen::Vector2d here)
    {
        std::vector<SheetPoint> chain{view.on_sheet({here(0), here(1), 0})};
        for (bool goes_on = true; goes_on;)
        {
            goes_on = false;
            for (const std::size_t i : at[key(here)])
            {
                if (used[i] != 0) continue;
                used[i] = 1;
                here = key(segments[i].first) == key(here) ? segments[i].second : segments[i].first;
                chain.push_back(view.on_sheet({here(0), here(1), 0}));
                goes_on = true;
                break;
            }
        }
        if (chain.size() > 1) result.push_back(chain);
    };
    for (const auto& [first, second] : segments)
        for (const auto& end : {first, second})
            if (at[key(end)].size() != 2) walk(end);
    for (const auto& [first, second] : segments) walk(first);  // what is left closes on itself
    return result;
}

void add_locator(Sheet& sheet, const PictureContent& content, const Window& window, const Box& box)
{
    const Window& whole = content.whole;
    View view;
    view.mm_per_unit = std::max(whole.width() / box.width(), whole.top / box.height());
    view.centre = {whole.left, 0, 0};
    view.at = {box.left, box.bottom};
    for (const auto& [from, to] : content.outlines)
        add_line(sheet, {view.on_sheet({from(0), from(1), 0}), view.on_sheet({to(0), to(1), 0})}, {1.2, soft_ink, {}});
    const double right = view.on_sheet({whole.right, 0, 0}).x();
    add_line(sheet, {{box.left - 12, box.bottom}, {right + 12, box.bottom}}, {1.2, soft_ink, {14, 4, 3, 4}});
    const SheetPoint low = view.on_sheet({window.left, std::max(0.0, window.bottom), 0}),
                     high = view.on_sheet({window.right, window.top, 0});
    const SheetPoint centre = (low + high) / 2;
    const double half_width = std::max(5.0, (high - low).x() / 2 + 3),
                 half_height = std::max(5.0, (high - low).y() / 2 + 3);
    add_frame(sheet,
              {centre.x() - half_width, centre.y() - half_height, centre.x() + half_width, centre.y() + half_height},
              {2.5, {0.05, 0.35, 0.62}, {}});
}

void add_sharp_key(Sheet& sheet, const PictureContent& content, const SheetPoint& left)
{
    if (content.is_solid())
        sheet.text.push_back({"sharp ends of welds have no stress of their own", left, 18, Weight::regular, soft_ink});
}

double beside_bar(const StressRange& range) { return range.is_cut() ? 900 : 690; }

void add_unfused_key(Sheet& sheet, const PictureContent& content, const SheetPoint& left)
{
    if (content.unfused.empty()) return;
    add_unfused(sheet, {left, left + SheetPoint(50, 0)});
    sheet.text.push_back({"faces not joined", left + SheetPoint(62, 0), 20});
}

bool has_round_notch(const PictureContent& content)
{
    const auto& sites = content.request.sites;
    return std::any_of(sites.begin(), sites.end(),
                       [](const SiteMark& site) { return site.id.starts_with("root.") || site.id == "land-edge"; });
}

void add_notch_key(Sheet& sheet, const SheetPoint& left)
{
    const SheetPoint centre = left + SheetPoint(25, 0);
    add_disc(sheet, centre, 9, ink);
    add_disc(sheet, centre, 7.5, paper);
    sheet.text.push_back({"notch of the method, no hole", left + SheetPoint(62, 0), 20});
}

std::string place_text(double z, double r)
{
    return fmt::format("z = {} mm, r = {} mm", short_number(z, 1), short_number(r, 1));
}

std::string nearest_site(const PictureContent& content, const Eigen::Vector2d& place)
{
    std::string name;
    double nearest = 2;
    for (const SiteMark& site : content.request.sites)
        if (const double away = (Eigen::Vector2d(site.z, site.r) - place).norm(); away < nearest)
        {
            nearest = away;
            name = " (" + site.id + ")";
        }
    return name;
}

bool is_in_view(const PictureContent& content, const SiteMark& site)
{
    return site.z >= content.splice.left && site.z <= content.splice.right;
}

SiteMark governing_site(const PictureContent& content)
{
    for (const SiteMark& site : content.request.sites)
        if (site.importance == Importance::governing) return site;
    const FieldPeak& top = content.peak;
    return {"greatest stress", top.place(0), top.place(1), short_number(top.value, 0) + " MPa", Importance::governing};
}

}  // namespace splicewright
