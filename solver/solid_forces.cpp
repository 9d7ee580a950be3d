// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_forces.h"

#include "solver/solid_element.h"

namespace splicewright
{

SharedForces shared_forces(const SolidMesh& mesh, const std::vector<ElasticConstants>& steel,
                           const Eigen::Matrix3Xd& displacement, std::int32_t region,
                           const std::function<bool(std::int32_t)>& other)
{
    std::vector<char> beside(mesh.nodes.size(), 0);
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
        if (mesh.regions[e] != region && other(mesh.regions[e]))
            for (const std::int32_t node : mesh.elements[e]) beside[static_cast<std::size_t>(node)] = 1;
    std::vector<std::int32_t> number(mesh.nodes.size(), -1), nodes;
    std::vector<Eigen::Vector3d> sums;
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
    {
        if (mesh.regions[e] != region) continue;
        const auto& element = mesh.elements[e];
        bool touches = false;
        for (const std::int32_t node : element) touches = touches || beside[static_cast<std::size_t>(node)] != 0;
        if (!touches) continue;
        Eigen::Matrix<double, 30, 1> u;
        for (int i = 0; i < 10; ++i) u.segment<3>(3 * i) = displacement.col(element[static_cast<std::size_t>(i)]);
        const Eigen::Matrix<double, 30, 1> f =
            solid_stiffness(steel[static_cast<std::size_t>(region)], nodes_of(mesh, e)) * u;
        for (int i = 0; i < 10; ++i)
        {
            const auto node = static_cast<std::size_t>(element[static_cast<std::size_t>(i)]);
            if (beside[node] == 0) continue;
            if (number[node] < 0)
            {
                number[node] = static_cast<std::int32_t>(nodes.size());
                nodes.push_back(static_cast<std::int32_t>(node));
                sums.emplace_back(0, 0, 0);
            }
            sums[static_cast<std::size_t>(number[node])] += f.segment<3>(3 * i);
        }
    }
    SharedForces result;
    result.place.resize(3, static_cast<Eigen::Index>(nodes.size()));
    result.force.resize(3, static_cast<Eigen::Index>(nodes.size()));
    for (std::size_t i = 0; i < nodes.size(); ++i)
    {
        const auto& p = mesh.nodes[static_cast<std::size_t>(nodes[i])];
        result.place.col(static_cast<Eigen::Index>(i)) = Eigen::Vector3d(p[0], p[1], p[2]);
        result.force.col(static_cast<Eigen::Index>(i)) = sums[i];
    }
    return result;
}

}  // namespace splicewright
