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

    // y = K x [n_rows, node_stride]; then, once K x is ready there, after(task, first, last) for ranges of nodes that
    // together are all nodes. `after` may change x between first and last.
    template <class After>
    void apply(SolidTeam& team, const Real* x, Real* y, const After& after) const
    {
        const auto n_parts = static_cast<std::int64_t>(layout->parts.size());
        team.run(n_parts + 1,
                 [&](std::int64_t p)
                 {
                     if (p == 0) add_springs(x, y);
                     else
                     {
                         const SolidPart& part = layout->parts[static_cast<std::size_t>(p - 1)];
                         add_part(part, x, y);
                         finish(part.first_node, part.last_node, y);
                         after(p - 1, part.first_node, part.last_node);
                     }
                 });
        const std::int64_t first = layout->n_own_nodes;
        team.run_pieces(layout->n_nodes - first, shared_piece,
                        [&](std::int64_t begin, std::int64_t end)
                        {
                            sum_slots(first + begin, first + end, y);
                            finish(first + begin, first + end, y);
                            after(n_parts + begin / shared_piece, first + begin, first + end);
                        });
    }
    void apply(SolidTeam& team, const Real* x, Real* y) const
    {
        apply(team, x, y, [](std::int64_t, std::int64_t, std::int64_t) {});
    }

private:
    static constexpr std::int64_t shared_piece = 4096;

    void add_part(const SolidPart& part, const Real* x, Real* y) const;
    void add_springs(const Real* x, Real* y) const;
    void sum_slots(std::int64_t first, std::int64_t last, Real* y) const;
    void finish(std::int64_t first, std::int64_t last, Real* y) const;
};

extern template struct SolidOperator<float>;
extern template struct SolidOperator<double>;

}  // namespace splicewright
