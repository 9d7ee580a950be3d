// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "cases/bar_shape.h"
#include "post/drawing_views.h"
#include "post/line_chart.h"
#include "post/page_sections.h"
#include "post/site_loads.h"
#include "post/solid_torque.h"
#include "post/view_payload.h"
#include "post/weld_round.h"

namespace splicewright
{
namespace
{

// Room of a drawing in the page, mm of paper: the width of A4 or Letter between their margins.
constexpr DrawingRoom page_room{176, 150}, detail_room{150, 90};
constexpr double type = 2.6;

Markup view_figure(View2d view, const Case& asked, const DrawingRoom& room, const DraftWords& about)
{
    const Draft drawn = view(asked, scale_that_fits(view, asked, room, type));
    constexpr double margin = 2;
    Box box = extent(drawn);
    box = {box.left - margin, box.bottom - margin, box.right + margin, box.top + margin};
    const double share = std::min(1.0, box.width() / (page_room.width + 2 * margin));
    return figure(element("div", {{"class", "to-scale"}, {"style", fmt::format("--share:{:.3f}", share)}},
                          svg_of(drawn, box, about, DraftSize::as_wide_as_the_page)),
                  about.title);
}

LineChart torque_chart(const Report& report)
{
    LineChart chart;
    chart.id = "torque-flow";
    chart.title = "Share of the torque in the sleeve along the shaft";
    chart.description = fmt::format(
        "From nothing beside the welds to {:.0f} % in the middle by finite elements; by stiffness alone the share "
        "jumps at the sleeve's ends.",
        100 * report.sound.answer.share.torsion.value);
    chart.x_label = "distance from the joint, mm";
    chart.y_label = "share of the torque, %";
    chart.least_top = 100;
    ChartCurve sleeve{"sleeve with its welds, finite elements", {}}, bar{"bar, finite elements", {}},
        stiffness{"sleeve, by GJ alone", {}};
    for (const TorquePoint& point : report.torque_flow)
    {
        sleeve.points.emplace_back(point.z, 100 * point.sleeve);
        bar.points.emplace_back(point.z, 100 * (1 - point.sleeve));
        stiffness.points.emplace_back(point.z, 100 * point.by_stiffness);
    }
    chart.curves = {sleeve, bar, stiffness};
    const Sleeve& shaped = *report.asked.sleeve;
    chart.places = {{-sleeve_reach(shaped, Side::left), "sleeve's end"},
                    {0, "joint"},
                    {sleeve_reach(shaped, Side::right), "sleeve's end"}};
    return chart;
}

// `steady`: what bends or pulls along the surface beside bending.
LineChart surface_chart(const WeldSurface& surface, double highest_of_both, const char* steady)
{
    LineChart chart;
    const char* side = name_of(surface.side);
    chart.id = fmt::format("weld-surface-{}", side);
    chart.title = fmt::format("Stress along the outside through the {} sleeve weld, under the peak load", side);
    chart.x_label = "along the surface from the bar's toe, mm (left: weld, right: bar)";
    chart.y_label = "stress, MPa";
    chart.least_top = highest_of_both;
    ChartCurve shear{"shear by torque", {}}, normal{fmt::format("along the surface, by bending{}", steady), {}};
    double highest = 0;
    for (const SurfacePoint& point : surface.points)
    {
        shear.points.emplace_back(point.s, point.shear);
        normal.points.emplace_back(point.s, point.normal);
        highest = std::max(highest, point.shear);
    }
    chart.curves = {shear, normal};
    chart.description = fmt::format("The shear stress rises to {:.0f} MPa at the toe.", highest);
    ChartMarks linear{"read for the linear rule", ChartSign::square, {}},
        quadratic{"read for the quadratic rule", ChartSign::disc, {}},
        toe{"continued to the toe", ChartSign::cross, {}};
    for (const SurfaceReading& reading : surface.readings)
        for (const double stress : {reading.shear, reading.normal})
            (reading.rule == "linear" ? linear : quadratic).points.emplace_back(reading.s, stress);
    for (const SurfaceExtrapolation& value : surface.extrapolated)
    {
        toe.points.emplace_back(value.s, value.shear);
        toe.points.emplace_back(value.s, value.normal);
        if (value.rule == "quadratic")
            chart.description += fmt::format(" Continued to {} it is {:.0f} MPa.", value.site, value.shear);
    }
    if (!toe.points.empty()) chart.marks = {linear, quadratic, toe};
    return chart;
}

}  // namespace

Markup drawing_section(const PageContent& page)
{
    const Case& asked = page.report.asked;
    Markup inside = paragraph(
        "Millimetres stand over each line and [inches] under it. The drawings here fill the page; drawing.svg beside "
        "this file prints to the scales it states, with a title block to fill in.");
    if (asked.joint)
    {
        inside += view_figure(splice_view, asked, page_room,
                              {"view-splice", "The splice: upper half cut, lower half from outside",
                               "1 and 2 are the bars, 3 is the sleeve; every dimension is also in the table of what "
                               "was asked and in the case file at the end."});
        if (has_end_view(asked))
            inside += view_figure(end_view, asked, detail_room,
                                  {"view-sleeve-welds", "The ends of the sleeve from the right",
                                   "Where the sleeve welds begin and end, and where plug welds lie around."});
        inside += view_figure(preparation_view, asked, detail_room,
                              {"view-ends", "The ends of the bars as they are tacked, before welding",
                               "Groove angle, root face, gap and half lap of the butt weld."});
        inside += paragraph(
            "1 is the left bar, 2 the right bar, 3 the sleeve; grey is weld metal. Weld symbols follow ISO 2553, "
            "system A (from memory: verify): z is the "
            "leg of a fillet weld, s the depth of fusion of the butt weld, the circle means all round; a number behind "
            "the sign is the length of a weld that does not go all round, and the open box is a plug weld.");
    }
    inside += view_figure(
        shaft_view, asked, page_room,
        {"view-shaft", "The whole shaft from outside", "Lengths and diameters of all sections, fillets and grooves."});
    return section(page.terms, "drawing", "Drawing", inside);
}

// What the solid model shows beside the cut-away.
Markup solid_pictures(const PageContent& page)
{
    Markup inside = page_picture(page, "solid-cutaway.png",
                                 "The solid model with a quarter cut away, in the colours of its stress.",
                                 "The solid model with a quarter cut away, under the peak load.");
    inside += page_picture(page, "solid-outside.png",
                           "The solid model from outside in the colours of its stress: the whole shaft, and the splice "
                           "from two sides.",
                           "The solid model from outside: each point at its worst over a turn of the bending.");
    inside += page_picture(page, "solid-deformed.png",
                           "The solid model deformed and drawn larger than it moves, with lines that were straight.",
                           "How the shaft deforms under the peak load; the picture tells how many times its movement "
                           "is enlarged.");
    inside += page_picture(page, "solid-contact.png",
                           "The faces of the bars that touch, flat, once in the colours of the pressure and once of "
                           "the gap.",
                           "Where the bars' own faces touch under the peak torque: pressure and gap. The heading names "
                           "the scenario.");
    return inside;
}

// What of the scenarios has no room in the view; empty where all have.
std::string scenarios_in_view(const Report& report, const ViewPayload& payload)
{
    const std::size_t n_all = 1 + report.what_if.size();
    if (payload.n_scenarios == n_all) return {};
    std::string left_out;
    for (std::size_t i = payload.n_scenarios; i < n_all; ++i)
        left_out += (left_out.empty() ? ""
                     : i + 1 == n_all ? " and "
                                      : ", ") +
                    report.what_if[i - 1].answer.scenario.name;
    return fmt::format("The meshes are so fine that these scenarios have no room in the view here: {}.", left_out);
}

Markup view_in_three_dimensions(const PageContent& page)
{
    const bool is_solid = page.report.sound.judged_by_solid;
    Markup inside = page_picture(
        page, "cutaway.png",
        is_solid ? "The solid model of the joint with a quarter cut away, in the colours of its stress; "
                   "the sites in sight are named."
                 : "The joint with a quarter cut away, in the colours of its stress; the site that governs "
                   "is marked.",
        is_solid ? "The solid model with a quarter cut away at the site that governs, under the peak load."
                 : "The joint with a quarter cut away, under the peak load.");
    const ViewPayload payload = view_payload(page.report);
    if (payload.bytes.empty())
        inside += paragraph("The mesh is too fine for a view in three dimensions inside this page.");
    else
    {
        const std::string shown = scenarios_in_view(page.report, payload);
        if (!shown.empty()) inside += paragraph(shown);
        inside += element("script", {{"type", "text/plain"}, {"id", "view-3d-data"}}, words(base64(payload.bytes)));
    }
    const char* heading = page.report.asked.joint ? "The joint, cut open" : "The shaft, cut open";
    return subsection(heading, element("div", {{"id", "view-3d"}}, inside));
}

Markup surface_charts(const Report& report)
{
    Markup inside;
    double highest = 0;
    for (const WeldSurface& surface : report.weld_surfaces)
        for (const SurfacePoint& point : surface.points) highest = std::max({highest, point.shear, point.normal});
    const CombinedLoad load = peak_load(report.asked);
    const char* steady = load.press == 0   ? " and axial load"
                         : load.axial == 0 ? " and press fit"
                                           : ", axial load and press fit";
    for (const WeldSurface& surface : report.weld_surfaces)
    {
        const LineChart chart = surface_chart(surface, highest, steady);
        inside +=
            figure(chart_svg(chart),
                   chart.title + (surface.extrapolated.empty()
                                      ? "."
                                      : "; marked where it is read for the hot-spot stress, and its value there."));
    }
    return inside;
}

// How the share of the solid model's torque was found, and how well.
std::string torque_method(const Report& report)
{
    return fmt::format(
        " By integration of the shear stress of the solid model over sections across the shaft, with "
        "fillet and plug welds counted to the sleeve; the whole of each section is within {:.1f} % of "
        "the torque asked.",
        100 * solid_torque_flow(report.asked, *report.sound.solid).imbalance);
}

Markup charts_round_the_welds(const Report& report)
{
    if (!report.asked.sleeve) return {};
    constexpr std::array signs{ChartSign::disc, ChartSign::cross, ChartSign::square};
    std::vector<LineChart> charts;
    double highest = 0;
    for (const Side side : both_sides)
    {
        const std::vector<RoundCurve> curves =
            stress_round_the_weld(report.sound.answer, peak_load(report.asked), side);
        if (curves.empty()) continue;
        LineChart chart;
        chart.id = fmt::format("weld-round-{}", name_of(side));
        chart.title =
            fmt::format("Stress along the {} sleeve weld around the shaft, under the peak load", name_of(side));
        chart.x_label = "around the shaft from the plane of the lap, degrees";
        chart.y_label = "von Mises stress, MPa";
        chart.description = "The worst over a turn of the bending in each stretch of five degrees.";
        for (std::size_t k = 0; k < curves.size(); ++k)
        {
            ChartMarks marks{curves[k].site, signs.at(k), {}};
            const auto worst = std::ranges::max_element(curves[k].points, {}, &std::pair<double, double>::second);
            highest = std::max(highest, worst->second);
            chart.description += fmt::format(" Highest at {}: {:.0f} MPa at {:.0f} degrees.", curves[k].site,
                                             worst->second, worst->first);
            for (const auto& [degrees, stress] : curves[k].points) marks.points.emplace_back(degrees, stress);
            chart.marks.push_back(std::move(marks));
        }
        charts.push_back(std::move(chart));
    }
    Markup inside;
    for (LineChart& chart : charts)
    {
        chart.least_top = highest;
        inside +=
            figure(chart_svg(chart), chart.title +
                                         ": the worst over a turn of the bending in each stretch of five degrees, "
                                         "as the sites are read; where there is no mark there is no weld.");
    }
    return inside;
}

Markup pictures_section(const PageContent& page)
{
    const Report& report = page.report;
    Markup inside;
    if (!page.extras.why_no_pictures.empty())
        inside += element("p", {{"class", "warning"}},
                          words("No pictures could be drawn: " + page.extras.why_no_pictures + "."));
    const bool is_solid = shows_solid(report.sound);
    if (report.sound.judged_by_solid)
        inside += is_solid
                      ? paragraph("Pictures, view and curves here are those of the solid model.")
                      : element("p", {{"class", "warning"}},
                                words("The view that turns and the curves below show the same shaft as a body of "
                                      "revolution, its welds all round and without plug welds; the pictures and the "
                                      "values at the named sites are those of the solid model."));
    inside += view_in_three_dimensions(page);
    inside += solid_pictures(page);
    if (!report.torque_flow.empty())
    {
        const LineChart chart = torque_chart(report);
        inside +=
            figure(chart_svg(chart), "How the torque passes from the bar through the welds into the sleeve and back." +
                                         (is_solid ? torque_method(report) : std::string()));
    }
    inside += is_solid ? charts_round_the_welds(report) : surface_charts(report);
    return section(page.terms, "pictures", "Pictures", inside);
}

}  // namespace splicewright
