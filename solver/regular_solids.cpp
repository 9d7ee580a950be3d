// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/regular_solids.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <unordered_map>

#include "solver/solid_element.h"

namespace splicewright::regular
{

namespace
{

using Corners = std::array<std::int32_t, 4>;

// Adds the middle nodes of all edges of corner tetrahedra; the corners are right-handed afterwards.
class Quadratic
{
public:
    explicit Quadratic(std::vector<Eigen::Vector3d> corners) : places_(std::move(corners)), n_corners_(places_.size())
    {
    }

    void add(Corners c)
    {
        const Eigen::Vector3d a = at(c[1]) - at(c[0]), b = at(c[2]) - at(c[0]), d = at(c[3]) - at(c[0]);
        if (a.cross(b).dot(d) < 0) std::swap(c[2], c[3]);
        std::array<std::int32_t, 10> element{c[0], c[1], c[2], c[3]};
        for (std::size_t e = 0; e < 6; ++e)
            element[4 + e] = middle(c[static_cast<std::size_t>(edge_corners[e][0])],
                                    c[static_cast<std::size_t>(edge_corners[e][1])]);
        mesh_.elements.push_back(element);
    }

    SolidMesh finished(const std::function<Eigen::Vector3d(const Eigen::Vector3d&, const Eigen::Vector3d&)>& middle_of)
    {
        mesh_.regions.assign(mesh_.elements.size(), 0);
        for (const auto& [first, second] : edges_) places_.push_back(middle_of(at(first), at(second)));
        for (const Eigen::Vector3d& p : places_) mesh_.nodes.push_back({p.x(), p.y(), p.z()});
        return std::move(mesh_);
    }

private:
    [[nodiscard]] const Eigen::Vector3d& at(std::int32_t node) const { return places_[static_cast<std::size_t>(node)]; }

    std::int32_t middle(std::int32_t a, std::int32_t b)
    {
        const auto low = std::min(a, b), high = std::max(a, b);
        const auto next = static_cast<std::int32_t>(n_corners_ + edges_.size());
        const auto [found, is_new] = number_.try_emplace((static_cast<std::int64_t>(low) << 32) | high, next);
        if (is_new) edges_.emplace_back(low, high);
        return found->second;
    }

    SolidMesh mesh_;
    std::vector<Eigen::Vector3d> places_;
    std::size_t n_corners_;
    std::unordered_map<std::int64_t, std::int32_t> number_;
    std::vector<std::pair<std::int32_t, std::int32_t>> edges_;
};

constexpr std::array<std::array<std::size_t, 6>, 4> element_faces{
    {{0, 2, 1, 6, 5, 4}, {0, 1, 3, 4, 8, 7}, {1, 2, 3, 5, 9, 8}, {0, 3, 2, 7, 9, 6}}};

SolidMesh::Face element_face(const SolidMesh& mesh, std::size_t element, std::size_t f)
{
    SolidMesh::Face face{{}, static_cast<std::int32_t>(element)};
    for (std::size_t i = 0; i < 6; ++i) face.nodes[i] = mesh.elements[element][element_faces[f][i]];
    return face;
}

// Adds to `name` each element face whose corners all satisfy `on`, corners counter-clockwise seen from outside.
void name_faces(SolidMesh& mesh, const std::string& name, const std::function<bool(const Eigen::Vector3d&)>& on)
{
    std::vector<SolidMesh::Face>& faces = mesh.faces[name];
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
        for (std::size_t f = 0; f < 4; ++f)
        {
            const SolidMesh::Face face = element_face(mesh, e, f);
            bool all = true;
            for (std::size_t i = 0; i < 3; ++i) all = all && on(place(mesh, static_cast<std::size_t>(face.nodes[i])));
            if (all) faces.push_back(face);
        }
}

// Cuts a prism into three; diagonals start at the lowest number of each side, so neighbours agree.
void add_prism(Quadratic& mesh, std::array<std::int32_t, 3> low, std::int32_t rise)
{
    std::ranges::sort(low);
    mesh.add({low[0], low[1], low[2], low[2] + rise});
    mesh.add({low[0], low[1], low[1] + rise, low[2] + rise});
    mesh.add({low[0], low[0] + rise, low[1] + rise, low[2] + rise});
}

// Triangles of a disc, [n, 3] nodes; ring i has 6 i nodes after the 1 + 3 i (i - 1) before it.
std::vector<std::array<std::int32_t, 3>> disc_triangles(int rings)
{
    const auto node = [](int ring, int turn) { return ring == 0 ? 0 : 1 + 3 * ring * (ring - 1) + turn % (6 * ring); };
    std::vector<std::array<std::int32_t, 3>> triangles;
    for (int i = 1; i <= rings; ++i)
        for (int s = 0; s < 6; ++s)
            for (int j = 0; j < i; ++j)
            {
                triangles.push_back({node(i, s * i + j), node(i, s * i + j + 1), node(i - 1, s * (i - 1) + j)});
                if (j + 1 < i)
                    triangles.push_back(
                        {node(i - 1, s * (i - 1) + j), node(i, s * i + j + 1), node(i - 1, s * (i - 1) + j + 1)});
            }
    return triangles;
}

double radius_at(const Eigen::Vector3d& p) { return p.head<2>().norm(); }

}  // namespace

Eigen::Vector3d place(const SolidMesh& mesh, std::size_t node)
{
    return {mesh.nodes[node][0], mesh.nodes[node][1], mesh.nodes[node][2]};
}

void hold(SolidBody& body, const SolidMesh& mesh, const std::function<int(const Eigen::Vector3d&)>& axes)
{
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        for (int axis = 0; axis < 3; ++axis)
            if (((axes(place(mesh, i)) >> axis) & 1) != 0) body.held.push_back({static_cast<std::int32_t>(i), axis, 0});
}

SolidMesh round_bar(const BarShape& shape)
{
    const int per_layer = 1 + 3 * shape.rings * (shape.rings + 1);
    std::vector<Eigen::Vector3d> corners;
    for (int k = 0; k <= shape.layers; ++k)
    {
        const double z = shape.length * shape.layer_at(static_cast<double>(k) / shape.layers);
        corners.emplace_back(0, 0, z);
        for (int i = 1; i <= shape.rings; ++i)
            for (int j = 0; j < 6 * i; ++j)
            {
                const double turn = std::numbers::pi * j / (3 * i), r = shape.radius * i / shape.rings;
                corners.emplace_back(r * std::cos(turn), r * std::sin(turn), z);
            }
    }
    Quadratic quadratic(std::move(corners));
    const auto triangles = disc_triangles(shape.rings);
    for (int k = 0; k < shape.layers; ++k)
        for (const auto& t : triangles)
            add_prism(quadratic, {t[0] + k * per_layer, t[1] + k * per_layer, t[2] + k * per_layer}, per_layer);
    const double skin = shape.radius * (1 - 1e-9);
    SolidMesh mesh = quadratic.finished(
        [&](const Eigen::Vector3d& a, const Eigen::Vector3d& b)
        {
            Eigen::Vector3d middle = 0.5 * (a + b);
            const double ra = radius_at(a), rb = radius_at(b), wanted = 0.5 * (ra + rb);
            const bool outside = ra > skin && rb > skin;
            const bool bends = shape.curving == Curving::all || (shape.curving == Curving::skin && outside);
            if (bends && radius_at(middle) > 0) middle.head<2>() *= wanted / radius_at(middle);
            return middle;
        });
    name_faces(mesh, "left", [](const Eigen::Vector3d& p) { return p.z() == 0; });
    name_faces(mesh, "right", [&](const Eigen::Vector3d& p) { return p.z() == shape.length; });
    name_faces(mesh, "outside", [&](const Eigen::Vector3d& p) { return radius_at(p) > skin; });
    return mesh;
}

SolidMesh box(const BoxShape& shape)
{
    const auto node = [&](int i, int j, int k) { return (k * (shape.ny + 1) + j) * (shape.nx + 1) + i; };
    std::vector<Eigen::Vector3d> corners;
    for (int k = 0; k <= shape.nz; ++k)
        for (int j = 0; j <= shape.ny; ++j)
            for (int i = 0; i <= shape.nx; ++i)
                corners.emplace_back(shape.x * i / shape.nx, shape.y * j / shape.ny, shape.z * k / shape.nz);
    Quadratic quadratic(std::move(corners));
    for (int k = 0; k < shape.nz; ++k)
        for (int j = 0; j < shape.ny; ++j)
            for (int i = 0; i < shape.nx; ++i)
                for (const auto& way : {std::array{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}})
                {
                    std::array<int, 3> at{i, j, k};
                    Corners c{node(i, j, k)};
                    for (std::size_t step = 0; step < 3; ++step)
                    {
                        ++at[static_cast<std::size_t>(way[step])];
                        c[step + 1] = node(at[0], at[1], at[2]);
                    }
                    quadratic.add(c);
                }
    SolidMesh mesh = quadratic.finished([](const Eigen::Vector3d& a, const Eigen::Vector3d& b)
                                        { return Eigen::Vector3d(0.5 * (a + b)); });
    name_faces(mesh, "left", [](const Eigen::Vector3d& p) { return p.z() == 0; });
    name_faces(mesh, "right", [&](const Eigen::Vector3d& p) { return p.z() == shape.z; });
    name_faces(mesh, "x0", [](const Eigen::Vector3d& p) { return p.x() == 0; });
    name_faces(mesh, "x1", [&](const Eigen::Vector3d& p) { return p.x() == shape.x; });
    name_faces(mesh, "y0", [](const Eigen::Vector3d& p) { return p.y() == 0; });
    name_faces(mesh, "y1", [&](const Eigen::Vector3d& p) { return p.y() == shape.y; });
    return mesh;
}

void move_nodes(SolidMesh& mesh, const Move& move)
{
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
    {
        const Eigen::Vector3d to = move(place(mesh, i));
        mesh.nodes[i] = {to.x(), to.y(), to.z()};
    }
}

void set_regions(SolidMesh& mesh, const std::function<int(const Eigen::Vector3d&)>& region_at)
{
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
        mesh.regions[e] = region_at(nodes_of(mesh, e).leftCols<4>().rowwise().mean());
}

SolidMesh kept_part(const SolidMesh& mesh, const std::string& name,
                    const std::function<bool(const Eigen::Vector3d&)>& keeps)
{
    std::vector<std::int32_t> new_node(mesh.nodes.size(), -1), new_element(mesh.elements.size(), -1);
    SolidMesh part;
    std::map<std::array<std::int32_t, 3>, int> dropped;
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
    {
        const bool kept = keeps(nodes_of(mesh, e).leftCols<4>().rowwise().mean());
        for (std::size_t f = 0; f < 4 && !kept; ++f)
        {
            const auto nodes = element_face(mesh, e, f).nodes;
            std::array corners{nodes[0], nodes[1], nodes[2]};
            std::ranges::sort(corners);
            dropped[corners] = 1;
        }
        if (!kept) continue;
        new_element[e] = static_cast<std::int32_t>(part.elements.size());
        part.regions.push_back(mesh.regions[e]);
        part.elements.push_back(mesh.elements[e]);
        for (std::int32_t& node : part.elements.back())
        {
            std::int32_t& now = new_node[static_cast<std::size_t>(node)];
            if (now < 0)
            {
                now = static_cast<std::int32_t>(part.nodes.size());
                part.nodes.push_back(mesh.nodes[static_cast<std::size_t>(node)]);
            }
            node = now;
        }
    }
    const auto keep = [&](const std::string& of, SolidMesh::Face face)
    {
        face.element = new_element[static_cast<std::size_t>(face.element)];
        if (face.element < 0) return;
        for (std::int32_t& node : face.nodes) node = new_node[static_cast<std::size_t>(node)];
        part.faces[of].push_back(face);
    };
    for (const auto& [of, faces] : mesh.faces)
        for (const SolidMesh::Face& face : faces) keep(of, face);
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
        for (std::size_t f = 0; f < 4; ++f)
        {
            const SolidMesh::Face face = element_face(mesh, e, f);
            std::array corners{face.nodes[0], face.nodes[1], face.nodes[2]};
            std::ranges::sort(corners);
            if (dropped.contains(corners)) keep(name, face);
        }
    return part;
}

void split_between(SolidMesh& mesh, int a, int b, const std::string& name,
                   const std::function<bool(const Eigen::Vector3d&)>& parts)
{
    std::vector<char> in_a(mesh.nodes.size(), 0);
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
        if (mesh.regions[e] == a)
            for (const std::int32_t node : mesh.elements[e]) in_a[static_cast<std::size_t>(node)] = 1;
    std::unordered_map<std::int32_t, std::int32_t> twin;
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
    {
        if (mesh.regions[e] != b) continue;
        for (std::int32_t& node : mesh.elements[e])
        {
            const auto at = static_cast<std::size_t>(node);
            if (at >= in_a.size() || in_a[at] == 0 || !parts(place(mesh, at))) continue;
            const auto [found, is_new] = twin.try_emplace(node, static_cast<std::int32_t>(mesh.nodes.size()));
            if (is_new)
            {
                mesh.nodes.push_back(mesh.nodes[at]);
                mesh.pairs[name].push_back({node, found->second});
            }
            node = found->second;
        }
    }
    for (auto& [face_name, faces] : mesh.faces)
        for (SolidMesh::Face& face : faces)
            if (mesh.regions[static_cast<std::size_t>(face.element)] == b)
                for (std::int32_t& node : face.nodes)
                    if (const auto found = twin.find(node); found != twin.end()) node = found->second;
}

SolidMesh spliced_bar(int rings, int layers)
{
    constexpr double half = 100, outside = 20;  // mm
    BarShape shape{outside, 2 * half, rings, layers};
    shape.layer_at = [](double part)
    {
        const double t = 2 * part - 1;
        return 0.5 + 0.5 * t * (0.4 + 0.6 * t * t);
    };
    SolidMesh mesh = round_bar(shape);
    const double bore = outside * std::round(0.7 * rings) / rings;
    set_regions(mesh, [&](const Eigen::Vector3d& p)
                { return radius_at(p) > bore * std::cos(std::numbers::pi / (3 * rings)) ? 1 : 0; });
    split_between(mesh, 0, 1, "slit",
                  [](const Eigen::Vector3d& p) { return std::abs(p.z() - half) > 5 && std::abs(p.z() - half) < 60; });
    return mesh;
}

Eigen::Matrix3Xd at_nodes(const SolidMesh& mesh, const Move& field)
{
    Eigen::Matrix3Xd values(3, static_cast<Eigen::Index>(mesh.nodes.size()));
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        values.col(static_cast<Eigen::Index>(i)) = field(place(mesh, i));
    return values;
}

}  // namespace splicewright::regular
