// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/solid_flat.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>

#include "mesh/refuse_mesh.h"

namespace splicewright
{
namespace
{

constexpr double recognised_mm = 1e-3;  // a node of a face lies this close to its shape; the nearest shape is taken

std::size_t at(int i) { return static_cast<std::size_t>(i); }

// The mesher's face numbers to indices of shapes.
std::map<int, int> recognised_faces(const FlatSolid& flat, const std::vector<FaceShape>& shapes)
{
    std::map<int, std::set<int>> nodes;
    for (const FlatSolid::Triangle& triangle : flat.triangles)
        nodes[triangle.face].insert(triangle.nodes.begin(), triangle.nodes.end());
    std::map<int, int> shape_of;
    for (const auto& [face, on_it] : nodes)
    {
        double best = recognised_mm;
        for (std::size_t s = 0; s < shapes.size(); ++s)
        {
            double farthest = 0;
            for (const int node : on_it)
            {
                farthest = std::max(farthest, distance_from(shapes[s], flat.nodes[at(node)]));
                if (farthest >= best) break;
            }
            if (farthest < best) best = farthest, shape_of[face] = static_cast<int>(s);
        }
        if (!shape_of.contains(face))
        {
            const SolidPoint p = flat.nodes[at(*on_it.begin())];
            refuse_mesh("solid",
                        fmt::format("a face at x = {:.3g}, y = {:.3g}, z = {:.3g} mm belongs to no surface of the case",
                                    p.x, p.y, p.z));
        }
    }
    return shape_of;
}

// The mesher's volume numbers to indices of regions, by the middle of the largest element.
std::map<int, int> recognised_volumes(const FlatSolid& flat, const SolidGeometry& geometry)
{
    std::map<int, std::pair<double, std::size_t>> largest;
    for (std::size_t t = 0; t < flat.tetrahedra.size(); ++t)
    {
        const auto& corner = flat.tetrahedra[t];
        const double volume = six_volumes(flat.nodes[at(corner[0])], flat.nodes[at(corner[1])],
                                          flat.nodes[at(corner[2])], flat.nodes[at(corner[3])]);
        auto& known = largest[flat.region[t]];
        if (volume > known.first) known = {volume, t};
    }
    std::map<int, int> region_of;
    for (const auto& [volume, element] : largest)
    {
        SolidPoint middle;
        for (const int node : flat.tetrahedra[element.second])
        {
            middle.x += flat.nodes[at(node)].x / 4;
            middle.y += flat.nodes[at(node)].y / 4;
            middle.z += flat.nodes[at(node)].z / 4;
        }
        region_of[volume] = region_at(geometry, middle);
        if (region_of[volume] < 0)
            refuse_mesh("solid",
                        fmt::format("a body at x = {:.3g}, y = {:.3g}, z = {:.3g} mm belongs to no part of the case",
                                    middle.x, middle.y, middle.z));
    }
    return region_of;
}

void turn_to_positive(FlatSolid& flat)
{
    for (auto& corner : flat.tetrahedra)
        if (six_volumes(flat.nodes[at(corner[0])], flat.nodes[at(corner[1])], flat.nodes[at(corner[2])],
                        flat.nodes[at(corner[3])]) < 0)
            std::swap(corner[1], corner[2]);
}

void move_onto_shapes(FlatSolid& flat, const std::vector<FaceShape>& shapes)
{
    std::vector<std::vector<const FaceShape*>> on(flat.nodes.size());
    for (const FlatSolid::Triangle& triangle : flat.triangles)
        for (const int node : triangle.nodes)
        {
            const FaceShape* shape = &shapes[at(triangle.face)];
            if (std::find(on[at(node)].begin(), on[at(node)].end(), shape) == on[at(node)].end())
                on[at(node)].push_back(shape);
        }
    for (std::size_t i = 0; i < flat.nodes.size(); ++i)
        if (!on[i].empty()) flat.nodes[i] = middle_on(on[i], flat.nodes[i], flat.nodes[i]);
}

}  // namespace

double six_volumes(const SolidPoint& a, const SolidPoint& b, const SolidPoint& c, const SolidPoint& d)
{
    const double ux = b.x - a.x, uy = b.y - a.y, uz = b.z - a.z;
    const double vx = c.x - a.x, vy = c.y - a.y, vz = c.z - a.z;
    const double wx = d.x - a.x, wy = d.y - a.y, wz = d.z - a.z;
    return ux * (vy * wz - vz * wy) - uy * (vx * wz - vz * wx) + uz * (vx * wy - vy * wx);
}

void recognise_parts(FlatSolid& flat, const SolidGeometry& geometry, const std::vector<FaceShape>& shapes)
{
    turn_to_positive(flat);
    const std::map<int, int> shape_of = recognised_faces(flat, shapes);
    const std::map<int, int> region_of = recognised_volumes(flat, geometry);
    for (FlatSolid::Triangle& triangle : flat.triangles) triangle.face = shape_of.at(triangle.face);
    for (int& region : flat.region) region = region_of.at(region);
    move_onto_shapes(flat, shapes);
    for (std::size_t t = 0; t < flat.tetrahedra.size(); ++t)
    {
        const auto& c = flat.tetrahedra[t];
        const SolidPoint& p = flat.nodes[at(c[0])];
        if (six_volumes(p, flat.nodes[at(c[1])], flat.nodes[at(c[2])], flat.nodes[at(c[3])]) <= 0)
            refuse_mesh("solid",
                        fmt::format("an element at x = {:.3g}, y = {:.3g}, z = {:.3g} mm is flat", p.x, p.y, p.z));
    }
}

std::unordered_map<std::uint64_t, std::vector<const FaceShape*>> shapes_of_edges(const FlatSolid& flat,
                                                                                 const std::vector<FaceShape>& shapes)
{
    std::unordered_map<std::uint64_t, std::vector<const FaceShape*>> on;
    on.reserve(2 * flat.triangles.size());
    for (const FlatSolid::Triangle& triangle : flat.triangles)
        for (std::size_t e = 0; e < 3; ++e)
        {
            auto& known = on[solid_edge_key(triangle.nodes[e], triangle.nodes[(e + 1) % 3])];
            const FaceShape* shape = &shapes[at(triangle.face)];
            if (std::find(known.begin(), known.end(), shape) == known.end()) known.push_back(shape);
        }
    return on;
}

}  // namespace splicewright
