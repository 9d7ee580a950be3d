// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_nested.h"

#include <Eigen/LU>

#include "cases/problem.h"
#include "solver/solid_bars.h"
#include "solver/solid_element.h"

namespace splicewright
{

namespace
{

constexpr std::size_t parts_of_an_element = 8;

Eigen::Matrix<double, 3, 10> of_element(const SolidMesh& mesh, std::size_t element, const Eigen::Matrix3Xd& values)
{
    Eigen::Matrix<double, 3, 10> result;
    for (int n = 0; n < 10; ++n) result.col(n) = values.col(mesh.elements[element][static_cast<std::size_t>(n)]);
    return result;
}

Barycentric barycentric(const Eigen::Vector3d& l) { return {1 - l.sum(), l.x(), l.y(), l.z()}; }

// Shape functions at a place, by Newton's method from where it stands in the straight element.
Eigen::Matrix<double, 10, 1> shape_at(const SolidElementNodes& nodes, const Eigen::Vector3d& place, Eigen::Vector3d l)
{
    constexpr int steps = 4;
    for (int i = 0; i < steps; ++i)
    {
        const Eigen::Matrix3d slopes = nodes * solid_shape_slopes(barycentric(l));
        l += slopes.inverse() * (place - nodes * solid_shape_values(barycentric(l)));
        // Far outside a folded map leads nowhere; a corner is near enough to begin with.
        l = l.cwiseMax(-0.5).cwiseMin(1.5);
    }
    return solid_shape_values(barycentric(l));
}

}  // namespace

std::vector<Eigen::Matrix3Xd> carried_to_finer(const SolidMesh& coarse, const SolidMesh& fine,
                                               const std::vector<const Eigen::Matrix3Xd*>& values)
{
    EXPECTS(fine.elements.size() == parts_of_an_element * coarse.elements.size());
    const auto n_fine = static_cast<Eigen::Index>(fine.nodes.size());
    std::vector<Eigen::Matrix3Xd> result(values.size(), Eigen::Matrix3Xd::Zero(3, n_fine));
    std::vector<char> is_known(fine.nodes.size(), 0);
    std::vector<Eigen::Matrix<double, 3, 10>> here(values.size());
    for (std::size_t e = 0; e < coarse.elements.size(); ++e)
    {
        const SolidElementNodes nodes = nodes_of(coarse, e);
        const Eigen::Vector3d origin = nodes.col(0);
        const Eigen::Matrix3d to_barycentric = (nodes.middleCols<3>(1).colwise() - origin).inverse();
        for (std::size_t k = 0; k < values.size(); ++k) here[k] = of_element(coarse, e, *values[k]);
        for (std::size_t part = parts_of_an_element * e; part < parts_of_an_element * (e + 1); ++part)
            for (const std::int32_t node : fine.elements[part])
            {
                const auto at = static_cast<std::size_t>(node);
                if (is_known[at] != 0) continue;
                is_known[at] = 1;
                const Eigen::Vector3d place(fine.nodes[at][0], fine.nodes[at][1], fine.nodes[at][2]);
                const Eigen::Matrix<double, 10, 1> shape = shape_at(nodes, place, to_barycentric * (place - origin));
                for (std::size_t k = 0; k < values.size(); ++k) result[k].col(node) = here[k] * shape;
            }
    }
    return result;
}

std::vector<bool> closed_as(const ContactSurface& coarse, const ContactState& state, const ContactSurface& surface,
                            const SolidMesh& coarse_mesh, const SolidMesh& mesh)
{
    const auto places_of = [](const ContactSurface& of, const SolidMesh& in)
    {
        Eigen::Matrix3Xd places(3, static_cast<Eigen::Index>(of.places.size()));
        for (std::size_t i = 0; i < of.places.size(); ++i)
        {
            const auto& p = in.nodes[static_cast<std::size_t>(of.places[i].first)];
            places.col(static_cast<Eigen::Index>(i)) = Eigen::Vector3d(p[0], p[1], p[2]);
        }
        return places;
    };
    std::vector<bool> closed;
    for (const Eigen::Index near : nearest_places(places_of(surface, mesh), places_of(coarse, coarse_mesh)))
        closed.push_back(state.pressure[static_cast<std::size_t>(near)] > 0);
    return closed;
}

}  // namespace splicewright
