// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>
#include <cmath>

#include "mesh/solid_flat.h"

namespace splicewright
{
namespace
{

std::size_t at(int i) { return static_cast<std::size_t>(i); }

double squared_distance(const SolidPoint& a, const SolidPoint& b)
{
    return (a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y) + (a.z - b.z) * (a.z - b.z);
}

using Children = std::array<std::array<int, 4>, 8>;

// Four corners cut off, and the octahedron that is left parted along its shortest diagonal.
// c: corners; m: middles of the edges 01 12 20 03 13 23.
Children children_of(const std::array<int, 4>& c, const std::array<int, 6>& m, const std::vector<SolidPoint>& nodes)
{
    Children parts{
        {{c[0], m[0], m[2], m[3]}, {m[0], c[1], m[1], m[4]}, {m[2], m[1], c[2], m[5]}, {m[3], m[4], m[5], c[3]}}};
    // Diagonals join the middles of opposite edges, 01-23, 12-03, 20-13, and the four others ring around each.
    constexpr std::array<std::array<int, 6>, 3> ways{{{0, 5, 1, 2, 3, 4}, {1, 3, 0, 4, 5, 2}, {2, 4, 0, 1, 5, 3}}};
    const auto* best = &ways[0];
    for (const auto& way : ways)
        if (squared_distance(nodes[at(m[at(way[0])])], nodes[at(m[at(way[1])])]) <
            squared_distance(nodes[at(m[at((*best)[0])])], nodes[at(m[at((*best)[1])])]))
            best = &way;
    for (std::size_t i = 0; i < 4; ++i)
    {
        parts[4 + i] = {m[at((*best)[0])], m[at((*best)[1])], m[at((*best)[2 + i])], m[at((*best)[2 + (i + 1) % 4])]};
    }
    return parts;
}

double six_volumes_of(const std::array<int, 4>& c, const std::vector<SolidPoint>& nodes)
{
    return six_volumes(nodes[at(c[0])], nodes[at(c[1])], nodes[at(c[2])], nodes[at(c[3])]);
}

struct Middles
{
    std::unordered_map<std::uint64_t, int> of_edge;
    std::vector<SolidPoint> straight;  // by node, from the first new one on
};

Middles add_middles(const FlatSolid& flat, const std::vector<FaceShape>& shapes, std::vector<SolidPoint>& nodes)
{
    Middles middles;
    const auto on = shapes_of_edges(flat, shapes);
    middles.of_edge.reserve(8 * flat.nodes.size());
    for (const auto& corner : flat.tetrahedra)
        for (const auto& [i, j] : edges_of_tetrahedron)
        {
            const int a = corner[at(i)], b = corner[at(j)];
            const auto [place, is_new] =
                middles.of_edge.try_emplace(solid_edge_key(a, b), static_cast<int>(nodes.size()));
            if (!is_new) continue;
            const SolidPoint p = nodes[at(a)], q = nodes[at(b)];
            const SolidPoint straight{(p.x + q.x) / 2, (p.y + q.y) / 2, (p.z + q.z) / 2};
            const auto found = on.find(place->first);
            middles.straight.push_back(straight);
            nodes.push_back(found == on.end() ? straight : middle_on(found->second, p, q));
        }
    return middles;
}

std::array<int, 6> middles_of(const std::array<int, 4>& corner, const Middles& middles)
{
    std::array<int, 6> m{};
    for (std::size_t e = 0; e < 6; ++e)
        m[e] = middles.of_edge.at(
            solid_edge_key(corner[at(edges_of_tetrahedron[e][0])], corner[at(edges_of_tetrahedron[e][1])]));
    return m;
}

// New nodes go back to the straight middle where a child would be turned over.
void keep_positive(const FlatSolid& flat, const Middles& middles, std::vector<SolidPoint>& nodes)
{
    const std::size_t first = flat.nodes.size();
    for (bool changed = true; changed;)
    {
        changed = false;
        for (const auto& corner : flat.tetrahedra)
        {
            const std::array<int, 6> m = middles_of(corner, middles);
            const Children parts = children_of(corner, m, nodes);
            if (std::all_of(parts.begin(), parts.end(),
                            [&](const auto& child) { return six_volumes_of(child, nodes) > 0; }))
                continue;
            for (const int node : m)
            {
                const SolidPoint& straight = middles.straight[at(node) - first];
                if (squared_distance(nodes[at(node)], straight) == 0) continue;
                nodes[at(node)] = straight;
                changed = true;
            }
        }
    }
}

}  // namespace

FlatSolid refined(const FlatSolid& flat, const std::vector<FaceShape>& shapes)
{
    FlatSolid fine;
    fine.nodes = flat.nodes;
    const Middles middles = add_middles(flat, shapes, fine.nodes);
    keep_positive(flat, middles, fine.nodes);
    fine.tetrahedra.reserve(8 * flat.tetrahedra.size());
    for (std::size_t t = 0; t < flat.tetrahedra.size(); ++t)
        for (const std::array<int, 4>& child :
             children_of(flat.tetrahedra[t], middles_of(flat.tetrahedra[t], middles), fine.nodes))
        {
            fine.tetrahedra.push_back(child);
            fine.region.push_back(flat.region[t]);
        }
    for (const FlatSolid::Triangle& triangle : flat.triangles)
    {
        const auto [a, b, c] = triangle.nodes;
        const auto middle = [&](int i, int j) { return middles.of_edge.at(solid_edge_key(i, j)); };
        const int ab = middle(a, b), bc = middle(b, c), ca = middle(c, a);
        for (const std::array<int, 3>& part : {std::array{a, ab, ca}, {ab, b, bc}, {ca, bc, c}, {ab, bc, ca}})
            fine.triangles.push_back({part, triangle.face});
    }
    return fine;
}

}  // namespace splicewright
