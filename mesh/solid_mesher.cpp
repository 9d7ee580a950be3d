// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/solid_mesher.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <set>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr std::size_t refine_from_dofs = 600000;  // from here on a coarse mesh is refined: faster than a fine one
constexpr int most_meshes = 5, most_attempts = 4;
constexpr double finer_after_failure = 0.93;
constexpr double least_shape = 0.003;    // see shape_of_element; below it the solver slows down
constexpr double accepted_share = 0.75;  // of the tolerance, before splitting adds its nodes
constexpr double usual_power = 2;        // of the scale that the number of elements falls with
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

// Unknowns of the ten-node mesh; of the refined one where it is to be refined. Counts of a refined
// mesh: edges e' = 2 e + 3 f + t with f faces, t elements; nodes v' = v + e.
std::size_t dofs_of(const FlatSolid& flat, const std::vector<FaceShape>& shapes, bool refine)
{
    const std::size_t v = flat.nodes.size(), e = edges_of(flat), t = flat.tetrahedra.size();
    const auto unfused = static_cast<std::size_t>(std::count_if(
        flat.triangles.begin(), flat.triangles.end(),
        [&](const FlatSolid::Triangle& triangle) { return shapes[static_cast<std::size_t>(triangle.face)].unfused; }));
    const std::size_t doubled = 2 * unfused;  // nodes: half a corner and one and a half middles for each triangle
    if (!refine) return 3 * (v + e + doubled);
    const std::size_t inner = 4 * t;  // each inner face counts twice; outer faces are few
    return 3 * (v + e + 2 * e + 3 * inner / 2 + t + 4 * doubled);
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

double measured_power(double scale, double ratio, double next_scale, double next_ratio)
{
    return std::clamp(std::log(ratio / next_ratio) / std::log(next_scale / scale), 1.0, 3.0);
}

// A mesh that fails, or has an element as flat as a sheet, is tried again a little finer: it is mostly a single face or
// sliver. Of meshes with slivers the best is kept.
FlatSolid meshed(const SolidGeometry& geometry, const std::vector<FaceShape>& shapes, const SolidSizeField& field,
                 double scale)
{
    FlatSolid best;
    double best_shape = -1;
    for (int attempt = 1; attempt <= most_attempts; ++attempt, scale *= finer_after_failure) try
        {
            FlatSolid flat = tetrahedra(geometry, shapes, field, scale);
            const double shape = worst_shape(flat);
            if (shape > best_shape) best = std::move(flat), best_shape = shape;
            if (best_shape >= least_shape) break;
        }
        catch (const CannotCompute&)
        {
            if (attempt == most_attempts && best_shape < 0) throw;
        }
    return best;
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

// A case's geometry, and the tetrahedra that meet its budget.
struct BudgetedFlat
{
    SolidGeometry geometry;
    std::vector<FaceShape> shapes;
    FlatSolid flat;
    double scale = 0;
    int meshes_made = 1;
};

// Narrow faces have a least number of elements at any scale.
void refuse_what_the_shape_needs(const Case& asked, const SolidSizeField& field, const SolidMeshSize& size, bool refine)
{
    if (size.most_dofs == 0) return;
    const double least = 3 * nodes_per_element * (refine ? 8 : 1) * field.expected_elements(greatest_scale);
    if (least <= static_cast<double>(size.most_dofs)) return;
    throw CannotCompute({asked.file, 0, 0, "--solid-dofs", fmt::format("{}", size.dofs),
                         fmt::format("narrow faces of this shape need about {:.2g} unknowns, and {:.2g} are the most "
                                     "that go with what was asked and with the free memory",
                                     least, static_cast<double>(size.most_dofs)),
                         "ask for more where the memory allows, widen the narrow faces (steps in diameter, ends of "
                         "the sleeve), or use --model meridian"});
}

BudgetedFlat budgeted_flat(const Case& asked, const Scenario& scenario, const SolidMeshSize& size, bool refine)
{
    BudgetedFlat made;
    made.geometry = solid_geometry(asked, scenario);
    made.shapes = face_shapes(made.geometry);
    const SolidSizeField field(made.geometry);
    refuse_what_the_shape_needs(asked, field, size, refine);
    const auto target = static_cast<double>(size.dofs);
    double scale = first_scale(field, target / (3 * nodes_per_element) / (refine ? 8 : 1));
    double last_scale = 0, last_ratio = 0;
    for (;; ++made.meshes_made)
    {
        made.flat = meshed(made.geometry, made.shapes, field, scale);
        const double ratio = static_cast<double>(dofs_of(made.flat, made.shapes, refine)) / target;
        if (std::abs(ratio - 1) <= accepted_share * size.tolerance || made.meshes_made == most_meshes) break;
        const double power = last_scale == 0 ? usual_power : measured_power(last_scale, last_ratio, scale, ratio);
        last_scale = scale, last_ratio = ratio;
        scale = std::clamp(scale * std::pow(ratio, 1 / power), least_scale, greatest_scale);
        if (scale == last_scale) break;
    }
    made.scale = scale;
    return made;
}

// times_finer: elements along an edge of the mesh that `made` was scaled for.
SolidMeshAnswer finished(const BudgetedFlat& made, const FlatSolid& flat, double times_finer)
{
    SolidMeshAnswer answer;
    CurvedSolid curved = finished_solid(flat, made.geometry, made.shapes);
    answer.mesh = std::move(curved.mesh);
    answer.regions = made.geometry.regions;
    answer.edge_nodes = std::move(curved.edge_nodes);
    answer.absent_sites = made.geometry.section.absent_sites;
    answer.curved_edges = curved.curved_edges;
    answer.straightened_edges = curved.straightened_edges;
    answer.smallest_jacobian_ratio = curved.smallest_jacobian_ratio;
    answer.meshes_made = made.meshes_made;
    answer.elements_per_quarter_turn = SolidSizeField::elements_per_quarter_turn / made.scale * times_finer;
    tell_coarse_sites(answer, made.geometry);
    return answer;
}

bool is_within(const SolidMeshAnswer& answer, const SolidMeshSize& size)
{
    return std::abs(static_cast<double>(answer.dofs()) / static_cast<double>(size.dofs) - 1) <= size.tolerance;
}

double seconds_since(std::chrono::steady_clock::time_point begin)
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

}  // namespace

SolidMeshAnswer solid_mesh(const Case& asked, const Scenario& scenario, const SolidMeshSize& size)
{
    const auto begin = std::chrono::steady_clock::now();
    const bool refine = size.dofs >= refine_from_dofs;
    const BudgetedFlat made = budgeted_flat(asked, scenario, size, refine);
    SolidMeshAnswer answer = refine ? finished(made, refined(made.flat, made.shapes), 2) : finished(made, made.flat, 1);
    answer.within_budget = is_within(answer, size);
    answer.seconds = seconds_since(begin);
    return answer;
}

NestedSolids nested_solid_meshes(const Case& asked, const Scenario& scenario, const SolidMeshSize& size)
{
    const auto begin = std::chrono::steady_clock::now();
    const BudgetedFlat made = budgeted_flat(asked, scenario, size, true);
    NestedSolids both{finished(made, made.flat, 1), finished(made, refined(made.flat, made.shapes), 2)};
    both.coarse.within_budget = true;
    both.fine.within_budget = is_within(both.fine, size);
    both.fine.seconds = seconds_since(begin);
    return both;
}

}  // namespace splicewright
