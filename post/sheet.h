// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <functional>
#include <string>
#include <vector>

#include "post/colour_map.h"

namespace splicewright
{

// A drawing sheet: flat shapes and texts over a rendered scene. Sheet units: x to the right and y up from the lower
// left corner, 1600 by 1000; the renderer multiplies by the picture's scale.
constexpr double sheet_width = 1600, sheet_height = 1000;

constexpr Colour paper{0.961, 0.957, 0.945}, ink{0.13, 0.14, 0.16}, soft_ink{0.36, 0.37, 0.39}, hair{0.62, 0.62, 0.60},
    white{1, 1, 1};

using SheetPoint = Eigen::Vector2d;

enum class Weight
{
    regular,
    bold,
};

enum class Align
{
    left,
    centre,
    right,
};

enum class Importance
{
    ordinary,
    governing,
};

struct Text
{
    std::string words;
    SheetPoint at{0, 0};  // on the middle line of the text
    double size = 20;     // height of the type in sheet units
    Weight weight = Weight::regular;
    Colour colour = ink;
    Align align = Align::left;
};

// Convex polygon of one colour.
struct Fill
{
    std::vector<SheetPoint> corner;
    Colour colour;
};

struct Sheet
{
    std::vector<Fill> fill;  // drawn in this order
    std::vector<Text> text;  // over the fills
};

struct NamedSheet
{
    std::string name;  // of its file, without ending
    Sheet sheet;
};

struct Box
{
    double left = 0, bottom = 0, right = 0, top = 0;
    [[nodiscard]] double width() const { return right - left; }
    [[nodiscard]] double height() const { return top - bottom; }
};

// Width of a text in sheet units.
using TextWidth = std::function<double(const std::string& words, double size, Weight weight)>;

// Room that a text takes, with the line height of its type.
Box box_of(const Text& text, const TextWidth& width);
bool overlap(const Box& one, const Box& other);

struct Stroke
{
    double width = 1.5;
    Colour colour = ink;
    std::vector<double> dash;  // lengths on, off, on, off; empty: solid
};

void add_line(Sheet& sheet, const std::vector<SheetPoint>& points, const Stroke& stroke);
void add_box(Sheet& sheet, const Box& box, const Colour& colour);
void add_frame(Sheet& sheet, const Box& box, const Stroke& stroke);
void add_disc(Sheet& sheet, const SheetPoint& centre, double radius, const Colour& colour);
void add_ring(Sheet& sheet, const SheetPoint& centre, double radius, const Stroke& stroke);
// A numbered balloon; filled with ink when it stands for the governing site.
constexpr double balloon_radius = 17;
void add_balloon(Sheet& sheet, const SheetPoint& centre, const std::string& number, Importance importance);

// The text without control characters and broken UTF-8; shortened with an ellipsis to fit.
std::string clean_text(const std::string& words);
std::string fitted(const std::string& words, double size, Weight weight, double room, const TextWidth& width);
// For a typeface of plain ASCII: "σ" as "sigma", "·" as "*".
std::string ascii_text(const std::string& words);

// The largest of 1, 2 or 5 times a power of ten that is at most `value`.
double round_below(double value);
// The smallest of 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8 times a power of ten that is at least `value`.
double round_above(double value);
// At most four digits, the typographic minus, no exponent for everyday sizes: "−48.0", "512".
std::string short_number(double value, int decimals);

}  // namespace splicewright
