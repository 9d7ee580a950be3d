// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_loads.h"

#include <fmt/format.h>

#include <Eigen/Geometry>
#include <Eigen/LU>

#include "cases/problem.h"
#include "solver/solid_face.h"

namespace splicewright
{

namespace
{

const std::vector<SolidMesh::Face>& faces_named(const SolidMesh& mesh, const std::string& name)
{
    const auto found = mesh.faces.find(name);
    if (found != mesh.faces.end() && !found->second.empty()) return found->second;
    throw CannotCompute({"", 0, 0, "solid model", name, "the mesh has no face of this name to carry a load",
                         "check the name, or the geometry that should make the face"});
}

// Calls use(face, point, shape values, area of the point) for all quadrature points of a face.
template <class Use>
void for_each_point(const SolidMesh& mesh, const std::string& name, const Use& use)
{
    for (const SolidMesh::Face& face : faces_named(mesh, name))
    {
        const FaceNodes nodes = nodes_of(mesh, face);
        for (const QuadraturePoint& q : quadrature())
        {
            const FacePoint point = face_point(nodes, q.at);
            use(face, point, shape_values(q.at), q.weight);
        }
    }
}

NodeForces no_forces(const SolidMesh& mesh)
{
    return NodeForces::Zero(3, static_cast<Eigen::Index>(mesh.nodes.size()));
}

}  // namespace

FaceNodes nodes_of(const SolidMesh& mesh, const SolidMesh::Face& face)
{
    FaceNodes nodes;
    for (int i = 0; i < 6; ++i)
    {
        const auto& p = mesh.nodes[static_cast<std::size_t>(face.nodes[static_cast<std::size_t>(i)])];
        nodes.col(i) = Eigen::Vector3d(p[0], p[1], p[2]);
    }
    return nodes;
}

FacePoint face_point(const FaceNodes& nodes, ReferencePoint at)
{
    FacePoint point;
    point.place = nodes * shape_values(at);
    point.tangents = nodes * shape_gradients(at);
    point.area = Eigen::Vector3d(point.tangents.col(0)).cross(Eigen::Vector3d(point.tangents.col(1)));
    return point;
}

FaceArea face_area(const SolidMesh& mesh, const std::string& face)
{
    FaceArea sum;
    for_each_point(mesh, face,
                   [&](const SolidMesh::Face&, const FacePoint& point, const ShapeValues&, double weight)
                   {
                       sum.area += weight * point.area.norm();
                       sum.centre += weight * point.area.norm() * point.place;
                   });
    sum.centre /= sum.area;
    return sum;
}

NodeForces face_forces(const SolidMesh& mesh, const std::string& face, const FaceLoad& load)
{
    const Eigen::Vector3d centre = face_area(mesh, face).centre;
    // Six tractions, a along each axis and b about each; their node forces, and the resultants of these.
    std::array<NodeForces, 6> parts;
    parts.fill(no_forces(mesh));
    for_each_point(mesh, face,
                   [&](const SolidMesh::Face& on, const FacePoint& point, const ShapeValues& N, double weight)
                   {
                       const double area = weight * point.area.norm();
                       for (int m = 0; m < 6; ++m)
                       {
                           const Eigen::Vector3d axis = Eigen::Vector3d::Unit(m % 3);
                           const Eigen::Vector3d traction = m < 3 ? axis : axis.cross(point.place - centre);
                           for (int i = 0; i < 6; ++i)
                               parts[static_cast<std::size_t>(m)].col(on.nodes[static_cast<std::size_t>(i)]) +=
                                   area * N(i) * traction;
                       }
                   });
    Eigen::Matrix<double, 6, 6> resultants = Eigen::Matrix<double, 6, 6>::Zero();
    for (int m = 0; m < 6; ++m)
        for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        {
            const Eigen::Vector3d f = parts[static_cast<std::size_t>(m)].col(static_cast<Eigen::Index>(i));
            const Eigen::Vector3d arm = Eigen::Vector3d(mesh.nodes[i][0], mesh.nodes[i][1], mesh.nodes[i][2]) - centre;
            resultants.col(m).head<3>() += f;
            resultants.col(m).tail<3>() += arm.cross(f);
        }
    Eigen::Matrix<double, 6, 1> wanted;
    wanted << load.force, load.moment;
    const Eigen::Matrix<double, 6, 1> amounts = resultants.fullPivLu().solve(wanted);
    NodeForces forces = no_forces(mesh);
    for (int m = 0; m < 6; ++m) forces += amounts(m) * parts[static_cast<std::size_t>(m)];
    return forces;
}

NodeForces pressure_forces(const SolidMesh& mesh, const std::string& face, double pressure)
{
    NodeForces forces = no_forces(mesh);
    for_each_point(mesh, face,
                   [&](const SolidMesh::Face& on, const FacePoint& point, const ShapeValues& N, double weight)
                   {
                       for (int i = 0; i < 6; ++i)
                           forces.col(on.nodes[static_cast<std::size_t>(i)]) -= weight * pressure * N(i) * point.area;
                   });
    return forces;
}

// The sum of units, each times its factor; as poorly known as the worst of them.
SolidAnswer sum_of(const std::vector<SolidAnswer>& units, const std::vector<double>& factors)
{
    SolidAnswer sum;
    sum.displacement = Eigen::Matrix3Xd::Zero(3, units[0].displacement.cols());
    for (std::size_t k = 0; k < units.size(); ++k)
    {
        sum.displacement += factors[k] * units[k].displacement;
        sum.reaction += factors[k] * units[k].reaction;
        sum.reaction_moment += factors[k] * units[k].reaction_moment;
        sum.iterations = std::max(sum.iterations, units[k].iterations);
        sum.relative_residual = std::max(sum.relative_residual, units[k].relative_residual);
        sum.reaction_imbalance = std::max(sum.reaction_imbalance, units[k].reaction_imbalance);
    }
    return sum;
}

Eigen::Matrix3Xd sum_of(const std::vector<Eigen::Matrix3Xd>& units, const std::vector<double>& factors)
{
    Eigen::Matrix3Xd sum;
    for (std::size_t k = 0; k < units.size(); ++k)
    {
        if (k == 0) sum = factors[0] * units[0];
        else if (factors[k] != 0) sum += factors[k] * units[k];
    }
    return sum;
}

}  // namespace splicewright
