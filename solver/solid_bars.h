// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <functional>
#include <vector>

#include "solver/meridian.h"
#include "solver/site_change.h"
#include "solver/solid_stress.h"

namespace splicewright
{

// One stress at places of a site of the solid model.
struct SolidReading
{
    Eigen::Matrix3Xd place;  // [3, n] mm, before loading
    Eigen::VectorXd value;   // [n] MPa
};

using Stress6 = Eigen::Matrix<double, 6, 1>;            // xx yy zz xy yz xz, MPa, tensor components
double solid_von_mises(const Stress6& stress);          // Source: [Mises1913]
double largest_solid_principal(const Stress6& stress);  // the one of the largest size, with its sign

// Of the places that count, `number` of their stress, fitted along the surface as that of every site is; see
// surface_fit.h. The axes of the stress are those of the surface.
SolidReading solid_reading(const SolidMesh& mesh, const FreeSurfaceStress& surface,
                           const std::function<bool(const Eigen::Vector3d&)>& counts,
                           const std::function<double(const Stress6&)>& number);

// For each place of one reading the nearest of another.
std::vector<Eigen::Index> nearest_places(const Eigen::Matrix3Xd& from, const Eigen::Matrix3Xd& to);

// How far a stress moved from a mesh to a finer one over the stretch where it is at least nine tenths of its peak:
// each place of the mesh before against the nearest one of now.
StretchChange solid_change(const SolidReading& now, const SolidReading& before);
// The same from values alone; nearest: of each place before the place of now.
StretchChange solid_change(const Eigen::VectorXd& now, const Eigen::VectorXd& before,
                           const std::vector<Eigen::Index>& nearest);

// The peak of a site with its error bar, from two meshes of which the later has elements smaller by `ratio`
// everywhere: the rules of level_bars.cpp, for a stress read by free_surface_stress.
// Throws CannotCompute when one of the readings has no place.
Measured solid_peak(const SolidReading& now, const SolidReading& before, double ratio = 2);
Measured solid_peak(const Eigen::VectorXd& now, const Eigen::VectorXd& before, const std::vector<Eigen::Index>& nearest,
                    double ratio = 2);

}  // namespace splicewright
