// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_multigrid.h"

#include <Eigen/LU>
#include <cmath>
#include <numeric>

#include "solver/solid_spectrum.h"

namespace splicewright
{

namespace
{

constexpr int degree = 3;
constexpr double spread = 12;  // Source: judgement, by counting iterations
constexpr int lanczos_steps = 12;
constexpr std::int64_t piece_size = 4096;

// Inverse of each block; a held freedom has neither row nor column.
NodeValues<float> inverses(const NodeValues<double>& diagonal, const std::vector<HeldNode>& held, std::int64_t n_nodes)
{
    NodeValues<float> result(static_cast<std::size_t>(n_nodes) * 8, 0.0F);
    auto next_held = held.begin();
    for (std::int64_t i = 0; i < n_nodes; ++i)
    {
        const double* D = diagonal.data() + 8 * i;
        Eigen::Matrix3d block{{D[0], D[1], D[2]}, {D[1], D[3], D[4]}, {D[2], D[4], D[5]}};
        int freedoms = 0;
        if (next_held != held.end() && next_held->node == i) freedoms = (next_held++)->freedoms;
        for (int a = 0; a < 3; ++a)
        {
            if (((freedoms >> a) & 1) == 0) continue;
            const double kept = block(a, a);
            block.row(a).setZero();
            block.col(a).setZero();
            block(a, a) = kept;
        }
        Eigen::Matrix3d inverse = block.inverse();
        for (int a = 0; a < 3; ++a)
            if (((freedoms >> a) & 1) != 0) inverse(a, a) = 0;
        float* to = result.data() + 8 * i;
        to[0] = static_cast<float>(inverse(0, 0));
        to[1] = static_cast<float>(inverse(0, 1));
        to[2] = static_cast<float>(inverse(0, 2));
        to[3] = static_cast<float>(inverse(1, 1));
        to[4] = static_cast<float>(inverse(1, 2));
        to[5] = static_cast<float>(inverse(2, 2));
    }
    return result;
}

LinearLevel without_matrix(LinearLevel level)
{
    level.K = {};
    level.places.resize(3, 0);
    return level;
}

}  // namespace

SolidMultigrid::SolidMultigrid(SolidTeam& team, const SolidOperator<float>& K, const NodeValues<double>& diagonal,
                               LinearLevel linear, bool free_body)
    : K_(K), inverse_diagonal_(inverses(diagonal, *K.held, K.layout->n_nodes)), grids_(team, linear, free_body)
{
    linear_ = without_matrix(std::move(linear));
    plan_ = smoother_plan(degree, largest_eigenvalue(team), spread);
}

MultigridWork SolidMultigrid::work_vectors() const
{
    MultigridWork work;
    const auto n = static_cast<std::size_t>(K_.layout->n_nodes) * node_stride;
    work.r.assign(n, 0);
    work.d.assign(n, 0);
    work.u.assign(n, 0);
    work.y.assign(static_cast<std::size_t>(K_.layout->n_rows) * node_stride, 0);
    work.grids = grids_.work_vectors();
    return work;
}

// Conjugate gradients preconditioned by the diagonal, for their coefficients only.
double SolidMultigrid::largest_eigenvalue(SolidTeam& team) const
{
    MultigridWork work = work_vectors();
    NodeValues<float> p(work.r.size(), 0.0F);
    const std::int64_t n = K_.layout->n_nodes;
    std::vector<double> sums(static_cast<std::size_t>((n + piece_size - 1) / piece_size));
    const auto total = [&] { return std::accumulate(sums.begin(), sums.end(), 0.0); };
    // For each number of each piece; returns the sum of what each call returns.
    const auto for_numbers = [&](const auto& use)
    {
        team.run_pieces(n, piece_size,
                        [&](std::int64_t first, std::int64_t last)
                        {
                            double sum = 0;
                            for (std::int64_t i = node_stride * first; i < node_stride * last; ++i)
                                sum += use(static_cast<std::size_t>(i));
                            sums[static_cast<std::size_t>(first / piece_size)] = sum;
                        });
        return total();
    };
    for_numbers(
        [&](std::size_t i)
        {
            work.r[i] = i % node_stride < 3 ? static_cast<float>(rough_number(static_cast<std::int64_t>(i))) : 0.0F;
            return 0.0;
        });
    Spectrum spectrum;
    double rz = 0, alpha = 0;
    for (int step = 0; step <= lanczos_steps; ++step)
    {
        team.run_pieces(n, piece_size,
                        [&](std::int64_t first, std::int64_t last)
                        {
                            K_.kernels->smooth_start({inverse_diagonal_.data(), nullptr, work.r.data(), work.d.data(),
                                                      work.u.data(), 0, 1, first, last});
                        });
        const double rz_new = for_numbers([&](std::size_t i) { return double{work.r[i]} * work.d[i]; });
        const auto beta = static_cast<float>(rz > 0 ? rz_new / rz : 0);
        if (step > 0) spectrum.add(alpha, beta);
        if (step == lanczos_steps || !(rz_new > 0)) break;
        rz = rz_new;
        for_numbers(
            [&](std::size_t i)
            {
                p[i] = work.d[i] + beta * p[i];
                return 0.0;
            });
        K_.apply(team, p.data(), work.y.data());
        const double pq = for_numbers([&](std::size_t i) { return double{p[i]} * work.y[i]; });
        if (!(pq > 0)) break;
        alpha = rz / pq;
        for_numbers(
            [&](std::size_t i)
            {
                work.r[i] -= static_cast<float>(alpha) * work.y[i];
                return 0.0;
            });
    }
    return spectrum.largest();
}

void SolidMultigrid::advance(SolidTeam& team, const std::vector<MultigridWork*>& loads, std::size_t k) const
{
    std::vector<OperatorLoad<float>> on;
    for (MultigridWork* load : loads) on.push_back({load->d.data(), load->y.data()});
    K_.apply(team, on,
             [&](std::int64_t, std::size_t load, std::int64_t first, std::int64_t last)
             {
                 MultigridWork& w = *loads[load];
                 K_.kernels->smooth({inverse_diagonal_.data(), w.y.data(), w.r.data(), w.d.data(), w.u.data(),
                                     plan_.keep[k], plan_.step[k], first, last});
             });
}

void SolidMultigrid::smooth_down(SolidTeam& team, const std::vector<MultigridWork*>& loads) const
{
    for (MultigridWork* w : loads)
        team.run_pieces(K_.layout->n_nodes, piece_size,
                        [&](std::int64_t first, std::int64_t last)
                        {
                            K_.kernels->smooth_start({inverse_diagonal_.data(), nullptr, w->r.data(), w->d.data(),
                                                      w->u.data(), 0, plan_.step[0], first, last});
                        });
    for (std::size_t k = 1; k < degree; ++k) advance(team, loads, k);
    std::vector<OperatorLoad<float>> on;
    for (MultigridWork* load : loads) on.push_back({load->d.data(), load->y.data()});
    K_.apply(team, on,
             [&](std::int64_t, std::size_t load, std::int64_t first, std::int64_t last)
             {
                 MultigridWork& w = *loads[load];
                 for (std::int64_t i = node_stride * first; i < node_stride * last; ++i)
                     w.r[static_cast<std::size_t>(i)] -= w.y[static_cast<std::size_t>(i)];
             });
}

void SolidMultigrid::smooth_up(SolidTeam& team, const std::vector<MultigridWork*>& loads) const
{
    for (std::size_t k = 0; k < degree; ++k) advance(team, loads, k);
}

// Transpose of from_linear: a corner takes its own residual and half of that of the middles of its edges.
void SolidMultigrid::to_linear(SolidTeam& team, const MultigridWork& load, GridVectors& linear) const
{
    team.run_pieces(
        linear_.n_nodes, piece_size,
        [&](std::int64_t first, std::int64_t last)
        {
            for (std::int64_t i = first; i < last; ++i)
            {
                const auto at = static_cast<std::size_t>(i);
                const std::int64_t own = linear_.child_starts[at];
                float middles[3] = {};
                for (std::int64_t c = own + 1; c < linear_.child_starts[at + 1]; ++c)
                {
                    const float* r =
                        load.r.data() + node_stride * std::int64_t{linear_.children[static_cast<std::size_t>(c)]};
                    for (int a = 0; a < 3; ++a) middles[a] += r[a];
                }
                const float* r =
                    load.r.data() + node_stride * std::int64_t{linear_.children[static_cast<std::size_t>(own)]};
                for (int a = 0; a < 3; ++a)
                    linear.r[node_stride * at + static_cast<std::size_t>(a)] =
                        ((linear_.held[at] >> a) & 1) != 0 ? 0 : r[a] + 0.5F * middles[a];
            }
        });
}

// d: corners as they are, middles the mean of their corners; u += d. Held freedoms stay.
void SolidMultigrid::from_linear(SolidTeam& team, MultigridWork& load, const GridVectors& linear) const
{
    team.run_pieces(K_.layout->n_nodes, piece_size,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (std::int64_t i = first; i < last; ++i)
                        {
                            const auto [p, q] = linear_.parents[static_cast<std::size_t>(i)];
                            const float* a = linear.u.data() + node_stride * std::int64_t{p};
                            const float* b = linear.u.data() + node_stride * std::int64_t{q};
                            for (int c = 0; c < 3; ++c)
                                load.d[static_cast<std::size_t>(node_stride * i + c)] = 0.5F * (a[c] + b[c]);
                        }
                        K_.hold(first, last, load.d.data());
                        for (std::int64_t i = node_stride * first; i < node_stride * last; ++i)
                            load.u[static_cast<std::size_t>(i)] += load.d[static_cast<std::size_t>(i)];
                    });
}

void SolidMultigrid::cycle(SolidTeam& team, const std::vector<MultigridWork*>& loads) const
{
    smooth_down(team, loads);
    std::vector<std::vector<GridVectors>*> grids;
    for (MultigridWork* load : loads)
    {
        to_linear(team, *load, load->grids[0]);
        grids.push_back(&load->grids);
    }
    grids_.cycle(team, grids);
    for (MultigridWork* load : loads) from_linear(team, *load, load->grids[0]);
    smooth_up(team, loads);
}

std::int64_t SolidMultigrid::bytes() const
{
    return grids_.bytes() + static_cast<std::int64_t>(4 * inverse_diagonal_.size() + 8 * linear_.parents.size() +
                                                      4 * linear_.children.size() + 16 * linear_.corners.size());
}

}  // namespace splicewright
