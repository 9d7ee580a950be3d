// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <memory>
#include <vector>

#include "solver/solid_aggregation.h"
#include "solver/solid_coarse_factor.h"
#include "solver/solid_linear.h"

namespace splicewright
{

// Chebyshev polynomial that damps the upper part of the spectrum of D^-1 A. Source: [AdamsEtAl2003].
struct SmootherPlan
{
    std::vector<float> keep, step;  // of the direction before, of the residual; one entry for each degree
};
// From largest / spread to 1.05 times the estimated largest eigenvalue.
SmootherPlan smoother_plan(int degree, double largest, double spread);

// Numbers of one node: 3 padded to 4, 6 padded to 8.
constexpr int padded(int F) { return F == 3 ? 4 : 8; }

// One level with a stored matrix, in single precision, and the way down to the next.
template <int F>
struct GridLevel
{
    static constexpr int S = padded(F);
    BlockMatrix<float, S, F> A;
    AlignedVector<float> inverse_diagonal;  // [n, F, S] column by column
    BlockMatrix<float, S, 6> P;
    BlockMatrix<float, 8, F> P_transposed;
    SmootherPlan plan;
};

// Work vectors of one level for one load, padded numbers of each node.
struct GridVectors
{
    AlignedVector<float> r, d, next_d, u;
};

// The levels below the quadratic one.
class SolidGrids
{
public:
    // free_body: nothing is held, and the six rigid motions are taken out at one coarse node.
    SolidGrids(SolidTeam& team, const LinearLevel& linear, bool free_body);

    [[nodiscard]] std::vector<GridVectors> work_vectors() const;
    // For each load u of the linear level, the first of its work vectors, from its residual r there: one V-cycle.
    void cycle(SolidTeam& team, const std::vector<std::vector<GridVectors>*>& work) const;
    [[nodiscard]] std::int64_t bytes() const;
    [[nodiscard]] int n_levels() const { return static_cast<int>(coarse_.size()) + (linear_ ? 2 : 1); }

private:
    std::unique_ptr<GridLevel<3>> linear_;  // null when the linear level is factorised itself
    std::vector<GridLevel<6>> coarse_;
    std::unique_ptr<CoarseFactor> last_;
    std::vector<std::int64_t> sizes_;  // nodes of each level
};

}  // namespace splicewright
