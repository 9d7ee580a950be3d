// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/sheet.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <numbers>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

std::vector<SheetPoint> circle(const SheetPoint& centre, double radius)
{
    const int n = std::max(16, static_cast<int>(3 * std::sqrt(radius) * 3));
    std::vector<SheetPoint> points;
    for (int i = 0; i < n; ++i)
    {
        const double angle = 2 * std::numbers::pi * i / n;
        points.emplace_back(centre + radius * SheetPoint(std::cos(angle), std::sin(angle)));
    }
    return points;
}

void add_segment(Sheet& sheet, const SheetPoint& from, const SheetPoint& to, const Stroke& stroke)
{
    const SheetPoint along = to - from;
    if (along.norm() < 1e-9) return;
    const SheetPoint aside = SheetPoint(-along.y(), along.x()) * (stroke.width / 2 / along.norm());
    sheet.fill.push_back({{from + aside, from - aside, to - aside, to + aside}, stroke.colour});
}

// The pieces of a line that are on, for a pattern that starts on.
std::vector<std::vector<SheetPoint>> dashes(const std::vector<SheetPoint>& points, const std::vector<double>& pattern)
{
    std::vector<std::vector<SheetPoint>> pieces{{points.front()}};
    std::size_t phase = 0;
    double left = pattern[0];
    for (std::size_t i = 1; i < points.size(); ++i)
    {
        SheetPoint here = points[i - 1];
        double length = (points[i] - here).norm();
        while (length > left)
        {
            here += (points[i] - here) * (left / length);
            length -= left;
            if (phase % 2 == 0) pieces.back().push_back(here);
            phase = (phase + 1) % pattern.size();
            left = pattern[phase];
            if (phase % 2 == 0) pieces.push_back({here});
        }
        left -= length;
        if (phase % 2 == 0) pieces.back().push_back(points[i]);
    }
    return pieces;
}

// Length in bytes of the UTF-8 character that starts at `i`; 0 when it is broken. Source: [RFC3629] section 4.
std::size_t utf8_length(const std::string& words, std::size_t i)
{
    const auto byte = [&](std::size_t k) { return k < words.size() ? static_cast<unsigned char>(words[k]) : 0U; };
    const unsigned first = byte(i);
    const std::size_t length = first < 0x80                    ? 1
                               : first >= 0xC2 && first < 0xE0 ? 2
                               : (first & 0xF0) == 0xE0        ? 3
                               : first >= 0xF0 && first < 0xF5 ? 4
                                                               : 0;
    for (std::size_t k = 1; k < length; ++k)
        if ((byte(i + k) & 0xC0) != 0x80) return 0;
    const unsigned second = byte(i + 1);
    if ((first == 0xE0 && second < 0xA0) || (first == 0xED && second > 0x9F)) return 0;
    if ((first == 0xF0 && second < 0x90) || (first == 0xF4 && second > 0x8F)) return 0;
    return length;
}

}  // namespace

Box box_of(const Text& text, const TextWidth& width)
{
    const double wide = width(text.words, text.size, text.weight);
    const double left = text.align == Align::left    ? text.at.x()
                        : text.align == Align::right ? text.at.x() - wide
                                                     : text.at.x() - wide / 2;
    return {left, text.at.y() - 0.6 * text.size, left + wide, text.at.y() + 0.6 * text.size};
}

bool overlap(const Box& one, const Box& other)
{
    return one.left < other.right && other.left < one.right && one.bottom < other.top && other.bottom < one.top;
}

void add_line(Sheet& sheet, const std::vector<SheetPoint>& points, const Stroke& stroke)
{
    if (points.size() < 2) return;
    if (!stroke.dash.empty())
    {
        for (const auto& piece : dashes(points, stroke.dash)) add_line(sheet, piece, {stroke.width, stroke.colour, {}});
        return;
    }
    for (std::size_t i = 1; i < points.size(); ++i) add_segment(sheet, points[i - 1], points[i], stroke);
    if (stroke.width < 3) return;
    for (std::size_t i = 1; i + 1 < points.size(); ++i)
        sheet.fill.push_back({circle(points[i], stroke.width / 2), stroke.colour});
}

void add_box(Sheet& sheet, const Box& box, const Colour& colour)
{
    sheet.fill.push_back(
        {{{box.left, box.bottom}, {box.right, box.bottom}, {box.right, box.top}, {box.left, box.top}}, colour});
}

void add_frame(Sheet& sheet, const Box& box, const Stroke& stroke)
{
    const double w = stroke.width / 2;
    add_line(sheet, {{box.left - w, box.bottom}, {box.right + w, box.bottom}}, stroke);
    add_line(sheet, {{box.left - w, box.top}, {box.right + w, box.top}}, stroke);
    add_line(sheet, {{box.left, box.bottom}, {box.left, box.top}}, stroke);
    add_line(sheet, {{box.right, box.bottom}, {box.right, box.top}}, stroke);
}

void add_disc(Sheet& sheet, const SheetPoint& centre, double radius, const Colour& colour)
{
    sheet.fill.push_back({circle(centre, radius), colour});
}

void add_ring(Sheet& sheet, const SheetPoint& centre, double radius, const Stroke& stroke)
{
    std::vector<SheetPoint> points = circle(centre, radius);
    points.push_back(points.front());
    for (std::size_t i = 1; i < points.size(); ++i) add_segment(sheet, points[i - 1], points[i], stroke);
}

void add_balloon(Sheet& sheet, const SheetPoint& centre, const std::string& number, Importance importance)
{
    const Colour inside = importance == Importance::governing ? ink : white;
    add_disc(sheet, centre, balloon_radius, ink);
    add_disc(sheet, centre, balloon_radius - 1.6, inside);
    sheet.text.push_back(
        {number, centre, 19, Weight::bold, importance == Importance::governing ? white : ink, Align::centre});
}

std::string clean_text(const std::string& words)
{
    std::string clean;
    for (std::size_t i = 0; i < words.size();)
    {
        const std::size_t length = utf8_length(words, i);
        const bool control = length == 1 && (static_cast<unsigned char>(words[i]) < 0x20 || words[i] == 0x7F);
        clean += length == 0 ? "?" : control ? " " : words.substr(i, length);
        i += std::max<std::size_t>(length, 1);
    }
    return clean;
}

std::string fitted(const std::string& words, double size, Weight weight, double room, const TextWidth& width)
{
    std::string text = clean_text(words);
    if (width(text, size, weight) <= room) return text;
    while (!text.empty() && width(text + "…", size, weight) > room)
    {
        while (!text.empty() && (static_cast<unsigned char>(text.back()) & 0xC0) == 0x80) text.pop_back();
        if (!text.empty()) text.pop_back();
    }
    return text + "…";
}

std::string ascii_text(const std::string& words)
{
    static constexpr std::array<std::array<const char*, 2>, 12> plain{{{"·", "*"},
                                                                       {"σ", "sigma"},
                                                                       {"τ", "tau"},
                                                                       {"θ", "theta"},
                                                                       {"−", "-"},
                                                                       {"–", "-"},
                                                                       {"°", " deg"},
                                                                       {"±", "+-"},
                                                                       {"×", "x"},
                                                                       {"…", "..."},
                                                                       {"ø", "dia "},
                                                                       {"⌀", "dia "}}};
    const std::string clean = clean_text(words);
    std::string text;
    for (std::size_t i = 0; i < clean.size();)
    {
        const std::size_t length = utf8_length(clean, i);
        const std::string character = clean.substr(i, length);
        std::string replacement = length == 1 ? character : "?";
        for (const auto& [special, ascii] : plain)
            if (character == special) replacement = ascii;
        text += replacement;
        i += length;
    }
    return text;
}

double round_below(double value)
{
    EXPECTS(value > 0);
    const double decade = std::pow(10, std::floor(std::log10(value)));
    for (const double digit : {5.0, 2.0})
        if (digit * decade <= value * (1 + 1e-12)) return digit * decade;
    return decade;
}

double round_above(double value)
{
    EXPECTS(value > 0);
    const double decade = std::pow(10, std::floor(std::log10(value)));
    for (const double digit : {1.0, 1.2, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0})
        if (digit * decade >= value * (1 - 1e-12)) return digit * decade;
    return 10 * decade;
}

std::string short_number(double value, int decimals)
{
    if (value != 0 && (std::abs(value) < 1e-3 || std::abs(value) >= 1e7)) return fmt::format("{:.3g}", value);
    std::string text = fmt::format("{:.{}f}", std::abs(value), decimals);
    const bool zero = text.find_first_not_of("0.") == std::string::npos;
    return value < 0 && !zero ? "−" + text : text;
}

}  // namespace splicewright
