// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/bar_shape.h"
#include "post/dimensions.h"
#include "post/drawing_views.h"
#include "post/drawn_parts.h"

namespace splicewright
{
namespace
{

struct ShaftDrawing
{
    const Case& asked;
    const DrawingScale& scale;
    DrawnShaft shaft;
    double top = 0;  // largest radius, mm of metal
    Draft draft{};
    [[nodiscard]] SheetPoint on_paper(double z, double r) const { return scale.paper_per_metal * SheetPoint(z, r); }
    [[nodiscard]] double low() const { return -scale.paper_per_metal * top; }
};

double outward(Side side) { return side == Side::right ? 1 : -1; }

void add_outside(ShaftDrawing& drawing)
{
    Draft& draft = drawing.draft;
    const auto& skin = drawing.shaft.skin;
    for (const double sign : {1.0, -1.0})
    {
        std::vector<SheetPoint> paper;
        for (const SheetPoint& point : skin) paper.push_back(drawing.on_paper(point.x(), sign * point.y()));
        draft.line.push_back({paper, Pen::outline});
    }
    for (const double z : drawing.shaft.skin_edges)
    {
        const double r = height_at(skin, z);
        draft.line.push_back({{drawing.on_paper(z, -r), drawing.on_paper(z, r)}, Pen::outline});
    }
    const double text = drawing.scale.text;
    draft.line.push_back({{drawing.on_paper(skin.front().x(), 0) - SheetPoint(2 * text, 0),
                           drawing.on_paper(skin.back().x(), 0) + SheetPoint(2 * text, 0)},
                          Pen::centre});
    for (const Side side : both_sides)
    {
        const auto& bar = drawing.asked.bar[index(side)];
        if (!bar || bar->bore.value() <= 0) continue;
        const double end = outward(side) * length_of(*bar), bore = bar->bore.value() / 2;
        for (const double sign : {1.0, -1.0})
            draft.line.push_back({{drawing.on_paper(0, sign * bore), drawing.on_paper(end, sign * bore)}, Pen::hidden});
    }
    if (!drawing.asked.joint) return;
    const double lap = drawing.asked.joint->half_lap.value() / 2,
                 r = drawing.asked.bar[0]->sections.front().diameter.value() / 2;
    draft.line.push_back(
        {{drawing.on_paper(-lap, r), drawing.on_paper(-lap, 0), drawing.on_paper(lap, 0), drawing.on_paper(lap, -r)},
         Pen::hidden});
}

// Where a section shows beside sleeve and weld.
double shown_middle(const ShaftDrawing& drawing, Side side, std::size_t number)
{
    const SectionSpan span = section_span(*drawing.asked.bar[index(side)], number);
    double begin = span.plain_begin;
    if (number == 0 && drawing.asked.sleeve)
        begin =
            std::max(begin, sleeve_reach(*drawing.asked.sleeve, side) + drawing.asked.sleeve->weld.leg_on_bar.value());
    return outward(side) * (begin + span.plain_end) / 2;
}

void add_bar_labels(const ShaftDrawing& drawing, Side side, std::vector<RailLabel>& labels)
{
    const Bar& bar = *drawing.asked.bar[index(side)];
    const double text = drawing.scale.text;
    for (std::size_t i = 0; i < bar.sections.size(); ++i)
    {
        const double diameter = bar.sections[i].diameter.value(), fillet = bar.sections[i].fillet.value();
        labels.push_back(text_label(drawing.on_paper(shown_middle(drawing, side, i), diameter / 2),
                                    "Ø" + mm_text(diameter), inch_text(diameter), text));
        if (i == 0 || fillet <= 0) continue;
        const SectionSpan span = section_span(bar, i);
        const double before = bar.sections[i - 1].diameter.value();
        const double z = diameter < before ? (span.begin + span.plain_begin) / 2 : span.begin - fillet / 3;
        labels.push_back(
            text_label(drawing.on_paper(outward(side) * z, height_at(drawing.shaft.skin, outward(side) * z)),
                       "R" + mm_text(fillet), inch_text(fillet), text));
    }
    for (const Groove& groove : bar.grooves)
    {
        const double z = outward(side) * groove.at.value();
        labels.push_back(text_label(
            drawing.on_paper(z, height_at(drawing.shaft.skin, z)),
            fmt::format("groove {} deep, R{}", mm_text(groove.depth.value()), mm_text(groove.radius.value())),
            fmt::format("{} deep, R{}", inch_text(groove.depth.value()), inch_text(groove.radius.value())), text));
    }
}

void add_bore_label(const ShaftDrawing& drawing, std::vector<RailLabel>& labels)
{
    const Side side = drawing.asked.bar[1] ? Side::right : Side::left;
    const Bar& bar = *drawing.asked.bar[index(side)];
    if (bar.bore.value() <= 0) return;
    const SectionSpan last = section_span(bar, bar.sections.size() - 1);
    labels.push_back(
        text_label(drawing.on_paper(outward(side) * (0.15 * last.begin + 0.85 * last.end), bar.bore.value() / 2),
                   "bore Ø" + mm_text(bar.bore.value()), inch_text(bar.bore.value()), drawing.scale.text));
}

void add_labels(ShaftDrawing& drawing)
{
    std::vector<RailLabel> labels;
    for (const Side side : both_sides)
        if (drawing.asked.bar[index(side)]) add_bar_labels(drawing, side, labels);
    add_bore_label(drawing, labels);
    if (drawing.asked.sleeve)
    {
        const double outer = drawing.asked.sleeve->outer_diameter.value();
        labels.push_back(text_label(drawing.on_paper(drawing.asked.sleeve->offset.value() - 0.01, outer / 2),
                                    "Ø" + mm_text(outer), inch_text(outer), drawing.scale.text));
    }
    const double left = drawing.on_paper(drawing.shaft.skin.front().x(), 0).x(),
                 right = drawing.on_paper(drawing.shaft.skin.back().x(), 0).x(), text = drawing.scale.text;
    const double half = std::max(rail_width(labels, text), right - left + 6 * text) / 2;
    add_rail(
        drawing.draft, labels,
        {-drawing.low() + rail_height * text, (left + right) / 2 - half, (left + right) / 2 + half, (left + right) / 2},
        text);
}

void add_lengths(ShaftDrawing& drawing)
{
    const double k = drawing.scale.paper_per_metal, text = drawing.scale.text;
    std::vector<std::vector<LengthDimension>> rows(4);
    std::size_t n_bars = 0;
    double first = 0, last = 0;
    const auto below = [&](double z) { return -k * height_at(drawing.shaft.skin, z); };
    const auto measure = [&](std::size_t row, double from, double to)
    {
        const double low = std::min(from, to), high = std::max(from, to);
        rows[row].push_back({k * low, k * high, below(low), below(high), high - low});
    };
    for (const Side side : both_sides)
    {
        const auto& bar = drawing.asked.bar[index(side)];
        if (!bar) continue;
        ++n_bars;
        const double sign = outward(side), end = sign * length_of(*bar);
        for (const Groove& groove : bar->grooves) measure(0, 0, sign * groove.at.value());
        if (bar->sections.size() > 1)
            for (std::size_t i = 0; i < bar->sections.size(); ++i)
            {
                const SectionSpan span = section_span(*bar, i);
                measure(1, sign * span.begin, sign * span.end);
            }
        measure(2, 0, end);
        first = std::min(first, end);
        last = std::max(last, end);
    }
    if (n_bars > 1) measure(3, first, last);
    double row_y = drawing.low() - first_row * text;
    // Grooves of one bar are all measured from the joint: one row each.
    for (const LengthDimension& groove : rows[0]) row_y = add_length_row(drawing.draft, {groove}, row_y, text);
    for (std::size_t i = 1; i < rows.size(); ++i)
        if (!rows[i].empty()) row_y = add_length_row(drawing.draft, rows[i], row_y, text);
}

}  // namespace

Draft shaft_view(const Case& asked, const DrawingScale& scale)
{
    ShaftDrawing drawing{asked, scale, drawn_shaft(asked)};
    for (const SheetPoint& point : drawing.shaft.skin) drawing.top = std::max(drawing.top, point.y());
    add_outside(drawing);
    add_labels(drawing);
    add_lengths(drawing);
    clear_texts(drawing.draft);
    return std::move(drawing.draft);
}

}  // namespace splicewright
