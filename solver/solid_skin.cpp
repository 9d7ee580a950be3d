// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "cases/problem.h"
#include "solver/solid_face.h"
#include "solver/solid_fields.h"

namespace splicewright
{
namespace
{

std::array<std::int32_t, 10> parent_of(const std::array<std::int32_t, 10>* child)
{
    // Children 0 to 3 keep the corner of their own number; their other corners are the middles of its edges.
    const std::array<std::int32_t, 10> parent{child[0][0], child[1][1], child[2][2], child[3][3], child[0][1],
                                              child[1][2], child[2][0], child[0][3], child[1][3], child[2][3]};
    EXPECTS(child[1][0] == parent[4] && child[0][2] == parent[6] && child[3][0] == parent[7]);
    return parent;
}

template <class Matrix>
Matrix columns(const Matrix& all, const std::vector<std::int32_t>& kept)
{
    return all(Eigen::all, kept);
}

struct ElementFace
{
    std::array<std::int32_t, 3> corner;  // mesh nodes, sorted
    std::int32_t element, face;
};

std::vector<ElementFace> faces_by_corners(const SolidFields& fields)
{
    std::vector<ElementFace> all;
    all.reserve(4 * fields.element.size());
    for (std::size_t e = 0; e < fields.element.size(); ++e)
        for (std::size_t f = 0; f < 4; ++f)
        {
            ElementFace one{{}, static_cast<std::int32_t>(e), static_cast<std::int32_t>(f)};
            for (std::size_t k = 0; k < 3; ++k)
                one.corner[k] = fields.node[static_cast<std::size_t>(fields.element[e][element_faces[f][k]])];
            std::ranges::sort(one.corner);
            all.push_back(one);
        }
    std::ranges::sort(all, {}, [](const ElementFace& one) { return std::tie(one.corner, one.element); });
    return all;
}

SolidSkinFace skin_face(const SolidFields& fields, const ElementFace& on, SolidFace kind)
{
    SolidSkinFace face{{}, kind};
    for (std::size_t k = 0; k < 6; ++k)
        face.point[k] =
            fields.element[static_cast<std::size_t>(on.element)][element_faces[static_cast<std::size_t>(on.face)][k]];
    return face;
}

// Where its corners stand, so that the two sides of an unfused face are found.
std::array<std::int64_t, 3> where(const SolidFields& fields, const SolidSkinFace& face)
{
    constexpr double same_place = 1e-6;  // mm
    Eigen::Vector3d sum(0, 0, 0);
    for (std::size_t k = 0; k < 3; ++k) sum += fields.place.col(face.point[k]);
    return {std::llround(sum.x() / same_place), std::llround(sum.y() / same_place), std::llround(sum.z() / same_place)};
}

}  // namespace

SolidFields thinned(const SolidFields& fine)
{
    EXPECTS(fine.element.size() % 8 == 0);
    SolidFields thin;
    thin.load = fine.load;
    thin.region = fine.region;
    thin.contact = fine.contact;
    thin.weld_metal = fine.weld_metal;
    thin.is_thinned = true;
    std::vector<std::int32_t> kept, number(fine.size(), -1);
    for (std::size_t e = 0; e < fine.element.size(); e += 8)
    {
        std::array<std::int32_t, 10> parent = parent_of(&fine.element[e]);
        for (std::int32_t& point : parent)
        {
            std::int32_t& known = number[static_cast<std::size_t>(point)];
            if (known < 0)
            {
                known = static_cast<std::int32_t>(kept.size());
                kept.push_back(point);
            }
            point = known;
        }
        thin.element.push_back(parent);
        thin.element_region.push_back(fine.element_region[e]);
    }
    for (const std::int32_t point : kept) thin.node.push_back(fine.node[static_cast<std::size_t>(point)]);
    thin.place = columns(fine.place, kept), thin.displacement = columns(fine.displacement, kept);
    thin.stress = columns(fine.stress, kept);
    thin.von_mises = fine.von_mises(kept), thin.principal = fine.principal(kept);
    for (const SolidLoadFields& one : fine.each)
        thin.each.push_back(
            {one.load, one.von_mises(kept), one.principal(kept), one.shear(kept), columns(one.displacement, kept)});
    return thin;
}

std::vector<SolidSkinFace> solid_skin(const SolidFields& fields)
{
    const std::vector<ElementFace> all = faces_by_corners(fields);
    std::vector<SolidSkinFace> skin;
    for (std::size_t i = 0; i < all.size(); ++i)
    {
        const bool is_shared = i + 1 < all.size() && all[i + 1].corner == all[i].corner;
        const auto region = [&](const ElementFace& one)
        { return fields.element_region[static_cast<std::size_t>(one.element)]; };
        if (!is_shared) skin.push_back(skin_face(fields, all[i], SolidFace::outside));
        else
        {
            if (region(all[i]) != region(all[i + 1])) skin.push_back(skin_face(fields, all[i], SolidFace::between));
            ++i;
        }
    }
    std::map<std::array<std::int64_t, 3>, std::size_t> first_there;
    for (std::size_t i = 0; i < skin.size(); ++i)
    {
        if (skin[i].kind == SolidFace::between) continue;
        const auto [there, is_new] = first_there.try_emplace(where(fields, skin[i]), i);
        if (!is_new) skin[i].kind = skin[there->second].kind = SolidFace::unfused;
    }
    return skin;
}

}  // namespace splicewright
