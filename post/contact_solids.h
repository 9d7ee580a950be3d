// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>

#include "solver/solid_contact.h"

namespace splicewright::exact
{

// Bodies that touch, whose contact is known in closed form.
struct TouchingSolids
{
    SolidMesh mesh;
    SolidBody body;
    ContactSurface surface;
    NodeForces load;
    double friction = 0;
};
ContactAnswer contact_answer(const TouchingSolids& solids);

// A bar of 50 mm in a sleeve of 100 mm, radial interference 0.025 mm, between two planes that hold z.
// rings: of elements from the axis to the outside, even. Source: [TimoshenkoGoodier1970] article 28, plane strain.
struct PressFitSolids
{
    static constexpr double bar = 25, sleeve = 50, interference = 0.025, thick = 12;  // mm
    static double pressure();                                                         // MPa
};
TouchingSolids press_fit(int rings);

// Half of a cylinder of radius 25 mm on a flat, both steel, plane strain: two blocks of 16 mm with the gap
// x^2 / (2 R), 500 N for each mm of length; n elements over a strip that is two and a half half-widths wide, coarser
// outside. The blocks stand for half-spaces, which is right to about (b / block)^2 = 5e-4.
// Source: [Johnson1985] chapter 4: p0 = sqrt(q E* / (pi R)), b = sqrt(4 q R / (pi E*)), E* = E / (2 (1 - nu^2)).
struct HertzSolids
{
    static constexpr double radius = 25, block = 16, load = 500;  // mm, mm, N/mm
    static double half_width();                                   // mm
    static double peak_pressure();                                // MPa
    // MPa, of the same load over some other half-width, mm.
    static double pressure(const Eigen::Vector3d& place, double half_width);
};
TouchingSolids cylinder_on_flat(int n);

// The same on both sides of the middle, pushed along the flat as well, by `share` of what would make it slide with the
// friction; the push is given together with the moment that keeps the pressure even about the middle. The faces stick
// within c = b sqrt(1 - share) and slip outside.
// Source: [Johnson1985] section 7.2: q(x) = mu p0 (sqrt(1 - x^2/b^2) - c/b sqrt(1 - x^2/c^2)).
struct PushedSolids
{
    static constexpr double friction = 0.3, share = 0.5;
    static double stuck_half_width();                                               // mm
    static double traction(const Eigen::Vector3d& place, double stuck_half_width);  // MPa along x; mm
};
TouchingSolids pushed_cylinder(int n, double share = PushedSolids::share);
double even_size(int n);                                                             // mm, of the elements in the strip
double contact_half_width(const TouchingSolids& solids, const ContactState& state);  // mm, from the arm of the pressure

// A round bar of 24 mm cut to a half lap 20 mm long, twisted by `torque`, N mm: nothing but the faces of the lap turns
// one half against the other, because what guides the second half stands on the axis.
TouchingSolids twisted_lap(int rings, double torque);

// Means of a pressure with the linear shape function of each corner: what a ContactState tells of a pressure that is
// known at every point. [n places], 0 at middles.
std::vector<double> corner_means(const TouchingSolids& solids,
                                 const std::function<double(const Eigen::Vector3d&)>& pressure);

}  // namespace splicewright::exact
