// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "post/dimensions.h"
#include "post/drawing_views.h"

namespace splicewright
{
namespace
{

constexpr Colour weld_grey{0.62, 0.64, 0.66};
constexpr double degree = std::numbers::pi / 180;

// One end of the sleeve, seen from the right: angles from the right upward.
struct SleeveEnd
{
    const Case& asked;
    Side side;
    double scale = 1, text = 2.5;
    SheetPoint centre{0, 0};
    [[nodiscard]] double bar() const { return asked.bar[index(side)]->sections.front().diameter.value() / 2; }
    [[nodiscard]] double outer() const { return asked.sleeve->outer_diameter.value() / 2; }
    [[nodiscard]] SheetPoint at(double radius, double angle) const
    {
        return centre + scale * radius * SheetPoint(std::cos(angle), std::sin(angle));
    }
};

std::vector<SheetPoint> arc(const SleeveEnd& end, double radius, double from, double extent)
{
    const int n = std::max(2, static_cast<int>(std::ceil(extent / (4 * degree))));
    std::vector<SheetPoint> points;
    for (int i = 0; i <= n; ++i) points.push_back(end.at(radius, from + extent * i / n));
    return points;
}

std::string angle_text(double rad)
{
    const double turned = std::fmod(rad / degree + 720, 360);
    return fmt::format("{:.4g}°", turned > 359.999 ? 0.0 : turned);
}

void add_weld(Draft& draft, const SleeveEnd& end)
{
    const SleeveWeld& weld = end.asked.sleeve->weld;
    const double from = weld.start[index(end.side)].value(), extent = weld.coverage.value();
    const double high = end.bar() + weld.leg_on_sleeve.value();
    const std::vector<SheetPoint> inner = arc(end, end.bar(), from, extent), outer = arc(end, high, from, extent);
    for (std::size_t i = 0; i + 1 < inner.size(); ++i)
        draft.fill.push_back({{inner[i], inner[i + 1], outer[i + 1], outer[i]}, weld_grey});
    draft.line.push_back({outer, Pen::thin});
    if (weld.goes_all_round()) return;
    for (const double angle : {from, from + extent})
    {
        draft.line.push_back({{end.at(end.bar(), angle), end.at(high, angle)}, Pen::outline});
        draft.line.push_back({{end.at(high, angle), end.at(end.outer(), angle) +
                                                        1.2 * end.text * SheetPoint(std::cos(angle), std::sin(angle))},
                              Pen::thin});
        const double away = 2.1 * end.text;
        draft.text.push_back(
            {angle_text(angle),
             end.at(end.outer(), angle) + SheetPoint(1.5 * away * std::cos(angle), away * std::sin(angle)), end.text});
    }
}

void add_plugs(Draft& draft, const SleeveEnd& end)
{
    for (const PlugRing& ring : end.asked.sleeve->plugs)
    {
        if ((ring.at.value() < 0) != (end.side == Side::left)) continue;
        for (int i = 0; i < ring.count; ++i)
        {
            const double angle = ring.start.value() + 2 * std::numbers::pi * i / ring.count;
            const SheetPoint aside =
                end.scale * ring.diameter.value() / 2 * SheetPoint(-std::sin(angle), std::cos(angle));
            for (const double sign : {-1.0, 1.0})
                draft.line.push_back(
                    {{end.at(end.bar(), angle) + sign * aside, end.at(end.outer(), angle) + sign * aside},
                     Pen::hidden});
        }
    }
}

std::vector<std::string> words_of(const SleeveEnd& end)
{
    const SleeveWeld& weld = end.asked.sleeve->weld;
    const double from = weld.start[index(end.side)].value();
    std::vector<std::string> words{fmt::format("{} end", end.side == Side::left ? "Left" : "Right")};
    if (weld.goes_all_round()) words.emplace_back("weld all round");
    else
        words.push_back(fmt::format("weld over {}, {} to {}", angle_text(weld.coverage.value()), angle_text(from),
                                    angle_text(from + weld.coverage.value())));
    for (const PlugRing& ring : end.asked.sleeve->plugs)
        if ((ring.at.value() < 0) == (end.side == Side::left))
            words.push_back(
                fmt::format("{}× Ø{} at z {}: {}", ring.count, mm_text(ring.diameter.value()), mm_text(ring.at.value()),
                            ring.count == 1 ? angle_text(ring.start.value())
                                            : fmt::format("{}, then each {}", angle_text(ring.start.value()),
                                                          angle_text(2 * std::numbers::pi / ring.count))));
    return words;
}

void add_end(Draft& draft, const SleeveEnd& end)
{
    add_weld(draft, end);
    for (const double radius : {end.bar(), end.outer()})
        draft.line.push_back({arc(end, radius, 0, 2 * std::numbers::pi), Pen::outline});
    add_plugs(draft, end);
    const double reach = end.scale * end.outer() + 0.9 * end.text;
    draft.line.push_back({{end.centre - SheetPoint(reach, 0), end.centre + SheetPoint(reach, 0)}, Pen::centre});
    draft.line.push_back({{end.centre - SheetPoint(0, reach), end.centre + SheetPoint(0, reach)}, Pen::centre});
    double y = end.centre.y() - end.scale * end.outer() - 5 * end.text;
    for (const std::string& words : words_of(end))
    {
        draft.text.push_back({words, {end.centre.x(), y}, end.text});
        y -= 1.7 * end.text;
    }
}

double words_width(const SleeveEnd& end)
{
    double width = 0;
    for (const std::string& words : words_of(end))
        width = std::max(width, draft_text_width(words, end.text, Weight::regular));
    return width;
}

}  // namespace

bool has_end_view(const Case& asked)
{
    return asked.sleeve && (!asked.sleeve->weld.goes_all_round() || !asked.sleeve->plugs.empty());
}

Draft end_view(const Case& asked, const DrawingScale& scale)
{
    EXPECTS(has_end_view(asked));
    Draft draft;
    SleeveEnd left{asked, Side::left, scale.paper_per_metal, scale.text},
        right{asked, Side::right, scale.paper_per_metal, scale.text};
    const double round = 2 * scale.paper_per_metal * left.outer() + 11 * scale.text;
    right.centre.x() = std::max(round, (words_width(left) + words_width(right)) / 2 + 2 * scale.text);
    add_end(draft, left);
    add_end(draft, right);
    draft.text.push_back({"seen from the right; 0° to the right in the plane of the lap, counted upward",
                          {right.centre.x() / 2, scale.paper_per_metal * left.outer() + 5 * scale.text},
                          scale.text});
    return draft;
}

}  // namespace splicewright
