// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/solid_section.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

// A ring of tetrahedra around an edge this short in the section would need thousands of them. Judgement.
constexpr double least_length_share = 0.004;  // of the largest radius of the bars at the joint
// Depth of the wedges under an open weld over the leg of the weld. Judgement: flat enough not to matter, steep enough
// for good tetrahedra.
constexpr double wedge_depth_share = 0.15;

std::size_t at(int i) { return static_cast<std::size_t>(i); }

double distance(OutlinePoint a, OutlinePoint b) { return std::hypot(a.z - b.z, a.r - b.r); }

OutlineRegion* region_named(Outline& section, const std::string& name)
{
    const auto found = std::find_if(section.regions.begin(), section.regions.end(),
                                    [&](const OutlineRegion& region) { return region.name == name; });
    return found == section.regions.end() ? nullptr : &*found;
}

bool is_on_axis(OutlinePoint p) { return p.r == 0; }

// The point that stays when the curve is closed up: that on the axis, else that with more curves.
int kept_end(const Outline& section, const OutlineCurve& curve)
{
    if (is_on_axis(section.points[at(curve.start)])) return curve.start;
    if (is_on_axis(section.points[at(curve.end)])) return curve.end;
    const auto curves_at = [&](int point)
    {
        return std::count_if(section.curves.begin(), section.curves.end(),
                             [&](const OutlineCurve& c) { return c.start == point || c.end == point; });
    };
    return curves_at(curve.end) > curves_at(curve.start) ? curve.end : curve.start;
}

// An arc whose ends have moved keeps its radius as nearly as they allow.
void fit_arc(const Outline& section, OutlineCurve& curve)
{
    if (!curve.centre) return;
    const OutlinePoint a = section.points[at(curve.start)], b = section.points[at(curve.end)], c = *curve.centre;
    if (std::abs(distance(a, c) - distance(b, c)) < 1e-12) return;
    const OutlinePoint middle{(a.z + b.z) / 2, (a.r + b.r) / 2};
    const double chord = distance(a, b), radius = std::max((distance(a, c) + distance(b, c)) / 2, 0.51 * chord);
    const OutlinePoint normal{-(b.r - a.r) / chord, (b.z - a.z) / chord};
    const double side = std::copysign(1.0, (c.z - middle.z) * normal.z + (c.r - middle.r) * normal.r);
    const double height = side * std::sqrt(radius * radius - chord * chord / 4);
    curve.centre = OutlinePoint{middle.z + height * normal.z, middle.r + height * normal.r};
}

void drop_curves(Outline& section, const std::set<int>& gone)
{
    std::vector<int> new_number(section.curves.size(), -1);
    std::vector<OutlineCurve> kept;
    for (std::size_t c = 0; c < section.curves.size(); ++c)
        if (!gone.contains(static_cast<int>(c)))
        {
            new_number[c] = static_cast<int>(kept.size());
            kept.push_back(section.curves[c]);
        }
    section.curves = std::move(kept);
    for (OutlineRegion& region : section.regions)
    {
        std::erase_if(region.curves, [&](int c) { return gone.contains(c); });
        for (int& c : region.curves) c = new_number[at(c)];
    }
}

std::set<std::string> notch_names(const Outline& section)
{
    std::set<std::string> names;
    for (const OutlineCurve& curve : section.curves)
        if (curve.notch_radius > 0) names.insert(curve.name);
    return names;
}

}  // namespace

void join_bars(Outline& section)
{
    OutlineRegion& left = *region_named(section, "bar.left");
    OutlineRegion& right = *region_named(section, "bar.right");
    std::set<int> shared;
    for (const int c : left.curves)
        if (std::find(right.curves.begin(), right.curves.end(), c) != right.curves.end()) shared.insert(c);
    OutlineRegion bars{joined_bars, left.curves};
    bars.curves.insert(bars.curves.end(), right.curves.begin(), right.curves.end());
    std::erase_if(bars.curves, [&](int c) { return shared.contains(c); });
    std::erase_if(section.regions, [](const OutlineRegion& region) { return region.name.starts_with("bar."); });
    // One line along the axis: a point between two that are swept to nothing cannot be swept.
    std::vector<int> on_axis;
    for (const int c : bars.curves)
        if (section.curves[at(c)].name == "axis") on_axis.push_back(c);
    if (on_axis.size() == 2)
    {
        OutlineCurve &first = section.curves[at(on_axis[0])], &second = section.curves[at(on_axis[1])];
        const auto is_end = [&](int point) { return section.points[at(point)].z != 0; };
        first = {is_end(first.start) ? first.start : first.end,
                 is_end(second.start) ? second.start : second.end,
                 std::nullopt,
                 "axis",
                 false,
                 0};
        shared.insert(on_axis[1]);
        std::erase(bars.curves, on_axis[1]);
    }
    section.regions.push_back(bars);
    drop_curves(section, shared);
}

double close_up_short_curves(Outline& section)
{
    double radius = 0;
    for (const OutlineCurve& curve : section.curves)
        if (curve.name.starts_with("bar.")) radius = std::max(radius, section.points[at(curve.start)].r);
    const double least = least_length_share * radius;
    const std::set<std::string> before = notch_names(section);
    std::set<int> gone;
    for (std::size_t c = 0; c < section.curves.size(); ++c)
    {
        const OutlineCurve curve = section.curves[c];
        const OutlinePoint a = section.points[at(curve.start)], b = section.points[at(curve.end)];
        if (curve.start != curve.end && distance(a, b) >= least) continue;
        gone.insert(static_cast<int>(c));
        const int kept = kept_end(section, curve), lost = kept == curve.start ? curve.end : curve.start;
        for (OutlineCurve& other : section.curves)
        {
            if (other.start == lost) other.start = kept;
            if (other.end == lost) other.end = kept;
        }
        for (OutlineTip& tip : section.tips)
            if (tip.point == lost) tip.point = kept;
    }
    drop_curves(section, gone);
    for (OutlineCurve& curve : section.curves) fit_arc(section, curve);
    const std::set<std::string> after = notch_names(section);
    for (const std::string& name : before)
        if (!after.contains(name))
            section.absent_sites.push_back(fmt::format(
                "{}: its rounding is shorter than {:.2g} mm, which the solid mesh does not show", name, least));
    return least;
}

bool is_inside(const Outline& section, const OutlineRegion& region, OutlinePoint where)
{
    // The boundary is crossed an odd number of times on the way to large z.
    bool inside = false;
    const auto rises_through = [&](double from, double to) { return (from > where.r) != (to > where.r); };
    for (const int c : region.curves)
    {
        const OutlineCurve& curve = section.curves[at(c)];
        const OutlinePoint a = section.points[at(curve.start)], b = section.points[at(curve.end)];
        if (!curve.centre)
        {
            if (rises_through(a.r, b.r) && a.z + (where.r - a.r) / (b.r - a.r) * (b.z - a.z) > where.z)
                inside = !inside;
            continue;
        }
        // An arc in pieces that only rise or only fall.
        const OutlinePoint centre = *curve.centre;
        const double radius = distance(a, centre), from = std::atan2(a.r - centre.r, a.z - centre.z);
        const double turn = std::remainder(std::atan2(b.r - centre.r, b.z - centre.z) - from, 2 * std::numbers::pi);
        std::vector<double> stops{0.0, 1.0};
        for (const double top : {-1.5, -0.5, 0.5, 1.5})
            if (const double t = (top * std::numbers::pi - from) / turn; t > 0 && t < 1) stops.push_back(t);
        std::sort(stops.begin(), stops.end());
        const auto height = [&](double t)
        {
            if (t == 0) return a.r;
            return t == 1 ? b.r : centre.r + radius * std::sin(from + t * turn);
        };
        for (std::size_t i = 0; i + 1 < stops.size(); ++i)
        {
            if (!rises_through(height(stops[i]), height(stops[i + 1]))) continue;
            const double middle = from + turn * (stops[i] + stops[i + 1]) / 2;
            const double half = std::sqrt(std::max(0.0, radius * radius - std::pow(where.r - centre.r, 2)));
            if (centre.z + std::copysign(half, std::cos(middle)) > where.z) inside = !inside;
        }
    }
    return inside;
}

namespace
{

int add_point(Outline& section, OutlinePoint p)
{
    section.points.push_back(p);
    return static_cast<int>(section.points.size()) - 1;
}

int add_line(Outline& section, int start, int end, const std::string& name)
{
    section.curves.push_back({start, end, std::nullopt, name, false, 0});
    return static_cast<int>(section.curves.size()) - 1;
}

// A wedge under the weld: its surface curve from the root to the end of the toe, and the two lines below it.
struct Wedge
{
    int surface = 0;
    std::vector<int> below;
};

// Where a wedge is cut, by the names of regions and curves.
struct WedgePlace
{
    std::string body, metal;  // region that it is cut from; its name where the weld is open
    std::string fusion, toe;  // curves between body and fillet, and around the toe
    std::string surface;      // where the weld is open
    std::string fillet;
    double depth = 0;
};

// Takes the fusion line and the part of the toe that lies in the body out of it, and puts the wedge's lines in.
// Returns nothing where the toe has no rounding there.
std::optional<Wedge> cut_wedge(Outline& section, const WedgePlace& place)
{
    OutlineRegion& region = *region_named(section, place.body);
    std::vector<int> taken;
    for (const int c : region.curves)
        if (section.curves[at(c)].name == place.fusion || section.curves[at(c)].name == place.toe) taken.push_back(c);
    if (taken.size() != 2) return std::nullopt;
    const OutlineCurve line = section.curves[at(taken[0])], arc = section.curves[at(taken[1])];
    const bool line_first = line.name == place.fusion;
    const OutlineCurve& straight = line_first ? line : arc;
    const OutlineCurve& round = line_first ? arc : line;
    const int middle = straight.start == round.start || straight.start == round.end ? straight.start : straight.end;
    const int root = straight.start == middle ? straight.end : straight.start;
    const int end = round.start == middle ? round.end : round.start;
    const OutlinePoint a = section.points[at(root)], b = section.points[at(end)], m = section.points[at(middle)];
    const double length = distance(a, b);
    OutlinePoint down{-(b.r - a.r) / length, (b.z - a.z) / length};
    if (down.z * (m.z - a.z) + down.r * (m.r - a.r) > 0) down = {-down.z, -down.r};
    const int bottom =
        add_point(section, {(a.z + b.z) / 2 + place.depth * down.z, (a.r + b.r) / 2 + place.depth * down.r});
    Wedge wedge;
    wedge.surface = add_line(section, root, end, place.surface);
    wedge.below = {add_line(section, root, bottom, place.fusion), add_line(section, bottom, end, place.fusion)};
    std::erase_if(region.curves, [&](int c) { return c == taken[0] || c == taken[1]; });
    region.curves.insert(region.curves.end(), wedge.below.begin(), wedge.below.end());
    OutlineRegion& fillet = *region_named(section, place.fillet);
    const int gone = line_first ? taken[0] : taken[1];
    std::erase(fillet.curves, gone);
    fillet.curves.push_back(line_first ? taken[1] : taken[0]);
    fillet.curves.insert(fillet.curves.end(), wedge.below.begin(), wedge.below.end());
    return wedge;
}

}  // namespace

void open_weld(SolidGeometry& geometry, const SleeveWeld& weld, Side side)
{
    Outline& section = geometry.section;
    const std::string name = name_of(side);
    const std::string bar = region_named(section, joined_bars) != nullptr ? joined_bars : "bar." + name;
    const double depth = wedge_depth_share * std::min(weld.leg_on_bar, weld.leg_on_sleeve).value();
    const Sweep welded{weld.start[index(side)].value(), weld.coverage.value(), side == Side::left ? 2 : 4};
    const Sweep open{welded.start + welded.extent, full_turn - welded.extent, 0};
    for (std::size_t i = 0; i < section.regions.size(); ++i)
        if (section.regions[i].name == "fillet." + name) geometry.sweep[i] = welded;
    const WedgePlace in_bar{
        bar, "bar." + name, "fusion bar." + name, "bar-toe." + name, "bar." + name, "fillet." + name, depth};
    const WedgePlace in_sleeve{"sleeve." + name,
                               "sleeve." + name,
                               "fusion sleeve." + name,
                               "sleeve-toe." + name,
                               "sleeve end",
                               "fillet." + name,
                               depth};
    for (const WedgePlace& place : {in_bar, in_sleeve})
    {
        const auto wedge = cut_wedge(section, place);
        if (!wedge) continue;
        OutlineRegion part{place.metal, wedge->below};
        part.curves.push_back(wedge->surface);
        section.regions.push_back(part);
        geometry.sweep.push_back(open);
    }
}

}  // namespace splicewright
