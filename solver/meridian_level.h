// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "solver/meridian.h"

namespace splicewright
{

// One way in which the slit may hang together, solved for all unit loads.
struct Bracket
{
    UnitSolution torsion, bending, axial;
    std::optional<UnitSolution> press;
};

// Everything that one mesh says about one scenario; the numbers in it carry no error yet.
struct Level
{
    Mesh mesh;
    std::vector<ElasticConstants> steel;
    std::vector<Bracket> brackets;
    std::vector<SiteAnswer> sites;
    std::array<std::optional<WeldForce>, 2> weld;
    std::vector<HotSpot> hot_spots;
    SleeveShare share;
    Measured twist, end_rotation, extension, fit_pressure;
    double residual = 0, reaction_imbalance = 0, section_imbalance = 0;
    int unknowns = 0;
    double mesh_seconds = 0, solve_seconds = 0, recover_seconds = 0;
};

Level solved_level(const Case& asked, const Scenario& scenario, const Outline& outline, const MeshSize& size);

// Largest closing movement of the free faces of the slit, mm per unit load.
double closing_movement(const Mesh& mesh, const UnitSolution& solution);

// Adds one more way in which the slit may hang together, and takes the worse of the peaks; their errors are 0.
void add_bracket(SiteAnswer& site, SiteStress stress);

// The fields of the first bracket, for pictures and files. Takes the mesh out of the level.
SolvedFields solved_fields(Level&& level);

}  // namespace splicewright
