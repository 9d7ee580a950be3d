// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>

#include "post/picture_pages.h"

namespace splicewright
{
namespace
{

constexpr double page_left = 50, page_right = sheet_width - 50;

// A face that may touch, flat as it is seen: along the shaft for the lap, across it for its ends.
struct ContactPanel
{
    std::string name;
    std::vector<Eigen::Vector3d> point;  // on the panel, mm
    std::vector<double> pressure, gap;   // MPa and micrometres
    std::vector<std::array<int, 3>> triangle;
    Eigen::Vector2d low{1e9, 1e9}, high{-1e9, -1e9};
};

bool lies_across(const SolidContactFields& surface) { return surface.name == "land"; }

void add_face(ContactPanel& panel, const SolidContactFields& surface, const std::array<std::int32_t, 6>& face)
{
    const auto first = static_cast<int>(panel.point.size());
    for (const std::int32_t point : face)
    {
        const Eigen::Vector3f p = surface.place.col(point);
        const Eigen::Vector2d flat =
            lies_across(surface) ? Eigen::Vector2d(-p.y(), p.x()) : Eigen::Vector2d(p.z(), p.x());
        panel.point.emplace_back(flat.x(), flat.y(), 0);
        panel.pressure.push_back(surface.pressure(point));
        panel.gap.push_back(1000.0 * surface.gap(point));
        panel.low = panel.low.cwiseMin(flat), panel.high = panel.high.cwiseMax(flat);
    }
    for (const auto& [a, b, c] : {std::array{0, 3, 5}, {3, 1, 4}, {5, 4, 2}, {3, 4, 5}})
        panel.triangle.push_back({first + a, first + b, first + c});
}

double middle_of(const SolidContactFields& surface, const std::array<std::int32_t, 6>& face)
{
    return (surface.place(2, face[0]) + surface.place(2, face[1]) + surface.place(2, face[2])) / 3.0;
}

std::vector<ContactPanel> contact_panels(const std::vector<SolidContactFields>& contact)
{
    std::array<ContactPanel, 3> panel;  // left end, lap, right end
    for (const SolidContactFields& surface : contact)
        for (const auto& face : surface.face)
        {
            const double z = middle_of(surface, face);
            ContactPanel& on = panel[!lies_across(surface) ? 1 : z > 1e-6 ? 2 : 0];
            add_face(on, surface, face);
            if (lies_across(surface)) on.name = fmt::format("Land at z = {} mm", short_number(z, 1));
            else on.name = "Lap";
        }
    std::vector<ContactPanel> shown;
    for (ContactPanel& one : panel)
        if (!one.triangle.empty()) shown.push_back(std::move(one));
    return shown;
}

// `factor` brings what is shown to the range of the scene.
void add_panel(Page& page, const ContactPanel& panel, const std::vector<double>& value, double factor,
               const SheetPoint& middle)
{
    ShadedSurface surface;
    const View& view = page.scene.view;
    const Eigen::Vector2d centre = (panel.low + panel.high) / 2;
    for (std::size_t i = 0; i < panel.point.size(); ++i)
    {
        const Eigen::Vector2d flat = panel.point[i].head<2>() - centre + view.mm_per_unit * middle;
        surface.point.emplace_back(flat.x(), flat.y(), 0);
        surface.normal.emplace_back(0, 0, 1);
        surface.value.push_back(std::max(0.0, value[i]) * factor);
    }
    surface.triangle = panel.triangle;
    page.scene.surface.push_back({std::move(surface), Lighting::flat});
}

double largest(const std::vector<ContactPanel>& panels, std::vector<double> ContactPanel::*of)
{
    double most = 0;
    for (const ContactPanel& panel : panels) most = std::max(most, *std::ranges::max_element(panel.*of));
    return most;
}

StressRange range_to(double most) { return {most > 0 ? round_above(most) : 1, most}; }

}  // namespace

Page solid_contact_page(const PictureContent& content)
{
    Page page{"solid-contact.png", {}, {}};
    Sheet& sheet = page.sheet;
    add_heading(sheet, content,
                fmt::format("Contact of the bars' faces, scenario {}", content.request.contact_scenario),
                "Pressure where they touch, gap where they do not, without friction, under the peak torque and the "
                "axial load alone");
    const std::vector<ContactPanel> panels = contact_panels(*content.request.contact);
    const StressRange pressure = range_to(largest(panels, &ContactPanel::pressure)),
                      gap = range_to(largest(panels, &ContactPanel::gap));
    page.scene.range = pressure;
    double wide = 0, high = 0;
    for (const ContactPanel& panel : panels)
    {
        wide += (panel.high - panel.low).x();
        high = std::max(high, (panel.high - panel.low).y());
    }
    constexpr double between = 200, row_room = 215;
    const double room = page_right - page_left - between * static_cast<double>(panels.size()) - 150;
    page.scene.view.mm_per_unit = std::max(wide / room, high / row_room);
    const double mm = page.scene.view.mm_per_unit;
    double x = (sheet_width - wide / mm - between * static_cast<double>(panels.size() - 1)) / 2;
    for (const ContactPanel& panel : panels)
    {
        const double half = (panel.high - panel.low).x() / mm / 2;
        add_panel(page, panel, panel.pressure, 1, {x + half, 650});
        add_panel(page, panel, panel.gap, pressure.top / gap.top, {x + half, 340});
        for (const double y : {650.0, 340.0})
            sheet.text.push_back({panel.name, {x + half, y + row_room / 2 + 26}, 20, Weight::bold, ink, Align::centre});
        x += 2 * half + between;
    }
    sheet.text.push_back({"Pressure", {page_left, 650}, 24, Weight::bold});
    sheet.text.push_back({"Gap", {page_left, 340}, 24, Weight::bold});
    add_line(sheet, {{page_left, strip_top}, {page_right, strip_top}}, {1.5, hair, {}});
    add_colour_bar(sheet, pressure, {60, 30}, 420, "Contact pressure, MPa");
    add_colour_bar(sheet, gap, {580, 30}, 420, "Gap under load, µm");
    add_scale_bar(sheet, mm, {1130, 48}, 260);
    sheet.text.push_back({"The lap as seen across its plane, the lands from the right",
                          {1550, 118},
                          18,
                          Weight::regular,
                          soft_ink,
                          Align::right});
    return page;
}

}  // namespace splicewright
