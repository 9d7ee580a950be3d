// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <string>
#include <vector>

#include "solver/elements.h"
#include "solver/stress_field.h"
#include "solver/unit_solution.h"

namespace splicewright
{

// Edges of one smooth stretch of surface in walking order, and the steel below it.
struct SurfaceChain
{
    std::vector<MeshEdge> edges;
    ElasticConstants steel;
    std::vector<MeshEdge> before, after;  // where the free surface goes on smoothly, in walking order
};

// Edges gathered into chains; a chain ends at a corner, at a change of steel, and where the edges stop.
std::vector<SurfaceChain> surface_chains(const Mesh& mesh, const std::vector<MeshEdge>& edges,
                                         const std::vector<ElasticConstants>& steel);

// Edges of the mesh that no second triangle shares, except those of curves whose name begins with one of `held`.
std::vector<MeshEdge> free_edges(const Mesh& mesh, const std::vector<std::string>& held);

// Gives each chain the two free edges before it and after it, as far as the surface goes on smoothly over one steel:
// the stress at its ends is then read between samples, not beyond them.
void carry_on(std::vector<SurfaceChain>& chains, const Mesh& mesh, const std::vector<MeshEdge>& free,
              const std::vector<ElasticConstants>& steel);

// Places along one chain at which its surface stress is reported: [n] each, mm.
struct SurfacePlaces
{
    std::vector<double> s;  // along the surface from the chain's start
    std::vector<double> z, r;
    std::vector<int> edge;      // edge of the chain
    std::vector<double> local;  // -1 .. 1 along it
};
SurfacePlaces surface_places(const Mesh& mesh, const SurfaceChain& chain);

// Stress in the surface at those places, MPa: along the meridian, hoop, shear between them, across the surface, and
// the shears on the surface itself, which a free one does not have.
struct SurfaceStress
{
    Eigen::VectorXd along, hoop, shear, across, across_along, across_hoop;  // [n]
};
inline constexpr std::array surface_stress_parts{&SurfaceStress::along,        &SurfaceStress::hoop,
                                                 &SurfaceStress::shear,        &SurfaceStress::across,
                                                 &SurfaceStress::across_along, &SurfaceStress::across_hoop};
SurfaceStress zero_surface_stress(Eigen::Index n_places);

// On a free surface, from the displacements of the surface alone: the strain at the two points of each edge where its
// derivative is one order better, cubic interpolation of it along the chain, and plane stress (nothing across).
//   along = E/(1-nu^2) (e_ss + nu e_tt), hoop = E/(1-nu^2) (e_tt + nu e_ss), shear = G g_st
SurfaceStress free_surface_stress(const Mesh& mesh, const SurfaceChain& chain, const SurfacePlaces& places,
                                  const UnitSolution& solution);

// On a surface that is pressed or joined: the recovered stress of the metal below, turned into the surface's frame.
SurfaceStress loaded_surface_stress(const Mesh& mesh, const SurfaceChain& chain, const SurfacePlaces& places,
                                    const RegionNodes& nodes, const StressAmplitude& stress);

}  // namespace splicewright
