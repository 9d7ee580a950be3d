// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>

#include "solver/elements.h"

namespace splicewright
{

enum class CrackMode
{
    opening,  // I
    sliding,  // II, across the front
    tearing,  // III, along the front
};

// A crack front seen in the section, [z, r].
struct CrackFrame
{
    Eigen::Vector2d tip;      // mm
    Eigen::Vector2d forward;  // unit, in which the crack would grow
    Eigen::Vector2d up;       // unit, across the crack: to the right bar at the land, to the sleeve at a root
};

// Displacement amplitude at one place and its slopes in the section: rows r, theta, z; columns d/dr, d/dz.
struct SectionField
{
    Eigen::Vector3d value;                 // mm
    Eigen::Matrix<double, 3, 2> gradient;  // -
};

// Displacement around a straight crack front in plane strain with stress intensity 1 MPa*sqrt(mm) of one mode.
// Positive: the upper face moves up (opening), forward (sliding), to greater theta (tearing).
// Source: [Williams1957] leading term; [TadaParisIrwin2000] part I.
SectionField crack_field(CrackMode mode, const ElasticConstants& steel, const CrackFrame& frame, Eigen::Vector2d place);

}  // namespace splicewright
