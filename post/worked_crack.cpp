// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/worked_crack.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/worked_fatigue.h"

namespace splicewright
{
namespace
{

const char* const intensity = "MPa·mm^0.5";
constexpr double scale_step = 1e-5;  // wider than the precision of crack_scale

// A crack in the middle of a round bar under one load.
struct PennyLoad
{
    const char *what, *symbol, *growth, *by, *last_term, *divisor;
    double (*intensity)(double length, double outer);
};
constexpr PennyLoad by_torque{"tearing by a torque", "p_T", "g_T", "torque", "0.038", "2", penny_torsion};
constexpr PennyLoad by_bending{"opening by bending", "p_M", "g_M", "bending", "0.483", "4", penny_bending};

WorkedStep penny_step(const PennyLoad& load, const CrackLength& at, double outer)
{
    const double length = at.mm;
    const std::string numbers = fmt::format(
        "{0}/(pi/{4}*({1}^4-{0}^4))*sqrt(pi*{0})*4/(3*pi)*sqrt(1-{2})*(1+{2}/2+3*{2}^2/8+5*{2}^3/16-93*{2}^4/"
        "128+{3}*{2}^5)",
        put(length), put(outer), put(length / outer), load.last_term, load.divisor);
    return worked_step(
        fmt::format("{} of a penny-shaped crack of radius c = {} = {:.5g} mm in a bar of radius b, x = c/b", load.what,
                    at.name, length),
        fmt::format("{} = c/I sqrt(pi c) 4/(3 pi) sqrt(1 - x) (1 + x/2 + 3 x^2/8 + 5 x^3/16 - 93 x^4/128 "
                    "+ {} x^5), I = pi/{} (b^4 - c^4)",
                    load.symbol, load.last_term, load.divisor),
        numbers, load.intensity(length, outer), "MPa·mm^0.5 per N·mm");
}

std::vector<WorkedStep> penny_steps(const PennyLoad& load, double first, const CrackLength& length, double outer)
{
    const double at_first = load.intensity(first, outer), here = load.intensity(length.mm, outer);
    return {penny_step(load, {"c_0", first}, outer), penny_step(load, length, outer),
            worked_step(fmt::format("growth of the intensity by {}", load.by),
                        fmt::format("{0} = {1}({2})/{1}(c_0)", load.growth, load.symbol, length.name),
                        put_in("{}/{}", {here, at_first}), here / at_first, "")};
}

WorkedStep range_step(const WorkedCrack& crack, const CrackCycles& cycles, const CrackLength& at, double scale)
{
    const double length = at.mm;
    const double torque = crack.by_torque * crack.growth_by_torque(length);
    const double bending = crack.by_bending * crack.growth_by_bending(length);
    return worked_step(
        fmt::format("range of the intensity at {} under the loads times s, {:.7g} cycles", at.name, cycles.count),
        "dK = s sqrt((K_T g_T dT)^2 + (2 K_M g_M M)^2)",
        put_in("{}*sqrt(({}*{})^2+(2*{}*{})^2)", {scale, torque, cycles.torque_range, bending, cycles.bending}),
        scale * cycles.range(length), intensity);
}

// Growth over the life asked for at one length.
std::vector<WorkedStep> growth_rate_steps(const WorkedCrack& crack, const ParisLaw& law, double scale,
                                          const CrackPiece& piece)
{
    std::vector<double> terms;
    std::vector<const CrackCycles*> growing;
    for (const CrackCycles& cycles : crack.plan.cycles)
    {
        const double range = scale * cycles.range(piece.middle);
        if (range <= law.threshold) continue;
        terms.push_back(cycles.count * law.constant * std::pow(range, law.slope));
        growing.push_back(&cycles);
    }
    std::vector<WorkedStep> steps;
    for (const std::size_t at : largest_terms(terms))
        steps.push_back(range_step(crack, *growing[at], {"c_m", piece.middle}, scale));
    const WrittenSum sum = written_sum(
        terms,
        [&](std::size_t at)
        {
            return put_in("{}*{}*{}^{}",
                          {growing[at]->count, law.constant, scale * growing[at]->range(piece.middle), law.slope});
        });
    steps.push_back(worked_step(
        fmt::format("growth at c_m in one life asked for, cycles above the threshold {:g}{}", law.threshold, sum.which),
        "dc/dL = sum of n C dK^m", sum.numbers, piece.growth, "mm"));
    return steps;
}

// The peak load at one length: collapse of what is left, and fracture.
std::vector<WorkedStep> static_steps(const WorkedCrack& crack, double toughness, const CrackLength& at, double scale,
                                     double result)
{
    const double length = at.mm;
    const double torque = crack.by_torque * crack.growth_by_torque(length);
    const double bending = crack.by_bending * crack.growth_by_bending(length);
    const double peak = std::hypot(torque * crack.peak_torque, bending * crack.peak_bending);
    std::vector<WorkedStep> steps = crack.collapse_steps(at);
    steps.push_back(
        worked_step(fmt::format("intensity of the peak load at {}", at.name), "K = sqrt((K_T g_T T)^2 + (K_M g_M M)^2)",
                    put_in("sqrt(({}*{})^2+({}*{})^2)", {torque, crack.peak_torque, bending, crack.peak_bending}), peak,
                    intensity));
    steps.push_back(worked_step("the worse of collapse and fracture, under the loads times s", "s max(u, K/K_c)",
                                put_in("{}*max({},{}/{})", {scale, crack.collapse(length), peak, toughness}), result,
                                ""));
    return steps;
}

// The growth from the first to the last length takes the life asked for.
std::vector<WorkedStep> integral_steps(const WorkedCrack& crack, const ParisLaw& law, double toughness, double scale,
                                       const CrackLife& life)
{
    std::vector<WorkedStep> steps{searched_step(
        "factor s on all loads, and so on all stresses and intensities, at which the growth takes just the life asked "
        "for, searched; every length below belongs to these loads, those of the note to the loads as they are",
        "L(s) = 1", scale, "")};
    const double use = scale * crack.plan.static_use(life.last);
    steps.push_back(
        searched_step("length c_e at which one peak load times s breaks what is left, searched; the growth ends there",
                      "s max(u, K/K_c) = 1 at c_e, or all but 0.1 % is gone", life.last, "mm"));
    append(steps, crack.growth_steps({"c_e", life.last}));
    append(steps, static_steps(crack, toughness, {"c_e", life.last}, scale, use));
    std::vector<double> terms;
    for (const CrackPiece& piece : life.pieces) terms.push_back(piece.length / piece.growth);
    const CrackPiece& longest = life.pieces[largest_terms(terms).front()];
    steps.push_back(
        read_step("length c_m in the middle of the piece of the growth that takes longest, worked through here",
                  longest.middle, "mm"));
    append(steps, crack.growth_steps({"c_m", longest.middle}));
    append(steps, growth_rate_steps(crack, law, scale, longest));
    const WrittenSum sum = written_sum(terms,
                                       [&](std::size_t at) {
                                           return put_in("{}/{}", {life.pieces[at].length, life.pieces[at].growth});
                                       });
    steps.push_back(
        worked_step(fmt::format("lives asked for that the growth from c_0 to c_e takes, piece by piece{}", sum.which),
                    "L(s) = sum of dc/(dc/dL)", sum.numbers, life.life, ""));
    steps.push_back(worked_step("share of the allowed stress", "u = 1/s", put_in("1/{}", {scale}), 1 / scale, ""));
    return steps;
}

// No cycle grows the crack until its range exceeds the threshold; then it ends within the life asked for.
std::vector<WorkedStep> threshold_steps(const WorkedCrack& crack, const ParisLaw& law, double scale,
                                        const CrackPiece& piece)
{
    const auto worst = std::max_element(crack.plan.cycles.begin(), crack.plan.cycles.end(),
                                        [&](const CrackCycles& a, const CrackCycles& b)
                                        { return a.range(piece.middle) < b.range(piece.middle); });
    const double range = worst->range(piece.middle);
    std::vector<WorkedStep> steps{read_step("length c_m of the crack at which it is worst off", piece.middle, "mm")};
    append(steps, crack.growth_steps({"c_m", piece.middle}));
    steps.push_back(range_step(crack, *worst, {"c_m", piece.middle}, 1));
    steps.push_back(worked_step("a factor s that lifts the largest range above the threshold ends the life; 1/s",
                                "u = dK/dK_th", put_in("{}/{}", {range, law.threshold}), 1 / scale, ""));
    return steps;
}

}  // namespace

std::vector<WorkedStep> resultant_steps(const char* load, const ModeIntensities& modes, double poisson_ratio,
                                        double resultant)
{
    std::vector<WorkedStep> steps;
    const auto read = [&](const char* name, const Measured& value)
    {
        const double error_pct = value.value != 0 ? 100 * value.error / std::abs(value.value) : 0;
        steps.push_back(
            read_step(fmt::format("intensity {} by 1 N·mm of {}, {}", name, load, by_finite_elements(error_pct)),
                      value.value, "MPa·mm^0.5 per N·mm"));
    };
    read("K_I", modes.I);
    read("K_II", modes.II);
    read("K_III", modes.III);
    steps.push_back(worked_step(
        "modes joined by their energy",
        load[0] == 't' ? "K_T = sqrt(K_I^2 + K_II^2 + K_III^2/(1 - nu))"
                       : "K_M = sqrt(K_I^2 + K_II^2 + K_III^2/(1 - nu))",
        put_in("sqrt({}^2+{}^2+{}^2/(1-{}))", {modes.I.value, modes.II.value, modes.III.value, poisson_ratio}),
        resultant, "MPa·mm^0.5 per N·mm"));
    return steps;
}

std::vector<WorkedStep> penny_torsion_steps(double first, const CrackLength& length, double outer)
{
    return penny_steps(by_torque, first, length, outer);
}

std::vector<WorkedStep> penny_bending_steps(double first, const CrackLength& length, double outer)
{
    return penny_steps(by_bending, first, length, outer);
}

std::vector<WorkedStep> crack_steps(const WorkedCrack& crack, const ParisLaw& law, double toughness, double scale)
{
    const CrackLife life = crack_life(crack.plan, law, scale);
    std::vector<WorkedStep> steps{read_step("toughness K_c of the weld metal, see the note", toughness, intensity)};
    if (crack_life(crack.plan, law, scale * (1 + scale_step)).life == 0)
    {
        append(steps, crack.growth_steps({"c_0", crack.plan.first}));
        append(steps,
               static_steps(crack, toughness, {"c_0", crack.plan.first}, 1, crack.plan.static_use(crack.plan.first)));
        steps.push_back(worked_step("the first peak load ends it", "u = max(u, K/K_c)", put(1 / scale), 1 / scale, ""));
        return steps;
    }
    append(steps, std::isfinite(life.life) ? integral_steps(crack, law, toughness, scale, life)
                                           : threshold_steps(crack, law, scale, life.pieces.back()));
    return steps;
}

}  // namespace splicewright
