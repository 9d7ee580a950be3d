// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>
#include <cmath>
#include <tuple>

#include "cases/problem.h"
#include "mesh/refuse_mesh.h"
#include "mesh/solid_flat.h"

namespace splicewright
{
namespace
{

// An element whose Jacobian falls below this share of its greatest is straightened. Judgement: far above round-off, and
// low enough to keep every notch arc curved.
constexpr double least_jacobian_ratio = 0.02;

std::size_t at(int i) { return static_cast<std::size_t>(i); }

SolidPoint point(const std::array<double, 3>& p) { return {p[0], p[1], p[2]}; }

// Derivatives of the ten shape functions along the three edges from corner 0, [10][3], at barycentric coordinates.
// Source: [Zienkiewicz2005], quadratic tetrahedron; corners L(2L - 1), edges 4 L L.
std::array<std::array<double, 3>, 10> shape_slopes(const std::array<double, 4>& l)
{
    constexpr std::array<std::array<double, 3>, 4> slope{{{-1, -1, -1}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
    std::array<std::array<double, 3>, 10> n{};
    for (std::size_t d = 0; d < 3; ++d)
    {
        for (std::size_t i = 0; i < 4; ++i) n[i][d] = (4 * l[i] - 1) * slope[i][d];
        for (std::size_t e = 0; e < 6; ++e)
        {
            const std::size_t i = at(edges_of_tetrahedron[e][0]), j = at(edges_of_tetrahedron[e][1]);
            n[4 + e][d] = 4 * (l[i] * slope[j][d] + l[j] * slope[i][d]);
        }
    }
    return n;
}

// Corners, middles of edges and the four quadrature points of degree 2. Source: [Zienkiewicz2005].
std::array<std::array<std::array<double, 3>, 10>, 14> slopes_at_checked_points()
{
    constexpr double a = 0.58541019662496845446, b = 0.13819660112501051518;
    std::array<std::array<std::array<double, 3>, 10>, 14> all{};
    for (std::size_t i = 0; i < 4; ++i)
    {
        std::array<double, 4> corner{0, 0, 0, 0}, inner{b, b, b, b};
        corner[i] = 1;
        inner[i] = a;
        all[i] = shape_slopes(corner);
        all[10 + i] = shape_slopes(inner);
    }
    for (std::size_t e = 0; e < 6; ++e)
    {
        std::array<double, 4> middle{0, 0, 0, 0};
        middle[at(edges_of_tetrahedron[e][0])] = middle[at(edges_of_tetrahedron[e][1])] = 0.5;
        all[4 + e] = shape_slopes(middle);
    }
    return all;
}

std::array<SolidPoint, 10> nodes_of(const SolidMesh& mesh, std::size_t element)
{
    std::array<SolidPoint, 10> nodes;
    for (std::size_t i = 0; i < 10; ++i) nodes[i] = point(mesh.nodes[at(mesh.elements[element][i])]);
    return nodes;
}

std::array<double, 3> straight_middle(const SolidMesh& mesh, std::int32_t a, std::int32_t b)
{
    std::array<double, 3> middle{};
    for (std::size_t d = 0; d < 3; ++d) middle[d] = (mesh.nodes[at(a)][d] + mesh.nodes[at(b)][d]) / 2;
    return middle;
}

// Returns how many edges were straightened.
std::size_t straighten_folded(SolidMesh& mesh, std::vector<bool>& is_curved)
{
    std::size_t straightened = 0;
    for (bool changed = true; changed;)
    {
        changed = false;
        for (std::size_t t = 0; t < mesh.elements.size(); ++t)
        {
            const auto& element = mesh.elements[t];
            if (std::none_of(element.begin() + 4, element.end(), [&](std::int32_t n) { return is_curved[at(n)]; }))
                continue;
            const auto [least, greatest] = jacobian_range(nodes_of(mesh, t));
            if (least > least_jacobian_ratio * greatest) continue;
            for (std::size_t e = 0; e < 6; ++e)
            {
                const std::int32_t middle = element[4 + e];
                if (!is_curved[at(middle)]) continue;
                mesh.nodes[at(middle)] = straight_middle(mesh, element[at(edges_of_tetrahedron[e][0])],
                                                         element[at(edges_of_tetrahedron[e][1])]);
                is_curved[at(middle)] = false;
                ++straightened;
                changed = true;
            }
        }
    }
    return straightened;
}

struct EdgeNodes
{
    std::unordered_map<std::uint64_t, std::int32_t> of_edge;
    std::vector<bool> is_curved;  // by node
};

EdgeNodes add_edge_nodes(SolidMesh& mesh, const FlatSolid& flat, const std::vector<FaceShape>& shapes)
{
    EdgeNodes edges;
    const auto on = shapes_of_edges(flat, shapes);
    edges.of_edge.reserve(8 * flat.nodes.size());
    for (const auto& corner : flat.tetrahedra)
    {
        std::array<std::int32_t, 10> element{};
        std::copy(corner.begin(), corner.end(), element.begin());
        for (std::size_t e = 0; e < 6; ++e)
        {
            const int a = corner[at(edges_of_tetrahedron[e][0])], b = corner[at(edges_of_tetrahedron[e][1])];
            const auto [place, is_new] =
                edges.of_edge.try_emplace(solid_edge_key(a, b), static_cast<std::int32_t>(mesh.nodes.size()));
            element[4 + e] = place->second;
            if (!is_new) continue;
            std::array<double, 3> middle = straight_middle(mesh, a, b);
            if (const auto found = on.find(place->first); found != on.end())
            {
                const SolidPoint curved = middle_on(found->second, flat.nodes[at(a)], flat.nodes[at(b)]);
                middle = {curved.x, curved.y, curved.z};
            }
            mesh.nodes.push_back(middle);
        }
        mesh.elements.push_back(element);
    }
    return edges;
}

void mark_curved(const SolidMesh& mesh, EdgeNodes& edges)
{
    edges.is_curved.assign(mesh.nodes.size(), false);
    for (const auto& [key, node] : edges.of_edge)
    {
        const auto straight =
            straight_middle(mesh, static_cast<std::int32_t>(key >> 32), static_cast<std::int32_t>(key & 0xffffffffU));
        double bulge = 0;
        for (std::size_t d = 0; d < 3; ++d) bulge = std::max(bulge, std::abs(straight[d] - mesh.nodes[at(node)][d]));
        edges.is_curved[at(node)] = bulge > 1e-9;
    }
}

// Of the shaft still in line. These edges border unfused faces, so that splitting leaves their nodes alone.
std::map<std::string, std::vector<std::int32_t>> edge_nodes_of(const SolidMesh& mesh, const SolidGeometry& geometry)
{
    constexpr double same_place = 1e-6;  // mm
    std::map<std::string, std::vector<std::int32_t>> found;
    for (std::size_t n = 0; n < mesh.nodes.size(); ++n)
    {
        const SolidPoint p = point(mesh.nodes[n]);
        const double r = std::hypot(p.x, p.y);
        for (const PlugShape& plug : geometry.plugs)
        {
            const double along = p.x * std::cos(plug.angle) + p.y * std::sin(plug.angle);
            const double across = p.y * std::cos(plug.angle) - p.x * std::sin(plug.angle);
            if (along > 0 && std::abs(r - plug.bar_radius) < same_place &&
                std::abs(std::hypot(across, p.z - plug.z) - plug.radius) < same_place)
                found[plug.name].push_back(static_cast<std::int32_t>(n));
        }
        if (geometry.lap && std::abs(r - geometry.lap->fused_from) < same_place &&
            distance_from_lap(*geometry.lap, p) < same_place)
            found["land-edge"].push_back(static_cast<std::int32_t>(n));
    }
    return found;
}

using FaceKey = std::array<int, 3>;

FaceKey sorted(FaceKey key)
{
    std::sort(key.begin(), key.end());
    return key;
}

// Finds the elements on both sides of each triangle.
std::vector<ClosedSolid::ShapeFace> shape_faces_of(const FlatSolid& flat)
{
    std::vector<std::pair<FaceKey, std::size_t>> known;
    std::vector<bool> on_shape(flat.nodes.size(), false);
    std::vector<ClosedSolid::ShapeFace> faces(flat.triangles.size());
    for (std::size_t i = 0; i < flat.triangles.size(); ++i)
    {
        known.emplace_back(sorted(flat.triangles[i].nodes), i);
        faces[i].shape = flat.triangles[i].face;
        for (const int node : flat.triangles[i].nodes) on_shape[at(node)] = true;
    }
    std::sort(known.begin(), known.end());
    for (std::size_t t = 0; t < flat.tetrahedra.size(); ++t)
        for (std::size_t f = 0; f < 4; ++f)
        {
            FaceKey key{};
            for (std::size_t i = 0; i < 3; ++i) key[i] = flat.tetrahedra[t][at(faces_of_tetrahedron[f][i])];
            if (!std::all_of(key.begin(), key.end(), [&](int node) { return on_shape[at(node)]; })) continue;
            key = sorted(key);
            const auto found = std::lower_bound(known.begin(), known.end(), std::pair{key, std::size_t{0}});
            if (found == known.end() || found->first != key) continue;
            ClosedSolid::ShapeFace& face = faces[found->second];
            const std::size_t side = face.element[0] < 0 ? 0 : 1;
            face.element[side] = static_cast<int>(t);
            face.face[side] = static_cast<int>(f);
        }
    for (const ClosedSolid::ShapeFace& face : faces) EXPECTS(face.element[0] >= 0);
    return faces;
}

}  // namespace

std::array<double, 2> jacobian_range(const std::array<SolidPoint, 10>& nodes)
{
    static const auto slopes = slopes_at_checked_points();
    double least = 1e300, greatest = -1e300;
    for (const auto& n : slopes)
    {
        std::array<SolidPoint, 3> d{};
        for (std::size_t i = 0; i < 10; ++i)
            for (std::size_t k = 0; k < 3; ++k)
            {
                d[k].x += n[i][k] * nodes[i].x;
                d[k].y += n[i][k] * nodes[i].y;
                d[k].z += n[i][k] * nodes[i].z;
            }
        const double determinant = six_volumes({0, 0, 0}, d[0], d[1], d[2]);
        least = std::min(least, determinant);
        greatest = std::max(greatest, determinant);
    }
    return {least, greatest};
}

CurvedSolid finished_solid(const FlatSolid& flat, const SolidGeometry& geometry, const std::vector<FaceShape>& shapes)
{
    CurvedSolid made;
    ClosedSolid closed;
    for (const SolidPoint& p : flat.nodes) closed.mesh.nodes.push_back({p.x, p.y, p.z});
    closed.mesh.regions.assign(flat.region.begin(), flat.region.end());
    closed.mesh.elements.reserve(flat.tetrahedra.size());
    EdgeNodes edges = add_edge_nodes(closed.mesh, flat, shapes);
    made.edge_nodes = edge_nodes_of(closed.mesh, geometry);
    if (geometry.out_of_line)
        for (auto& node : closed.mesh.nodes)
        {
            const SolidPoint moved = geometry.out_of_line->moved(point(node));
            node = {moved.x, moved.y, moved.z};
        }
    mark_curved(closed.mesh, edges);
    made.straightened_edges = straighten_folded(closed.mesh, edges.is_curved);
    made.curved_edges = static_cast<std::size_t>(std::count(edges.is_curved.begin(), edges.is_curved.end(), true));
    closed.shape_faces = shape_faces_of(flat);
    for (std::size_t t = 0; t < closed.mesh.elements.size(); ++t)
    {
        const auto [least, greatest] = jacobian_range(nodes_of(closed.mesh, t));
        made.smallest_jacobian_ratio = std::min(made.smallest_jacobian_ratio, least / greatest);
    }
    if (made.smallest_jacobian_ratio <= 0) refuse_mesh("solid", "an element is folded");
    made.mesh = split_solid(closed, geometry, shapes);
    return made;
}

}  // namespace splicewright
