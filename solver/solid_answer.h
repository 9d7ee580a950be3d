// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "solver/meridian.h"
#include "solver/solid_fields.h"
#include "solver/solid_level.h"

namespace splicewright
{

// How large a solid model may be.
struct SolidBudget
{
    std::size_t dofs = 1000000;     // unknowns of the finer of two meshes, within a fifth
    std::int64_t memory_limit = 0;  // bytes that are free, 0: not asked
    int n_threads = 0;              // 0: as many as the processor runs at once
};

// Which fields an answer keeps for files and pictures.
enum class SolidDetail
{
    none,
    thinned,  // an eighth of the elements, with the values of all
    whole,
};

struct SolidShowing
{
    SolidDetail detail = SolidDetail::none;
    CombinedLoad load;
    std::vector<CombinedLoad> each = {};  // see solid_fields
};

struct SolidEvidence
{
    std::size_t dofs = 0, coarse_dofs = 0, elements = 0;
    double elements_per_quarter_turn = 0;  // of a notch arc
    double smallest_jacobian_ratio = 0;
    std::size_t straightened_edges = 0;
    bool within_budget = false;
    int iterations = 0;  // most of a load
    double residual = 0, reaction_imbalance = 0;
    double mesh_seconds = 0, solve_seconds = 0, recover_seconds = 0;
    std::int64_t bytes = 0;                 // most of a solution, beside the mesh
    std::vector<std::string> coarse_sites;  // with fewer elements on their notch than it needs
};

// The solid model's answer for one scenario. Its numbers have the places of the meridian model's, so that both are
// judged alike: in bending the largest over a turn, found by superposition of two directions.
struct SolidModelAnswer
{
    MeridianAnswer answer;                                // without hot spots and fields
    std::vector<std::vector<WeldMetalForce>> weld_metal;  // [brackets][places]
    std::optional<LapContact> contact;                    // of the last bracket that has one
    std::string contact_left_out;  // why the faces of a lap are taken as free; empty: their contact was solved
    double closes = 0;             // mm, that bar and sleeve come together in the slit under the peak load
    SolidEvidence evidence;
    std::optional<SolidFields> fields;  // of the finer mesh, where they were asked for
};

// Meshes twice, solves, and sets error bars from the change between the meshes; see solid_bars.h.
// The sleeve is left out where both of its welds are lost and no plugs hold it. Where the contact of a lap does not
// settle, its faces are free.
// Throws CannotCompute when no mesh or no balanced solution is found, or when the memory does not suffice.
SolidModelAnswer solid_model_answer(const Case& asked, const Scenario& scenario, const SolidBudget& budget,
                                    double target_pct, const SolidShowing& showing = {});

// Bytes that meshing and solving that many unknowns take at most: about twice what was measured.
std::int64_t solid_memory(std::size_t dofs);

}  // namespace splicewright
