// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/strength_limits.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "post/check_row.h"
#include "post/weld_places.h"
#include "post/worked_weld.h"

namespace splicewright
{
namespace
{

// Between two of them the square of a stress falls short of its peak by at most (1 - cos 1 deg)/2, 0.008 %, of its
// swing.
constexpr int angles_over_turn = 360;

// Force of the weld at an angle from the plane of bending.
struct TurnedForce
{
    double theta = 0;  // rad
    LineForce force;
};

// Where the demand is largest around the turn; the first of equals.
template <class Demand>
TurnedForce worst_angle(const WeldForce& weld, const CombinedLoad& load, const Demand& demand)
{
    TurnedForce worst;
    double largest = -1;
    for (int k = 0; k < angles_over_turn; ++k)
    {
        const double theta = 2 * std::numbers::pi * k / angles_over_turn;
        const double c = load.bending * level(std::cos(theta)), s = load.bending * level(std::sin(theta));
        const LineForce force{weld.bending_outward * c + weld.axial_outward * load.axial,
                              weld.bending_radial * c + weld.axial_radial * load.axial,
                              weld.torsion_tangential * load.torque + weld.bending_tangential * s};
        const double here = demand(force);
        if (here > largest) worst = {theta, force}, largest = here;
    }
    return worst;
}

}  // namespace

std::string strength_words(const Material& material)
{
    switch (material.strength_kind)
    {
        case StrengthKind::typical: return fmt::format("strength of {} typical, no minimum (judgement)", material.name);
        case StrengthKind::estimated_minimum:
            return fmt::format("strength of {} an estimated minimum, not guaranteed", material.name);
        case StrengthKind::minimum: break;
    }
    return {};
}

Provenance strength_provenance(const Material& material)
{
    return material.strength_kind == StrengthKind::typical ? weaker(Provenance::judgement, material.provenance)
                                                           : material.provenance;
}

Limit yield_of(const Material& material)
{
    const std::string words = strength_words(material);
    return {material.yield,
            fmt::format("yield of {} {:.4g} MPa ({}{}{})", material.name, material.yield.value(), words,
                        words.empty() ? "" : "; ", material.source),
            strength_provenance(material)};
}

Limit heated_yield_of(const Material& material)
{
    if (material.heated_yield_factor >= 1)
    {
        Limit limit = yield_of(material);
        limit.whose += fmt::format(", not softened beside a weld (judgement: {})", material.heated_yield_reason);
        limit.provenance = Provenance::judgement;
        return limit;
    }
    return {
        material.heated_yield_factor * material.yield,
        fmt::format("{:.2g} x yield of {} {:.4g} MPa, softened beside a weld (judgement: {}){}{}",
                    material.heated_yield_factor, material.name, material.yield.value(), material.heated_yield_reason,
                    strength_words(material).empty() ? "" : "; ", strength_words(material)),
        Provenance::judgement, material.yield, material.heated_yield_factor};
}

WorkedStep limit_step(const Limit& limit)
{
    return limit.factor < 1
               ? worked_step(limit.whose, "f = k f_y", put_in("{}*{}", {limit.factor, limit.yield.value()}),
                             limit.stress.value(), "MPa")
               : read_step(limit.whose, limit.stress.value(), "MPa");
}

Limit butt_limit(const Case& asked)
{
    Limit weakest = yield_of(asked.joint->filler);
    for (const Side side : both_sides)
    {
        const Limit beside = heated_yield_of(asked.bar[index(side)]->material);
        if (beside.stress < weakest.stress) weakest = beside;
    }
    return weakest;
}

Limit throat_limit(const Case& asked, Side side)
{
    Limit limit = yield_of(asked.sleeve->weld.filler);
    for (const Limit& other :
         {heated_yield_of(asked.bar[index(side)]->material), heated_yield_of(asked.sleeve->material)})
        if (other.stress < limit.stress) limit = other;
    return limit;
}

EurocodeThroat eurocode_throat(const Case& asked, Side side)
{
    const std::array<const Material*, 3> parts{&asked.sleeve->weld.filler, &asked.sleeve->material,
                                               &asked.bar[index(side)]->material};
    const Material& weakest = **std::min_element(
        parts.begin(), parts.end(), [](const Material* a, const Material* b) { return a->tensile < b->tensile; });
    const Sourced<double> beta_w = correlation_factor(weakest.name);
    return {weakest.name, weakest.tensile, beta_w.value,
            weaker(weaker(Provenance::from_memory, beta_w.provenance), weakest.provenance)};
}

WorstThroat<WeldCheck> worst_directional(const Case& asked, const WeldForce& weld, Side side, const CombinedLoad& load)
{
    const EurocodeThroat eurocode = eurocode_throat(asked, side);
    const FilletWeld fillet = fillet_weld(asked, side);
    const auto check_of = [&](const LineForce& force)
    { return directional_check(throat_plane_stress(fillet, force).value, eurocode.tensile, eurocode.beta_w).value; };
    const TurnedForce at = worst_angle(weld, load, [&](const LineForce& force) { return check_of(force).utilisation; });
    WorstThroat<WeldCheck> worst{check_of(at.force), line_force_steps(weld, load, at.theta, at.force)};
    append(worst.worked, throat_steps(fillet, at.force, throat_plane_stress(fillet, at.force).value, "MPa"));
    append(worst.worked, worst.value.worked);
    return worst;
}

WorstThroat<WeldCheck> worst_simplified(const Case& asked, const WeldForce& weld, Side side, const CombinedLoad& load)
{
    const EurocodeThroat eurocode = eurocode_throat(asked, side);
    const FilletWeld fillet = fillet_weld(asked, side);
    const auto check_of = [&](const LineForce& force)
    { return simplified_check(fillet, force, eurocode.tensile, eurocode.beta_w).value; };
    const TurnedForce at = worst_angle(weld, load, [&](const LineForce& force) { return check_of(force).utilisation; });
    WorstThroat<WeldCheck> worst{check_of(at.force), line_force_steps(weld, load, at.theta, at.force)};
    worst.worked.push_back(throat_size_step(fillet));
    append(worst.worked, worst.value.worked);
    return worst;
}

WorstThroat<double> worst_throat_stress(const Case& asked, const WeldForce& weld, Side side, const CombinedLoad& load)
{
    const FilletWeld fillet = fillet_weld(asked, side);
    const auto von_mises = [&](const LineForce& force)
    {
        const ThroatPlaneStress stress = throat_plane_stress(fillet, force).value;
        const double normal = stress.normal.value(),
                     shear = std::hypot(stress.shear_across.value(), stress.shear_along.value());
        return std::sqrt(normal * normal + 3 * shear * shear);
    };
    const TurnedForce at = worst_angle(weld, load, von_mises);
    WorstThroat<double> worst{von_mises(at.force), line_force_steps(weld, load, at.theta, at.force)};
    const ThroatPlaneStress stress = throat_plane_stress(fillet, at.force).value;
    append(worst.worked, throat_steps(fillet, at.force, stress, "MPa"));
    worst.worked.push_back(
        worked_step("von Mises stress of the throat", "sigma_v = sqrt(sigma^2 + 3 (tau_c^2 + tau_l^2))",
                    put_in("sqrt({}^2+3*({}^2+{}^2))",
                           {stress.normal.value(), stress.shear_across.value(), stress.shear_along.value()}),
                    worst.value, "MPa"));
    return worst;
}

}  // namespace splicewright
