// SPDX-License-Identifier: GPL-2.0-or-later
#include "sample_fields.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <tuple>

namespace splicewright::sample
{
namespace
{

// Faces that lie on each other but are not joined get their own nodes by a different sheet number.
enum Layer
{
    left_of_land,
    right_of_land,
    of_sleeve,
};

class MeshBuilder
{
public:
    int node(double z, double r, int layer)
    {
        const auto key = std::make_tuple(std::lround(z * 1e6), std::lround(r * 1e6), layer);
        const auto [place, is_new] = known_.try_emplace(key, static_cast<int>(points_.size()));
        if (is_new) points_.emplace_back(z, r);
        return place->second;
    }
    // Corner points with the layer each belongs to.
    struct Corner
    {
        Eigen::Vector2d at;
        int layer;
    };
    template <class LayerOf>
    void triangle(Eigen::Vector2d a, Eigen::Vector2d b, Eigen::Vector2d c, int region, LayerOf layer_of)
    {
        const auto id = [&](const Eigen::Vector2d& p) { return node(p(0), p(1), layer_of(p)); };
        if ((b - a)(0) * (c - a)(1) - (b - a)(1) * (c - a)(0) < 0) std::swap(b, c);
        triangles_.push_back({id(a), id(b), id(c), id((a + b) / 2), id((b + c) / 2), id((c + a) / 2)});
        regions_.push_back(region);
    }
    [[nodiscard]] Mesh mesh(const std::vector<std::string>& names) const
    {
        Mesh mesh;
        mesh.node.resize(2, static_cast<Eigen::Index>(points_.size()));
        for (std::size_t i = 0; i < points_.size(); ++i) mesh.node.col(static_cast<Eigen::Index>(i)) = points_[i];
        mesh.triangle.resize(6, static_cast<Eigen::Index>(triangles_.size()));
        for (std::size_t t = 0; t < triangles_.size(); ++t)
            for (int k = 0; k < 6; ++k) mesh.triangle(k, static_cast<Eigen::Index>(t)) = triangles_[t][std::size_t(k)];
        mesh.region_of = regions_;
        mesh.region = names;
        return mesh;
    }

private:
    std::map<std::tuple<long, long, int>, int> known_;
    std::vector<Eigen::Vector2d> points_;
    std::vector<std::array<int, 6>> triangles_;
    std::vector<int> regions_;
};

std::vector<double> steps(std::vector<double> marks, double size)
{
    std::vector<double> result{marks[0]};
    for (std::size_t i = 1; i < marks.size(); ++i)
    {
        const int n = std::max(1, static_cast<int>(std::lround((marks[i] - marks[i - 1]) / size)));
        for (int k = 1; k <= n; ++k) result.push_back(marks[i - 1] + (marks[i] - marks[i - 1]) * k / n);
    }
    return result;
}

template <class RegionOf, class LayerOf>
void fill_grid(MeshBuilder& builder, const std::vector<double>& z, const std::vector<double>& r, RegionOf region_of,
               LayerOf layer_of)
{
    for (std::size_t i = 0; i + 1 < z.size(); ++i)
        for (std::size_t k = 0; k + 1 < r.size(); ++k)
        {
            const Eigen::Vector2d a(z[i], r[k]), b(z[i + 1], r[k]), c(z[i + 1], r[k + 1]), d(z[i], r[k + 1]);
            const int region = region_of((z[i] + z[i + 1]) / 2);
            builder.triangle(a, b, c, region, layer_of(region));
            builder.triangle(a, c, d, region, layer_of(region));
        }
}

// Edges and node pairs of an unfused line: the nodes with two ids at the same place.
void mark_unfused(Mesh& mesh, const std::string& name, int inner_region, int outer_region, const auto& is_on,
                  const Eigen::Vector2d& normal)
{
    constexpr int edges[3][3] = {{0, 3, 1}, {1, 4, 2}, {2, 5, 0}};
    std::map<std::pair<long, long>, int> inner;
    const auto key = [&](int i)
    { return std::pair(std::lround(mesh.node(0, i) * 1e6), std::lround(mesh.node(1, i) * 1e6)); };
    for (const int region : {inner_region, outer_region})
        for (int t = 0; t < mesh.n_triangles(); ++t)
            for (const auto& edge : edges)
            {
                const int a = mesh.triangle(edge[0], t), m = mesh.triangle(edge[1], t), b = mesh.triangle(edge[2], t);
                if (mesh.region_of[std::size_t(t)] != region || !is_on(mesh.node.col(a)) || !is_on(mesh.node.col(b)))
                    continue;
                mesh.curve[name].push_back({a, m, b, t});
                for (const int i : {a, m, b})
                    if (region == inner_region) inner[key(i)] = i;
                    else if (const auto twin = inner.find(key(i)); twin != inner.end() && twin->second != i)
                        mesh.pair.push_back({twin->second, i, normal, name});
            }
}

Mesh sample_mesh(const Shape& shape)
{
    MeshBuilder builder;
    const bool has_sleeve = shape.sleeve > 0;
    const double toe = shape.sleeve_half + shape.leg, size = shape.element;
    const std::vector<double> marks =
        has_sleeve ? std::vector<double>{shape.left, -toe, -shape.sleeve_half, 0, shape.sleeve_half, toe, shape.right}
                   : std::vector<double>{shape.left, 0, shape.right};
    const double land = has_sleeve ? shape.land : 0;
    const auto bar_r =
        steps(land > 0 ? std::vector<double>{0, land, shape.bar} : std::vector<double>{0, shape.bar}, size);
    fill_grid(
        builder, steps(marks, size), bar_r, [](double z) { return z < 0 ? 0 : 1; },
        [&](int region)
        {
            return [land, region](const Eigen::Vector2d& p)
            { return region == 1 && std::abs(p(0)) < 1e-9 && p(1) < land - 1e-9 ? right_of_land : left_of_land; };
        });
    if (!has_sleeve) return builder.mesh({"bar.left", "bar.right"});
    const auto sleeve_layer = [&](int)
    {
        return [&shape](const Eigen::Vector2d& p)
        { return p(1) < shape.bar + 1e-9 && std::abs(p(0)) < shape.sleeve_half - 1e-9 ? of_sleeve : left_of_land; };
    };
    fill_grid(
        builder, steps({-shape.sleeve_half, 0, shape.sleeve_half}, size),
        steps({shape.bar, shape.bar + shape.leg, shape.sleeve}, shape.leg / 4), [](double z) { return z < 0 ? 2 : 3; },
        sleeve_layer);
    for (const int side : {-1, 1})
    {
        const auto n = static_cast<int>(std::lround(shape.leg / size));
        const double h = shape.leg / n;
        for (int i = 0; i < n; ++i)
            for (int k = 0; i + k < n; ++k)
            {
                const auto at = [&](int di, int dk)
                { return Eigen::Vector2d(side * (shape.sleeve_half + (i + di) * h), shape.bar + (k + dk) * h); };
                const auto layer = [](const Eigen::Vector2d&) { return int(left_of_land); };
                builder.triangle(at(0, 0), at(1, 0), at(0, 1), side < 0 ? 4 : 5, layer);
                if (i + k + 1 < n) builder.triangle(at(1, 0), at(1, 1), at(0, 1), side < 0 ? 4 : 5, layer);
            }
    }
    Mesh mesh = builder.mesh({"bar.left", "bar.right", "sleeve.left", "sleeve.right", "fillet.left", "fillet.right"});
    const auto on_slit = [&](double sign)
    {
        return [&shape, sign](const Eigen::Vector2d& p)
        { return std::abs(p(1) - shape.bar) < 1e-9 && sign * p(0) > -1e-9 && sign * p(0) < shape.sleeve_half + 1e-9; };
    };
    mark_unfused(mesh, "slit.left", 0, 2, on_slit(-1), {0, 1});
    mark_unfused(mesh, "slit.right", 1, 3, on_slit(1), {0, 1});
    mark_unfused(mesh, "land", 0, 1,
                 [&](const Eigen::Vector2d& p) { return std::abs(p(0)) < 1e-9 && p(1) < land + 1e-9; }, {1, 0});
    return mesh;
}

RegionNodes region_nodes(const Mesh& mesh)
{
    RegionNodes nodes;
    nodes.triangle.resize(6, mesh.n_triangles());
    std::map<std::pair<int, int>, int> known;
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int k = 0; k < 6; ++k)
        {
            const int region = mesh.region_of[std::size_t(t)], node = mesh.triangle(k, t);
            const auto [place, is_new] = known.try_emplace({region, node}, static_cast<int>(nodes.node.size()));
            if (is_new)
            {
                nodes.node.push_back(node);
                nodes.region.push_back(region);
            }
            nodes.triangle(k, t) = place->second;
        }
    return nodes;
}

double raised(const Shape& shape, double bump, double z, double r)
{
    if (shape.sleeve <= 0) return 1;
    double factor = 1;
    for (const double side : {-1.0, 1.0})
    {
        const double away = std::hypot(z - side * (shape.sleeve_half + shape.leg), r - shape.bar);
        factor += (side < 0 ? bump : 0.8 * bump) * std::exp(-away * away);
    }
    return factor;
}

}  // namespace

SolvedFields solved_fields(const Shape& shape, double bump)
{
    SolvedFields fields;
    fields.mesh = sample_mesh(shape);
    fields.region_nodes = region_nodes(fields.mesh);
    const auto n = static_cast<Eigen::Index>(fields.region_nodes.node.size());
    const Eigen::Index n_mesh = fields.mesh.n_nodes();
    for (StressAmplitude* field : {&fields.torsion, &fields.bending, &fields.axial}) field->value.setZero(6, n);
    for (DisplacementAmplitude* field :
         {&fields.torsion_displacement, &fields.bending_displacement, &fields.axial_displacement})
        field->value.setZero(3, n_mesh);
    const double R = shape.bar, area = std::numbers::pi * R * R;
    const double I = area * R * R / 4, J = 2 * I, E = 2.1e5, G = 8.1e4;
    for (Eigen::Index i = 0; i < n; ++i)
    {
        const Eigen::Vector2d p = fields.mesh.node.col(fields.region_nodes.node[std::size_t(i)]);
        const double factor = raised(shape, bump, p(0), p(1));
        fields.torsion.value(4, i) = factor * p(1) / J;
        fields.bending.value(2, i) = factor * p(1) / I;
        fields.axial.value(2, i) = factor / area;
    }
    for (Eigen::Index i = 0; i < n_mesh; ++i)
    {
        const double z = fields.mesh.node(0, i), r = fields.mesh.node(1, i);
        fields.torsion_displacement.value(1, i) = r * z / (G * J);
        fields.bending_displacement.value.col(i) = Eigen::Vector3d(-z * z / 2, z * z / 2, r * z) / (E * I);
        fields.axial_displacement.value(2, i) = z / (E * area);
    }
    return fields;
}

Case splice_case(const Shape& shape)
{
    Case asked;
    asked.title = "Hill-climb single-seater, rear left";
    for (const Side side : both_sides)
    {
        Bar bar;
        const double end = side == Side::left ? -shape.left : shape.right;
        bar.sections.push_back({Millimetre{end}, Millimetre{2 * shape.bar}, Millimetre{0}});
        asked.bar[index(side)] = bar;
    }
    if (shape.sleeve <= 0) return asked;
    asked.joint = Joint{};
    Sleeve sleeve;
    sleeve.length = Millimetre{2 * shape.sleeve_half};
    sleeve.outer_diameter = Millimetre{2 * shape.sleeve};
    sleeve.weld.leg_on_bar = sleeve.weld.leg_on_sleeve = Millimetre{shape.leg};
    asked.sleeve = sleeve;
    return asked;
}

}  // namespace splicewright::sample
