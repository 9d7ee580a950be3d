// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/mesh_edges.h"

#include <algorithm>
#include <string>

namespace splicewright
{

EdgeKey edge_key(int a, int b) { return {std::min(a, b), std::max(a, b)}; }

std::map<EdgeKey, EdgeUse> edge_uses(const Mesh& mesh)
{
    std::map<EdgeKey, EdgeUse> uses;
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int side = 0; side < 3; ++side)
        {
            std::array<int, 3> node{};
            for (std::size_t k = 0; k < 3; ++k) node[k] = mesh.triangle(triangle_edges[std::size_t(side)][k], t);
            EdgeUse& use = uses[edge_key(node[0], node[2])];
            if (use.n_triangles == 0) use = {node, t, side, 0, false};
            else if (mesh.region_of[std::size_t(t)] != mesh.region_of[std::size_t(use.triangle)])
                use.between_regions = true;
            ++use.n_triangles;
        }
    return uses;
}

std::set<EdgeKey> unfused_edges(const Mesh& mesh)
{
    std::set<std::string> names;
    for (const FacePair& pair : mesh.pair) names.insert(pair.curve);
    std::set<EdgeKey> edges;
    for (const std::string& name : names)
        if (const auto curve = mesh.curve.find(name); curve != mesh.curve.end())
            for (const MeshEdge& edge : curve->second) edges.insert(edge_key(edge.first, edge.last));
    return edges;
}

bool on_axis(const Mesh& mesh, const EdgeUse& edge)
{
    return mesh.node(1, edge.node[0]) < 1e-9 && mesh.node(1, edge.node[2]) < 1e-9;
}

}  // namespace splicewright
