// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/torque_flow.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "cases/bar_shape.h"
#include "post/drawn_section.h"
#include "post/section_strength.h"
#include "post/torque_places.h"

namespace splicewright
{
namespace
{

constexpr int n_places = 161;
constexpr double beside_weld = 0.5;  // diameters of the bar that are shown beyond each weld
constexpr double at_jump = 1e-3;     // mm from a jump
constexpr double n_hairs = 1e-6;     // mm off the mesh's own lines, where two elements meet

// 2 pi r^2 tau integrated along a straight piece of the section, tau linear: Simpson's rule is exact.
double torque_of(double r0, double tau0, double r1, double tau1)
{
    const double r = (r0 + r1) / 2, tau = (tau0 + tau1) / 2;
    return 2 * std::numbers::pi * std::abs(r1 - r0) / 6 * (r0 * r0 * tau0 + 4 * r * r * tau + r1 * r1 * tau1);
}

struct Cut
{
    double bar = 0, sleeve = 0;  // N*mm for 1 N*mm
};

Cut cut_at(const DrawnSection& section, const std::vector<bool>& in_sleeve, double z)
{
    Cut sum;
    for (const auto& triangle : section.triangle)
    {
        std::array<double, 3> r{}, tau{};
        std::size_t n = 0;
        for (std::size_t k = 0; k < 3; ++k)
        {
            const DrawnVertex &a = section.vertex[std::size_t(triangle[k])],
                              &b = section.vertex[std::size_t(triangle[(k + 1) % 3])];
            if ((a.place(0) <= z) == (b.place(0) <= z)) continue;
            const double share = (z - a.place(0)) / (b.place(0) - a.place(0));
            r[n] = a.place(1) + share * (b.place(1) - a.place(1));
            tau[n] = a.steady(4) + share * (b.steady(4) - a.steady(4));
            ++n;
        }
        if (n < 2) continue;
        (in_sleeve[std::size_t(triangle[0])] ? sum.sleeve : sum.bar) += torque_of(r[0], tau[0], r[1], tau[1]);
    }
    return sum;
}

ParallelMember member(const Material& steel, double outer, double inner)
{
    return {{Millimetre(2 * outer), Millimetre(2 * inner)}, steel.elastic_modulus, steel.poisson_ratio};
}

}  // namespace

std::vector<double> torque_places(const Case& asked)
{
    const auto end = [&](Side side)
    {
        const Bar& bar = *asked.bar[index(side)];
        const double weld = sleeve_reach(*asked.sleeve, side) + asked.sleeve->weld.leg_on_bar.value();
        return std::min(weld + beside_weld * bar.sections.front().diameter.value(), 0.98 * length_of(bar));
    };
    const double left = -end(Side::left), right = end(Side::right);
    std::vector<double> places;
    for (int i = 0; i < n_places; ++i) places.push_back(left + (right - left) * i / (n_places - 1));
    // Where the stiffness jumps: both sides of it.
    for (const double jump : {-sleeve_reach(*asked.sleeve, Side::left), 0.0, sleeve_reach(*asked.sleeve, Side::right)})
        places.insert(places.end(), {jump - at_jump, jump + at_jump});
    std::sort(places.begin(), places.end());
    return places;
}

double share_by_stiffness(const Case& asked, double z)
{
    const Sleeve& sleeve = *asked.sleeve;
    const Side side = z < 0 ? Side::left : Side::right;
    const double from_end = sleeve_reach(sleeve, side) - std::abs(z);
    if (from_end < 0) return 0;
    const Bar& bar = *asked.bar[index(side)];
    const double radius = bar.sections.front().diameter.value() / 2;
    const double end = sleeve.end_diameter.value() / 2, full = sleeve.outer_diameter.value() / 2;
    const double taper = sleeve.taper_length.value();
    const double outer = taper > 0 ? std::min(full, end + (full - end) * from_end / taper) : full;
    return sleeve_share(member(sleeve.material, outer, radius + sleeve.clearance[index(side)].value() / 2),
                        member(bar.material, radius, bar.bore.value() / 2))
        .value.torsion;
}

std::vector<TorquePoint> torque_flow(const Case& asked, const MeridianAnswer& answer)
{
    std::vector<TorquePoint> flow;
    if (!asked.sleeve) return flow;
    const SolvedFields& fields = answer.fields;
    const DrawnSection section = drawn_section(fields, {1, 0, 0, 0});
    std::vector<bool> in_sleeve;
    for (const int region : fields.region_nodes.region)
        in_sleeve.push_back(!fields.mesh.region[std::size_t(region)].starts_with("bar"));
    for (const double z : torque_places(asked))
    {
        const Cut cut = cut_at(section, in_sleeve, z + n_hairs);
        flow.push_back({z, cut.sleeve / (cut.sleeve + cut.bar), share_by_stiffness(asked, z)});
    }
    return flow;
}

}  // namespace splicewright
