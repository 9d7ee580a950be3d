// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/mesh/solid_measure.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

#include "tests/mesh/sample_cases.h"

namespace splicewright::sample
{
namespace
{

using Vector = std::array<double, 3>;

std::size_t at(std::int32_t i) { return static_cast<std::size_t>(i); }

Vector cross(const Vector& a, const Vector& b)
{
    return {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
}

// Three-point Gauss rule on 0 to 1, exact to degree 5.
struct GaussPoint
{
    double place, weight;
};
const std::array<GaussPoint, 3>& gauss()
{
    static const double half = std::sqrt(0.6) / 2;
    static const std::array<GaussPoint, 3> points{{{0.5 - half, 5.0 / 18}, {0.5, 4.0 / 9}, {0.5 + half, 5.0 / 18}}};
    return points;
}

// Quadratic shape functions of a simplex and their slopes along its edges from corner 0.
template <std::size_t corners, std::size_t nodes>
struct Shapes
{
    std::array<double, nodes> value{};
    std::array<std::array<double, corners - 1>, nodes> slope{};
};

template <std::size_t corners, std::size_t nodes>
Shapes<corners, nodes> shapes_at(const std::array<double, corners>& l,
                                 const std::array<std::array<int, 2>, nodes - corners>& edges)
{
    const auto d = [](std::size_t i, std::size_t k) { return i == 0 ? -1.0 : (i == k + 1 ? 1.0 : 0.0); };
    Shapes<corners, nodes> shapes;
    for (std::size_t i = 0; i < corners; ++i)
    {
        shapes.value[i] = l[i] * (2 * l[i] - 1);
        for (std::size_t k = 0; k + 1 < corners; ++k) shapes.slope[i][k] = (4 * l[i] - 1) * d(i, k);
    }
    for (std::size_t e = 0; e < edges.size(); ++e)
    {
        const auto i = static_cast<std::size_t>(edges[e][0]), j = static_cast<std::size_t>(edges[e][1]);
        shapes.value[corners + e] = 4 * l[i] * l[j];
        for (std::size_t k = 0; k + 1 < corners; ++k)
            shapes.slope[corners + e][k] = 4 * (l[i] * d(j, k) + l[j] * d(i, k));
    }
    return shapes;
}

constexpr std::array<std::array<int, 2>, 6> solid_edges{{{0, 1}, {1, 2}, {2, 0}, {0, 3}, {1, 3}, {2, 3}}};
constexpr std::array<std::array<int, 2>, 3> face_edges{{{0, 1}, {1, 2}, {2, 0}}};

}  // namespace

SolidMeasure measure_of(const SolidMeshAnswer& answer, const std::string& region)
{
    SolidMeasure total;
    const SolidMesh& mesh = answer.mesh;
    for (std::size_t t = 0; t < mesh.elements.size(); ++t)
    {
        if (answer.regions[at(mesh.regions[t])] != region) continue;
        for (const GaussPoint& u : gauss())
            for (const GaussPoint& v : gauss())
                for (const GaussPoint& w : gauss())
                {
                    // The unit cube folded onto the tetrahedron.
                    const double a = u.place, b = v.place * (1 - a), c = w.place * (1 - a) * (1 - v.place);
                    const double weight = u.weight * v.weight * w.weight * (1 - a) * (1 - a) * (1 - v.place);
                    const auto shapes = shapes_at<4, 10>({1 - a - b - c, a, b, c}, solid_edges);
                    Vector x{};
                    std::array<Vector, 3> slope{};
                    for (std::size_t n = 0; n < 10; ++n)
                        for (std::size_t d = 0; d < 3; ++d)
                        {
                            const double place = mesh.nodes[at(mesh.elements[t][n])][d];
                            x[d] += shapes.value[n] * place;
                            for (std::size_t k = 0; k < 3; ++k) slope[k][d] += shapes.slope[n][k] * place;
                        }
                    const Vector normal = cross(slope[0], slope[1]);
                    const double volume =
                        weight * (normal[0] * slope[2][0] + normal[1] * slope[2][1] + normal[2] * slope[2][2]);
                    total.volume += volume;
                    for (std::size_t d = 0; d < 3; ++d) total.moment[d] += volume * x[d];
                }
    }
    return total;
}

double area_of(const SolidMesh& mesh, const std::string& face)
{
    double area = 0;
    const auto found = mesh.faces.find(face);
    if (found == mesh.faces.end()) return 0;
    for (const SolidMesh::Face& part : found->second)
        for (const GaussPoint& u : gauss())
            for (const GaussPoint& v : gauss())
            {
                const double a = u.place, b = v.place * (1 - a);
                const auto shapes = shapes_at<3, 6>({1 - a - b, a, b}, face_edges);
                std::array<Vector, 2> slope{};
                for (std::size_t n = 0; n < 6; ++n)
                    for (std::size_t d = 0; d < 3; ++d)
                        for (std::size_t k = 0; k < 2; ++k)
                            slope[k][d] += shapes.slope[n][k] * mesh.nodes[at(part.nodes[n])][d];
                const Vector normal = cross(slope[0], slope[1]);
                area += u.weight * v.weight * (1 - a) * std::hypot(normal[0], normal[1], normal[2]);
            }
    return area;
}

int parts_of(const SolidMeshAnswer& answer, const std::vector<std::string>& regions)
{
    std::vector<std::int32_t> leader(answer.mesh.nodes.size());
    std::iota(leader.begin(), leader.end(), 0);
    const auto root = [&](std::int32_t i)
    {
        while (leader[at(i)] != i) i = leader[at(i)] = leader[at(leader[at(i)])];
        return i;
    };
    std::vector<bool> used(leader.size(), false);
    for (std::size_t t = 0; t < answer.mesh.elements.size(); ++t)
    {
        const std::string& region = answer.regions[at(answer.mesh.regions[t])];
        if (std::find(regions.begin(), regions.end(), region) == regions.end()) continue;
        for (const std::int32_t node : answer.mesh.elements[t])
        {
            used[at(node)] = true;
            leader[at(root(node))] = root(answer.mesh.elements[t][0]);
        }
    }
    int parts = 0;
    for (std::int32_t i = 0; i < static_cast<std::int32_t>(leader.size()); ++i)
        parts += used[at(i)] && root(i) == i ? 1 : 0;
    return parts;
}

Case half_lap_splice()
{
    Case made = pressed_splice(32, 50, 110, 0);
    made.sleeve->slit = {SlitState::snug, SlitState::snug};
    made.joint->penetration = Millimetre{8};
    made.joint->half_lap = Millimetre{20};
    made.joint->lap_corner_radius = Millimetre{1};
    return made;
}

Case plugged_splice()
{
    Case made = half_lap_splice();
    made.sleeve->plugs.push_back({3, Millimetre{10}, Millimetre{-24}, std::nullopt, Radian{0.5}});
    made.sleeve->plugs.push_back({2, Millimetre{8}, Millimetre{22}, Millimetre{5}, Radian{0}});
    return made;
}

Case partly_welded_splice()
{
    constexpr double degree = std::numbers::pi / 180;
    Case made = half_lap_splice();
    made.sleeve->weld.coverage = Radian{270 * degree};
    made.sleeve->weld.start = {Radian{30 * degree}, Radian{100 * degree}};
    return made;
}

}  // namespace splicewright::sample
