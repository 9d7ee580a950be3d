// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/crack_fields.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

namespace splicewright
{
namespace
{

constexpr ElasticConstants steel{206000, 0.29};
constexpr std::array<CrackMode, 3> modes{CrackMode::opening, CrackMode::sliding, CrackMode::tearing};

// A root on the left: forward and up are not along z and r.
CrackFrame frame() { return {{-12, 9}, {-1, 0}, {0, 1}}; }

// Stress in the plane of a straight front (no hoop strain), rows and columns r, front, z.
Eigen::Matrix3d plane_stress_of(const SectionField& field)
{
    Eigen::Matrix3d L = Eigen::Matrix3d::Zero();
    L.col(0) = field.gradient.col(0);
    L.col(2) = field.gradient.col(1);
    const Eigen::Matrix3d strain = (L + L.transpose()) / 2;
    const double lambda = steel.E * steel.nu / ((1 + steel.nu) * (1 - 2 * steel.nu));
    return lambda * strain.trace() * Eigen::Matrix3d::Identity() + 2 * steel.G() * strain;
}

Eigen::Vector2d place_at(double rho, double phi)
{
    const CrackFrame f = frame();
    return f.tip + rho * (std::cos(phi) * f.forward + std::sin(phi) * f.up);
}

TEST(CrackField, StressAheadOfTheTipIsOneOverRootTwoPiRho)
{
    // The definition of the three factors. r is up and z is backward here, so sliding shear in (forward, up) is -rz.
    const double rho = 0.7, expected = 1 / std::sqrt(2 * std::numbers::pi * rho);
    const auto stress = [&](CrackMode mode)
    { return plane_stress_of(crack_field(mode, steel, frame(), place_at(rho, 0))); };
    EXPECT_NEAR(stress(CrackMode::opening)(0, 0), expected, 1e-12);
    EXPECT_NEAR(stress(CrackMode::sliding)(0, 2), -expected, 1e-12);
    EXPECT_NEAR(stress(CrackMode::tearing)(0, 1), expected, 1e-12);
}

TEST(CrackField, FacesAreFreeOfTraction)
{
    for (const CrackMode mode : modes)
        for (const double phi : {std::numbers::pi - 1e-12, -std::numbers::pi + 1e-12})
        {
            const Eigen::Matrix3d stress = plane_stress_of(crack_field(mode, steel, frame(), place_at(0.4, phi)));
            EXPECT_NEAR(stress.col(0).norm(), 0, 1e-10);
        }
}

TEST(CrackField, SlopesAreTheDerivativesOfTheDisplacement)
{
    const double h =
        1e-5;  // central differences: error h^2 of fields whose third derivatives are of order one in units of G
    for (const CrackMode mode : modes)
        for (const double phi : {-2.5, -0.3, 1.1, 2.9})
        {
            const Eigen::Vector2d at = place_at(0.9, phi);
            const SectionField field = crack_field(mode, steel, frame(), at);
            for (int c = 0; c < 2; ++c)
            {
                const Eigen::Vector2d step = c == 0 ? Eigen::Vector2d(0, h) : Eigen::Vector2d(h, 0);
                const Eigen::Vector3d difference = (crack_field(mode, steel, frame(), at + step).value -
                                                    crack_field(mode, steel, frame(), at - step).value) /
                                                   (2 * h);
                EXPECT_NEAR((field.gradient.col(c) - difference).norm() * steel.G(), 0, 1e-8);
            }
        }
}

TEST(CrackField, PlaneStressIsInBalance)
{
    const double h = 1e-4;  // central differences of the stress: error h^2 = 1e-8 times its third derivative
    for (const CrackMode mode : modes)
    {
        const Eigen::Vector2d at = place_at(0.9, 1.3);
        const auto stress = [&](double dr, double dz)
        { return plane_stress_of(crack_field(mode, steel, frame(), at + Eigen::Vector2d(dz, dr))); };
        const Eigen::Vector3d divergence =
            (stress(h, 0).col(0) - stress(-h, 0).col(0) + stress(0, h).col(2) - stress(0, -h).col(2)) / (2 * h);
        EXPECT_NEAR(divergence.norm(), 0, 1e-6);
    }
}

}  // namespace
}  // namespace splicewright
