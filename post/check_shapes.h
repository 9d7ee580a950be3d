// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "cases/case.h"
#include "mesh/mesh.h"
#include "mesh/outline.h"
#include "solver/elements.h"
#include "solver/meridian.h"
#include "solver/unit_solution.h"

namespace splicewright
{

// Shapes for the published checks: some as cases, some as outlines drawn by hand, and what is read from them.

constexpr ElasticConstants check_steel{210000, 0.3};

// One bar on the left, sections from z = 0 outward; E 210000 MPa, Poisson's ratio 0.3.
Case shaft_case(std::vector<Section> sections, std::vector<Groove> grooves, Millimetre bore);

// Equal bars with a full butt in a sleeve of even diameter; overlap: diametral, of a press fit. Same steel.
struct SleevedShape
{
    double bar_mm = 0, sleeve_mm = 0, sleeve_length_mm = 0;  // diameters, length
    double bore_mm = 0, overlap_mm = 0;
    SlitState slit = SlitState::open;
    double bar_modulus = 210000, sleeve_modulus = 210000;  // MPa
};
Case sleeved_case(const SleevedShape& shape);

// A curve (z, r) of a parameter, walked from one end to the other.
using PlaneCurve = std::function<OutlinePoint(double)>;

// Bar of the given radius around a cavity whose meridian is the half ellipse of half axes `along` (z) and `across`.
struct BarWithCavity
{
    double along = 0, across = 0, bar_radius = 0;
};
Outline outline_of(const BarWithCavity& bar);

// Round bar of radius `outer` with a deep groove whose meridian is the hyperbola r = a sqrt(1 + z^2/(a rho));
// net radius a, groove radius rho, surface "groove".
struct HyperbolicGroove
{
    double net_radius = 0, groove_radius = 0, outer = 0;
};
Outline outline_of(const HyperbolicGroove& groove);

// A bar in a sleeve with a layer between them over 0 .. length; bar reaches left, sleeve right by `tail`.
// Interior curves "cut.N" at the planes z = cuts[N], through the bar.
struct LappedTubes
{
    double bar_radius = 0, layer = 0, wall = 0, length = 0, tail = 0;
    std::vector<double> cuts;
};
Outline outline_of(const LappedTubes& lap);

// Stress of a free surface, MPa per unit load, at its places in walking order.
struct SurfaceReading
{
    std::vector<double> z, r, along, hoop, shear;
};
SurfaceReading surface_reading(const Mesh& mesh, const std::vector<ElasticConstants>& steel, const std::string& curve,
                               const UnitSolution& solution);

// The answer at one site; a broken promise when there is none.
const SiteAnswer& site_of(const MeridianAnswer& answer, const std::string& id);

double largest(const std::vector<double>& values);                   // by magnitude, without its sign
std::size_t place_nearest(const std::vector<double>& z, double at);  // index

}  // namespace splicewright
