// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/revolve.h"

#include <cmath>
#include <numbers>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr double axis_radius = 1e-9;  // mm, below it a node lies on the axis

Eigen::Vector3d in_space(const Eigen::Vector2d& place, double theta)
{
    return {place(1) * std::cos(theta), place(1) * std::sin(theta), place(0)};
}

// Points of each region node around: at every half sector for corners, at whole sectors for the middles of edges,
// one on the axis.
struct Ring
{
    int first = 0, n_points = 0;
};

std::vector<Ring> rings(const SolvedFields& fields, int n_sectors)
{
    const RegionNodes& nodes = fields.region_nodes;
    std::vector<Ring> ring(nodes.node.size());
    for (Eigen::Index t = 0; t < nodes.triangle.cols(); ++t)
        for (int k = 0; k < 6; ++k)
            ring[std::size_t(nodes.triangle(k, t))].n_points = k < 3 ? 2 * n_sectors : n_sectors;
    int total = 0;
    for (std::size_t i = 0; i < ring.size(); ++i)
    {
        ring[i].first = total;
        if (fields.mesh.node(1, nodes.node[i]) <= axis_radius) ring[i].n_points = 1;
        total += ring[i].n_points;
    }
    return ring;
}

// Point of a ring at `half` half sectors.
int point_at(const Ring& ring, int half, int n_sectors)
{
    if (ring.n_points == 1) return ring.first;
    const int around = half % (2 * n_sectors);
    return ring.first + (ring.n_points == n_sectors ? around / 2 : around);
}

// `facing` is +1 or -1: the normal along or against the direction of theta; triangles turn with their normal.
void append_cut_face(ShadedSurface& surface, const DrawnSection& section, double theta, double facing)
{
    const auto offset = static_cast<int>(surface.point.size());
    const Eigen::Vector3d normal = facing * Eigen::Vector3d(-std::sin(theta), std::cos(theta), 0);
    for (const DrawnVertex& vertex : section.vertex)
    {
        surface.point.push_back(in_space(vertex.place, theta));
        surface.normal.push_back(normal);
        surface.value.push_back(von_mises_at(vertex, theta));
    }
    for (const auto& [a, b, c] : section.triangle)
        surface.triangle.push_back({a + offset, (facing > 0 ? b : c) + offset, (facing > 0 ? c : b) + offset});
}

void append_band(ShadedSurface& surface, const DrawnVertex& from, const DrawnVertex& to,
                 const std::vector<double>& theta)
{
    const Eigen::Vector2d along = to.place - from.place;
    if (along.norm() < 1e-12) return;
    const Eigen::Vector2d outward = Eigen::Vector2d(along(1), -along(0)).normalized();
    const auto offset = static_cast<int>(surface.point.size());
    for (const double angle : theta)
        for (const DrawnVertex* vertex : {&from, &to})
        {
            surface.point.push_back(in_space(vertex->place, angle));
            surface.normal.push_back(in_space(outward, angle));
            surface.value.push_back(von_mises_at(*vertex, angle));
        }
    for (int k = 0; k + 1 < static_cast<int>(theta.size()); ++k)
    {
        const int p = offset + 2 * k;
        surface.triangle.push_back({p, p + 1, p + 2});
        surface.triangle.push_back({p + 1, p + 3, p + 2});
    }
}

}  // namespace

RevolvedBody revolved(const SolvedFields& fields, int n_sectors)
{
    EXPECTS(n_sectors >= 3);
    const RegionNodes& nodes = fields.region_nodes;
    const std::vector<Ring> ring = rings(fields, n_sectors);
    RevolvedBody body;
    std::vector<Eigen::Vector3d> points;
    for (std::size_t i = 0; i < ring.size(); ++i)
    {
        const int n = ring[i].n_points;
        for (int k = 0; k < n; ++k)
        {
            const double theta = 2 * std::numbers::pi * k / n;
            points.push_back(in_space(fields.mesh.node.col(nodes.node[i]), theta));
            body.region_node.push_back(static_cast<int>(i));
            body.theta.push_back(theta);
        }
    }
    body.point.resize(3, static_cast<Eigen::Index>(points.size()));
    for (std::size_t i = 0; i < points.size(); ++i) body.point.col(static_cast<Eigen::Index>(i)) = points[i];

    const Eigen::Index n_triangles = nodes.triangle.cols();
    body.wedge.resize(15, n_triangles * n_sectors);
    // The first triangle of a wedge faces away from the second: it is the one at the greater angle.
    // As VTK 9.1 documents its quadratic wedge.
    for (Eigen::Index t = 0; t < n_triangles; ++t)
        for (int sector = 0; sector < n_sectors; ++sector)
        {
            auto wedge = body.wedge.col(t * n_sectors + sector);
            const auto node = [&](int k, int half)
            { return point_at(ring[std::size_t(nodes.triangle(k, t))], 2 * sector + half, n_sectors); };
            for (int k = 0; k < 3; ++k)
            {
                wedge(k) = node(k, 2);
                wedge(3 + k) = node(k, 0);
                wedge(6 + k) = node(3 + k, 2);
                wedge(9 + k) = node(3 + k, 0);
                wedge(12 + k) = node(k, 1);
            }
            body.region.push_back(fields.mesh.region_of[std::size_t(t)]);
        }
    return body;
}

RevolvedFields revolved_fields(const SolvedFields& fields, const CombinedLoad& load, const RevolvedBody& body)
{
    const auto steady = combined_stress(fields, {load.torque, 0, load.axial, load.press}, 0);
    const Eigen::Matrix3Xd still = combined_displacement(fields, {load.torque, 0, load.axial, load.press}, 0);
    const auto n_points = body.point.cols();
    RevolvedFields result{{6, n_points}, {}, {3, n_points}};
    const auto stress_at = [&](int i, double theta)
    {
        const double c = load.bending * std::cos(theta), s = load.bending * std::sin(theta);
        StressColumn phase;
        phase << c, c, c, s, s, c;
        return cartesian_stress(steady.col(i) + phase.cwiseProduct(fields.bending.value.col(i)), theta);
    };
    const auto displacement_at = [&](int node, double theta)
    {
        const double c = load.bending * std::cos(theta), s = load.bending * std::sin(theta);
        const Eigen::Vector3d bent = fields.bending_displacement.value.col(node);
        return cartesian_vector(still.col(node) + Eigen::Vector3d(c * bent(0), s * bent(1), c * bent(2)), theta);
    };
    constexpr int n_mean = 8;  // exact for harmonics up to 3; the products here reach 3
    for (Eigen::Index p = 0; p < n_points; ++p)
    {
        const int i = body.region_node[std::size_t(p)], node = fields.region_nodes.node[std::size_t(i)];
        const bool is_on_axis = fields.mesh.node(1, node) <= axis_radius;
        StressColumn stress = StressColumn::Zero();
        Eigen::Vector3d displacement = Eigen::Vector3d::Zero();
        const int n_angles = is_on_axis ? n_mean : 1;
        for (int k = 0; k < n_angles; ++k)
        {
            const double theta = body.theta[std::size_t(p)] + 2 * std::numbers::pi * k / n_angles;
            stress += stress_at(i, theta) / n_angles;
            displacement += displacement_at(node, theta) / n_angles;
        }
        result.stress.col(p) = stress;
        result.displacement.col(p) = displacement;
    }
    result.von_mises = von_mises(result.stress);
    return result;
}

StressColumn cartesian_stress(const StressColumn& stress, double theta_rad)
{
    const double c = std::cos(theta_rad), s = std::sin(theta_rad);
    const double rr = stress(0), tt = stress(1), zz = stress(2), rt = stress(3), tz = stress(4), rz = stress(5);
    StressColumn result;
    result << c * c * rr + s * s * tt - 2 * c * s * rt, s * s * rr + c * c * tt + 2 * c * s * rt, zz,
        c * s * (rr - tt) + (c * c - s * s) * rt, s * rz + c * tz, c * rz - s * tz;
    return result;
}

Eigen::Vector3d cartesian_vector(const Eigen::Vector3d& vector, double theta_rad)
{
    const double c = std::cos(theta_rad), s = std::sin(theta_rad);
    return {c * vector(0) - s * vector(1), s * vector(0) + c * vector(1), vector(2)};
}

ShadedSurface swept(const DrawnSection& section, double theta_from, double theta_to, int n_steps)
{
    EXPECTS(n_steps >= 1 && theta_to > theta_from);
    ShadedSurface surface;
    std::vector<double> theta;
    for (int i = 0; i <= n_steps; ++i) theta.push_back(theta_from + (theta_to - theta_from) * i / n_steps);
    for (const auto& [a, b] : section.skin)
        append_band(surface, section.vertex[std::size_t(a)], section.vertex[std::size_t(b)], theta);
    return surface;
}

ShadedSurface cut_faces(const DrawnSection& section, double theta_from, double theta_to)
{
    ShadedSurface surface;
    append_cut_face(surface, section, theta_from, -1);
    append_cut_face(surface, section, theta_to, +1);
    return surface;
}

ShadedSurface flat(const DrawnSection& section)
{
    ShadedSurface surface;
    for (const DrawnVertex& vertex : section.vertex)
    {
        surface.point.emplace_back(vertex.place(0), vertex.place(1), 0);
        surface.normal.emplace_back(0, 0, 1);
        surface.value.push_back(vertex.worst);
    }
    surface.triangle = section.triangle;
    return surface;
}

}  // namespace splicewright
