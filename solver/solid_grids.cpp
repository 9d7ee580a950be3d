// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_grids.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace splicewright
{

namespace
{

// A linear level of at most so many nodes is factorised, larger ones are coarsened. Source: judgement, by timing.
constexpr std::int64_t most_linear_nodes = 700;
constexpr std::int64_t most_coarse_nodes = 120;
constexpr int degree = 3;
constexpr double spread = 10;    // Source: judgement, by counting iterations
constexpr double safety = 1.05;  // the estimate ends below the largest eigenvalue
constexpr std::int64_t piece_size = 512;

template <int F>
using Padded = Eigen::Matrix<float, padded(F), 1>;

template <int F>
Eigen::Map<Padded<F>> node(AlignedVector<float>& v, std::int64_t i)
{
    return Eigen::Map<Padded<F>>(v.data() + i * padded(F));
}

template <int F>
Eigen::Map<const Padded<F>> node(const AlignedVector<float>& v, std::int64_t i)
{
    return Eigen::Map<const Padded<F>>(v.data() + i * padded(F));
}

// Blocks with their rows padded by zeros, in single precision.
template <int F, int C>
BlockMatrix<float, padded(F), C> padded_single(SolidTeam& team, const BlockMatrix<double, F, C>& A)
{
    BlockMatrix<float, padded(F), C> single;
    single.n_rows = A.n_rows;
    single.n_columns = A.n_columns;
    single.starts = A.starts;
    single.places = A.places;
    single.blocks.assign(A.places.size() * (padded(F) * C), 0.0F);
    team.run_pieces(static_cast<std::int64_t>(A.places.size()), 4096,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (std::int64_t n = first; n < last; ++n)
                            single.block(n).template topRows<F>() = A.block(n).template cast<float>();
                    });
    return single;
}

template <int F>
BlockMatrix<float, 8, F> transposed(SolidTeam& team, const BlockMatrix<double, F, 6>& P)
{
    ColumnOrder order = column_order(P);
    BlockMatrix<float, 8, F> R;
    R.n_rows = P.n_columns;
    R.n_columns = P.n_rows;
    R.blocks.assign(order.blocks.size() * (8 * F), 0.0F);
    team.run_pieces(static_cast<std::int64_t>(order.blocks.size()), 4096,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (std::int64_t n = first; n < last; ++n)
                            R.block(n).template topRows<6>() =
                                P.block(order.blocks[static_cast<std::size_t>(n)]).transpose().template cast<float>();
                    });
    R.starts = std::move(order.starts);
    R.places = std::move(order.rows);
    return R;
}

template <int F>
GridLevel<F> grid_level(SolidTeam& team, const BlockMatrix<double, F, F>& A, double largest, const CoarseStep<F>& down)
{
    GridLevel<F> level;
    level.A = padded_single<F, F>(team, A);
    level.P = padded_single<F, 6>(team, down.P);
    level.P_transposed = transposed<F>(team, down.P);
    level.plan = smoother_plan(degree, largest, spread);
    const std::vector<Eigen::Matrix<double, F, F>> inverses = inverse_diagonal(A);
    level.inverse_diagonal.assign(inverses.size() * (F * padded(F)), 0.0F);
    for (std::size_t i = 0; i < inverses.size(); ++i)
        Eigen::Map<Eigen::Matrix<float, padded(F), F>>(level.inverse_diagonal.data() + i * (F * padded(F)))
            .template topRows<F>() = inverses[i].template cast<float>();
    return level;
}

template <int F>
Padded<F> jacobi(const GridLevel<F>& level, std::int64_t i, const Padded<F>& r)
{
    const Eigen::Map<const Eigen::Matrix<float, padded(F), F>> D(level.inverse_diagonal.data() + i * (F * padded(F)));
    return D.lazyProduct(r.template head<F>());
}

// Work vectors of one level, of all loads at once: a piece of the matrix is used for each while it is near.
using LevelLoads = std::vector<GridVectors*>;

// d and u from r alone: the first step, when u is zero.
template <int F>
void start(SolidTeam& team, const GridLevel<F>& level, const LevelLoads& loads)
{
    team.run_pieces(level.A.n_rows, piece_size,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (GridVectors* v : loads)
                            for (std::int64_t i = first; i < last; ++i)
                            {
                                node<F>(v->d, i) = level.plan.step[0] * jacobi<F>(level, i, node<F>(v->r, i));
                                node<F>(v->u, i) = node<F>(v->d, i);
                            }
                    });
}

// r -= A d for some rows of one load, then the next direction and step, unless k < 0: only the residual is wanted.
template <int F>
void advance_rows(const GridLevel<F>& level, GridVectors& v, int k, std::int64_t first, std::int64_t last)
{
    const float keep = k < 0 ? 0 : level.plan.keep[static_cast<std::size_t>(k)];
    const float step = k < 0 ? 0 : level.plan.step[static_cast<std::size_t>(k)];
    for (std::int64_t i = first; i < last; ++i)
    {
        Padded<F> r = node<F>(v.r, i);
        for (std::int64_t n = level.A.start(i); n < level.A.end(i); ++n)
            r.noalias() -=
                level.A.block(n).lazyProduct(node<F>(std::as_const(v.d), level.A.place(n)).template head<F>());
        node<F>(v.r, i) = r;
        if (k < 0) continue;
        const Padded<F> d = keep * node<F>(v.d, i) + step * jacobi<F>(level, i, r);
        node<F>(v.next_d, i) = d;
        node<F>(v.u, i) += d;
    }
}

template <int F>
void advance(SolidTeam& team, const GridLevel<F>& level, const LevelLoads& loads, int k)
{
    team.run_pieces(level.A.n_rows, piece_size,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (GridVectors* v : loads) advance_rows<F>(level, *v, k, first, last);
                    });
    for (GridVectors* v : loads)
        if (k >= 0) v->d.swap(v->next_d);
}

template <int F>
void restrict_residual(SolidTeam& team, const GridLevel<F>& level, const LevelLoads& fine, const LevelLoads& coarse)
{
    const auto& R = level.P_transposed;
    team.run_pieces(R.n_rows, 64,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (std::size_t load = 0; load < fine.size(); ++load)
                            for (std::int64_t I = first; I < last; ++I)
                            {
                                Padded<6> sum = Padded<6>::Zero();
                                for (std::int64_t n = R.start(I); n < R.end(I); ++n)
                                    sum.noalias() +=
                                        R.block(n).lazyProduct(node<F>(fine[load]->r, R.place(n)).template head<F>());
                                node<6>(coarse[load]->r, I) = sum;
                            }
                    });
}

// d = P u of the coarse level; u += d.
template <int F>
void correct(SolidTeam& team, const GridLevel<F>& level, const LevelLoads& fine, const LevelLoads& coarse)
{
    const auto& P = level.P;
    team.run_pieces(P.n_rows, piece_size,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (std::size_t load = 0; load < fine.size(); ++load)
                            for (std::int64_t i = first; i < last; ++i)
                            {
                                Padded<F> d = Padded<F>::Zero();
                                for (std::int64_t n = P.start(i); n < P.end(i); ++n)
                                    d.noalias() +=
                                        P.block(n).lazyProduct(node<6>(coarse[load]->u, P.place(n)).template head<6>());
                                node<F>(fine[load]->d, i) = d;
                                node<F>(fine[load]->u, i) += d;
                            }
                    });
}

template <int F>
void smooth_down(SolidTeam& team, const GridLevel<F>& level, const LevelLoads& loads)
{
    start<F>(team, level, loads);
    for (int k = 1; k < degree; ++k) advance<F>(team, level, loads, k);
    advance<F>(team, level, loads, -1);
}

template <int F>
void smooth_up(SolidTeam& team, const GridLevel<F>& level, const LevelLoads& loads)
{
    for (int k = 0; k < degree; ++k) advance<F>(team, level, loads, k);
}

template <int F>
void solve_last(const CoarseFactor& factor, std::int64_t n, const LevelLoads& loads)
{
    for (GridVectors* v : loads)
    {
        Eigen::VectorXd b(n * F);
        for (std::int64_t i = 0; i < n; ++i)
            b.segment<F>(i * F) = node<F>(v->r, i).template head<F>().template cast<double>();
        const Eigen::VectorXd x = factor.solution(b);
        for (std::int64_t i = 0; i < n; ++i)
            node<F>(v->u, i).template head<F>() = x.segment<F>(i * F).template cast<float>();
    }
}

}  // namespace

SmootherPlan smoother_plan(int n, double largest, double range)
{
    const double high = safety * largest, low = largest / range;
    const double centre = (high + low) / 2, half = (high - low) / 2, sigma = centre / half;
    SmootherPlan plan{{0}, {static_cast<float>(1 / centre)}};
    double rho = 1 / sigma;
    for (int k = 1; k < n; ++k)
    {
        const double next = 1 / (2 * sigma - rho);
        plan.keep.push_back(static_cast<float>(next * rho));
        plan.step.push_back(static_cast<float>(2 * next / half));
        rho = next;
    }
    return plan;
}

SolidGrids::SolidGrids(SolidTeam& team, const LinearLevel& linear, bool free_body)
{
    sizes_.push_back(linear.n_nodes);
    if (linear.n_nodes <= most_linear_nodes)
    {
        const std::vector<std::int64_t> pinned =
            free_body ? pinned_freedoms(linear.places) : std::vector<std::int64_t>();
        last_ = std::make_unique<CoarseFactor>(linear.K, pinned);
        return;
    }
    double largest = largest_eigenvalue<3>(team, linear.K);
    const CoarseStep<3> first = coarse_step<3>(team, linear.K, rigid_motions(linear.places, linear.held), largest);
    linear_ = std::make_unique<GridLevel<3>>(grid_level<3>(team, linear.K, largest, first));
    BlockMatrix<double, 6, 6> A = first.A;
    SlowMotions<6> motions = first.motions;
    sizes_.push_back(A.n_rows);
    while (A.n_rows > most_coarse_nodes)
    {
        largest = largest_eigenvalue<6>(team, A);
        CoarseStep<6> step = coarse_step<6>(team, A, motions, largest);
        if (step.A.n_rows == 0 || 2 * step.A.n_rows > A.n_rows) break;  // no longer worth a level
        coarse_.push_back(grid_level<6>(team, A, largest, step));
        A = std::move(step.A);
        motions = std::move(step.motions);
        sizes_.push_back(A.n_rows);
    }
    // A coarse node moves as a rigid body does: held altogether, it holds the whole.
    std::vector<std::int64_t> pinned;
    for (std::int64_t a = 0; free_body && a < 6; ++a) pinned.push_back(6 * (A.n_rows / 2) + a);
    last_ = std::make_unique<CoarseFactor>(A, pinned);
}

std::vector<GridVectors> SolidGrids::work_vectors() const
{
    std::vector<GridVectors> work(sizes_.size());
    for (std::size_t l = 0; l < work.size(); ++l)
    {
        const auto n = static_cast<std::size_t>(sizes_[l] * (l == 0 ? padded(3) : padded(6)));
        work[l].r.assign(n, 0);
        work[l].u.assign(n, 0);
        if (l + 1 == work.size()) continue;
        work[l].d.assign(n, 0);
        work[l].next_d.assign(n, 0);
    }
    return work;
}

void SolidGrids::cycle(SolidTeam& team, const std::vector<std::vector<GridVectors>*>& work) const
{
    const auto at = [&](std::size_t level)
    {
        LevelLoads loads;
        for (std::vector<GridVectors>* load : work) loads.push_back(&(*load)[level]);
        return loads;
    };
    const std::size_t last = sizes_.size() - 1;
    if (!linear_)
    {
        solve_last<3>(*last_, sizes_[0], at(0));
        return;
    }
    smooth_down<3>(team, *linear_, at(0));
    restrict_residual<3>(team, *linear_, at(0), at(1));
    for (std::size_t l = 0; l < coarse_.size(); ++l)
    {
        smooth_down<6>(team, coarse_[l], at(l + 1));
        restrict_residual<6>(team, coarse_[l], at(l + 1), at(l + 2));
    }
    solve_last<6>(*last_, sizes_[last], at(last));
    for (std::size_t l = coarse_.size(); l-- > 0;)
    {
        correct<6>(team, coarse_[l], at(l + 1), at(l + 2));
        smooth_up<6>(team, coarse_[l], at(l + 1));
    }
    correct<3>(team, *linear_, at(0), at(1));
    smooth_up<3>(team, *linear_, at(0));
}

std::int64_t SolidGrids::bytes() const
{
    const auto of = [](const auto& level)
    {
        return level.A.bytes() + level.P.bytes() + level.P_transposed.bytes() +
               static_cast<std::int64_t>(4 * level.inverse_diagonal.size());
    };
    std::int64_t sum = last_->bytes() + (linear_ ? of(*linear_) : 0);
    for (const GridLevel<6>& level : coarse_) sum += of(level);
    return sum;
}

}  // namespace splicewright
