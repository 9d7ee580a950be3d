// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_contact_surface.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <unordered_map>

#include "cases/problem.h"
#include "solver/elements.h"
#include "solver/solid_face.h"

namespace splicewright
{

namespace
{

// Faces whose normals differ by less belong to one smooth stretch, rad. Source: judgement.
constexpr double smooth_within = 0.35;

using Corners = std::array<std::int32_t, 3>;

Corners sorted(Corners corners)
{
    std::ranges::sort(corners);
    return corners;
}

using Twins = std::unordered_map<std::int32_t, std::vector<std::int32_t>>;

struct BoundaryFace
{
    SolidMesh::Face face;
    int n_elements = 0;
};

// Faces of elements that have a node among the pairs, by their corners.
std::map<Corners, BoundaryFace> faces_at_pairs(const SolidMesh& mesh, const std::vector<SolidMesh::NodePair>& pairs)
{
    std::vector<char> paired(mesh.nodes.size(), 0);
    for (const SolidMesh::NodePair& pair : pairs)
        paired[static_cast<std::size_t>(pair.first)] = paired[static_cast<std::size_t>(pair.second)] = 1;
    std::map<Corners, BoundaryFace> faces;
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
        for (const auto& local : element_faces)
        {
            SolidMesh::Face face{{}, static_cast<std::int32_t>(e)};
            bool touches = false;
            for (std::size_t i = 0; i < 6; ++i)
            {
                face.nodes[i] = mesh.elements[e][local[i]];
                touches = touches || paired[static_cast<std::size_t>(face.nodes[i])] != 0;
            }
            if (!touches) continue;
            BoundaryFace& at = faces[sorted({face.nodes[0], face.nodes[1], face.nodes[2]})];
            at.face = face;
            ++at.n_elements;
        }
    return faces;
}

// The node opposite to each node of a face, of a face that is there; empty: none.
std::vector<std::int32_t> face_opposite(const SolidMesh::Face& face, const Twins& twins,
                                        const std::map<Corners, BoundaryFace>& faces)
{
    std::array<std::vector<std::int32_t>, 6> choices;
    for (std::size_t i = 0; i < 6; ++i)
    {
        if (const auto found = twins.find(face.nodes[i]); found != twins.end()) choices[i] = found->second;
        choices[i].push_back(face.nodes[i]);
    }
    for (const std::int32_t a : choices[0])
        for (const std::int32_t b : choices[1])
            for (const std::int32_t c : choices[2])
            {
                const auto found = faces.find(sorted({a, b, c}));
                if (found == faces.end() || found->second.n_elements != 1 || found->second.face.element == face.element)
                    continue;
                std::vector<std::int32_t> opposite{a, b, c};
                for (std::size_t i = 3; i < 6; ++i)
                {
                    const auto& of = found->second.face.nodes;
                    const auto middle =
                        std::ranges::find_if(choices[i], [&](std::int32_t node)
                                             { return std::find(of.begin(), of.end(), node) != of.end(); });
                    if (middle == choices[i].end()) return {};
                    opposite.push_back(*middle);
                }
                return opposite;
            }
    return {};
}

// Places by node, one for each smooth stretch.
class Places
{
public:
    explicit Places(ContactSurface& surface) : surface_(surface) {}

    std::int32_t at(std::int32_t first, std::int32_t second, const Eigen::Vector3d& normal)
    {
        std::vector<std::int32_t>& here = by_node_[{first, second}];
        for (const std::int32_t i : here)
            if (surface_.places[static_cast<std::size_t>(i)].normal.normalized().dot(normal) > std::cos(smooth_within))
                return i;
        here.push_back(static_cast<std::int32_t>(surface_.places.size()));
        surface_.places.push_back({first, second, Eigen::Vector3d::Zero(), 0, 0, 0});
        return here.back();
    }

private:
    ContactSurface& surface_;
    std::map<std::pair<std::int32_t, std::int32_t>, std::vector<std::int32_t>> by_node_;
};

void add_face(ContactSurface& surface, Places& places, const SolidMesh& mesh, const SolidMesh::Face& face,
              const std::vector<std::int32_t>& opposite)
{
    const FaceNodes nodes = nodes_of(mesh, face);
    double area = 0;
    std::array<double, 3> hats{};
    for (const QuadraturePoint& q : quadrature())
    {
        const double part = q.weight * face_point(nodes, q.at).area.norm();
        const std::array<double, 3> barycentric{1 - q.at.x - q.at.y, q.at.x, q.at.y};
        area += part;
        for (std::size_t i = 0; i < 3; ++i) hats[i] += part * barycentric[i];
    }
    std::array<std::int32_t, 6> of_face{};
    for (std::size_t i = 0; i < 6; ++i)
    {
        const Eigen::Vector3d normal = face_point(nodes, jacobian_sample_points[i]).area.normalized();
        of_face[i] = places.at(face.nodes[i], opposite[i], normal);
        ContactPlace& place = surface.places[static_cast<std::size_t>(of_face[i])];
        place.normal += area * normal;
        place.area += area / 3;
        if (i < 3) place.hat += hats[i];
    }
    surface.faces.push_back(of_face);
}

}  // namespace

ContactSurface contact_surface(const SolidMesh& mesh, const std::string& pairs, const InitialGap& gap)
{
    ContactSurface surface;
    surface.name = pairs;
    Places places(surface);
    if (const auto named = mesh.pairs.find(pairs); named != mesh.pairs.end())
    {
        Twins twins;
        for (const SolidMesh::NodePair& pair : named->second) twins[pair.first].push_back(pair.second);
        const auto faces = faces_at_pairs(mesh, named->second);
        for (const auto& [corners, at] : faces)
        {
            const bool has_first =
                std::ranges::any_of(at.face.nodes, [&](std::int32_t node) { return twins.contains(node); });
            if (at.n_elements != 1 || !has_first) continue;
            const auto opposite = face_opposite(at.face, twins, faces);
            if (!opposite.empty()) add_face(surface, places, mesh, at.face, opposite);
        }
    }
    if (surface.faces.empty())
        throw CannotCompute({"", 0, 0, "contact", pairs, "the mesh has no matched faces of this name",
                             "check the name, or leave the contact out"});
    for (ContactPlace& place : surface.places)
    {
        place.normal.normalize();
        const auto& p = mesh.nodes[static_cast<std::size_t>(place.first)];
        place.gap = gap({p[0], p[1], p[2]});
    }
    return surface;
}

}  // namespace splicewright
