// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "post/exact_solids.h"

namespace splicewright::fresh
{

using exact::ExactBody;

// Bodies of known stress that had no part in choosing the factors of the error bars.
// uneven: by how much of a cell the corners of the elements are moved at random, 0 to 0.25. base: of how many cells the
// grid is whose corners are moved; a mesh of a multiple of it is nested in that grid.
struct Uneven
{
    double share = 0;
    int base = 1;
};

ExactBody cylinder_pressed_outside(int n, Uneven uneven, double inner, double outer);
ExactBody sphere_pressed_outside(int n, Uneven uneven, double inner, double outer);
// Far stress along the axes, MPa; an eighth of the cavity, cut out at four radii.
ExactBody spherical_cavity(int n, Uneven uneven, const Eigen::Vector3d& far, double nu);
// Half-axes along x and y, mm; pulled along y; plane strain, a quarter of it.
ExactBody elliptical_hole(int n, Uneven uneven, double along_x, double along_y);
ExactBody bent_quarter_ring(int n, Uneven uneven, double inner, double outer);  // by end moments, plane strain
ExactBody twisted_rectangle(int n, double b, double c);                         // read on the long side
ExactBody twisted_tube(int n, double bore, double outside);
ExactBody pulled_and_bent_bar(int n, double radius);
ExactBody twisted_flat_ellipse(int n, double a, double b);

}  // namespace splicewright::fresh
