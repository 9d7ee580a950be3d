// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "solver/regular_solids.h"
#include "solver/solid_bars.h"
#include "solver/solid_system.h"

namespace splicewright::exact
{

using splicewright::Stress6;

// A body whose stress is known in closed form, n elements of it along its shortest side.
struct ExactBody
{
    std::string name, face;  // the face where the stress is read
    double pressure = 0;     // on that face, MPa
    SolidMesh mesh;
    SolidBody body;
    NodeForces load;
    std::function<Stress6(const Eigen::Vector3d&)> stress;  // on the face
    std::function<bool(const Eigen::Vector3d&)> counts;     // whether a place is far enough from ends
};

ExactBody thick_cylinder(int n, double inner = 20, double outer = 40);  // plane strain, inside pressure
ExactBody thick_sphere(int n, double inner = 20, double outer = 40);    // inside pressure
ExactBody plate_with_hole(int n, double nu = 0.3);                      // plane strain, pulled along x
ExactBody twisted_bar(int n);
ExactBody bent_bar(int n);
ExactBody twisted_ellipse(int n);

// Forces at the nodes of a face from the stress there.
NodeForces tractions(const SolidMesh& mesh, const std::string& face,
                     const std::function<Stress6(const Eigen::Vector3d&)>& stress);

Eigen::Matrix3Xd displacement_of(const ExactBody& exact);

}  // namespace splicewright::exact
