// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/label_layout.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

double spacing(const LabelRoom& room) { return 2 * room.radius + room.gap; }

int rail_capacity(const LabelRoom& room)
{
    return static_cast<int>(std::floor((room.right - room.left - 2 * room.radius) / spacing(room) + 1e-9)) + 1;
}

double turn(const SheetPoint& a, const SheetPoint& b, const SheetPoint& c)
{
    return (b - a).x() * (c - a).y() - (b - a).y() * (c - a).x();
}

bool cross(const Leader& one, const Leader& other)
{
    return turn(one.site, one.knee, other.site) * turn(one.site, one.knee, other.knee) < 0 &&
           turn(other.site, other.knee, one.site) * turn(other.site, other.knee, one.knee) < 0;
}

// Exchanging the balloons of two crossing leaders shortens them in sum, so this ends.
void uncross(std::vector<Leader>& leaders)
{
    for (bool changed = true; changed;)
    {
        changed = false;
        for (std::size_t i = 0; i < leaders.size(); ++i)
            for (std::size_t k = i + 1; k < leaders.size(); ++k)
                if (cross(leaders[i], leaders[k]))
                {
                    std::swap(leaders[i].knee, leaders[k].knee);
                    std::swap(leaders[i].balloon, leaders[k].balloon);
                    changed = true;
                }
    }
}

// `upwards` is +1 for the rail above the part, -1 for the one below.
std::vector<Leader> on_rail(const std::vector<SheetPoint>& sites, const LabelRoom& room, double upwards)
{
    if (sites.empty()) return {};
    std::vector<double> wish;
    for (const SheetPoint& site : sites)
        wish.push_back(site.x() + (site.x() < (room.left + room.right) / 2 - 1 ? -room.lean : room.lean));
    const std::vector<double> steps(sites.size() - 1, spacing(room));
    const std::vector<double> x = spaced(wish, steps, room.left + room.radius, room.right - room.radius);
    const double edge = upwards > 0 ? room.part.top : room.part.bottom;
    std::vector<Leader> leaders;
    for (std::size_t i = 0; i < sites.size(); ++i)
        leaders.push_back({sites[i],
                           {x[i], edge + upwards * 0.6 * room.stand_off},
                           {x[i], edge + upwards * (room.stand_off + room.radius)}});
    uncross(leaders);
    return leaders;
}

}  // namespace

// Pool adjacent violators on the wishes less the steps before them. Source: [Barlow1972] section 1.2.
std::vector<double> spaced(const std::vector<double>& wish, const std::vector<double>& step, double lowest,
                           double highest)
{
    EXPECTS(wish.empty() || step.size() + 1 == wish.size());
    struct Pool
    {
        double sum;
        int count;
        [[nodiscard]] double mean() const { return sum / count; }
    };
    std::vector<double> before(wish.size(), 0.0);
    for (std::size_t i = 1; i < wish.size(); ++i) before[i] = before[i - 1] + step[i - 1];
    std::vector<Pool> pools;
    for (std::size_t i = 0; i < wish.size(); ++i)
    {
        pools.push_back({wish[i] - before[i], 1});
        while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean())
        {
            const Pool last = pools.back();
            pools.pop_back();
            pools.back().sum += last.sum;
            pools.back().count += last.count;
        }
    }
    std::vector<double> place;
    for (const Pool& pool : pools)
        for (int k = 0; k < pool.count; ++k)
            place.push_back(std::min(std::max(pool.mean(), lowest), highest - before.back()) + before[place.size()]);
    return place;
}

int label_capacity(const LabelRoom& room) { return 2 * rail_capacity(room); }

std::vector<Leader> placed_labels(const std::vector<SheetPoint>& sites, const LabelRoom& room)
{
    EXPECTS(static_cast<int>(sites.size()) <= label_capacity(room));
    std::vector<std::size_t> order(sites.size());
    std::iota(order.begin(), order.end(), 0U);
    const auto height = [&](std::size_t i) { return sites[i].y(); };
    std::stable_sort(order.begin(), order.end(), [&](auto i, auto k) { return height(i) > height(k); });
    const double middle = room.part.bottom + 0.4 * room.part.height();
    auto n_upper = static_cast<std::ptrdiff_t>(
        std::count_if(sites.begin(), sites.end(), [&](const SheetPoint& site) { return site.y() >= middle; }));
    const auto capacity = static_cast<std::ptrdiff_t>(rail_capacity(room));
    const auto total = static_cast<std::ptrdiff_t>(sites.size());
    n_upper = std::clamp(n_upper, std::max<std::ptrdiff_t>(0, total - capacity), std::min(capacity, total));

    std::vector<Leader> placed(sites.size());
    const auto place = [&](std::vector<std::size_t> rail, double upwards)
    {
        std::stable_sort(rail.begin(), rail.end(), [&](auto i, auto k) { return sites[i].x() < sites[k].x(); });
        std::vector<SheetPoint> points;
        for (const std::size_t i : rail) points.push_back(sites[i]);
        const std::vector<Leader> leaders = on_rail(points, room, upwards);
        for (std::size_t k = 0; k < rail.size(); ++k) placed[rail[k]] = leaders[k];
    };
    place({order.begin(), order.begin() + n_upper}, +1);
    place({order.begin() + n_upper, order.end()}, -1);
    return placed;
}

}  // namespace splicewright
