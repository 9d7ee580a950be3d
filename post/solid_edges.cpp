// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/solid_edges.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <string>
#include <tuple>

#include "mesh/triangle.h"

namespace splicewright
{
namespace
{

constexpr double sharp_cos = 0.82;  // normals of 35 degrees and more; a round of the mesh turns less within a face

// The three edges of a face: its ends, its middle, and where that lies in the reference triangle.
struct FaceEdge
{
    std::size_t from, to, middle;
    ReferencePoint at;
};
const std::array<FaceEdge, 3> face_edges{{{0, 1, 3, {0.5, 0}}, {1, 2, 4, {0.5, 0.5}}, {2, 0, 5, {0, 0.5}}}};

struct Seen
{
    std::array<std::int32_t, 2> node;  // mesh nodes of its ends, sorted
    std::int32_t region;
    Eigen::Vector3d normal;
    SolidEdge edge;
};

Eigen::Vector3d normal_at(const SolidFields& fields, const SolidSkinFace& face, const ReferencePoint& at)
{
    Eigen::Matrix<double, 3, 6> nodes;
    for (int k = 0; k < 6; ++k) nodes.col(k) = fields.place.col(face.point[static_cast<std::size_t>(k)]);
    const Eigen::Matrix<double, 3, 2> tangents = nodes * shape_gradients(at);
    return Eigen::Vector3d(tangents.col(0)).cross(Eigen::Vector3d(tangents.col(1))).normalized();
}

// By point: the region that it belongs to; halves of a sleeve have one number.
std::vector<std::int32_t> region_of_points(const SolidFields& fields)
{
    std::vector<std::int32_t> part(fields.region.size());
    std::int32_t sleeve = -1;
    for (std::size_t r = 0; r < part.size(); ++r)
    {
        part[r] = static_cast<std::int32_t>(r);
        if (!fields.region[r].starts_with("sleeve")) continue;
        if (sleeve < 0) sleeve = part[r];
        part[r] = sleeve;
    }
    std::vector<std::int32_t> of_point(fields.size(), -1);
    for (std::size_t e = 0; e < fields.element.size(); ++e)
        for (const std::int32_t point : fields.element[e])
            of_point[static_cast<std::size_t>(point)] = part[static_cast<std::size_t>(fields.element_region[e])];
    return of_point;
}

}  // namespace

std::vector<SolidEdge> outside_edges(const SolidFields& fields, const std::vector<SolidSkinFace>& skin)
{
    const std::vector<std::int32_t> region = region_of_points(fields);
    std::vector<Seen> all;
    for (const SolidSkinFace& face : skin)
    {
        if (face.kind != SolidFace::outside) continue;
        for (const FaceEdge& edge : face_edges)
        {
            const std::int32_t a = face.point[edge.from], b = face.point[edge.to];
            const std::int32_t i = fields.node[static_cast<std::size_t>(a)],
                               j = fields.node[static_cast<std::size_t>(b)];
            all.push_back({{std::min(i, j), std::max(i, j)},
                           region[static_cast<std::size_t>(a)],
                           normal_at(fields, face, edge.at),
                           {{a, b, face.point[edge.middle]}}});
        }
    }
    std::ranges::sort(all, {}, [](const Seen& one) { return std::tie(one.node, one.edge.point); });
    std::vector<SolidEdge> edges;
    for (std::size_t i = 0; i < all.size();)
    {
        std::size_t end = i + 1;
        bool is_line = false;
        for (; end < all.size() && all[end].node == all[i].node; ++end)
            is_line = is_line || all[end].region != all[i].region || all[end].normal.dot(all[i].normal) < sharp_cos;
        // An edge with one face ends at an unfused face: the surface ends there.
        if (is_line || end == i + 1) edges.push_back(all[i].edge);
        i = end;
    }
    return edges;
}

}  // namespace splicewright
