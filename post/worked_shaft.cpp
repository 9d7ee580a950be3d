// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/worked_shaft.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "post/worked_fatigue.h"

namespace splicewright
{
namespace
{

// What the finite elements and the notch give for one load.
struct NotchSymbols
{
    const char *load, *concentration, *peak, *nominal, *sensitivity, *factor, *root_formula, *root_numbers;
};

// Source: [Shigley2011] eq. 6-35, as in notch_sensitivity.
constexpr NotchSymbols bending_symbols{"bending",
                                       "K_t",
                                       "k_sigma",
                                       "k_n",
                                       "q",
                                       "K_f",
                                       "sqrt(a) = 1.24 - 2.25e-3 S + 1.60e-6 S^2 - 4.11e-10 S^3",
                                       "1.24-2.25e-3*{}+1.60e-6*{}^2-4.11e-10*{}^3"};
constexpr NotchSymbols torsion_symbols{"torsion",
                                       "K_ts",
                                       "k_tau",
                                       "k_n",
                                       "q_s",
                                       "K_fs",
                                       "sqrt(a) = 0.958 - 1.83e-3 S + 1.43e-6 S^2 - 4.11e-10 S^3",
                                       "0.958-1.83e-3*{}+1.43e-6*{}^2-4.11e-10*{}^3"};

// Fully reversed amplitude of a block at a factor on its stresses, MPa.
double reversed(const StressBlock& block, const ShaftSnLine& line, double scale)
{
    const EquivalentStress stress{scale * block.stress.alternating, scale * block.stress.mean};
    const std::optional<Megapascal> amplitude = goodman_reversed(stress, line.tensile);
    return amplitude ? amplitude->value() : INFINITY;
}

double term(const StressBlock& block, const ShaftSnLine& line, double scale)
{
    const double amplitude = reversed(block, line, scale);
    return std::isfinite(amplitude) ? block.count / shaft_cycles(line, Megapascal{amplitude}) : INFINITY;
}

WrittenSum written_shaft_sum(const std::vector<StressBlock>& blocks, const ShaftSnLine& line, double scale)
{
    std::vector<double> terms;
    for (const StressBlock& block : blocks) terms.push_back(term(block, line, scale));
    const ShaftSnSlopes slope = shaft_sn_slopes(line);
    const auto write = [&](std::size_t at)
    {
        const EquivalentStress& stress = blocks[at].stress;
        const bool above = reversed(blocks[at], line, scale) > thousand_cycle_strength(line);
        const double power = above ? slope.above : slope.below, left = 1 - scale * stress.mean / line.tensile;
        constexpr double well_conditioned = 100;  // times an error of 5e-7 in the last of seven digits
        return put_in("{}/(1000*({}/({}*{}/(1-{}*{}/{})))^{})",
                      {blocks[at].count, thousand_cycle_strength(line), scale, stress.alternating.value(), scale,
                       stress.mean.value(), line.tensile.value(), power},
                      power / left < well_conditioned ? Digits::seven : Digits::eleven);
    };
    return written_sum(terms, write);
}

std::vector<WorkedStep> event_steps(const ShaftEvent& event, const ShaftUnitStress& unit, const StressBlock& block)
{
    const std::string cycles = fmt::format("{:.7g} cycles", event.count);
    return {worked_step(fmt::format("von Mises stress that alternates, {}", cycles),
                        "sigma_a = sqrt((k_sigma M)^2 + 3 (k_tau T_a)^2)",
                        put_in("sqrt(({}*{})^2+3*({}*{})^2)",
                               {unit.bending, event.couple, unit.shear, event.torque_alternating}),
                        block.stress.alternating.value(), "MPa"),
            worked_step(fmt::format("mean von Mises stress, {}", cycles), "sigma_m = sqrt(sigma_n^2 + 3 (k_tau T_m)^2)",
                        put_in("sqrt({}^2+3*({}*{})^2)", {unit.pull, unit.shear, event.torque_mean}),
                        block.stress.mean.value(), "MPa")};
}

std::vector<WorkedStep> slope_steps(const ShaftSnLine& line, bool above)
{
    std::vector<WorkedStep> steps{worked_step(
        "slope of the S-N line from 1e3 to 1e6 cycles, extended below S_e", "b = 3/log10(f S/S_e)",
        put_in("3/log10({}*{}/{})", {line.thousand_cycle_share, line.tensile.value(), line.endurance.value()}),
        shaft_sn_slopes(line).below, "")};
    if (above)
        steps.push_back(worked_step("slope of the line from S at one cycle to f S at 1e3", "b_1 = 3/log10(1/f)",
                                    put_in("3/log10(1/{})", {line.thousand_cycle_share}), shaft_sn_slopes(line).above,
                                    ""));
    return steps;
}

// The factor found makes the worst block reach the endurance limit: below it life is endless.
std::vector<WorkedStep> endless_steps(const std::vector<StressBlock>& blocks, const ShaftSnLine& line,
                                      const ShaftFatigue& fatigue)
{
    const auto use = [&](const StressBlock& block)
    { return block.stress.alternating / line.endurance + block.stress.mean / line.tensile; };
    const StressBlock& worst =
        *std::max_element(blocks.begin(), blocks.end(), [&](const auto& a, const auto& b) { return use(a) < use(b); });
    return {worked_step("Goodman: the worst block against endless life; a little above it the damage exceeds its limit",
                        "u = sigma_a/S_e + sigma_m/S",
                        put_in("{}/{}+{}/{}", {worst.stress.alternating.value(), line.endurance.value(),
                                               worst.stress.mean.value(), line.tensile.value()}),
                        fatigue.utilisation, "")};
}

std::vector<WorkedStep> finite_steps(const std::vector<StressBlock>& blocks, const ShaftSnLine& line,
                                     const ShaftFatigue& fatigue)
{
    const double scale = fatigue.stress_scale;
    const WrittenSum sum = written_shaft_sum(blocks, line, scale);
    const bool above = std::any_of(blocks.begin(), blocks.end(),
                                   [&](const StressBlock& block)
                                   { return reversed(block, line, scale) > thousand_cycle_strength(line); });
    std::vector<WorkedStep> steps = slope_steps(line, above);
    steps.push_back(searched_step(
        fmt::format("factor s on all stresses at which the damage is the {:g} allowed, searched", fatigue.damage_limit),
        fmt::format("D(s) = {:g}", fatigue.damage_limit), scale, ""));
    steps.push_back(worked_step(
        fmt::format("the damage at that factor{}{}", above ? ", b_1 in place of b beyond f S" : "", sum.which),
        "D(s) = sum of n/(1000 (f S/(s sigma_a/(1 - s sigma_m/S)))^b)", sum.numbers, sum.sum, ""));
    steps.push_back(
        worked_step("share of the allowed stress", "u = 1/s", put_in("1/{}", {scale}), fatigue.utilisation, ""));
    return steps;
}

}  // namespace

std::vector<StressBlock> shaft_blocks(const std::vector<ShaftEvent>& events, const ShaftUnitStress& unit)
{
    std::vector<StressBlock> blocks;
    for (const ShaftEvent& event : events)
        blocks.push_back({equivalent_stress({Megapascal{unit.bending * event.couple}, Megapascal{unit.pull},
                                             Megapascal{unit.shear * event.torque_alternating},
                                             Megapascal{unit.shear * event.torque_mean}}),
                          event.count});
    return blocks;
}

std::vector<WorkedStep> endurance_steps(const EnduranceQuery& query, const EnduranceLimit& limit)
{
    const double tensile = query.tensile.value(), diameter = query.diameter.value();
    const SurfaceLaw law = surface_law(query.surface);
    return {worked_step("endurance limit of the specimen from the tensile strength S", "S_e' = min(0.5 S, 700)",
                        put_in("min(0.5*{},700)", {tensile}), limit.specimen.value(), "MPa"),
            worked_step(fmt::format("surface, {}", law.name),
                        fmt::format("k_a = min({:g} S^{:g}, 1)", law.factor, law.exponent),
                        put_in("min({}*{}^{},1)", {law.factor, tensile, law.exponent}), limit.surface, ""),
            worked_step("size", diameter <= 51 ? "k_b = 1.24 d^-0.107" : "k_b = 1.51 d^-0.157",
                        put_in(diameter <= 51 ? "1.24*{}^(-0.107)" : "1.51*{}^(-0.157)", {diameter}), limit.size, ""),
            worked_step("load, combined by von Mises", "k_c = 1", put(limit.load), limit.load, ""),
            read_step("reliability of 99 %, k_e, from a table", limit.reliability, ""),
            worked_step("endurance limit", "S_e = k_a k_b k_c k_e S_e'",
                        put_in("{}*{}*{}*{}*{}",
                               {limit.surface, limit.size, limit.load, limit.reliability, limit.specimen.value()}),
                        limit.limit.value(), "MPa")};
}

WorkedStep thousand_cycle_step(double tensile, const std::optional<double>& share, double taken)
{
    const std::string what = "share of the tensile strength that lasts 1000 cycles";
    if (!share) return read_step(fmt::format("{}, beyond the chart: judgement, f", what), taken, "");
    if (tensile <= 500) return read_step(fmt::format("{}, f, up to 500 MPa", what), taken, "");
    return worked_step(what, "f = 1.06 - 4.1e-4 S + 1.5e-7 S^2",
                       put_in("1.06-4.1e-4*{}+1.5e-7*{}^2", {tensile, tensile}), taken, "");
}

std::vector<WorkedStep> notch_steps(const WorkedNotch& notch)
{
    const NotchSymbols& s = notch.load == NotchLoad::bending ? bending_symbols : torsion_symbols;
    const double error_pct = notch.peak.value > 0 ? 100 * notch.peak.error / notch.peak.value : 0;
    const double q = notch.sensitivity.value_or(1), from = std::max(1.0, notch.concentration);
    std::vector<WorkedStep> steps{
        read_step(fmt::format("largest stress in the notch by 1 N·mm of {}, {}", s.load, by_finite_elements(error_pct)),
                  notch.peak.value, "MPa per N·mm"),
        worked_step(fmt::format("concentration factor in {}, over the nominal stress", s.load),
                    fmt::format("{} = k/{}", s.concentration, s.nominal),
                    put_in("{}/{}", {notch.peak.value, notch.nominal}), notch.concentration, "")};
    if (notch.sensitivity)
    {
        const double root_a = notch.root_a, S = notch.tensile;
        steps.push_back(worked_step(fmt::format("Neuber's constant in {}, S in MPa", s.load), s.root_formula,
                                    put_in(s.root_numbers, {S, S, S}), root_a, "mm^0.5"));
        steps.push_back(worked_step(fmt::format("notch sensitivity in {}", s.load),
                                    fmt::format("{} = 1/(1 + sqrt(a)/sqrt(r))", s.sensitivity),
                                    put_in("1/(1+{}/sqrt({}))", {root_a, notch.radius}), q, ""));
    }
    else steps.push_back(read_step(fmt::format("notch sensitivity in {}, outside the fit: full", s.load), q, ""));
    steps.push_back(worked_step(
        fmt::format("fatigue notch factor in {}{}", s.load, notch.concentration < 1 ? ", no less than 1" : ""),
        fmt::format("{} = 1 + {} ({} - 1)", s.factor, s.sensitivity, s.concentration), put_in("1+{}*({}-1)", {q, from}),
        notch.factor, ""));
    return steps;
}

std::vector<WorkedStep> local_stress_steps(const RoundSection& section, double axial, const ShaftUnitStress& nominal,
                                           const FatigueNotchFactors& factors, const ShaftUnitStress& local)
{
    const char* const per_couple = "MPa per N·mm";
    const bool notched = factors.bending != 1 || factors.torsion != 1;
    std::vector<WorkedStep> steps;
    const auto add = [&](const WorkedStep& smooth, const char* formula, double factor, double result)
    {
        steps.push_back(smooth);
        if (notched)
            steps.push_back(worked_step("with the fatigue notch factor", formula,
                                        put_in("{}*{}", {factor, smooth.result}), result, smooth.unit));
    };
    add(bending_step(section, 1, nominal.bending, per_couple), "k_sigma = K_f k_sigma", factors.bending, local.bending);
    add(shear_step(section, 1, nominal.shear, per_couple), "k_tau = K_fs k_tau", factors.torsion, local.shear);
    if (axial != 0) add(axial_step(section, axial, nominal.pull), "sigma_n = K_f sigma_n", factors.bending, local.pull);
    return steps;
}

std::vector<WorkedStep> shaft_steps(const std::vector<ShaftEvent>& events, const ShaftUnitStress& unit,
                                    const std::vector<StressBlock>& blocks, const ShaftSnLine& line,
                                    const ShaftFatigue& fatigue)
{
    if (!std::isfinite(fatigue.stress_scale)) return {read_step("no load of this life alternates: u", 0, "")};
    std::vector<StressBlock> alternating;
    std::vector<std::size_t> event_of;
    std::vector<double> terms;
    for (std::size_t at = 0; at < blocks.size(); ++at)
    {
        if (blocks[at].count == 0 || blocks[at].stress.alternating.value() == 0) continue;
        alternating.push_back(blocks[at]);
        event_of.push_back(at);
        terms.push_back(term(blocks[at], line, fatigue.stress_scale));
    }
    std::vector<WorkedStep> steps;
    for (const std::size_t at : largest_terms(terms))
        append(steps, event_steps(events[event_of[at]], unit, alternating[at]));
    // On the line extended below the endurance limit; more than allowed: that limit is what stopped the search.
    const double damage = std::accumulate(terms.begin(), terms.end(), 0.0);
    append(steps, damage > fatigue.damage_limit * (1 + 1e-6) ? endless_steps(alternating, line, fatigue)
                                                             : finite_steps(alternating, line, fatigue));
    return steps;
}

}  // namespace splicewright
