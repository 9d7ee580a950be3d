// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>

#include "mesh/solid_mesh.h"
#include "mesh/triangle.h"

namespace splicewright
{

// Nodes of the faces of an element, corners counter-clockwise seen from outside, then the middles between them.
constexpr std::array<std::array<std::size_t, 6>, 4> element_faces{
    {{0, 2, 1, 6, 5, 4}, {0, 1, 3, 4, 8, 7}, {1, 2, 3, 5, 9, 8}, {0, 3, 2, 7, 9, 6}}};

// Six-node face in space; shape functions and points are those of the triangle of the meridian section.
using FaceNodes = Eigen::Matrix<double, 3, 6>;  // mm

FaceNodes nodes_of(const SolidMesh& mesh, const SolidMesh::Face& face);

struct FacePoint
{
    Eigen::Vector3d place{0, 0, 0};        // mm
    Eigen::Matrix<double, 3, 2> tangents;  // d place / d x, y of the reference triangle, mm
    Eigen::Vector3d area{0, 0, 0};         // outward normal times area per reference area, mm^2
};
FacePoint face_point(const FaceNodes& nodes, ReferencePoint at);

}  // namespace splicewright
