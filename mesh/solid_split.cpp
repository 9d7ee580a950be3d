// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>
#include <map>
#include <set>

#include "mesh/solid_flat.h"

namespace splicewright
{
namespace
{

std::size_t at(int i) { return static_cast<std::size_t>(i); }

// Positions of the six nodes of a face in its element: corners seen from outside against the clock, then middles.
std::array<std::size_t, 6> places_of_face(int face)
{
    const auto& corner = faces_of_tetrahedron[at(face)];
    std::array<std::size_t, 6> places{at(corner[0]), at(corner[1]), at(corner[2]), 0, 0, 0};
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t e = 0; e < 6; ++e)
        {
            const auto& edge = edges_of_tetrahedron[e];
            const int a = corner[i], b = corner[(i + 1) % 3];
            if ((edge[0] == a && edge[1] == b) || (edge[0] == b && edge[1] == a)) places[3 + i] = 4 + e;
        }
    return places;
}

// Splitting parts the welds of plugs and fillets from nothing: only where bar, sleeve or the other bar lies behind.
class Splitter
{
public:
    Splitter(const ClosedSolid& closed, const SolidGeometry& geometry, const std::vector<FaceShape>& shapes)
        : closed_(&closed), geometry_(&geometry), shapes_(&shapes), out_(closed.mesh)
    {
    }

    SolidMesh split()
    {
        find_unfused();
        gather_elements();
        for (const auto& [node, elements] : around_) part(node, elements);
        list_faces();
        return std::move(out_);
    }

private:
    [[nodiscard]] const std::string& region_of(int element) const
    {
        return geometry_->regions[at(closed_->mesh.regions[at(element)])];
    }

    [[nodiscard]] bool is_unfused(const ClosedSolid::ShapeFace& face) const
    {
        if (face.element[1] < 0 || !(*shapes_)[at(face.shape)].unfused) return false;
        const std::string &one = region_of(face.element[0]), &other = region_of(face.element[1]);
        return one != other && one != "plug" && other != "plug";
    }

    void find_unfused()
    {
        for (const ClosedSolid::ShapeFace& face : closed_->shape_faces)
        {
            if (!is_unfused(face)) continue;
            const auto& element = closed_->mesh.elements[at(face.element[0])];
            for (const std::size_t place : places_of_face(face.face[0])) touched_.insert(element[place]);
            for (std::size_t side = 0; side < 2; ++side) closed_off_.insert({face.element[side], face.face[side]});
        }
    }

    void gather_elements()
    {
        std::vector<bool> is_touched(closed_->mesh.nodes.size(), false);
        for (const std::int32_t node : touched_) is_touched[at(node)] = true;
        for (std::size_t t = 0; t < closed_->mesh.elements.size(); ++t)
            for (const std::int32_t node : closed_->mesh.elements[t])
                if (is_touched[at(node)]) around_[node].push_back(static_cast<int>(t));
    }

    // Elements around the node that hang together through faces which hold it and are fused stay together.
    void part(std::int32_t node, const std::vector<int>& elements)
    {
        std::map<std::array<std::int32_t, 3>, int>
            open;  // faces at the node, by sorted corners, and their first element
        std::vector<int> leader(elements.size());
        for (std::size_t i = 0; i < elements.size(); ++i) leader[i] = static_cast<int>(i);
        const auto root = [&](int i)
        {
            while (leader[at(i)] != i) i = leader[at(i)];
            return i;
        };
        for (std::size_t i = 0; i < elements.size(); ++i)
            for (int f = 0; f < 4; ++f)
            {
                const auto& element = closed_->mesh.elements[at(elements[i])];
                const auto places = places_of_face(f);
                const bool holds = std::any_of(places.begin(), places.end(),
                                               [&](std::size_t place) { return element[place] == node; });
                if (!holds || closed_off_.contains({elements[i], f})) continue;
                std::array<std::int32_t, 3> key{element[places[0]], element[places[1]], element[places[2]]};
                std::sort(key.begin(), key.end());
                const auto [other, is_new] = open.try_emplace(key, static_cast<int>(i));
                if (!is_new) leader[at(root(static_cast<int>(i)))] = root(other->second);
            }
        std::map<int, std::int32_t> copy_of;
        for (std::size_t i = 0; i < elements.size(); ++i)
        {
            const int group = root(static_cast<int>(i));
            const auto [copy, is_new] = copy_of.try_emplace(group, node);
            if (is_new && copy_of.size() > 1)
            {
                copy->second = static_cast<std::int32_t>(out_.nodes.size());
                out_.nodes.push_back(closed_->mesh.nodes[at(node)]);
            }
            const auto& element = closed_->mesh.elements[at(elements[i])];
            const auto place = std::find(element.begin(), element.end(), node) - element.begin();
            out_.elements[at(elements[i])][static_cast<std::size_t>(place)] = copy->second;
        }
    }

    [[nodiscard]] SolidMesh::Face face_on(const ClosedSolid::ShapeFace& face, std::size_t side) const
    {
        SolidMesh::Face made{};
        made.element = face.element[side];
        const auto places = places_of_face(face.face[side]);
        for (std::size_t i = 0; i < 6; ++i) made.nodes[i] = out_.elements[at(face.element[side])][places[i]];
        return made;
    }

    // Which side of an unfused face stands first: the bar before the sleeve, left before right.
    [[nodiscard]] std::size_t first_side(const ClosedSolid::ShapeFace& face) const
    {
        return region_of(face.element[0]) < region_of(face.element[1]) ? 0 : 1;
    }

    void add_pairs(const ClosedSolid::ShapeFace& face, const std::string& name,
                   std::set<std::pair<std::int32_t, std::int32_t>>& known)
    {
        const std::size_t first = first_side(face), second = 1 - first;
        const auto &before = closed_->mesh.elements[at(face.element[first])],
                   &before_other = closed_->mesh.elements[at(face.element[second])];
        const auto &after = out_.elements[at(face.element[first])],
                   &after_other = out_.elements[at(face.element[second])];
        for (const std::size_t place : places_of_face(face.face[first]))
        {
            const auto there = static_cast<std::size_t>(
                std::find(before_other.begin(), before_other.end(), before[place]) - before_other.begin());
            const std::pair pair{after[place], after_other[there]};
            if (pair.first != pair.second && known.insert(pair).second)
                out_.pairs[name].push_back({pair.first, pair.second});
        }
    }

    void list_faces()
    {
        std::map<std::string, std::set<std::pair<std::int32_t, std::int32_t>>> known;
        for (const ClosedSolid::ShapeFace& face : closed_->shape_faces)
        {
            const FaceShape& shape = (*shapes_)[at(face.shape)];
            if (is_unfused(face))
            {
                out_.faces[shape.name].push_back(face_on(face, first_side(face)));
                out_.faces[shape.name + other_side_suffix].push_back(face_on(face, 1 - first_side(face)));
                add_pairs(face, shape.name, known[shape.name]);
            }
            else if (face.element[1] < 0) out_.faces[shape.name].push_back(face_on(face, 0));
            else if (shape.is_section) out_.faces[shape.name].push_back(face_on(face, first_side(face)));
        }
    }

    const ClosedSolid* closed_;
    const SolidGeometry* geometry_;
    const std::vector<FaceShape>* shapes_;
    SolidMesh out_;
    std::set<std::int32_t> touched_;
    std::set<std::pair<int, int>> closed_off_;  // element and face in it that are unfused
    std::map<std::int32_t, std::vector<int>> around_;
};

}  // namespace

SolidMesh split_solid(const ClosedSolid& closed, const SolidGeometry& geometry, const std::vector<FaceShape>& shapes)
{
    return Splitter(closed, geometry, shapes).split();
}

}  // namespace splicewright
