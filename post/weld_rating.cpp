// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/weld_rating.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/rated_curves.h"
#include "post/site_loads.h"
#include "post/worked_fatigue.h"

namespace splicewright
{
namespace
{

constexpr double life_precision = 1e-6;  // relative, of the logarithm's interval
constexpr int most_steps = 60;

// Calls take(torque range, bending couple, count, block) for everything that cycles; N*mm; no block: the running
// bending.
template <class Take>
void for_each_event(const Load& load, const Take& take)
{
    for (const TorqueBlock& block : load.blocks)
    {
        const double largest = std::max(std::abs(block.high.value()), std::abs(block.low.value()));
        take((block.high - block.low).value(), bending_with(load, largest), block.count, &block);
    }
    if (load.running_bending.value() > 0)
        take(0.0, load.running_bending.value(), load.revolutions, static_cast<const TorqueBlock*>(nullptr));
}

Sourced<Interaction> joined(InteractionRule rule, double normal, double shear)
{
    return rule == InteractionRule::squares ? squares_interaction(normal, shear, Phase::non_proportional)
                                            : eurocode_interaction(normal, shear);
}

// Utilisation when all counts are multiplied by a factor: the limit of the damage sum falls by it.
double utilisation(const WeldSpectrum& spectrum, const WeldCurves& curves, double count_factor)
{
    const double limit = allowed_sum(curves.rule, spectrum.mean) / count_factor;
    const double normal = 1 / stress_scale_at_limit(spectrum.normal, curves.normal, Amplitude::variable, limit);
    const double shear = 1 / stress_scale_at_limit(spectrum.shear, curves.shear, Amplitude::variable, limit);
    return joined(curves.rule, normal, shear).value.utilisation;
}

double with_error(double utilisation, double error_pct) { return utilisation * (1 + error_pct / 100); }

// The utilisation grows with the logarithm of the factor at slopes between 1/gentlest and 1/steepest of the curves.
template <class UtilisationAt>
double life_factor(const UtilisationAt& at, double steepest)
{
    const double now = at(1.0);
    if (now == 0) return INFINITY;
    const double far = -std::log(now) * steepest;
    double low = std::min(0.0, far), high = std::max(0.0, far);
    for (int step = 0; step < most_steps && high - low > life_precision * std::max(1.0, std::abs(low)); ++step)
    {
        const double middle = (low + high) / 2;
        (at(std::exp(middle)) > 1 ? high : low) = middle;
    }
    return std::exp((low + high) / 2);
}

double steepest_slope(const WeldCurves& curves)
{
    return 1.05 * std::max({curves.normal.slope_beyond_variable, curves.shear.slope_beyond_variable,
                            curves.normal.slope, curves.shear.slope});
}

CheckRow titled_row(const RowTitle& title)
{
    CheckRow row;
    row.id = fmt::format("fatigue/{}{}{}", title.site, title.name.empty() ? "" : "/", title.name);
    row.site = title.site;
    row.kind = CheckKind::fatigue;
    row.check = title.check;
    row.method = title.method;
    row.capacity = 1;
    row.unit = "share of allowed stress";
    return row;
}

std::string range_words(const char* of, const StressCycles& cycles)
{
    return fmt::format("{}, {:.7g} cycles", of, cycles.count);
}

RangeKind shear_kind(const WeldUnitStress& stress)
{
    const auto step = [stress](const StressCycles& cycles)
    {
        const bool by_torque = cycles.torque_range > 0;
        if (cycles.relief != 1)
            return worked_step(
                range_words("range of shear by the range of torque, over f(R) of its block", cycles),
                "dtau = |k_tau| dT/f",
                put_in("{}*{}/{}", {std::abs(stress.shear_by_torque), cycles.torque_range, cycles.relief}),
                cycles.range.value(), "MPa");
        return by_torque
                   ? worked_step(range_words("range of shear by the range of torque", cycles), "dtau = |k_tau| dT",
                                 put_in("{}*{}", {std::abs(stress.shear_by_torque), cycles.torque_range}),
                                 cycles.range.value(), "MPa")
                   : worked_step(range_words("range of shear by bending that turns", cycles), "dtau = 2 |k_tauM| M",
                                 put_in("2*{}*{}", {std::abs(stress.shear_by_bending), cycles.bending}),
                                 cycles.range.value(), "MPa");
    };
    return {"shear", "tau", step};
}

RangeKind normal_kind(const WeldUnitStress& stress)
{
    const auto step = [stress](const StressCycles& cycles)
    {
        return worked_step(
            range_words("range of normal stress by bending that turns", cycles), "dsigma = 2 |k_sigma| M",
            put_in("2*{}*{}", {std::abs(stress.normal_by_bending), cycles.bending}), cycles.range.value(), "MPa");
    };
    return {"normal stress", "sigma", step};
}

RangeKind equivalent_kind(const WeldUnitStress& stress, Equivalent equivalent)
{
    const bool mises = equivalent == Equivalent::von_mises;
    const auto step = [stress, mises](const StressCycles& cycles)
    {
        const double k = std::abs(stress.normal_by_bending), k_tau = std::abs(stress.shear_by_torque);
        const double bending = cycles.bending, torque = cycles.torque_range;
        return mises ? worked_step(range_words("range of the von Mises stress", cycles),
                                   "dsigma_v = sqrt((2 k_sigma M)^2 + 3 (k_tau dT)^2)",
                                   put_in("sqrt((2*{}*{})^2+3*({}*{})^2)", {k, bending, k_tau, torque}),
                                   cycles.range.value(), "MPa")
                     : worked_step(range_words("range of the first principal stress", cycles),
                                   "dsigma_1 = k_sigma M + sqrt((k_sigma M)^2 + (k_tau dT)^2)",
                                   put_in("{}*{}+sqrt(({}*{})^2+({}*{})^2)", {k, bending, k, bending, k_tau, torque}),
                                   cycles.range.value(), "MPa");
    };
    return {mises ? "von Mises stress" : "first principal stress", mises ? "sigma_v" : "sigma_1", step};
}

// What a unit load gives, for the loads that cycle.
std::vector<WorkedStep> stress_steps(const Load& load, const WeldUnitStress& stress)
{
    bool torque = false, bends = false;
    for_each_event(load, [&](double torque_range, double bending, double, const TorqueBlock*)
                   { torque = torque || torque_range > 0, bends = bends || bending > 0; });
    std::vector<WorkedStep> steps;
    if (torque) append(steps, stress.torque_worked);
    if (bends) append(steps, stress.bending_worked);
    return steps;
}

std::vector<WorkedStep> rating_steps(const WeldSpectrum& spectrum, const WeldUnitStress& stress,
                                     const WeldCurves& curves, const WeldRating& rating)
{
    std::vector<WorkedStep> steps;
    if (!spectrum.shear.empty())
        append(steps, miner_steps(shear_kind(stress), spectrum.shear, curves.shear, rating.shear));
    if (!spectrum.normal.empty())
        append(steps, miner_steps(normal_kind(stress), spectrum.normal, curves.normal, rating.normal));
    const double normal = rating.normal.utilisation, shear = rating.shear.utilisation;
    append(steps, curves.rule == InteractionRule::squares
                      ? squares_steps(normal, shear, rating.interaction.value)
                      : cubes_and_fifths_steps(normal, shear, rating.interaction.value));
    return steps;
}

const char* const stretched_note =
    "a load allows fewer than 10 000 cycles: the curve is stretched there, strength governs";

}  // namespace

WeldSpectrum weld_spectrum(const Load& load, const WeldUnitStress& stress, const BlockFactor& relief)
{
    WeldSpectrum spectrum;
    spectrum.mean = mean_stress(load);
    for_each_event(load,
                   [&](double torque_range, double bending, double count, const TorqueBlock* block)
                   {
                       const double factor = relief && block != nullptr ? relief(*block) : 1;
                       const double shear = std::abs(stress.shear_by_torque) * torque_range / factor;
                       const double bending_shear = 2 * std::abs(stress.shear_by_bending) * bending;
                       const double normal = 2 * std::abs(stress.normal_by_bending) * bending;
                       if (shear > 0) spectrum.shear.push_back({Megapascal{shear}, count, torque_range, 0, factor});
                       if (bending_shear > 0) spectrum.shear.push_back({Megapascal{bending_shear}, count, 0, bending});
                       if (normal > 0) spectrum.normal.push_back({Megapascal{normal}, count, 0, bending});
                   });
    return spectrum;
}

Spectrum equivalent_spectrum(const Load& load, const WeldUnitStress& stress, Equivalent equivalent)
{
    Spectrum spectrum;
    for_each_event(load,
                   [&](double torque_range, double bending, double count, const TorqueBlock*)
                   {
                       const double shear = std::abs(stress.shear_by_torque) * torque_range;
                       const double normal = 2 * std::abs(stress.normal_by_bending) * bending;
                       const double range = equivalent == Equivalent::von_mises
                                                ? std::sqrt(normal * normal + 3 * shear * shear)
                                                : normal / 2 + std::hypot(normal / 2, shear);
                       if (range > 0) spectrum.push_back({Megapascal{range}, count, torque_range, bending});
                   });
    return spectrum;
}

double allowed_sum(InteractionRule rule, MeanStress mean)
{
    return rule == InteractionRule::squares ? miner_limit(mean).value : 1.0;
}

MeanStress mean_stress(const Load& load)
{
    constexpr double steady_share = 0.1;
    double low = INFINITY, high = -INFINITY, largest = 0;
    for (const TorqueBlock& block : load.blocks)
    {
        const double mean = (block.high + block.low).value() / 2;
        low = std::min(low, mean), high = std::max(high, mean);
        largest = std::max(largest, (block.high - block.low).value());
    }
    return high - low > steady_share * largest ? MeanStress::strongly_fluctuating : MeanStress::steady;
}

WeldRating weld_rating(const WeldSpectrum& spectrum, const WeldCurves& curves, double error_pct)
{
    WeldRating rating;
    const double limit = allowed_sum(curves.rule, spectrum.mean);
    rating.normal = fatigue_utilisation(spectrum.normal, curves.normal, Amplitude::variable, limit);
    rating.shear = fatigue_utilisation(spectrum.shear, curves.shear, Amplitude::variable, limit);
    rating.interaction = joined(curves.rule, rating.normal.utilisation, rating.shear.utilisation);
    const InteractionRule other =
        curves.rule == InteractionRule::squares ? InteractionRule::cubes_and_fifths : InteractionRule::squares;
    rating.by_other_rule = joined(other, rating.normal.utilisation, rating.shear.utilisation).value.utilisation;
    rating.life =
        life_factor([&](double factor) { return with_error(utilisation(spectrum, curves, factor), error_pct); },
                    steepest_slope(curves));
    return rating;
}

CheckRow weld_row(const Case& asked, const RowTitle& title, const WeldUnitStress& unit, const WeldCurves& classes)
{
    const WeldUnitStress stress = rated_stress(asked, title.site, unit);
    const WeldCurves curves = rated_curves(asked, classes);
    const Sourced<std::string> rated = rating_note(asked, title.site, classes);
    const WeldSpectrum spectrum = weld_spectrum(
        asked.load, stress, [&](const TorqueBlock& block) { return shear_relief_factor(asked, curves.rule, block); });
    const double error_pct = std::max(spectrum.shear.empty() ? 0 : stress.shear_error_pct,
                                      spectrum.normal.empty() ? 0 : stress.normal_error_pct);
    const WeldRating rating = weld_rating(spectrum, curves, error_pct);
    CheckRow row = titled_row(title);
    row.demand = rating.interaction.value.utilisation;
    row.brief = fmt::format("σ {:.2f}, τ {:.2f}", rating.normal.utilisation, rating.shear.utilisation);
    row.error_pct = error_pct;
    row.utilisation = with_error(row.demand, row.error_pct);
    row.life = rating.life;
    row.source = curves.normal.source;
    if (curves.shear.source != row.source) append_note(row.source, curves.shear.source);
    append_note(row.source, rating.interaction.source);
    row.provenance = weaker(weaker(curves.normal.provenance, curves.shear.provenance), rating.interaction.provenance);
    append_note(row.note, fmt::format("{} and {}", curves.normal.name, curves.shear.name));
    append_note(row.note, fmt::format("normal stress {:.3f} ({}), shear {:.3f} ({})", rating.normal.utilisation,
                                      damage_words(rating.normal.damage), rating.shear.utilisation,
                                      damage_words(rating.shear.damage)));
    append_note(row.note, rating.interaction.value.note);
    append_note(row.note, fmt::format("Miner sum {:.1f} allowed", allowed_sum(curves.rule, spectrum.mean)));
    append_note(row.note, fmt::format("joined by {} instead: {:.3f}",
                                      curves.rule == InteractionRule::squares ? "cubes and fifths" : "squares",
                                      rating.by_other_rule));
    if (rating.normal.extrapolated || rating.shear.extrapolated) append_note(row.note, stretched_note);
    append_note(row.note, rated.value);
    row.provenance = weaker(row.provenance, rated.provenance);
    row.worked = stress_steps(asked.load, stress);
    if (!spectrum.normal.empty()) append(row.worked, curves.worked);
    if (!spectrum.shear.empty()) append(row.worked, curves.shear_worked);
    append(row.worked, rating_steps(spectrum, stress, curves, rating));
    row.worked = without_repeats(row.worked);
    row.worked.push_back(utilisation_step(row.demand, row.error_pct, row.utilisation));
    return row;
}

CheckRow equivalent_row(const Case& asked, const RowTitle& title, const WeldUnitStress& unit, Equivalent equivalent,
                        const SnCurve& plain)
{
    const WeldUnitStress stress = rated_stress(asked, title.site, unit);
    const SnCurve curve = rated_equivalent_curve(asked, plain);
    const Spectrum spectrum = equivalent_spectrum(asked.load, stress, equivalent);
    const double limit = allowed_sum(InteractionRule::squares, mean_stress(asked.load));
    const FatigueUtilisation rating = fatigue_utilisation(spectrum, curve, Amplitude::variable, limit);
    CheckRow row = titled_row(title);
    row.demand = rating.utilisation;
    row.brief = damage_words(rating.damage);
    row.error_pct = spectrum.empty() ? 0 : std::max(stress.shear_error_pct, stress.normal_error_pct);
    row.utilisation = with_error(row.demand, row.error_pct);
    const auto at = [&](double factor) {
        return with_error(1 / stress_scale_at_limit(spectrum, curve, Amplitude::variable, limit / factor),
                          row.error_pct);
    };
    row.life = life_factor(at, 1.05 * std::max(curve.slope, curve.slope_beyond_variable));
    row.source = curve.source;
    row.provenance = weaker(curve.provenance, Provenance::from_memory);
    append_note(row.note, fmt::format("{}, {}", curve.name, row.brief));
    append_note(row.note, fmt::format("Miner sum {:.1f} allowed", limit));
    if (rating.extrapolated) append_note(row.note, stretched_note);
    if (asked.rating.survival)
        append_note(row.note, fmt::format("survival {:.4g} %: class times {:.3f} (judgement)",
                                          100 * *asked.rating.survival, survival_factor(asked.rating, plain.slope)));
    if (asked.rating.survival) row.provenance = weaker(row.provenance, Provenance::judgement);
    row.worked = stress_steps(asked.load, stress);
    if (asked.rating.survival)
        row.worked.push_back(
            worked_step("class with the survival asked", "FAT' = k FAT",
                        put_in("{}*{}", {survival_factor(asked.rating, plain.slope), plain.fatigue_class.value()}),
                        curve.fatigue_class.value(), "MPa"));
    if (!spectrum.empty())
        append(row.worked, miner_steps(equivalent_kind(stress, equivalent), spectrum, curve, rating));
    row.worked.push_back(utilisation_step(row.demand, row.error_pct, row.utilisation));
    return row;
}

void thicken(WeldCurves& curves, Millimetre thickness, double exponent)
{
    const double factor = thickness_factor(thickness, exponent), listed = curves.normal.fatigue_class.value();
    curves.normal.fatigue_class = factor * curves.normal.fatigue_class;
    if (factor != 1)
        curves.worked.push_back(
            thickness_step(listed, thickness.value(), exponent, curves.normal.fatigue_class.value()));
}

void append_note(std::string& note, const std::string& more)
{
    if (more.empty()) return;
    note += fmt::format("{}{}", note.empty() ? "" : "; ", more);
}

}  // namespace splicewright
