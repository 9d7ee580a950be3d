// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/fit_pressure.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "cases/bar_shape.h"
#include "solver/recover_stress.h"
#include "solver/surface_stress.h"

namespace splicewright
{
namespace
{

// Force of a pressed face between two distances from the joint, per mm of turn, and the length that it acts on.
struct PressedStretch
{
    double force = 0, length = 0;  // N/mm, mm
};

PressedStretch pressed_stretch(const SurfacePlaces& places, const Eigen::VectorXd& across, double low, double high)
{
    PressedStretch sum;
    for (std::size_t i = 0; i + 1 < places.z.size(); ++i)
    {
        const double here = std::abs(places.z[i]), next = std::abs(places.z[i + 1]);
        const double from = std::max(low, std::min(here, next)), to = std::min(high, std::max(here, next));
        if (from >= to) continue;
        const double part = ((from + to) / 2 - here) / (next - here);
        const auto k = static_cast<Eigen::Index>(i);
        sum.force -= (to - from) * ((1 - part) * across(k) + part * across(k + 1));
        sum.length += to - from;
    }
    return sum;
}

}  // namespace

double fit_pressure(const Case& asked, const Mesh& mesh, const std::vector<ElasticConstants>& steel,
                    const UnitSolution& press)
{
    const RegionNodes nodes = region_nodes(mesh);
    const StressAmplitude stress = recovered_stress(mesh, nodes, steel, press);
    PressedStretch all;
    for (const Side side : both_sides)
    {
        if (asked.sleeve->slit[index(side)] != SlitState::press) continue;
        const double reach = sleeve_reach(*asked.sleeve, side);
        std::vector<MeshEdge> edges;
        for (const MeshEdge& edge : mesh.curve.at(std::string("slit.") + name_of(side)))
        {
            const int region = mesh.region_of[static_cast<std::size_t>(edge.triangle)];
            if (mesh.region[static_cast<std::size_t>(region)].starts_with("bar")) edges.push_back(edge);
        }
        for (const SurfaceChain& chain : surface_chains(mesh, edges, steel))
        {
            const SurfacePlaces places = surface_places(mesh, chain);
            const PressedStretch part = pressed_stretch(
                places, loaded_surface_stress(mesh, chain, places, nodes, stress).across, reach / 4, 3 * reach / 4);
            all.force += part.force;
            all.length += part.length;
        }
    }
    return all.length > 0 ? all.force / all.length : 0;
}

}  // namespace splicewright
