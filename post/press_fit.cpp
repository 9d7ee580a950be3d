// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/press_fit.h"

#include <cmath>
#include <numbers>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

// (outer^2 + inner^2)/(outer^2 - inner^2)
double hoop_ratio(double outer, double inner)
{
    return (outer * outer + inner * inner) / (outer * outer - inner * inner);
}

double contact_pressure(const PressFit& fit)
{
    const double bore = fit.bar_bore.value(), joint = fit.diameter.value(), outer = fit.sleeve_outer_diameter.value();
    EXPECTS(bore >= 0 && bore < joint && joint < outer && fit.interference.value() >= 0);
    EXPECTS(fit.bar_modulus.value() > 0 && fit.sleeve_modulus.value() > 0);
    const double of_sleeve = (hoop_ratio(outer, joint) + fit.sleeve_poisson) / fit.sleeve_modulus.value();
    const double of_bar = (hoop_ratio(joint, bore) - fit.bar_poisson) / fit.bar_modulus.value();
    return fit.interference.value() / joint / (of_sleeve + of_bar);
}

}  // namespace

Sourced<PressFitStress> press_fit_stress(const PressFit& fit)
{
    const double pressure = contact_pressure(fit);
    const double joint = fit.diameter.value(), outer = fit.sleeve_outer_diameter.value();
    const double sleeve_hoop = pressure * hoop_ratio(outer, joint);
    const double bar_ratio = hoop_ratio(joint, fit.bar_bore.value());

    PressFitStress stress;
    stress.pressure = Megapascal{pressure};
    stress.sleeve_hoop_at_bore = Megapascal{sleeve_hoop};
    stress.sleeve_radial_at_bore = Megapascal{-pressure};
    stress.sleeve_von_mises_at_bore =
        Megapascal{std::sqrt(sleeve_hoop * sleeve_hoop + sleeve_hoop * pressure + pressure * pressure)};
    // In a thick cylinder hoop + radial stress does not depend on the radius; outside the radial stress is 0,
    // and in a hollow bar it is 0 at the bore.
    stress.sleeve_hoop_outside = Megapascal{sleeve_hoop - pressure};
    stress.bar_hoop_at_surface = Megapascal{-pressure * bar_ratio};
    stress.bar_radial_at_surface = Megapascal{-pressure};
    stress.bar_hoop_at_bore = Megapascal{fit.bar_bore.value() > 0 ? -pressure * (bar_ratio + 1) : -pressure};
    return {stress,
            "thick cylinders, plane stress, far from the ends: Timoshenko & Goodier 1970, art. 28 "
            "[TimoshenkoGoodier1970]",
            Provenance::theory};
}

Sourced<NewtonMillimetre> slip_torque(const PressFit& fit, Millimetre length, double friction)
{
    EXPECTS(length.value() >= 0 && friction >= 0);
    const double radius = fit.diameter.value() / 2;
    const double torque = 2 * std::numbers::pi * friction * contact_pressure(fit) * radius * radius * length.value();
    return {NewtonMillimetre{torque}, "2 pi mu p b^2 L, even pressure: Shigley 9th ed. sec. 7-8 [Shigley2011]",
            Provenance::from_memory};
}

}  // namespace splicewright
