// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/solid_torque.h"

#include <Eigen/Core>
#include <algorithm>
#include <array>
#include <cmath>

#include "post/flat_parts.h"
#include "post/torque_places.h"

namespace splicewright
{
namespace
{

constexpr double n_hairs = 1e-5;  // mm off the mesh's own faces, where two elements meet

// A point of the section: x and y in mm, tau_xz and tau_yz in MPa.
using SectionPoint = Eigen::Vector4d;

double arm(const SectionPoint& p) { return p(0) * p(3) - p(1) * p(2); }

// The integrand is quadratic in a triangle: the middles of its edges give it exactly.
double torque_of(const SectionPoint& a, const SectionPoint& b, const SectionPoint& c)
{
    const double area = std::abs((b(0) - a(0)) * (c(1) - a(1)) - (c(0) - a(0)) * (b(1) - a(1))) / 2;
    return area / 3 * (arm((a + b) / 2) + arm((b + c) / 2) + arm((c + a) / 2));
}

double torque_of_part(const SolidFields& fields, const std::array<std::int32_t, 4>& corner, double z)
{
    std::vector<std::int32_t> front, behind;
    for (const std::int32_t point : corner) (fields.place(2, point) >= z ? front : behind).push_back(point);
    if (front.empty() || behind.empty()) return 0;
    const auto crossing = [&](std::int32_t a, std::int32_t b) -> SectionPoint
    {
        const auto at = [&](std::int32_t i)
        {
            return SectionPoint(fields.place(0, i), fields.place(1, i), double(fields.stress(5, i)),
                                double(fields.stress(4, i)));
        };
        const double share = (z - fields.place(2, a)) / (fields.place(2, b) - fields.place(2, a));
        return at(a) + share * (at(b) - at(a));
    };
    if (front.size() == 2)
    {
        const SectionPoint p = crossing(front[0], behind[0]), q = crossing(front[0], behind[1]),
                           r = crossing(front[1], behind[1]), s = crossing(front[1], behind[0]);
        return torque_of(p, q, r) + torque_of(p, r, s);
    }
    const std::int32_t apex = front.size() == 1 ? front[0] : behind[0];
    const std::vector<std::int32_t>& base = front.size() == 1 ? behind : front;
    return torque_of(crossing(apex, base[0]), crossing(apex, base[1]), crossing(apex, base[2]));
}

struct Sum
{
    double bar = 0, sleeve = 0;  // N*mm
};

}  // namespace

SolidTorqueFlow solid_torque_flow(const Case& asked, const SolidFields& fields)
{
    SolidTorqueFlow flow;
    if (!asked.sleeve || fields.load.torque == 0) return flow;
    const std::vector<double> places = torque_places(asked);
    std::vector<Sum> sum(places.size());
    for (std::size_t e = 0; e < fields.element.size(); ++e)
    {
        const auto& element = fields.element[e];
        const bool is_bar = fields.region[static_cast<std::size_t>(fields.element_region[e])].starts_with("bar");
        const auto [low, high] =
            std::ranges::minmax(element, {}, [&](std::int32_t point) { return fields.place(2, point); });
        auto at = std::ranges::lower_bound(places, fields.place(2, low) - n_hairs);
        for (; at != places.end() && *at + n_hairs <= fields.place(2, high); ++at)
        {
            Sum& there = sum[static_cast<std::size_t>(at - places.begin())];
            for (const auto& part : flat_parts)
                (is_bar ? there.bar : there.sleeve) += torque_of_part(
                    fields, {element[part[0]], element[part[1]], element[part[2]], element[part[3]]}, *at + n_hairs);
        }
    }
    for (std::size_t i = 0; i < places.size(); ++i)
    {
        const double whole = sum[i].bar + sum[i].sleeve;
        flow.points.push_back({places[i], sum[i].sleeve / whole, share_by_stiffness(asked, places[i])});
        flow.imbalance = std::max(flow.imbalance, std::abs(std::abs(whole / fields.load.torque) - 1));
    }
    return flow;
}

}  // namespace splicewright
