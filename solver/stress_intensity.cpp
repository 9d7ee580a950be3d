// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/stress_intensity.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "mesh/gmsh_mesher.h"
#include "solver/crack_tips.h"
#include "solver/slit_ties.h"

namespace splicewright
{
namespace
{

constexpr double refinement = 1.5;  // of the elements around a tip from one mesh to the next
constexpr int most_levels = 5;
constexpr double bar_over_change = 1.5;  // as for the sites, judgement
constexpr double least_bar = 1e-3;  // relative, with 36 elements on the reach, falling with their square: two meshes
                                    // that agree by chance still differ from the truth (tests/fracture)
constexpr double least_bar_elements = 36;
constexpr double negligible_share = 0.01;  // of the nominal intensity: below it a tip need not reach the accuracy
constexpr std::array<TipDomain, 3> domains_over_reach{{{0.15, 0.45}, {0.25, 0.65}, {0.35, 0.85}}};

double plane_modulus(const ElasticConstants& steel) { return steel.E / (1 - steel.nu * steel.nu); }

// What opens, slides and tears together, on the scale of K: root of the energy release rate times plane_modulus.
double resultant(const ModeIntensities& modes, const ElasticConstants& steel)
{
    const double tearing = plane_modulus(steel) / (2 * steel.G());
    return std::sqrt(modes.I.value * modes.I.value + modes.II.value * modes.II.value +
                     tearing * modes.III.value * modes.III.value);
}

// Means over the domains, with the spread over them as error, and how far their resultant is from that of the energy
// release rate.
struct Reading
{
    ModeIntensities modes;
    double mismatch = 0;  // MPa*sqrt(mm)
    double whole = 0;     // the resultant, or a negligible share of the nominal one if that is more
};

Reading reading(const Mesh& mesh, const CrackedSection& section, const UnitSolution& solution, const ReadTip& at,
                FaceTie tie)
{
    std::array<TipIntegral, domains_over_reach.size()> found;
    for (std::size_t i = 0; i < found.size(); ++i)
        found[i] = tip_integral(mesh, section.steel, solution, at.tip,
                                {domains_over_reach[i].inner * at.reach, domains_over_reach[i].outer * at.reach});
    const auto measured = [&](double TipIntegral::*part)
    {
        const auto [low, high] = std::minmax({found[0].*part, found[1].*part, found[2].*part});
        return Measured{(found[0].*part + found[1].*part + found[2].*part) / 3, high - low};
    };
    Reading result;
    if (solution.kind != LoadKind::torsion)
    {
        if (tie != FaceTie::held) result.modes.I = measured(&TipIntegral::I);
        result.modes.II = measured(&TipIntegral::II);
    }
    if (solution.kind != LoadKind::axial) result.modes.III = measured(&TipIntegral::III);
    const double energy = measured(&TipIntegral::energy_release).value;
    const double from_energy = std::sqrt(std::max(energy, 0.0) * plane_modulus(at.tip.steel));
    const double all = resultant(result.modes, at.tip.steel);
    const std::size_t kind = solution.kind == LoadKind::torsion ? 0 : solution.kind == LoadKind::bending ? 1 : 2;
    result.mismatch = std::abs(all - from_energy);
    result.whole = std::max({all, from_energy, negligible_share * at.nominal[kind]});
    return result;
}

// Of one tip and one bracket, in the order torsion, bending, axial.
using LoadReadings = std::array<Reading, 3>;

struct Level
{
    std::vector<std::vector<LoadReadings>> tips;  // [tip][bracket]
    int nodes = 0;
};

// Only a merged slit takes part in torsion.
bool alike_in_torsion(const Ties& a, const Ties& b)
{
    const auto merged = [](FaceTie tie) { return tie == FaceTie::merged; };
    return merged(a.slit[0]) == merged(b.slit[0]) && merged(a.slit[1]) == merged(b.slit[1]);
}

Level solved_level(const CrackedSection& section, const std::vector<ReadTip>& tips, const MeshSize& size)
{
    constexpr std::array<LoadKind, 3> kinds{LoadKind::torsion, LoadKind::bending, LoadKind::axial};
    const Mesh mesh = generate_mesh(section.outline, size);
    Level level;
    level.nodes = mesh.n_nodes();
    level.tips.resize(tips.size());
    for (std::size_t b = 0; b < section.brackets.size(); ++b)
    {
        const Ties& ties = section.brackets[b];
        const Elimination order = elimination_of(mesh, ties);
        for (std::vector<LoadReadings>& brackets : level.tips) brackets.emplace_back();
        for (std::size_t k = 0; k < kinds.size(); ++k)
        {
            const bool is_known =
                b > 0 && kinds[k] == LoadKind::torsion && alike_in_torsion(ties, section.brackets[b - 1]);
            if (is_known)
            {
                for (std::vector<LoadReadings>& brackets : level.tips) brackets[b][k] = brackets[b - 1][k];
                continue;
            }
            const UnitSolution solution = unit_solution(mesh, section.steel, kinds[k], ties, order);
            for (std::size_t t = 0; t < tips.size(); ++t)
                level.tips[t][b][k] = reading(mesh, section, solution, tips[t], tie_at(tips[t], ties));
        }
    }
    return level;
}

// Sets the bars of one reading from the reading on the mesh before; returns the largest over the resultant, without the
// part from steels that differ, which no mesh reduces.
double set_errors(Reading& now, const Reading& before, const ReadTip& at, double least)
{
    const double mismatch = now.mismatch / now.whole;
    double worst = 0;
    for (const auto mode : {&ModeIntensities::I, &ModeIntensities::II, &ModeIntensities::III})
    {
        Measured& value = now.modes.*mode;
        if (value.value == 0 && value.error == 0) continue;
        const double change = bar_over_change * std::abs(value.value - (before.modes.*mode).value);
        const double size = std::abs(value.value);
        value.error = std::max({change, value.error, mismatch * size, least * now.whole});
        worst = std::max(worst, value.error / now.whole);
        value.error += at.difference / 2 * size;
    }
    return worst;
}

// Intensities lie within 0.1 % at 24 elements on the reach and the next finer mesh; the error falls with their square.
MeshSize first_size(double target_pct)
{
    constexpr double fine_elements = 24, fine_target_pct = 0.3, least_elements = 8;
    MeshSize size;
    size.elements_per_quarter_turn = 4;
    size.elements_per_tip_reach =
        std::clamp(fine_elements * std::sqrt(fine_target_pct / target_pct), least_elements, fine_elements);
    size.growth = std::min(0.6, 0.3 * fine_elements / size.elements_per_tip_reach);
    return size;
}

void refine(MeshSize& size)
{
    size.elements_per_tip_reach *= refinement;
    size.sections_per_wall *= refinement;
    size.growth /= refinement;
}

std::vector<TipAnswer> answers(std::vector<ReadTip>& tips, const Level& level)
{
    std::vector<TipAnswer> result;
    for (std::size_t t = 0; t < tips.size(); ++t)
    {
        TipAnswer& answer = tips[t].answer;
        for (const LoadReadings& r : level.tips[t])
        {
            answer.brackets.push_back({r[0].modes, r[1].modes, r[2].modes});
            for (const Reading& one : r)
                answer.energy_mismatch_pct = std::max(answer.energy_mismatch_pct, 100 * one.mismatch / one.whole);
        }
        result.push_back(std::move(answer));
    }
    return result;
}

double set_errors(Level& now, const Level& before, const std::vector<ReadTip>& tips, double least)
{
    double worst = 0;
    for (std::size_t t = 0; t < tips.size(); ++t)
        for (std::size_t b = 0; b < now.tips[t].size(); ++b)
            for (std::size_t k = 0; k < 3; ++k)
                worst = std::max(worst, set_errors(now.tips[t][b][k], before.tips[t][b][k], tips[t], least));
    return worst;
}

}  // namespace

StressIntensities stress_intensities(const CrackedSection& section, const Accuracy& accuracy)
{
    SortedTips sorted = sorted_tips(section);
    StressIntensities result;
    result.absent_tips = sorted.absent;
    result.reached = true;
    if (sorted.tips.empty()) return result;
    MeshSize size = first_size(accuracy.target_pct);
    Level before = solved_level(section, sorted.tips, size);
    for (result.levels = 2;; ++result.levels)
    {
        refine(size);
        Level now = solved_level(section, sorted.tips, size);
        const double elements = size.elements_per_tip_reach / least_bar_elements;
        result.worst_error_pct = 100 * set_errors(now, before, sorted.tips, least_bar / (elements * elements));
        result.nodes = now.nodes;
        result.reached = result.worst_error_pct <= accuracy.target_pct;
        before = std::move(now);
        const double next_nodes = refinement * refinement * result.nodes;
        if (result.reached || result.levels == most_levels || next_nodes > accuracy.most_nodes) break;
    }
    result.tips = answers(sorted.tips, before);
    return result;
}

StressIntensities stress_intensities(const Case& asked, const Scenario& scenario, const Accuracy& accuracy)
{
    Scenario sharp = scenario;
    sharp.root_shape = RootShape::sharp;
    CrackedSection section{outline(asked, sharp), {}, slit_ties(asked)};
    std::vector<std::string> regions;
    for (const OutlineRegion& region : section.outline.regions) regions.push_back(region.name);
    section.steel = steel_by_region(asked, regions);
    StressIntensities result = stress_intensities(section, accuracy);
    if (asked.joint && !asked.joint->penetration && scenario.butt_fused)
        result.absent_tips.emplace_back("land-edge: the butt is fused over the full section");
    if (asked.joint && !scenario.butt_fused)
        result.absent_tips.emplace_back("land-edge: the whole butt is taken as lost, its faces are free");
    if (asked.sleeve)
        for (const Side side : both_sides)
            if (!scenario.sleeve_weld_fused[index(side)])
                result.absent_tips.push_back(fmt::format("root.{}: the weld is lost in this scenario", name_of(side)));
    return result;
}

}  // namespace splicewright
