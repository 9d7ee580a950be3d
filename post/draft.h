// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/markup.h"
#include "post/sheet.h"

namespace splicewright
{

// A technical drawing before it becomes SVG: x to the right and y up, in millimetres of paper.

enum class Pen
{
    outline,    // visible edges
    thin,       // dimension lines, extension lines, leaders
    hatch,      // of a cut part
    centre,     // chain line of an axis
    hidden,     // dashes: edges behind the metal
    reference,  // dashes of the second reference line of a weld symbol
};

struct DraftLine
{
    std::vector<SheetPoint> points;
    Pen pen = Pen::thin;
};

// A flat shape: arrow heads are ink, weld metal in section is grey.
struct DraftFill
{
    std::vector<SheetPoint> corner;
    Colour colour = ink;
};

struct DraftCircle
{
    SheetPoint centre{0, 0};
    double radius = 1;
};

struct DraftText
{
    std::string words;
    SheetPoint at{0, 0};  // on the middle line of the text
    double size = 2.5;    // height of the type, mm
    Align align = Align::centre;
    Weight weight = Weight::regular;
    bool upright = false;    // reads from below upward; left then is the lower end
    bool keep_width = true;  // drawn exactly as wide as planned whatever the font
};

struct Draft
{
    std::vector<DraftFill> fill;
    std::vector<DraftLine> hatch, line;
    std::vector<DraftCircle> circle;
    std::vector<DraftText> text;
};

// Width of a text in a drawing: advance widths of DejaVu Sans, which Verdana shares; other letters a full em.
double draft_text_width(const std::string& words, double size, Weight weight);
Box box_of(const DraftText& text);
Box extent(const Draft& draft);

Draft moved(Draft draft, const SheetPoint& by);
void append(Draft& draft, const Draft& more);

// Arrow head with its point at `tip`, flying in the direction of `toward`.
void add_arrow(Draft& draft, const SheetPoint& tip, const SheetPoint& toward, double length);

// Lines across a shape (its corners in order, not crossing itself) at an angle to the x axis and a spacing; lines of
// two shapes with the same angle and spacing meet.
void add_hatch(Draft& draft, const std::vector<SheetPoint>& corner, double angle_rad, double spacing);

// A closed SVG document of that paper size, one user unit to the millimetre; `title` and `description` are read aloud.
struct DraftWords
{
    std::string id;  // of the elements that hold them, unique in a page
    std::string title, description;
};
enum class DraftSize
{
    true_to_scale,  // prints at its paper size
    as_wide_as_the_page,
};
Markup svg_of(const Draft& draft, const Box& paper, const DraftWords& about, DraftSize size);

}  // namespace splicewright
