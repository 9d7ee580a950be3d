// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "mesh/solid_flat.h"

namespace splicewright
{
namespace
{

// Two faces of an element that meet at more than this lie on one smooth surface. Judgement: chords of circles meet at
// more than 140 degrees in every mesh, corners of the section at less.
constexpr double smooth_from = 140 * std::numbers::pi / 180;
constexpr int most_rounds = 20;

std::size_t at(int i) { return static_cast<std::size_t>(i); }

using FaceKey = std::array<int, 3>;

FaceKey key_of(int a, int b, int c)
{
    FaceKey key{a, b, c};
    std::sort(key.begin(), key.end());
    return key;
}

SolidPoint normal_of(const SolidPoint& a, const SolidPoint& b, const SolidPoint& c)
{
    const double ux = b.x - a.x, uy = b.y - a.y, uz = b.z - a.z, vx = c.x - a.x, vy = c.y - a.y, vz = c.z - a.z;
    return {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
}

// Angle inside the element between its faces opposite to corners i and j, rad.
double angle_between_faces(const std::vector<SolidPoint>& nodes, const std::array<int, 4>& corner, std::size_t i,
                           std::size_t j)
{
    const auto normal = [&](std::size_t face)
    {
        const auto& f = faces_of_tetrahedron[face];
        return normal_of(nodes[at(corner[at(f[0])])], nodes[at(corner[at(f[1])])], nodes[at(corner[at(f[2])])]);
    };
    const SolidPoint n = normal(i), m = normal(j);
    const double cosine = (n.x * m.x + n.y * m.y + n.z * m.z) /
                          std::sqrt((n.x * n.x + n.y * n.y + n.z * n.z) * (m.x * m.x + m.y * m.y + m.z * m.z));
    return std::numbers::pi - std::acos(std::clamp(cosine, -1.0, 1.0));
}

// Edges to part, each between the two corners that lie opposite to two faces on one smooth surface; no element is
// touched twice.
std::set<std::uint64_t> edges_to_part(const FlatSolid& flat, const std::set<FaceKey>& on_shape,
                                      const std::vector<bool>& node_on_shape)
{
    std::set<std::uint64_t> surface_edges, wanted, chosen;
    for (const FlatSolid::Triangle& t : flat.triangles)
        for (std::size_t e = 0; e < 3; ++e) surface_edges.insert(solid_edge_key(t.nodes[e], t.nodes[(e + 1) % 3]));
    for (const auto& corner : flat.tetrahedra)
    {
        std::vector<std::size_t> outer;
        for (std::size_t f = 0; f < 4; ++f)
        {
            const auto& face = faces_of_tetrahedron[f];
            const int a = corner[at(face[0])], b = corner[at(face[1])], c = corner[at(face[2])];
            if (node_on_shape[at(a)] && node_on_shape[at(b)] && node_on_shape[at(c)] &&
                on_shape.contains(key_of(a, b, c)))
                outer.push_back(f);
        }
        for (std::size_t i = 0; i < outer.size(); ++i)
            for (std::size_t j = i + 1; j < outer.size(); ++j)
            {
                const std::uint64_t edge = solid_edge_key(corner[outer[i]], corner[outer[j]]);
                if (!surface_edges.contains(edge) &&
                    angle_between_faces(flat.nodes, corner, outer[i], outer[j]) > smooth_from)
                    wanted.insert(edge);
            }
    }
    std::set<std::uint64_t> refused;
    for (const auto& corner : flat.tetrahedra)
    {
        bool taken = false;
        for (const auto& [i, j] : edges_of_tetrahedron)
        {
            const std::uint64_t edge = solid_edge_key(corner[at(i)], corner[at(j)]);
            if (!wanted.contains(edge)) continue;
            if (taken) refused.insert(edge);
            taken = taken || !refused.contains(edge);
        }
    }
    std::set_difference(wanted.begin(), wanted.end(), refused.begin(), refused.end(),
                        std::inserter(chosen, chosen.end()));
    return chosen;
}

void part_edges(FlatSolid& flat, const std::set<std::uint64_t>& edges)
{
    std::unordered_map<std::uint64_t, int> middle;
    for (const std::uint64_t edge : edges)
    {
        const SolidPoint a = flat.nodes[edge >> 32], b = flat.nodes[edge & 0xffffffffU];
        middle[edge] = static_cast<int>(flat.nodes.size());
        flat.nodes.push_back({(a.x + b.x) / 2, (a.y + b.y) / 2, (a.z + b.z) / 2});
    }
    const std::size_t before = flat.tetrahedra.size();
    for (std::size_t t = 0; t < before; ++t)
        for (const auto& [i, j] : edges_of_tetrahedron)
        {
            const auto found = middle.find(solid_edge_key(flat.tetrahedra[t][at(i)], flat.tetrahedra[t][at(j)]));
            if (found == middle.end()) continue;
            std::array<int, 4> other = flat.tetrahedra[t];
            flat.tetrahedra[t][at(i)] = found->second;
            other[at(j)] = found->second;
            flat.tetrahedra.push_back(other);
            flat.region.push_back(flat.region[t]);
            break;
        }
}

}  // namespace

void part_flat_elements(FlatSolid& flat)
{
    std::set<FaceKey> on_shape;
    std::vector<bool> node_on_shape(flat.nodes.size(), false);
    for (const FlatSolid::Triangle& t : flat.triangles)
    {
        on_shape.insert(key_of(t.nodes[0], t.nodes[1], t.nodes[2]));
        for (const int node : t.nodes) node_on_shape[at(node)] = true;
    }
    for (int round = 0; round < most_rounds; ++round)
    {
        const std::set<std::uint64_t> edges = edges_to_part(flat, on_shape, node_on_shape);
        if (edges.empty()) return;
        part_edges(flat, edges);
        node_on_shape.resize(flat.nodes.size(), false);
    }
}

}  // namespace splicewright
