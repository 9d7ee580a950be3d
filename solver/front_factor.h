// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "solver/assembly.h"
#include "solver/elimination.h"

namespace splicewright
{

// Cholesky factor of the stiffness of a section, front by front [DuffReid1983]: elements go straight into dense fronts,
// so that the matrix of the whole is never put together.
class FrontFactor
{
public:
    // node_of_free: as in Freedoms. The groups of `order` are the elements.
    // Nothing when the stiffness is not positive definite.
    static std::optional<FrontFactor> factorised(const ElementStiffness& stiffness, const Elimination& order,
                                                 const std::vector<int>& node_of_free, int n_nodes);

    [[nodiscard]] Eigen::VectorXd solution(const Eigen::VectorXd& f) const;

private:
    struct Block
    {
        int n_own = 0, n_rows = 0;  // unknowns that leave, and with those that they are coupled with
        std::size_t rows = 0;       // into rows_
        std::size_t values = 0;     // into values_: n_rows x n_own, by columns
    };
    std::vector<Block> blocks_;
    std::vector<int> rows_;  // free unknowns of all blocks
    std::vector<double> values_;
};

}  // namespace splicewright
