// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/kept_places.h"

#include <algorithm>

namespace splicewright
{
namespace
{

constexpr double least_plain_diameters = 0.9;  // a shorter stretch between two features is no plain bar

// The place a part of the way from one place to the next.
void add_place(const SurfacePlaces& places, std::size_t first, std::size_t second, double part, SurfacePlaces& to)
{
    const auto between = [&](const std::vector<double>& of) { return (1 - part) * of[first] + part * of[second]; };
    to.s.push_back(between(places.s));
    to.z.push_back(between(places.z));
    to.r.push_back(between(places.r));
    to.edge.push_back(places.edge[first]);
    to.local.push_back(places.edge[first] == places.edge[second] ? between(places.local)
                                                                 : (1 - part) * places.local[first] + part);
}

// Where the stretch that counts begins or ends, so that it does not depend on where the mesh has its places.
void add_place_at(const SurfacePlaces& places, double s, SurfacePlaces& to)
{
    const auto after = std::upper_bound(places.s.begin() + 1, places.s.end() - 1, s);
    const auto second = static_cast<std::size_t>(after - places.s.begin());
    add_place(places, second - 1, second, (s - places.s[second - 1]) / (places.s[second] - places.s[second - 1]), to);
}

}  // namespace

std::optional<double> end_margin(double length, double diameter, double free_of_ends)
{
    if (length < least_plain_diameters * diameter) return std::nullopt;
    return std::min(free_of_ends * diameter, 0.45 * length);
}

SurfacePlaces clear_places(const SurfacePlaces& places, const std::array<double, 2>& outermost)
{
    SurfacePlaces kept;
    for (std::size_t i = 0; i < places.s.size(); ++i)
        if (places.z[i] > -outermost[0] && places.z[i] < outermost[1]) add_place(places, i, i, 0, kept);
    return kept;
}

SurfacePlaces kept_places(const SurfacePlaces& places, double free_of_ends)
{
    if (free_of_ends <= 0 || places.s.empty()) return places;
    const double length = places.s.back();
    const std::optional<double> kept_off = end_margin(length, 2 * places.r.front(), free_of_ends);
    if (!kept_off) return {};
    const double margin = *kept_off;
    SurfacePlaces kept;
    add_place_at(places, margin, kept);
    for (std::size_t i = 0; i < places.s.size(); ++i)
        if (places.s[i] > margin && places.s[i] < length - margin) add_place(places, i, i, 0, kept);
    add_place_at(places, length - margin, kept);
    return kept;
}

}  // namespace splicewright
