// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "solver/solid_bars.h"
#include "solver/solid_system.h"

namespace splicewright::exact
{

struct SolvedSolid
{
    SolidMesh mesh;
    SolidBody body;
    SolidAnswer answer;
};

// Bars along z, twisted at both ends by even shear that turns; what the ends disturb fades within a width. n elements
// over the shorter side or the radius.
SolvedSolid twisted_rectangle(int n, double b, double c, double torque);  // b >= c, mm
SolvedSolid twisted_half_round(int n, double radius, double torque);      // flat at y = 0

// A round bar of 50 mm held at z = 0, 10 kN along y at z = 200 mm.
SolvedSolid cantilever(int n);

// A quarter of an elliptic ring, semi-axes 2 and 1, 3.25 and 2.75 m, with its mirror image below y = 0 so that the
// point asked for, (2, 0), is on no edge. Source: [NAFEMS1990] LE1 and LE10.
// LE1: 10 MPa outwards on the outer edge, plane stress, solved as the plane strain of a metal with E (1 + 2 nu) /
// (1 + nu)^2 and nu / (1 + nu), which has the same stress in the plane: a plate of some thickness has not.
SolvedSolid elliptic_membrane(int n);
double membrane_stress(const SolvedSolid& membrane);  // along y at (2, 0), MPa
// LE10: 0.6 m thick, 1 MPa on top, held by its outside; not mirrored, finer towards (2, 0), where two faces meet.
SolvedSolid thick_plate(int n);
// Along y at (2, 0, 0.6), MPa: from the top, from the inside, and from within. All three have one limit.
struct PlateStress
{
    double top = 0, inside = 0, within = 0;
};
PlateStress plate_stress(const SolvedSolid& plate);

}  // namespace splicewright::exact
