// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_operator.h"

#include <fmt/format.h>

#include <algorithm>
#include <atomic>

#include "cases/problem.h"
#include "solver/solid_element.h"

namespace splicewright
{

namespace
{

double lambda_of(const ElasticConstants& steel) { return steel.E * steel.nu / ((1 + steel.nu) * (1 - 2 * steel.nu)); }

// Eleven factors of one lane at one point; false when the element is turned inside out there.
bool put_factors(double* to, const SolidElementNodes& nodes, const Barycentric& at, double weight,
                 const ElasticConstants& steel)
{
    const SolidMap map = solid_map(nodes, at);
    for (int i = 0; i < 9; ++i) to[i * batch_lanes] = map.gradients(i % 3, i / 3);
    to[9 * batch_lanes] = lambda_of(steel) * weight * map.jacobian;
    to[10 * batch_lanes] = steel.G() * weight * map.jacobian;
    return map.jacobian > 0;
}

constexpr std::int64_t batches_at_once = 256;

// Calls use(batch, lane, element) for each lane with an element.
template <class Use>
void for_each_lane(SolidTeam& team, const SolidBatches& batches, const Use& use)
{
    team.run_pieces(batches.size(), batches_at_once,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (std::int64_t at = first * batch_lanes; at < last * batch_lanes; ++at)
                        {
                            const std::int32_t element = batches.elements[static_cast<std::size_t>(at)];
                            if (element >= 0)
                                use(at / batch_lanes, at % batch_lanes, static_cast<std::size_t>(element));
                        }
                    });
}

void refuse_inverted(const SolidMesh& mesh, std::int64_t element)
{
    if (element < 0) return;
    const auto& corner = mesh.nodes[static_cast<std::size_t>(mesh.elements[static_cast<std::size_t>(element)][0])];
    throw CannotCompute({"", 0, 0, "mesh", fmt::format("{}", element),
                         fmt::format("this tetrahedron near ({:.4g}, {:.4g}, {:.4g}) mm is turned inside out",
                                     corner[0], corner[1], corner[2]),
                         "ask for smaller elements"});
}

}  // namespace

ElementFactors<double> element_factors(SolidTeam& team, const SolidMesh& mesh, const SolidLayout& layout,
                                       const std::vector<ElasticConstants>& steel)
{
    ElementFactors<double> factors;
    factors.straight.resize(static_cast<std::size_t>(layout.straight.size() * factors_of_straight * batch_lanes));
    factors.curved.resize(static_cast<std::size_t>(layout.curved.size() * factors_of_curved * batch_lanes));
    std::atomic<std::int64_t> inverted{-1};
    for_each_lane(
        team, layout.straight,
        [&](std::int64_t batch, std::int64_t lane, std::size_t element)
        {
            double* to = factors.straight.data() + batch * factors_of_straight * batch_lanes + lane;
            const auto& metal = steel[static_cast<std::size_t>(mesh.regions[element])];
            // Jacobian: six volumes.
            const bool fine = put_factors(to, nodes_of(mesh, element), {0.25, 0.25, 0.25, 0.25}, 1.0 / 120, metal);
            if (!fine) inverted = static_cast<std::int64_t>(element);
        });
    for_each_lane(team, layout.curved,
                  [&](std::int64_t batch, std::int64_t lane, std::size_t element)
                  {
                      double* to = factors.curved.data() + batch * factors_of_curved * batch_lanes + lane;
                      const auto& metal = steel[static_cast<std::size_t>(mesh.regions[element])];
                      const SolidElementNodes nodes = nodes_of(mesh, element);
                      for (const TetrahedronPoint& point : eight_points())
                      {
                          const bool fine = put_factors(to, nodes, point.at, point.weight, metal);
                          if (!fine) inverted = static_cast<std::int64_t>(element);
                          to += factors_of_straight * batch_lanes;
                      }
                  });
    refuse_inverted(mesh, inverted);
    return factors;
}

ElementFactors<float> in_single_precision(SolidTeam& team, const ElementFactors<double>& factors)
{
    ElementFactors<float> single;
    const auto convert = [&](const AlignedVector<double>& from, AlignedVector<float>& to)
    {
        to.resize(from.size());
        team.run_pieces(static_cast<std::int64_t>(from.size()), 65536,
                        [&](std::int64_t first, std::int64_t last)
                        {
                            std::transform(from.begin() + first, from.begin() + last, to.begin() + first,
                                           [](double value) { return static_cast<float>(value); });
                        });
    };
    convert(factors.straight, single.straight);
    convert(factors.curved, single.curved);
    return single;
}

template <class Real>
void SolidOperator<Real>::add_part(const SolidPart& part, const Real* x, Real* y) const
{
    std::fill(y + node_stride * part.first_node, y + node_stride * part.last_node, Real{0});
    std::fill(y + node_stride * part.first_slot, y + node_stride * part.last_slot, Real{0});
    const auto run = [&](const SolidBatches& batches, const BatchRange& range, const AlignedVector<Real>& numbers,
                         std::int64_t n_factors, void (*forces)(const ElementForces<Real>&))
    {
        constexpr std::int64_t index_width = 10 * batch_lanes;
        const auto on = [&](std::int64_t first, std::int64_t last, const std::uint32_t* targets)
        {
            forces({numbers.data() + first * n_factors * batch_lanes, batches.nodes.data() + first * index_width,
                    targets, last - first, x, y});
        };
        on(range.first, range.border, batches.nodes.data() + range.first * index_width);
        on(range.border, range.last, batches.targets.data() + range.border_before * index_width);
    };
    constexpr bool single = sizeof(Real) == sizeof(float);
    if constexpr (single)
    {
        run(layout->straight, part.straight, factors->straight, factors_of_straight, kernels->straight_single);
        run(layout->curved, part.curved, factors->curved, factors_of_curved, kernels->curved_single);
    }
    else
    {
        run(layout->straight, part.straight, factors->straight, factors_of_straight, kernels->straight_double);
        run(layout->curved, part.curved, factors->curved, factors_of_curved, kernels->curved_double);
    }
}

template <class Real>
void SolidOperator<Real>::add_springs(const Real* x, Real* y) const
{
    std::fill(y + node_stride * layout->first_link_slot, y + node_stride * layout->n_rows, Real{0});
    if (springs == nullptr) return;
    for (const LayoutSpring& spring : *springs)
    {
        Real opening = 0;
        for (int a = 0; a < 3; ++a)
        {
            const Real there = spring.second < 0 ? 0 : x[node_stride * spring.second + a];
            opening += static_cast<Real>(spring.direction[static_cast<std::size_t>(a)]) *
                       (x[node_stride * spring.first + a] - there);
        }
        const Real force = static_cast<Real>(spring.stiffness) * opening;
        for (int a = 0; a < 3; ++a)
        {
            const Real part = force * static_cast<Real>(spring.direction[static_cast<std::size_t>(a)]);
            y[node_stride * spring.first_slot + a] += part;
            if (spring.second >= 0) y[node_stride * spring.second_slot + a] -= part;
        }
    }
}

template <class Real>
void SolidOperator<Real>::sum_slots(std::int64_t first, std::int64_t last, Real* y) const
{
    for (std::int64_t node = first; node < last; ++node)
    {
        const auto shared = static_cast<std::size_t>(node - layout->n_own_nodes);
        Real sum[node_stride] = {};
        for (std::int64_t s = layout->slot_starts[shared]; s < layout->slot_starts[shared + 1]; ++s)
        {
            const Real* slot = y + node_stride * std::int64_t{layout->slots[static_cast<std::size_t>(s)]};
            for (int a = 0; a < node_stride; ++a) sum[a] += slot[a];
        }
        std::copy(sum, sum + node_stride, y + node_stride * node);
    }
}

template <class Real>
void SolidOperator<Real>::hold(std::int64_t first, std::int64_t last, Real* y) const
{
    if (held == nullptr) return;
    auto at = std::ranges::lower_bound(*held, first, {}, [](const HeldNode& h) { return std::int64_t{h.node}; });
    for (; at != held->end() && at->node < last; ++at)
        for (int a = 0; a < 3; ++a)
            if ((at->freedoms >> a) & 1) y[node_stride * std::int64_t{at->node} + a] = 0;
}

template <class Real>
std::int64_t SolidOperator<Real>::n_tasks() const
{
    const std::int64_t n_shared = layout->n_nodes - layout->n_own_nodes;
    return static_cast<std::int64_t>(layout->parts.size()) + (n_shared + shared_piece - 1) / shared_piece;
}

template struct SolidOperator<float>;
template struct SolidOperator<double>;

}  // namespace splicewright
