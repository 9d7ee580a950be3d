// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/crack_fields.h"

#include <cmath>
#include <numbers>

namespace splicewright
{
namespace
{

// Angular functions of the displacement sqrt(rho / 2 pi) / (2 G) f(phi), and their derivatives.
// Rows forward, up, along the front.
struct AngularFunctions
{
    Eigen::Vector3d f, df;
};

AngularFunctions angular_functions(CrackMode mode, double kappa, double phi)
{
    const double s = std::sin(phi / 2), c = std::cos(phi / 2), sine = std::sin(phi), cosine = std::cos(phi);
    switch (mode)
    {
        case CrackMode::opening:
            return {{c * (kappa - cosine), s * (kappa - cosine), 0},
                    {-s * (kappa - cosine) / 2 + c * sine, c * (kappa - cosine) / 2 + s * sine, 0}};
        case CrackMode::sliding:
            return {{s * (kappa + 2 + cosine), -c * (kappa - 2 + cosine), 0},
                    {c * (kappa + 2 + cosine) / 2 - s * sine, s * (kappa - 2 + cosine) / 2 + c * sine, 0}};
        case CrackMode::tearing: return {{0, 0, 4 * s}, {0, 0, 2 * c}};
    }
    return {};
}

}  // namespace

SectionField crack_field(CrackMode mode, const ElasticConstants& steel, const CrackFrame& frame, Eigen::Vector2d place)
{
    const double x = (place - frame.tip).dot(frame.forward), y = (place - frame.tip).dot(frame.up);
    const double rho = std::hypot(x, y), phi = std::atan2(y, x);
    const double kappa = 3 - 4 * steel.nu;
    const AngularFunctions angular = angular_functions(mode, kappa, phi);
    const double scale = std::sqrt(rho / (2 * std::numbers::pi)) / (2 * steel.G());
    const Eigen::Vector3d local = scale * angular.f;
    const Eigen::Vector3d along_x = scale / rho * (angular.f / 2 * std::cos(phi) - angular.df * std::sin(phi));
    const Eigen::Vector3d along_y = scale / rho * (angular.f / 2 * std::sin(phi) + angular.df * std::cos(phi));

    Eigen::Matrix3d turned = Eigen::Matrix3d::Zero();  // from forward, up, front to r, theta, z
    turned << frame.forward(1), frame.up(1), 0, 0, 0, 1, frame.forward(0), frame.up(0), 0;
    SectionField field;
    field.value = turned * local;
    field.gradient.col(0) = turned * (along_x * frame.forward(1) + along_y * frame.up(1));
    field.gradient.col(1) = turned * (along_x * frame.forward(0) + along_y * frame.up(0));
    return field;
}

}  // namespace splicewright
