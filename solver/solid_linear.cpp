// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_linear.h"

#include <numeric>

#include "solver/solid_element.h"

namespace splicewright
{

namespace
{

// Part of the block of nodes i, j: lambda g_i g_j^T + mu (g_j g_i^T + (g_i . g_j) I), times a volume; springs: mu = 0.
struct Term
{
    std::array<Eigen::Vector3d, 4> g;  // 1/mm
    double lambda = 0, mu = 0;         // N mm
};

// A tetrahedron with linear displacement over its barycentric coordinates, or a spring between the means of two pairs
// of nodes. A straight tetrahedron has one term, a curved one eight: only with its true shape is the linear level
// the quadratic one seen through fewer freedoms, and strongly curved elements take a third fewer iterations.
struct SmallStiffness
{
    std::array<std::int32_t, 4> nodes{-1, -1, -1, -1};  // of the linear level; -1: none
    std::int64_t first_term = 0, last_term = 0;
};

void put_terms(const SolidElementNodes& nodes, const ElasticConstants& steel, Term* to, std::int64_t n_terms)
{
    for (std::int64_t p = 0; p < n_terms; ++p)
    {
        const TetrahedronPoint point = n_terms == 1 ? TetrahedronPoint{{0.25, 0.25, 0.25, 0.25}, 1.0 / 6}
                                                    : eight_points()[static_cast<std::size_t>(p)];
        const SolidMap map = solid_map(nodes, point.at);
        const double volume = point.weight * map.jacobian;
        Term& term = to[p];
        term.g[0] = -map.gradients.rowwise().sum();
        for (std::size_t i = 0; i < 3; ++i) term.g[i + 1] = map.gradients.col(static_cast<int>(i));
        term.lambda = volume * steel.E * steel.nu / ((1 + steel.nu) * (1 - 2 * steel.nu));
        term.mu = volume * steel.G();
    }
}

Term term_of(const LayoutSpring& spring)
{
    Term term;
    term.lambda = spring.stiffness;
    const Eigen::Vector3d half = 0.5 * Eigen::Vector3d(spring.direction[0], spring.direction[1], spring.direction[2]);
    term.g = {half, half, -half, -half};
    return term;
}

std::array<std::int32_t, 4> nodes_of(const LinearLevel& level, const LayoutSpring& spring)
{
    const auto first = level.parents[static_cast<std::size_t>(spring.first)];
    if (spring.second < 0) return {first[0], first[1], -1, -1};
    const auto second = level.parents[static_cast<std::size_t>(spring.second)];
    return {first[0], first[1], second[0], second[1]};
}

void number_corners(LinearLevel& level, const SolidMesh& mesh, const SolidLayout& layout)
{
    level.parents.assign(static_cast<std::size_t>(layout.n_nodes), {-1, -1});
    const auto at = [&](std::size_t e, std::size_t n)
    { return static_cast<std::size_t>(layout.node_of[static_cast<std::size_t>(mesh.elements[e][n])]); };
    std::vector<char> is_corner(level.parents.size(), 0);
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
        for (std::size_t n = 0; n < 4; ++n) is_corner[at(e, n)] = 1;
    for (std::size_t i = 0; i < is_corner.size(); ++i)
    {
        if (is_corner[i] == 0) continue;
        const auto number = static_cast<std::int32_t>(level.corners.size());
        level.parents[i] = {number, number};
        level.corners.push_back(static_cast<std::int32_t>(i));
    }
    level.n_nodes = static_cast<std::int64_t>(level.corners.size());
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
        for (std::size_t n = 0; n < 6; ++n)
        {
            std::array<std::int32_t, 2>& parents = level.parents[at(e, 4 + n)];
            for (std::size_t k = 0; k < 2; ++k)
                parents[k] = level.parents[at(e, static_cast<std::size_t>(edge_corners[n][k]))][0];
        }
    level.places.resize(3, level.n_nodes);
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
    {
        const std::int32_t node = layout.node_of[i];
        if (node < 0 || is_corner[static_cast<std::size_t>(node)] == 0) continue;
        level.places.col(level.parents[static_cast<std::size_t>(node)][0]) =
            Eigen::Vector3d(mesh.nodes[i][0], mesh.nodes[i][1], mesh.nodes[i][2]);
    }
}

void list_children(LinearLevel& level)
{
    level.child_starts.assign(static_cast<std::size_t>(level.n_nodes) + 1, 0);
    for (const auto& [a, b] : level.parents)
    {
        ++level.child_starts[static_cast<std::size_t>(a) + 1];
        if (b != a) ++level.child_starts[static_cast<std::size_t>(b) + 1];
    }
    std::partial_sum(level.child_starts.begin(), level.child_starts.end(), level.child_starts.begin());
    level.children.resize(static_cast<std::size_t>(level.child_starts.back()));
    std::vector<std::int64_t> next(level.child_starts.begin(), level.child_starts.end() - 1);
    const auto add = [&](std::int32_t parent, std::size_t child)
    {
        const auto at = static_cast<std::size_t>(next[static_cast<std::size_t>(parent)]++);
        level.children[at] = static_cast<std::int32_t>(child);
    };
    for (std::size_t i = 0; i < level.corners.size(); ++i)
        add(static_cast<std::int32_t>(i), static_cast<std::size_t>(level.corners[i]));
    for (std::size_t i = 0; i < level.parents.size(); ++i)
    {
        const auto [a, b] = level.parents[i];
        if (a == b) continue;
        add(a, i);
        add(b, i);
    }
}

// All small stiffnesses, and which of them each node takes part in.
struct Assembly
{
    std::vector<SmallStiffness> small;
    std::vector<Term> terms;
    std::vector<std::int64_t> starts;  // [n_nodes + 1]
    std::vector<std::int32_t> of_node;
    const std::vector<int>* held = nullptr;

    struct Worker
    {
        const Assembly* all;
        std::vector<std::int64_t> where;  // place of a column in the row that is being made, -1: none

        void operator()(std::int64_t row, std::vector<std::int32_t>& places, std::vector<double>& blocks)
        {
            const std::size_t first = places.size();
            // The diagonal comes first.
            add(row, places, blocks, static_cast<std::int32_t>(row), Eigen::Matrix3d::Zero());
            const auto at = static_cast<std::size_t>(row);
            for (std::int64_t n = all->starts[at]; n < all->starts[at + 1]; ++n)
                add_row_of(all->small[static_cast<std::size_t>(all->of_node[static_cast<std::size_t>(n)])], row, places,
                           blocks);
            hold(row, first, places, blocks);
            for (std::size_t n = first; n < places.size(); ++n) where[static_cast<std::size_t>(places[n])] = -1;
        }

        void add_row_of(const SmallStiffness& small, std::int64_t row, std::vector<std::int32_t>& places,
                        std::vector<double>& blocks)
        {
            for (std::size_t i = 0; i < 4; ++i)
            {
                if (small.nodes[i] != row) continue;
                for (std::size_t j = 0; j < 4; ++j)
                    if (small.nodes[j] >= 0) add(row, places, blocks, small.nodes[j], all->block_of(small, i, j));
            }
        }

        void add(std::int64_t, std::vector<std::int32_t>& places, std::vector<double>& blocks, std::int32_t column,
                 const Eigen::Matrix3d& block)
        {
            std::int64_t& at = where[static_cast<std::size_t>(column)];
            if (at < 0)
            {
                at = static_cast<std::int64_t>(places.size());
                places.push_back(column);
                blocks.insert(blocks.end(), block.data(), block.data() + 9);
            }
            else Eigen::Map<Eigen::Matrix3d>(blocks.data() + 9 * at) += block;
        }

        void hold(std::int64_t row, std::size_t first, const std::vector<std::int32_t>& places,
                  std::vector<double>& blocks) const
        {
            const int here = (*all->held)[static_cast<std::size_t>(row)];
            for (std::size_t n = first; n < places.size(); ++n)
            {
                const int there = (*all->held)[static_cast<std::size_t>(places[n])];
                if ((here | there) == 0) continue;
                Eigen::Map<Eigen::Matrix3d> block(blocks.data() + 9 * n);
                for (int a = 0; a < 3; ++a)
                    for (int b = 0; b < 3; ++b)
                        if ((((here >> a) | (there >> b)) & 1) != 0 && !(n == first && a == b)) block(a, b) = 0;
            }
        }
    };
    [[nodiscard]] Eigen::Matrix3d block_of(const SmallStiffness& of, std::size_t i, std::size_t j) const
    {
        Eigen::Matrix3d block = Eigen::Matrix3d::Zero();
        for (std::int64_t t = of.first_term; t < of.last_term; ++t)
        {
            const Term& term = terms[static_cast<std::size_t>(t)];
            block += term.lambda * term.g[i] * term.g[j].transpose();
            if (term.mu == 0) continue;
            block += term.mu * term.g[j] * term.g[i].transpose();
            block.diagonal().array() += term.mu * term.g[i].dot(term.g[j]);
        }
        return block;
    }
    [[nodiscard]] Worker worker() const { return {this, std::vector<std::int64_t>(starts.size() - 1, -1)}; }
};

void put_elements(SolidTeam& team, const LinearLevel& level, const SolidMesh& mesh, const SolidLayout& layout,
                  const std::vector<ElasticConstants>& steel, Assembly& all)
{
    all.small.resize(mesh.elements.size());
    const auto for_elements = [&](const auto& use)
    {
        team.run_pieces(static_cast<std::int64_t>(mesh.elements.size()), 4096,
                        [&](std::int64_t first, std::int64_t last)
                        {
                            for (auto e = static_cast<std::size_t>(first); e < static_cast<std::size_t>(last); ++e)
                                use(e, nodes_of(mesh, e), all.small[e]);
                        });
    };
    for_elements([](std::size_t, const SolidElementNodes& nodes, SmallStiffness& small)
                 { small.last_term = is_straight(nodes) ? 1 : 8; });
    std::int64_t n_terms = 0;
    for (SmallStiffness& small : all.small)
    {
        small.first_term = n_terms;
        n_terms = small.last_term += n_terms;
    }
    all.terms.resize(static_cast<std::size_t>(n_terms));
    for_elements(
        [&](std::size_t e, const SolidElementNodes& nodes, SmallStiffness& small)
        {
            put_terms(nodes, steel[static_cast<std::size_t>(mesh.regions[e])], all.terms.data() + small.first_term,
                      small.last_term - small.first_term);
            for (std::size_t n = 0; n < 4; ++n)
            {
                const std::int32_t node = layout.node_of[static_cast<std::size_t>(mesh.elements[e][n])];
                small.nodes[n] = level.parents[static_cast<std::size_t>(node)][0];
            }
        });
}

Assembly assembly(SolidTeam& team, const LinearLevel& level, const SolidMesh& mesh, const SolidLayout& layout,
                  const std::vector<ElasticConstants>& steel, const std::vector<LayoutSpring>& springs)
{
    Assembly all;
    all.held = &level.held;
    put_elements(team, level, mesh, layout, steel, all);
    for (const LayoutSpring& spring : springs)
    {
        const auto at = static_cast<std::int64_t>(all.terms.size());
        all.terms.push_back(term_of(spring));
        all.small.push_back({nodes_of(level, spring), at, at + 1});
    }
    all.starts.assign(static_cast<std::size_t>(level.n_nodes) + 1, 0);
    // A node that a spring names twice takes part once: all its entries are found from there.
    const auto for_nodes = [](const SmallStiffness& small, const auto& use)
    {
        for (std::size_t i = 0; i < 4; ++i)
            if (small.nodes[i] >= 0 && std::find(small.nodes.begin(), small.nodes.begin() + static_cast<int>(i),
                                                 small.nodes[i]) == small.nodes.begin() + static_cast<int>(i))
                use(static_cast<std::size_t>(small.nodes[i]));
    };
    for (const SmallStiffness& small : all.small) for_nodes(small, [&](std::size_t node) { ++all.starts[node + 1]; });
    std::partial_sum(all.starts.begin(), all.starts.end(), all.starts.begin());
    all.of_node.resize(static_cast<std::size_t>(all.starts.back()));
    std::vector<std::int64_t> next(all.starts.begin(), all.starts.end() - 1);
    for (std::size_t s = 0; s < all.small.size(); ++s)
        for_nodes(all.small[s], [&](std::size_t node)
                  { all.of_node[static_cast<std::size_t>(next[node]++)] = static_cast<std::int32_t>(s); });
    return all;
}

}  // namespace

LinearLevel linear_level(SolidTeam& team, const SolidMesh& mesh, const SolidLayout& layout,
                         const std::vector<ElasticConstants>& steel, const std::vector<LayoutSpring>& springs,
                         const std::vector<HeldNode>& held)
{
    LinearLevel level;
    number_corners(level, mesh, layout);
    list_children(level);
    level.held.assign(static_cast<std::size_t>(level.n_nodes), 0);
    for (const HeldNode& node : held)
    {
        const auto [a, b] = level.parents[static_cast<std::size_t>(node.node)];
        if (a == b) level.held[static_cast<std::size_t>(a)] = node.freedoms;
    }
    level.K = matrix_by_rows<double, 3, 3>(team, level.n_nodes, level.n_nodes,
                                           assembly(team, level, mesh, layout, steel, springs));
    return level;
}

}  // namespace splicewright
