// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

namespace splicewright
{

// Groups of nodes that an element couples, all groups behind each other.
struct NodeGroups
{
    int n_nodes = 0;
    std::vector<int> start{0};  // [n_groups + 1] into node
    std::vector<int> node;      // none twice within a group

    [[nodiscard]] int n_groups() const { return static_cast<int>(start.size()) - 1; }
};

// Nodes that leave a system of equations together, and those that they are coupled with when they do.
struct Front
{
    std::vector<int> own, border;  // nodes in the order of their elimination
    std::vector<int> children;     // fronts whose border enters this one
    std::vector<int> groups;       // those whose first node to leave is one of `own`
};

// An order of elimination with little fill, as a tree: children stand before their parents, and the border of a front
// lies within the nodes of its parent. It holds for any number of unknowns at a node, so that one serves all loads.
struct Elimination
{
    std::vector<Front> fronts;
};

// Approximate minimum degree on the graph of the nodes [AmestoyDavisDuff1996]; fronts that share most of their border
// are joined. The same groups give the same order.
Elimination elimination(const NodeGroups& groups);

}  // namespace splicewright
