// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/chart_frame.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <sstream>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr double tick_length = 8, tick_size = 19, line_height = 25, word_size = 19;
constexpr double most_decades_with_steps = 3;
constexpr std::size_t most_lines = 3;

std::vector<double> round_logarithms(const Axis& axis)
{
    const double decades = std::log10(axis.high / axis.low);
    std::vector<double> values;
    for (double decade = std::pow(10, std::floor(std::log10(axis.low))); decade <= axis.high; decade *= 10)
        for (const double step : {1.0, 2.0, 5.0})
        {
            const double value = decade * step;
            if (step > 1 && decades > most_decades_with_steps) continue;
            if (value >= axis.low * (1 - 1e-9) && value <= axis.high * (1 + 1e-9)) values.push_back(value);
        }
    return values;
}

// Lines of at most `room`, the last one shortened when there are too many.
std::vector<std::string> broken(const std::string& words, double room, const TextWidth& width)
{
    std::vector<std::string> lines;
    std::istringstream stream(clean_text(words));
    for (std::string word; stream >> word;)
    {
        const bool fits = !lines.empty() && width(lines.back() + " " + word, word_size, Weight::regular) <= room;
        if (fits || lines.size() == most_lines) lines.back() += " " + word;
        else lines.push_back(word);
    }
    for (std::string& line : lines) line = fitted(line, word_size, Weight::regular, room, width);
    return lines;
}

double crowding(const SheetPoint& place, const std::vector<SheetPoint>& tags, const std::vector<SheetPoint>& keep_free,
                const Box& room)
{
    double sum = 0;
    for (const SheetPoint& tag : tags)
        if ((tag - place).norm() < 2 * tag_radius + 2) sum += 100;
    for (const SheetPoint& point : keep_free)
        if ((point - place).norm() < tag_radius + 5) sum += 1;
    const bool inside = place.x() > room.left + tag_radius && place.x() < room.right - tag_radius &&
                        place.y() > room.bottom + tag_radius && place.y() < room.top - tag_radius;
    return inside ? sum : sum + 1000;
}

}  // namespace

double Axis::at(double value) const
{
    const double share = is_logarithmic ? std::log(value / low) / std::log(high / low) : (value - low) / (high - low);
    return from + share * (to - from);
}

std::vector<double> round_values(const Axis& axis)
{
    EXPECTS(axis.high > axis.low);
    if (axis.is_logarithmic) return round_logarithms(axis);
    const double step = round_below((axis.high - axis.low) / 4);
    std::vector<double> values;
    for (double k = std::ceil(axis.low / step - 1e-9); k * step <= axis.high + 1e-9 * step; ++k)
        values.push_back(k * step);
    return values;
}

void add_chart_words(Sheet& sheet, const ChartWords& words, const TextWidth& width)
{
    const auto line = [&](const std::string& text, double y, double size, Weight weight, const Colour& colour) {
        sheet.text.push_back({fitted(text, size, weight, 1500, width), {50, y}, size, weight, colour, Align::left});
    };
    line(words.title, 950, 30, Weight::bold, ink);
    line(words.subtitle, 910, 20, Weight::regular, soft_ink);
    line(words.foot, 40, 18, Weight::regular, soft_ink);
    sheet.text.push_back({words.y_name, {50, chart_field.top + 26}, 20, Weight::bold, ink, Align::left});
    sheet.text.push_back({words.x_name,
                          {(chart_field.left + chart_field.right) / 2, chart_field.bottom - 68},
                          20,
                          Weight::bold,
                          ink,
                          Align::centre});
    std::erase_if(sheet.text, [](const Text& text) { return text.words.empty(); });
}

void add_x_ticks(Sheet& sheet, const Axis& axis, const std::vector<Tick>& ticks, const TextWidth& width)
{
    double free_from = -1e9;
    for (const Tick& tick : ticks)
    {
        const double x = axis.at(tick.value);
        const Text text{tick.words, {x, chart_field.bottom - 28}, tick_size, Weight::regular, ink, Align::centre};
        const Box box = box_of(text, width);
        const bool has_room = box.left > free_from;
        add_line(sheet, {{x, chart_field.bottom}, {x, chart_field.bottom - (has_room ? tick_length : tick_length / 2)}},
                 {1.5, ink, {}});
        if (!has_room) continue;
        sheet.text.push_back(text);
        free_from = box.right + 12;
    }
}

void add_y_ticks(Sheet& sheet, const Axis& axis, const std::vector<Tick>& ticks, const TextWidth& width)
{
    constexpr double room = chart_field.left - 14 - 12, least_size = 11;
    for (const Tick& tick : ticks)
    {
        const double wide = width(tick.words, tick_size, Weight::regular);
        const double size = wide <= room ? tick_size : std::max(least_size, tick_size * room / wide);
        const std::string words = fitted(tick.words, size, Weight::regular, room, width);
        const double y = axis.at(tick.value);
        add_line(sheet, {{chart_field.left - tick_length, y}, {chart_field.left, y}}, {1.5, ink, {}});
        sheet.text.push_back({words, {chart_field.left - 14, y}, size, Weight::regular, ink, Align::right});
    }
}

void Column::heading(const std::string& words)
{
    sheet_->text.push_back({words, {column_left, top_ - line_height / 2}, word_size, Weight::bold, ink, Align::left});
    top_ -= line_height + 4;
}

SheetPoint Column::item(const std::string& words, double indent)
{
    const SheetPoint middle(column_left + indent / 2, top_ - line_height / 2);
    for (const std::string& line : broken(words, column_right - column_left - indent, *width_))
    {
        sheet_->text.push_back(
            {line, {column_left + indent, top_ - line_height / 2}, word_size, Weight::regular, ink, Align::left});
        top_ -= line_height;
    }
    top_ -= 4;
    return middle;
}

std::vector<Colour> ordered_colours(std::size_t n)
{
    constexpr double lightest = 0.36, darkest = 0.97;  // of the ramp
    const auto ramp = stress_ramp();
    std::vector<Colour> colours;
    for (std::size_t i = 0; i < n; ++i)
    {
        const double share = n == 1 ? 0.8 : lightest + (darkest - lightest) * double(i) / double(n - 1);
        colours.push_back(srgb(ramp[static_cast<std::size_t>(share * (n_stress_colours - 1))]));
    }
    return colours;
}

void add_tag(Sheet& sheet, const SheetPoint& centre, const std::string& number)
{
    add_disc(sheet, centre, tag_radius, ink);
    sheet.text.push_back({number, centre, number.size() > 2 ? 12.0 : 15.0, Weight::bold, white, Align::centre});
}

std::vector<SheetPoint> tag_places(const std::vector<SheetPoint>& points, const std::vector<SheetPoint>& keep_free,
                                   const Box& room)
{
    constexpr int n_directions = 8;
    std::vector<SheetPoint> places;
    for (const SheetPoint& point : points)
    {
        SheetPoint best = point;
        double least = 1e9;
        for (const double distance : {26.0, 40.0, 56.0, 76.0})
            for (int i = 0; i < n_directions; ++i)
            {
                // Straight above first, then to both sides of it.
                const int turn = (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2);
                const double angle = std::numbers::pi / 2 + turn * 2 * std::numbers::pi / n_directions;
                const SheetPoint place = point + distance * SheetPoint(std::cos(angle), std::sin(angle));
                const double cost = crowding(place, places, keep_free, room) + distance / 1000;
                if (cost >= least) continue;
                least = cost;
                best = place;
            }
        places.push_back(best);
    }
    return places;
}

}  // namespace splicewright
