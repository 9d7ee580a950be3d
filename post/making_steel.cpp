// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/making_steel.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

// One bound of a range of validity.
struct Bound
{
    const char* what;
    double value, least, greatest;
    const char* unit;
};

template <std::size_t n>
std::string broken(const Bound (&bounds)[n])
{
    std::string text;
    for (const Bound& bound : bounds)
        if (bound.value < bound.least || bound.value > bound.greatest)
            text += fmt::format("{}{} {:.3g}{} is outside {:g} to {:g}", text.empty() ? "" : "; ", bound.what,
                                bound.value, bound.unit, bound.least, bound.greatest);
    return text;
}

std::string joined(const std::string& first, const std::string& second)
{
    return first.empty() || second.empty() ? first + second : fmt::format("{}; {}", first, second);
}

// Middle of the transition from martensite to bainite, as the source has it.
double arc_tangent_mix(double martensite, double bainite, double x)
{
    return (martensite + bainite) / 2 - (martensite - bainite) * std::atan(x) / 2.2;
}

}  // namespace

double carbon_equivalent_iiw(const Composition& s)
{
    return s.C + s.Mn / 6 + (s.Cr + s.Mo + s.V) / 5 + (s.Ni + s.Cu) / 15;
}

double carbon_equivalent_cet(const Composition& s) { return s.C + (s.Mn + s.Mo) / 10 + (s.Cr + s.Cu) / 20 + s.Ni / 40; }

double carbon_equivalent_pcm(const Composition& s)
{
    return s.C + s.Si / 30 + (s.Mn + s.Cu + s.Cr) / 20 + s.Ni / 60 + s.Mo / 15 + s.V / 10;
}

std::string outside_iiw(const Composition& s)
{
    return broken({{"carbon", s.C, 0.05, 0.25, " %"},
                   {"silicon", s.Si, 0, 0.8, " %"},
                   {"manganese", s.Mn, 0, 1.7, " %"},
                   {"chromium", s.Cr, 0, 0.9, " %"},
                   {"molybdenum", s.Mo, 0, 0.75, " %"},
                   {"nickel", s.Ni, 0, 2.5, " %"},
                   {"vanadium", s.V, 0, 0.2, " %"},
                   {"copper", s.Cu, 0, 1, " %"},
                   {"CE", carbon_equivalent_iiw(s), 0.3, 0.7, " %"}});
}

std::string outside_cet(const Composition& s)
{
    return broken({{"carbon", s.C, 0.05, 0.32, " %"},
                   {"silicon", s.Si, 0, 0.8, " %"},
                   {"manganese", s.Mn, 0.5, 1.9, " %"},
                   {"chromium", s.Cr, 0, 1.5, " %"},
                   {"molybdenum", s.Mo, 0, 0.75, " %"},
                   {"nickel", s.Ni, 0, 2.5, " %"},
                   {"vanadium", s.V, 0, 0.18, " %"},
                   {"copper", s.Cu, 0, 0.7, " %"}});
}

std::string outside_pcm(const Composition& s)
{
    return broken({{"carbon", s.C, 0.07, 0.22, " %"},
                   {"silicon", s.Si, 0, 0.6, " %"},
                   {"manganese", s.Mn, 0.4, 1.4, " %"},
                   {"chromium", s.Cr, 0, 1.2, " %"},
                   {"molybdenum", s.Mo, 0, 0.7, " %"},
                   {"nickel", s.Ni, 0, 1.2, " %"},
                   {"vanadium", s.V, 0, 0.12, " %"},
                   {"copper", s.Cu, 0, 0.5, " %"}});
}

double preheat_method_b(double cet, const Welding& w)
{
    EXPECTS(w.thickness_mm > 0 && w.hydrogen_ml_per_100g > 0 && w.heat_input_kj_per_mm > 0);
    return 697 * cet + 160 * std::tanh(w.thickness_mm / 35) + 62 * std::pow(w.hydrogen_ml_per_100g, 0.35) +
           (53 * cet - 32) * w.heat_input_kj_per_mm - 328;
}

std::string outside_method_b(const Composition& steel, double cet, Megapascal yield, const Welding& w)
{
    return joined(outside_cet(steel), broken({{"CET", cet, 0.2, 0.5, " %"},
                                              {"yield", yield.value(), 0, 1000, " MPa"},
                                              {"thickness", w.thickness_mm, 10, 90, " mm"},
                                              {"hydrogen", w.hydrogen_ml_per_100g, 1, 20, " ml/100 g"},
                                              {"heat input", w.heat_input_kj_per_mm, 0.5, 4, " kJ/mm"}}));
}

double preheat_seferian(const Composition& s, double thickness_mm)
{
    const double chemical = (360 * s.C + 40 * (s.Mn + s.Cr) + 20 * s.Ni + 28 * s.Mo) / 360;
    const double whole = chemical * (1 + 0.005 * thickness_mm);
    return whole > 0.25 ? 350 * std::sqrt(whole - 0.25) : 0;
}

double martensite_start(const Composition& s)
{
    return 539 - 423 * s.C - 30.4 * s.Mn - 17.7 * s.Ni - 12.1 * s.Cr - 7.5 * s.Mo;
}

double martensite_hardness(const Composition& s) { return 884 * s.C * (1 - 0.3 * s.C * s.C) + 294; }

double heat_affected_hardness(const Composition& s, double cooling_seconds)
{
    EXPECTS(cooling_seconds > 0 && s.Cr >= 0);
    const double free_carbon = s.C <= 0.3 ? s.C : s.C / 6 + 0.25;
    const double first =
        free_carbon + s.Si / 24 + s.Mn / 6 + s.Cu / 15 + s.Ni / 12 + s.Cr * (1 - 0.16 * std::sqrt(s.Cr)) / 8 + s.Mo / 4;
    const double second = s.C + s.Si / 24 + s.Mn / 5 + s.Cu / 10 + s.Ni / 18 + s.Cr / 5 + s.Mo / 2.5 + s.V / 5;
    const double third = s.C + s.Mn / 3.6 + s.Cu / 20 + s.Ni / 9 + s.Cr / 5 + s.Mo / 4;
    const double martensite = martensite_hardness(s), bainite = 145 + 130 * std::tanh(2.65 * second - 0.69);
    const double martensite_time = std::exp(10.6 * first - 4.8), bainite_time = std::exp(6.2 * third + 0.74);
    if (bainite_time <= martensite_time) return martensite;  // so hardenable that no cooling in air makes bainite
    const double x = 4 * std::log(cooling_seconds / martensite_time) / std::log(bainite_time / martensite_time) - 2;
    return arc_tangent_mix(martensite, bainite, std::clamp(x, -2.0, 2.0));
}

HardnessLimit hardness_limit(const Material& material)
{
    constexpr double group_3_yield = 360, group_1_carbon = 0.25;
    const bool is_quenched = material.condition.find("quenched") != std::string::npos;
    if (is_quenched && material.yield.value() > group_3_yield) return {450, "group 3", Provenance::from_memory};
    if (material.composition.C <= group_1_carbon) return {380, "groups 1 and 2", Provenance::from_memory};
    return {380, "group 11 has no limit, that of groups 1 and 2 taken: judgement", Provenance::judgement};
}

double cooling_time(double preheat_c, double heat_input_kj_per_mm, double shape_factor)
{
    EXPECTS(preheat_c < 500);
    return (6700 - 5 * preheat_c) * heat_input_kj_per_mm * (1 / (500 - preheat_c) - 1 / (800 - preheat_c)) *
           shape_factor;
}

}  // namespace splicewright
