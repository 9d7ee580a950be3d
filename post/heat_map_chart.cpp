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

constexpr double number_size = 17;
constexpr double dark_from = 0.45;  // of the range: white figures from there on

bool is_judged(const OptionOutcome& outcome) { return outcome.end == OptionEnd::judged; }

class Grid
{
public:
    Grid(const HeatMap& map, double top)
        : map_(&map),
          nx_(map.x_words.size()),
          ny_(map.y_words.size()),
          step_x_(chart_field.width() / double(nx_)),
          step_y_(chart_field.height() / double(ny_)),
          colours_(stress_table(top, top)),
          top_(top)
    {
    }

    void draw(Sheet& sheet, const TextWidth& width) const
    {
        bool has_room = step_y_ > 1.5 * number_size;
        for (const OptionOutcome& outcome : map_->cells)
            has_room = has_room && width(words_of(outcome), number_size, Weight::regular) < 0.92 * step_x_;
        for (std::size_t y = 0; y < ny_; ++y)
            for (std::size_t x = 0; x < nx_; ++x) draw_cell(sheet, x, y, has_room);
        for (std::size_t y = 0; y < ny_; ++y)
            for (std::size_t x = 0; x < nx_; ++x) part(sheet, x, y);
    }

    [[nodiscard]] std::vector<Tick> x_ticks() const { return middles(map_->x_words); }
    [[nodiscard]] std::vector<Tick> y_ticks() const
    {
        std::vector<Tick> ticks = middles(map_->y_words), some;
        const auto every = static_cast<std::size_t>(std::ceil(24 / step_y_));
        for (std::size_t i = 0; i < ticks.size(); i += every) some.push_back(ticks[i]);
        return some;
    }
    [[nodiscard]] Axis x_axis() const { return {0, double(nx_), chart_field.left, chart_field.right, false}; }
    [[nodiscard]] Axis y_axis() const { return {0, double(ny_), chart_field.bottom, chart_field.top, false}; }
    [[nodiscard]] Colour colour_of(double utilisation) const
    {
        const double share = std::clamp(utilisation / top_, 0.0, 1.0);
        return colours_[static_cast<std::size_t>(share * (n_stress_colours - 1))];
    }

private:
    static std::vector<Tick> middles(const std::vector<std::string>& words)
    {
        std::vector<Tick> ticks;
        for (std::size_t i = 0; i < words.size(); ++i) ticks.push_back({double(i) + 0.5, words[i]});
        return ticks;
    }

    static std::string words_of(const OptionOutcome& outcome)
    {
        return is_judged(outcome) ? percent(outcome.utilisation, 3) : name_of(outcome.end);
    }

    [[nodiscard]] const OptionOutcome& cell(std::size_t x, std::size_t y) const { return map_->cells[y * nx_ + x]; }

    [[nodiscard]] Box box(std::size_t x, std::size_t y) const
    {
        const double left = chart_field.left + step_x_ * double(x), bottom = chart_field.bottom + step_y_ * double(y);
        return {left, bottom, left + step_x_, bottom + step_y_};
    }

    void draw_cell(Sheet& sheet, std::size_t x, std::size_t y, bool has_room) const
    {
        const OptionOutcome& outcome = cell(x, y);
        const Box place = box(x, y);
        add_box(sheet, place, is_judged(outcome) ? colour_of(outcome.utilisation) : not_judged_colour);
        if (!has_room) return;
        const bool is_dark = is_judged(outcome) && outcome.utilisation > dark_from * top_;
        sheet.text.push_back({words_of(outcome),
                              {(place.left + place.right) / 2, (place.bottom + place.top) / 2},
                              number_size,
                              Weight::regular,
                              is_judged(outcome) ? (is_dark ? white : ink) : soft_ink,
                              Align::centre});
    }

    // Thick lines towards the neighbours to the right and above; grey parts itself.
    void part(Sheet& sheet, std::size_t x, std::size_t y) const
    {
        const auto parted = [&](std::size_t i, std::size_t k)
        {
            const OptionOutcome &here = cell(x, y), &there = cell(i, k);
            return here.end == OptionEnd::judged && there.end == OptionEnd::judged &&
                   passes_with(here, map_->origin.reserve) != passes_with(there, map_->origin.reserve);
        };
        const Box place = box(x, y);
        const Stroke thick{5, {0.05, 0.45, 0.62}, {}};
        if (x + 1 < nx_ && parted(x + 1, y))
            add_line(sheet, {{place.right, place.bottom}, {place.right, place.top}}, thick);
        if (y + 1 < ny_ && parted(x, y + 1))
            add_line(sheet, {{place.left, place.top}, {place.right, place.top}}, thick);
    }

    const HeatMap* map_;
    std::size_t nx_, ny_;
    double step_x_, step_y_;
    std::vector<Colour> colours_;
    double top_;
};

// Upright, at the left of the column, with the limit marked.
void add_colour_scale(Sheet& sheet, const Grid& grid, double top, double limit)
{
    const double left = column_left, right = left + 34, bottom = chart_field.bottom, height = 420;
    constexpr int n = 128;
    for (int i = 0; i < n; ++i)
        add_box(sheet, {left, bottom + height * i / n, right, bottom + height * (i + 1) / n + 0.5},
                grid.colour_of(top * (i + 0.5) / n));
    add_frame(sheet, {left, bottom, right, bottom + height}, {1, ink, {}});
    const Axis axis{0, top, bottom, bottom + height, false};
    for (const double value : round_values(axis))
    {
        if (std::abs(axis.at(value) - axis.at(limit)) < 22 && value != limit) continue;
        add_line(sheet, {{right, axis.at(value)}, {right + 7, axis.at(value)}}, {1.5, ink, {}});
        if (value != limit)
            sheet.text.push_back(
                {percent(value, 4), {right + 14, axis.at(value)}, 18, Weight::regular, ink, Align::left});
    }
    if (limit > top) return;
    add_line(sheet, {{left - 4, axis.at(limit)}, {right + 7, axis.at(limit)}}, {3, ink, {}});
    sheet.text.push_back(
        {percent(limit, 4) + ": passes up to here", {right + 14, axis.at(limit)}, 18, Weight::bold, ink, Align::left});
}

}  // namespace

Sheet heat_map_sheet(const HeatMap& map, const TextWidth& width)
{
    EXPECTS(!map.cells.empty() && map.cells.size() == map.x_words.size() * map.y_words.size());
    double most = 0;
    bool all_judged = true;
    for (const OptionOutcome& outcome : map.cells)
    {
        all_judged = all_judged && is_judged(outcome);
        if (is_judged(outcome)) most = std::max(most, outcome.utilisation);
    }
    const double top = most > 0 ? round_above(most) : 1;
    Sheet sheet;
    const Grid grid(map, top);
    grid.draw(sheet, width);
    add_frame(sheet, chart_field, {1.5, ink, {}});
    add_x_ticks(sheet, grid.x_axis(), grid.x_ticks(), width);
    add_y_ticks(sheet, grid.y_axis(), grid.y_ticks(), width);
    Column column(sheet, width);
    column.heading("Thick line");
    column.item("between what passes and what does not");
    column.gap();
    if (!map.origin.held.empty())
    {
        column.heading("Stays");
        column.item(map.origin.held);
        column.gap();
    }
    if (!all_judged) column.item("Grey: no valid case, or not computed.");
    if (!map.origin.note.empty()) column.item(map.origin.note);
    add_colour_scale(sheet, grid, top, 1 / map.origin.reserve);
    const std::string reserve =
        map.origin.reserve == 1 ? "" : fmt::format(", passes with a reserve of {:g}", map.origin.reserve);
    add_chart_words(sheet,
                    {"How much of what is allowed is used", map.origin.case_file + reserve, map.x_key, map.y_key,
                     fmt::format("Utilisation at the upper end of its error bar; stresses were asked to {:g} %.",
                                 map.origin.accuracy_pct)},
                    width);
    return sheet;
}

}  // namespace splicewright
