// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/stress_field.h"

#include <cmath>

namespace splicewright
{

Eigen::Matrix<double, 6, Eigen::Dynamic> combined_stress(const SolvedFields& fields, const CombinedLoad& load,
                                                         double theta_rad)
{
    using Rows = Eigen::Matrix<double, 6, Eigen::Dynamic>;
    Rows stress = load.torque * fields.torsion.value + load.axial * fields.axial.value;
    if (fields.press.value.cols() > 0) stress += load.press * fields.press.value;
    const double c = std::cos(theta_rad), s = std::sin(theta_rad);
    Eigen::Matrix<double, 6, 1> phase;
    phase << c, c, c, s, s, c;
    stress += load.bending * (phase.asDiagonal() * fields.bending.value);
    return stress;
}

Eigen::Matrix3Xd combined_displacement(const SolvedFields& fields, const CombinedLoad& load, double theta_rad)
{
    Eigen::Matrix3Xd u = load.torque * fields.torsion_displacement.value + load.axial * fields.axial_displacement.value;
    if (fields.press_displacement.value.cols() > 0) u += load.press * fields.press_displacement.value;
    const Eigen::Vector3d phase(std::cos(theta_rad), std::sin(theta_rad), std::cos(theta_rad));
    u += load.bending * (phase.asDiagonal() * fields.bending_displacement.value);
    return u;
}

Eigen::VectorXd von_mises(const Eigen::Matrix<double, 6, Eigen::Dynamic>& stress)
{
    Eigen::VectorXd result(stress.cols());
    for (Eigen::Index i = 0; i < stress.cols(); ++i)
    {
        const double rr = stress(0, i), tt = stress(1, i), zz = stress(2, i);
        const double shears = stress.col(i).tail<3>().squaredNorm();
        result(i) = std::sqrt(((rr - tt) * (rr - tt) + (tt - zz) * (tt - zz) + (zz - rr) * (zz - rr)) / 2 + 3 * shears);
    }
    return result;
}

}  // namespace splicewright
