// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <vector>

#include "post/drawn_section.h"
#include "solver/stress_field.h"

namespace splicewright
{

// The body of revolution: x = r cos(theta), y = r sin(theta), z along the shaft; theta = 0 is the tension side of
// bending.

// Second-order wedges in VTK's node order. Each region node makes its own points, so that faces which touch without
// being joined stay apart; the points of a node on the axis are one.
struct RevolvedBody
{
    Eigen::Matrix3Xd point;                        // [3, n_points] mm
    std::vector<int> region_node;                  // [n_points]
    std::vector<double> theta;                     // [n_points] rad; 0 on the axis
    Eigen::Matrix<int, 15, Eigen::Dynamic> wedge;  // [15, n_wedges]
    std::vector<int> region;                       // [n_wedges] mesh region
};

constexpr int n_revolved_sectors = 24;  // wedges around; a quadratic edge over 15 degrees leaves its circle by 4e-5 r

RevolvedBody revolved(const SolvedFields& fields, int n_sectors);

// Tensor components xx yy zz xy yz xz of rr tt zz rt tz rz at theta, and a vector of (r, theta, z) components.
StressColumn cartesian_stress(const StressColumn& stress, double theta_rad);
Eigen::Vector3d cartesian_vector(const Eigen::Vector3d& vector, double theta_rad);

// Values at the points of the body for a combination of loads.
struct RevolvedFields
{
    Eigen::Matrix<double, 6, Eigen::Dynamic> stress;  // xx yy zz xy yz xz, MPa
    Eigen::VectorXd von_mises;                        // MPa
    Eigen::Matrix3Xd displacement;                    // x y z, mm
};
// On the axis the Cartesian components are the mean over theta: there the field has one value.
RevolvedFields revolved_fields(const SolvedFields& fields, const CombinedLoad& load, const RevolvedBody& body);

// A surface of straight triangles with a value at each point.
struct ShadedSurface
{
    std::vector<Eigen::Vector3d> point, normal;
    std::vector<double> value;  // MPa
    std::vector<std::array<int, 3>> triangle;
};

// The section's skin swept from one angle to another; von Mises stress at each angle.
ShadedSurface swept(const DrawnSection& section, double theta_from, double theta_to, int n_steps);
// The two flat faces at the ends of that sweep, facing away from the swept body.
ShadedSurface cut_faces(const DrawnSection& section, double theta_from, double theta_to);
// The section itself in the plane of z and r, with the worst-angle stress.
ShadedSurface flat(const DrawnSection& section);

}  // namespace splicewright
