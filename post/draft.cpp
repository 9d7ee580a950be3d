// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/draft.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

// Thousandths of an em, from ' ' to '~'.
constexpr std::array<int, 95> advance{318,  401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337,
                                      636,  636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531,
                                      1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787,
                                      603,  787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500,
                                      500,  613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612,
                                      635,  635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838};
constexpr double bold_over_regular = 1.12;

void widen(Box& box, const SheetPoint& point)
{
    box.left = std::min(box.left, point.x());
    box.right = std::max(box.right, point.x());
    box.bottom = std::min(box.bottom, point.y());
    box.top = std::max(box.top, point.y());
}

const char* class_of(Pen pen)
{
    switch (pen)
    {
        case Pen::outline: return "o";
        case Pen::hatch: return "h";
        case Pen::centre: return "c";
        case Pen::hidden: return "d";
        case Pen::reference: return "r";
        case Pen::thin: break;
    }
    return "t";
}

// Sheets are white whatever the page around them, as paper is.
constexpr const char* drawing_style =
    ".draft .p{fill:#fff}.draft .o,.draft .t,.draft .h,.draft .c,.draft .d,.draft .r{fill:none;stroke:#15181c;"
    "stroke-linejoin:round;stroke-linecap:round}"
    ".draft .o{stroke-width:.5}.draft .t{stroke-width:.2}.draft .h{stroke-width:.13}"
    ".draft .c{stroke-width:.2;stroke-dasharray:5 .8 .8 .8}.draft .d{stroke-width:.25;stroke-dasharray:1.8 .9}"
    ".draft .r{stroke-width:.2;stroke-dasharray:1.2 .7}.draft .b{fill:#fff;stroke:#15181c;stroke-width:.25}"
    ".draft text{font-family:'DejaVu Sans',Verdana,sans-serif;fill:#15181c;stroke:#fff;stroke-width:.7;"
    "paint-order:stroke;stroke-linejoin:round}.draft .w{font-weight:bold}";

std::string path_of(const std::vector<SheetPoint>& points, double top, bool closed)
{
    std::string path;
    for (const SheetPoint& point : points)
        path += std::string(path.empty() ? "M" : "L") + coordinate(point.x()) + " " + coordinate(top - point.y());
    return closed ? path + "Z" : path;
}

Markup text_element(const DraftText& text, double top)
{
    const char* anchor = text.align == Align::left ? "start" : text.align == Align::right ? "end" : "middle";
    constexpr double middle_over_base = 0.35;  // of the type's height
    Attributes attributes{{"font-size", coordinate(text.size)}, {"text-anchor", anchor}};
    if (text.weight == Weight::bold) attributes.push_back({"class", "w"});
    if (text.keep_width && !text.words.empty())
    {
        attributes.push_back({"textLength", coordinate(draft_text_width(text.words, text.size, text.weight))});
        attributes.push_back({"lengthAdjust", "spacingAndGlyphs"});
    }
    const std::string place = "translate(" + coordinate(text.at.x()) + " " + coordinate(top - text.at.y()) + ")";
    attributes.push_back({"transform", text.upright ? place + " rotate(-90)" : place});
    attributes.push_back({"y", coordinate(middle_over_base * text.size)});
    return element("text", attributes, words(text.words));
}

}  // namespace

double draft_text_width(const std::string& words, double size, Weight weight)
{
    double thousandths = 0;
    for (const char letter : words)
    {
        const auto code = static_cast<unsigned char>(letter);
        if (code >= 0x20 && code < 0x7F) thousandths += advance[code - 0x20U];
        else if ((code & 0xC0U) != 0x80U) thousandths += 838;
    }
    return thousandths / 1000 * size * (weight == Weight::bold ? bold_over_regular : 1);
}

Box box_of(const DraftText& text)
{
    const double wide = draft_text_width(text.words, text.size, text.weight), half = 0.55 * text.size;
    const double start = text.align == Align::left ? 0 : text.align == Align::right ? -wide : -wide / 2;
    if (text.upright) return {text.at.x() - half, text.at.y() + start, text.at.x() + half, text.at.y() + start + wide};
    return {text.at.x() + start, text.at.y() - half, text.at.x() + start + wide, text.at.y() + half};
}

Box extent(const Draft& draft)
{
    Box box{1e9, 1e9, -1e9, -1e9};
    for (const DraftFill& fill : draft.fill)
        for (const SheetPoint& point : fill.corner) widen(box, point);
    for (const DraftLine& line : draft.line)
        for (const SheetPoint& point : line.points) widen(box, point);
    for (const DraftCircle& circle : draft.circle)
    {
        widen(box, circle.centre - SheetPoint(circle.radius, circle.radius));
        widen(box, circle.centre + SheetPoint(circle.radius, circle.radius));
    }
    for (const DraftText& text : draft.text)
    {
        const Box room = box_of(text);
        widen(box, {room.left, room.bottom});
        widen(box, {room.right, room.top});
    }
    return box;
}

Draft moved(Draft draft, const SheetPoint& by)
{
    for (DraftFill& fill : draft.fill)
        for (SheetPoint& point : fill.corner) point += by;
    for (auto* lines : {&draft.hatch, &draft.line})
        for (DraftLine& line : *lines)
            for (SheetPoint& point : line.points) point += by;
    for (DraftCircle& circle : draft.circle) circle.centre += by;
    for (DraftText& text : draft.text) text.at += by;
    return draft;
}

void append(Draft& draft, const Draft& more)
{
    draft.fill.insert(draft.fill.end(), more.fill.begin(), more.fill.end());
    draft.hatch.insert(draft.hatch.end(), more.hatch.begin(), more.hatch.end());
    draft.line.insert(draft.line.end(), more.line.begin(), more.line.end());
    draft.circle.insert(draft.circle.end(), more.circle.begin(), more.circle.end());
    draft.text.insert(draft.text.end(), more.text.begin(), more.text.end());
}

void add_arrow(Draft& draft, const SheetPoint& tip, const SheetPoint& toward, double length)
{
    const SheetPoint along = toward.normalized(), across(-along.y(), along.x());
    const SheetPoint tail = tip - length * along;
    draft.fill.push_back({{tip, tail + length / 6 * across, tail - length / 6 * across}, ink});
}

void add_hatch(Draft& draft, const std::vector<SheetPoint>& corner, double angle_rad, double spacing)
{
    EXPECTS(spacing > 0);
    const SheetPoint along(std::cos(angle_rad), std::sin(angle_rad)), across(-along.y(), along.x());
    double lowest = 1e9, highest = -1e9;
    for (const SheetPoint& point : corner)
    {
        lowest = std::min(lowest, point.dot(across));
        highest = std::max(highest, point.dot(across));
    }
    for (double level = std::ceil(lowest / spacing) * spacing + 0.37 * spacing; level < highest; level += spacing)
    {
        std::vector<double> crossing;
        for (std::size_t i = 0; i < corner.size(); ++i)
        {
            const SheetPoint& a = corner[i];
            const SheetPoint& b = corner[(i + 1) % corner.size()];
            const double from = a.dot(across) - level, to = b.dot(across) - level;
            if ((from < 0) != (to < 0)) crossing.push_back((a + from / (from - to) * (b - a)).dot(along));
        }
        std::sort(crossing.begin(), crossing.end());
        for (std::size_t i = 0; i + 1 < crossing.size(); i += 2)
            draft.hatch.push_back(
                {{crossing[i] * along + level * across, crossing[i + 1] * along + level * across}, Pen::hatch});
    }
}

Markup svg_of(const Draft& draft, const Box& paper, const DraftWords& about, DraftSize size)
{
    const double top = paper.top;
    Markup inside = element("title", {{"id", about.id + "-title"}}, words(about.title)) +
                    element("desc", {{"id", about.id + "-words"}}, words(about.description)) +
                    style_sheet(drawing_style);
    inside += element("rect",
                      {{"class", "p"},
                       {"x", coordinate(paper.left)},
                       {"y", "0"},
                       {"width", coordinate(paper.width())},
                       {"height", coordinate(paper.height())}},
                      {});
    std::string hatches;
    for (const DraftLine& line : draft.hatch) hatches += path_of(line.points, top, false);
    if (!hatches.empty()) inside += element("path", {{"class", "h"}, {"d", hatches}}, {});
    for (const DraftFill& fill : draft.fill)
        if (!(fill.colour == ink))
            inside += element("path", {{"d", path_of(fill.corner, top, true)}, {"fill", hexadecimal(fill.colour)}}, {});
    for (const DraftLine& line : draft.line)
        inside += element("path", {{"class", class_of(line.pen)}, {"d", path_of(line.points, top, false)}}, {});
    for (const DraftFill& fill : draft.fill)
        if (fill.colour == ink)
            inside += element("path", {{"d", path_of(fill.corner, top, true)}, {"fill", hexadecimal(fill.colour)}}, {});
    for (const DraftCircle& circle : draft.circle)
        inside += element("circle",
                          {{"class", "b"},
                           {"cx", coordinate(circle.centre.x())},
                           {"cy", coordinate(top - circle.centre.y())},
                           {"r", coordinate(circle.radius)}},
                          {});
    for (const DraftText& text : draft.text) inside += text_element(text, top);
    Attributes attributes{
        {"xmlns", "http://www.w3.org/2000/svg"},
        {"class", "draft"},
        {"role", "img"},
        {"aria-labelledby", about.id + "-title " + about.id + "-words"},
        {"viewBox", coordinate(paper.left) + " 0 " + coordinate(paper.width()) + " " + coordinate(paper.height())}};
    if (size == DraftSize::true_to_scale)
    {
        attributes.push_back({"width", coordinate(paper.width()) + "mm"});
        attributes.push_back({"height", coordinate(paper.height()) + "mm"});
    }
    return element("svg", attributes, inside);
}

}  // namespace splicewright
