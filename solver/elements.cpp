// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/elements.h"

#include <Eigen/LU>
#include <numbers>

namespace splicewright
{

double theta_weight(LoadKind kind) { return kind == LoadKind::bending ? std::numbers::pi : 2 * std::numbers::pi; }

StrainAt strain_at(LoadKind kind, const TriangleNodes& nodes, ReferencePoint at)
{
    const ShapeValues N = shape_values(at);
    const ShapeGradients dN = shape_gradients(at);
    const Eigen::Matrix2d J = nodes * dN;
    const Eigen::Matrix<double, 6, 2> dN_dx = dN * J.inverse();  // columns d/dz, d/dr
    StrainAt result;
    result.radius = nodes.row(1) * N;
    result.jacobian = J.determinant();
    const int n = unknowns_per_node(kind);
    result.B.setZero(6, 6 * n);
    for (int i = 0; i < 6; ++i)
    {
        const double dz = dN_dx(i, 0), dr = dN_dx(i, 1), over_r = N(i) / result.radius;
        switch (kind)
        {
            case LoadKind::torsion:
                result.B(3, i) = dr - over_r;
                result.B(4, i) = dz;
                break;
            case LoadKind::axial:
                result.B(0, 2 * i) = dr;
                result.B(1, 2 * i) = over_r;
                result.B(2, 2 * i + 1) = dz;
                result.B(5, 2 * i) = dz;
                result.B(5, 2 * i + 1) = dr;
                break;
            case LoadKind::bending:
                result.B(0, 3 * i) = dr;
                result.B(1, 3 * i) = over_r;
                result.B(1, 3 * i + 1) = over_r;
                result.B(2, 3 * i + 2) = dz;
                result.B(3, 3 * i) = -over_r;
                result.B(3, 3 * i + 1) = dr - over_r;
                result.B(4, 3 * i + 1) = dz;
                result.B(4, 3 * i + 2) = -over_r;
                result.B(5, 3 * i) = dz;
                result.B(5, 3 * i + 2) = dr;
                break;
        }
    }
    return result;
}

Eigen::Matrix<double, 6, 1> stress_of(const ElasticConstants& steel, const Eigen::Matrix<double, 6, 1>& strain)
{
    const double lambda = steel.E * steel.nu / ((1 + steel.nu) * (1 - 2 * steel.nu));
    const double G = steel.G(), volume = strain.head<3>().sum();
    Eigen::Matrix<double, 6, 1> stress = G * strain;
    for (int i = 0; i < 3; ++i) stress(i) = lambda * volume + 2 * G * strain(i);
    return stress;
}

namespace
{

// Adds the blocks of all pairs of nodes on and below the diagonal. n: unknowns per node.
template <int n>
void add_lower_blocks(ElementMatrix& K, const StrainMatrix& B, double lambda, double G)
{
    for (int j = 0; j < 6; ++j)
    {
        const Eigen::Matrix<double, 6, n> right = B.middleCols<n>(n * j);
        Eigen::Matrix<double, 6, n> stress = G * right;
        stress.template topRows<3>() += G * right.template topRows<3>();
        stress.template topRows<3>().rowwise() += lambda * right.template topRows<3>().colwise().sum();
        for (int i = j; i < 6; ++i)
            K.block<n, n>(n * i, n * j).noalias() += B.middleCols<n>(n * i).transpose().lazyProduct(stress);
    }
}

}  // namespace

ElementMatrix element_stiffness(LoadKind kind, const ElasticConstants& steel, const TriangleNodes& nodes)
{
    const int n = 6 * unknowns_per_node(kind);
    ElementMatrix K = ElementMatrix::Zero(n, n);
    const double lambda = steel.E * steel.nu / ((1 + steel.nu) * (1 - 2 * steel.nu)), G = steel.G();
    for (const QuadraturePoint& point : quadrature())
    {
        const StrainAt strain = strain_at(kind, nodes, point.at);
        const double weight = theta_weight(kind) * point.weight * strain.jacobian * strain.radius;
        switch (kind)
        {
            case LoadKind::torsion: add_lower_blocks<1>(K, strain.B, weight * lambda, weight * G); break;
            case LoadKind::axial: add_lower_blocks<2>(K, strain.B, weight * lambda, weight * G); break;
            case LoadKind::bending: add_lower_blocks<3>(K, strain.B, weight * lambda, weight * G); break;
        }
    }
    K.triangularView<Eigen::StrictlyUpper>() = K.transpose();
    return K;
}

}  // namespace splicewright
