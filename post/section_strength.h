// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/sourced.h"

namespace splicewright
{

// A solid or hollow round section. Valid for 0 <= bore < outer_diameter; every function below expects that.
struct RoundSection
{
    Millimetre outer_diameter;
    Millimetre bore;  // diameter, 0 when solid
};

double section_area(const RoundSection& section);           // pi (D^2 - d^2)/4, mm^2
double second_moment_of_area(const RoundSection& section);  // pi (D^4 - d^4)/64, mm^4
double polar_moment_of_area(const RoundSection& section);   // pi (D^4 - d^4)/32, mm^4

// E/(2 (1 + nu)), MPa; -1 < nu < 0.5.
Megapascal shear_modulus(Megapascal elastic_modulus, double poisson_ratio);

// Shear at the outer surface: T D/(2 J); 16 T/(pi d^3) when solid. Exact for Saint-Venant torsion of a round section.
// Source: [TimoshenkoGoodier1970] art. 101.
Sourced<Megapascal> surface_shear(const RoundSection& section, NewtonMillimetre torque);

// Axial stress at the outer fibre: M D/(2 I); 32 M/(pi d^3) when solid. Exact for pure bending.
// Source: [TimoshenkoGoodier1970] art. 102.
Sourced<Megapascal> surface_bending_stress(const RoundSection& section, NewtonMillimetre bending);

// N/A; 4 N/(pi d^2) when solid; tension positive.
// Source: [TimoshenkoGoodier1970] art. 103.
Sourced<Megapascal> axial_stress(const RoundSection& section, Newton axial);

// One length of a stepped shaft.
struct TwistedLength
{
    RoundSection section;
    Millimetre length;
    Megapascal shear_modulus;
};

// Sum of T L/(G J). A step adds a little local compliance that this sum leaves out: about 1 % on short sections.
// Source: [Shigley2011] eq. 3-35.
Sourced<Radian> twist(const std::vector<TwistedLength>& shaft, NewtonMillimetre torque);

// Torque at which the surface yields by von Mises: (yield/sqrt 3) J/(D/2). No stress raiser, no other load.
// Source: [Mises1913]; [TimoshenkoGoodier1970] art. 101.
Sourced<NewtonMillimetre> first_yield_torque(const RoundSection& section, Megapascal yield);

// Torque at which the whole section flows at tau_y = yield/sqrt 3 without hardening: (2 pi/3) tau_y (R^3 - r^3).
// 4/3 of the first-yield torque when solid. Derived: integral of tau_y 2 pi r^2 dr.
Sourced<NewtonMillimetre> fully_plastic_torque(const RoundSection& section, Megapascal yield);

// Couple at which the outer fibre yields, 2 I/D yield, and at which the whole section flows, (D^3 - d^3)/6 yield.
// Derived: integral of the yield over the distance from the neutral axis; 16/(3 pi) of the first when solid.
Sourced<NewtonMillimetre> first_yield_bending(const RoundSection& section, Megapascal yield);
Sourced<NewtonMillimetre> fully_plastic_bending(const RoundSection& section, Megapascal yield);

// Peak load over the load at which the whole section flows, all three loads growing together, no hardening:
//   sqrt((M/Mp + |N|/Np)^2 + (T/Tp)^2)
// A lower bound of what the section carries (static theorem): one shear and one normal stress everywhere on the yield
// surface carry it, and between M and N the yield domain is convex. Derived from [Mises1913].
struct SectionLoad
{
    NewtonMillimetre torque, bending;
    Newton axial;
};
Sourced<double> plastic_utilisation(const RoundSection& section, Megapascal yield, const SectionLoad& load);

// One of two members that share a load over the same length.
struct ParallelMember
{
    RoundSection section;
    Megapascal elastic_modulus;
    double poisson_ratio = 0.3;
};

// Share of the sleeve, 0 to 1, by GJ, EI and EA.
struct StiffnessShare
{
    double torsion = 0, bending = 0, axial = 0;
};

// Far from the sleeve's ends, where sleeve and bar deform together: k_sleeve/(k_sleeve + k_bar).
// Derived from equal twist, curvature and stretch. Near the ends the sleeve carries less.
Sourced<StiffnessShare> sleeve_share(const ParallelMember& sleeve, const ParallelMember& bar);

// Share in torsion of a sleeve held to a continuous bar only by a ring weld at each end:
// (L/GJ_bar)/(L/GJ_bar + L/GJ_sleeve + 2/k). weld_stiffness k of one weld in N*mm/rad, above 0.
// Derived from equal twist between the welds; tends to sleeve_share().torsion as k grows.
Sourced<double> torsion_share_with_end_welds(const ParallelMember& sleeve, const ParallelMember& bar,
                                             Millimetre length_between_welds, double weld_stiffness);

}  // namespace splicewright
