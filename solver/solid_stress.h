// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <cstdint>
#include <string>
#include <vector>

#include "mesh/solid_mesh.h"
#include "mesh/triangle.h"
#include "solver/elements.h"

namespace splicewright
{

// Stress in the metal at nodes, seen from each region by itself: never averaged across a material or an unfused face.
struct SolidStress
{
    std::vector<std::int32_t> node, region;          // [n] a mesh node for each region that it belongs to
    Eigen::Matrix<double, 6, Eigen::Dynamic> value;  // [6, n] xx yy zz xy yz xz, MPa, tensor components
    std::vector<std::int64_t> starts;                // [n mesh nodes + 1] entries of each mesh node
};

// From the strain at the four points where that of a quadratic element is best, carried linearly to the nodes and
// averaged over the elements of the region by volume. Source: [Barlow1976].
SolidStress recovered_stress(const SolidMesh& mesh, const std::vector<ElasticConstants>& steel,
                             const Eigen::Matrix3Xd& displacement);

// Entry of a node in a region; -1: it has none.
std::int64_t entry_of(const SolidStress& stress, std::int32_t node, std::int32_t region);

// A node seen from one smooth stretch of surface of one steel; region: one of those that it is. Two of them stand at an
// edge or where steels meet.
struct SurfacePlace
{
    std::int32_t node = 0, region = 0;
    Eigen::Vector3d normal{0, 0, 0};     // outward
    Eigen::Matrix<double, 6, 1> stress;  // xx yy zz xy yz xz, MPa
};

struct FreeSurfaceStress
{
    std::vector<SurfacePlace> places;
    std::vector<std::array<std::int32_t, 6>> faces;  // [n faces of the name] places of the nodes of each face
};

// Stress on a named face that carries the given pressure and no shear, from the displacement of its own nodes alone:
// strain in the surface at three points of each face, plane stress, carried to the nodes and averaged by area over
// faces of one steel whose normals differ by less than 0.35 rad. Second order in the element size, first at edges.
FreeSurfaceStress free_surface_stress(const SolidMesh& mesh, const std::vector<ElasticConstants>& steel,
                                      const Eigen::Matrix3Xd& displacement, const std::string& face,
                                      double pressure = 0);
// The same over several faces without pressure, averaged across their borders where the surface goes on smoothly; the
// faces of the result stand in the order of the list, name after name.
FreeSurfaceStress free_surface_stress(const SolidMesh& mesh, const std::vector<ElasticConstants>& steel,
                                      const Eigen::Matrix3Xd& displacement,
                                      const std::vector<std::vector<SolidMesh::Face>>& faces, double pressure = 0);

// Stress at a point of a face, from the places of its nodes.
Eigen::Matrix<double, 6, 1> stress_at(const FreeSurfaceStress& surface, std::size_t face, ReferencePoint at);

}  // namespace splicewright
