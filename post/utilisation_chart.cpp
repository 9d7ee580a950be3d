// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/chart_frame.h"
#include "post/number_words.h"
#include "post/study_charts.h"

namespace splicewright
{
namespace
{

constexpr double much_more = 12;  // largest over smallest utilisation from which the axis is logarithmic
constexpr std::size_t most_tags = 40;
constexpr double most_points_with_discs = 60;

using Point = KeyLine::Point;

bool is_judged(const Point& point) { return point.outcome.end == OptionEnd::judged; }

Axis utilisation_axis(const UtilisationChart& chart)
{
    const double limit = 1 / chart.origin.reserve;
    double least = limit, most = 1.15 * limit;
    for (const auto& line : chart.lines)
        for (const Point& point : line.points)
            if (is_judged(point))
            {
                least = std::min(least, lower_end(point.outcome));
                most = std::max(most, point.outcome.utilisation);
            }
    const bool is_logarithmic = most / least > much_more;
    return {is_logarithmic ? least / 1.35 : 0, is_logarithmic ? most * 1.1 : most * 1.08, chart_field.bottom,
            chart_field.top, is_logarithmic};
}

Axis key_axis(const UtilisationChart& chart)
{
    double low = chart.lines.front().points.front().value, high = low;
    for (const auto& line : chart.lines)
        for (const Point& point : line.points)
        {
            low = std::min(low, point.value);
            high = std::max(high, point.value);
        }
    const double margin = 0.03 * (high - low);
    return {low - margin, high + margin, chart_field.left, chart_field.right, false};
}

void add_field(Sheet& sheet, const UtilisationChart& chart, const Axis& axis, const TextWidth& width)
{
    const double limit = 1 / chart.origin.reserve, y = axis.at(limit);
    add_box(sheet, chart_field, white);
    add_box(sheet, {chart_field.left, chart_field.bottom, chart_field.right, y}, passing_colour);
    std::vector<Tick> ticks;
    for (const double value : round_values(axis))
    {
        add_line(sheet, {{chart_field.left, axis.at(value)}, {chart_field.right, axis.at(value)}},
                 {1, {0.80, 0.82, 0.80}, {}});
        if (std::abs(axis.at(value) - y) > 24) ticks.push_back({value, percent(value, 4)});
    }
    add_y_ticks(sheet, axis, ticks, width);
    add_line(sheet, {{chart_field.left, y}, {chart_field.right, y}}, {2.5, ink, {}});
    sheet.text.push_back({percent(limit, 4), {chart_field.left - 14, y}, 19, Weight::bold, ink, Align::right});
    const std::string words = "passes";
    const double x = chart_field.right - 12;
    sheet.text.push_back(
        {"does not pass", {x, std::min(y + 18, chart_field.top - 14)}, 18, Weight::bold, soft_ink, Align::right});
    sheet.text.push_back({words, {x, y - 18}, 18, Weight::bold, soft_ink, Align::right});
    static_cast<void>(width);
}

// Where a line begins or its governing site changes.
struct Change
{
    SheetPoint at{0, 0};
    std::string site;
};

constexpr double same_height = 0.003;  // of a utilisation: two pixels of the chart
constexpr double same_place = 24;      // pixels, of two tags of one site

bool are_alike(const UtilisationChart::Line& first, const UtilisationChart::Line& second)
{
    return std::equal(first.points.begin(), first.points.end(), second.points.begin(), second.points.end(),
                      [](const Point& a, const Point& b)
                      {
                          const double one = a.outcome.utilisation, other = b.outcome.utilisation;
                          return a.value == b.value && is_judged(a) == is_judged(b) &&
                                 a.outcome.site == b.outcome.site &&
                                 std::abs(one - other) <= same_height * std::max(one, other);
                      });
}

// For each line the first one that would hide it, or itself.
std::vector<std::size_t> shown_by(const UtilisationChart& chart)
{
    std::vector<std::size_t> shown;
    for (std::size_t i = 0; i < chart.lines.size(); ++i)
    {
        std::size_t first = 0;
        while (first < i && !are_alike(chart.lines[first], chart.lines[i])) ++first;
        shown.push_back(first);
    }
    return shown;
}

class Plot
{
public:
    Plot(Sheet& sheet, const Axis& x, const Axis& y) : sheet_(&sheet), x_(x), y_(y) {}

    void add(const UtilisationChart::Line& line, const Colour& colour)
    {
        std::vector<SheetPoint> piece;
        std::string site;
        const auto end_piece = [&]
        {
            add_line(*sheet_, piece, {3, colour, {}});
            piece.clear();
            site.clear();
        };
        for (const Point& point : line.points)
        {
            if (!is_judged(point))
            {
                end_piece();
                add_cross(x_.at(point.value));
                continue;
            }
            piece.push_back(place(point));
            keep_free_.push_back(piece.back());
            if (point.outcome.site != site) note_change(piece.back(), site = point.outcome.site);
        }
        end_piece();
        for (const Point& point : line.points)
            if (is_judged(point)) add_mark(point, colour, double(line.points.size()) <= most_points_with_discs);
    }

    [[nodiscard]] const std::vector<Change>& changes() const { return changes_; }
    [[nodiscard]] const std::vector<SheetPoint>& keep_free() const { return keep_free_; }
    [[nodiscard]] bool has_crosses() const { return has_crosses_; }

private:
    [[nodiscard]] SheetPoint place(const Point& point) const
    {
        return {x_.at(point.value), y_.at(point.outcome.utilisation)};
    }

    // Lines that begin at one place are tagged there once.
    void note_change(const SheetPoint& at, const std::string& site)
    {
        const bool is_told = std::any_of(changes_.begin(), changes_.end(),
                                         [&](const Change& change)
                                         { return change.site == site && (change.at - at).norm() < same_place; });
        if (!is_told) changes_.push_back({at, site});
    }

    // The bar reaches down from what is reported.
    void add_mark(const Point& point, const Colour& colour, bool has_disc)
    {
        const SheetPoint top = place(point), bottom(top.x(), y_.at(lower_end(point.outcome)));
        add_line(*sheet_, {top, bottom}, {1.5, colour, {}});
        add_line(*sheet_, {bottom - SheetPoint(5, 0), bottom + SheetPoint(5, 0)}, {1.5, colour, {}});
        if (has_disc) add_disc(*sheet_, top, 5, colour);
    }

    void add_cross(double x)
    {
        const double y = chart_field.bottom + 10;
        add_line(*sheet_, {{x - 5, y - 5}, {x + 5, y + 5}}, {2, soft_ink, {}});
        add_line(*sheet_, {{x - 5, y + 5}, {x + 5, y - 5}}, {2, soft_ink, {}});
        has_crosses_ = true;
    }

    Sheet* sheet_;
    Axis x_, y_;
    std::vector<Change> changes_;
    std::vector<SheetPoint> keep_free_;
    bool has_crosses_ = false;
};

// Numbers the sites in the order in which they appear and returns their names.
std::vector<std::string> add_tags(Sheet& sheet, const Plot& plot)
{
    std::vector<std::string> sites;
    std::vector<SheetPoint> points;
    for (const Change& change : plot.changes())
        if (points.size() < most_tags) points.push_back(change.at);
    const std::vector<SheetPoint> places = tag_places(points, plot.keep_free(), chart_field);
    for (std::size_t i = 0; i < points.size(); ++i)
    {
        const std::string& site = plot.changes()[i].site;
        auto found = std::find(sites.begin(), sites.end(), site);
        if (found == sites.end()) found = sites.insert(sites.end(), site);
        add_line(sheet, {points[i], places[i]}, {1, ink, {}});
        add_tag(sheet, places[i], fmt::format("{}", found - sites.begin() + 1));
    }
    return sites;
}

void add_key(Sheet& sheet, const UtilisationChart& chart, const std::vector<Colour>& colours,
             const std::vector<std::size_t>& by, const std::vector<std::string>& sites, bool has_crosses,
             const TextWidth& width)
{
    Column column(sheet, width);
    if (!chart.line_key.empty())
    {
        column.heading(chart.line_key);
        for (std::size_t i = 0; i < chart.lines.size(); ++i)
        {
            const std::string& name = chart.lines[i].name;
            const std::size_t shown = by[i];
            const SheetPoint middle =
                column.item(shown == i ? name : fmt::format("{}: as {}", name, chart.lines[shown].name), 50);
            add_line(sheet, {middle - SheetPoint(20, 0), middle + SheetPoint(14, 0)}, {3, colours[shown], {}});
            add_disc(sheet, middle - SheetPoint(3, 0), 5, colours[shown]);
        }
        column.gap();
    }
    column.heading("Governs from there on");
    for (std::size_t i = 0; i < sites.size(); ++i)
        add_tag(sheet, column.item(sites[i], 34) - SheetPoint(4, 0), fmt::format("{}", i + 1));
    column.gap();
    if (!chart.origin.held.empty())
    {
        column.heading("Stays");
        column.item(chart.origin.held);
        column.gap();
    }
    if (has_crosses) column.item("A cross on the axis: no valid case, or not computed.");
    if (!chart.origin.note.empty()) column.item(chart.origin.note);
}

std::vector<Tick> value_ticks(const UtilisationChart& chart)
{
    std::vector<Tick> ticks;
    for (const auto& line : chart.lines)
        for (const Point& point : line.points) ticks.push_back({point.value, short_value(point.words)});
    std::sort(ticks.begin(), ticks.end(), [](const Tick& a, const Tick& b) { return a.value < b.value; });
    ticks.erase(
        std::unique(ticks.begin(), ticks.end(), [](const Tick& a, const Tick& b) { return a.value == b.value; }),
        ticks.end());
    return ticks;
}

}  // namespace

double lower_end(const OptionOutcome& outcome)
{
    const double error = outcome.error_pct / 100;
    return outcome.utilisation * std::max(0.0, 1 - error) / (1 + error);
}

Sheet utilisation_sheet(const UtilisationChart& chart, const TextWidth& width)
{
    EXPECTS(!chart.lines.empty());
    Sheet sheet;
    const Axis x = key_axis(chart), y = utilisation_axis(chart);
    add_field(sheet, chart, y, width);
    const std::vector<Colour> colours = ordered_colours(chart.lines.size());
    Plot plot(sheet, x, y);
    const std::vector<std::size_t> by = shown_by(chart);
    for (std::size_t i = 0; i < chart.lines.size(); ++i)
        if (by[i] == i) plot.add(chart.lines[i], colours[i]);
    add_frame(sheet, chart_field, {1.5, ink, {}});
    add_x_ticks(sheet, x, value_ticks(chart), width);
    const std::vector<std::string> sites = add_tags(sheet, plot);
    add_key(sheet, chart, colours, by, sites, plot.has_crosses(), width);
    const std::string reserve =
        chart.origin.reserve == 1 ? "" : fmt::format(" with a reserve of {:g}", chart.origin.reserve);
    add_chart_words(
        sheet,
        {"How much of what is allowed is used", fmt::format("{}; shaded: passes{}", chart.origin.case_file, reserve),
         chart.key, y.is_logarithmic ? "utilisation (equal steps multiply)" : "utilisation",
         "Each mark stands at the upper end of its error bar, which is what counts; the bar reaches down to its lower "
         "end."},
        width);
    return sheet;
}

}  // namespace splicewright
