// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/line_chart.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "cases/problem.h"
#include "post/draft.h"
#include "post/label_layout.h"
#include "post/number_words.h"

namespace splicewright
{
namespace
{

// In pixels of the chart, y downward.
constexpr double width = 720, plot_height = 250, left = 62, right = 704, type = 13, legend_row = 20, foot = 46;
constexpr std::size_t most_curves = 4;

struct Frame
{
    double x_low = 0, x_high = 1, y_low = 0, y_high = 1, top = 0, y_step = 1;
    [[nodiscard]] double x(double value) const { return left + (value - x_low) / (x_high - x_low) * (right - left); }
    [[nodiscard]] double y(double value) const { return top + (y_high - value) / (y_high - y_low) * plot_height; }
    [[nodiscard]] double bottom() const { return top + plot_height; }
};

template <class Visit>
void for_all_points(const LineChart& chart, const Visit& visit)
{
    for (const ChartCurve& curve : chart.curves)
        for (const SheetPoint& point : curve.points) visit(point);
    for (const ChartMarks& marks : chart.marks)
        for (const SheetPoint& point : marks.points) visit(point);
}

Frame frame_of(const LineChart& chart, double top)
{
    Frame frame{INFINITY, -INFINITY, 0, chart.least_top, top};
    for_all_points(chart,
                   [&](const SheetPoint& point)
                   {
                       frame.x_low = std::min(frame.x_low, point.x());
                       frame.x_high = std::max(frame.x_high, point.x());
                       frame.y_low = std::min(frame.y_low, point.y());
                       frame.y_high = std::max(frame.y_high, point.y());
                   });
    EXPECTS(frame.x_high > frame.x_low);
    if (frame.y_high <= frame.y_low) frame.y_high = frame.y_low + 1;
    // A curve that dips below zero by a hair is no reason for a band of nothing.
    if (frame.y_low > -0.02 * frame.y_high) frame.y_low = 0;
    const double step = frame.y_step = round_below((frame.y_high - frame.y_low) / 4);
    frame.y_high = step * std::ceil(frame.y_high / step - 1e-9);
    frame.y_low = step * std::floor(frame.y_low / step + 1e-9);
    return frame;
}

Markup text(double x, double y, const char* anchor, const std::string& what, const char* kind = "n")
{
    return element("text", {{"x", coordinate(x)}, {"y", coordinate(y)}, {"text-anchor", anchor}, {"class", kind}},
                   words(what));
}

Markup line(double x1, double y1, double x2, double y2, const char* kind)
{
    return element("line",
                   {{"class", kind},
                    {"x1", coordinate(x1)},
                    {"y1", coordinate(y1)},
                    {"x2", coordinate(x2)},
                    {"y2", coordinate(y2)}},
                   {});
}

// In groups of three where it is long.
std::string tick_words(double value)
{
    return std::abs(value) < 1e4 ? fmt::format("{:g}", value) : (value < 0 ? "-" : "") + counted(std::abs(value));
}

// The middle of a text that stays inside the chart.
double middle_inside(double x, const std::string& what)
{
    return std::min(x, width - 3 - draft_text_width(what, type, Weight::regular) / 2);
}

Markup axes(const LineChart& chart, const Frame& frame)
{
    Markup all;
    const auto ticks = [](double low, double high, double step, const auto& each)
    {
        for (double value = std::ceil(low / step - 1e-9) * step; value <= high + 1e-9 * step; value += step)
            each(std::abs(value) < 1e-9 * step ? 0 : value);
    };
    ticks(frame.y_low, frame.y_high, frame.y_step,
          [&](double value)
          {
              all += line(left, frame.y(value), right, frame.y(value), value == 0 ? "zero" : "grid");
              all += text(left - 8, frame.y(value) + 4.5, "end", tick_words(value));
          });
    ticks(frame.x_low, frame.x_high, round_below((frame.x_high - frame.x_low) / 4),
          [&](double value)
          {
              all += line(frame.x(value), frame.bottom(), frame.x(value), frame.bottom() + 5, "zero");
              const std::string told = tick_words(value);
              all += text(middle_inside(frame.x(value), told), frame.bottom() + 19, "middle", told);
          });
    all += line(left, frame.bottom(), right, frame.bottom(), "zero");
    all += text((left + right) / 2, frame.bottom() + 39, "middle", chart.x_label, "label");
    all +=
        element("text",
                {{"class", "label"},
                 {"text-anchor", "middle"},
                 {"transform", fmt::format("translate(16 {}) rotate(-90)", coordinate(frame.top + plot_height / 2))}},
                words(chart.y_label));
    return all;
}

Markup places(const LineChart& chart, const Frame& frame)
{
    std::vector<double> wish, step;
    for (std::size_t i = 0; i < chart.places.size(); ++i)
    {
        wish.push_back(frame.x(chart.places[i].x));
        const auto wide = [&](std::size_t k) { return draft_text_width(chart.places[k].name, type, Weight::regular); };
        if (i > 0) step.push_back((wide(i - 1) + wide(i)) / 2 + 8);
    }
    Markup all;
    if (wish.empty()) return all;
    const std::vector<double> x = spaced(wish, step, left + 30, right - 30);
    for (std::size_t i = 0; i < x.size(); ++i)
    {
        all += element("path",
                       {{"class", "place"},
                        {"d", fmt::format("M{0} {1}V{2}L{3} {4}", coordinate(wish[i]), coordinate(frame.bottom()),
                                          coordinate(frame.top), coordinate(x[i]), coordinate(frame.top - 8))}},
                       {});
        all += text(x[i], frame.top - 12, "middle", chart.places[i].name);
    }
    return all;
}

Markup sign(ChartSign shape, double x, double y)
{
    if (shape == ChartSign::disc)
        return element("circle", {{"class", "sign"}, {"cx", coordinate(x)}, {"cy", coordinate(y)}, {"r", "4.5"}}, {});
    const char* outline = shape == ChartSign::square ? "m-4.5 -4.5h9v9h-9z" : "m-5 -5l10 10m0 -10l-10 10";
    return element("path",
                   {{"class", shape == ChartSign::square ? "sign" : "sign cross"},
                    {"d", fmt::format("M{} {}{}", coordinate(x), coordinate(y), outline)}},
                   {});
}

std::string curve_kind(std::size_t number) { return fmt::format("curve c{}", number); }

Markup curves(const LineChart& chart, const Frame& frame)
{
    Markup all;
    for (std::size_t i = 0; i < chart.curves.size(); ++i)
    {
        std::string path;
        for (const SheetPoint& point : chart.curves[i].points)
            path += fmt::format("{}{} {}", path.empty() ? "M" : "L", coordinate(frame.x(point.x())),
                                coordinate(frame.y(point.y())));
        all += element("path", {{"class", curve_kind(i)}, {"d", path}}, {});
    }
    for (const ChartMarks& marks : chart.marks)
        for (const SheetPoint& point : marks.points) all += sign(marks.sign, frame.x(point.x()), frame.y(point.y()));
    return all;
}

// One entry after the other, broken into rows; gives the number of rows.
double legend(const LineChart& chart, Markup& all)
{
    double x = left, row = 0;
    const auto place = [&](const std::string& name)
    {
        const double wide = 44 + draft_text_width(name, type, Weight::regular);
        if (x > left && x + wide > right)
        {
            x = left;
            ++row;
        }
        const double at = x;
        x += wide + 18;
        return at;
    };
    for (std::size_t i = 0; i < chart.curves.size(); ++i)
    {
        const double at = place(chart.curves[i].name), y = 14 + row * legend_row;
        all += line(at, y - 4.5, at + 34, y - 4.5, curve_kind(i).c_str());
        all += text(at + 41, y, "start", chart.curves[i].name);
    }
    for (const ChartMarks& marks : chart.marks)
    {
        const double at = place(marks.name), y = 14 + row * legend_row;
        all += sign(marks.sign, at + 24, y - 4.5);
        all += text(at + 41, y, "start", marks.name);
    }
    return row + 1;
}

}  // namespace

Markup chart_svg(const LineChart& chart)
{
    EXPECTS(chart.curves.size() <= most_curves);
    Markup keys;
    const double rows = legend(chart, keys);
    const Frame frame = frame_of(chart, rows * legend_row + (chart.places.empty() ? 12 : 32));
    return element("svg",
                   {{"class", "chart"},
                    {"role", "img"},
                    {"aria-labelledby", chart.id + "-title " + chart.id + "-words"},
                    {"viewBox", fmt::format("0 0 {} {}", coordinate(width), coordinate(frame.bottom() + foot))}},
                   element("title", {{"id", chart.id + "-title"}}, words(chart.title)) +
                       element("desc", {{"id", chart.id + "-words"}}, words(chart.description)) + keys +
                       axes(chart, frame) + places(chart, frame) + curves(chart, frame));
}

}  // namespace splicewright
