// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/drawing.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr double coincident_mm = 1e-9;

// From one diameter to the next at the distance where the sections meet; the fillet lies on the smaller section.
// A fillet larger than the step is cut off where it reaches the larger surface.
void draw_shoulder(Path& path, double distance, double inner_radius, double outer_radius, double fillet,
                   const std::string& site, const std::string& plain)
{
    const double low = std::min(inner_radius, outer_radius), high = std::max(inner_radius, outer_radius);
    const double rise = std::min(fillet, high - low);
    const double extent = std::sqrt(fillet * fillet - (fillet - rise) * (fillet - rise));
    if (outer_radius < inner_radius)
    {
        path.line_to(distance, low + rise, "shoulder face");
        path.arc_to(distance + extent, low + fillet, distance + extent, low, site, fillet);
    }
    else
    {
        path.line_to(distance - extent, low, plain);
        path.arc_to(distance - extent, low + fillet, distance, low + rise, site, fillet);
        path.line_to(distance, high, "shoulder face");
    }
}

void draw_groove(Path& path, const Groove& groove, double surface, const std::string& site, const std::string& plain)
{
    const double radius = groove.radius.value(), depth = groove.depth.value(), at = groove.at.value();
    const double wall = std::max(0.0, depth - radius);
    const double half_width = wall > 0 ? radius : std::sqrt(radius * radius - (radius - depth) * (radius - depth));
    const double bottom = surface - depth;
    path.line_to(at - half_width, surface, plain);
    path.line_to(at - half_width, surface - wall, "groove wall");
    path.arc_to(at, bottom + radius, at, bottom, site, radius);
    path.arc_to(at, bottom + radius, at + half_width, surface - wall, site, radius);
    path.line_to(at + half_width, surface, "groove wall");
}

}  // namespace

int Drawing::point(OutlinePoint where)
{
    const auto found =
        std::find_if(out_.points.begin(), out_.points.end(),
                     [&](const OutlinePoint& p) { return std::hypot(p.z - where.z, p.r - where.r) < coincident_mm; });
    if (found != out_.points.end()) return static_cast<int>(found - out_.points.begin());
    out_.points.push_back(where);
    return static_cast<int>(out_.points.size()) - 1;
}

int Drawing::line(int start, int end, std::string name)
{
    out_.curves.push_back({start, end, std::nullopt, std::move(name), false, 0});
    return static_cast<int>(out_.curves.size()) - 1;
}

int Drawing::arc(int start, OutlinePoint centre, int end, std::string name, double notch_radius)
{
    out_.curves.push_back({start, end, centre, std::move(name), false, notch_radius});
    return static_cast<int>(out_.curves.size()) - 1;
}

void Drawing::unfuse(const std::vector<int>& curves)
{
    for (const int curve : curves) out_.curves[static_cast<std::size_t>(curve)].unfused = true;
}

void Drawing::region(std::string name, std::vector<int> curves)
{
    out_.regions.push_back({std::move(name), std::move(curves)});
}

void Drawing::tip(OutlinePoint where, std::string name, OutlinePoint forward)
{
    const int at = point(where);
    out_.tips.push_back({at, std::move(name), forward});
}

void Drawing::absent(std::string text) { out_.absent_sites.push_back(std::move(text)); }

Outline Drawing::take() { return std::move(out_); }

Path::Path(Drawing& drawing, Side side, double distance, double radius)
    : drawing_(&drawing), sign_(side == Side::left ? -1.0 : 1.0), at_(drawing.point(place(distance, radius)))
{
}

OutlinePoint Path::place(double distance, double radius) const { return {sign_ * distance, radius}; }

void Path::line_to(double distance, double radius, const std::string& name)
{
    const int next = drawing_->point(place(distance, radius));
    if (next == at_) return;
    curves_.push_back(drawing_->line(at_, next, name));
    at_ = next;
}

void Path::arc_to(double centre_distance, double centre_radius, double distance, double radius, const std::string& name,
                  double notch_radius)
{
    const int next = drawing_->point(place(distance, radius));
    curves_.push_back(drawing_->arc(at_, place(centre_distance, centre_radius), next, name, notch_radius));
    at_ = next;
}

void draw_bar_surface(Path& path, const Bar& bar, const std::string& side)
{
    const std::string plain = "bar." + side;
    double start = 0;
    for (std::size_t i = 0; i < bar.sections.size(); ++i)
    {
        const Section& section = bar.sections[i];
        const double radius = section.diameter.value() / 2, end = start + section.length.value();
        if (i > 0 && section.diameter != bar.sections[i - 1].diameter)
            draw_shoulder(path, start, bar.sections[i - 1].diameter.value() / 2, radius, section.fillet.value(),
                          fmt::format("shoulder.{}.{}", side, i), plain);
        for (std::size_t g = 0; g < bar.grooves.size(); ++g)
            if (bar.grooves[g].at.value() > start && bar.grooves[g].at.value() < end)
                draw_groove(path, bar.grooves[g], radius, fmt::format("groove.{}.{}", side, g + 1), plain);
        const bool rises_next = i + 1 < bar.sections.size() && bar.sections[i + 1].diameter > section.diameter;
        if (!rises_next) path.line_to(end, radius, plain);
        start = end;
    }
}

std::vector<std::vector<int>> loops_of(const Outline& outline, const OutlineRegion& region)
{
    std::vector<std::vector<int>> loops;
    std::vector<int> left = region.curves;
    while (!left.empty())
    {
        const int first = left.front();
        left.erase(left.begin());
        std::vector<int> loop{first + 1};
        const int start = outline.curves[static_cast<std::size_t>(first)].start;
        int at = outline.curves[static_cast<std::size_t>(first)].end;
        while (at != start)
        {
            const auto next = std::find_if(left.begin(), left.end(),
                                           [&](int c)
                                           {
                                               const OutlineCurve& curve = outline.curves[static_cast<std::size_t>(c)];
                                               return curve.start == at || curve.end == at;
                                           });
            EXPECTS(next != left.end());
            const OutlineCurve& curve = outline.curves[static_cast<std::size_t>(*next)];
            loop.push_back(curve.start == at ? *next + 1 : -(*next + 1));
            at = curve.start == at ? curve.end : curve.start;
            left.erase(next);
        }
        loops.push_back(std::move(loop));
    }
    return loops;
}

std::vector<int> joined(std::initializer_list<std::vector<int>> chains)
{
    std::vector<int> all;
    for (const auto& chain : chains) all.insert(all.end(), chain.begin(), chain.end());
    return all;
}

}  // namespace splicewright
