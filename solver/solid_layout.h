// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "mesh/solid_mesh.h"
#include "solver/solid_team.h"

namespace splicewright
{

// Order in which the solid solver works, so that memory is near and threads do not meet.
// Elements are cut by planes into parts of some thousands, and those into batches of sixteen, straight and curved ones
// apart. Nodes of one part only are its own, numbered together. Nodes of several parts, and nodes that springs may
// link, are shared and come last; each part adds its forces on them into places of its own, the slots, which are
// numbered after all nodes and summed in a fixed order: the result does not depend on the number of threads.

struct SolidBatches
{
    std::vector<std::int32_t> elements;  // [n_batches, 16] mesh element, or -1: a lane without stiffness
    // Node of the layout times node_stride: the first of its numbers.
    std::vector<std::uint32_t> nodes;    // [n_batches, 10, 16]
    std::vector<std::uint32_t> targets;  // [n_border_batches, 10, 16] the same, or the slot where the node is shared

    [[nodiscard]] std::int64_t size() const { return static_cast<std::int64_t>(elements.size()) / 16; }
};

// Batches of one kind in one part: the inner ones touch no shared node.
struct BatchRange
{
    std::int64_t first = 0, border = 0, last = 0;
    std::int64_t border_before = 0;  // border batches of the parts before
};

struct SolidPart
{
    BatchRange straight, curved;
    std::int64_t first_node = 0, last_node = 0;  // own nodes
    std::int64_t first_slot = 0, last_slot = 0;
};

struct SolidLayout
{
    std::vector<std::int32_t> node_of;  // [n mesh nodes] node of the layout, -1: in no element
    std::int64_t n_nodes = 0;           // after bonded pairs have become one
    std::int64_t n_own_nodes = 0;       // the shared ones follow
    std::int64_t n_rows = 0;            // nodes, then slots
    SolidBatches straight, curved;
    std::vector<SolidPart> parts;
    std::vector<std::int64_t> slot_starts;  // [n shared + 1] into slots
    std::vector<std::int32_t> slots;        // rows to be summed
    std::vector<std::int32_t> linked;       // nodes that springs may link
    std::int64_t first_link_slot = 0;       // slot of linked[0]
};

SolidLayout solid_layout(SolidTeam& team, const SolidMesh& mesh, const std::vector<SolidMesh::NodePair>& bonded,
                         const std::vector<std::int32_t>& linked_mesh_nodes);

}  // namespace splicewright
