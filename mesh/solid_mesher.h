// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <map>
#include <string>
#include <vector>

#include "mesh/solid_flat.h"
#include "mesh/solid_geometry.h"
#include "mesh/solid_mesh.h"
#include "mesh/solid_size.h"

namespace splicewright
{

// How fine a solid mesh is asked for.
struct SolidMeshSize
{
    std::size_t dofs = 1000000;  // unknowns: three for each node
    double tolerance = 0.2;      // by which the number may miss, as a share
    std::size_t most_dofs = 0;   // a shape that needs more is refused before it is meshed; 0: none
};

struct SolidMeshAnswer
{
    SolidMesh mesh;
    std::vector<std::string> regions;       // names, by SolidMesh::regions
    std::vector<std::string> absent_sites;  // with the reason
    // Sites whose notches have fewer elements than their stress needs, with what they have.
    std::vector<std::string> coarse_sites;
    // Nodes on sharp edges that have an intensity and no stress: "land-edge" of a half lap, "plug-edge.N".
    std::map<std::string, std::vector<std::int32_t>> edge_nodes;
    std::size_t curved_edges = 0, straightened_edges = 0;
    double smallest_jacobian_ratio = 0;
    double elements_per_quarter_turn = 0;  // of a notch arc
    bool within_budget = false;            // false: the shape itself asks for more, or a site does
    int meshes_made = 0;                   // until the budget was met
    double seconds = 0;
    [[nodiscard]] std::size_t dofs() const { return 3 * mesh.nodes.size(); }
};

// Meshes the solid of a case. Throws CannotCompute with the mesher's own last words when it fails, and when narrow
// faces of the shape need far more elements than asked.
SolidMeshAnswer solid_mesh(const Case& asked, const Scenario& scenario, const SolidMeshSize& size);

// Two meshes of one case, each element of the first parted in eight in the second; the size is that of the second.
// Unlike two meshes that the mesher makes anew they differ by nothing but the size of their elements. Its seconds are
// those of both.
struct NestedSolids
{
    SolidMeshAnswer coarse, fine;
};
NestedSolids nested_solid_meshes(const Case& asked, const Scenario& scenario, const SolidMeshSize& size);

// Four-node tetrahedra of the geometry, at a scale of its size field; parts recognised, nothing split.
// The mesher's session opens and closes inside; nothing is printed.
FlatSolid tetrahedra(const SolidGeometry& geometry, const std::vector<FaceShape>& shapes, const SolidSizeField& field,
                     double scale);

}  // namespace splicewright
