// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "mesh/solid_mesh.h"

namespace splicewright
{

// A node of the two faces, seen from one smooth stretch of them; at a sharp edge a pair has several places.
struct ContactPlace
{
    std::int32_t first = 0, second = 0;  // mesh nodes; the same where the unfused face ends
    Eigen::Vector3d normal{0, 0, 0};     // out of the metal of `first`, into that of `second`
    double gap = 0;                      // before any load, mm; negative: interference
    double area = 0;                     // mm^2, a third of that of all faces around
    double hat = 0;                      // mm^2, integral of the linear shape function of a corner; 0 at middles
};

// Two matched faces that may touch.
struct ContactSurface
{
    std::string name;
    std::vector<ContactPlace> places;
    std::vector<std::array<std::int32_t, 6>> faces;  // places of the nodes of each face of the first side
};

// Distance between the two faces before any load, at a place in mm; negative: interference, mm.
using InitialGap = std::function<double(const Eigen::Vector3d&)>;

// The faces between the pairs of this name. Throws CannotCompute when there are no such faces.
ContactSurface contact_surface(const SolidMesh& mesh, const std::string& pairs, const InitialGap& gap);

}  // namespace splicewright
