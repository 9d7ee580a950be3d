// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <functional>
#include <string>
#include <vector>

#include "mesh/mesh.h"
#include "mesh/outline.h"
#include "solver/elements.h"

namespace splicewright::sample
{

constexpr ElasticConstants plain_steel{210000, 0.3};

// Rectangle z 0..length, r inner..outer in n_r layers of triangles, diagonals alternating, curves "end.left",
// "end.right", "bar.left" and "axis" or "bore".
Mesh grid(double inner, double outer, double length, int n_r);

// Half ring between two spheres of the given radii about the origin, middles of edges on the true circles;
// curve "cavity" on the inner one.
Mesh half_ring(double inner, double outer, int n);

enum class Edges
{
    straight,
    bent,
};
// Inner nodes moved by up to `share` of the shortest edge, in a fixed pattern; nodes on the boundary stay.
Mesh distorted(Mesh mesh, double share, Edges edges);

std::vector<bool> on_boundary(const Mesh& mesh);

// Amplitudes u_r, u_theta, u_z at a point (z, r).
using Field = std::function<Eigen::Vector3d(double z, double r)>;

// Unknowns of a load kind from a field.
Eigen::VectorXd nodal(const Mesh& mesh, LoadKind kind, const Field& field);

// Displacement with the field given on the whole boundary (axis included) but the curve named, which is free.
Eigen::VectorXd solved_inside(const Mesh& mesh, LoadKind kind, const ElasticConstants& steel, const Field& field,
                              const std::string& free_curve = "");

// Strain amplitudes of a field by fourth-order central differences, engineering shears, rows as strain_at.
Eigen::Matrix<double, 6, 1> strain_of(LoadKind kind, const Field& field, double z, double r);

// Bar z -length..length of the given radius with a spherical cavity at the origin.
Outline bar_with_cavity(double cavity_radius, double bar_radius, double length);

// Slope of log(error) over log(size), least squares.
double observed_order(const std::vector<double>& size, const std::vector<double>& error);

}  // namespace splicewright::sample
