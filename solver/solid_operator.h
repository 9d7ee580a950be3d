// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "mesh/solid_mesh.h"
#include "solver/elements.h"
#include "solver/solid_kernels.h"
#include "solver/solid_layout.h"
#include "solver/solid_numbers.h"

namespace splicewright
{

// Node values in the order of the layout: x, y, z and a zero for each node; [n_nodes or n_rows, node_stride].
template <class Real>
using NodeValues = AlignedVector<Real>;

// A spring between two nodes, or from a node to the ground, that resists motion along one direction only.
struct LayoutSpring
{
    std::int32_t first = 0, second = -1;            // nodes of the layout; second -1: the ground
    std::int32_t first_slot = 0, second_slot = -1;  // rows
    std::array<double, 3> direction{};              // unit
    double stiffness = 0;                           // N/mm
};

// Freedoms of one node that cannot move, as 1 for x, 2 for y, 4 for z, added.
struct HeldNode
{
    std::int32_t node = 0;
    int freedoms = 0;
};

// Geometry and stiffness of all elements, ready for the kernels; see solver/solid_kernels.h.
template <class Real>
struct ElementFactors
{
    AlignedVector<Real> straight;  // [n_straight batches, 11, 16]
    AlignedVector<Real> curved;    // [n_curved batches, 88, 16]
};

// Throws CannotCompute for an element that is turned inside out.
ElementFactors<double> element_factors(SolidTeam& team, const SolidMesh& mesh, const SolidLayout& layout,
                                       const std::vector<ElasticConstants>& steel);
ElementFactors<float> in_single_precision(SolidTeam& team, const ElementFactors<double>& factors);

template <class Real>
struct OperatorLoad
{
    const Real* x = nullptr;  // [n_nodes, node_stride]
    Real* y = nullptr;        // [n_rows, node_stride]
};

// What the stiffness is made of, and how it is applied: never stored as a matrix.
template <class Real>
struct SolidOperator
{
    const SolidKernels* kernels = nullptr;
    const SolidLayout* layout = nullptr;
    const ElementFactors<Real>* factors = nullptr;
    const std::vector<LayoutSpring>* springs = nullptr;
    const std::vector<HeldNode>* held = nullptr;  // by rising node; null: forces of held freedoms are kept

    [[nodiscard]] std::int64_t n_tasks() const;

    // y = K x [n_rows, node_stride] for several loads at once; then, once K x is ready there, after(task, load, first,
    // last) for ranges of nodes that together are all nodes. `after` may change x between first and last.
    template <class After>
    void apply(SolidTeam& team, const std::vector<OperatorLoad<Real>>& loads, const After& after) const
    {
        const auto n_parts = static_cast<std::int64_t>(layout->parts.size());
        const std::size_t n = loads.size();
        team.run(n_parts + 1,
                 [&](std::int64_t p)
                 {
                     for (std::size_t load = 0; load < n; ++load)
                     {
                         const auto [x, y] = loads[load];
                         if (p == 0)
                         {
                             add_springs(x, y);
                             continue;
                         }
                         const SolidPart& part = layout->parts[static_cast<std::size_t>(p - 1)];
                         add_part(part, x, y);
                         hold(part.first_node, part.last_node, y);
                         after(p - 1, load, part.first_node, part.last_node);
                     }
                 });
        const std::int64_t begin = layout->n_own_nodes;
        team.run_pieces(layout->n_nodes - begin, shared_piece,
                        [&](std::int64_t first, std::int64_t last)
                        {
                            for (std::size_t load = 0; load < n; ++load)
                            {
                                sum_slots(begin + first, begin + last, loads[load].y);
                                hold(begin + first, begin + last, loads[load].y);
                                after(n_parts + first / shared_piece, load, begin + first, begin + last);
                            }
                        });
    }
    void apply(SolidTeam& team, const Real* x, Real* y) const
    {
        apply(team, {{x, y}}, [](std::int64_t, std::size_t, std::int64_t, std::int64_t) {});
    }

    // Zeroes the held freedoms of the nodes first to last.
    void hold(std::int64_t first, std::int64_t last, Real* y) const;

private:
    static constexpr std::int64_t shared_piece = 4096;

    void add_part(const SolidPart& part, const Real* x, Real* y) const;
    void add_springs(const Real* x, Real* y) const;
    void sum_slots(std::int64_t first, std::int64_t last, Real* y) const;
};

extern template struct SolidOperator<float>;
extern template struct SolidOperator<double>;

}  // namespace splicewright
