// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_stress.h"

#include <Eigen/Geometry>
#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <map>

#include "cases/problem.h"
#include "solver/solid_element.h"
#include "solver/solid_face.h"

namespace splicewright
{

namespace
{

// Faces whose normals differ by more belong to different stretches. Source: judgement.
const double smooth_within = std::cos(0.35);

using Stress = Eigen::Matrix<double, 6, 1>;

// Values at the ten nodes from those at the four points, both of a linear field: [10, 4].
const Eigen::Matrix<double, 10, 4>& to_nodes()
{
    static const Eigen::Matrix<double, 10, 4> matrix = []
    {
        Eigen::Matrix4d at_points;
        for (int p = 0; p < 4; ++p)
            for (int k = 0; k < 4; ++k)
                at_points(p, k) = four_points()[static_cast<std::size_t>(p)].at[static_cast<std::size_t>(k)];
        Eigen::Matrix<double, 10, 4> at_nodes = Eigen::Matrix<double, 10, 4>::Zero();
        for (int k = 0; k < 4; ++k) at_nodes(k, k) = 1;
        for (int e = 0; e < 6; ++e)
            for (const int corner : edge_corners[static_cast<std::size_t>(e)]) at_nodes(4 + e, corner) = 0.5;
        return Eigen::Matrix<double, 10, 4>(at_nodes * at_points.inverse());
    }();
    return matrix;
}

// Values at the six nodes of a face from those at its three points: [6, 3].
constexpr std::array<ReferencePoint, 3> three_points{{{1.0 / 6, 1.0 / 6}, {2.0 / 3, 1.0 / 6}, {1.0 / 6, 2.0 / 3}}};

const Eigen::Matrix<double, 6, 3>& to_face_nodes()
{
    static const Eigen::Matrix<double, 6, 3> matrix = []
    {
        const auto row = [](ReferencePoint p) { return Eigen::RowVector3d(1 - p.x - p.y, p.x, p.y); };
        Eigen::Matrix3d at_points;
        for (int p = 0; p < 3; ++p) at_points.row(p) = row(three_points[static_cast<std::size_t>(p)]);
        Eigen::Matrix<double, 6, 3> at_nodes;
        for (int i = 0; i < 6; ++i) at_nodes.row(i) = row(jacobian_sample_points[static_cast<std::size_t>(i)]);
        return Eigen::Matrix<double, 6, 3>(at_nodes * at_points.inverse());
    }();
    return matrix;
}

SolidElementNodes displacement_of(const SolidMesh& mesh, std::size_t element, const Eigen::Matrix3Xd& displacement)
{
    SolidElementNodes u;
    for (int i = 0; i < 10; ++i) u.col(i) = displacement.col(mesh.elements[element][static_cast<std::size_t>(i)]);
    return u;
}

// Regions of each node, in rising order; entries of the result without values.
SolidStress entries(const SolidMesh& mesh)
{
    std::vector<std::vector<std::int32_t>> regions(mesh.nodes.size());
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
        for (const std::int32_t node : mesh.elements[e])
        {
            auto& of = regions[static_cast<std::size_t>(node)];
            if (std::ranges::find(of, mesh.regions[e]) == of.end()) of.push_back(mesh.regions[e]);
        }
    SolidStress result;
    result.starts.push_back(0);
    for (std::size_t i = 0; i < regions.size(); ++i)
    {
        std::ranges::sort(regions[i]);
        for (const std::int32_t region : regions[i])
        {
            result.node.push_back(static_cast<std::int32_t>(i));
            result.region.push_back(region);
        }
        result.starts.push_back(static_cast<std::int64_t>(result.node.size()));
    }
    result.value.setZero(6, result.starts.back());
    return result;
}

// Stress of a surface whose displacement is known: strain in its own plane, and the pressure across it.
// s = E/(1-nu^2) (e_1 + nu e_2) - nu/(1-nu) p. Source: [TimoshenkoGoodier1970] plane stress, with a pressure.
Stress surface_stress_at(const FaceNodes& nodes, const FaceNodes& u, ReferencePoint at, const ElasticConstants& steel,
                         double pressure)
{
    const FacePoint point = face_point(nodes, at);
    const Eigen::Vector3d normal = point.area.normalized();
    Eigen::Matrix<double, 3, 2> frame;
    frame.col(0) = point.tangents.col(0).normalized();
    frame.col(1) = normal.cross(Eigen::Vector3d(frame.col(0)));
    // Derivatives along the frame: chain rule through the reference triangle.
    const Eigen::Matrix2d along = frame.transpose() * point.tangents;
    const Eigen::Matrix<double, 3, 2> slopes = (u * shape_gradients(at)) * along.inverse();
    const Eigen::Matrix2d H = frame.transpose() * slopes;
    const double plate = steel.E / (1 - steel.nu * steel.nu), beside = -pressure * steel.nu / (1 - steel.nu);
    Eigen::Matrix2d s;
    s(0, 0) = plate * (H(0, 0) + steel.nu * H(1, 1)) + beside;
    s(1, 1) = plate * (H(1, 1) + steel.nu * H(0, 0)) + beside;
    s(0, 1) = s(1, 0) = steel.G() * (H(0, 1) + H(1, 0));
    const Eigen::Matrix3d S = frame * s * frame.transpose() - pressure * normal * normal.transpose();
    return {S(0, 0), S(1, 1), S(2, 2), S(0, 1), S(1, 2), S(0, 2)};
}

// Collects what faces say about their nodes.
class Places
{
public:
    // alike: of each region the first one of the same steel.
    explicit Places(std::vector<std::int32_t> alike) : alike_(std::move(alike)) {}

    // The place of a node that fits steel and normal, made when there is none.
    std::int32_t at(std::int32_t node, std::int32_t region, const Eigen::Vector3d& normal)
    {
        for (const std::int32_t known : of_node_[node])
        {
            const SurfacePlace& place = places[static_cast<std::size_t>(known)];
            if (metal(place.region) == metal(region) && place.normal.dot(normal) > smooth_within * place.normal.norm())
                return known;
        }
        SurfacePlace place;
        place.node = node;
        place.region = region;
        place.stress.setZero();
        places.push_back(place);
        weights.push_back(0);
        of_node_[node].push_back(static_cast<std::int32_t>(places.size() - 1));
        return of_node_[node].back();
    }

    std::vector<SurfacePlace> places;  // sums by weight until they are divided
    std::vector<double> weights;

private:
    [[nodiscard]] std::int32_t metal(std::int32_t region) const { return alike_[static_cast<std::size_t>(region)]; }

    std::vector<std::int32_t> alike_;
    std::map<std::int32_t, std::vector<std::int32_t>> of_node_;
};

std::vector<std::int32_t> first_of_same_steel(const std::vector<ElasticConstants>& steel)
{
    std::vector<std::int32_t> first;
    for (const ElasticConstants& metal : steel)
        first.push_back(static_cast<std::int32_t>(std::ranges::find(steel, metal) - steel.begin()));
    return first;
}

// What one face says about its nodes.
void add_face(Places& places, FreeSurfaceStress& result, const SolidMesh& mesh, const SolidMesh::Face& on,
              const ElasticConstants& steel, const Eigen::Matrix3Xd& displacement, double pressure)
{
    const std::int32_t region = mesh.regions[static_cast<std::size_t>(on.element)];
    const FaceNodes nodes = nodes_of(mesh, on);
    FaceNodes u;
    for (int i = 0; i < 6; ++i) u.col(i) = displacement.col(on.nodes[static_cast<std::size_t>(i)]);
    Eigen::Matrix<double, 3, 6> at_points;
    double area = 0;
    for (int p = 0; p < 3; ++p)
    {
        const ReferencePoint at = three_points[static_cast<std::size_t>(p)];
        at_points.row(p) = surface_stress_at(nodes, u, at, steel, pressure).transpose();
        area += face_point(nodes, at).area.norm() / 6;
    }
    const Eigen::Matrix<double, 6, 6> values = to_face_nodes() * at_points;
    std::array<std::int32_t, 6> of_face{};
    for (int i = 0; i < 6; ++i)
    {
        const ReferencePoint at = jacobian_sample_points[static_cast<std::size_t>(i)];
        const Eigen::Vector3d normal = face_point(nodes, at).area.normalized();
        const std::int32_t place = places.at(on.nodes[static_cast<std::size_t>(i)], region, normal);
        places.places[static_cast<std::size_t>(place)].stress += area * values.row(i).transpose();
        places.places[static_cast<std::size_t>(place)].normal += area * normal;
        places.weights[static_cast<std::size_t>(place)] += area;
        of_face[static_cast<std::size_t>(i)] = place;
    }
    result.faces.push_back(of_face);
}

}  // namespace

SolidStress recovered_stress(const SolidMesh& mesh, const std::vector<ElasticConstants>& steel,
                             const Eigen::Matrix3Xd& displacement)
{
    SolidStress result = entries(mesh);
    Eigen::VectorXd weights = Eigen::VectorXd::Zero(result.value.cols());
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
    {
        const SolidElementNodes nodes = nodes_of(mesh, e), u = displacement_of(mesh, e, displacement);
        const ElasticConstants& metal = steel[static_cast<std::size_t>(mesh.regions[e])];
        Eigen::Matrix<double, 4, 6> at_points;
        double volume = 0;
        for (int p = 0; p < 4; ++p)
        {
            const TetrahedronPoint& point = four_points()[static_cast<std::size_t>(p)];
            at_points.row(p) = solid_stress(metal, solid_strain(nodes, u, point.at)).transpose();
            volume += point.weight * solid_map(nodes, point.at).jacobian;
        }
        const Eigen::Matrix<double, 10, 6> values = to_nodes() * at_points;
        for (int i = 0; i < 10; ++i)
        {
            const std::int64_t at = entry_of(result, mesh.elements[e][static_cast<std::size_t>(i)], mesh.regions[e]);
            result.value.col(at) += volume * values.row(i).transpose();
            weights(at) += volume;
        }
    }
    for (Eigen::Index i = 0; i < weights.size(); ++i) result.value.col(i) /= weights(i);
    return result;
}

std::int64_t entry_of(const SolidStress& stress, std::int32_t node, std::int32_t region)
{
    const auto at = static_cast<std::size_t>(node);
    for (std::int64_t i = stress.starts[at]; i < stress.starts[at + 1]; ++i)
        if (stress.region[static_cast<std::size_t>(i)] == region) return i;
    return -1;
}

FreeSurfaceStress free_surface_stress(const SolidMesh& mesh, const std::vector<ElasticConstants>& steel,
                                      const Eigen::Matrix3Xd& displacement, const std::string& face, double pressure)
{
    const auto found = mesh.faces.find(face);
    if (found == mesh.faces.end())
        throw CannotCompute({"", 0, 0, "solid model", face, "the mesh has no face of this name to read a stress from",
                             "check the name, or the geometry that should make the face"});
    return free_surface_stress(mesh, steel, displacement, std::vector<std::vector<SolidMesh::Face>>{found->second},
                               pressure);
}

FreeSurfaceStress free_surface_stress(const SolidMesh& mesh, const std::vector<ElasticConstants>& steel,
                                      const Eigen::Matrix3Xd& displacement,
                                      const std::vector<std::vector<SolidMesh::Face>>& faces, double pressure)
{
    Places places(first_of_same_steel(steel));
    FreeSurfaceStress result;
    for (const std::vector<SolidMesh::Face>& named : faces)
        for (const SolidMesh::Face& on : named)
            add_face(places, result, mesh, on,
                     steel[static_cast<std::size_t>(mesh.regions[static_cast<std::size_t>(on.element)])], displacement,
                     pressure);
    for (std::size_t i = 0; i < places.places.size(); ++i)
    {
        places.places[i].stress /= places.weights[i];
        places.places[i].normal.normalize();
    }
    result.places = std::move(places.places);
    return result;
}

Eigen::Matrix<double, 6, 1> stress_at(const FreeSurfaceStress& surface, std::size_t face, ReferencePoint at)
{
    const ShapeValues N = shape_values(at);
    Stress sum = Stress::Zero();
    for (int i = 0; i < 6; ++i)
        sum += N(i) * surface.places[static_cast<std::size_t>(surface.faces[face][static_cast<std::size_t>(i)])].stress;
    return sum;
}

}  // namespace splicewright
