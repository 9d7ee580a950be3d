// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_turn.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace splicewright
{
namespace
{

using Stress6 = Turning::Stress;
constexpr int angles_of_turn = 120;      // as site_peak
constexpr int angles_of_principal = 40;  // within 1 - cos 4.5 deg, 0.3 %, of the part of bending

// The quadratic form of von Mises between two stresses; of one with itself the square of its equivalent stress.
double mises_product(const Stress6& a, const Stress6& b)
{
    return a(0) * b(0) + a(1) * b(1) + a(2) * b(2) -
           (a(0) * b(1) + a(1) * b(0) + a(1) * b(2) + a(2) * b(1) + a(0) * b(2) + a(2) * b(0)) / 2 +
           3 * (a(3) * b(3) + a(4) * b(4) + a(5) * b(5));
}

const std::array<std::array<double, 2>, angles_of_turn>& turn()
{
    static const auto angles = []
    {
        std::array<std::array<double, 2>, angles_of_turn> made{};
        for (std::size_t k = 0; k < made.size(); ++k)
        {
            const double theta = 2 * std::numbers::pi * static_cast<double>(k) / angles_of_turn;
            made[k] = {std::cos(theta), std::sin(theta)};
        }
        return made;
    }();
    return angles;
}

}  // namespace

double worst_von_mises(const Turning& stress)
{
    const auto& [steady, x, y] = stress;
    const double still = mises_product(steady, steady), sx = mises_product(steady, x), sy = mises_product(steady, y),
                 xx = mises_product(x, x), yy = mises_product(y, y), xy = mises_product(x, y);
    if (xx == 0 && yy == 0) return std::sqrt(still);
    double worst = 0;
    for (const auto& [c, s] : turn())
        worst = std::max(worst, still + 2 * (c * sx + s * sy) + c * c * xx + s * s * yy + 2 * c * s * xy);
    return std::sqrt(worst);
}

double worst_principal(const Turning& stress)
{
    const auto& [steady, x, y] = stress;
    double worst = 0;
    const bool is_steady = x.isZero(0) && y.isZero(0);
    constexpr std::size_t step = angles_of_turn / angles_of_principal;
    for (std::size_t k = 0; k < turn().size(); k += is_steady ? turn().size() : step)
    {
        const Stress6 s = steady + turn()[k][0] * x + turn()[k][1] * y;
        Eigen::Matrix3d tensor;
        tensor << s(0), s(3), s(5), s(3), s(1), s(4), s(5), s(4), s(2);
        const Eigen::Vector3d principal = Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d>()
                                              .computeDirect(tensor, Eigen::EigenvaluesOnly)
                                              .eigenvalues();
        for (const double one : {principal(0), principal(2)})
            if (std::abs(one) > std::abs(worst)) worst = one;
    }
    return worst;
}

double worst_shear(const Turning& stress, const Eigen::Vector3d& place)
{
    const double r = std::hypot(place.x(), place.y());
    const double c = r > 0 ? place.x() / r : 1, s = r > 0 ? place.y() / r : 0;
    const auto around = [&](const Stress6& at)
    { return Eigen::Vector2d(c * s * (at(1) - at(0)) + (c * c - s * s) * at(3), c * at(4) - s * at(5)); };
    const Eigen::Vector2d steady = around(stress.steady), x = around(stress.x), y = around(stress.y);
    double worst = 0;
    for (const auto& [cos, sin] : turn()) worst = std::max(worst, (steady + cos * x + sin * y).squaredNorm());
    return std::sqrt(worst);
}

}  // namespace splicewright
