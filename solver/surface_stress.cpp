// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/surface_stress.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <unordered_map>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr double corner_rad = 0.15;  // a sharper turn ends a chain
constexpr int places_per_edge = 8;
constexpr std::size_t edges_carried_on = 2;
constexpr double gauss_local = 0.5773502691896257;  // 1/sqrt(3)

std::size_t at(int i) { return static_cast<std::size_t>(i); }

struct EdgeShape
{
    Eigen::Vector3d N, dN;  // by first, middle, last; dN with respect to the local coordinate
};

EdgeShape edge_shape(double x) { return {{x * (x - 1) / 2, 1 - x * x, x * (x + 1) / 2}, {x - 0.5, -2 * x, x + 0.5}}; }

Eigen::Matrix<double, 2, 3> edge_nodes(const Mesh& mesh, const MeshEdge& edge)
{
    Eigen::Matrix<double, 2, 3> nodes;
    nodes << mesh.node.col(edge.first), mesh.node.col(edge.middle), mesh.node.col(edge.last);
    return nodes;
}

double edge_length(const Mesh& mesh, const MeshEdge& edge)
{
    const Eigen::Matrix<double, 2, 3> nodes = edge_nodes(mesh, edge);
    double length = 0;
    for (const auto& [x, w] :
         {std::pair{-std::sqrt(0.6), 5.0 / 9}, std::pair{0.0, 8.0 / 9}, std::pair{std::sqrt(0.6), 5.0 / 9}})
        length += w * (nodes * edge_shape(x).dN).norm();
    return length;
}

Eigen::Vector2d tangent(const Mesh& mesh, const MeshEdge& edge, double x)
{
    return (edge_nodes(mesh, edge) * edge_shape(x).dN).normalized();
}

const ElasticConstants& steel_below(const Mesh& mesh, const MeshEdge& edge, const std::vector<ElasticConstants>& steel)
{
    return steel[at(mesh.region_of[at(edge.triangle)])];
}

bool follows(const Mesh& mesh, const MeshEdge& before, const MeshEdge& after,
             const std::vector<ElasticConstants>& steel)
{
    const Eigen::Vector2d a = tangent(mesh, before, 1), b = tangent(mesh, after, -1);
    return std::abs(std::atan2(a(0) * b(1) - a(1) * b(0), a.dot(b))) < corner_rad &&
           steel_below(mesh, before, steel) == steel_below(mesh, after, steel);
}

// Strains along, hoop and engineering shear of the surface at one place of an edge.
Eigen::Vector3d surface_strain(const Mesh& mesh, const MeshEdge& edge, double x, const UnitSolution& solution)
{
    const Eigen::Matrix<double, 2, 3> nodes = edge_nodes(mesh, edge);
    const EdgeShape shape = edge_shape(x);
    const Eigen::Vector2d dx = nodes * shape.dN;
    const double stretch = dx.norm(), r = nodes.row(1).dot(shape.N);
    const double tz = dx(0) / stretch, tr = dx(1) / stretch;
    const int n = unknowns_per_node(solution.kind);
    const auto component = [&](int c)
    {
        return Eigen::Vector3d(solution.u(edge.first * n + c), solution.u(edge.middle * n + c),
                               solution.u(edge.last * n + c));
    };
    const auto value = [&](int c) { return component(c).dot(shape.N); };
    const auto slope = [&](int c) { return component(c).dot(shape.dN) / stretch; };
    switch (solution.kind)
    {
        case LoadKind::torsion: return {0, 0, slope(0) - value(0) * tr / r};
        case LoadKind::axial: return {tz * slope(1) + tr * slope(0), value(0) / r, 0};
        case LoadKind::bending:
            return {tz * slope(2) + tr * slope(0), (value(0) + value(1)) / r,
                    slope(1) - value(1) * tr / r - (tz * value(2) + tr * value(0)) / r};
    }
    return {};
}

// Cubic through the four samples nearest to s (fewer when there are fewer).
Eigen::Vector3d interpolated(const std::vector<double>& where, const std::vector<Eigen::Vector3d>& samples, double s)
{
    const int n = static_cast<int>(where.size()), width = std::min(4, n);
    const int after = static_cast<int>(std::lower_bound(where.begin(), where.end(), s) - where.begin());
    const int first = std::clamp(after - width / 2, 0, n - width);
    Eigen::Vector3d result = Eigen::Vector3d::Zero();
    for (int i = first; i < first + width; ++i)
    {
        double weight = 1;
        for (int j = first; j < first + width; ++j)
            if (j != i) weight *= (s - where[at(j)]) / (where[at(i)] - where[at(j)]);
        result += weight * samples[at(i)];
    }
    return result;
}

}  // namespace

std::vector<SurfaceChain> surface_chains(const Mesh& mesh, const std::vector<MeshEdge>& edges,
                                         const std::vector<ElasticConstants>& steel)
{
    std::unordered_map<int, std::size_t> starts_at, ends_at;
    for (std::size_t e = 0; e < edges.size(); ++e)
    {
        starts_at[edges[e].first] = e;
        ends_at[edges[e].last] = e;
    }
    std::vector<bool> used(edges.size(), false);
    std::vector<SurfaceChain> chains;
    for (std::size_t e = 0; e < edges.size(); ++e)
    {
        if (used[e]) continue;
        std::size_t first = e;
        for (auto before = ends_at.find(edges[first].first);
             before != ends_at.end() && !used[before->second] && before->second != e &&
             follows(mesh, edges[before->second], edges[first], steel);
             before = ends_at.find(edges[first].first))
            first = before->second;
        SurfaceChain chain{{}, steel_below(mesh, edges[first], steel), {}, {}};
        for (std::size_t here = first;;)
        {
            used[here] = true;
            chain.edges.push_back(edges[here]);
            const auto next = starts_at.find(edges[here].last);
            if (next == starts_at.end() || used[next->second] ||
                !follows(mesh, edges[here], edges[next->second], steel))
                break;
            here = next->second;
        }
        chains.push_back(std::move(chain));
    }
    return chains;
}

std::vector<MeshEdge> free_edges(const Mesh& mesh, const std::vector<std::string>& held)
{
    std::vector<MeshEdge> edges;
    std::unordered_map<int, int> n_triangles;  // by middle node
    for (const auto& [name, on_curve] : mesh.curve)
    {
        for (const MeshEdge& edge : on_curve) ++n_triangles[edge.middle];
        const auto starts = [&curve = name](const std::string& prefix) { return curve.starts_with(prefix); };
        if (std::none_of(held.begin(), held.end(), starts)) edges.insert(edges.end(), on_curve.begin(), on_curve.end());
    }
    std::erase_if(edges, [&](const MeshEdge& edge) { return n_triangles[edge.middle] > 1; });
    return edges;
}

void carry_on(std::vector<SurfaceChain>& chains, const Mesh& mesh, const std::vector<MeshEdge>& free,
              const std::vector<ElasticConstants>& steel)
{
    std::unordered_map<int, const MeshEdge*> starts_at, ends_at;
    for (const MeshEdge& edge : free)
    {
        starts_at[edge.first] = &edge;
        ends_at[edge.last] = &edge;
    }
    for (SurfaceChain& chain : chains)
    {
        const MeshEdge* end = &chain.edges.front();
        for (auto next = ends_at.find(end->first); next != ends_at.end() && chain.before.size() < edges_carried_on &&
                                                   follows(mesh, *next->second, *end, steel);
             next = ends_at.find(end->first))
            chain.before.insert(chain.before.begin(), *(end = next->second));
        end = &chain.edges.back();
        for (auto next = starts_at.find(end->last); next != starts_at.end() && chain.after.size() < edges_carried_on &&
                                                    follows(mesh, *end, *next->second, steel);
             next = starts_at.find(end->last))
            chain.after.push_back(*(end = next->second));
    }
}

SurfacePlaces surface_places(const Mesh& mesh, const SurfaceChain& chain)
{
    SurfacePlaces places;
    double start = 0;
    for (std::size_t e = 0; e < chain.edges.size(); ++e)
    {
        const double length = edge_length(mesh, chain.edges[e]);
        const int last = e + 1 == chain.edges.size() ? places_per_edge : places_per_edge - 1;
        for (int k = 0; k <= last; ++k)
        {
            const double x = -1 + 2.0 * k / places_per_edge;
            const Eigen::Vector2d place = edge_nodes(mesh, chain.edges[e]) * edge_shape(x).N;
            places.s.push_back(start + length * (x + 1) / 2);
            places.z.push_back(place(0));
            places.r.push_back(place(1));
            places.edge.push_back(static_cast<int>(e));
            places.local.push_back(x);
        }
        start += length;
    }
    return places;
}

SurfaceStress zero_surface_stress(Eigen::Index n_places)
{
    SurfaceStress stress;
    for (const auto part : surface_stress_parts) stress.*part = Eigen::VectorXd::Zero(n_places);
    return stress;
}

SurfaceStress free_surface_stress(const Mesh& mesh, const SurfaceChain& chain, const SurfacePlaces& places,
                                  const UnitSolution& solution)
{
    std::vector<double> where;
    std::vector<Eigen::Vector3d> strain;
    double start = 0;
    for (const MeshEdge& edge : chain.before) start -= edge_length(mesh, edge);
    std::vector<MeshEdge> edges = chain.before;
    edges.insert(edges.end(), chain.edges.begin(), chain.edges.end());
    edges.insert(edges.end(), chain.after.begin(), chain.after.end());
    for (const MeshEdge& edge : edges)
    {
        const double length = edge_length(mesh, edge);
        for (const double x : {-gauss_local, gauss_local})
        {
            where.push_back(start + length * (x + 1) / 2);
            strain.push_back(surface_strain(mesh, edge, x, solution));
        }
        start += length;
    }
    const auto n = static_cast<Eigen::Index>(places.s.size());
    SurfaceStress stress = zero_surface_stress(n);
    const double E = chain.steel.E, nu = chain.steel.nu;
    for (Eigen::Index i = 0; i < n; ++i)
    {
        const Eigen::Vector3d e = interpolated(where, strain, places.s[static_cast<std::size_t>(i)]);
        stress.along(i) = E / (1 - nu * nu) * (e(0) + nu * e(1));
        stress.hoop(i) = E / (1 - nu * nu) * (e(1) + nu * e(0));
        stress.shear(i) = chain.steel.G() * e(2);
    }
    return stress;
}

SurfaceStress loaded_surface_stress(const Mesh& mesh, const SurfaceChain& chain, const SurfacePlaces& places,
                                    const RegionNodes& nodes, const StressAmplitude& stress)
{
    const auto n = static_cast<Eigen::Index>(places.s.size());
    SurfaceStress result = zero_surface_stress(n);
    for (Eigen::Index i = 0; i < n; ++i)
    {
        const MeshEdge& edge = chain.edges[at(places.edge[static_cast<std::size_t>(i)])];
        const double x = places.local[static_cast<std::size_t>(i)];
        const EdgeShape shape = edge_shape(x);
        Eigen::Matrix<double, 6, 1> value = Eigen::Matrix<double, 6, 1>::Zero();
        for (int k = 0; k < 6; ++k)
        {
            const int node = mesh.triangle(k, edge.triangle);
            const double weight = node == edge.first    ? shape.N(0)
                                  : node == edge.middle ? shape.N(1)
                                  : node == edge.last   ? shape.N(2)
                                                        : 0;
            value += weight * stress.value.col(nodes.triangle(k, edge.triangle));
        }
        const Eigen::Vector2d t = tangent(mesh, edge, x);
        const double rr = value(0), zz = value(2), rz = value(5);
        result.along(i) = t(0) * t(0) * zz + t(1) * t(1) * rr + 2 * t(0) * t(1) * rz;
        result.across(i) = t(1) * t(1) * zz + t(0) * t(0) * rr - 2 * t(0) * t(1) * rz;
        result.hoop(i) = value(1);
        result.shear(i) = t(0) * value(4) + t(1) * value(3);
        result.across_along(i) = t(0) * t(1) * (rr - zz) + (t(0) * t(0) - t(1) * t(1)) * rz;
        result.across_hoop(i) = t(0) * value(3) - t(1) * value(4);
    }
    return result;
}

}  // namespace splicewright
