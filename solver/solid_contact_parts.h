// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "solver/solid_touch.h"

namespace splicewright
{

// What one set-up of a contact keeps, and the solutions with given pairs held.
struct SolidContact::Parts
{
    Parts(const SolidMesh& mesh, std::vector<ContactSurface> given, const SolidSettings& settings,
          const ContactSettings& chosen);

    std::vector<ContactSurface> surfaces;
    ContactSettings contact;
    double tolerance = 0;
    Eigen::Matrix3Xd places;  // [3, n mesh nodes] mm
    std::vector<PairSpring> own_springs;
    double spring_modulus = 0;  // N/mm for each mm of the root of an area
    std::vector<Touch> touches;
    std::unique_ptr<SolidSystem> own_system;
    SolidSystem* system = nullptr;

    [[nodiscard]] std::vector<PairSpring> springs(const std::vector<Touch>& now) const;
    [[nodiscard]] NodeForces friction(const std::vector<Touch>& now) const;  // of what slips
    [[nodiscard]] std::vector<SolidAnswer> solved(const std::vector<NodeForces>& loads, const std::vector<bool>& opened,
                                                  const std::vector<Touch>& now,
                                                  std::vector<Eigen::Matrix3Xd> displacements, double to) const;
    void read(const std::vector<SolidAnswer>& answers, const std::vector<double>& factors,
              std::vector<Touch>& now) const;
    [[nodiscard]] std::vector<std::vector<double>> forces(const std::vector<Touch>& now) const;
    [[nodiscard]] Violation violation(const std::vector<Touch>& now) const;
    void finish(const std::vector<Touch>& now, ContactAnswer& answer) const;
};

}  // namespace splicewright
