// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <string>
#include <vector>

#include "mesh/solid_mesh.h"
#include "solver/solid_system.h"

namespace splicewright
{

// Force and moment on a face, the moment about its centre of area.
struct FaceLoad
{
    Eigen::Vector3d force{0, 0, 0};   // N
    Eigen::Vector3d moment{0, 0, 0};  // N mm
};

// Forces on the nodes of a named face, as of the traction a + b x (p - centre) over it: linear tension for bending,
// shear that grows with the radius for torque, even tension for an axial force, which a round bar carries far from
// its ends. a and b are such that the forces have exactly the asked resultants, also on faceted or bent faces.
// Throws CannotCompute when the mesh has no such face.
NodeForces face_forces(const SolidMesh& mesh, const std::string& face, const FaceLoad& load);

// Pressure on a named face, MPa, positive towards the metal.
NodeForces pressure_forces(const SolidMesh& mesh, const std::string& face, double pressure);

// Area in mm^2 and its centre.
struct FaceArea
{
    double area = 0;
    Eigen::Vector3d centre{0, 0, 0};
};
FaceArea face_area(const SolidMesh& mesh, const std::string& face);

// The sum of units, each times its factor; as poorly known as the worst of them.
SolidAnswer sum_of(const std::vector<SolidAnswer>& units, const std::vector<double>& factors);
// Of displacements; empty without any.
Eigen::Matrix3Xd sum_of(const std::vector<Eigen::Matrix3Xd>& units, const std::vector<double>& factors);

}  // namespace splicewright
