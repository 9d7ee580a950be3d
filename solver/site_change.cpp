// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/site_change.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr double hot = 0.9;  // of the peak
constexpr double same_place_mm = 1e-9;
constexpr double same_height = 1e-6;  // of two stresses along a straight bar, which round-off alone puts in order
constexpr int angles_over_half_turn = 12;

using Stresses = std::array<double, 3>;  // von Mises, principal, shear

// At one place, the largest over theta and over the ways in which the slit may hang together.
Stresses place_stresses(const SiteAnswer& site, Eigen::Index place, const CombinedLoad& unit)
{
    Stresses largest{0, 0, 0};
    const int n_angles = unit.bending == 0 ? 0 : angles_over_half_turn;
    for (const SiteStress& bracket : site.brackets)
        for (int k = 0; k <= n_angles; ++k)
        {
            const double theta = n_angles == 0 ? 0 : std::numbers::pi * k / n_angles;
            const PointStress stress = point_stress(bracket, place, unit, theta);
            largest[0] = std::max(largest[0], von_mises(stress));
            largest[1] = std::max(largest[1], std::abs(largest_principal(stress)));
            largest[2] = std::max(largest[2], std::abs(stress.shear));
        }
    return largest;
}

std::vector<Stresses> along_site(const SiteAnswer& site, const CombinedLoad& unit)
{
    std::vector<Stresses> along;
    if (site.brackets.empty()) return along;
    for (Eigen::Index i = 0; i < site.brackets.front().z.size(); ++i) along.push_back(place_stresses(site, i, unit));
    return along;
}

// A place on the surface of another mesh: between two of its places.
struct Between
{
    std::size_t first = 0, second = 0;
    double part = 0;  // 0 at the first, 1 at the second
};

// Where the surface of another mesh comes nearest to a place: twice where two steels meet, since the stress has one
// value on each side there.
std::vector<Between> nearest(const SiteStress& surface, double z, double r)
{
    const Eigen::ArrayXd squares = (surface.z.array() - z).square() + (surface.r.array() - r).square();
    const double least = std::sqrt(squares.minCoeff()) + same_place_mm;
    std::vector<Between> found;
    for (Eigen::Index best = 0; best < squares.size(); ++best)
    {
        if (squares(best) > least * least) continue;
        Between result{static_cast<std::size_t>(best), static_cast<std::size_t>(best), 0};
        for (const Eigen::Index next : {best - 1, best + 1})
        {
            if (next < 0 || next >= squares.size()) continue;
            const double along_z = surface.z(next) - surface.z(best), along_r = surface.r(next) - surface.r(best);
            const double length = along_z * along_z + along_r * along_r;
            const double part = ((z - surface.z(best)) * along_z + (r - surface.r(best)) * along_r) / length;
            if (length > 0 && part > result.part && part <= 1)
            {
                result.second = static_cast<std::size_t>(next);
                result.part = part;
            }
        }
        found.push_back(result);
    }
    return found;
}

StretchChange stretch_change(const std::vector<Stresses>& now, const std::vector<Stresses>& before,
                             const std::vector<std::vector<Between>>& places, std::size_t which)
{
    double peak = 0, within = 0, squares = 0;
    for (std::size_t i = 0; i < now.size(); ++i)
    {
        peak = std::max(peak, now[i][which]);
        if (i > 0 && i + 1 < now.size()) within = std::max(within, now[i][which]);
    }
    StretchChange change;
    int n = 0;
    for (std::size_t i = 0; i < now.size(); ++i)
    {
        if (now[i][which] < hot * peak) continue;
        double moved = INFINITY;
        for (const Between& place : places[i])
        {
            const double old = (1 - place.part) * before[place.first][which] + place.part * before[place.second][which];
            moved = std::min(moved, std::abs(now[i][which] - old));
        }
        squares += moved * moved;
        change.largest = std::max(change.largest, moved);
        ++n;
    }
    change.typical = n > 0 ? std::sqrt(squares / n) : 0;
    if (peak > (1 + same_height) * within) change.at_end = change.largest;
    return change;
}

}  // namespace

SiteChange site_change(const SiteAnswer& now, const SiteAnswer& before, const CombinedLoad& unit)
{
    const std::vector<Stresses> here = along_site(now, unit), there = along_site(before, unit);
    if (here.empty() || there.empty()) return {};
    const SiteStress &surface = now.brackets.front(), &old = before.brackets.front();
    std::vector<std::vector<Between>> places;
    for (Eigen::Index i = 0; i < surface.z.size(); ++i) places.push_back(nearest(old, surface.z(i), surface.r(i)));
    return {stretch_change(here, there, places, 0), stretch_change(here, there, places, 1),
            stretch_change(here, there, places, 2)};
}

}  // namespace splicewright
