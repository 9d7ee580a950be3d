// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/flat_element.h"

#include <fmt/format.h>

#include <cmath>
#include <limits>
#include <numbers>

namespace splicewright
{
namespace
{

constexpr double small_angle_deg = 10, large_angle_deg = 160;  // judgement

}  // namespace

FlatElement flattest_element(const Mesh& mesh)
{
    FlatElement flat;
    for (Eigen::Index t = 0; t < mesh.triangle.cols(); ++t)
        for (int corner = 0; corner < 3; ++corner)
        {
            const Eigen::Vector2d here = mesh.node.col(mesh.triangle(corner, t));
            const Eigen::Vector2d one = mesh.node.col(mesh.triangle((corner + 1) % 3, t)) - here;
            const Eigen::Vector2d other = mesh.node.col(mesh.triangle((corner + 2) % 3, t)) - here;
            const double angle =
                180 / std::numbers::pi * std::atan2(std::abs(one(0) * other(1) - one(1) * other(0)), one.dot(other));
            flat.largest_deg = std::max(flat.largest_deg, angle);
            if (angle >= flat.smallest_deg) continue;
            const Eigen::Vector2d middle = here + (one + other) / 3;
            flat.smallest_deg = angle, flat.z = middle(0), flat.r = middle(1);
        }
    return flat;
}

std::string flat_element_words(const MeridianAnswer& answer)
{
    const FlatElement flat = flattest_element(answer.fields.mesh);
    if (flat.smallest_deg >= small_angle_deg) return {};
    double nearest = std::numeric_limits<double>::infinity();
    std::string site;
    for (const SiteAnswer& each : answer.sites)
        if (const double away = std::hypot(each.z - flat.z, each.r - flat.r); away < nearest)
            nearest = away, site = each.id;
    const std::string place = fmt::format(
        "the thinnest element has an angle of {:.2g}° and lies {:.2g} mm from the "
        "hottest place of {}",
        flat.smallest_deg, nearest, site);
    if (flat.largest_deg < large_angle_deg)
        return fmt::format("{}; that costs no accuracy, as no angle is over {:.0f}°", place,
                           std::ceil(flat.largest_deg));
    return fmt::format(
        "{}, and one has an angle of {:.0f}°, which costs accuracy there: look whether a finer --accuracy "
        "moves that site",
        place, flat.largest_deg);
}

}  // namespace splicewright
