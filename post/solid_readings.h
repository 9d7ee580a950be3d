// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>

#include "solver/solid_bars.h"
#include "solver/solid_stress.h"

namespace splicewright
{

// Numbers read from solids of regular shape, whose nodes stand where they are asked for.

// Rotation about z per length between two heights, rad/mm: each the mean over its nodes about their centre.
double twist_rate(const SolidMesh& mesh, const Eigen::Matrix3Xd& displacement, double from, double to);

// Stress at the node there, MPa.
Stress6 surface_value(const SolidMesh& mesh, const FreeSurfaceStress& surface, const Eigen::Vector3d& where);
Stress6 inside_value(const SolidMesh& mesh, const SolidStress& stress, const Eigen::Vector3d& where);

// Displacement of the node there, mm.
Eigen::Vector3d displacement_at(const SolidMesh& mesh, const Eigen::Matrix3Xd& displacement,
                                const Eigen::Vector3d& where);

}  // namespace splicewright
