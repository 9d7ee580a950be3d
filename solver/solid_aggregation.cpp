// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_aggregation.h"

#include <Eigen/LU>
#include <cmath>

#include "solver/solid_spectrum.h"

namespace splicewright
{

namespace
{

constexpr std::int32_t alone = -1;
// Neighbours count as near when |A_ij| exceeds this part of the largest of one of their rows. Source: judgement, by
// counting iterations: 0 takes 30 % more of them, 0.3 doubles the coarse levels.
constexpr double near_from = 0.1;
constexpr double damping = 4.0 / 3.0;  // over the largest eigenvalue; Source: [VanekMandelBrezina1996]
constexpr int lanczos_steps = 12;

struct Aggregates
{
    std::vector<std::int32_t> of_node;  // alone: held or without neighbours
    std::int32_t count = 0;
};

// The largest |A_ij| squared off the diagonal of each row.
template <int F>
std::vector<double> largest_beside(const BlockMatrix<double, F, F>& A)
{
    std::vector<double> largest(static_cast<std::size_t>(A.n_rows), 0.0);
    for (std::int64_t i = 0; i < A.n_rows; ++i)
        for (std::int64_t n = A.start(i) + 1; n < A.end(i); ++n)
            largest[static_cast<std::size_t>(i)] =
                std::max(largest[static_cast<std::size_t>(i)], A.block(n).squaredNorm());
    return largest;
}

// Which blocks join near neighbours; the diagonal comes first in each row and does not count.
template <int F>
std::vector<char> near_blocks(SolidTeam& team, const BlockMatrix<double, F, F>& A)
{
    const std::vector<double> largest = largest_beside(A);
    std::vector<char> near(A.places.size(), 0);
    team.run_pieces(A.n_rows, 2048,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (std::int64_t i = first; i < last; ++i)
                            for (std::int64_t n = A.start(i) + 1; n < A.end(i); ++n)
                            {
                                const double either = std::min(largest[static_cast<std::size_t>(i)],
                                                               largest[static_cast<std::size_t>(A.place(n))]);
                                const bool is_near = A.block(n).squaredNorm() > near_from * near_from * either;
                                near[static_cast<std::size_t>(n)] = is_near ? 1 : 0;
                            }
                    });
    return near;
}

// Whole neighbourhoods first, then what is left joins a neighbour, then what is left still stands together.
template <int F>
Aggregates aggregates(SolidTeam& team, const BlockMatrix<double, F, F>& A)
{
    const std::vector<char> near = near_blocks(team, A);
    Aggregates result;
    result.of_node.assign(static_cast<std::size_t>(A.n_rows), alone);
    const auto of = [&](std::int64_t node) -> std::int32_t& { return result.of_node[static_cast<std::size_t>(node)]; };
    const auto for_near = [&](std::int64_t i, const auto& use)
    {
        for (std::int64_t n = A.start(i) + 1; n < A.end(i); ++n)
            if (near[static_cast<std::size_t>(n)] != 0) use(A.place(n));
    };
    for (std::int64_t i = 0; i < A.n_rows; ++i)
    {
        bool free = of(i) == alone, any = false;
        for_near(i, [&](std::int64_t j) { free = free && of(j) == alone, any = true; });
        if (!free || !any) continue;
        of(i) = result.count;
        for_near(i, [&](std::int64_t j) { of(j) = result.count; });
        ++result.count;
    }
    const std::vector<std::int32_t> before = result.of_node;
    for (std::int64_t i = 0; i < A.n_rows; ++i)
    {
        if (of(i) != alone) continue;
        for_near(i,
                 [&](std::int64_t j)
                 {
                     if (of(i) == alone) of(i) = before[static_cast<std::size_t>(j)];
                 });
    }
    for (std::int64_t i = 0; i < A.n_rows; ++i)
    {
        bool any = false;
        for_near(i, [&](std::int64_t) { any = true; });
        if (of(i) != alone || !any) continue;
        of(i) = result.count;
        for_near(i,
                 [&](std::int64_t j)
                 {
                     if (of(j) == alone) of(j) = result.count;
                 });
        ++result.count;
    }
    return result;
}

template <int F>
struct Tentative
{
    SlowMotions<F> values;  // [n fine nodes] orthonormal within each aggregate
    SlowMotions<6> coarse;
};

// Motions of one aggregate made orthonormal, Q R; a motion that the others already hold gets a column of zeros.
template <int F>
void orthonormalise(const std::vector<std::int32_t>& nodes, SlowMotions<F>& values, Eigen::Matrix<double, 6, 6>& R)
{
    constexpr double nothing_left = 1e-7;
    R.setZero();
    const auto dot = [&](int a, int b)
    {
        double sum = 0;
        for (const std::int32_t i : nodes)
            sum += values[static_cast<std::size_t>(i)].col(a).dot(values[static_cast<std::size_t>(i)].col(b));
        return sum;
    };
    for (int b = 0; b < 6; ++b)
    {
        const double before = std::sqrt(dot(b, b));
        for (int pass = 0; pass < 2; ++pass)
            for (int a = 0; a < b; ++a)
            {
                const double part = dot(a, b);
                R(a, b) += part;
                for (const std::int32_t i : nodes)
                    values[static_cast<std::size_t>(i)].col(b) -= part * values[static_cast<std::size_t>(i)].col(a);
            }
        const double left = std::sqrt(dot(b, b));
        const bool gone = left <= nothing_left * before;
        R(b, b) = gone ? 0 : left;
        for (const std::int32_t i : nodes) values[static_cast<std::size_t>(i)].col(b) *= gone ? 0 : 1 / left;
    }
}

template <int F>
Tentative<F> tentative(SolidTeam& team, const Aggregates& groups, const SlowMotions<F>& motions)
{
    std::vector<std::vector<std::int32_t>> nodes(static_cast<std::size_t>(groups.count));
    for (std::size_t i = 0; i < groups.of_node.size(); ++i)
        if (groups.of_node[i] != alone)
            nodes[static_cast<std::size_t>(groups.of_node[i])].push_back(static_cast<std::int32_t>(i));
    Tentative<F> result;
    result.values = motions;
    result.coarse.resize(nodes.size());
    team.run_pieces(groups.count, 64,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (auto g = static_cast<std::size_t>(first); g < static_cast<std::size_t>(last); ++g)
                            orthonormalise<F>(nodes[g], result.values, result.coarse[g]);
                    });
    return result;
}

// Collects the blocks of one row by their columns.
template <int R, int C>
struct RowCollector
{
    std::vector<std::int64_t> where;  // place of a column in this row, -1: none

    explicit RowCollector(std::int64_t n_columns) : where(static_cast<std::size_t>(n_columns), -1) {}

    Eigen::Map<Eigen::Matrix<double, R, C>> at(std::int32_t column, std::vector<std::int32_t>& places,
                                               std::vector<double>& blocks)
    {
        std::int64_t& at = where[static_cast<std::size_t>(column)];
        if (at < 0)
        {
            at = static_cast<std::int64_t>(places.size());
            places.push_back(column);
            blocks.resize(blocks.size() + R * C, 0.0);
        }
        return Eigen::Map<Eigen::Matrix<double, R, C>>(blocks.data() + at * (R * C));
    }
    void close(std::size_t first, const std::vector<std::int32_t>& places)
    {
        for (std::size_t n = first; n < places.size(); ++n) where[static_cast<std::size_t>(places[n])] = -1;
    }
};

// Rows made by a function row(collector, i, places, blocks), for matrix_by_rows.
template <int R, int C, class Function>
struct Rows
{
    std::int64_t n_columns;
    const Function& function;

    [[nodiscard]] auto worker() const
    {
        return [collector = RowCollector<R, C>(n_columns), this](std::int64_t i, std::vector<std::int32_t>& places,
                                                                 std::vector<double>& blocks) mutable
        {
            const std::size_t first = places.size();
            function(collector, i, places, blocks);
            collector.close(first, places);
        };
    }
};

template <int R, int C, class Function>
BlockMatrix<double, R, C> collected(SolidTeam& team, std::int64_t n_rows, std::int64_t n_columns,
                                    const Function& function)
{
    return matrix_by_rows<double, R, C>(team, n_rows, n_columns, Rows<R, C, Function>{n_columns, function});
}

// T - damping/largest D^-1 A T.
template <int F>
BlockMatrix<double, F, 6> smoothed(SolidTeam& team, const BlockMatrix<double, F, F>& A, const Aggregates& groups,
                                   const Tentative<F>& T, double largest)
{
    const std::vector<Eigen::Matrix<double, F, F>> D_inverse = inverse_diagonal(A);
    const double factor = -damping / largest;
    const auto row = [&](RowCollector<F, 6>& collect, std::int64_t i, auto& places, auto& blocks)
    {
        const auto at = static_cast<std::size_t>(i);
        if (groups.of_node[at] == alone) return;
        collect.at(groups.of_node[at], places, blocks) += T.values[at];
        const Eigen::Matrix<double, F, F> scaled = factor * D_inverse[at];
        for (std::int64_t n = A.start(i); n < A.end(i); ++n)
        {
            const auto j = static_cast<std::size_t>(A.place(n));
            if (groups.of_node[j] == alone) continue;
            const Eigen::Matrix<double, F, F> M = scaled * A.block(n);
            collect.at(groups.of_node[j], places, blocks).noalias() += M.lazyProduct(T.values[j]);
        }
    };
    return collected<F, 6>(team, A.n_rows, groups.count, row);
}

template <int F>
BlockMatrix<double, 6, 6> coarse_matrix(SolidTeam& team, const BlockMatrix<double, F, F>& A,
                                        const BlockMatrix<double, F, 6>& P)
{
    const auto times_row = [&](RowCollector<F, 6>& collect, std::int64_t i, auto& places, auto& blocks)
    {
        for (std::int64_t n = A.start(i); n < A.end(i); ++n)
            for (std::int64_t m = P.start(A.place(n)); m < P.end(A.place(n)); ++m)
                collect.at(P.places[static_cast<std::size_t>(m)], places, blocks).noalias() +=
                    A.block(n).lazyProduct(P.block(m));
    };
    const BlockMatrix<double, F, 6> AP = collected<F, 6>(team, A.n_rows, P.n_columns, times_row);
    const ColumnOrder by_column = column_order(P);
    const auto row = [&](RowCollector<6, 6>& collect, std::int64_t I, auto& places, auto& blocks)
    {
        collect.at(static_cast<std::int32_t>(I), places, blocks);  // the diagonal comes first
        for (std::int64_t c = by_column.starts[static_cast<std::size_t>(I)];
             c < by_column.starts[static_cast<std::size_t>(I) + 1]; ++c)
        {
            const std::int64_t i = by_column.rows[static_cast<std::size_t>(c)];
            const Eigen::Matrix<double, 6, F> left = P.block(by_column.blocks[static_cast<std::size_t>(c)]).transpose();
            for (std::int64_t m = AP.start(i); m < AP.end(i); ++m)
                collect.at(AP.places[static_cast<std::size_t>(m)], places, blocks).noalias() +=
                    left.lazyProduct(AP.block(m));
        }
        // A motion that is not there, because the aggregate is too small or held, stands alone.
        auto diagonal = collect.at(static_cast<std::int32_t>(I), places, blocks);
        const double scale = diagonal.trace();
        for (int a = 0; a < 6; ++a)
            if (diagonal(a, a) <= 1e-14 * scale) diagonal(a, a) = scale > 0 ? scale : 1;
    };
    return collected<6, 6>(team, P.n_columns, P.n_columns, row);
}

}  // namespace

SlowMotions<3> rigid_motions(const Eigen::Matrix3Xd& places, const std::vector<int>& held)
{
    const Eigen::Vector3d centre = places.rowwise().mean();
    const Eigen::Matrix3Xd arms = places.colwise() - centre;
    const double scale = std::sqrt(arms.colwise().squaredNorm().mean());
    SlowMotions<3> motions(static_cast<std::size_t>(places.cols()));
    for (std::size_t i = 0; i < motions.size(); ++i)
    {
        const Eigen::Vector3d p = arms.col(static_cast<Eigen::Index>(i)) / scale;
        motions[i] << 1, 0, 0, 0, p.z(), -p.y(),  //
            0, 1, 0, -p.z(), 0, p.x(),            //
            0, 0, 1, p.y(), -p.x(), 0;
        for (int a = 0; a < 3; ++a)
            if (((held[i] >> a) & 1) != 0) motions[i].row(a).setZero();
    }
    return motions;
}

template <int F>
std::vector<Eigen::Matrix<double, F, F>> inverse_diagonal(const BlockMatrix<double, F, F>& A)
{
    std::vector<Eigen::Matrix<double, F, F>> inverses(static_cast<std::size_t>(A.n_rows));
    for (std::int64_t i = 0; i < A.n_rows; ++i) inverses[static_cast<std::size_t>(i)] = A.block(A.start(i)).inverse();
    return inverses;
}

template <int F>
double largest_eigenvalue(SolidTeam& team, const BlockMatrix<double, F, F>& A)
{
    using Vectors = Eigen::Matrix<double, F, Eigen::Dynamic>;
    const std::vector<Eigen::Matrix<double, F, F>> D_inverse = inverse_diagonal(A);
    Vectors r(F, A.n_rows), z(F, A.n_rows), p = Vectors::Zero(F, A.n_rows), q(F, A.n_rows);
    for (std::int64_t i = 0; i < r.size(); ++i) r(i % F, i / F) = rough_number(i);
    Spectrum spectrum;
    double rz = 0, alpha = 0;
    for (int step = 0; step <= lanczos_steps; ++step)
    {
        for (std::int64_t i = 0; i < A.n_rows; ++i)
            z.col(i).noalias() = D_inverse[static_cast<std::size_t>(i)] * r.col(i);
        const double rz_new = r.cwiseProduct(z).sum();
        const double beta = rz > 0 ? rz_new / rz : 0;
        if (step > 0) spectrum.add(alpha, beta);
        if (step == lanczos_steps || !(rz_new > 0)) break;
        rz = rz_new;
        p = z + beta * p;
        team.run_pieces(A.n_rows, 1024,
                        [&](std::int64_t first, std::int64_t last)
                        {
                            for (std::int64_t i = first; i < last; ++i)
                            {
                                Eigen::Matrix<double, F, 1> sum = Eigen::Matrix<double, F, 1>::Zero();
                                for (std::int64_t n = A.start(i); n < A.end(i); ++n)
                                    sum.noalias() += A.block(n).lazyProduct(p.col(A.place(n)));
                                q.col(i) = sum;
                            }
                        });
        const double pq = p.cwiseProduct(q).sum();
        if (!(pq > 0)) break;
        alpha = rz / pq;
        r -= alpha * q;
    }
    return spectrum.largest();
}

template <int F>
CoarseStep<F> coarse_step(SolidTeam& team, const BlockMatrix<double, F, F>& A, const SlowMotions<F>& motions,
                          double largest)
{
    const Aggregates groups = aggregates(team, A);
    Tentative<F> T = tentative<F>(team, groups, motions);
    CoarseStep<F> step;
    step.P = smoothed<F>(team, A, groups, T, largest);
    step.A = coarse_matrix<F>(team, A, step.P);
    step.motions = std::move(T.coarse);
    return step;
}

template struct CoarseStep<3>;
template struct CoarseStep<6>;
template CoarseStep<3> coarse_step<3>(SolidTeam&, const BlockMatrix<double, 3, 3>&, const SlowMotions<3>&, double);
template CoarseStep<6> coarse_step<6>(SolidTeam&, const BlockMatrix<double, 6, 6>&, const SlowMotions<6>&, double);
template std::vector<Eigen::Matrix3d> inverse_diagonal<3>(const BlockMatrix<double, 3, 3>&);
template std::vector<Eigen::Matrix<double, 6, 6>> inverse_diagonal<6>(const BlockMatrix<double, 6, 6>&);
template double largest_eigenvalue<3>(SolidTeam&, const BlockMatrix<double, 3, 3>&);
template double largest_eigenvalue<6>(SolidTeam&, const BlockMatrix<double, 6, 6>&);

}  // namespace splicewright
