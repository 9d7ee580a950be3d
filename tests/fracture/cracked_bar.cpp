// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/fracture/cracked_bar.h"

#include <array>
#include <cmath>
#include <numbers>
#include <string>

#include "solver/assembly.h"
#include "solver/sparse_solve.h"

namespace splicewright::sample
{

CrackedSection cracked_bar(RingCrack crack, double a, double b, double half_length)
{
    const bool internal = crack == RingCrack::internal;
    const double L = half_length;
    Outline shape;
    shape.points = {{0, 0}, {0, a}, {0, b}, {L, b}, {L, 0}, {-L, b}, {-L, 0}};
    shape.curves = {{0, 1, {}, internal ? "land" : "butt", internal, 0},
                    {1, 2, {}, internal ? "butt" : "land", !internal, 0},
                    {2, 3, {}, "bar.right", false, 0},
                    {3, 4, {}, "end.right", false, 0},
                    {4, 0, {}, "axis", false, 0},
                    {2, 5, {}, "bar.left", false, 0},
                    {5, 6, {}, "end.left", false, 0},
                    {6, 0, {}, "axis", false, 0}};
    shape.regions = {{"bar.right", {0, 1, 2, 3, 4}}, {"bar.left", {0, 1, 5, 6, 7}}};
    shape.tips = {{1, "land-edge", {0, internal ? 1.0 : -1.0}}};
    return {shape, {crack_steel, crack_steel}, {Ties{}}};
}

CrackedSection slit_bar(double R, double D, double half_length)
{
    const double L = half_length;
    Outline shape;
    shape.points = {{-L, 0}, {-L, R}, {0, R}, {L, R}, {L, 0}, {-L, D}, {L, D}};
    shape.curves = {{0, 1, {}, "end.left", false, 0},   {1, 2, {}, "slit.right", true, 0},
                    {2, 3, {}, "fusion", false, 0},     {3, 4, {}, "end.right", false, 0},
                    {4, 0, {}, "axis", false, 0},       {1, 5, {}, "sleeve end", false, 0},
                    {5, 6, {}, "sleeve-mid", false, 0}, {6, 3, {}, "end.right", false, 0}};
    shape.regions = {{"bar.right", {0, 1, 2, 3, 4}}, {"sleeve.right", {1, 2, 7, 6, 5}}};
    shape.tips = {{2, "root.right", {1, 0}}};
    return {shape, {crack_steel, crack_steel}, {Ties{}}};
}

CrackTip tip_of(const CrackedSection& section)
{
    const OutlineTip& tip = section.outline.tips.front();
    const OutlinePoint place = section.outline.points[static_cast<std::size_t>(tip.point)];
    const bool across = tip.forward.z == 0;
    return {{{place.z, place.r}, {tip.forward.z, tip.forward.r}, {across ? 1.0 : 0.0, across ? 0.0 : 1.0}},
            crack_steel,
            {across ? "land" : "slit.right"}};
}

MeshSize fine_at_tip(double elements)
{
    MeshSize size;
    size.elements_per_tip_reach = elements;
    size.growth = 10 / elements;
    return size;
}

UnitSolution uniform_shear(const Mesh& mesh, const std::vector<ElasticConstants>& steel)
{
    struct Surface
    {
        std::string curve;
        double across, along;  // traction amplitudes: u_r, and minus u_theta; u_z
    };
    const std::array<Surface, 4> surfaces{
        {{"end.left", -1, 0}, {"end.right", 1, 0}, {"bar.left", 0, 1}, {"bar.right", 0, 1}}};
    const double g = std::sqrt(3.0 / 5);
    const std::array<std::pair<double, double>, 3> gauss{{{-g, 5.0 / 9}, {0, 8.0 / 9}, {g, 5.0 / 9}}};
    Eigen::VectorXd load = Eigen::VectorXd::Zero(3 * mesh.n_nodes());
    for (const Surface& surface : surfaces)
        for (const MeshEdge& edge : mesh.curve.at(surface.curve))
            for (const auto& [x, weight] : gauss)
            {
                const Eigen::Vector2d along = mesh.node.col(edge.last) - mesh.node.col(edge.first);
                const double r = mesh.node(1, edge.first) + along(1) * (1 + x) / 2;
                const double force = std::numbers::pi * weight * along.norm() / 2 * r;
                const std::array<std::pair<int, double>, 3> nodes{
                    {{edge.first, x * (x - 1) / 2}, {edge.middle, 1 - x * x}, {edge.last, x * (x + 1) / 2}}};
                for (const auto& [node, shape] : nodes)
                    load.segment<3>(3 * node) +=
                        force * shape * Eigen::Vector3d(surface.across, -surface.across, surface.along);
            }
    const Freedoms free = freedoms(mesh, LoadKind::bending, {});
    const Eigen::VectorXd x =
        sparse_solution(assembled(element_stiffness(mesh, steel, LoadKind::bending, free)), force_on_free(free, load));
    UnitSolution solution;
    solution.kind = LoadKind::bending;
    solution.u = Eigen::VectorXd::Zero(load.size());
    for (std::size_t i = 0; i < free.unknown.size(); ++i)
        for (int k = 0; k < free.unknown[i].n_terms; ++k)
        {
            const Freedoms::Term& term = free.unknown[i].term[static_cast<std::size_t>(k)];
            solution.u(static_cast<Eigen::Index>(i)) += term.factor * x(term.free);
        }
    return solution;
}

}  // namespace splicewright::sample
