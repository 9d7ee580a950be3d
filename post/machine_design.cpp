// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/machine_design.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr double infinity = std::numeric_limits<double>::infinity();

double surface_factor(SurfaceFinish finish, double tensile_MPa)
{
    const SurfaceLaw law = surface_law(finish);
    return std::min(1.0, law.factor * std::pow(tensile_MPa, law.exponent));
}

// Source: [Shigley2011] eq. 6-20.
double size_factor(double diameter_mm)
{
    return diameter_mm <= 51 ? 1.24 * std::pow(diameter_mm, -0.107) : 1.51 * std::pow(diameter_mm, -0.157);
}

// Source: [Shigley2011] eq. 6-26.
double load_factor(FatigueLoad load)
{
    switch (load)
    {
        case FatigueLoad::combined: return 1.0;
        case FatigueLoad::axial: return 0.85;
        case FatigueLoad::torsion: return 0.59;
    }
    return 0;
}

// Source: [Shigley2011] table 6-5.
double reliability_factor(Reliability reliability)
{
    switch (reliability)
    {
        case Reliability::percent_50: return 1.0;
        case Reliability::percent_90: return 0.897;
        case Reliability::percent_95: return 0.868;
        case Reliability::percent_99: return 0.814;
        case Reliability::percent_99_9: return 0.753;
        case Reliability::percent_99_99: return 0.702;
    }
    return 0;
}

void expect_sound(const EquivalentStress& stress)
{
    EXPECTS(stress.alternating.value() >= 0 && stress.mean.value() >= 0);
}

std::vector<StressBlock> scaled(const std::vector<StressBlock>& blocks, double factor)
{
    std::vector<StressBlock> answer = blocks;
    for (StressBlock& block : answer) block.stress = {factor * block.stress.alternating, factor * block.stress.mean};
    return answer;
}

// Goodman-equivalent amplitude, infinite when the mean alone reaches the tensile strength.
double reversed_or_infinite(const StressBlock& block, Megapascal tensile)
{
    const std::optional<Megapascal> reversed = goodman_reversed(block.stress, tensile);
    return reversed ? reversed->value() : infinity;
}

bool counts(const StressBlock& block)
{
    expect_sound(block.stress);
    EXPECTS(std::isfinite(block.count) && block.count >= 0);
    return block.count > 0 && block.stress.alternating.value() > 0;
}

}  // namespace

SurfaceLaw surface_law(SurfaceFinish finish)
{
    switch (finish)
    {
        case SurfaceFinish::ground: return {1.58, -0.085, "ground"};
        case SurfaceFinish::machined: return {4.51, -0.265, "machined"};
        case SurfaceFinish::hot_rolled: return {57.7, -0.718, "hot-rolled"};
        case SurfaceFinish::forged: return {272, -0.995, "as forged"};
    }
    return {};
}

Sourced<std::optional<EnduranceLimit>> endurance_limit(const EnduranceQuery& query)
{
    const double tensile = query.tensile.value(), diameter = query.diameter.value();
    EXPECTS(tensile > 0 && diameter > 0);
    const std::string source =
        "Marin factors: Shigley 9th ed. table 6-2, eq. 6-8 (from memory: verify), 6-18 to 6-26, table 6-5 "
        "[Shigley2011]";
    if (diameter < 2.79 || diameter > 254) return {std::nullopt, source, Provenance::secondary};

    EnduranceLimit answer;
    answer.surface = surface_factor(query.surface, tensile);
    answer.size = query.load == FatigueLoad::axial ? 1.0 : size_factor(diameter);
    answer.load = load_factor(query.load);
    answer.reliability = reliability_factor(query.reliability);
    answer.specimen = Megapascal{std::min(0.5 * tensile, 700.0)};
    answer.limit = answer.surface * answer.size * answer.load * answer.reliability * answer.specimen;
    return {answer, source, Provenance::secondary};
}

Sourced<NotchSensitivity> notch_sensitivity(Megapascal tensile, Millimetre radius, NotchLoad load)
{
    const double S = tensile.value();
    EXPECTS(S > 0 && radius.value() > 0);
    NotchSensitivity answer;
    const double greatest = load == NotchLoad::bending ? 1700 : 1500;
    if (S < 340 || S > greatest)
        answer.absent_because =
            fmt::format("tensile strength is {:.0f} MPa, the fit covers 340 to {:.0f} MPa", S, greatest);
    else
    {
        const double root_a = load == NotchLoad::bending ? 1.24 - 2.25e-3 * S + 1.60e-6 * S * S - 4.11e-10 * S * S * S
                                                         : 0.958 - 1.83e-3 * S + 1.43e-6 * S * S - 4.11e-10 * S * S * S;
        answer.q = 1 / (1 + root_a / std::sqrt(radius.value()));
        answer.root_a = root_a;
    }
    return {answer, "Neuber: Shigley 9th ed. eq. 6-33 to 6-35, its kpsi fits turned into MPa and mm [Shigley2011]",
            Provenance::secondary};
}

double fatigue_notch_factor(double concentration_factor, double sensitivity)
{
    EXPECTS(concentration_factor >= 1 && sensitivity >= 0 && sensitivity <= 1);
    return 1 + sensitivity * (concentration_factor - 1);
}

EquivalentStress equivalent_stress(const FluctuatingStress& stress)
{
    const auto von_mises = [](Megapascal normal, Megapascal shear)
    { return Megapascal{std::hypot(normal.value(), std::sqrt(3.0) * shear.value())}; };
    return {von_mises(stress.normal_alternating, stress.shear_alternating),
            von_mises(stress.normal_mean, stress.shear_mean)};
}

Sourced<double> goodman_safety(const EquivalentStress& stress, Megapascal endurance, Megapascal tensile)
{
    expect_sound(stress);
    EXPECTS(endurance.value() > 0 && tensile.value() > 0);
    return {1 / (stress.alternating / endurance + stress.mean / tensile),
            "distortion energy with Goodman: Shigley 9th ed. eq. 7-7 [Shigley2011]", Provenance::from_memory};
}

Sourced<double> gerber_safety(const EquivalentStress& stress, Megapascal endurance, Megapascal tensile)
{
    expect_sound(stress);
    EXPECTS(endurance.value() > 0 && tensile.value() > 0);
    // (x/2)(1 + sqrt(1 + (2 y/x)^2)) written so that x = 0 is no division by zero.
    const double x = stress.alternating / endurance, y = stress.mean / tensile;
    return {2 / (x + std::hypot(x, 2 * y)), "distortion energy with Gerber: Shigley 9th ed. eq. 7-9 [Shigley2011]",
            Provenance::secondary};
}

std::optional<Megapascal> goodman_reversed(const EquivalentStress& stress, Megapascal tensile)
{
    expect_sound(stress);
    EXPECTS(tensile.value() > 0);
    if (stress.mean >= tensile) return std::nullopt;
    return stress.alternating / (1 - stress.mean / tensile);
}

Sourced<std::optional<double>> thousand_cycle_share(Megapascal tensile)
{
    const double S = tensile.value();
    EXPECTS(S > 0);
    std::optional<double> share;
    if (S <= 500) share = 0.9;
    else if (S <= 1400) share = 1.06 - 4.1e-4 * S + 1.5e-7 * S * S;
    return {share, "Shigley 9th ed. fig. 6-18 [Shigley2011]", Provenance::from_memory};
}

double thousand_cycle_strength(const ShaftSnLine& line) { return line.thousand_cycle_share * line.tensile.value(); }

ShaftSnSlopes shaft_sn_slopes(const ShaftSnLine& line)
{
    return {3 / std::log10(thousand_cycle_strength(line) / line.endurance.value()),
            3 / std::log10(1 / line.thousand_cycle_share)};
}

double shaft_cycles(const ShaftSnLine& line, Megapascal reversed_amplitude)
{
    const double amplitude = reversed_amplitude.value(), thousand = thousand_cycle_strength(line);
    EXPECTS(amplitude >= 0 && line.endurance.value() > 0 && line.endurance.value() < thousand);
    EXPECTS(thousand < line.tensile.value());
    if (amplitude == 0) return infinity;
    const ShaftSnSlopes slopes = shaft_sn_slopes(line);
    return 1e3 * std::pow(thousand / amplitude, amplitude > thousand ? slopes.above : slopes.below);
}

double shaft_miner_sum(const std::vector<StressBlock>& blocks, const ShaftSnLine& line)
{
    double sum = 0, largest = 0;
    for (const StressBlock& block : blocks)
    {
        if (!counts(block)) continue;
        const double amplitude = reversed_or_infinite(block, line.tensile);
        if (!std::isfinite(amplitude)) return infinity;
        largest = std::max(largest, amplitude);
        sum += block.count / shaft_cycles(line, Megapascal{amplitude});
    }
    return largest > line.endurance.value() ? sum : 0;
}

Sourced<ShaftFatigue> shaft_fatigue(const std::vector<StressBlock>& blocks, const ShaftSnLine& line,
                                    double damage_limit)
{
    EXPECTS(damage_limit > 0);
    ShaftFatigue answer;
    answer.damage = shaft_miner_sum(blocks, line);
    answer.damage_limit = damage_limit;

    double goodman = 0;         // largest a/Se + m/Sut: at 1/goodman the first block reaches the endurance limit
    double ceiling = infinity;  // above it every block that counts is beyond (Sut, 1 cycle)
    for (const StressBlock& block : blocks)
    {
        if (!counts(block)) continue;
        goodman = std::max(goodman, 1 / goodman_safety(block.stress, line.endurance, line.tensile).value);
        ceiling = std::min(ceiling, line.tensile / (block.stress.alternating + block.stress.mean));
        const double amplitude = reversed_or_infinite(block, line.tensile);
        answer.low_cycle = answer.low_cycle || amplitude > thousand_cycle_strength(line);
    }
    const char* source =
        "Goodman-equivalent amplitudes (from memory: verify), S-N line 1e3 to 1e6 cycles, Miner: Shigley 9th ed. ch. 6 "
        "[Shigley2011]";
    if (goodman == 0)
    {
        answer.stress_scale = infinity;
        return {answer, source, Provenance::secondary};
    }
    double low = 1 / goodman, high = std::max(low, ceiling);
    while (shaft_miner_sum(scaled(blocks, high), line) <= damage_limit) high *= 2;
    while (high - low > 1e-13 * high)
    {
        const double middle = low + (high - low) / 2;
        if (middle <= low || middle >= high) break;
        (shaft_miner_sum(scaled(blocks, middle), line) > damage_limit ? high : low) = middle;
    }
    answer.stress_scale = low;
    answer.utilisation = 1 / low;
    return {answer, source, Provenance::secondary};
}

}  // namespace splicewright
