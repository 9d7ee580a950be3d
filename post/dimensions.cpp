// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/dimensions.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "post/label_layout.h"

namespace splicewright
{
namespace
{

constexpr double mm_per_inch = 25.4;
constexpr double clear_of_text = 0.2;  // mm
constexpr double inch_size = 0.86;     // of the type of the millimetres

// In heights of the type.
constexpr double over_line = 0.8, beyond_line = 0.6, row_pitch = 3.5, lower_texts = 2.7, lower_row = 2.4,
                 label_gap = 3.4;

struct PlacedText
{
    double x = 0, width = 0;
    bool fits = true;  // between its arrows
};

std::string over_text(const LengthDimension& dimension)
{
    return dimension.what.empty() ? mm_text(dimension.mm) : dimension.what + " " + mm_text(dimension.mm);
}

double text_width(const LengthDimension& dimension, double text)
{
    return std::max(draft_text_width(over_text(dimension), text, Weight::regular),
                    draft_text_width(inch_text(dimension.mm), inch_size * text, Weight::regular));
}

void add_number(Draft& draft, const LengthDimension& dimension, const SheetPoint& middle, double text)
{
    draft.text.push_back({over_text(dimension), middle + SheetPoint(0, over_line * text), text});
    draft.text.push_back({inch_text(dimension.mm), middle - SheetPoint(0, over_line * text), inch_size * text});
}

void add_line_with_ends(Draft& draft, const LengthDimension& dimension, double row_y, double text)
{
    const SheetPoint from(dimension.from, row_y), to(dimension.to, row_y);
    draft.line.push_back({{from, to}, Pen::thin});
    if (to.x() - from.x() > 3.4 * text)
    {
        add_arrow(draft, from, {-1, 0}, 1.1 * text);
        add_arrow(draft, to, {1, 0}, 1.1 * text);
        return;
    }
    const SheetPoint slant(0.35 * text, 0.35 * text);
    for (const SheetPoint& end : {from, to}) draft.line.push_back({{end - slant, end + slant}, Pen::outline});
}

void add_extension(Draft& draft, double x, double from_y, double row_y, double text)
{
    draft.line.push_back({{{x, from_y - 0.3 * text}, {x, row_y - beyond_line * text}}, Pen::thin});
}

// Numbers that stand under the row, pushed apart.
void add_lower_numbers(Draft& draft, const std::vector<LengthDimension>& row, double row_y, double text)
{
    std::vector<double> wish, step;
    for (std::size_t i = 0; i < row.size(); ++i)
    {
        wish.push_back((row[i].from + row[i].to) / 2);
        if (i > 0) step.push_back((text_width(row[i - 1], text) + text_width(row[i], text)) / 2 + 0.8 * text);
    }
    const std::vector<double> x = spaced(wish, step, -1e6, 1e6);
    for (std::size_t i = 0; i < row.size(); ++i)
    {
        const SheetPoint middle(x[i], row_y - lower_texts * text);
        add_number(draft, row[i], middle, text);
        draft.line.push_back({{{wish[i], row_y}, {x[i], middle.y() + 1.5 * text}}, Pen::thin});
    }
}

Draft over_and_under(const std::string& over, const std::string& under, double width, double text)
{
    Draft drawn;
    drawn.line.push_back({{{0, 0}, {width, 0}}, Pen::thin});
    drawn.text.push_back({over, {width / 2, over_line * text}, text});
    if (!under.empty()) drawn.text.push_back({under, {width / 2, -over_line * text}, inch_size * text});
    return drawn;
}

// Line, dashed line and sizes of a weld symbol whose sign takes `sign_width` behind the size.
// `behind`: what stands right of the sign.
RailLabel symbol_label(const SheetPoint& target, const std::string& over, const std::string& under, double sign_width,
                       double text, const std::string& behind = "")
{
    RailLabel label;
    label.target = target;
    label.all_round = behind.empty();
    const double size = draft_text_width(over, text, Weight::regular),
                 inches = draft_text_width(under, inch_size * text, Weight::regular);
    const double after = behind.empty() ? 0 : draft_text_width(behind, text, Weight::regular) + 0.5 * text;
    label.width = std::max(1.2 * text + size + 0.5 * text + sign_width + after + 1.2 * text, inches + 1.6 * text);
    label.drawn.line.push_back({{{0, 0}, {label.width, 0}}, Pen::thin});
    label.drawn.line.push_back({{{0.8 * text, -0.4 * text}, {label.width - 0.8 * text, -0.4 * text}}, Pen::reference});
    if (!over.empty()) label.drawn.text.push_back({over, {1.2 * text, over_line * text}, text, Align::left});
    if (!behind.empty())
        label.drawn.text.push_back(
            {behind, {1.2 * text + size + text + sign_width, over_line * text}, text, Align::left});
    if (!under.empty())
        label.drawn.text.push_back({under, {label.width / 2, -1.15 * text}, inch_size * text, Align::centre});
    return label;
}

// Where the sign of a weld symbol begins.
double sign_start(const std::string& over, double text)
{
    return 1.2 * text + draft_text_width(over, text, Weight::regular) + (over.empty() ? 0 : 0.5 * text);
}

double gap_between(const RailLabel& one, const RailLabel& other, double text)
{
    return (one.width + other.width) / 2 + label_gap * text;
}

void add_leader(Draft& draft, const RailLabel& label, double left, double y, double text)
{
    const double middle = left + label.width / 2, stub = 1.2 * text;
    const bool from_left = label.target.x() < middle;
    const SheetPoint end(from_left ? left : left + label.width, y);
    const SheetPoint knee = end + SheetPoint(from_left ? -stub : stub, 0);
    std::vector<SheetPoint> points{end, knee};
    // Where a slanted leader would run under its own words or its neighbour's it goes down first.
    const double down = label.target.y() < y ? -1 : 1, drop = 2.4 * text;
    const double fall = std::max(std::abs(label.target.y() - y), 1e-9);
    const double aside = (label.target.x() - knee.x()) * std::min(1.0, drop / fall) * (from_left ? -1 : 1);
    if (aside < 0 || aside > 0.4 * text) points.emplace_back(knee + SheetPoint(0, down * drop));
    points.push_back(label.target);
    draft.line.push_back({points, Pen::thin});
    add_arrow(draft, label.target, label.target - points[points.size() - 2], 1.1 * text);
    if (label.all_round) draft.circle.push_back({end, 0.45 * text});
}

}  // namespace

std::string mm_text(double mm) { return coordinate(mm); }

std::string fine_inch_text(double mm) { return fmt::format("[{:.4f}]", mm / mm_per_inch); }

std::string inch_text(double mm)
{
    const double inches = mm / mm_per_inch;
    return fmt::format("[{:.{}f}]", inches, std::abs(inches) < 0.1 ? 4 : 3);
}

double add_length_row(Draft& draft, std::vector<LengthDimension> row, double row_y, double text)
{
    std::sort(row.begin(), row.end(), [](const auto& a, const auto& b) { return a.from + a.to < b.from + b.to; });
    std::vector<LengthDimension> lower;
    for (const LengthDimension& dimension : row)
    {
        add_extension(draft, dimension.from, dimension.from_y, row_y, text);
        add_extension(draft, dimension.to, dimension.to_y, row_y, text);
        add_line_with_ends(draft, dimension, row_y, text);
        const bool fits = text_width(dimension, text) + 1.2 * text < dimension.to - dimension.from;
        if (fits) add_number(draft, dimension, {(dimension.from + dimension.to) / 2, row_y}, text);
        else lower.push_back(dimension);
    }
    add_lower_numbers(draft, lower, row_y, text);
    return row_y - (row_pitch + (lower.empty() ? 0 : lower_row)) * text;
}

void add_diameter(Draft& draft, const DiameterDimension& diameter, double text)
{
    const double x = diameter.x, outward = x < diameter.from_x ? -1 : 1;
    for (const double y : {-diameter.height, diameter.height})
    {
        draft.line.push_back(
            {{{diameter.from_x + outward * 0.3 * text, y}, {x + outward * beyond_line * text, y}}, Pen::thin});
        add_arrow(draft, {x, y}, {0, y}, 1.1 * text);
    }
    draft.line.push_back({{{x, -diameter.height}, {x, diameter.height}}, Pen::thin});
    draft.text.push_back(
        {"Ø" + mm_text(diameter.mm), {x - over_line * text, 0}, text, Align::centre, Weight::regular, true});
    draft.text.push_back(
        {inch_text(diameter.mm), {x + over_line * text, 0}, inch_size * text, Align::centre, Weight::regular, true});
}

double rail_width(const std::vector<RailLabel>& labels, double text)
{
    double width = 2.4 * text;
    for (const RailLabel& label : labels) width += label.width + label_gap * text;
    return width;
}

void add_rail(Draft& draft, std::vector<RailLabel> labels, const Rail& rail, double text)
{
    if (labels.empty()) return;
    std::stable_sort(labels.begin(), labels.end(),
                     [](const RailLabel& a, const RailLabel& b) { return a.target.x() < b.target.x(); });
    std::vector<double> wish, step;
    for (std::size_t i = 0; i < labels.size(); ++i)
    {
        const double lean = labels[i].width / 2 + 2.4 * text;
        wish.push_back(labels[i].target.x() + (labels[i].target.x() <= rail.middle ? -lean : lean));
        if (i > 0) step.push_back(gap_between(labels[i - 1], labels[i], text));
    }
    const std::vector<double> x = spaced(wish, step, rail.left + labels.front().width / 2 + 1.2 * text,
                                         rail.right - labels.back().width / 2 - 1.2 * text);
    for (std::size_t i = 0; i < labels.size(); ++i)
    {
        const double left = x[i] - labels[i].width / 2;
        append(draft, moved(labels[i].drawn, {left, rail.y}));
        add_leader(draft, labels[i], left, rail.y, text);
    }
}

RailLabel text_label(const SheetPoint& target, const std::string& over, const std::string& under, double text)
{
    RailLabel label;
    label.target = target;
    label.width = std::max(draft_text_width(over, text, Weight::regular),
                           draft_text_width(under, inch_size * text, Weight::regular)) +
                  0.6 * text;
    label.drawn = over_and_under(over, under, label.width, text);
    return label;
}

RailLabel fillet_label(const SheetPoint& target, const FilletSymbol& symbol, double text)
{
    const double leg_on_bar = symbol.leg_on_bar, leg_on_sleeve = symbol.leg_on_sleeve;
    const bool equal = std::abs(leg_on_bar - leg_on_sleeve) < 1e-6;
    const std::string over =
        equal ? "z" + mm_text(leg_on_bar) : "z" + mm_text(leg_on_bar) + "×" + mm_text(leg_on_sleeve);
    std::string under = equal ? inch_text(leg_on_bar) : inch_text(leg_on_bar) + "×" + inch_text(leg_on_sleeve);
    if (symbol.length) under += " × " + inch_text(*symbol.length);
    const double side = 1.5 * text;
    RailLabel label = symbol_label(target, over, under, side, text, symbol.length ? mm_text(*symbol.length) : "");
    const double x = sign_start(over, text);
    label.drawn.line.push_back({{{x, 0}, {x, side}, {x + side, 0}}, Pen::outline});
    return label;
}

RailLabel plug_label(const SheetPoint& target, const PlugSymbol& symbol, double text)
{
    const std::string over = fmt::format("{}× Ø{}", symbol.count, mm_text(symbol.diameter));
    const std::string behind = symbol.depth ? mm_text(*symbol.depth) + " deep" : "plug";
    const double width = 1.8 * text, height = 1.1 * text;
    RailLabel label = symbol_label(target, over, inch_text(symbol.diameter), width, text, behind);
    const double x = sign_start(over, text);
    label.drawn.line.push_back({{{x, 0}, {x, height}, {x + width, height}, {x + width, 0}}, Pen::outline});
    return label;
}

RailLabel butt_label(const SheetPoint& target, const ButtSymbol& symbol, double text)
{
    const std::string over = symbol.full ? "" : "s" + mm_text(symbol.depth);
    const std::string under = symbol.full ? "" : inch_text(symbol.depth);
    const double width = 1.6 * text, height = 1.5 * text, stem = symbol.root_face ? 0.6 * text : 0;
    RailLabel label = symbol_label(target, over, under, width, text);
    const double x = sign_start(over, text) + width / 2;
    label.drawn.line.push_back({{{x - width / 2, height}, {x, stem}, {x + width / 2, height}}, Pen::outline});
    if (stem > 0) label.drawn.line.push_back({{{x, stem}, {x, 0}}, Pen::outline});
    // Ground flush: the sleeve goes over it.
    label.drawn.line.push_back(
        {{{x - 0.75 * width, height + 0.35 * text}, {x + 0.75 * width, height + 0.35 * text}}, Pen::outline});
    return label;
}

void add_balloon(Draft& draft, const SheetPoint& centre, const std::string& number, double text)
{
    draft.circle.push_back({centre, 1.05 * text});
    draft.text.push_back({number, centre, text, Align::centre, Weight::bold});
}

void clear_texts(Draft& draft)
{
    std::vector<DraftLine> kept;
    for (const DraftLine& line : draft.line)
    {
        const bool upright = line.pen == Pen::thin && line.points.size() == 2 &&
                             std::abs(line.points[0].x() - line.points[1].x()) < 1e-9;
        if (!upright)
        {
            kept.push_back(line);
            continue;
        }
        const double x = line.points[0].x();
        double bottom = std::min(line.points[0].y(), line.points[1].y());
        const double top = std::max(line.points[0].y(), line.points[1].y());
        std::vector<Box> crossed;
        for (const DraftText& text : draft.text)
        {
            Box box = box_of(text);
            box.bottom -= 0.45 * text.size;
            box.top += 0.45 * text.size;
            if (x > box.left - clear_of_text && x < box.right + clear_of_text && box.bottom < top && box.top > bottom)
                crossed.push_back(box);
        }
        std::sort(crossed.begin(), crossed.end(), [](const Box& a, const Box& b) { return a.bottom < b.bottom; });
        for (const Box& box : crossed)
        {
            if (box.bottom > bottom) kept.push_back({{{x, bottom}, {x, box.bottom}}, Pen::thin});
            bottom = std::max(bottom, box.top);
        }
        if (top > bottom) kept.push_back({{{x, bottom}, {x, top}}, Pen::thin});
    }
    draft.line = std::move(kept);
}

void add_break_line(Draft& draft, double x, double bottom, double top, double text)
{
    std::vector<SheetPoint> wave;
    constexpr int n = 24;
    const double low = bottom - 0.8 * text, high = top + 0.8 * text;
    for (int i = 0; i <= n; ++i)
        wave.emplace_back(x + 0.3 * text * std::sin(4 * std::numbers::pi * i / n), low + (high - low) * i / n);
    draft.line.push_back({wave, Pen::thin});
}

}  // namespace splicewright
