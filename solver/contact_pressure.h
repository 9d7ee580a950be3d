// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "solver/solid_contact.h"

namespace splicewright
{

// Pressure at the places of a surface from the forces at them, MPa; see ContactState.
std::vector<double> contact_pressure(const ContactSurface& surface, const std::vector<double>& force);

// places: of the mesh nodes before loading, mm. friction: [n places] N along the faces, on `second`.
ContactState contact_state(const ContactSurface& surface, const std::vector<double>& force,
                           std::vector<Eigen::Vector3d> friction, const Eigen::Matrix3Xd& places,
                           const Eigen::Matrix3Xd& displacement);

}  // namespace splicewright
