// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/front_factor.h"

#include <cblas.h>

#include <Eigen/Cholesky>
#include <algorithm>

#include "solver/one_thread.h"

namespace splicewright
{
namespace
{

using Matrix = Eigen::MatrixXd;
using Panel = Eigen::Map<Matrix>;

std::size_t at(int i) { return static_cast<std::size_t>(i); }

// A front while it is put together: the columns that leave, with all rows, and what they leave behind, its lower
// triangle.
struct OpenFront
{
    Panel panel;   // [n_rows, n_own]
    Matrix& left;  // [n_border, n_border]

    // A column, to be indexed by the front's rows on and below the diagonal.
    [[nodiscard]] double* column(int place)
    {
        const auto n_own = static_cast<int>(panel.cols());
        return place < n_own ? &panel(0, place) : left.col(place - n_own).data() - n_own;
    }
};

void add_element(OpenFront& front, const ElementStiffness& stiffness, int element, const std::vector<int>& place)
{
    const double* K = stiffness.block(element);
    const int first = stiffness.start[at(element)], last = stiffness.start[at(element + 1)];
    for (int j = first; j < last; ++j)
    {
        const ElementStiffness::Entry& of_column = stiffness.entry[at(j)];
        const double* from = K + of_column.local * stiffness.n;
        const int to_j = place[at(of_column.free)];
        double* column = front.column(to_j);
        column[to_j] += of_column.factor * of_column.factor * from[of_column.local];
        for (int i = j + 1; i < last; ++i)
        {
            const ElementStiffness::Entry& of_row = stiffness.entry[at(i)];
            const int to_i = place[at(of_row.free)];
            const double value = of_row.factor * of_column.factor * from[of_row.local];
            if (to_i > to_j) column[to_i] += value;
            else if (to_i < to_j) front.column(to_i)[to_j] += value;
            else column[to_i] += 2 * value;  // two terms of one unknown: both sides of the diagonal
        }
    }
}

// to: places of the rows of what a child left behind, increasing.
void add_left(OpenFront& front, const Matrix& left, const std::vector<int>& to)
{
    const auto n = static_cast<int>(left.rows());
    for (int j = 0; j < n; ++j)
    {
        double* into = front.column(to[at(j)]);
        const double* from = left.col(j).data();
        for (int i = j; i < n; ++i) into[to[at(i)]] += from[i];
    }
}

// Cholesky of the columns that leave; false when a pivot is not positive.
bool eliminate(OpenFront& front)
{
    const Eigen::Index n_own = front.panel.cols(), n_border = front.panel.rows() - n_own;
    if (n_own == 0) return true;
    Eigen::Ref<Matrix, 0, Eigen::OuterStride<>> corner = front.panel.topRows(n_own);
    const Eigen::LLT<Eigen::Ref<Matrix, 0, Eigen::OuterStride<>>> llt(corner);
    if (llt.info() != Eigen::Success) return false;
    if (n_border == 0) return true;
    const int s = static_cast<int>(n_own), u = static_cast<int>(n_border), stride = s + u;
    double* below = front.panel.data() + s;
    cblas_dtrsm(CblasColMajor, CblasRight, CblasLower, CblasTrans, CblasNonUnit, u, s, 1.0, front.panel.data(), stride,
                below, stride);
    cblas_dsyrk(CblasColMajor, CblasLower, CblasNoTrans, u, s, -1.0, below, stride, 1.0, front.left.data(), u);
    return true;
}

}  // namespace

std::optional<FrontFactor> FrontFactor::factorised(const ElementStiffness& stiffness, const Elimination& order,
                                                   const std::vector<int>& node_of_free, int n_nodes)
{
    use_one_thread();
    std::vector<int> first_free(at(n_nodes), 0), last_free(at(n_nodes), 0);
    for (int i = 0; i < stiffness.n_free; ++i)
    {
        const std::size_t node = at(node_of_free[at(i)]);
        if (last_free[node] == 0) first_free[node] = i;
        last_free[node] = i + 1;
    }

    FrontFactor factor;
    std::size_t n_values = 0;
    const auto add_rows = [&](const std::vector<int>& nodes)
    {
        for (const int node : nodes)
            for (int i = first_free[at(node)]; i < last_free[at(node)]; ++i) factor.rows_.push_back(i);
    };
    for (const Front& front : order.fronts)
    {
        Block block;
        block.rows = factor.rows_.size();
        add_rows(front.own);
        block.n_own = static_cast<int>(factor.rows_.size() - block.rows);
        add_rows(front.border);
        block.n_rows = static_cast<int>(factor.rows_.size() - block.rows);
        block.values = n_values;
        n_values += at(block.n_rows) * at(block.n_own);
        factor.blocks_.push_back(block);
    }
    factor.values_.assign(n_values, 0.0);

    std::vector<Matrix> left(order.fronts.size());
    std::vector<int> place(at(stiffness.n_free)), to;
    for (std::size_t f = 0; f < order.fronts.size(); ++f)
    {
        const Block& block = factor.blocks_[f];
        for (int i = 0; i < block.n_rows; ++i) place[at(factor.rows_[block.rows + at(i)])] = i;
        left[f] = Matrix::Zero(block.n_rows - block.n_own, block.n_rows - block.n_own);
        OpenFront open{Panel(factor.values_.data() + block.values, block.n_rows, block.n_own), left[f]};
        for (const int element : order.fronts[f].groups) add_element(open, stiffness, element, place);
        for (const int child : order.fronts[f].children)
        {
            const Block& of = factor.blocks_[at(child)];
            to.clear();
            for (int i = of.n_own; i < of.n_rows; ++i) to.push_back(place[at(factor.rows_[of.rows + at(i)])]);
            add_left(open, left[at(child)], to);
            left[at(child)] = Matrix();
        }
        if (!eliminate(open)) return std::nullopt;
    }
    return factor;
}

Eigen::VectorXd FrontFactor::solution(const Eigen::VectorXd& f) const
{
    int most_rows = 0;
    for (const Block& block : blocks_) most_rows = std::max(most_rows, block.n_rows);
    Eigen::VectorXd x = f, room(most_rows);
    const auto panel = [&](const Block& block)
    { return Eigen::Map<const Matrix>(values_.data() + block.values, block.n_rows, block.n_own); };
    for (const Block& block : blocks_)
    {
        const int* row = rows_.data() + block.rows;
        const int n_own = block.n_own, n_border = block.n_rows - n_own;
        auto own = room.head(n_own);
        auto border = room.segment(n_own, n_border);
        for (int i = 0; i < n_own; ++i) own(i) = x(row[i]);
        panel(block).topRows(n_own).triangularView<Eigen::Lower>().solveInPlace(own);
        border.noalias() = panel(block).bottomRows(n_border) * own;
        for (int i = 0; i < n_own; ++i) x(row[i]) = own(i);
        for (int i = 0; i < n_border; ++i) x(row[n_own + i]) -= border(i);
    }
    for (auto block = blocks_.rbegin(); block != blocks_.rend(); ++block)
    {
        const int* row = rows_.data() + block->rows;
        const int n_own = block->n_own, n_border = block->n_rows - n_own;
        auto own = room.head(n_own);
        auto border = room.segment(n_own, n_border);
        for (int i = 0; i < n_own; ++i) own(i) = x(row[i]);
        for (int i = 0; i < n_border; ++i) border(i) = x(row[n_own + i]);
        own.noalias() -= panel(*block).bottomRows(n_border).transpose() * border;
        panel(*block).topRows(n_own).transpose().triangularView<Eigen::Upper>().solveInPlace(own);
        for (int i = 0; i < n_own; ++i) x(row[i]) = own(i);
    }
    return x;
}

}  // namespace splicewright
