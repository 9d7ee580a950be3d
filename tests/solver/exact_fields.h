// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "tests/solver/hand_made.h"

namespace splicewright::sample
{

// Displacements that satisfy Navier's equations without body forces, smooth away from one point on the axis.
// Each is its own check: finite elements converge to it only if it is a solution.

// A couple about the axis at the point: curl of a harmonic vector, u_theta = r/R^3.
Field point_couple(double z0);

// A force of unit strength along z, or across the axis, at the point, up to a constant factor: u = (3-4nu) e/R + (e.R)
// R/R^3. Source: [TimoshenkoGoodier1970] chapter 12, Kelvin's solution; written in the amplitudes of this program.
Field point_force_along(double z0, double nu);
Field point_force_across(double z0, double nu);

// Twisted space, u_theta = z r far away, around a spherical cavity of radius a at the origin with a free surface:
// u_theta = z r (1 + A/R^5), and no shear on R = a asks d/dR (R + A/R^4) = 0, so A = a^5/4. Derived.
// The surface carries 5/4 of the shear that would be there without the cavity, at its equator.
Field twisted_cavity(double a);

// Pulled space, e_zz = 1/E far away, around the same cavity: uniform tension plus double force, centre of dilatation
// and its second derivative, with the strengths that free the surface (found by least squares, left over in
// `traction`).
struct PulledCavity
{
    Field field;
    double traction = 0;  // largest left on the surface over the remote stress
};
PulledCavity pulled_cavity(double a, const ElasticConstants& steel);

}  // namespace splicewright::sample
