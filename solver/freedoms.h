// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <vector>

#include "mesh/mesh.h"
#include "solver/stress_field.h"

namespace splicewright
{

// How the two faces of the slit hang together in one solve. A held slit stays free over the butt zone: the bore is
// stepped there and touches nothing.
enum class FaceTie
{
    free,    // not at all
    held,    // the jump in the normal direction is prescribed, sliding is free
    merged,  // as one body
};

struct Ties
{
    std::array<FaceTie, 2> slit{FaceTie::free, FaceTie::free};  // [left, right]
    std::array<double, 2> overlap{0, 0};                        // mm, radial interference of a held slit
};

// Every unknown of the mesh as a constant plus a combination of few free ones.
struct Freedoms
{
    struct Term
    {
        int free = 0;
        double factor = 0;
    };
    struct Unknown
    {
        std::array<Term, 4> term;
        int n_terms = 0;
        double constant = 0;  // mm
    };
    std::vector<Unknown> unknown;  // [n_nodes * unknowns_per_node]
    int n_free = 0;
    std::vector<int> node_of_free;  // [n_free] the node that each came from, its unknowns side by side
    std::vector<int> pinned;        // unknowns held only against rigid motion
};

// Supports: on the axis u_theta = u_r = 0 in harmonic 0, u_z = 0 and u_theta = -u_r in harmonic 1;
// rigid motions are held at one node of the left end, where loads in balance leave no reaction.
Freedoms freedoms(const Mesh& mesh, LoadKind kind, const Ties& ties);

}  // namespace splicewright
