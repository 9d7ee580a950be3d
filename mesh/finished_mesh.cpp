// SPDX-License-Identifier: GPL-2.0-or-later
#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numbers>
#include <set>
#include <unordered_map>
#include <utility>

#include "cases/problem.h"
#include "mesh/flat_mesh.h"
#include "mesh/triangle.h"

namespace splicewright
{
namespace
{

std::uint64_t edge_key(int a, int b)
{
    const auto [low, high] = std::minmax(a, b);
    return (static_cast<std::uint64_t>(static_cast<std::uint32_t>(low)) << 32) | static_cast<std::uint32_t>(high);
}

std::size_t at(int i) { return static_cast<std::size_t>(i); }

using CornerTriangles = std::vector<std::array<int, 3>>;
using CurveOfEdge = std::unordered_map<std::uint64_t, int>;

CornerTriangles counter_clockwise(const FlatMesh& flat)
{
    CornerTriangles triangles = flat.triangle;
    for (auto& t : triangles)
    {
        const OutlinePoint a = flat.node[at(t[0])], b = flat.node[at(t[1])], c = flat.node[at(t[2])];
        if ((b.z - a.z) * (c.r - a.r) - (b.r - a.r) * (c.z - a.z) < 0) std::swap(t[1], t[2]);
    }
    return triangles;
}

// Triangles around one node, gathered into fans that hang together without crossing an unfused edge.
// Returns the fan number of each triangle in `around`.
std::vector<int> fans(const std::vector<int>& around, int node, const CornerTriangles& triangles,
                      const std::set<std::uint64_t>& unfused)
{
    std::vector<int> fan(around.size(), -1);
    int n_fans = 0;
    for (std::size_t seed = 0; seed < around.size(); ++seed)
    {
        if (fan[seed] >= 0) continue;
        std::vector<std::size_t> open{seed};
        fan[seed] = n_fans;
        while (!open.empty())
        {
            const std::size_t here = open.back();
            open.pop_back();
            for (std::size_t other = 0; other < around.size(); ++other)
            {
                if (fan[other] >= 0) continue;
                for (const int corner : triangles[at(around[here])])
                {
                    const auto& t = triangles[at(around[other])];
                    const bool shared = corner != node && std::find(t.begin(), t.end(), corner) != t.end();
                    if (!shared || unfused.contains(edge_key(node, corner))) continue;
                    fan[other] = n_fans;
                    open.push_back(other);
                    break;
                }
            }
        }
        ++n_fans;
    }
    return fan;
}

// Corner triangles after splitting; `origin` names the flat node that each node came from.
struct SplitCorners
{
    CornerTriangles triangle;
    std::vector<int> origin;
};

SplitCorners split_corners(const Outline& outline, const FlatMesh& flat)
{
    SplitCorners split{counter_clockwise(flat), {}};
    const CornerTriangles before = split.triangle;
    for (int i = 0; i < static_cast<int>(flat.node.size()); ++i) split.origin.push_back(i);
    std::set<std::uint64_t> unfused;
    std::set<int> touched;
    for (const FlatMesh::CurveEdge& edge : flat.edge)
        if (outline.curves[at(edge.curve)].unfused)
        {
            unfused.insert(edge_key(edge.first, edge.last));
            touched.insert({edge.first, edge.last});
        }
    std::vector<std::vector<int>> around(flat.node.size());
    for (std::size_t t = 0; t < before.size(); ++t)
        for (const int corner : before[t])
            if (touched.contains(corner)) around[at(corner)].push_back(static_cast<int>(t));
    for (const int node : touched)
    {
        const std::vector<int> fan = fans(around[at(node)], node, before, unfused);
        const int n_fans = 1 + *std::max_element(fan.begin(), fan.end());
        const int first_copy = static_cast<int>(split.origin.size());
        for (int f = 1; f < n_fans; ++f) split.origin.push_back(node);
        for (std::size_t k = 0; k < fan.size(); ++k)
            if (fan[k] > 0)
            {
                auto& corners = split.triangle[at(around[at(node)][k])];
                std::replace(corners.begin(), corners.end(), node, first_copy + fan[k] - 1);
            }
    }
    return split;
}

Eigen::Vector2d edge_middle(const Outline& outline, Eigen::Vector2d a, Eigen::Vector2d b, int curve)
{
    const Eigen::Vector2d straight = (a + b) / 2;
    if (curve < 0 || !outline.curves[at(curve)].centre) return straight;
    const OutlinePoint c = *outline.curves[at(curve)].centre;
    const Eigen::Vector2d centre(c.z, c.r);
    return centre + (straight - centre).normalized() * (a - centre).norm();
}

// Six-node triangles; `curve_of_edge` is keyed by the corner nodes after splitting.
void add_middles(Mesh& mesh, const SplitCorners& split, const Outline& outline, const CurveOfEdge& curve_of_flat_edge)
{
    std::unordered_map<std::uint64_t, int> middle_of;
    std::vector<Eigen::Vector2d> middles;
    const int n_corners = static_cast<int>(split.origin.size());
    for (std::size_t t = 0; t < split.triangle.size(); ++t)
        for (int e = 0; e < 3; ++e)
        {
            const int a = split.triangle[t][at(e)], b = split.triangle[t][at((e + 1) % 3)];
            const auto [place, is_new] =
                middle_of.try_emplace(edge_key(a, b), n_corners + static_cast<int>(middles.size()));
            if (is_new)
            {
                const auto on = curve_of_flat_edge.find(edge_key(split.origin[at(a)], split.origin[at(b)]));
                middles.push_back(edge_middle(outline, mesh.node.col(a), mesh.node.col(b),
                                              on == curve_of_flat_edge.end() ? -1 : on->second));
            }
            mesh.triangle(3 + e, static_cast<Eigen::Index>(t)) = place->second;
        }
    mesh.node.conservativeResize(2, n_corners + static_cast<Eigen::Index>(middles.size()));
    for (std::size_t i = 0; i < middles.size(); ++i)
        mesh.node.col(n_corners + static_cast<Eigen::Index>(i)) = middles[i];
}

// Corner nodes on crack tips.
std::set<int> tip_nodes(const Mesh& mesh, const SplitCorners& split, const Outline& outline)
{
    constexpr double same_place_mm = 1e-9;
    std::set<int> nodes;
    for (const OutlineTip& tip : outline.tips)
    {
        const OutlinePoint p = outline.points[at(tip.point)];
        for (int i = 0; i < static_cast<int>(split.origin.size()); ++i)
            if ((mesh.node.col(i) - Eigen::Vector2d(p.z, p.r)).norm() < same_place_mm) nodes.insert(i);
    }
    return nodes;
}

// Middles of the edges that end at a crack tip move to a quarter of the edge: displacement then grows with the square
// root of the distance along every ray from the tip. Source: [Barsoum1976]; triangle with straight edges:
// [FreeseTracey1976].
void move_to_quarter_points(Mesh& mesh, const std::set<int>& tips)
{
    if (tips.empty()) return;
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int e = 0; e < 3; ++e)
        {
            const int a = mesh.triangle(e, t), b = mesh.triangle((e + 1) % 3, t);
            if (tips.contains(a) == tips.contains(b)) continue;
            const int tip = tips.contains(a) ? a : b, far = tips.contains(a) ? b : a;
            mesh.node.col(mesh.triangle(3 + e, t)) = 0.75 * mesh.node.col(tip) + 0.25 * mesh.node.col(far);
        }
}

void add_curves(Mesh& mesh, const SplitCorners& split, const Outline& outline, const CurveOfEdge& curve_of_flat_edge)
{
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int e = 0; e < 3; ++e)
        {
            const int a = mesh.triangle(e, t), b = mesh.triangle((e + 1) % 3, t);
            const auto on = curve_of_flat_edge.find(edge_key(split.origin[at(a)], split.origin[at(b)]));
            if (on == curve_of_flat_edge.end()) continue;
            mesh.curve[outline.curves[at(on->second)].name].push_back({a, mesh.triangle(3 + e, t), b, t});
        }
}

// The bar is the inner body of a slit, the left bar of the land.
bool is_inner(const std::string& region, const std::string& other)
{
    if (region.starts_with("bar") != other.starts_with("bar")) return region.starts_with("bar");
    return region < other;
}

// First, middle and last node of an edge of a triangle, [2, 3] mm.
Eigen::Matrix<double, 2, 3> edge_nodes(const Mesh& mesh, int triangle, int edge)
{
    Eigen::Matrix<double, 2, 3> nodes;
    nodes << mesh.node.col(mesh.triangle(edge, triangle)), mesh.node.col(mesh.triangle(3 + edge, triangle)),
        mesh.node.col(mesh.triangle((edge + 1) % 3, triangle));
    return nodes;
}

void add_pairs(Mesh& mesh, const SplitCorners& split, const Outline& outline, const FlatMesh& flat,
               const CurveOfEdge& curve_of_flat_edge)
{
    struct Faces
    {
        std::vector<std::pair<int, int>> face;  // triangle, edge in it
    };
    std::unordered_map<std::uint64_t, Faces> faces;
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int e = 0; e < 3; ++e)
        {
            const std::uint64_t key =
                edge_key(split.origin[at(mesh.triangle(e, t))], split.origin[at(mesh.triangle((e + 1) % 3, t))]);
            const auto on = curve_of_flat_edge.find(key);
            if (on != curve_of_flat_edge.end() && outline.curves[at(on->second)].unfused)
                faces[key].face.emplace_back(t, e);
        }
    std::map<std::pair<int, int>, std::size_t> known;
    for (const FlatMesh::CurveEdge& flat_edge : flat.edge)
    {
        if (!outline.curves[at(flat_edge.curve)].unfused) continue;
        const auto& face = faces.at(edge_key(flat_edge.first, flat_edge.last)).face;
        EXPECTS(face.size() == 2);
        const bool first_is_inner = is_inner(mesh.region[at(mesh.region_of[at(face[0].first)])],
                                             mesh.region[at(mesh.region_of[at(face[1].first)])]);
        const auto [ti, ei] = face[first_is_inner ? 0 : 1];
        const auto [to, eo] = face[first_is_inner ? 1 : 0];
        const Eigen::Matrix<double, 2, 3> walked = edge_nodes(mesh, ti, ei);
        struct FaceNodes
        {
            int inner, outer;
            Eigen::Vector2d along;  // unit tangent of the inner face
        };
        const std::array<FaceNodes, 3> nodes{
            {{mesh.triangle(ei, ti), mesh.triangle((eo + 1) % 3, to), walked * Eigen::Vector3d(-1.5, 2, -0.5)},
             {mesh.triangle(3 + ei, ti), mesh.triangle(3 + eo, to), walked * Eigen::Vector3d(-0.5, 0, 0.5)},
             {mesh.triangle((ei + 1) % 3, ti), mesh.triangle(eo, to), walked * Eigen::Vector3d(0.5, -2, 1.5)}}};
        for (const auto& [inner, outer, along] : nodes)
        {
            if (inner == outer) continue;
            const auto [place, is_new] = known.try_emplace({inner, outer}, mesh.pair.size());
            if (is_new)
                mesh.pair.push_back({inner, outer, Eigen::Vector2d::Zero(), outline.curves[at(flat_edge.curve)].name});
            mesh.pair[place->second].normal +=
                Eigen::Vector2d(along.y(), -along.x()).normalized();  // right of the walk
        }
    }
    for (FacePair& pair : mesh.pair) pair.normal.normalize();
}

// At a crack tip the Jacobian of quarter-point triangles vanishes by design: those corners do not count.
void measure_quality(Mesh& mesh, const std::set<int>& tips)
{
    mesh.smallest_angle_deg = 180;
    mesh.smallest_jacobian_ratio = 1;
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        for (int c = 0; c < 3; ++c)
        {
            const Eigen::Vector2d here = mesh.node.col(mesh.triangle(c, t));
            const Eigen::Vector2d to = mesh.node.col(mesh.triangle((c + 1) % 3, t)) - here;
            const Eigen::Vector2d from = mesh.node.col(mesh.triangle((c + 2) % 3, t)) - here;
            const double angle = std::acos(std::clamp(to.dot(from) / (to.norm() * from.norm()), -1.0, 1.0));
            mesh.smallest_angle_deg = std::min(mesh.smallest_angle_deg, angle * 180 / std::numbers::pi);
        }
        const TriangleNodes nodes = mesh.node(Eigen::all, mesh.triangle.col(t));
        double low = std::numeric_limits<double>::infinity(), high = 0;
        for (std::size_t i = 0; i < jacobian_sample_points.size(); ++i)
        {
            if (tips.contains(mesh.triangle(static_cast<int>(i), t))) continue;
            const auto& point = jacobian_sample_points[i];
            const double jacobian = (nodes * shape_gradients(point)).determinant();
            low = std::min(low, jacobian);
            high = std::max(high, jacobian);
        }
        mesh.smallest_jacobian_ratio = std::min(mesh.smallest_jacobian_ratio, low / high);
    }
}

}  // namespace

Mesh finished_mesh(const Outline& outline, const FlatMesh& flat)
{
    const SplitCorners split = split_corners(outline, flat);
    CurveOfEdge curve_of_flat_edge;
    for (const FlatMesh::CurveEdge& edge : flat.edge) curve_of_flat_edge[edge_key(edge.first, edge.last)] = edge.curve;

    Mesh mesh;
    for (const OutlineRegion& region : outline.regions) mesh.region.push_back(region.name);
    mesh.region_of = flat.region;
    mesh.node.resize(2, static_cast<Eigen::Index>(split.origin.size()));
    for (std::size_t i = 0; i < split.origin.size(); ++i)
    {
        const OutlinePoint p = flat.node[at(split.origin[i])];
        mesh.node.col(static_cast<Eigen::Index>(i)) << p.z, p.r;
    }
    mesh.triangle.resize(6, static_cast<Eigen::Index>(split.triangle.size()));
    for (std::size_t t = 0; t < split.triangle.size(); ++t)
        for (int c = 0; c < 3; ++c) mesh.triangle(c, static_cast<Eigen::Index>(t)) = split.triangle[t][at(c)];
    add_middles(mesh, split, outline, curve_of_flat_edge);
    const std::set<int> tips = tip_nodes(mesh, split, outline);
    move_to_quarter_points(mesh, tips);
    add_curves(mesh, split, outline, curve_of_flat_edge);
    add_pairs(mesh, split, outline, flat, curve_of_flat_edge);
    measure_quality(mesh, tips);
    if (mesh.smallest_jacobian_ratio <= 0)
        throw CannotCompute({"", 0, 0, "mesh", "", "a curved element folds over itself",
                             "please report this case file; a valid case should always mesh"});
    return mesh;
}

}  // namespace splicewright
