// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <cmath>
#include <numbers>

#include "mesh/gmsh_mesher.h"
#include "post/check_groups.h"
#include "post/check_shapes.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;
constexpr double across = 2, bar_radius = 40;  // mm, of the cavity's equator and of the bar

// On a cavity in the middle of a bar, over the stress that would be there without it.
struct CavityStress
{
    double equator = 0, equator_hoop = 0, pole = 0;  // in tension
    double torsion = 0;                              // shear at the equator
};

CavityStress cavity_stress(double aspect, double poisson)
{
    MeshSize size;
    size.elements_per_quarter_turn = 48;
    const std::vector<ElasticConstants> steel{{check_steel.E, poisson}};
    const Mesh mesh = generate_mesh(outline_of(BarWithCavity{aspect * across, across, bar_radius}), size);
    const auto surface = [&](LoadKind kind)
    { return surface_reading(mesh, steel, "cavity", unit_solution(mesh, steel, kind, {})); };
    const SurfaceReading pull = surface(LoadKind::axial), twist = surface(LoadKind::torsion);
    const std::size_t equator = place_nearest(pull.z, 0);
    const double remote = 1 / (pi * bar_radius * bar_radius);
    const double remote_shear = 2 * across / (pi * std::pow(bar_radius, 4));
    return {pull.along[equator] / remote, pull.hoop[equator] / remote, pull.along.front() / remote,
            std::abs(twist.shear[equator]) / remote_shear};
}

// Share of the equator's stress.
CheckTolerance near(double share, double scale)
{
    return negligible_against(scale, share,
                              "cavity drawn in 49 arcs; in a bar 20 times as thick as it, which changes the stress by "
                              "(1/20)^3 or so");
}

using Row = AnsweredCheck<CavityStress>;

Row row(const std::string& name, const std::string& claim, double expected, const CheckTolerance& allowed,
        const char* source, Provenance provenance, double CavityStress::*part)
{
    return {{name, claim, expected, "-", allowed, source, SourceKind::exact_theory, provenance},
            [part](const CavityStress& stress) { return stress.*part; }};
}

constexpr const char* goodier =
    "Timoshenko & Goodier, Theory of Elasticity, 3rd ed. 1970, art. 137 [TimoshenkoGoodier1970]; Goodier 1933 "
    "[Goodier1933]";

// The torque flows around a sphere as it does whatever Poisson's ratio is; 5/4 follows from Navier's equation.
CheckGroup sphere(double nu)
{
    const double equator = (27 - 15 * nu) / (2 * (7 - 5 * nu)), hoop = (15 * nu - 3) / (2 * (7 - 5 * nu)),
                 pole = -(3 + 15 * nu) / (2 * (7 - 5 * nu));
    const std::string name = fmt::format("sphere.nu{:.2f}", nu), of = fmt::format("spherical cavity, nu {:g}: ", nu);
    std::vector<Row> rows{
        row(name + ".equator", of + "stress along a pull at the equator", equator, near(0.003, equator), goodier,
            Provenance::derived, &CavityStress::equator),
        row(name + ".hoop", of + "hoop stress there", hoop, near(0.003, equator), goodier, Provenance::derived,
            &CavityStress::equator_hoop),
        row(name + ".pole", of + "stress at the pole", pole, near(0.005, equator), goodier, Provenance::derived,
            &CavityStress::pole),
        row(name + ".torsion", of + "shear at the equator under torsion", 1.25, near(0.003, 1.25),
            "Navier's equation in spherical coordinates; derived", Provenance::derived, &CavityStress::torsion)};
    return check_group<CavityStress>(
        name, [nu] { return cavity_stress(1, nu); }, rows);
}

// Shear at the equator of a spheroidal cavity under torsion. With u_theta = r eta w(x) in spheroidal coordinates,
// ((1+x^2)^2 w')' = 4 (1+x^2) w (flat) or ((x^2-1)^2 w')' = 4 (x^2-1) w (long), so w = x + A g(x) with the decaying
//   g = 1 - 1.5 x acot x + x^2/(2 (1+x^2))   or   g = 1 - 1.5 x acoth x + x^2/(2 (x^2-1)),
// and a free surface asks w' = 0 there. Derived; tends to 5/4 for the sphere.
double torsion_around_spheroid(double aspect)
{
    const double flat = aspect < 1 ? 1 : -1, x = aspect / std::sqrt(flat * (1 - aspect * aspect));
    const double s = x * x + flat, L = aspect < 1 ? std::atan(1 / x) : std::atanh(1 / x);
    const double g = 1 - 1.5 * x * L + x * x / (2 * s);
    const double slope = -1.5 * L + 1.5 * x / s + flat * x / (s * s);
    return 1 - g / (x * slope);
}

struct Spheroid
{
    double aspect, equator, hoop, pole;
};

// Void in an endless body, nu 0.3, pulled along its axis: strain inside from Eshelby's tensor, surface stress from it.
// Evaluated outside the program; the sphere comes out as above.
constexpr Spheroid spheroids[] = {
    {0.25, 5.867805, 1.213833, -0.780727}, {0.5, 3.312973, 0.470274, -0.748025}, {2, 1.440319, 0.018107, -0.591412}};

CheckGroup spheroid_group(const Spheroid& spheroid)
{
    const char* eshelby = "Eshelby 1957, evaluated for a void [Eshelby1957]";
    const std::string name = fmt::format("spheroid.{:.2f}", spheroid.aspect),
                      of = fmt::format("spheroidal cavity, axis {:g} of its width: ", spheroid.aspect);
    const double twisted = torsion_around_spheroid(spheroid.aspect), scale = spheroid.equator;
    std::vector<Row> rows{
        row(name + ".equator", of + "stress along a pull at the equator", spheroid.equator, near(0.003, scale), eshelby,
            Provenance::derived, &CavityStress::equator),
        row(name + ".hoop", of + "hoop stress there", spheroid.hoop, near(0.003, scale), eshelby, Provenance::derived,
            &CavityStress::equator_hoop),
        row(name + ".pole", of + "stress at the pole", spheroid.pole, near(0.005, scale), eshelby, Provenance::derived,
            &CavityStress::pole),
        row(name + ".torsion", of + "shear at the equator under torsion", twisted, near(0.003, twisted),
            "Neuber 1946, ellipsoidal cavity [Neuber1946]; derived in spheroidal coordinates", Provenance::derived,
            &CavityStress::torsion)};
    return check_group<CavityStress>(
        name, [spheroid] { return cavity_stress(spheroid.aspect, 0.3); }, rows);
}

}  // namespace

std::vector<CheckGroup> cavity_checks()
{
    std::vector<CheckGroup> groups;
    for (const double nu : {0.0, 0.25, 0.3}) groups.push_back(sphere(nu));
    for (const Spheroid& spheroid : spheroids) groups.push_back(spheroid_group(spheroid));
    return groups;
}

}  // namespace splicewright
