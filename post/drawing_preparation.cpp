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

constexpr double degree = std::numbers::pi / 180;

// Both bars as they are tacked; mm of metal.
//
//        \            /          bevelled down to `bevel`
//   left  |__      __|  right    root face between `root` and `bevel`, the gap between them
//         |  |    |  |
struct Preparation
{
    double radius[2] = {0, 0};  // [left, right]
    double inner = 0, bevel = 0;
    double gap = 0, slope = 0, lap = 0;
    double end = 0;  // how much of each bar is shown
};

Preparation preparation_of(const Case& asked)
{
    Preparation made;
    for (const Side side : both_sides)
        made.radius[index(side)] = asked.bar[index(side)]->sections.front().diameter.value() / 2;
    const double outer = (made.radius[0] + made.radius[1]) / 2;
    made.inner = asked.bar[0]->bore.value() / 2;
    const double root = asked.joint->penetration ? outer - asked.joint->penetration->value() : made.inner;
    made.bevel = std::min(root + asked.making->root_face.value(), outer);
    made.gap = asked.making->root_gap.value();
    made.slope = std::tan(asked.making->groove_angle.value() / 2);
    made.lap = asked.joint->half_lap.value();
    made.end = made.lap / 2 + made.gap / 2 + (outer - made.bevel) * made.slope + 1.1 * outer;
    return made;
}

// One end in the half above (upper) or below the axis, whose seam lies at `seam`.
std::vector<SheetPoint> end_of_bar(const Preparation& made, Side side, double seam, bool upper, double k)
{
    const double sign = side == Side::right ? 1 : -1, radius = made.radius[index(side)];
    const double face = seam + sign * made.gap / 2;
    const double edge = face + sign * std::max(0.0, radius - made.bevel) * made.slope;
    const std::vector<SheetPoint> corner{{sign * made.end, made.inner},
                                         {face, made.inner},
                                         {face, std::min(made.bevel, radius)},
                                         {edge, radius},
                                         {sign * made.end, radius}};
    std::vector<SheetPoint> paper;
    for (const SheetPoint& point : corner) paper.emplace_back(k * SheetPoint(point.x(), upper ? point.y() : -point.y()));
    return paper;
}

void add_ends(Draft& draft, const Preparation& made, double k, double text)
{
    for (const bool upper : {true, false})
        for (const Side side : both_sides)
        {
            const double seam = upper ? -made.lap / 2 : made.lap / 2;
            std::vector<SheetPoint> corner = end_of_bar(made, side, seam, upper, k);
            add_hatch(draft, corner, (side == Side::left ? 45 : 135) * degree, text);
            // Without the broken end, and without the axis where the bar goes on below it.
            std::vector<SheetPoint> line(corner.begin() + 1, corner.end());
            if (made.inner > 0) line.insert(line.begin(), corner.front());
            draft.line.push_back({line, Pen::outline});
        }
    if (made.lap > 0)
        draft.line.push_back(
            {{k * SheetPoint(-made.lap / 2 - made.gap / 2, 0), k * SheetPoint(made.lap / 2 + made.gap / 2, 0)},
             Pen::outline});
    draft.line.push_back(
        {{SheetPoint(-k * made.end - 2 * text, 0), SheetPoint(k * made.end + 2 * text, 0)}, Pen::centre});
    for (const Side side : both_sides)
    {
        const double x = (side == Side::right ? 1 : -1) * k * made.end, high = k * made.radius[index(side)];
        add_break_line(draft, x, -high, high, text);
        add_diameter(draft, {x + (side == Side::right ? 5.5 : -5.5) * text, x, high, 2 * made.radius[index(side)]},
                     text);
    }
}

}  // namespace

Draft preparation_view(const Case& asked, const DrawingScale& scale)
{
    EXPECTS(asked.joint && asked.making && asked.bar[0] && asked.bar[1]);
    const Preparation made = preparation_of(asked);
    const double k = scale.paper_per_metal, text = scale.text, top = std::max(made.radius[0], made.radius[1]);
    const double outer = (made.radius[0] + made.radius[1]) / 2, seam = -made.lap / 2, lower_seam = made.lap / 2;
    Draft draft;
    add_ends(draft, made, k, text);

    const auto at = [&](double z, double r) { return SheetPoint(k * z, k * r); };
    const double angle = asked.making->groove_angle.value() / degree, face = asked.making->root_face.value();
    const double deep = outer - made.bevel;
    std::vector<RailLabel> labels;
    labels.push_back(text_label(at(seam + made.gap / 2 + 0.55 * deep * made.slope, made.bevel + 0.55 * deep),
                                fmt::format("groove {:.4g}°, {} deep", angle, mm_text(deep)), inch_text(deep), text));
    labels.push_back(text_label(at(seam - made.gap / 2, made.bevel - face / 2), "root face " + mm_text(face),
                                inch_text(face), text));
    const double room = rail_width(labels, text);
    add_rail(draft, labels, {k * top + rail_height * text, k * seam - room, k * seam + room, k * seam}, text);
    for (const Side side : both_sides)
        add_balloon(draft, at((side == Side::right ? 0.8 : -0.8) * made.end, 0.5 * made.radius[index(side)]),
                    side == Side::left ? "1" : "2", text);

    const double low = -k * top;
    std::vector<LengthDimension> row{{k * (lower_seam - made.gap / 2), k * (lower_seam + made.gap / 2), -k * made.inner,
                                      -k * made.inner, made.gap, "gap"}};
    double row_y = add_length_row(draft, row, low - first_row * text, text);
    if (made.lap > 0) add_length_row(draft, {{k * seam, k * lower_seam, low, low, made.lap, "half lap"}}, row_y, text);
    clear_texts(draft);
    return draft;
}

}  // namespace splicewright
