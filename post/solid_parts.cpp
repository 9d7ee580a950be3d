// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/solid_parts.h"

#include <Eigen/Geometry>

namespace splicewright
{

Eigen::Matrix3d turned_by(double around) { return Eigen::AngleAxisd(around, Eigen::Vector3d::UnitZ()).matrix(); }

Piece within(const Window& window)
{
    return {{Eigen::Vector3d::UnitZ(), window.right}, {-Eigen::Vector3d::UnitZ(), -window.left}};
}

Piece joined(Piece one, const Piece& other)
{
    one.insert(one.end(), other.begin(), other.end());
    return one;
}

ShadedSurface shown_stretch(const PictureContent& content, const std::vector<Piece>& pieces)
{
    const SolidFields& fields = *content.request.solid;
    std::vector<Piece> shown;
    for (const Piece& piece : pieces) shown.push_back(joined(piece, within(content.splice)));
    ShadedSurface surface = solid_surface(fields, content.skin, shown);
    for (const HalfSpace& end : within(content.splice))
    {
        const ShadedSurface cut = solid_cut(fields, content.skin, end, pieces).surface;
        const auto first = static_cast<int>(surface.point.size());
        surface.point.insert(surface.point.end(), cut.point.begin(), cut.point.end());
        surface.normal.insert(surface.normal.end(), cut.normal.begin(), cut.normal.end());
        surface.value.insert(surface.value.end(), cut.value.begin(), cut.value.end());
        for (const auto& [a, b, c] : cut.triangle) surface.triangle.push_back({a + first, b + first, c + first});
    }
    return surface;
}

void add_foot(Sheet& sheet, const PictureContent& content)
{
    add_line(sheet, {{page_left, strip_top}, {page_right, strip_top}}, {1.5, hair, {}});
    add_colour_bar(sheet, content.range, {60, 30}, 520);
    add_sharp_key(sheet, content, {1120, 126});
}

}  // namespace splicewright
