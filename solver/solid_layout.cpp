// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_layout.h"

#include <algorithm>
#include <numeric>

#include "cases/problem.h"
#include "solver/solid_element.h"
#include "solver/solid_kernels.h"

namespace splicewright
{

namespace
{

constexpr std::int64_t most_elements_of_part = 8192;
constexpr std::int64_t fewest_elements_of_part = 512;
constexpr std::int64_t wanted_parts = 32;
constexpr std::int32_t nobody = -1;
constexpr std::int32_t several = -2;

using Centre = std::array<float, 3>;

std::vector<Centre> centres_of(SolidTeam& team, const SolidMesh& mesh)
{
    std::vector<Centre> centres(mesh.elements.size());
    team.run_pieces(static_cast<std::int64_t>(centres.size()), 8192,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (auto e = static_cast<std::size_t>(first); e < static_cast<std::size_t>(last); ++e)
                            for (std::size_t a = 0; a < 3; ++a)
                            {
                                double sum = 0;
                                for (std::size_t k = 0; k < 4; ++k)
                                    sum += mesh.nodes[static_cast<std::size_t>(mesh.elements[e][k])][a];
                                centres[e][a] = static_cast<float>(sum);
                            }
                    });
    return centres;
}

struct Range
{
    std::int64_t first = 0, last = 0;
};

// Sorts a range into two halves across its longest side; the first half is a whole number of batches.
std::int64_t cut(std::vector<std::int32_t>& order, const std::vector<Centre>& centres, Range range)
{
    Centre low = centres[static_cast<std::size_t>(order[static_cast<std::size_t>(range.first)])], high = low;
    for (std::int64_t i = range.first; i < range.last; ++i)
    {
        const Centre& c = centres[static_cast<std::size_t>(order[static_cast<std::size_t>(i)])];
        for (std::size_t a = 0; a < 3; ++a)
        {
            low[a] = std::min(low[a], c[a]);
            high[a] = std::max(high[a], c[a]);
        }
    }
    std::size_t axis = 0;
    for (std::size_t a = 1; a < 3; ++a)
        if (high[a] - low[a] > high[axis] - low[axis]) axis = a;
    const std::int64_t half = (range.last - range.first) / 2;
    const std::int64_t middle = range.first + std::max<std::int64_t>(half / batch_lanes, 1) * batch_lanes;
    std::nth_element(order.begin() + range.first, order.begin() + middle, order.begin() + range.last,
                     [&](std::int32_t a, std::int32_t b)
                     {
                         const float at_a = centres[static_cast<std::size_t>(a)][axis];
                         const float at_b = centres[static_cast<std::size_t>(b)][axis];
                         return at_a < at_b || (at_a == at_b && a < b);
                     });
    return middle;
}

void cut_into_batches(std::vector<std::int32_t>& order, const std::vector<Centre>& centres, Range range)
{
    if (range.last - range.first <= batch_lanes) return;
    const std::int64_t middle = cut(order, centres, range);
    cut_into_batches(order, centres, {range.first, middle});
    cut_into_batches(order, centres, {middle, range.last});
}

struct CutMesh
{
    std::vector<std::int32_t> order;  // elements, part by part, near ones together
    std::vector<Range> parts;
};

CutMesh cut_mesh(SolidTeam& team, const SolidMesh& mesh)
{
    CutMesh result;
    result.order.resize(mesh.elements.size());
    std::iota(result.order.begin(), result.order.end(), 0);
    const std::vector<Centre> centres = centres_of(team, mesh);
    const auto n = static_cast<std::int64_t>(mesh.elements.size());
    const std::int64_t wanted = std::clamp(n / wanted_parts, fewest_elements_of_part, most_elements_of_part);
    std::vector<Range> ranges{{0, n}};
    while (ranges.front().last - ranges.front().first > wanted)
    {
        std::vector<Range> halves(2 * ranges.size());
        team.run(static_cast<std::int64_t>(ranges.size()),
                 [&](std::int64_t i)
                 {
                     const auto at = static_cast<std::size_t>(i);
                     const std::int64_t middle = cut(result.order, centres, ranges[at]);
                     halves[2 * at] = {ranges[at].first, middle};
                     halves[2 * at + 1] = {middle, ranges[at].last};
                 });
        ranges = std::move(halves);
    }
    team.run(static_cast<std::int64_t>(ranges.size()),
             [&](std::int64_t i) { cut_into_batches(result.order, centres, ranges[static_cast<std::size_t>(i)]); });
    result.parts = std::move(ranges);
    return result;
}

// The node that stands for each node: bonded pairs are one.
std::vector<std::int32_t> merged_nodes(std::size_t n_nodes, const std::vector<SolidMesh::NodePair>& bonded)
{
    std::vector<std::int32_t> stands_for(n_nodes);
    std::iota(stands_for.begin(), stands_for.end(), 0);
    const auto last_of = [&](std::int32_t node)
    {
        while (stands_for[static_cast<std::size_t>(node)] != node) node = stands_for[static_cast<std::size_t>(node)];
        return node;
    };
    for (const SolidMesh::NodePair& pair : bonded)
    {
        const std::int32_t a = last_of(pair.first), b = last_of(pair.second);
        stands_for[static_cast<std::size_t>(std::max(a, b))] = std::min(a, b);
    }
    for (std::size_t i = 0; i < n_nodes; ++i) stands_for[i] = last_of(static_cast<std::int32_t>(i));
    return stands_for;
}

// Builds a SolidLayout step by step; each step needs those before it.
class Builder
{
public:
    Builder(const SolidMesh& mesh, const CutMesh& cut, std::vector<std::int32_t> stands_for)
        : mesh_(mesh), cut_(cut), stands_for_(std::move(stands_for)), owner_(mesh.nodes.size(), nobody)
    {
    }

    SolidLayout built(SolidTeam& team, const std::vector<std::int32_t>& linked)
    {
        find_owners(linked);
        number_nodes();
        find_straight(team);
        for (std::size_t p = 0; p < cut_.parts.size(); ++p) add_part(p);
        add_link_slots(linked);
        sort_slots();
        return std::move(layout_);
    }

private:
    [[nodiscard]] std::size_t standing(std::int32_t node) const
    {
        return static_cast<std::size_t>(stands_for_[static_cast<std::size_t>(node)]);
    }

    void find_owners(const std::vector<std::int32_t>& linked)
    {
        for (std::size_t p = 0; p < cut_.parts.size(); ++p)
            for_nodes_of(p,
                         [&](std::size_t node)
                         {
                             std::int32_t& owner = owner_[node];
                             const auto part = static_cast<std::int32_t>(p);
                             if (owner == nobody) owner = part;
                             else if (owner != part) owner = several;
                         });
        for (const std::int32_t node : linked)
        {
            EXPECTS(owner_[standing(node)] != nobody);
            owner_[standing(node)] = several;
        }
    }

    template <class Use>
    void for_nodes_of(std::size_t part, const Use& use) const
    {
        for (std::int64_t i = cut_.parts[part].first; i < cut_.parts[part].last; ++i)
            for (const std::int32_t node :
                 mesh_.elements[static_cast<std::size_t>(cut_.order[static_cast<std::size_t>(i)])])
                use(standing(node));
    }

    void number_nodes()
    {
        std::vector<std::int32_t> number(mesh_.nodes.size(), nobody);
        std::int32_t next = 0;
        layout_.parts.resize(cut_.parts.size());
        for (std::size_t p = 0; p < cut_.parts.size(); ++p)
        {
            layout_.parts[p].first_node = next;
            for_nodes_of(p,
                         [&](std::size_t node)
                         {
                             if (owner_[node] >= 0 && number[node] == nobody) number[node] = next++;
                         });
            layout_.parts[p].last_node = next;
        }
        layout_.n_own_nodes = next;
        for (std::size_t p = 0; p < cut_.parts.size(); ++p)
            for_nodes_of(p,
                         [&](std::size_t node)
                         {
                             if (owner_[node] == several && number[node] == nobody) number[node] = next++;
                         });
        layout_.n_nodes = next;
        layout_.n_rows = next;
        layout_.node_of.resize(mesh_.nodes.size());
        for (std::size_t i = 0; i < mesh_.nodes.size(); ++i)
            layout_.node_of[i] = number[static_cast<std::size_t>(stands_for_[i])];
    }

    void find_straight(SolidTeam& team)
    {
        straight_.resize(mesh_.elements.size());
        team.run_pieces(static_cast<std::int64_t>(straight_.size()), 4096,
                        [&](std::int64_t first, std::int64_t last)
                        {
                            for (auto e = static_cast<std::size_t>(first); e < static_cast<std::size_t>(last); ++e)
                                straight_[e] = is_straight(nodes_of(mesh_, e)) ? 1 : 0;
                        });
    }

    void add_part(std::size_t p)
    {
        std::vector<std::int32_t> lists[4];  // straight, straight at the border, curved, curved at the border
        for (std::int64_t i = cut_.parts[p].first; i < cut_.parts[p].last; ++i)
        {
            const std::int32_t element = cut_.order[static_cast<std::size_t>(i)];
            const auto& nodes = mesh_.elements[static_cast<std::size_t>(element)];
            const bool border =
                std::ranges::any_of(nodes, [&](std::int32_t n) { return owner_[standing(n)] == several; });
            const int kind = (straight_[static_cast<std::size_t>(element)] != 0 ? 0 : 2) + (border ? 1 : 0);
            lists[kind].push_back(element);
        }
        part_ = p;
        layout_.parts[p].first_slot = layout_.n_rows;
        layout_.parts[p].straight = added(layout_.straight, lists[0], lists[1]);
        layout_.parts[p].curved = added(layout_.curved, lists[2], lists[3]);
        layout_.parts[p].last_slot = layout_.n_rows;
    }

    BatchRange added(SolidBatches& batches, const std::vector<std::int32_t>& inner,
                     const std::vector<std::int32_t>& border)
    {
        BatchRange range;
        range.first = batches.size();
        range.border_before = static_cast<std::int64_t>(batches.targets.size()) / (10 * batch_lanes);
        add_batches(batches, inner);
        range.border = batches.size();
        add_batches(batches, border);
        range.last = batches.size();
        const auto first = static_cast<std::size_t>(range.border * 10 * batch_lanes);
        for (std::size_t i = first; i < batches.nodes.size(); ++i)
            batches.targets.push_back(
                first_number(target_of(static_cast<std::int32_t>(batches.nodes[i] / node_stride))));
        return range;
    }

    void add_batches(SolidBatches& batches, const std::vector<std::int32_t>& elements)
    {
        for (std::size_t first = 0; first < elements.size(); first += batch_lanes)
        {
            for (std::size_t lane = 0; lane < batch_lanes; ++lane)
                batches.elements.push_back(first + lane < elements.size() ? elements[first + lane] : -1);
            // A lane without an element repeats the nodes of the first: it then adds nothing to nodes of its own part.
            for (std::size_t n = 0; n < 10; ++n)
                for (std::size_t lane = 0; lane < batch_lanes; ++lane)
                {
                    const std::size_t at = first + lane < elements.size() ? first + lane : first;
                    const std::int32_t node = mesh_.elements[static_cast<std::size_t>(elements[at])][n];
                    batches.nodes.push_back(first_number(layout_.node_of[static_cast<std::size_t>(node)]));
                }
        }
    }

    static std::uint32_t first_number(std::int32_t row) { return static_cast<std::uint32_t>(row) * node_stride; }

    std::int32_t target_of(std::int32_t node)
    {
        if (node < layout_.n_own_nodes) return node;
        if (slot_of_.empty()) slot_of_.assign(static_cast<std::size_t>(layout_.n_nodes - layout_.n_own_nodes), nobody);
        std::int32_t& slot = slot_of_[static_cast<std::size_t>(node - layout_.n_own_nodes)];
        if (slot < layout_.parts[part_].first_slot) slot = new_slot(node);
        return slot;
    }

    std::int32_t new_slot(std::int32_t node)
    {
        slot_nodes_.push_back(node);
        return static_cast<std::int32_t>(layout_.n_rows++);
    }

    // Springs write their forces into slots of their own.
    void add_link_slots(const std::vector<std::int32_t>& linked)
    {
        layout_.first_link_slot = layout_.n_rows;
        for (const std::int32_t node : linked)
            layout_.linked.push_back(layout_.node_of[static_cast<std::size_t>(node)]);
        std::ranges::sort(layout_.linked);
        // clang 14 cannot read the subrange that std::ranges::unique returns with this library.
        layout_.linked.erase(std::unique(layout_.linked.begin(), layout_.linked.end()), layout_.linked.end());
        for (const std::int32_t node : layout_.linked) new_slot(node);
    }

    // Slots by the node that they belong to, in rising order.
    void sort_slots()
    {
        const auto n_shared = static_cast<std::size_t>(layout_.n_nodes - layout_.n_own_nodes);
        layout_.slot_starts.assign(n_shared + 1, 0);
        const auto shared = [&](std::int32_t node) { return static_cast<std::size_t>(node - layout_.n_own_nodes); };
        for (const std::int32_t node : slot_nodes_) ++layout_.slot_starts[shared(node) + 1];
        std::partial_sum(layout_.slot_starts.begin(), layout_.slot_starts.end(), layout_.slot_starts.begin());
        layout_.slots.resize(slot_nodes_.size());
        std::vector<std::int64_t> next(layout_.slot_starts.begin(), layout_.slot_starts.end() - 1);
        for (std::size_t i = 0; i < slot_nodes_.size(); ++i)
        {
            const auto at = static_cast<std::size_t>(next[shared(slot_nodes_[i])]++);
            layout_.slots[at] = static_cast<std::int32_t>(layout_.n_nodes + static_cast<std::int64_t>(i));
        }
    }

    const SolidMesh& mesh_;
    const CutMesh& cut_;
    std::vector<std::int32_t> stands_for_;
    std::vector<std::int32_t> owner_;  // part, several or nobody
    std::vector<char> straight_;
    std::vector<std::int32_t> slot_of_;     // newest slot of each shared node
    std::vector<std::int32_t> slot_nodes_;  // node of each slot
    std::size_t part_ = 0;                  // that is being added
    SolidLayout layout_;
};

}  // namespace

SolidLayout solid_layout(SolidTeam& team, const SolidMesh& mesh, const std::vector<SolidMesh::NodePair>& bonded,
                         const std::vector<std::int32_t>& linked_mesh_nodes)
{
    EXPECTS(!mesh.elements.empty() && mesh.regions.size() == mesh.elements.size());
    const CutMesh cut = cut_mesh(team, mesh);
    return Builder(mesh, cut, merged_nodes(mesh.nodes.size(), bonded)).built(team, linked_mesh_nodes);
}

}  // namespace splicewright
