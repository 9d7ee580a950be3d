// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/sheet_svg.h"

#include <fmt/format.h>

#include "cases/plain_text.h"
#include "post/colour_map.h"

namespace splicewright
{
namespace
{

std::string escaped(const std::string& words)
{
    return replaced(replaced(replaced(clean_text(words), "&", "&amp;"), "<", "&lt;"), ">", "&gt;");
}

const char* anchor_of(Align align)
{
    if (align == Align::left) return "start";
    return align == Align::centre ? "middle" : "end";
}

// Sheet units have y up, SVG has it down.
std::string polygon(const Fill& fill)
{
    std::string points;
    for (const SheetPoint& corner : fill.corner)
        points += fmt::format("{}{:.2f},{:.2f}", points.empty() ? "" : " ", corner.x(), sheet_height - corner.y());
    return fmt::format("<polygon points=\"{}\" fill=\"{}\"/>\n", points, hexadecimal(fill.colour));
}

// The middle of capitals and figures lies 0.36 of the type size above the base line in DejaVu Sans.
std::string text_element(const Text& text)
{
    return fmt::format(
        "<text x=\"{:.2f}\" y=\"{:.2f}\" font-size=\"{:g}\"{} fill=\"{}\" text-anchor=\"{}\">{}</text>\n", text.at.x(),
        sheet_height - text.at.y() + 0.36 * text.size, text.size,
        text.weight == Weight::bold ? " font-weight=\"bold\"" : "", hexadecimal(text.colour), anchor_of(text.align),
        escaped(text.words));
}

}  // namespace

std::string sheet_svg(const Sheet& sheet)
{
    std::string svg = fmt::format(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0:g}\" height=\"{1:g}\" viewBox=\"0 0 {0:g} {1:g}\">\n"
        "<rect width=\"100%\" height=\"100%\" fill=\"{2}\"/>\n<g shape-rendering=\"geometricPrecision\">\n",
        sheet_width, sheet_height, hexadecimal(paper));
    for (const Fill& fill : sheet.fill) svg += polygon(fill);
    svg += "</g>\n<g font-family=\"'DejaVu Sans', sans-serif\">\n";
    for (const Text& text : sheet.text) svg += text_element(text);
    return svg + "</g>\n</svg>\n";
}

}  // namespace splicewright
