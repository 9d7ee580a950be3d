// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/solver/exact_fields.h"

#include <Eigen/QR>
#include <array>
#include <cmath>

namespace splicewright::sample
{

Field point_couple(double z0)
{
    return [=](double z, double r)
    {
        const double R = std::hypot(z - z0, r);
        return Eigen::Vector3d(0, r / (R * R * R), 0);
    };
}

Field point_force_along(double z0, double nu)
{
    return [=](double z, double r)
    {
        const double x = z - z0, R = std::hypot(x, r), R3 = R * R * R;
        return Eigen::Vector3d(r * x / R3, 0, (3 - 4 * nu) / R + x * x / R3);
    };
}

Field point_force_across(double z0, double nu)
{
    return [=](double z, double r)
    {
        const double x = z - z0, R = std::hypot(x, r), R3 = R * R * R;
        return Eigen::Vector3d((3 - 4 * nu) / R + r * r / R3, -(3 - 4 * nu) / R, r * x / R3);
    };
}

Field twisted_cavity(double a)
{
    return [=](double z, double r)
    { return Eigen::Vector3d(0, z * r * (1 + std::pow(a / std::hypot(z, r), 5) / 4), 0); };
}

PulledCavity pulled_cavity(double a, const ElasticConstants& steel)
{
    const double nu = steel.nu, E = steel.E;
    const std::array<Field, 4> part{
        [=](double z, double r) { return Eigen::Vector3d(-nu * r / E, 0, z / E); },
        [=](double z, double r)  // derivative along z of point_force_along
        {
            const double R = std::hypot(z, r), R3 = R * R * R, R5 = R3 * R * R;
            return Eigen::Vector3d(r / R3 - 3 * r * z * z / R5, 0, (4 * nu - 1) * z / R3 - 3 * z * z * z / R5);
        },
        [=](double z, double r)  // gradient of 1/R
        {
            const double R3 = std::pow(std::hypot(z, r), 3);
            return Eigen::Vector3d(r / R3, 0, z / R3);
        },
        [=](double z, double r)  // its second derivative along z
        {
            const double R = std::hypot(z, r), R5 = std::pow(R, 5), R7 = R5 * R * R;
            return Eigen::Vector3d(3 * r / R5 - 15 * z * z * r / R7, 0, 9 * z / R5 - 15 * z * z * z / R7);
        }};
    constexpr int n = 9;
    Eigen::Matrix<double, 2 * n, 4> traction;
    for (int i = 0; i < n; ++i)
    {
        const double phi = 0.1 + 0.32 * i, c = std::cos(phi), s = std::sin(phi);
        for (int p = 0; p < 4; ++p)
        {
            const auto stress =
                stress_of(steel, strain_of(LoadKind::axial, part[static_cast<std::size_t>(p)], a * c, a * s));
            traction(2 * i, p) = c * stress(2) + s * stress(5);
            traction(2 * i + 1, p) = c * stress(5) + s * stress(0);
        }
    }
    const Eigen::Vector3d scale = traction.rightCols<3>().colwise().norm();
    const Eigen::Vector3d strength =
        (traction.rightCols<3>() * scale.cwiseInverse().asDiagonal()).colPivHouseholderQr().solve(-traction.col(0));
    const Eigen::Vector3d k = strength.cwiseQuotient(scale);
    PulledCavity cavity;
    cavity.traction = (traction.col(0) + traction.rightCols<3>() * k).lpNorm<Eigen::Infinity>();
    cavity.field = [=](double z, double r) -> Eigen::Vector3d
    { return part[0](z, r) + k(0) * part[1](z, r) + k(1) * part[2](z, r) + k(2) * part[3](z, r); };
    return cavity;
}

}  // namespace splicewright::sample
