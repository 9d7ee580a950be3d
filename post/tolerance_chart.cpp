// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/tolerance_chart.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/chart_frame.h"
#include "post/number_words.h"

namespace splicewright
{
namespace
{

//     title
//     key, ends     ┌─────────┊───────────────┐  column of words:
//     key, ends     │    ●────┊────────○      │  what the signs mean
//                   └─────────┊───────────────┘
constexpr std::size_t most_rows = 13;
constexpr Box bars{470, chart_field.bottom, chart_field.right, chart_field.top};
constexpr double words_left = 50, words_room = bars.left - words_left - 20;
constexpr Colour bar_colour{0.16, 0.36, 0.58};

bool is_judged(const OptionOutcome& outcome) { return outcome.end == OptionEnd::judged; }

Axis utilisation_axis(const std::vector<const ToleranceEffect*>& rows, double nominal)
{
    double low = nominal, high = nominal;
    for (const ToleranceEffect* row : rows)
        for (const OptionOutcome* end : {&row->low, &row->high})
            if (is_judged(*end))
            {
                low = std::min(low, end->utilisation);
                high = std::max(high, end->utilisation);
            }
    const double margin = std::max(0.08 * (high - low), 0.01 * nominal);
    return {low - margin, high + margin, bars.left, bars.right, false};
}

void add_field(Sheet& sheet, const Axis& x)
{
    add_box(sheet, bars, white);
    const double limit = std::clamp(x.at(1), bars.left, bars.right);
    if (limit > bars.left) add_box(sheet, {bars.left, bars.bottom, limit, bars.top}, passing_colour);
    if (x.low < 1 && x.high > 1) add_line(sheet, {{limit, bars.bottom}, {limit, bars.top}}, {2, ink, {}});
}

void add_row(Sheet& sheet, const ToleranceEffect& effect, const Axis& x, double y, const TextWidth& width)
{
    const auto words = [&](const std::string& text, double height, double size, Weight weight, const Colour& colour)
    {
        const std::string shown = fitted(clean_text(text), size, weight, words_room, width);
        sheet.text.push_back({shown, {words_left, height}, size, weight, colour, Align::left});
    };
    words(effect.key, y + 11, 19, Weight::bold, ink);
    const auto end = [](const std::string& at, const OptionOutcome& outcome)
    { return fmt::format("{}: {}", at, is_judged(outcome) ? percent(outcome.utilisation, 3) : "not judged"); };
    words(end(effect.low_words, effect.low) + "; " + end(effect.high_words, effect.high), y - 11, 16, Weight::regular,
          soft_ink);
    if (is_judged(effect.low) && is_judged(effect.high))
        add_line(sheet, {{x.at(effect.low.utilisation), y}, {x.at(effect.high.utilisation), y}}, {10, bar_colour, {}});
    if (is_judged(effect.low)) add_disc(sheet, {x.at(effect.low.utilisation), y}, 8, bar_colour);
    if (!is_judged(effect.high)) return;
    add_disc(sheet, {x.at(effect.high.utilisation), y}, 8, white);
    add_ring(sheet, {x.at(effect.high.utilisation), y}, 8, {3, bar_colour, {}});
}

void add_signs(Sheet& sheet, const ToleranceAnswer& answer, const TextWidth& width)
{
    constexpr double indent = 34;
    Column column(sheet, width);
    column.heading("The governing utilisation");
    column.gap();
    add_disc(sheet, column.item("value at its lower end", indent) - SheetPoint(4, 0), 8, bar_colour);
    add_ring(sheet, column.item("value at its upper end", indent) - SheetPoint(4, 0), 8, {3, bar_colour, {}});
    const SheetPoint drawn =
        column.item(fmt::format("as drawn: {}", percent(answer.nominal.utilisation, 3)), indent) - SheetPoint(4, 0);
    add_line(sheet, {drawn - SheetPoint(0, 11), drawn + SheetPoint(0, 11)}, {2, ink, {6, 5}});
    const SheetPoint passes = column.item("no more than is allowed", indent) - SheetPoint(4, 0);
    add_box(sheet, {passes.x() - 10, passes.y() - 10, passes.x() + 10, passes.y() + 10}, passing_colour);
    column.gap();
    column.item("Each tolerance alone,");
    column.item("all other values as drawn.");
}

}  // namespace

Sheet tolerance_sheet(const ToleranceAnswer& answer, const std::string& case_file, double accuracy_pct,
                      const TextWidth& width)
{
    std::vector<const ToleranceEffect*> rows = by_change(answer);
    EXPECTS(is_judged(answer.nominal) && !rows.empty());
    const std::size_t n_all = rows.size();
    rows.resize(std::min(n_all, most_rows));
    Sheet sheet;
    const Axis x = utilisation_axis(rows, answer.nominal.utilisation);
    add_field(sheet, x);
    const double drawn = x.at(answer.nominal.utilisation);
    const double step = std::min(bars.height() / static_cast<double>(rows.size()), 160.0);
    add_line(sheet, {{drawn, bars.bottom}, {drawn, bars.top}}, {2, ink, {6, 5}});
    for (std::size_t i = 0; i < rows.size(); ++i)
        add_row(sheet, *rows[i], x, bars.top - (static_cast<double>(i) + 0.5) * step, width);
    add_frame(sheet, bars, {1.5, ink, {}});
    std::vector<Tick> ticks;
    for (const double value : round_values(x)) ticks.push_back({value, percent(value, 4)});
    add_x_ticks(sheet, x, ticks, width);
    sheet.text.push_back({"utilisation of what is allowed",
                          {(bars.left + bars.right) / 2, bars.bottom - 68},
                          20,
                          Weight::bold,
                          ink,
                          Align::centre});
    add_signs(sheet, answer, width);
    const std::string foot =
        n_all > rows.size() ? fmt::format(" {} of {} tolerances are drawn.", rows.size(), n_all) : "";
    add_chart_words(
        sheet,
        {"What each tolerance does", case_file, "", "",
         fmt::format("Solved to {:g} %; utilisation at the upper end of its error bar.{}", accuracy_pct, foot)},
        width);
    return sheet;
}

}  // namespace splicewright
