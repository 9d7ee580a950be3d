// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/damage.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

bool counts(const StressCycles& block)
{
    EXPECTS(std::isfinite(block.range.value()) && block.range.value() >= 0);
    EXPECTS(std::isfinite(block.count) && block.count >= 0);
    return block.range.value() > 0 && block.count > 0;
}

Megapascal largest_range(const Spectrum& spectrum)
{
    Megapascal largest;
    for (const StressCycles& block : spectrum)
        if (counts(block)) largest = std::max(largest, block.range);
    return largest;
}

double scaled_sum(const Spectrum& spectrum, const SnCurve& curve, Amplitude amplitude, double scale)
{
    double sum = 0;
    for (const StressCycles& block : spectrum)
        if (counts(block)) sum += block.count / cycles(curve, scale * block.range, amplitude).cycles;
    return sum;
}

}  // namespace

double miner_sum(const Spectrum& spectrum, const SnCurve& curve, Amplitude amplitude)
{
    return scaled_sum(spectrum, curve, amplitude, 1.0);
}

double stress_scale_at_limit(const Spectrum& spectrum, const SnCurve& curve, Amplitude amplitude, double damage_limit)
{
    EXPECTS(damage_limit > 0);
    const Megapascal largest = largest_range(spectrum);
    if (largest.value() == 0) return std::numeric_limits<double>::infinity();

    // With the largest range at the knee the sum can neither overflow nor vanish. From there, in logarithms,
    // damage rises with a slope between the two slopes of the curve, which brackets the root.
    const double at_knee = knee_range(curve) / largest;
    const auto excess = [&](double log_scale)
    { return std::log(scaled_sum(spectrum, curve, amplitude, at_knee * std::exp(log_scale)) / damage_limit); };
    const double gentle = curve.slope;
    const double steep = amplitude == Amplitude::constant ? curve.slope_beyond_constant : curve.slope_beyond_variable;
    const double start = excess(0);
    double low = std::min(-start / gentle, -start / steep), high = std::max(-start / gentle, -start / steep);
    while (high - low > 1e-13 * std::max(1.0, std::abs(low)))
    {
        const double middle = low + (high - low) / 2;
        if (middle <= low || middle >= high) break;
        (excess(middle) > 0 ? high : low) = middle;
    }
    return at_knee * std::exp(low + (high - low) / 2);
}

FatigueUtilisation fatigue_utilisation(const Spectrum& spectrum, const SnCurve& curve, Amplitude amplitude,
                                       double damage_limit)
{
    FatigueUtilisation answer;
    answer.damage = miner_sum(spectrum, curve, amplitude);
    answer.damage_limit = damage_limit;
    answer.stress_scale = stress_scale_at_limit(spectrum, curve, amplitude, damage_limit);
    answer.utilisation = 1 / answer.stress_scale;
    for (const StressCycles& block : spectrum)
        if (counts(block) && cycles(curve, block.range, amplitude).extrapolated) answer.extrapolated = true;
    return answer;
}

Sourced<double> miner_limit(MeanStress mean)
{
    return {mean == MeanStress::steady ? 0.5 : 0.2, "IIW-2259-15 (Hobbacher 2016), sec. 4.3 [Hobbacher2016]",
            Provenance::from_memory};
}

Sourced<double> safe_life_partial_factor()
{
    return {1.35, "EN 1993-1-9:2005, table 3.1, safe life, high consequence [Eurocode3Fatigue2005]",
            Provenance::from_memory};
}

Sourced<Interaction> squares_interaction(double normal_utilisation, double shear_utilisation, Phase phase)
{
    EXPECTS(normal_utilisation >= 0 && shear_utilisation >= 0);
    // Source: [Hobbacher2016] sec. 4.2, from memory: shear below 15 % of normal may be left out. Read elsewhere the
    // other way round as well; normal stress beside shear is never left out here, which is the safe reading.
    constexpr double negligible_share = 0.15;

    Interaction interaction;
    if (normal_utilisation == 0 || shear_utilisation < negligible_share * normal_utilisation)
    {
        interaction.sum = std::max(normal_utilisation * normal_utilisation, shear_utilisation * shear_utilisation);
        interaction.limit = 1;
        interaction.note = normal_utilisation == 0 ? "shear alone" : "shear neglected: below 15 % of normal";
    }
    else
    {
        interaction.sum = normal_utilisation * normal_utilisation + shear_utilisation * shear_utilisation;
        interaction.limit = phase == Phase::proportional ? 1.0 : 0.5;
        interaction.note = phase == Phase::proportional ? "proportional: CV = 1.0" : "not proportional: CV = 0.5";
    }
    interaction.utilisation = std::sqrt(interaction.sum / interaction.limit);
    return {interaction, "(u_n^2 + u_s^2) <= CV: IIW-2259-15 (Hobbacher 2016), sec. 4.2 [Hobbacher2016]",
            Provenance::from_memory};
}

Sourced<Interaction> eurocode_interaction(double normal_utilisation, double shear_utilisation)
{
    EXPECTS(normal_utilisation >= 0 && shear_utilisation >= 0);
    Interaction interaction;
    interaction.sum = std::pow(normal_utilisation, 3) + std::pow(shear_utilisation, 5);

    // The sum at stresses divided by v falls as v grows; it is >= 1 at the greater and <= 1 at the total of the two.
    double low = std::max(normal_utilisation, shear_utilisation), high = normal_utilisation + shear_utilisation;
    while (high - low > 1e-14 * high)
    {
        const double v = low + (high - low) / 2;
        if (v <= low || v >= high) break;
        const double sum = std::pow(normal_utilisation / v, 3) + std::pow(shear_utilisation / v, 5);
        (sum > 1 ? low : high) = v;
    }
    interaction.utilisation = high;
    return {interaction, "u_n^3 + u_s^5 <= 1: EN 1993-1-9:2005, sec. 8(3) [Eurocode3Fatigue2005]",
            Provenance::from_memory};
}

std::string damage_words(double damage)
{
    return std::isfinite(damage) ? fmt::format("damage {:.2g}", damage)
                                 : "damage without bound: one load is beyond the strength";
}

}  // namespace splicewright
