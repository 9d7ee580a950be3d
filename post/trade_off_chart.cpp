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

constexpr std::size_t most_tags = 24;
constexpr Colour best_colour{0.72, 0.25, 0.16}, passing_dot{0.42, 0.45, 0.44};

double merit_of(const OptionOutcome& outcome, Merit merit)
{
    return merit == Merit::life ? counted_life(outcome) : outcome.utilisation;
}

struct Range
{
    double low = INFINITY, high = -INFINITY;
    void take(double value)
    {
        low = std::min(low, value);
        high = std::max(high, value);
    }
};

Axis mass_axis(const TradeOffChart& chart)
{
    Range range;
    for (const auto& place : chart.others) range.take(place.mass_kg);
    for (const StudyOption& option : chart.best) range.take(option.outcome.mass_kg);
    const double margin = std::max(0.06 * (range.high - range.low), 0.005 * range.high);
    return {range.low - margin, range.high + margin, chart_field.left, chart_field.right, false};
}

Axis merit_axis(const TradeOffChart& chart)
{
    Range range;
    range.take(chart.merit == Merit::life ? 1 : 1 / chart.origin.reserve);
    for (const auto& place : chart.others) range.take(place.merit);
    for (const StudyOption& option : chart.best) range.take(merit_of(option.outcome, chart.merit));
    if (chart.merit == Merit::utilisation) return {0, 1.08 * range.high, chart_field.bottom, chart_field.top, false};
    constexpr double shortest = 1e-4;  // of the life asked for; what is shorter is drawn there
    const double low = std::max(range.low, shortest) / 2;
    return {low, range.high * 2, chart_field.bottom, chart_field.top, true};
}

std::string merit_words(double value, Merit merit)
{
    if (merit == Merit::utilisation) return percent(value, 4);
    return value >= longest_life ? life_words(INFINITY) : fmt::format("{:g} x", value);
}

std::vector<Tick> merit_ticks(const Axis& axis, Merit merit)
{
    std::vector<Tick> ticks;
    for (const double value : round_values(axis))
        if (merit == Merit::utilisation || value <= longest_life) ticks.push_back({value, merit_words(value, merit)});
    return ticks;
}

void add_field(Sheet& sheet, const TradeOffChart& chart, const Axis& y)
{
    const bool is_life = chart.merit == Merit::life;
    const double limit = y.at(is_life ? 1 : 1 / chart.origin.reserve);
    add_box(sheet, chart_field, white);
    Box passes = chart_field;
    (is_life ? passes.bottom : passes.top) = limit;
    add_box(sheet, passes, passing_colour);
    add_line(sheet, {{chart_field.left, limit}, {chart_field.right, limit}}, {2, ink, {}});
    sheet.text.push_back({is_life ? "lives as long as asked" : "uses no more than is allowed",
                          {chart_field.right - 12, is_life ? limit + 18 : limit - 18},
                          18,
                          Weight::bold,
                          soft_ink,
                          Align::right});
}

void add_options(Sheet& sheet, const TradeOffChart& chart, const Axis& x, const Axis& y,
                 std::vector<SheetPoint>& points)
{
    const auto place = [&](double mass, double merit)
    { return SheetPoint(x.at(mass), y.at(y.is_logarithmic ? std::max(merit, 2 * y.low) : merit)); };
    for (const auto& other : chart.others)
    {
        points.push_back(place(other.mass_kg, other.merit));
        if (other.passes) add_disc(sheet, points.back(), 5, passing_dot);
        else add_ring(sheet, points.back(), 5, {1.5, hair, {}});
    }
    std::vector<SheetPoint> line;
    for (const StudyOption& option : chart.best)
        line.push_back(place(option.outcome.mass_kg, merit_of(option.outcome, chart.merit)));
    add_line(sheet, line, {2.5, best_colour, {}});
    for (const SheetPoint& point : line) add_disc(sheet, point, 7, best_colour);
    points.insert(points.end(), line.begin(), line.end());
}

// Evenly spread over them, both ends included, when there are more than can be tagged.
std::vector<StudyOption> tagged(const std::vector<StudyOption>& best, std::size_t most)
{
    if (best.size() <= most) return best;
    std::vector<StudyOption> some;
    for (std::size_t i = 0; i < most; ++i) some.push_back(best[i * (best.size() - 1) / (most - 1)]);
    return some;
}

void add_list(Sheet& sheet, const TradeOffChart& chart, const std::vector<StudyOption>& list, const TextWidth& width)
{
    Column column(sheet, width);
    column.heading("No other option that passes");
    column.heading(chart.merit == Merit::life ? "is as light and lives as long" : "is as light and uses as little");
    column.gap();
    if (list.empty()) column.item("No option passes.");
    std::size_t told = 0;
    for (; told < list.size() && column.room() > 150; ++told)
    {
        const OptionOutcome& outcome = list[told].outcome;
        const double merit = merit_of(outcome, chart.merit);
        std::string values;
        for (const std::string& value : list[told].values) values += (values.empty() ? "" : ", ") + short_value(value);
        add_tag(sheet,
                column.item(fmt::format("option {}: {}; {:.4g} kg, {}", list[told].index + 1, values, outcome.mass_kg,
                                        chart.merit == Merit::life ? life_words(merit) : percent(merit, 3)),
                            34) -
                    SheetPoint(4, 0),
                fmt::format("{}", told + 1));
    }
    if (told < chart.best.size())
        column.item(fmt::format("{} of {} are told; options.csv marks all.", told, chart.best.size()));
    column.gap();
    const SheetPoint grey = column.item("passes", 34), ring = column.item("does not pass", 34);
    add_disc(sheet, grey - SheetPoint(4, 0), 5, passing_dot);
    add_ring(sheet, ring - SheetPoint(4, 0), 5, {1.5, hair, {}});
    std::string keys;
    for (const std::string& key : chart.keys) keys += (keys.empty() ? "" : ", ") + key;
    column.item(keys.empty() ? "" : "Values: " + keys + ".");
}

}  // namespace

Sheet trade_off_sheet(const TradeOffChart& chart, const TextWidth& width)
{
    EXPECTS(!chart.others.empty() || !chart.best.empty());
    Sheet sheet;
    const Axis x = mass_axis(chart), y = merit_axis(chart);
    add_field(sheet, chart, y);
    add_y_ticks(sheet, y, merit_ticks(y, chart.merit), width);
    std::vector<Tick> masses;
    for (const double mass : round_values(x)) masses.push_back({mass, fmt::format("{:.6g} kg", mass)});
    add_x_ticks(sheet, x, masses, width);
    std::vector<SheetPoint> points;
    add_options(sheet, chart, x, y, points);
    add_frame(sheet, chart_field, {1.5, ink, {}});
    const std::vector<StudyOption> list = tagged(chart.best, most_tags);
    add_list(sheet, chart, list, width);
    std::vector<SheetPoint> tags;
    for (const StudyOption& option : list)
    {
        const double merit = merit_of(option.outcome, chart.merit);
        tags.emplace_back(x.at(option.outcome.mass_kg), y.at(y.is_logarithmic ? std::max(merit, 2 * y.low) : merit));
    }
    const std::vector<SheetPoint> places = tag_places(tags, points, chart_field);
    for (std::size_t i = 0; i < tags.size(); ++i)
    {
        add_line(sheet, {tags[i], places[i]}, {1, ink, {}});
        add_tag(sheet, places[i], fmt::format("{}", i + 1));
    }
    const bool is_life = chart.merit == Merit::life;
    add_chart_words(sheet,
                    {is_life ? "Mass against life" : "Mass against what is used", chart.origin.case_file, "mass",
                     is_life ? "life, multiples of what was asked (equal steps multiply)" : "utilisation",
                     is_life ? "Lives at the upper end of the error bar of the stress. The line joins the options that "
                               "no other one beats."
                             : "No option ever fails in fatigue. The line joins the options that no other one beats."},
                    width);
    return sheet;
}

}  // namespace splicewright
