// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "post/sourced.h"

namespace splicewright
{

// A sleeve pressed on a bar, far from the sleeve's ends, elastic, plane stress.
struct PressFit
{
    Millimetre diameter;  // of the joint
    Millimetre bar_bore;  // 0 when solid
    Millimetre sleeve_outer_diameter;
    Millimetre interference;  // diametral, bar larger than bore: >= 0
    Megapascal bar_modulus, sleeve_modulus;
    double bar_poisson = 0.3, sleeve_poisson = 0.3;
};

struct PressFitStress
{
    Megapascal pressure;                  // >= 0
    Megapascal sleeve_hoop_at_bore;       // tension
    Megapascal sleeve_radial_at_bore;     // minus the pressure
    Megapascal sleeve_von_mises_at_bore;  // plane stress
    Megapascal sleeve_hoop_outside;
    Megapascal bar_hoop_at_surface;  // compression
    Megapascal bar_radial_at_surface;
    Megapascal bar_hoop_at_bore;  // hollow bar; the surface value when solid
};

// Thick-cylinder solution. b: joint radius, c: outer radius of the sleeve, a: bore radius of the bar.
//   p = (interference/2)/b / { [(c^2+b^2)/(c^2-b^2) + nu_s]/E_s + [(b^2+a^2)/(b^2-a^2) - nu_b]/E_b }
// Expects 0 <= bar_bore < diameter < sleeve_outer_diameter and interference >= 0.
// Pressure rises towards the sleeve's ends; the formula does not know it.
// Source: [TimoshenkoGoodier1970] art. 28; [Shigley2011] eq. 3-56.
Sourced<PressFitStress> press_fit_stress(const PressFit& fit);

// 2 pi mu p b^2 L: torque at which the joint slips, pressure taken as even over the length; friction mu >= 0.
// Source: [Shigley2011] sec. 7-8.
Sourced<NewtonMillimetre> slip_torque(const PressFit& fit, Millimetre length, double friction);

}  // namespace splicewright
