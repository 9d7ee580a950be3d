// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/sn_curve.h"

#include <fmt/format.h>

#include <cmath>
#include <limits>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

void expect_sound(const SnCurve& curve)
{
    EXPECTS(curve.fatigue_class.value() > 0 && curve.partial_factor >= 1 && curve.slope > 0);
    EXPECTS(curve.knee_cycles > 0);
    EXPECTS(curve.slope_beyond_constant >= curve.slope && curve.slope_beyond_variable >= curve.slope);
}

double slope_beyond(const SnCurve& curve, Amplitude amplitude)
{
    return amplitude == Amplitude::constant ? curve.slope_beyond_constant : curve.slope_beyond_variable;
}

SnCurve curve_of(StressFamily family, Megapascal fatigue_class, double partial_factor)
{
    SnCurve curve;
    curve.family = family;
    curve.fatigue_class = fatigue_class;
    curve.partial_factor = partial_factor;
    const bool shear = family == StressFamily::shear;
    curve.slope = shear ? 5 : 3;
    curve.knee_cycles = shear ? 1e8 : 1e7;
    curve.slope_beyond_variable = shear ? 9 : 5;
    curve.name = fmt::format("FAT {:g} {}", fatigue_class.value(), shear ? "shear" : "normal");
    curve.source =
        "IIW-2259-15 (Hobbacher 2016), sec. 3.2 and 4.3 [Hobbacher2016]; knee and slopes from memory: verify";
    expect_sound(curve);
    return curve;
}

}  // namespace

Megapascal knee_range(const SnCurve& curve)
{
    expect_sound(curve);
    return std::pow(class_cycles / curve.knee_cycles, 1 / curve.slope) * curve.fatigue_class / curve.partial_factor;
}

Life cycles(const SnCurve& curve, Megapascal range, Amplitude amplitude)
{
    EXPECTS(range.value() >= 0);
    if (range.value() == 0) return {std::numeric_limits<double>::infinity(), false};
    const double ratio = knee_range(curve) / range;
    const double slope = ratio < 1 ? curve.slope : slope_beyond(curve, amplitude);
    const double n_cycles = curve.knee_cycles * std::pow(ratio, slope);
    return {n_cycles, n_cycles < low_cycle_bound};
}

Megapascal allowable_range(const SnCurve& curve, double cycles, Amplitude amplitude)
{
    EXPECTS(cycles > 0);
    const double ratio = curve.knee_cycles / cycles;
    const double slope = ratio > 1 ? curve.slope : slope_beyond(curve, amplitude);
    return std::pow(ratio, 1 / slope) * knee_range(curve);
}

SnCurve normal_curve(Megapascal fatigue_class, double partial_factor, Provenance class_provenance)
{
    SnCurve curve = curve_of(StressFamily::normal, fatigue_class, partial_factor);
    curve.provenance = class_provenance;
    return curve;
}

SnCurve shear_curve(Megapascal fatigue_class, double partial_factor, Provenance class_provenance)
{
    SnCurve curve = curve_of(StressFamily::shear, fatigue_class, partial_factor);
    curve.provenance = class_provenance;
    return curve;
}

SnCurve effective_notch_curve(NotchStress stress, double partial_factor)
{
    const auto notch_curve = [&](StressFamily family, double fatigue_class, const char* what, Provenance provenance)
    {
        SnCurve curve = curve_of(family, Megapascal{fatigue_class}, partial_factor);
        curve.name = fmt::format("effective notch FAT {:g}, {}, radius 1 mm", fatigue_class, what);
        curve.source = "IIW-2006-09 (Fricke 2012) [Fricke2012]; knee and slopes from memory: verify";
        curve.provenance = provenance;
        return curve;
    };
    switch (stress)
    {
        case NotchStress::first_principal:
            return notch_curve(StressFamily::normal, 225, "first principal", Provenance::secondary);
        case NotchStress::von_mises:
            return notch_curve(StressFamily::normal, 200, "von Mises", Provenance::from_memory);
        case NotchStress::shear: break;
    }
    return notch_curve(StressFamily::shear, 160, "shear", Provenance::from_memory);
}

SnCurve small_notch_curve(NotchStress stress, double partial_factor)
{
    const bool shear = stress == NotchStress::shear;
    const double fatigue_class = shear ? 250 : stress == NotchStress::von_mises ? 560 : 630;
    SnCurve curve =
        curve_of(shear ? StressFamily::shear : StressFamily::normal, Megapascal{fatigue_class}, partial_factor);
    curve.name = fmt::format("effective notch FAT {:g}, {}, radius 0.05 mm", fatigue_class,
                             shear                              ? "shear"
                             : stress == NotchStress::von_mises ? "von Mises"
                                                                : "first principal");
    curve.source = "IIW-2006-09 (Fricke 2012) [Fricke2012]; class, knee and slopes from memory: verify";
    return curve;
}

SnCurve eurocode_normal_curve(Megapascal category, double partial_factor)
{
    SnCurve curve = curve_of(StressFamily::normal, category, partial_factor);
    curve.name = fmt::format("category {:g} normal", category.value());
    curve.knee_cycles = 5e6;
    curve.slope_beyond_constant = curve.slope_beyond_variable = 5;
    curve.source = "EN 1993-1-9:2005, sec. 7.1 [Eurocode3Fatigue2005]; category, knee and slopes from memory: verify";
    return curve;
}

SnCurve eurocode_shear_curve(Megapascal category, double partial_factor)
{
    SnCurve curve = curve_of(StressFamily::shear, category, partial_factor);
    curve.name = fmt::format("category {:g} shear", category.value());
    curve.slope_beyond_constant = curve.slope_beyond_variable = 5;
    curve.source = "EN 1993-1-9:2005, sec. 7.1 [Eurocode3Fatigue2005]; category, knee and slopes from memory: verify";
    return curve;
}

double thickness_factor(Millimetre thickness, double exponent)
{
    EXPECTS(thickness.value() > 0);
    constexpr double reference_mm = 25;
    return thickness.value() > reference_mm ? std::pow(reference_mm / thickness.value(), exponent) : 1;
}

}  // namespace splicewright
