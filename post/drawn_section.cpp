// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/drawn_section.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>

#include "cases/problem.h"
#include "post/mesh_edges.h"

namespace splicewright
{
namespace
{

constexpr std::array<std::array<int, 3>, 4> sub_triangles{{{0, 3, 5}, {3, 1, 4}, {5, 4, 2}, {3, 4, 5}}};

void append(std::vector<Segment>& segments, const Mesh& mesh, const std::array<int, 3>& node)
{
    segments.emplace_back(mesh.node.col(node[0]), mesh.node.col(node[1]));
    segments.emplace_back(mesh.node.col(node[1]), mesh.node.col(node[2]));
}

DrawnVertex between(const DrawnVertex& a, const DrawnVertex& b, double share)
{
    return {a.place + share * (b.place - a.place), a.steady + share * (b.steady - a.steady),
            a.bending + share * (b.bending - a.bending), a.worst + share * (b.worst - a.worst)};
}

// The half-plane sign * (place[axis] - limit) >= 0.
struct HalfPlane
{
    int axis;
    double limit, sign;
    [[nodiscard]] double depth(const Eigen::Vector2d& place) const { return sign * (place(axis) - limit); }
};

// The index of a new vertex where a -> b meets the half-plane's edge.
int crossing(DrawnSection& section, int a, int b, const HalfPlane& half)
{
    const DrawnVertex &from = section.vertex[std::size_t(a)], &to = section.vertex[std::size_t(b)];
    const double share = half.depth(from.place) / (half.depth(from.place) - half.depth(to.place));
    DrawnVertex made = between(from, to, share);
    made.place(half.axis) = half.limit;
    section.vertex.push_back(made);
    return static_cast<int>(section.vertex.size()) - 1;
}

DrawnSection kept(const DrawnSection& section, const HalfPlane& half)
{
    DrawnSection result{section.vertex, {}, {}};
    const auto inside = [&](int i) { return half.depth(result.vertex[std::size_t(i)].place) >= 0; };
    const auto at_cut = [&](int i) { return result.vertex[std::size_t(i)].place(half.axis) == half.limit; };
    for (const auto& triangle : section.triangle)
    {
        std::vector<int> polygon;
        for (std::size_t k = 0; k < 3; ++k)
        {
            const int a = triangle[k], b = triangle[(k + 1) % 3];
            if (inside(a)) polygon.push_back(a);
            if (inside(a) != inside(b) && !(at_cut(a) || at_cut(b))) polygon.push_back(crossing(result, a, b, half));
        }
        if (polygon.size() < 3) continue;
        for (std::size_t k = 2; k < polygon.size(); ++k)
            result.triangle.push_back({polygon[0], polygon[k - 1], polygon[k]});
        for (std::size_t k = 0; half.axis == 0 && k < polygon.size(); ++k)
            if (const int a = polygon[k], b = polygon[(k + 1) % polygon.size()]; at_cut(a) && at_cut(b))
                result.skin.push_back({a, b});
    }
    for (const auto& [a, b] : section.skin)
    {
        if (half.axis == 0 && at_cut(a) && at_cut(b)) continue;  // listed with its triangle above
        if (inside(a) && inside(b)) result.skin.push_back({a, b});
        else if (inside(a) && !at_cut(a)) result.skin.push_back({a, crossing(result, a, b, half)});
        else if (inside(b) && !at_cut(b)) result.skin.push_back({crossing(result, b, a, half), b});
    }
    return result;
}

// Without the vertices that no triangle uses.
DrawnSection compact(const DrawnSection& section)
{
    DrawnSection result;
    std::vector<int> place(section.vertex.size(), -1);
    const auto placed = [&](int i)
    {
        int& at = place[std::size_t(i)];
        if (at < 0)
        {
            at = static_cast<int>(result.vertex.size());
            result.vertex.push_back(section.vertex[std::size_t(i)]);
        }
        return at;
    };
    for (const auto& [a, b, c] : section.triangle) result.triangle.push_back({placed(a), placed(b), placed(c)});
    for (const auto& [a, b] : section.skin) result.skin.push_back({placed(a), placed(b)});
    return result;
}

}  // namespace

double von_mises_at(const DrawnVertex& vertex, double theta_rad)
{
    const double c = std::cos(theta_rad), s = std::sin(theta_rad);
    StressColumn stress = vertex.steady;
    stress.head<3>() += c * vertex.bending.head<3>();
    stress.segment<2>(3) += s * vertex.bending.segment<2>(3);
    stress(5) += c * vertex.bending(5);
    return von_mises(stress)(0);
}

DrawnSection drawn_section(const SolvedFields& fields, const CombinedLoad& load)
{
    const RegionNodes& nodes = fields.region_nodes;
    const Eigen::Matrix<double, 6, Eigen::Dynamic> steady =
        combined_stress(fields, {load.torque, 0, load.axial, load.press}, 0);
    Eigen::VectorXd worst = Eigen::VectorXd::Zero(steady.cols());
    for (int i = 0; i < n_worst_angles; ++i)
        worst = worst.cwiseMax(von_mises(combined_stress(fields, load, 2 * std::numbers::pi * i / n_worst_angles)));

    DrawnSection section;
    for (std::size_t i = 0; i < nodes.node.size(); ++i)
    {
        const auto k = static_cast<Eigen::Index>(i);
        section.vertex.push_back(
            {fields.mesh.node.col(nodes.node[i]), steady.col(k), load.bending * fields.bending.value.col(k), worst(k)});
    }
    for (Eigen::Index t = 0; t < nodes.triangle.cols(); ++t)
        for (const auto& [a, b, c] : sub_triangles)
            section.triangle.push_back({nodes.triangle(a, t), nodes.triangle(b, t), nodes.triangle(c, t)});
    const std::set<EdgeKey> unfused = unfused_edges(fields.mesh);
    for (const auto& [key, use] : edge_uses(fields.mesh))
    {
        if (use.n_triangles > 1 || unfused.contains(key) || on_axis(fields.mesh, use)) continue;
        const auto& [first, middle, last] = triangle_edges[std::size_t(use.side)];
        const int owner = use.triangle;
        const auto local = [&nodes, owner](int k) { return nodes.triangle(k, owner); };
        section.skin.push_back({local(first), local(middle)});
        section.skin.push_back({local(middle), local(last)});
    }
    return section;
}

DrawnSection clipped(const DrawnSection& section, const Window& window)
{
    const std::array<HalfPlane, 4> halves{
        {{0, window.left, +1}, {0, window.right, -1}, {1, window.bottom, +1}, {1, window.top, -1}}};
    DrawnSection result = section;
    for (const HalfPlane& half : halves) result = kept(result, half);
    return compact(result);
}

std::vector<Segment> region_outlines(const Mesh& mesh)
{
    std::vector<Segment> segments;
    const std::set<EdgeKey> unfused = unfused_edges(mesh);
    for (const auto& [key, use] : edge_uses(mesh))
        if ((use.n_triangles == 1 || use.between_regions) && !unfused.contains(key) && !on_axis(mesh, use))
            append(segments, mesh, use.node);
    return segments;
}

std::vector<Segment> unfused_faces(const Mesh& mesh)
{
    std::set<int> inner;
    for (const FacePair& pair : mesh.pair) inner.insert(pair.inner);
    std::set<std::string> names;
    for (const FacePair& pair : mesh.pair) names.insert(pair.curve);
    std::vector<Segment> segments;
    for (const std::string& name : names)
        if (const auto curve = mesh.curve.find(name); curve != mesh.curve.end())
            for (const MeshEdge& edge : curve->second)
                if (inner.contains(edge.middle)) append(segments, mesh, {edge.first, edge.middle, edge.last});
    return segments;
}

std::vector<Segment> mesh_edges(const Mesh& mesh)
{
    std::vector<Segment> segments;
    for (const auto& [key, use] : edge_uses(mesh)) append(segments, mesh, use.node);
    return segments;
}

std::vector<Segment> clipped(const std::vector<Segment>& segments, const Window& window)
{
    const std::array<HalfPlane, 4> halves{
        {{0, window.left, +1}, {0, window.right, -1}, {1, window.bottom, +1}, {1, window.top, -1}}};
    std::vector<Segment> result;
    for (Segment segment : segments)
    {
        bool outside = false;
        for (const HalfPlane& half : halves)
        {
            const double from = half.depth(segment.first), to = half.depth(segment.second);
            if (from < 0 && to < 0) outside = true;
            if (outside || (from >= 0 && to >= 0)) continue;
            const Eigen::Vector2d cut = segment.first + from / (from - to) * (segment.second - segment.first);
            (from < 0 ? segment.first : segment.second) = cut;
        }
        if (!outside) result.push_back(segment);
    }
    return result;
}

Window extent(const Mesh& mesh)
{
    const Eigen::Vector2d low = mesh.node.rowwise().minCoeff(), high = mesh.node.rowwise().maxCoeff();
    return {low.x(), low.y(), high.x(), high.y()};
}

FieldPeak peak(const DrawnSection& section, const Eigen::Vector2d& near)
{
    EXPECTS(!section.triangle.empty());
    FieldPeak found;
    for (const auto& triangle : section.triangle)
        for (const int i : triangle) found.value = std::max(found.value, section.vertex[std::size_t(i)].worst);
    double nearest = std::numeric_limits<double>::infinity();
    for (const auto& triangle : section.triangle)
        for (const int i : triangle)
        {
            const DrawnVertex& vertex = section.vertex[std::size_t(i)];
            const double away = (vertex.place - near).norm();
            if (vertex.worst < 0.999 * found.value || away >= nearest) continue;
            nearest = away;
            found.place = vertex.place;
        }
    return found;
}

}  // namespace splicewright
