// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/elimination.h"

#include <amd.h>

#include <algorithm>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

std::size_t at(int i) { return static_cast<std::size_t>(i); }

// Rows behind each other.
struct Lists
{
    std::vector<int> start{0}, item;
};

Lists groups_of_nodes(const NodeGroups& groups)
{
    Lists of;
    of.start.assign(at(groups.n_nodes + 1), 0);
    for (const int node : groups.node) ++of.start[at(node + 1)];
    for (int i = 0; i < groups.n_nodes; ++i) of.start[at(i + 1)] += of.start[at(i)];
    std::vector<int> next(of.start.begin(), of.start.end() - 1);
    of.item.resize(groups.node.size());
    for (int g = 0; g < groups.n_groups(); ++g)
        for (int k = groups.start[at(g)]; k < groups.start[at(g + 1)]; ++k)
            of.item[at(next[at(groups.node[at(k)])]++)] = g;
    return of;
}

Lists neighbours(const NodeGroups& groups, const Lists& groups_of)
{
    Lists graph;
    std::vector<int> seen_by(at(groups.n_nodes), -1);
    for (int node = 0; node < groups.n_nodes; ++node)
    {
        seen_by[at(node)] = node;
        for (int k = groups_of.start[at(node)]; k < groups_of.start[at(node + 1)]; ++k)
        {
            const int g = groups_of.item[at(k)];
            for (int i = groups.start[at(g)]; i < groups.start[at(g + 1)]; ++i)
            {
                const int other = groups.node[at(i)];
                if (seen_by[at(other)] == node) continue;
                seen_by[at(other)] = node;
                graph.item.push_back(other);
            }
        }
        graph.start.push_back(static_cast<int>(graph.item.size()));
    }
    return graph;
}

std::vector<int> ordered(const Lists& graph, int n_nodes)
{
    std::vector<int> order(at(n_nodes));
    const int status = amd_order(n_nodes, graph.start.data(), graph.item.data(), order.data(), nullptr, nullptr);
    EXPECTS(status == AMD_OK || status == AMD_OK_BUT_JUMBLED);
    return order;
}

// What each step of the elimination leaves coupled: later steps, in no order.
std::vector<std::vector<int>> fill_of(const Lists& graph, const std::vector<int>& order, const std::vector<int>& step,
                                      std::vector<int>& parent)
{
    const std::size_t n = order.size();
    std::vector<std::vector<int>> fill(n);
    std::vector<int> first_child(n, -1), sibling(n, -1), seen_by(n, -1);
    parent.assign(n, -1);
    for (std::size_t k = 0; k < n; ++k)
    {
        const int here = static_cast<int>(k);
        std::vector<int>& later = fill[k];
        const auto take = [&](int other)
        {
            if (other <= here || seen_by[at(other)] == here) return;
            seen_by[at(other)] = here;
            later.push_back(other);
        };
        for (int i = graph.start[at(order[k])]; i < graph.start[at(order[k] + 1)]; ++i)
            take(step[at(graph.item[at(i)])]);
        for (int child = first_child[k]; child >= 0; child = sibling[at(child)])
            for (const int other : fill[at(child)]) take(other);
        if (later.empty()) continue;
        const int next = *std::min_element(later.begin(), later.end());
        parent[k] = next;
        sibling[k] = first_child[at(next)];
        first_child[at(next)] = here;
    }
    return fill;
}

// Whether the zeros that joining a front to its parent stores are few beside what it saves in calls. Of the number of
// nodes that leave: by trial on meridian sections, on a busy machine; larger fronts were slower.
bool worth_joining(std::size_t own, double zeros_share)
{
    constexpr std::size_t always = 4, often = 12, seldom = 32;
    constexpr double most_often = 0.5, most_seldom = 0.15, most_large = 0.05;
    if (own <= always) return true;
    return zeros_share < (own <= often ? most_often : own <= seldom ? most_seldom : most_large);
}

// Entries of the columns of a front, in pairs of nodes.
double stored(std::size_t own, std::size_t border)
{
    const double s = static_cast<double>(own);
    return s * (s + 1) / 2 + s * static_cast<double>(border);
}

// In steps of the order: fronts of equal structure, then joined to their parents where worth it.
struct Joined
{
    std::vector<Front> fronts;   // in steps; without groups
    std::vector<int> parent;     // of each front
    std::vector<bool> is_taken;  // into its parent
};

Joined joined(std::vector<std::vector<int>>& fill, const std::vector<int>& parent)
{
    Joined result;
    std::vector<int> front_of(fill.size());
    std::size_t before = 0;  // size of the fill of the step before
    for (std::size_t k = 0; k < fill.size(); ++k)
    {
        const bool goes_on = k > 0 && parent[k - 1] == static_cast<int>(k) && before == fill[k].size() + 1;
        before = fill[k].size();
        if (!goes_on) result.fronts.emplace_back();
        result.fronts.back().own.push_back(static_cast<int>(k));
        result.fronts.back().border = std::move(fill[k]);
        front_of[k] = static_cast<int>(result.fronts.size()) - 1;
    }
    const std::size_t n = result.fronts.size();
    result.is_taken.assign(n, false);
    result.parent.assign(n, -1);
    for (std::size_t f = 0; f < n; ++f)
    {
        Front& front = result.fronts[f];
        std::vector<int> kept;
        double zeros = 0;
        std::vector<int> children = std::move(front.children);
        for (const int c : children)
        {
            Front& child = result.fronts[at(c)];
            const std::size_t own = front.own.size() + child.own.size();
            const double more = static_cast<double>(child.own.size()) *
                                static_cast<double>(front.own.size() + front.border.size() - child.border.size());
            if (!worth_joining(own, (zeros + more) / stored(own, front.border.size())))
            {
                kept.push_back(c);
                continue;
            }
            zeros += more;
            result.is_taken[at(c)] = true;
            front.own.insert(front.own.begin(), child.own.begin(), child.own.end());
            kept.insert(kept.end(), child.children.begin(), child.children.end());
        }
        front.children = std::move(kept);
        const int last = front.own.back();
        if (parent[at(last)] < 0) continue;
        result.parent[f] = front_of[at(parent[at(last)])];
        result.fronts[at(result.parent[f])].children.push_back(static_cast<int>(f));
    }
    return result;
}

}  // namespace

Elimination elimination(const NodeGroups& groups)
{
    const Lists groups_of = groups_of_nodes(groups);
    const Lists graph = neighbours(groups, groups_of);
    const std::vector<int> order = ordered(graph, groups.n_nodes);
    std::vector<int> step(order.size());
    for (std::size_t k = 0; k < order.size(); ++k) step[at(order[k])] = static_cast<int>(k);
    std::vector<int> parent;
    std::vector<std::vector<int>> fill = fill_of(graph, order, step, parent);
    Joined tree = joined(fill, parent);

    Elimination result;
    std::vector<int> place(tree.fronts.size(), -1), leaves_at(order.size(), -1);
    int n_left = 0;
    for (std::size_t f = 0; f < tree.fronts.size(); ++f)
    {
        if (tree.is_taken[f]) continue;
        Front& front = tree.fronts[f];
        place[f] = static_cast<int>(result.fronts.size());
        for (int& child : front.children) child = place[at(child)];
        for (int& node : front.own)
        {
            node = order[at(node)];
            leaves_at[at(node)] = n_left++;
        }
        for (int& node : front.border) node = order[at(node)];
        result.fronts.push_back(std::move(front));
    }
    std::vector<bool> is_given(at(groups.n_groups()), false);
    for (Front& front : result.fronts)
    {
        std::sort(front.border.begin(), front.border.end(),
                  [&](int a, int b) { return leaves_at[at(a)] < leaves_at[at(b)]; });
        for (const int node : front.own)
            for (int k = groups_of.start[at(node)]; k < groups_of.start[at(node + 1)]; ++k)
            {
                const int g = groups_of.item[at(k)];
                if (is_given[at(g)]) continue;
                is_given[at(g)] = true;
                front.groups.push_back(g);
            }
    }
    return result;
}

}  // namespace splicewright
