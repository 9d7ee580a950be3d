// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>

namespace splicewright
{

// Stress at a point of the solid model under loads that stand still beside bending whose plane goes once around: MPa,
// xx yy zz xy yz xz, tensor components. At an angle t it is steady + cos(t) x + sin(t) y.
struct Turning
{
    using Stress = Eigen::Matrix<double, 6, 1>;
    Stress steady = Stress::Zero(), x = Stress::Zero(), y = Stress::Zero();
};

// Largest over the turn, every 3 degrees.
double worst_von_mises(const Turning& stress);
// The principal stress that is largest by size, with its sign; every 9 degrees, within 0.3 % of the part of bending.
double worst_principal(const Turning& stress);
// Shear stress around the axis at a place, on faces across the axis and around it: what carries torque.
double worst_shear(const Turning& stress, const Eigen::Vector3d& place);

}  // namespace splicewright
