// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/elements.h"

#include <Eigen/LU>
#include <array>
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

using NodePairs = Eigen::Matrix<double, 6, 6>;

// Sums over the quadrature points of products of d/dr, N/r and d/dz of two shape functions, with the weights of the
// ring: every entry of every stiffness is a combination of them.
struct ShapeProducts
{
    NodePairs rr = NodePairs::Zero(), ro = NodePairs::Zero(), oo = NodePairs::Zero(), zz = NodePairs::Zero(),
              rz = NodePairs::Zero(), oz = NodePairs::Zero();
};

struct ShapesAtPoint
{
    ShapeValues N;
    ShapeGradients dN;
    double weight = 0;
};

const std::array<ShapesAtPoint, 7>& shapes_at_points()
{
    static const std::array<ShapesAtPoint, 7> shapes = []
    {
        std::array<ShapesAtPoint, 7> all;
        for (std::size_t i = 0; i < all.size(); ++i)
            all[i] = {shape_values(quadrature()[i].at), shape_gradients(quadrature()[i].at), quadrature()[i].weight};
        return all;
    }();
    return shapes;
}

ShapeProducts shape_products(const TriangleNodes& nodes, double theta)
{
    using Values = Eigen::Matrix<double, 6, 1>;
    ShapeProducts sum;
    for (const ShapesAtPoint& shapes : shapes_at_points())
    {
        const Eigen::Matrix2d J = nodes * shapes.dN;
        const Eigen::Matrix<double, 6, 2> dN_dx = shapes.dN * J.inverse();
        const double radius = nodes.row(1) * shapes.N;
        const Values z = dN_dx.col(0), r = dN_dx.col(1), o = shapes.N / radius;
        const double weight = theta * shapes.weight * J.determinant() * radius;
        const Values wz = weight * z, wr = weight * r, wo = weight * o;
        sum.rr.noalias() += wr * r.transpose();
        sum.ro.noalias() += wr * o.transpose();
        sum.oo.noalias() += wo * o.transpose();
        sum.zz.noalias() += wz * z.transpose();
        sum.rz.noalias() += wr * z.transpose();
        sum.oz.noalias() += wo * z.transpose();
    }
    return sum;
}

// Puts the entries of one component of the displacement with another one in their places, and their mirror image.
template <int n>
void put(ElementMatrix& K, int row, int column, const NodePairs& pairs)
{
    for (int j = 0; j < 6; ++j)
        for (int i = 0; i < 6; ++i)
        {
            K(n * i + row, n * j + column) = pairs(i, j);
            K(n * j + column, n * i + row) = pairs(i, j);
        }
}

}  // namespace

ElementMatrix element_stiffness(LoadKind kind, const ElasticConstants& steel, const TriangleNodes& nodes)
{
    // Products of the rows of strain_at, with M = lambda + 2 G for equal normal strains and lambda for unequal ones.
    const double lambda = steel.E * steel.nu / ((1 + steel.nu) * (1 - 2 * steel.nu)), G = steel.G(), M = lambda + 2 * G;
    const auto [rr, ro, oo, zz, rz, oz] = shape_products(nodes, theta_weight(kind));
    const int n = 6 * unknowns_per_node(kind);
    ElementMatrix K(n, n);
    const NodePairs twist = rr - (ro + ro.transpose()) + oo + zz;
    const NodePairs radial = M * (rr + oo) + lambda * (ro + ro.transpose()) + G * zz;
    const NodePairs radial_axial = lambda * (rz + oz) + G * rz.transpose();
    switch (kind)
    {
        case LoadKind::torsion: K = G * twist; break;
        case LoadKind::axial:
            put<2>(K, 0, 0, radial);
            put<2>(K, 0, 1, radial_axial);
            put<2>(K, 1, 1, M * zz + G * rr);
            break;
        case LoadKind::bending:
            put<3>(K, 0, 0, radial + G * oo);
            put<3>(K, 0, 1, lambda * ro + M * oo - G * (ro.transpose() - oo));
            put<3>(K, 0, 2, radial_axial);
            put<3>(K, 1, 1, M * oo + G * twist);
            put<3>(K, 1, 2, lambda * oz - G * oz.transpose());
            put<3>(K, 2, 2, M * zz + G * (oo + rr));
            break;
    }
    return K;
}

}  // namespace splicewright
