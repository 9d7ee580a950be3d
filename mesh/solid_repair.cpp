// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "mesh/solid_flat.h"

namespace splicewright
{
namespace
{

constexpr double worth_mending = 0.03;  // shape of an element; judgement, seen: below 0.001 the solver slows down
constexpr int most_rounds = 6;
constexpr std::array<double, 5> steps{1.0, 0.5, 0.25, 0.1, -0.2};  // of the way to the middle of the neighbours

std::size_t at(int i) { return static_cast<std::size_t>(i); }

double square(const SolidPoint& a, const SolidPoint& b)
{
    return (a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y) + (a.z - b.z) * (a.z - b.z);
}

// Moves inner nodes of badly shaped elements one by one.
class Mender
{
public:
    explicit Mender(FlatSolid& flat) : flat_(flat), is_inner_(flat.nodes.size(), true), around_(flat.nodes.size())
    {
        for (const FlatSolid::Triangle& triangle : flat.triangles)
            for (const int node : triangle.nodes) is_inner_[at(node)] = false;
        for (std::size_t t = 0; t < flat.tetrahedra.size(); ++t)
            for (const int node : flat.tetrahedra[t]) around_[at(node)].push_back(static_cast<int>(t));
    }

    void mend()
    {
        for (int round = 0; round < most_rounds; ++round)
        {
            bool moved = false;
            for (std::size_t t = 0; t < flat_.tetrahedra.size(); ++t)
                if (shape_of_element(flat_, t) < worth_mending)
                    for (const int node : flat_.tetrahedra[t]) moved = improve(node) || moved;
            if (!moved) return;
        }
    }

private:
    [[nodiscard]] double worst_around(int node) const
    {
        double worst = 1;
        for (const int t : around_[at(node)]) worst = std::min(worst, shape_of_element(flat_, at(t)));
        return worst;
    }

    bool improve(int node)
    {
        if (!is_inner_[at(node)]) return false;
        std::set<int> neighbours;
        for (const int t : around_[at(node)])
            for (const int other : flat_.tetrahedra[at(t)])
                if (other != node) neighbours.insert(other);
        SolidPoint middle;
        for (const int other : neighbours)
        {
            const SolidPoint& p = flat_.nodes[at(other)];
            middle.x += p.x, middle.y += p.y, middle.z += p.z;
        }
        const double n = static_cast<double>(neighbours.size());
        const SolidPoint before = flat_.nodes[at(node)];
        SolidPoint best = before;
        double best_shape = worst_around(node);
        const double first_shape = best_shape;
        const auto look = [&](const SolidPoint& place)
        {
            flat_.nodes[at(node)] = place;
            if (const double shape = worst_around(node); shape > best_shape) best_shape = shape, best = place;
        };
        for (const double step : steps)
            look({before.x + step * (middle.x / n - before.x), before.y + step * (middle.y / n - before.y),
                  before.z + step * (middle.z / n - before.z)});
        // Where the middle lies in the sheet itself: to all sides.
        double reach = INFINITY;
        for (const int other : neighbours) reach = std::min(reach, square(before, flat_.nodes[at(other)]));
        for (const double share : {0.15, 0.35})
            for (const int x : {-1, 0, 1})
                for (const int y : {-1, 0, 1})
                    for (const int z : {-1, 0, 1})
                    {
                        const double way = share * std::sqrt(reach);
                        look({before.x + way * x, before.y + way * y, before.z + way * z});
                    }
        flat_.nodes[at(node)] = best;
        return best_shape > 1.05 * first_shape;
    }

    FlatSolid& flat_;
    std::vector<bool> is_inner_;
    std::vector<std::vector<int>> around_;
};

}  // namespace

double shape_of_element(const FlatSolid& flat, std::size_t element)
{
    const auto& corner = flat.tetrahedra[element];
    std::array<SolidPoint, 4> p;
    for (std::size_t i = 0; i < 4; ++i) p[i] = flat.nodes[at(corner[i])];
    double squares = 0;
    for (const auto& [i, j] : edges_of_tetrahedron) squares += square(p[at(i)], p[at(j)]);
    const double mean = std::sqrt(squares / 6);
    return std::sqrt(2.0) * six_volumes(p[0], p[1], p[2], p[3]) / (mean * mean * mean);
}

double worst_shape(const FlatSolid& flat)
{
    double worst = 1;
    for (std::size_t t = 0; t < flat.tetrahedra.size(); ++t) worst = std::min(worst, shape_of_element(flat, t));
    return worst;
}

void mend_flat_solid(FlatSolid& flat)
{
    if (worst_shape(flat) < worth_mending) Mender(flat).mend();
}

}  // namespace splicewright
