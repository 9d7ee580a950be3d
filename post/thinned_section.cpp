// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/thinned_section.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "post/mesh_edges.h"

namespace splicewright
{
namespace
{

// A notch of eight elements to the quarter turn keeps its middles; a share of the edge's length.
constexpr double most_sag = 0.02;

struct LoadField
{
    double amount;
    const StressAmplitude* stress;
    const DisplacementAmplitude* displacement;
};

std::vector<LoadField> load_fields(const SolvedFields& fields, const CombinedLoad& load)
{
    std::vector<LoadField> list;
    const auto add = [&](double amount, const StressAmplitude& stress, const DisplacementAmplitude& displacement)
    {
        if (amount != 0 && stress.value.cols() > 0) list.push_back({std::abs(amount), &stress, &displacement});
    };
    add(load.torque, fields.torsion, fields.torsion_displacement);
    add(load.bending, fields.bending, fields.bending_displacement);
    add(load.axial, fields.axial, fields.axial_displacement);
    add(load.press, fields.press, fields.press_displacement);
    return list;
}

// Decides for each edge of the mesh whether its middle is kept.
class Middles
{
public:
    Middles(const SolvedFields& fields, const CombinedLoad& load, const Thinning& allowed)
        : fields_(fields), loads_(load_fields(fields, load)), allowed_(allowed)
    {
        for (const LoadField& one : loads_) largest_.push_back(one.displacement->value.colwise().norm().maxCoeff());
        const RegionNodes& nodes = fields.region_nodes;
        for (Eigen::Index t = 0; t < nodes.triangle.cols(); ++t)
            for (const auto& [first, middle, last] : triangle_edges)
                if (is_needed(nodes.triangle(first, t), nodes.triangle(middle, t), nodes.triangle(last, t)))
                    kept_.insert(nodes.node[std::size_t(nodes.triangle(middle, t))]);
    }
    [[nodiscard]] bool keeps(int mesh_node) const { return kept_.contains(mesh_node); }

private:
    bool is_needed(int first, int middle, int last) const
    {
        const auto at = [&](int i) { return fields_.region_nodes.node[std::size_t(i)]; };
        const Eigen::Matrix2Xd& place = fields_.mesh.node;
        const Eigen::Vector2d sag = place.col(at(middle)) - (place.col(at(first)) + place.col(at(last))) / 2;
        if (sag.norm() > most_sag * (place.col(at(last)) - place.col(at(first))).norm()) return true;
        double missed = 0;
        for (std::size_t k = 0; k < loads_.size(); ++k)
        {
            const auto& stress = loads_[k].stress->value;
            missed += loads_[k].amount * von_mises(stress.col(middle) - (stress.col(first) + stress.col(last)) / 2)(0);
            const Eigen::Matrix3Xd& u = loads_[k].displacement->value;
            if ((u.col(at(middle)) - (u.col(at(first)) + u.col(at(last))) / 2).norm() > allowed_.share * largest_[k])
                return true;
        }
        return missed > allowed_.share * allowed_.peak;
    }

    const SolvedFields& fields_;
    std::vector<LoadField> loads_;
    Thinning allowed_;
    std::vector<double> largest_;
    std::set<int> kept_;
};

// The nodes of a section, each numbered when it is first used.
class Numbering
{
public:
    int operator()(int region_node)
    {
        const auto [place, is_new] = number_.try_emplace(region_node, static_cast<int>(node.size()));
        if (is_new) node.push_back(region_node);
        return place->second;
    }
    std::vector<int> node;

private:
    std::map<int, int> number_;
};

// A triangle whose kept middles make it a polygon, cut up so that each middle is a corner of its pieces.
std::vector<std::array<int, 3>> pieces(const Eigen::Matrix<int, 6, 1>& node, const std::array<bool, 3>& kept)
{
    const auto n_kept = std::count(kept.begin(), kept.end(), true);
    if (n_kept == 3)
        return {{node(0), node(3), node(5)},
                {node(3), node(1), node(4)},
                {node(5), node(4), node(2)},
                {node(3), node(4), node(5)}};
    // Turned so that with one middle it is the first edge's, with two the third edge has none.
    std::size_t turn = 0;
    while (n_kept > 0 && !(kept[turn] && (n_kept == 1 || kept[(turn + 1) % 3]))) ++turn;
    const auto corner = [&](std::size_t k) { return node(static_cast<Eigen::Index>((k + turn) % 3)); };
    const auto middle = [&](std::size_t k) { return node(static_cast<Eigen::Index>(3 + (k + turn) % 3)); };
    if (n_kept == 0) return {{corner(0), corner(1), corner(2)}};
    if (n_kept == 1) return {{corner(0), middle(0), corner(2)}, {middle(0), corner(1), corner(2)}};
    return {{middle(0), corner(1), middle(1)}, {corner(0), middle(0), middle(1)}, {corner(0), middle(1), corner(2)}};
}

}  // namespace

ThinnedSection thinned(const SolvedFields& fields, const CombinedLoad& load, const Thinning& allowed)
{
    const Middles middles(fields, load, allowed);
    const RegionNodes& nodes = fields.region_nodes;
    const Mesh& mesh = fields.mesh;
    ThinnedSection section;
    Numbering number;
    for (Eigen::Index t = 0; t < nodes.triangle.cols(); ++t)
    {
        std::array<bool, 3> kept{};
        for (std::size_t k = 0; k < 3; ++k) kept[k] = middles.keeps(mesh.triangle(static_cast<int>(3 + k), t));
        for (const auto& [a, b, c] : pieces(nodes.triangle.col(t), kept))
        {
            section.triangle.push_back({number(a), number(b), number(c)});
            section.region.push_back(mesh.region_of[std::size_t(t)]);
        }
    }
    const std::set<EdgeKey> open = unfused_edges(mesh);
    std::set<int> inner;
    for (const FacePair& pair : mesh.pair) inner.insert(pair.inner);
    for (const auto& [key, use] : edge_uses(mesh))
    {
        const bool is_free = use.n_triangles == 1;
        if ((!is_free && !use.between_regions) || on_axis(mesh, use)) continue;
        const auto& [first, middle, last] = triangle_edges[std::size_t(use.side)];
        const int owner = use.triangle;
        const auto local = [&nodes, &number, owner](int k) { return number(nodes.triangle(k, owner)); };
        std::vector<std::array<int, 2>> parts{{local(first), local(last)}};
        if (middles.keeps(use.node[1])) parts = {{local(first), local(middle)}, {local(middle), local(last)}};
        const bool is_unfused = open.contains(key);
        for (const std::array<int, 2>& part : parts)
        {
            if (is_free) section.skin.push_back(part);
            if (!is_unfused) section.outline.push_back(part);
            else if (inner.contains(use.node[1])) section.unfused.push_back(part);
        }
    }
    section.node = std::move(number.node);
    return section;
}

}  // namespace splicewright
