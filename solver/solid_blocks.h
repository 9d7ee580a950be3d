// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <algorithm>
#include <cstdint>
#include <vector>

#include "solver/solid_numbers.h"
#include "solver/solid_team.h"

namespace splicewright
{

// Sparse matrix of dense blocks, each R rows by C columns, stored column by column.
template <class Real, int R, int C>
struct BlockMatrix
{
    using Block = Eigen::Matrix<Real, R, C>;

    std::int64_t n_rows = 0, n_columns = 0;  // in blocks
    std::vector<std::int64_t> starts;        // [n_rows + 1]
    std::vector<std::int32_t> places;        // [n_blocks] column of each block
    AlignedVector<Real> blocks;              // [n_blocks, C, R]

    [[nodiscard]] Eigen::Map<Block> block(std::int64_t n) { return Eigen::Map<Block>(blocks.data() + n * (R * C)); }
    [[nodiscard]] Eigen::Map<const Block> block(std::int64_t n) const
    {
        return Eigen::Map<const Block>(blocks.data() + n * (R * C));
    }
    [[nodiscard]] std::int64_t start(std::int64_t row) const { return starts[static_cast<std::size_t>(row)]; }
    [[nodiscard]] std::int64_t end(std::int64_t row) const { return starts[static_cast<std::size_t>(row) + 1]; }
    [[nodiscard]] std::int64_t place(std::int64_t n) const { return places[static_cast<std::size_t>(n)]; }
    [[nodiscard]] std::int64_t bytes() const
    {
        return static_cast<std::int64_t>(8 * starts.size() + 4 * places.size() + sizeof(Real) * blocks.size());
    }
};

// Where the blocks of each column stand, row by row.
struct ColumnOrder
{
    std::vector<std::int64_t> starts;  // [n_columns + 1]
    std::vector<std::int32_t> rows;    // [n_blocks]
    std::vector<std::int64_t> blocks;  // [n_blocks] index into the blocks of the matrix
};

template <class Matrix>
ColumnOrder column_order(const Matrix& A)
{
    ColumnOrder order;
    order.starts.assign(static_cast<std::size_t>(A.n_columns) + 1, 0);
    for (const std::int32_t place : A.places) ++order.starts[static_cast<std::size_t>(place) + 1];
    for (std::size_t i = 1; i < order.starts.size(); ++i) order.starts[i] += order.starts[i - 1];
    order.rows.resize(A.places.size());
    order.blocks.resize(A.places.size());
    std::vector<std::int64_t> next(order.starts.begin(), order.starts.end() - 1);
    for (std::int64_t i = 0; i < A.n_rows; ++i)
        for (std::int64_t n = A.start(i); n < A.end(i); ++n)
        {
            const auto at = static_cast<std::size_t>(next[static_cast<std::size_t>(A.place(n))]++);
            order.rows[at] = static_cast<std::int32_t>(i);
            order.blocks[at] = n;
        }
    return order;
}

// Rows made piece by piece, each by its own call of row(i, places, blocks), which appends places and whole blocks.
template <class Real, int R, int C, class Row>
BlockMatrix<Real, R, C> matrix_by_rows(SolidTeam& team, std::int64_t n_rows, std::int64_t n_columns, const Row& row)
{
    constexpr std::int64_t piece_size = 512;
    struct Piece
    {
        std::vector<std::int32_t> places;
        std::vector<Real> blocks;
    };
    std::vector<Piece> pieces(static_cast<std::size_t>((n_rows + piece_size - 1) / piece_size));
    BlockMatrix<Real, R, C> A;
    A.n_rows = n_rows;
    A.n_columns = n_columns;
    A.starts.assign(static_cast<std::size_t>(n_rows) + 1, 0);
    team.run(static_cast<std::int64_t>(pieces.size()),
             [&](std::int64_t p)
             {
                 Piece& piece = pieces[static_cast<std::size_t>(p)];
                 auto make = row.worker();
                 for (std::int64_t i = p * piece_size; i < std::min(n_rows, (p + 1) * piece_size); ++i)
                 {
                     const std::size_t before = piece.places.size();
                     make(i, piece.places, piece.blocks);
                     A.starts[static_cast<std::size_t>(i) + 1] =
                         static_cast<std::int64_t>(piece.places.size() - before);
                 }
             });
    for (std::size_t i = 1; i < A.starts.size(); ++i) A.starts[i] += A.starts[i - 1];
    A.places.resize(static_cast<std::size_t>(A.starts.back()));
    A.blocks.resize(A.places.size() * (R * C));
    team.run(static_cast<std::int64_t>(pieces.size()),
             [&](std::int64_t p)
             {
                 Piece& piece = pieces[static_cast<std::size_t>(p)];
                 const std::int64_t first = A.start(p * piece_size);
                 std::copy(piece.places.begin(), piece.places.end(), A.places.begin() + first);
                 std::copy(piece.blocks.begin(), piece.blocks.end(), A.blocks.begin() + first * (R * C));
                 piece = Piece();
             });
    return A;
}

template <int R, int C>
BlockMatrix<float, R, C> in_single_precision(SolidTeam& team, const BlockMatrix<double, R, C>& A)
{
    BlockMatrix<float, R, C> single;
    single.n_rows = A.n_rows;
    single.n_columns = A.n_columns;
    single.starts = A.starts;
    single.places = A.places;
    single.blocks.resize(A.blocks.size());
    team.run_pieces(static_cast<std::int64_t>(A.blocks.size()), 65536,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        std::transform(A.blocks.begin() + first, A.blocks.begin() + last, single.blocks.begin() + first,
                                       [](double value) { return static_cast<float>(value); });
                    });
    return single;
}

}  // namespace splicewright
