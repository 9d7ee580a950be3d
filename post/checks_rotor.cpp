// SPDX-License-Identifier: GPL-2.0-or-later
#include <cmath>
#include <numbers>

#include "post/check_groups.h"
#include "post/critical_speed.h"
#include "post/line_contact.h"
#include "post/unbalance.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;
constexpr const char* vibration = "Timoshenko, Vibration Problems in Engineering, 3rd ed. 1955 [Timoshenko1955]";
constexpr const char* shigley = "Shigley, 9th ed. 2011, example 7-5 [Shigley2011]";

ClosedFormCheck row(std::string name, std::string claim, double expected, std::string unit, CheckTolerance allowed,
                    const char* source, SourceKind kind, Provenance provenance, double computed)
{
    return {
        {std::move(name), std::move(claim), expected, std::move(unit), std::move(allowed), source, kind, provenance},
        computed};
}

double rpm(RadianPerSecond speed) { return speed.value() * 30 / pi; }

// 60 mm, 1500 mm between bearings, 7850 kg/m^3, 210000 MPa.
CheckGroup uniform_shaft()
{
    const std::vector<RotorLength> shaft{
        {{Millimetre{60}, Millimetre{0}}, Millimetre{1500}, Megapascal{210000}, 7.85e-9}};
    const double speed = first_critical_speed(shaft, {}).value.value();
    return closed_form_group(
        "whirl.uniform",
        {row("whirl.uniform.thin", "critical speed of a uniform shaft between bearings, (pi/L)^2 sqrt(E I/(rho A))",
             340.317, "rad/s", digits_printed(6, 340.317), vibration, SourceKind::exact_theory, Provenance::derived,
             speed),
         row("whirl.uniform.thick", "the same with shear and rotary inertia, which the thin beam leaves out", 339.666,
             "rad/s", idealisation(0, 0.3, 339.666, "slenderness 25: the thin beam is 0.2 % too fast"), vibration,
             SourceKind::derived, Provenance::derived, speed)});
}

// Diameter, mm, of a solid section of a second moment in mm^4.
Millimetre diameter_of(double second_moment) { return Millimetre{std::pow(64 * second_moment / pi, 0.25)}; }

// 400 N in the middle of 1 m, I 0.3e6 mm^4 in the outer quarters and twice that between, E 200000 MPa, no own mass.
CheckGroup stepped_shaft()
{
    const auto part = [](double length, double second_moment) {
        return RotorLength{{diameter_of(second_moment), Millimetre{0}}, Millimetre{length}, Megapascal{200000}, 0};
    };
    const std::vector<RotorLength> shaft{part(250, 0.3e6), part(500, 0.6e6), part(250, 0.3e6)};
    const double gravity = 9810;  // mm/s^2, as the example has it
    const RadianPerSecond speed = first_critical_speed(shaft, {{Millimetre{500}, Tonne{400 / gravity}}}).value;
    return closed_form_group(
        "whirl.stepped",
        {row("whirl.stepped", "critical speed of a stepped shaft with a load in the middle", 3383.85, "rpm",
             digits_printed(6, 3383.85), "Ugural, Mechanical Design of Machine Components, example 9.6 [Ugural2015]",
             SourceKind::worked_example, Provenance::secondary, rpm(speed))});
}

// 1 in, 31 in between bearings, 35 lbf at 7 in and 55 lbf at 20 in, E 30e6 psi, g 386 in/s^2; inch, lbf, s are
// coherent.
CheckGroup two_loads()
{
    const std::vector<RotorLength> shaft{{{Millimetre{1}, Millimetre{0}}, Millimetre{31}, Megapascal{30e6}, 0}};
    const RotorMass first{Millimetre{7}, Tonne{35.0 / 386}}, second{Millimetre{20}, Tonne{55.0 / 386}};
    const double speed = first_critical_speed(shaft, {first, second}).value.value();
    const RadianPerSecond alone[] = {first_critical_speed(shaft, {first}).value,
                                     first_critical_speed(shaft, {second}).value};
    return closed_form_group(
        "whirl.two-loads",
        {row("whirl.two-loads.exact", "critical speed of a light shaft with two loads, frequency equation", 124.7,
             "rad/s", digits_printed(4, 124.7), shigley, SourceKind::worked_example, Provenance::from_memory, speed),
         row("whirl.two-loads.rayleigh", "the same by Rayleigh's method, which never lies below", 124.8, "rad/s",
             idealisation(-0.3, 0.04, 124.8, "an upper bound, printed to four digits"), shigley,
             SourceKind::worked_example, Provenance::from_memory, speed),
         row("whirl.two-loads.dunkerley", "the same by Dunkerley's formula, a lower bound", 120.35, "rad/s",
             digits_printed(5, 120.35), shigley, SourceKind::derived, Provenance::derived,
             combined_critical_speed({alone[0], alone[1]}).value())});
}

CheckGroup balance()
{
    const RadianPerSecond speed{3000 * pi / 30};
    const char* source = "ISO 21940-11:2016 (before: ISO 1940-1) [ISO21940-11]";
    const double gram_millimetre = 1e6;  // per tonne mm
    return closed_form_group(
        "balance", {row("balance.G6.3.eccentricity", "offset of the mass centre that G 6.3 permits at 3000 rpm",
                        20.0535, "µm", digits_printed(6, 20.0535), source, SourceKind::exact_theory,
                        Provenance::from_memory, 1000 * permissible_eccentricity(6.3, speed).value.value()),
                    row("balance.G6.3.unbalance", "unbalance that it permits a rotor of 25 kg", 501.338, "g·mm",
                        digits_printed(6, 501.338), source, SourceKind::exact_theory, Provenance::from_memory,
                        gram_millimetre * permissible_unbalance(6.3, speed, Tonne{0.025}).value),
                    row("balance.G2.5.unbalance", "unbalance of a rotor of 3600 kg at G 2.5 and 3000 rpm", 28600,
                        "g·mm", digits_printed(3, 28600), source, SourceKind::worked_example, Provenance::from_memory,
                        gram_millimetre * permissible_unbalance(2.5, speed, Tonne{3.6}).value)});
}

// Cylinder of 25 mm radius on a plane, steel on steel, 500 N/mm.
CheckGroup contact()
{
    const LineContactStress stress =
        line_contact_stress({Millimetre{25}, 500, {Megapascal{210000}, Megapascal{210000}}, {0.3, 0.3}}).value;
    const char* source = "Johnson, Contact Mechanics, 1985, ch. 4 [Johnson1985]";
    const auto hertz = [&](std::string name, std::string claim, double expected, std::string unit, double computed)
    {
        return row(std::move(name), std::move(claim), expected, std::move(unit), digits_printed(5, expected), source,
                   SourceKind::exact_theory, Provenance::derived, computed);
    };
    return closed_form_group(
        "hertz",
        {hertz("hertz.half-width", "half width of the contact of a 50 mm roller under 500 N/mm", 0.371395, "mm",
               stress.half_width.value()),
         hertz("hertz.pressure", "largest pressure", 857.066, "MPa", stress.peak_pressure.value()),
         hertz("hertz.shear", "largest shear below the surface", 257.362, "MPa", stress.peak_shear.value()),
         row("hertz.shear.printed", "the same over the pressure, as the book rounds it", 0.30, "-", decimals_printed(2),
             source, SourceKind::published_table, Provenance::from_memory, stress.peak_shear / stress.peak_pressure),
         hertz("hertz.depth", "depth of it", 0.291973, "mm", stress.depth.value())});
}

}  // namespace

std::vector<CheckGroup> rotor_checks() { return {uniform_shaft(), stepped_shaft(), two_loads(), balance(), contact()}; }

}  // namespace splicewright
