// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/solver/hand_made.h"

#include <Eigen/SparseCholesky>
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <utility>

namespace splicewright::sample
{
namespace
{

using Place = std::function<Eigen::Vector2d(double, double)>;  // of the unit square

// n by m squares cut into triangles; every node, middles too, is put by `place`.
Mesh mapped_square(int n, int m, const Place& place)
{
    Mesh mesh;
    const int wide = 2 * n + 1;
    mesh.node.resize(2, wide * (2 * m + 1));
    for (int j = 0; j <= 2 * m; ++j)
        for (int i = 0; i <= 2 * n; ++i) mesh.node.col(j * wide + i) = place(i / (2.0 * n), j / (2.0 * m));
    mesh.triangle.resize(6, 2 * n * m);
    const auto at = [&](int i, int j) { return j * wide + i; };
    int t = 0;
    const auto add = [&](std::pair<int, int> a, std::pair<int, int> b, std::pair<int, int> c)
    {
        const auto middle = [&](auto p, auto q) { return at((p.first + q.first) / 2, (p.second + q.second) / 2); };
        mesh.triangle.col(t++) << at(a.first, a.second), at(b.first, b.second), at(c.first, c.second), middle(a, b),
            middle(b, c), middle(c, a);
    };
    for (int j = 0; j < m; ++j)
        for (int i = 0; i < n; ++i)
        {
            const std::pair<int, int> a{2 * i, 2 * j}, b{2 * i + 2, 2 * j}, c{2 * i + 2, 2 * j + 2},
                d{2 * i, 2 * j + 2};
            if ((i + j) % 2 == 0) add(a, b, c), add(a, c, d);
            else add(a, b, d), add(b, c, d);
        }
    mesh.region = {"bar.left"};
    mesh.region_of.assign(static_cast<std::size_t>(mesh.n_triangles()), 0);
    return mesh;
}

void name_edges(Mesh& mesh, const std::string& name, const std::function<bool(double z, double r)>& lies_on)
{
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int e = 0; e < 3; ++e)
        {
            const std::array<int, 3> nodes{mesh.triangle(e, t), mesh.triangle(3 + e, t), mesh.triangle((e + 1) % 3, t)};
            if (std::all_of(nodes.begin(), nodes.end(),
                            [&](int i) { return lies_on(mesh.node(0, i), mesh.node(1, i)); }))
                mesh.curve[name].push_back({nodes[0], nodes[1], nodes[2], t});
        }
}

}  // namespace

Mesh grid(double inner, double outer, double length, int n_r)
{
    const int n_z = std::max(1, static_cast<int>(std::lround(n_r * length / (outer - inner))));
    Mesh mesh = mapped_square(
        n_z, n_r, [&](double x, double y) { return Eigen::Vector2d(x * length, inner + y * (outer - inner)); });
    const double close = 1e-9;
    name_edges(mesh, "end.left", [&](double z, double) { return z < close; });
    name_edges(mesh, "end.right", [&](double z, double) { return z > length - close; });
    name_edges(mesh, "bar.left", [&](double, double r) { return r > outer - close; });
    name_edges(mesh, inner > 0 ? "bore" : "axis", [&](double, double r) { return r < inner + close; });
    return mesh;
}

Mesh half_ring(double inner, double outer, int n)
{
    const int around = static_cast<int>(std::lround(std::numbers::pi * (inner + outer) / 2 / (outer - inner) * n));
    Mesh mesh = mapped_square(around, n,
                              [&](double x, double y)
                              {
                                  const double R = inner + y * (outer - inner), phi = std::numbers::pi * x;
                                  const double r = x == 0 || x == 1 ? 0 : R * std::sin(phi);
                                  return Eigen::Vector2d(-R * std::cos(phi), r);
                              });
    name_edges(mesh, "cavity", [&](double z, double r) { return std::hypot(z, r) < inner * (1 + 1e-9); });
    return mesh;
}

std::vector<bool> on_boundary(const Mesh& mesh)
{
    std::map<int, int> uses;  // of the middle of an edge
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int e = 3; e < 6; ++e) ++uses[mesh.triangle(e, t)];
    std::vector<bool> outside(static_cast<std::size_t>(mesh.n_nodes()), false);
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int e = 0; e < 3; ++e)
            if (uses[mesh.triangle(3 + e, t)] == 1)
                for (const int i : {mesh.triangle(e, t), mesh.triangle(3 + e, t), mesh.triangle((e + 1) % 3, t)})
                    outside[static_cast<std::size_t>(i)] = true;
    return outside;
}

Mesh distorted(Mesh mesh, double share, Edges edges)
{
    const std::vector<bool> fixed = on_boundary(mesh);
    double shortest = INFINITY;
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int e = 0; e < 3; ++e)
            shortest = std::min(
                shortest, (mesh.node.col(mesh.triangle(e, t)) - mesh.node.col(mesh.triangle((e + 1) % 3, t))).norm());
    const auto moved = [&](int i)
    { return Eigen::Vector2d(share * shortest * std::sin(12.9 * i + 1), share * shortest * std::cos(7.3 * i + 2)); };
    std::vector<bool> is_corner(fixed.size(), false);
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int k = 0; k < 3; ++k) is_corner[static_cast<std::size_t>(mesh.triangle(k, t))] = true;
    for (int i = 0; i < mesh.n_nodes(); ++i)
        if (is_corner[static_cast<std::size_t>(i)] && !fixed[static_cast<std::size_t>(i)]) mesh.node.col(i) += moved(i);
    std::vector<bool> done = fixed;
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int e = 0; e < 3; ++e)
        {
            const int i = mesh.triangle(3 + e, t);
            if (done[static_cast<std::size_t>(i)]) continue;
            done[static_cast<std::size_t>(i)] = true;
            mesh.node.col(i) = (mesh.node.col(mesh.triangle(e, t)) + mesh.node.col(mesh.triangle((e + 1) % 3, t))) / 2;
            if (edges == Edges::bent) mesh.node.col(i) += moved(i) / 2;
        }
    return mesh;
}

Eigen::VectorXd nodal(const Mesh& mesh, LoadKind kind, const Field& field)
{
    const int n = unknowns_per_node(kind);
    Eigen::VectorXd u(mesh.n_nodes() * n);
    for (int i = 0; i < mesh.n_nodes(); ++i)
    {
        const Eigen::Vector3d value = field(mesh.node(0, i), mesh.node(1, i));
        switch (kind)
        {
            case LoadKind::torsion: u(i) = value(1); break;
            case LoadKind::axial: u.segment<2>(2 * i) << value(0), value(2); break;
            case LoadKind::bending: u.segment<3>(3 * i) = value; break;
        }
    }
    return u;
}

Eigen::VectorXd solved_inside(const Mesh& mesh, LoadKind kind, const ElasticConstants& steel, const Field& field,
                              const std::string& free_curve)
{
    const int n = unknowns_per_node(kind);
    const Eigen::VectorXd given = nodal(mesh, kind, field);
    std::vector<bool> fixed = on_boundary(mesh);
    if (!free_curve.empty())
        for (const MeshEdge& edge : mesh.curve.at(free_curve))
            for (const int i : {edge.first, edge.middle, edge.last})
                if (mesh.node(1, i) > 0) fixed[static_cast<std::size_t>(i)] = false;
    std::vector<int> number(static_cast<std::size_t>(given.size()), -1);
    int n_free = 0;
    for (int i = 0; i < mesh.n_nodes(); ++i)
        for (int c = 0; c < n; ++c)
            if (!fixed[static_cast<std::size_t>(i)]) number[static_cast<std::size_t>(i * n + c)] = n_free++;
    std::vector<Eigen::Triplet<double>> entries;
    Eigen::VectorXd f = Eigen::VectorXd::Zero(n_free);
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        const ElementMatrix K = element_stiffness(kind, steel, mesh.node(Eigen::all, mesh.triangle.col(t)));
        for (int i = 0; i < 6 * n; ++i)
        {
            const int row = number[static_cast<std::size_t>(mesh.triangle(i / n, t) * n + i % n)];
            if (row < 0) continue;
            for (int j = 0; j < 6 * n; ++j)
            {
                const int unknown = mesh.triangle(j / n, t) * n + j % n,
                          column = number[static_cast<std::size_t>(unknown)];
                if (column < 0) f(row) -= K(i, j) * given(unknown);
                else entries.emplace_back(row, column, K(i, j));
            }
        }
    }
    Eigen::SparseMatrix<double> K(n_free, n_free);
    K.setFromTriplets(entries.begin(), entries.end());
    const Eigen::VectorXd x = Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>>(K).solve(f);
    Eigen::VectorXd u = given;
    for (Eigen::Index k = 0; k < u.size(); ++k)
        if (const int i = number[static_cast<std::size_t>(k)]; i >= 0) u(k) = x(i);
    return u;
}

Eigen::Matrix<double, 6, 1> strain_of(LoadKind kind, const Field& field, double z, double r)
{
    const double h = 1e-3 * (1 + std::hypot(z, r)) / 10;
    const auto slope = [&](double dz, double dr) -> Eigen::Vector3d
    {
        return (8 * (field(z + dz * h, r + dr * h) - field(z - dz * h, r - dr * h)) -
                (field(z + 2 * dz * h, r + 2 * dr * h) - field(z - 2 * dz * h, r - 2 * dr * h))) /
               (12 * h);
    };
    const Eigen::Vector3d u = field(z, r), dz = slope(1, 0), dr = slope(0, 1);
    const double n = kind == LoadKind::bending ? 1 : 0;
    Eigen::Matrix<double, 6, 1> strain;
    strain << dr(0), (u(0) + n * u(1)) / r, dz(2), dr(1) - u(1) / r - n * u(0) / r, dz(1) - n * u(2) / r, dz(0) + dr(2);
    return strain;
}

Outline bar_with_cavity(double cavity_radius, double bar_radius, double length)
{
    const double a = cavity_radius, R = bar_radius, L = length;
    Outline shape;
    shape.points = {{-L, 0}, {-a, 0}, {0, a}, {a, 0}, {L, 0}, {L, R}, {-L, R}};
    const OutlinePoint centre{0, 0};
    shape.curves = {{0, 1, {}, "axis", false, 0},       {1, 2, centre, "cavity", false, a},
                    {2, 3, centre, "cavity", false, a}, {3, 4, {}, "axis", false, 0},
                    {4, 5, {}, "end.right", false, 0},  {5, 6, {}, "bar.left", false, 0},
                    {6, 0, {}, "end.left", false, 0}};
    shape.regions = {{"bar.left", {0, 1, 2, 3, 4, 5, 6}}};
    return shape;
}

double observed_order(const std::vector<double>& size, const std::vector<double>& error)
{
    double sx = 0, sy = 0, sxx = 0, sxy = 0;
    const auto n = static_cast<double>(size.size());
    for (std::size_t i = 0; i < size.size(); ++i)
    {
        const double x = std::log(size[i]), y = std::log(error[i]);
        sx += x, sy += y, sxx += x * x, sxy += x * y;
    }
    return (n * sxy - sx * sy) / (n * sxx - sx * sx);
}

}  // namespace splicewright::sample
