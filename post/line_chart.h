// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/markup.h"
#include "post/sheet.h"

namespace splicewright
{

// A chart of curves and marks as SVG in the page's own ink; curves differ by their dashes and marks by their shapes,
// so that nothing is told by colour.

struct ChartCurve
{
    std::string name;
    std::vector<SheetPoint> points;
};

enum class ChartSign
{
    disc,
    square,
    cross,
};

struct ChartMarks
{
    std::string name;
    ChartSign sign = ChartSign::disc;
    std::vector<SheetPoint> points;
};

// An upright line with a word at its top.
struct ChartPlace
{
    double x = 0;
    std::string name;
};

struct LineChart
{
    std::string id;                  // unique in the page
    std::string title, description;  // read aloud
    std::string x_label, y_label;
    std::vector<ChartCurve> curves;  // at most four
    std::vector<ChartMarks> marks;
    std::vector<ChartPlace> places;  // in rising order
    double least_top = 0;            // the y axis reaches at least so far
};

Markup chart_svg(const LineChart& chart);

}  // namespace splicewright
