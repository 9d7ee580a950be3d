// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "solver/solid_grids.h"
#include "solver/solid_operator.h"

namespace splicewright
{

// Work vectors of the quadratic level for one load. In: r. Out: u.
struct MultigridWork
{
    NodeValues<float> r, d, u;  // [n_nodes, node_stride]
    NodeValues<float> y;        // [n_rows, node_stride]
    std::vector<GridVectors> grids;
};

// The preconditioner: one V-cycle over quadratic elements, linear elements and aggregates, in single precision.
// Linear in r, symmetric and positive but for round-off.
class SolidMultigrid
{
public:
    // diagonal: of K on the quadratic level, xx xy xz yy yz zz of each node, held freedoms not yet taken out.
    SolidMultigrid(SolidTeam& team, const SolidOperator<float>& K, const NodeValues<double>& diagonal,
                   LinearLevel linear, bool free_body);

    [[nodiscard]] MultigridWork work_vectors() const;
    void cycle(SolidTeam& team, const std::vector<MultigridWork*>& loads) const;
    [[nodiscard]] std::int64_t bytes() const;
    [[nodiscard]] int n_levels() const { return grids_.n_levels() + 1; }

private:
    void smooth_down(SolidTeam& team, const std::vector<MultigridWork*>& loads) const;
    void smooth_up(SolidTeam& team, const std::vector<MultigridWork*>& loads) const;
    void to_linear(SolidTeam& team, const MultigridWork& load, GridVectors& linear) const;
    void from_linear(SolidTeam& team, MultigridWork& load, const GridVectors& linear) const;
    void advance(SolidTeam& team, const std::vector<MultigridWork*>& loads, std::size_t k) const;
    [[nodiscard]] double largest_eigenvalue(SolidTeam& team) const;

    SolidOperator<float> K_;              // NOLINT(readability-identifier-naming): the symbol of the equations
    NodeValues<float> inverse_diagonal_;  // [n_nodes, 8]
    LinearLevel linear_;                  // without its matrix
    SolidGrids grids_;
    SmootherPlan plan_;
};

}  // namespace splicewright
