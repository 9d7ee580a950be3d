// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/exact_solids.h"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "solver/solid_face.h"
#include "solver/solid_loads.h"

namespace splicewright::exact
{

namespace
{

using regular::box;
using regular::Curving;
using regular::everywhere;
using regular::hold;
using regular::kept_part;
using regular::move_nodes;
using regular::round_bar;

constexpr double pi = std::numbers::pi;
constexpr double pressure = 100;  // MPa
constexpr double torque = 1e5;    // N mm
const ElasticConstants steel{210000, 0.3};

// Radial and hoop stress turned from the direction of p, across z.
Stress6 turned(const Eigen::Vector3d& p, double radial, double hoop, double shear, double axial)
{
    const double r = p.head<2>().norm(), c = p.x() / r, s = p.y() / r;
    return {radial * c * c + hoop * s * s - 2 * shear * s * c,
            radial * s * s + hoop * c * c + 2 * shear * s * c,
            axial,
            (radial - hoop) * s * c + shear * (c * c - s * s),
            0,
            0};
}

// Quarter ring of thickness z: x of the box is the radius, y the angle.
SolidMesh quarter_ring(int n, double inner, double outer, double thick)
{
    SolidMesh mesh = box({1, 1, thick, n, 2 * n, 1});
    move_nodes(mesh,
               [&](const Eigen::Vector3d& p)
               {
                   const double r = inner + (outer - inner) * p.x(), turn = pi / 2 * p.y();
                   return Eigen::Vector3d(r * std::cos(turn), r * std::sin(turn), p.z());
               });
    return mesh;
}

int plane_strain_axes(const Eigen::Vector3d& p, double thick)
{
    const double small = 1e-9;
    return (std::abs(p.x()) < small ? 1 : 0) + (std::abs(p.y()) < small ? 2 : 0) +
           (std::abs(p.z()) < small || std::abs(p.z() - thick) < small ? 4 : 0);
}

ExactBody loaded_bar(int n, const FaceLoad& right)
{
    ExactBody made;
    made.face = "outside";
    made.mesh = round_bar({10, 60, 2 * n, 6 * n, Curving::skin});
    made.body.steel = {steel};
    made.load = face_forces(made.mesh, "right", right) + face_forces(made.mesh, "left", {-right.force, -right.moment});
    made.counts = [](const Eigen::Vector3d& p) { return p.z() > 10 && p.z() < 50; };
    return made;
}

}  // namespace

NodeForces tractions(const SolidMesh& mesh, const std::string& face,
                     const std::function<Stress6(const Eigen::Vector3d&)>& stress)
{
    NodeForces forces = NodeForces::Zero(3, static_cast<Eigen::Index>(mesh.nodes.size()));
    for (const SolidMesh::Face& on : mesh.faces.at(face))
        for (const QuadraturePoint& q : quadrature())
        {
            const FacePoint point = face_point(splicewright::nodes_of(mesh, on), q.at);
            const Stress6 s = stress(point.place);
            const Eigen::Matrix3d tensor{{s(0), s(3), s(5)}, {s(3), s(1), s(4)}, {s(5), s(4), s(2)}};
            const ShapeValues N = shape_values(q.at);
            for (int i = 0; i < 6; ++i)
                forces.col(on.nodes[static_cast<std::size_t>(i)]) += q.weight * N(i) * (tensor * point.area);
        }
    return forces;
}

// Source: [TimoshenkoGoodier1970] article 28.
ExactBody thick_cylinder(int n, double inner, double outer)
{
    const double thick = (outer - inner) / n;
    ExactBody made{"thick cylinder", "x0", pressure, quarter_ring(n, inner, outer, thick), {}, {}, {}, everywhere};
    made.body.steel = {steel};
    hold(made.body, made.mesh, [&](const Eigen::Vector3d& p) { return plane_strain_axes(p, thick); });
    made.load = pressure_forces(made.mesh, "x0", pressure);
    const double hoop = pressure * (outer * outer + inner * inner) / (outer * outer - inner * inner);
    made.stress = [=](const Eigen::Vector3d& p) { return turned(p, -pressure, hoop, 0, steel.nu * (hoop - pressure)); };
    return made;
}

// An eighth of it: the outer half of a cube blown up to a ball. Source: [TimoshenkoGoodier1970] article 136.
ExactBody thick_sphere(int n, double inner, double outer)
{
    ExactBody made{"thick sphere", "inside", pressure, {}, {}, {}, {}, everywhere};
    made.mesh = kept_part(box({1, 1, 1, 2 * n, 2 * n, 2 * n}), "inside",
                          [](const Eigen::Vector3d& p) { return p.maxCoeff() > 0.5; });
    move_nodes(made.mesh,
               [&](const Eigen::Vector3d& p) -> Eigen::Vector3d
               {
                   const double part = 2 * p.maxCoeff() - 1;
                   // Lines of the cube at equal angles.
                   const Eigen::Vector3d q = (pi / 4 * p / p.maxCoeff()).array().tan();
                   return (inner + (outer - inner) * part) * q.normalized();
               });
    made.body.steel = {steel};
    hold(made.body, made.mesh,
         [](const Eigen::Vector3d& p)
         { return (p.x() < 1e-9 ? 1 : 0) + (p.y() < 1e-9 ? 2 : 0) + (p.z() < 1e-9 ? 4 : 0); });
    made.load = pressure_forces(made.mesh, "inside", pressure);
    const double a3 = std::pow(inner, 3), b3 = std::pow(outer, 3);
    const double hoop = pressure * a3 / (b3 - a3) * (1 + b3 / (2 * a3));
    made.stress = [=](const Eigen::Vector3d& p) -> Stress6
    {
        const Eigen::Vector3d e = p.normalized();
        const Eigen::Matrix3d s = hoop * Eigen::Matrix3d::Identity() - (hoop + pressure) * e * e.transpose();
        return {s(0, 0), s(1, 1), s(2, 2), s(0, 1), s(1, 2), s(0, 2)};
    };
    return made;
}

// A wide plate with a round hole, cut out round and loaded there by the exact stress.
// Source: [TimoshenkoGoodier1970] article 35.
ExactBody plate_with_hole(int n, double nu)
{
    constexpr double a = 10, outer = 40, S = pressure;
    const double thick = 20.0 / n;
    ExactBody made{"plate with a hole", "x0", 0, box({1, 1, thick, 2 * n, 2 * n, 1}), {}, {}, {}, everywhere};
    move_nodes(made.mesh,
               [&](const Eigen::Vector3d& p)
               {
                   const double r = a * std::pow(outer / a, p.x()), turn = pi / 2 * p.y();
                   return Eigen::Vector3d(r * std::cos(turn), r * std::sin(turn), p.z());
               });
    made.body.steel = {{210000, nu}};
    hold(made.body, made.mesh, [&](const Eigen::Vector3d& p) { return plane_strain_axes(p, thick); });
    made.stress = [=](const Eigen::Vector3d& p)
    {
        const double q = a * a / p.head<2>().squaredNorm(), turn = 2 * std::atan2(p.y(), p.x());
        const double radial = S / 2 * (1 - q) + S / 2 * (1 + 3 * q * q - 4 * q) * std::cos(turn);
        const double hoop = S / 2 * (1 + q) - S / 2 * (1 + 3 * q * q) * std::cos(turn);
        const double shear = -S / 2 * (1 - 3 * q * q + 2 * q) * std::sin(turn);
        return turned(p, radial, hoop, shear, nu * (radial + hoop));
    };
    made.load = tractions(made.mesh, "x1", made.stress);
    return made;
}

ExactBody twisted_bar(int n)
{
    ExactBody made = loaded_bar(n, {{0, 0, 0}, {0, 0, torque}});
    made.name = "twisted bar";
    made.stress = [](const Eigen::Vector3d& p) -> Stress6
    {
        const double rate = torque / (pi / 2 * 1e4);
        return {0, 0, 0, 0, rate * p.x(), -rate * p.y()};
    };
    return made;
}

ExactBody bent_bar(int n)
{
    ExactBody made = loaded_bar(n, {{0, 0, 0}, {torque, 0, 0}});
    made.name = "bent bar";
    made.stress = [](const Eigen::Vector3d& p) -> Stress6 { return {0, 0, torque * p.y() / (pi / 4 * 1e4), 0, 0, 0}; };
    return made;
}

// Source: [TimoshenkoGoodier1970] article 105.
ExactBody twisted_ellipse(int n)
{
    constexpr double a = 12, b = 8, length = 72;
    ExactBody made{"twisted ellipse",
                   "outside",
                   0,
                   round_bar({1, length, 2 * n, 6 * n, Curving::skin}),
                   {},
                   {},
                   {},
                   [](const Eigen::Vector3d& p) { return p.z() > 30 && p.z() < 42; }};
    move_nodes(made.mesh, [](const Eigen::Vector3d& p) { return Eigen::Vector3d(a * p.x(), b * p.y(), p.z()); });
    made.body.steel = {steel};
    made.stress = [](const Eigen::Vector3d& p) -> Stress6
    { return {0, 0, 0, 0, 2 * torque * p.x() / (pi * a * a * a * b), -2 * torque * p.y() / (pi * a * b * b * b)}; };
    made.load = tractions(made.mesh, "right", made.stress) + tractions(made.mesh, "left", made.stress);
    return made;
}

Eigen::Matrix3Xd displacement_of(const ExactBody& exact)
{
    return SolidSystem(exact.mesh, exact.body).solution({exact.load}).loads[0].displacement;
}

}  // namespace splicewright::exact
