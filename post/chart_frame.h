// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/sheet.h"

namespace splicewright
{

// Parts that charts share: a field of values with two axes on a sheet, and a column of words to its right.
//
//     title
//     subtitle
//     y name   ┌──────────────────┐  column of
//         tick │      field       │  words
//         tick └──────────────────┘
//               tick   tick   tick
//                     x name
//     foot note
constexpr Box chart_field{150, 170, 1140, 850};
constexpr double column_left = 1185, column_right = 1560;

constexpr Colour passing_colour{0.886, 0.937, 0.902}, not_judged_colour{0.86, 0.86, 0.85};

// From values to sheet units.
struct Axis
{
    double low = 0, high = 1;  // values at its ends
    double from = 0, to = 1;   // sheet units there
    bool is_logarithmic = false;
    [[nodiscard]] double at(double value) const;
};

struct Tick
{
    double value = 0;
    std::string words;
};

struct ChartWords
{
    std::string title, subtitle, x_name, y_name, foot;
};

// Round values from end to end; 1, 2 and 5 of each decade on a logarithmic axis, decades alone when there are many.
std::vector<double> round_values(const Axis& axis);

void add_chart_words(Sheet& sheet, const ChartWords& words, const TextWidth& width);
// Ticks whose words would touch those before are left out; the first stays.
void add_x_ticks(Sheet& sheet, const Axis& axis, const std::vector<Tick>& ticks, const TextWidth& width);
// Words that are too long for the edge of the sheet are set smaller, then shortened.
void add_y_ticks(Sheet& sheet, const Axis& axis, const std::vector<Tick>& ticks, const TextWidth& width);

// Words from the top of the column downwards.
class Column
{
public:
    Column(Sheet& sheet, const TextWidth& width) : sheet_(&sheet), width_(&width) {}
    void heading(const std::string& words);
    // Broken at spaces, at most three lines; `indent` leaves room for a mark, whose middle comes back.
    SheetPoint item(const std::string& words, double indent = 0);
    void gap() { top_ -= 14; }
    [[nodiscard]] double room() const { return top_ - chart_field.bottom; }

private:
    Sheet* sheet_;
    const TextWidth* width_;
    double top_ = chart_field.top;
};

// A colour for each of n things that have an order, dark enough to be seen on white.
std::vector<Colour> ordered_colours(std::size_t n);

// A small numbered disc beside its point, joined to it.
constexpr double tag_radius = 12;
void add_tag(Sheet& sheet, const SheetPoint& centre, const std::string& number);

// Near each point, where tags touch neither each other nor, if it can be, any of the places to be kept free.
std::vector<SheetPoint> tag_places(const std::vector<SheetPoint>& points, const std::vector<SheetPoint>& keep_free,
                                   const Box& room);

}  // namespace splicewright
