// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <cstdint>
#include <vector>

#include "solver/solid_stress.h"

namespace splicewright
{

// Places of a surface with a frame each: column 0 along the meridian towards greater z, or away from the axis on a face
// across it; 1 around; 2 outward.
struct FramedPlaces
{
    std::vector<std::int32_t> node, region;
    Eigen::Matrix3Xd at;                             // [3, n] mm
    std::vector<Eigen::Matrix3d> frame;              // [n]
    std::vector<std::array<std::int32_t, 6>> faces;  // places of the nodes of each face
    std::vector<std::vector<std::int32_t>> around;   // [n] faces that hold the place
};
FramedPlaces framed_places(const SolidMesh& mesh, const FreeSurfaceStress& surface);

// Along, around, shear between them, across, across and along, across and around: MPa.
Eigen::Matrix<double, 6, 1> in_frame(const Eigen::Matrix3d& frame, const Eigen::Matrix<double, 6, 1>& stress);

// A value at a place as a weighted sum of those at places nearby: the constant of a quadratic in the two directions of
// the surface, fitted by least squares to the places of the faces around, and of those around them where these are few.
// A stress that is read from faces one by one scatters from face to face; the fit takes the scatter away and keeps
// slope and curvature. Frames must turn smoothly from place to place. Source: [ZienkiewiczZhu1992], carried over to a
// surface.
struct FitWeight
{
    std::int32_t place = 0;
    double weight = 0;
};
std::vector<FitWeight> fit_weights(const FramedPlaces& places, std::int32_t place);

}  // namespace splicewright
