// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "post/sourced.h"
#include "post/worked.h"

namespace splicewright
{

// The fillet weld at a sleeve's end, treated as a line of the throat's thickness.
//
//     radial
//       ^
//       |  sleeve toe
//       *.              t  in the throat plane, from the root o outward
//   leg |  '.           m  normal of the throat plane, along the outer side towards the bar toe
//   on  |   t '.        throat a = |o..t|, the height of the triangle over its outer side
//   slv |  /    '.
//       | /       'm.
//       o------------*---> outward: along the axis, from the sleeve to the bar toe
//     root  leg on bar  bar toe
struct FilletWeld
{
    Millimetre leg_on_bar, leg_on_sleeve;  // above 0
    Millimetre bar_diameter;               // of the bar at the weld, above 0
};

// leg_b leg_s/sqrt(leg_b^2 + leg_s^2); leg/sqrt 2 for equal legs. Geometry of the triangle.
Millimetre throat(const FilletWeld& weld);

// Radius of the middle of the throat: bar radius + leg_b^2 leg_s/(2 (leg_b^2 + leg_s^2)). Geometry.
Millimetre throat_mean_radius(const FilletWeld& weld);

// Loads on the ring.
struct RingLoad
{
    NewtonMillimetre torque, bending;
    Newton axial;
};

// Stresses on the throat of a ring weld of radius R and throat a, each on its own, MPa.
//   T/(2 pi R^2 a), M/(pi R^2 a) at the outermost point, N/(2 pi R a)
// Source: [Shigley2011] tables 9-1 (torsion) and 9-2 (bending), circle, from memory; derived from J = 2 pi R^3 a,
// I = pi R^3 a.
struct RingThroatStress
{
    Megapascal torsion, bending, axial;
};
Sourced<RingThroatStress> ring_throat_stress(Millimetre radius, Millimetre throat, const RingLoad& load);

// Force per length of the ring, N/mm, that the bar exerts on the sleeve through the weld.
struct LineForce
{
    double outward = 0, radial = 0, tangential = 0;
};

// The largest line force around the ring of radius R: torque tangential, bending and axial outward.
Sourced<LineForce> ring_line_force(Millimetre radius, const RingLoad& load);

// Stresses on the throat plane, MPa: normal (tension positive), shear across the weld, shear along the weld.
struct ThroatPlaneStress
{
    Megapascal normal, shear_across, shear_along;
};

// The line force resolved on the throat plane (unequal legs allowed) and divided by the throat.
// Source: definition of the stresses of [Eurocode3Joints2005] 4.5.3.2(4); the resolution is geometry.
Sourced<ThroatPlaneStress> throat_plane_stress(const FilletWeld& weld, const LineForce& force);

// What the two Eurocode methods ask and give.
struct WeldCheck
{
    Megapascal demand, capacity;
    double utilisation = 0;
    std::string note;                // scope, correlation factor
    std::vector<WorkedStep> worked;  // from the stresses or the force to demand and capacity
};

// Partial factor of welds. Source: [Eurocode3Joints2005] table 2.1, recommended value.
constexpr double weld_partial_factor = 1.25;

// beta_w of [Eurocode3Joints2005] table 4.1 for S235, S275, S355, S420, S460 (name beginning with the grade);
// any other steel gets 1.0, the end of the table that gives the least strength, and says so.
Sourced<double> correlation_factor(std::string_view steel);

// sqrt(normal^2 + 3 (across^2 + along^2)) <= fu/(beta_w gamma_M2) and normal <= 0.9 fu/gamma_M2; the worse counts.
// fu: tensile strength of the weaker part joined. Scope: structural steel up to S460; shafts lie outside, see note.
// Source: [Eurocode3Joints2005] 4.5.3.2, eq. 4.1.
Sourced<WeldCheck> directional_check(const ThroatPlaneStress& stress, Megapascal tensile, double beta_w);

// Resultant of the line force over the throat <= fu/(sqrt 3 beta_w gamma_M2). Same scope.
// Source: [Eurocode3Joints2005] 4.5.3.3, eq. 4.2 to 4.4.
Sourced<WeldCheck> simplified_check(const FilletWeld& weld, const LineForce& force, Megapascal tensile, double beta_w);

}  // namespace splicewright
