// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/view_solid.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <cmath>
#include <map>

#include "post/solid_edges.h"
#include "post/solid_scene.h"
#include "solver/solid_face.h"

namespace splicewright
{
namespace
{

struct EdgeOfElement
{
    std::size_t from, to, middle;
};
// Order as SolidMesh::elements.
constexpr std::array<EdgeOfElement, 6> element_edges{
    {{0, 1, 4}, {1, 2, 5}, {0, 2, 6}, {0, 3, 7}, {1, 3, 8}, {2, 3, 9}}};

// What a straight line may miss of each.
struct Allowed
{
    double place, stress;          // mm and MPa
    std::vector<double> movement;  // mm, by load
};

Allowed allowed_by(const SolidFields& fields, double share)
{
    Allowed allowed{share * solid_extent(fields).radius, share * fields.von_mises.maxCoeff(), {}};
    for (const SolidLoadFields& one : fields.each)
        allowed.movement.push_back(share * one.displacement.colwise().norm().maxCoeff());
    return allowed;
}

bool is_needed(const SolidFields& fields, const Allowed& allowed, std::int32_t a, std::int32_t b, std::int32_t middle)
{
    if ((fields.place.col(middle) - (fields.place.col(a) + fields.place.col(b)) / 2).norm() > allowed.place)
        return true;
    if (std::abs(fields.von_mises(middle) - (fields.von_mises(a) + fields.von_mises(b)) / 2) > allowed.stress)
        return true;
    for (std::size_t k = 0; k < fields.each.size(); ++k)
    {
        const Eigen::Matrix3Xf& moved = fields.each[k].displacement;
        if ((moved.col(middle) - (moved.col(a) + moved.col(b)) / 2).norm() > allowed.movement[k]) return true;
    }
    return false;
}

using Corners = std::array<std::int32_t, 3>;

Corners sorted(Corners corner)
{
    std::ranges::sort(corner);
    return corner;
}

std::vector<std::uint8_t> sides_of(const SolidFields& fields, const std::vector<SolidSkinFace>& skin)
{
    std::map<Corners, SolidFace> kind;
    for (const SolidSkinFace& face : skin) kind[sorted({face.point[0], face.point[1], face.point[2]})] = face.kind;
    std::vector<std::uint8_t> sides;
    for (const auto& element : fields.element)
    {
        unsigned all = 0;
        for (std::size_t k = 0; k < 4; ++k)
        {
            const auto& points = element_faces[k];
            const auto found = kind.find(sorted({element[points[0]], element[points[1]], element[points[2]]}));
            if (found == kind.end()) continue;
            const unsigned told = found->second == SolidFace::outside ? 1 : found->second == SolidFace::unfused ? 2 : 3;
            all |= told << (2 * k);
        }
        sides.push_back(static_cast<std::uint8_t>(all));
    }
    return sides;
}

}  // namespace

ViewSolid view_solid(const SolidFields& fields, double share)
{
    ViewSolid view;
    std::vector<int> number(fields.size(), -1);
    for (const auto& element : fields.element)
        for (std::size_t k = 0; k < 4; ++k)
        {
            int& known = number[static_cast<std::size_t>(element[k])];
            if (known >= 0) continue;
            known = static_cast<int>(view.point.size());
            view.point.push_back(element[k]);
        }
    const auto numbered = [&](std::int32_t point) { return number[static_cast<std::size_t>(point)]; };
    const Allowed allowed = allowed_by(fields, share);
    for (const auto& element : fields.element)
    {
        view.element.push_back(
            {numbered(element[0]), numbered(element[1]), numbered(element[2]), numbered(element[3])});
        for (const auto& [from, to, middle] : element_edges)
        {
            int& known = number[static_cast<std::size_t>(element[middle])];
            if (known >= 0 || !is_needed(fields, allowed, element[from], element[to], element[middle])) continue;
            known = static_cast<int>(view.point.size());
            view.point.push_back(element[middle]);
            view.middle.push_back({numbered(element[from]), numbered(element[to])});
        }
    }
    const std::vector<SolidSkinFace> skin = solid_skin(fields);
    view.sides = sides_of(fields, skin);
    for (const SolidEdge& edge : outside_edges(fields, skin))
        view.edge.push_back({numbered(edge.point[0]), numbered(edge.point[1])});
    return view;
}

Eigen::Matrix3Xf seen_from_the_joint(const SolidFields& fields, const Eigen::Matrix3Xf& displacement)
{
    const SolidExtent whole = solid_extent(fields);
    const double reach = whole.radius / 4;
    const double plane = std::clamp(0.0, whole.left + reach, whole.right - reach);
    const auto from_plane = [&](Eigen::Index i)
    { return Eigen::Vector3d(fields.place.col(i) - Eigen::Vector3d(0, 0, plane)); };
    // Shift and turn: u = shift + turn x place.
    const auto rigid = [](const Eigen::Vector3d& at)
    {
        Eigen::Matrix<double, 3, 6> movement;
        movement << Eigen::Matrix3d::Identity(),
            Eigen::Matrix3d{{0, at.z(), -at.y()}, {-at.z(), 0, at.x()}, {at.y(), -at.x(), 0}};
        return movement;
    };
    Eigen::Matrix<double, 6, 6> normal = Eigen::Matrix<double, 6, 6>::Zero();
    Eigen::Matrix<double, 6, 1> right = Eigen::Matrix<double, 6, 1>::Zero();
    for (Eigen::Index i = 0; i < displacement.cols(); ++i)
    {
        const Eigen::Vector3d at = from_plane(i);
        if (std::abs(at.z()) > reach) continue;
        const Eigen::Matrix<double, 3, 6> movement = rigid(at);
        normal += movement.transpose() * movement;
        right += movement.transpose() * displacement.col(i).cast<double>();
    }
    const Eigen::Matrix<double, 6, 1> fitted = normal.ldlt().solve(right);
    Eigen::Matrix3Xf rest = displacement;
    for (Eigen::Index i = 0; i < rest.cols(); ++i) rest.col(i) -= (rigid(from_plane(i)) * fitted).cast<float>();
    return rest;
}

}  // namespace splicewright
