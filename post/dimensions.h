// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "post/draft.h"

namespace splicewright
{

// Dimensions of a drawing, millimetres over the line and inches in brackets under it. Places are mm of paper, values
// mm of metal; `text` is the height of the type.

// In heights of the type: from the part to the first row under it, and to the rail over it.
constexpr double first_row = 3.4, rail_height = 5.6;

std::string mm_text(double mm);         // "28.4": at most three decimals
std::string inch_text(double mm);       // "[1.118]": three decimals, four below 0.1 in
std::string fine_inch_text(double mm);  // four decimals: of a fit

struct LengthDimension
{
    double from = 0, to = 0;      // x of the measured places
    double from_y = 0, to_y = 0;  // where their extension lines begin
    double mm = 0;
    std::string what = {};  // "half lap": stands before the number
};

// One row under the part, its line at `row_y`; numbers that do not fit between their arrows stand lower, with leaders.
// Gives the height of the next row's line.
double add_length_row(Draft& draft, std::vector<LengthDimension> row, double row_y, double text);

// A diameter measured upright at x, beside the part: from -height to height over the axis at y = 0; its extension lines
// begin at `from_x`.
struct DiameterDimension
{
    double x = 0, from_x = 0, height = 0, mm = 0;
};
void add_diameter(Draft& draft, const DiameterDimension& diameter, double text);

// A label on a rail beside the part, joined to its place by a leader. `drawn` has its line from (0, 0) to (width, 0).
struct RailLabel
{
    SheetPoint target{0, 0};
    Draft drawn;
    double width = 0;
    bool all_round = false;  // a circle where leader and line meet
};
struct Rail
{
    double y = 0;                // of the labels' lines
    double left = 0, right = 0;  // room along it
    double middle = 0;           // labels lean away from here
};
// Width of a rail that holds the labels.
double rail_width(const std::vector<RailLabel>& labels, double text);
// Labels keep the order of their places, and no two touch; expects a rail of at least rail_width().
void add_rail(Draft& draft, std::vector<RailLabel> labels, const Rail& rail, double text);

// Words over the line and words under it.
RailLabel text_label(const SheetPoint& target, const std::string& over, const std::string& under, double text);

// Symbols of welds on the arrow side, with the dashed line of the other side under the line; a size stands left of its
// symbol. Source: [ISO2553] system A, from memory: verify.
struct FilletSymbol
{
    double leg_on_bar = 0, leg_on_sleeve = 0;  // mm
    std::optional<double> length = {};         // mm, stands behind the sign; absent: all round
};
RailLabel fillet_label(const SheetPoint& target, const FilletSymbol& symbol, double text);
struct PlugSymbol
{
    int count = 1;
    double diameter = 0;               // mm
    std::optional<double> depth = {};  // mm of weld metal; absent: flush
};
RailLabel plug_label(const SheetPoint& target, const PlugSymbol& symbol, double text);
struct ButtSymbol
{
    bool full = true;        // fused through: no size
    double depth = 0;        // else the depth of fusion, mm
    bool root_face = false;  // a broad one: Y instead of V
};
RailLabel butt_label(const SheetPoint& target, const ButtSymbol& symbol, double text);

// A number in a circle.
void add_balloon(Draft& draft, const SheetPoint& centre, const std::string& number, double text);

// Thin upright lines are interrupted where they would cross a text.
void clear_texts(Draft& draft);

// A wavy line across a part that goes on.
void add_break_line(Draft& draft, double x, double bottom, double top, double text);

}  // namespace splicewright
