// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/depth_map.h"

#include <Eigen/Geometry>
#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <limits>

namespace splicewright
{
namespace
{

constexpr int columns = static_cast<int>(sheet_width), rows = static_cast<int>(sheet_height);

}  // namespace

DepthMap::DepthMap(const Scene& scene)
    : view_(scene.view),
      toward_(scene.view.right.cross(scene.view.up)),
      nearest_(static_cast<std::size_t>(columns) * rows, -std::numeric_limits<float>::infinity())
{
    for (const SceneSurface& surface : scene.surface)
    {
        std::vector<Eigen::Vector3d> seen;
        for (const Eigen::Vector3d& point : surface.shape.point)
        {
            const SheetPoint at = view_.on_sheet(point);
            seen.emplace_back(at.x(), at.y(), toward_.dot(point));
        }
        for (const auto& [a, b, c] : surface.shape.triangle)
            add({seen[static_cast<std::size_t>(a)], seen[static_cast<std::size_t>(b)],
                 seen[static_cast<std::size_t>(c)]});
    }
}

void DepthMap::add(const std::array<Eigen::Vector3d, 3>& corner)
{
    const auto& [a, b, c] = corner;
    const Eigen::Vector2d one = (b - a).head<2>(), other = (c - a).head<2>();
    const double area = one.x() * other.y() - one.y() * other.x();
    if (std::abs(area) < 1e-12) return;
    const auto from = [](double value, int most) { return std::clamp(static_cast<int>(std::ceil(value)), 0, most); };
    const auto to = [](double value, int most) { return std::clamp(static_cast<int>(std::floor(value)), -1, most); };
    for (int y = from(std::min({a.y(), b.y(), c.y()}), rows); y <= to(std::max({a.y(), b.y(), c.y()}), rows - 1); ++y)
        for (int x = from(std::min({a.x(), b.x(), c.x()}), columns);
             x <= to(std::max({a.x(), b.x(), c.x()}), columns - 1); ++x)
        {
            const Eigen::Vector2d p(x - a.x(), y - a.y());
            const double u = (p.x() * other.y() - p.y() * other.x()) / area,
                         v = (one.x() * p.y() - one.y() * p.x()) / area;
            if (u < 0 || v < 0 || u + v > 1) continue;
            float& known = nearest_[static_cast<std::size_t>(y) * columns + static_cast<std::size_t>(x)];
            known = std::max(known, static_cast<float>(a.z() + u * (b.z() - a.z()) + v * (c.z() - a.z())));
        }
}

bool DepthMap::shows(const Eigen::Vector3d& point, double within_mm) const
{
    const SheetPoint at = view_.on_sheet(point);
    const auto x = static_cast<int>(std::lround(at.x())), y = static_cast<int>(std::lround(at.y()));
    if (x < 0 || y < 0 || x >= columns || y >= rows) return false;
    return std::abs(nearest_[static_cast<std::size_t>(y) * columns + static_cast<std::size_t>(x)] -
                    toward_.dot(point)) <= within_mm;
}

}  // namespace splicewright
