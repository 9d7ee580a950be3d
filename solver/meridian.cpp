// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/meridian.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "cases/beyond_revolution.h"
#include "cases/problem.h"
#include "mesh/gmsh_mesher.h"
#include "solver/level_bars.h"
#include "solver/meridian_level.h"

namespace splicewright
{
namespace
{

constexpr double refinement = 1.5;  // of the element size from one mesh to the next
constexpr int most_levels = 6;
constexpr double spot_over_notch = 0.25;  // element size at the end of a held slit over that on a 1 mm notch

// Elements on a quarter turn of the first mesh. Peaks lie within about 0.5 % at 8 where the mesh is graded as ours;
// the largest error on a surface falls with the second power of the element size (tests/solver).
double first_elements(double target_pct) { return std::clamp(9 / std::cbrt(target_pct), 5.0, 16.0); }

// Notches of bars miss an accuracy that all others reach with as many elements, and would cost a third mesh.
constexpr double finer_on_bars = 1.2;
bool is_notch_of_bar(const std::string& curve)
{
    return curve.starts_with("shoulder.") || curve.starts_with("groove.");
}

// Where a held slit begins: the stress has no limit there, and a coarse mesh would make the whole joint too soft.
std::vector<FineSpot> held_slit_ends(const Case& asked, const Outline& shape, double size)
{
    std::vector<FineSpot> ends;
    if (!asked.sleeve) return ends;
    for (const Side side : both_sides)
    {
        const SlitState slit = asked.sleeve->slit[index(side)];
        if (slit != SlitState::snug && slit != SlitState::press) continue;
        const std::string s = name_of(side);
        for (const OutlineCurve& held : shape.curves)
            for (const OutlineCurve& free : shape.curves)
            {
                if (held.name != "slit." + s || free.name != "butt-surface." + s) continue;
                for (const int point : {held.start, held.end})
                    if (point == free.start || point == free.end)
                        ends.push_back({shape.points[static_cast<std::size_t>(point)], size});
            }
    }
    return ends;
}

// Grows 1.5 times as fast as the default, so that the second mesh is the default one at its notches.
MeshSize first_size(const Case& asked, const Outline& shape, double elements_per_quarter_turn)
{
    MeshSize size;
    size.elements_per_quarter_turn = elements_per_quarter_turn;
    size.growth *= refinement;
    size.spots = held_slit_ends(asked, shape, spot_over_notch * std::numbers::pi / 2 / elements_per_quarter_turn);
    return size;
}

// All elements smaller by one factor.
void refine_everywhere(MeshSize& size)
{
    size.elements_per_quarter_turn *= refinement;
    size.sections_per_wall *= refinement;
    size.growth /= refinement;
    for (FineSpot& spot : size.spots) spot.size /= refinement;
}

void refine(MeshSize& size, const std::vector<std::string>& sites)
{
    bool everywhere = false;
    for (const std::string& site : sites)
    {
        const std::vector<std::string> curves = notch_curves(site);
        for (const std::string& curve : curves) size.finer.try_emplace(curve, 1.0).first->second *= refinement;
        everywhere = everywhere || curves.empty() || site == "butt-surface";
    }
    if (everywhere) size.sections_per_wall *= refinement;
    size.growth /= 1.15;
}

Evidence evidence_of(const Level& level, int levels, const Comparison& comparison, const Accuracy& accuracy)
{
    Evidence evidence;
    evidence.levels = levels;
    evidence.nodes = level.mesh.n_nodes();
    evidence.elements = level.mesh.n_triangles();
    evidence.unknowns = level.unknowns;
    evidence.residual = level.residual;
    evidence.reaction_imbalance = level.reaction_imbalance;
    evidence.section_imbalance = level.section_imbalance;
    evidence.smallest_angle_deg = level.mesh.smallest_angle_deg;
    evidence.smallest_jacobian_ratio = level.mesh.smallest_jacobian_ratio;
    evidence.accuracy_pct = accuracy.target_pct;
    evidence.worst_error_pct = 100 * comparison.worst;
    evidence.reached = comparison.missed.empty();
    return evidence;
}

MeridianAnswer answer_of(Level&& level, int levels, const Comparison& comparison, const Accuracy& accuracy)
{
    MeridianAnswer answer;
    answer.evidence = evidence_of(level, levels, comparison, accuracy);
    answer.sites = level.sites;
    answer.weld = level.weld;
    answer.hot_spots = level.hot_spots;
    answer.share = level.share;
    answer.twist = level.twist;
    answer.end_rotation = level.end_rotation;
    answer.extension = level.extension;
    answer.fit_pressure = level.fit_pressure;
    answer.fields = solved_fields(std::move(level));
    return answer;
}

// A body that is not of revolution and has no equivalent would be judged as something else.
void refuse_what_has_no_stand_in(const Case& asked)
{
    for (const BeyondRevolution& part : beyond_revolution(asked))
        if (!part.has_stand_in)
            throw CannotCompute(
                {asked.file, 0, 0, part.field, fmt::format("\"{}\"", part.value),
                 fmt::format("cannot be computed by the meridian model: {} make no body of revolution", part.what),
                 "leave out --model meridian: the solid model takes such a case"});
}

// The coarsest mesh, solved.
struct Start
{
    Outline shape;
    MeshSize size;
    Level level;
};

Start start(const Case& asked, const Scenario& scenario, const Accuracy& accuracy)
{
    refuse_what_has_no_stand_in(asked);
    Start first{outline(asked, scenario), {}, {}};
    first.size = first_size(asked, first.shape, first_elements(accuracy.target_pct));
    for (const OutlineCurve& curve : first.shape.curves)
        if (is_notch_of_bar(curve.name)) first.size.finer[curve.name] = finer_on_bars;
    first.level = solved_level(asked, scenario, first.shape, first.size);
    return first;
}

MeridianAnswer refined_answer(const Case& asked, const Scenario& scenario, const Accuracy& accuracy, Start&& first)
{
    const NominalStress nominal = nominal_stress(asked);
    const double target = accuracy.target_pct / 100;
    MeshSize size = first.size;
    Level before = std::move(first.level);
    refine_everywhere(size);
    Level now = solved_level(asked, scenario, first.shape, size);
    Comparison comparison = compare(now, before, nominal, {size, Refined::everywhere, {}, target});
    double mesh = before.mesh_seconds + now.mesh_seconds, solve = before.solve_seconds + now.solve_seconds,
           recover = before.recover_seconds + now.recover_seconds;
    int levels = 2;
    while (!comparison.missed.empty() && levels < most_levels && now.mesh.n_nodes() < accuracy.most_nodes)
    {
        refine(size, comparison.missed);
        before = std::move(now);
        now = solved_level(asked, scenario, first.shape, size);
        comparison = compare(now, before, nominal, {size, Refined::at_notches, comparison.missed, target});
        mesh += now.mesh_seconds, solve += now.solve_seconds, recover += now.recover_seconds;
        ++levels;
    }
    MeridianAnswer answer = answer_of(std::move(now), levels, comparison, accuracy);
    answer.scenario = scenario;
    answer.absent_sites = first.shape.absent_sites;
    answer.evidence.mesh_seconds = mesh;
    answer.evidence.solve_seconds = solve;
    answer.evidence.recover_seconds = recover;
    return answer;
}

SlitClosing closing_of(const Level& level)
{
    const Bracket& free = level.brackets.front();
    return {closing_movement(level.mesh, free.bending), closing_movement(level.mesh, free.axial)};
}

}  // namespace

double SlitClosing::by(const CombinedLoad& load) const
{
    return std::abs(load.bending) * bending + std::abs(load.axial) * axial;
}

std::vector<ElasticConstants> steel_by_region(const Case& asked, const std::vector<std::string>& regions)
{
    std::vector<ElasticConstants> steel;
    for (const std::string& region : regions)
    {
        const Material& material = material_of_region(asked, region);
        steel.push_back({material.elastic_modulus.value(), material.poisson_ratio});
    }
    return steel;
}

MeridianAnswer meridian_answer(const Case& asked, const Scenario& scenario, const Accuracy& accuracy)
{
    return refined_answer(asked, scenario, accuracy, start(asked, scenario, accuracy));
}

SettledAnswer settled_meridian_answer(const Case& asked, const Scenario& scenario, const Accuracy& accuracy,
                                      const CombinedLoad& load)
{
    Start first = start(asked, scenario, accuracy);
    SettledAnswer settled{asked, {}, closing_of(first.level), {}};
    settled.closed = close_slits(settled.asked, settled.closing.by(load));
    if (settled.closed) first = start(settled.asked, scenario, accuracy);
    settled.answer = refined_answer(settled.asked, scenario, accuracy, std::move(first));
    return settled;
}

MeridianAnswer reference_answer(const Case& asked, const Scenario& scenario, const ReferenceMesh& mesh)
{
    const Outline shape = outline(asked, scenario);
    MeshSize size = first_size(asked, shape, mesh.elements_per_quarter_turn / refinement);
    size.sections_per_wall = mesh.sections_per_wall / refinement;
    size.growth = mesh.growth * refinement;
    for (FineSpot& spot : size.spots) spot.size /= mesh.spots_finer;
    const Level before = solved_level(asked, scenario, shape, size);
    refine_everywhere(size);
    Level now = solved_level(asked, scenario, shape, size);
    const Comparison comparison = compare(now, before, nominal_stress(asked), {size, Refined::everywhere, {}, 0});
    MeridianAnswer answer = answer_of(std::move(now), 2, comparison, {0, 0});
    answer.scenario = scenario;
    answer.absent_sites = shape.absent_sites;
    return answer;
}

}  // namespace splicewright
