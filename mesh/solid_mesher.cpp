// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/solid_mesher.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <set>

#include "mesh/solid_size.h"

namespace splicewright
{
namespace
{

constexpr std::size_t refine_from_dofs = 250000;  // from here on a coarse mesh is refined: faster than a fine one
constexpr int most_meshes = 5;
constexpr double growth_of_elements = 2.4;  // power of the scale that the number of elements falls with, near a mesh
constexpr double least_scale = 0.02, greatest_scale = 50;
constexpr double needed_per_quarter_turn = 3;  // elements on a notch arc below which its stress is not told; judgement
constexpr double nodes_per_element = 1.45;     // of ten-node tetrahedra in a mesh with much surface

std::size_t edges_of(const FlatSolid& flat)
{
    std::vector<std::uint64_t> keys;
    keys.reserve(6 * flat.tetrahedra.size());
    for (const auto& corner : flat.tetrahedra)
        for (const auto& [i, j] : edges_of_tetrahedron)
            keys.push_back(solid_edge_key(corner[static_cast<std::size_t>(i)], corner[static_cast<std::size_t>(j)]));
    std::sort(keys.begin(), keys.end());
    return static_cast<std::size_t>(std::unique(keys.begin(), keys.end()) - keys.begin());
}

// Unknowns of the ten-node mesh before splitting; of the refined one where it is to be refined. Counts of a refined
// mesh: edges e' = 2 e + 3 f + t with f faces, t elements; nodes v' = v + e.
std::size_t dofs_of(const FlatSolid& flat, bool refine)
{
    const std::size_t v = flat.nodes.size(), e = edges_of(flat), t = flat.tetrahedra.size();
    if (!refine) return 3 * (v + e);
    const std::size_t inner = 4 * t;  // each inner face counts twice; outer faces are few
    return 3 * (v + e + 2 * e + 3 * inner / 2 + t);
}

double first_scale(const SolidSizeField& field, double elements)
{
    double low = std::log(least_scale), high = std::log(greatest_scale);
    for (int i = 0; i < 14; ++i)
    {
        const double middle = (low + high) / 2;
        (field.expected_elements(std::exp(middle)) > elements ? low : high) = middle;
    }
    return std::exp((low + high) / 2);
}

void tell_coarse_sites(SolidMeshAnswer& answer, const SolidGeometry& geometry)
{
    if (answer.elements_per_quarter_turn >= needed_per_quarter_turn) return;
    std::set<std::string> names;
    for (const OutlineCurve& curve : geometry.section.curves)
        if (curve.notch_radius > 0) names.insert(curve.name);
    if (geometry.lap) names.insert("lap-corner");
    for (const std::string& name : names)
        answer.coarse_sites.push_back(
            fmt::format("{}: {:.1f} elements on a quarter turn of its arc, and {:g} are needed", name,
                        answer.elements_per_quarter_turn, needed_per_quarter_turn));
}

}  // namespace

SolidMeshAnswer solid_mesh(const Case& asked, const Scenario& scenario, const SolidMeshSize& size)
{
    const auto begin = std::chrono::steady_clock::now();
    const SolidGeometry geometry = solid_geometry(asked, scenario);
    const std::vector<FaceShape> shapes = face_shapes(geometry);
    const SolidSizeField field(geometry);
    const bool refine = size.dofs >= refine_from_dofs;
    const auto target = static_cast<double>(size.dofs);
    double scale = first_scale(field, target / (3 * nodes_per_element) / (refine ? 8 : 1));
    SolidMeshAnswer answer;
    FlatSolid flat;
    for (answer.meshes_made = 1;; ++answer.meshes_made)
    {
        flat = tetrahedra(geometry, shapes, scale);
        const double ratio = static_cast<double>(dofs_of(flat, refine)) / target;
        answer.within_budget = std::abs(ratio - 1) <= size.tolerance;
        if (std::abs(ratio - 1) <= size.tolerance / 2 || answer.meshes_made == most_meshes) break;
        const double next = std::clamp(scale * std::pow(ratio, 1 / growth_of_elements), least_scale, greatest_scale);
        if (next == scale) break;
        scale = next;
    }
    if (refine) flat = refined(flat, shapes);
    CurvedSolid curved = finished_solid(flat, geometry, shapes);
    answer.mesh = std::move(curved.mesh);
    answer.regions = geometry.regions;
    answer.absent_sites = geometry.section.absent_sites;
    answer.curved_edges = curved.curved_edges;
    answer.straightened_edges = curved.straightened_edges;
    answer.smallest_jacobian_ratio = curved.smallest_jacobian_ratio;
    answer.elements_per_quarter_turn = SolidSizeField::elements_per_quarter_turn / scale * (refine ? 2 : 1);
    tell_coarse_sites(answer, geometry);
    answer.within_budget = std::abs(static_cast<double>(answer.dofs()) / target - 1) <= size.tolerance;
    answer.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    return answer;
}

}  // namespace splicewright
