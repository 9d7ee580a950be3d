// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/rated_curves.h"

#include <fmt/format.h>

#include <cmath>

#include "cases/problem.h"
#include "post/site_loads.h"

namespace splicewright
{
namespace
{

constexpr double deviation_of_log_cycles = 0.2;
constexpr double deviations_of_classes = 2;

SnCurve with_factors(const Rating& rating, SnCurve curve, double relief)
{
    curve.partial_factor = rating.partial_factor;
    curve.fatigue_class = relief * survival_factor(rating, curve.slope) * curve.fatigue_class;
    return curve;
}

struct ClassFactors
{
    double relief = 1, survival = 1;
};

void add_class_step(const char* of, const SnCurve& listed, const SnCurve& rated, const ClassFactors& factors,
                    std::vector<WorkedStep>& steps)
{
    if (factors.relief == 1 && factors.survival == 1) return;
    steps.push_back(worked_step(fmt::format("class of {} with stress relief and survival as asked", of),
                                "FAT' = k_relief k_survival FAT",
                                put_in("{}*{}*{}", {factors.relief, factors.survival, listed.fatigue_class.value()}),
                                rated.fatigue_class.value(), "MPa"));
}

// The mean of an axial tension or a press fit would use the relief up.
bool mean_is_not_counted(const Case& asked) { return asked.load.axial.value() > 0 || peak_load(asked).press > 0; }

}  // namespace

bool feels_misalignment(const std::string& site)
{
    return site.starts_with("bar-toe") || site.starts_with("sleeve-toe") || site == "butt-surface" ||
           site == "land-edge";
}

double r_ratio_factor(StressRelief relief, double R)
{
    EXPECTS(R >= -1 && R <= 1);
    if (relief == StressRelief::stress_relieved) return R <= 0.5 ? 1.2 - 0.4 * R : 1;
    if (relief == StressRelief::unconstrained) return R <= -0.25 ? 0.9 - 0.4 * R : 1;
    return 1;
}

double relief_factor(const Case& asked, InteractionRule rule)
{
    if (mean_is_not_counted(asked)) return 1;
    if (rule == InteractionRule::squares) return r_ratio_factor(asked.rating.relief, -1);
    return asked.rating.relief == StressRelief::stress_relieved ? 1.25 : 1;
}

double shear_relief_factor(const Case& asked, InteractionRule rule, const TorqueBlock& block)
{
    if (rule != InteractionRule::squares || mean_is_not_counted(asked)) return 1;
    const double low = block.low.value(), high = block.high.value();
    const double R = std::abs(low) > std::abs(high) ? high / low : low / high;
    return r_ratio_factor(asked.rating.relief, R);
}

double survival_factor(const Rating& rating, double slope)
{
    if (!rating.survival) return 1;
    return std::pow(
        10, (deviations_of_classes - deviations_below_mean(*rating.survival)) * deviation_of_log_cycles / slope);
}

WeldCurves rated_curves(const Case& asked, const WeldCurves& curves)
{
    const double relief = relief_factor(asked, curves.rule);
    WeldCurves rated{with_factors(asked.rating, curves.normal, relief), with_factors(asked.rating, curves.shear, 1),
                     curves.rule, curves.worked, curves.shear_worked};
    add_class_step("normal stress", curves.normal, rated.normal,
                   {relief, survival_factor(asked.rating, curves.normal.slope)}, rated.worked);
    add_class_step("shear", curves.shear, rated.shear, {1, survival_factor(asked.rating, curves.shear.slope)},
                   rated.shear_worked);
    return rated;
}

SnCurve rated_equivalent_curve(const Case& asked, const SnCurve& curve) { return with_factors(asked.rating, curve, 1); }

WeldUnitStress rated_stress(const Case& asked, const std::string& site, const WeldUnitStress& stress)
{
    WeldUnitStress rated = stress;
    const double factor = asked.rating.misalignment_factor;
    if (!feels_misalignment(site) || factor == 1) return rated;
    rated.normal_by_bending *= factor;
    rated.bending_worked.push_back(worked_step("normal stress with misalignment", "k_sigma' = k_m k_sigma",
                                               put_in("{}*{}", {factor, stress.normal_by_bending}),
                                               rated.normal_by_bending, "MPa per N·mm"));
    return rated;
}

Sourced<std::string> rating_note(const Case& asked, const std::string& site, const WeldCurves& curves)
{
    Sourced<std::string> answer{"", "", Provenance::theory};
    const Rating& rating = asked.rating;
    const auto add = [&](const std::string& words, Provenance provenance)
    {
        append_note(answer.value, words);
        answer.provenance = weaker(answer.provenance, provenance);
    };
    if (rating.partial_factor_name != Rating().partial_factor_name)
        add(fmt::format("partial factor {:g} ({})", rating.partial_factor, rating.partial_factor_name),
            rating.partial_factor_name == "stated" ? Provenance::stated : Provenance::from_memory);
    if (rating.survival)
        add(fmt::format("survival {:.4g} %: classes times {:.3f} in normal stress and {:.3f} in shear, standard "
                        "deviation of log N 0.2 (judgement)",
                        100 * *rating.survival, survival_factor(rating, curves.normal.slope),
                        survival_factor(rating, curves.shear.slope)),
            Provenance::judgement);
    const double relief = relief_factor(asked, curves.rule);
    if (relief > 1)
        add(fmt::format("{}, reversed bending: class of normal stress times {:g} (from memory: verify)",
                        name_of(rating.relief), relief),
            Provenance::from_memory);
    if (relief > 1 && curves.rule == InteractionRule::squares && !asked.load.blocks.empty())
        add("ranges of shear over f(R), each torque block with its own R (from memory; for shear a judgement)",
            Provenance::judgement);
    if (relief == 1 && rating.relief != StressRelief::none)
        add(fmt::format("{}, and not counted {}", name_of(rating.relief),
                        mean_is_not_counted(asked)
                            ? "beside an axial tension or a press fit, whose mean stress would use it up"
                            : "by this rule"),
            Provenance::theory);
    if (rating.misalignment_factor > 1 && feels_misalignment(site))
        add(fmt::format("misalignment: normal stress times {:g}", rating.misalignment_factor), Provenance::stated);
    return answer;
}

}  // namespace splicewright
