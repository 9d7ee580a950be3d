// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_diagonal.h"

#include <Eigen/Core>
#include <algorithm>

#include "solver/solid_element.h"

namespace splicewright
{

namespace
{

constexpr int width = 8;

// g g^T of one node with weights: (lambda + mu) g g^T + mu |g|^2 I, upper triangle.
void add_product(double* to, const Eigen::Vector3d& g, double lambda, double mu)
{
    const double both = lambda + mu, rest = mu * g.squaredNorm();
    to[0] += both * g.x() * g.x() + rest;
    to[1] += both * g.x() * g.y();
    to[2] += both * g.x() * g.z();
    to[3] += both * g.y() * g.y() + rest;
    to[4] += both * g.y() * g.z();
    to[5] += both * g.z() * g.z() + rest;
}

struct Factors
{
    Eigen::Matrix<double, 3, 4> g;  // gradients of l0 to l3
    double lambda = 0, mu = 0;
};

Factors factors_at(const double* from)
{
    Factors f;
    for (int i = 0; i < 9; ++i) f.g(i % 3, i / 3 + 1) = from[i * batch_lanes];
    f.g.col(0) = -f.g.rightCols<3>().rowwise().sum();
    f.lambda = from[9 * batch_lanes];
    f.mu = from[10 * batch_lanes];
    return f;
}

// Integrals over a straight element, lambda and mu times V / 20: corner 12 g_i g_i^T,
// edge 16 (g_i + g_j)(g_i + g_j)^T + 16 g_i g_i^T + 16 g_j g_j^T. Source: derived from the shape functions.
template <class Row>
void add_straight(const double* from, const Row& row_of)
{
    const Factors f = factors_at(from);
    for (int i = 0; i < 4; ++i) add_product(row_of(i), f.g.col(i), 12 * f.lambda, 12 * f.mu);
    for (int e = 0; e < 6; ++e)
    {
        const auto [i, j] = edge_corners[static_cast<std::size_t>(e)];
        add_product(row_of(4 + e), f.g.col(i) + f.g.col(j), 16 * f.lambda, 16 * f.mu);
        add_product(row_of(4 + e), f.g.col(i), 16 * f.lambda, 16 * f.mu);
        add_product(row_of(4 + e), f.g.col(j), 16 * f.lambda, 16 * f.mu);
    }
}

template <class Row>
void add_curved(const double* from, const Row& row_of)
{
    for (const TetrahedronPoint& point : eight_points())
    {
        const Factors f = factors_at(from);
        for (int i = 0; i < 4; ++i)
            add_product(row_of(i), (4 * point.at[static_cast<std::size_t>(i)] - 1) * f.g.col(i), f.lambda, f.mu);
        for (int e = 0; e < 6; ++e)
        {
            const auto [i, j] = edge_corners[static_cast<std::size_t>(e)];
            const double li = point.at[static_cast<std::size_t>(i)], lj = point.at[static_cast<std::size_t>(j)];
            add_product(row_of(4 + e), 4 * (lj * f.g.col(i) + li * f.g.col(j)), f.lambda, f.mu);
        }
        from += factors_of_straight * batch_lanes;
    }
}

// Calls add(factors of the lane, row of each node) for the elements of one kind in one part.
template <class Add>
void for_lanes(const SolidBatches& batches, const BatchRange& range, const AlignedVector<double>& factors,
               int n_factors, double* rows, const Add& add)
{
    for (std::int64_t b = range.first; b < range.last; ++b)
    {
        const bool border = b >= range.border;
        const std::int64_t at = border ? range.border_before + b - range.border : b;
        const std::uint32_t* targets = (border ? batches.targets : batches.nodes).data() + at * 10 * batch_lanes;
        for (int lane = 0; lane < batch_lanes; ++lane)
        {
            if (batches.elements[static_cast<std::size_t>(b * batch_lanes + lane)] < 0) continue;
            add(factors.data() + b * n_factors * batch_lanes + lane, [&](int node)
                { return rows + width / node_stride * std::int64_t{targets[node * batch_lanes + lane]}; });
        }
    }
}

}  // namespace

NodeValues<double> stiffness_diagonal(SolidTeam& team, const SolidOperator<double>& K)
{
    const SolidLayout& layout = *K.layout;
    NodeValues<double> diagonal(static_cast<std::size_t>(layout.n_rows) * width, 0.0);
    team.run(static_cast<std::int64_t>(layout.parts.size()),
             [&](std::int64_t p)
             {
                 const SolidPart& part = layout.parts[static_cast<std::size_t>(p)];
                 for_lanes(layout.straight, part.straight, K.factors->straight, factors_of_straight, diagonal.data(),
                           [](const double* from, const auto& row_of) { add_straight(from, row_of); });
                 for_lanes(layout.curved, part.curved, K.factors->curved, factors_of_curved, diagonal.data(),
                           [](const double* from, const auto& row_of) { add_curved(from, row_of); });
             });
    for (std::int64_t node = layout.n_own_nodes; node < layout.n_nodes; ++node)
    {
        const auto shared = static_cast<std::size_t>(node - layout.n_own_nodes);
        for (std::int64_t s = layout.slot_starts[shared]; s < layout.slot_starts[shared + 1]; ++s)
            for (std::int64_t a = 0; a < width; ++a)
                diagonal[static_cast<std::size_t>(width * node + a)] +=
                    diagonal[static_cast<std::size_t>(width * layout.slots[static_cast<std::size_t>(s)] + a)];
    }
    for (std::size_t s = 0; K.springs != nullptr && s < K.springs->size(); ++s)
    {
        const LayoutSpring& spring = (*K.springs)[s];
        const Eigen::Vector3d direction(spring.direction[0], spring.direction[1], spring.direction[2]);
        // mu = 0 leaves k n n^T.
        add_product(diagonal.data() + width * std::int64_t{spring.first}, direction, spring.stiffness, 0);
        if (spring.second >= 0)
            add_product(diagonal.data() + width * std::int64_t{spring.second}, direction, spring.stiffness, 0);
    }
    diagonal.resize(static_cast<std::size_t>(layout.n_nodes) * width);
    return diagonal;
}

}  // namespace splicewright
