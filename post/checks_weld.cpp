// SPDX-License-Identifier: GPL-2.0-or-later
#include <cmath>
#include <numbers>

#include "post/check_groups.h"
#include "post/weld_line.h"

namespace splicewright
{
namespace
{

ClosedFormCheck row(std::string name, std::string claim, double expected, std::string unit, CheckTolerance allowed,
                    std::string source, SourceKind kind, Provenance provenance, double computed)
{
    return {{std::move(name), std::move(claim), expected, std::move(unit), std::move(allowed), std::move(source), kind,
             provenance},
            computed};
}

// Leg 8 mm (throat 0.707 of it) around a bar of 50 mm; 3 kN m, 1 kN m, 50 kN.
CheckGroup ring_as_a_line()
{
    const char* source =
        "Shigley, 9th ed. 2011, tables 9-1 and 9-2, circle [Shigley2011]; Blodgett 1966 [Blodgett1966]";
    const RingThroatStress stress = ring_throat_stress(Millimetre{25}, Millimetre{0.707 * 8},
                                                       {NewtonMillimetre{3e6}, NewtonMillimetre{1e6}, Newton{5e4}})
                                        .value;
    const auto shigley = [&](std::string name, std::string claim, double expected, Megapascal computed)
    {
        return row(std::move(name), std::move(claim), expected, "MPa", digits_printed(6, expected), source,
                   SourceKind::published_table, Provenance::from_memory, computed.value());
    };
    const double torsion = stress.torsion.value(), across = stress.bending.value() + stress.axial.value();
    return closed_form_group(
        "weld.ring",
        {shigley("weld.ring.torsion", "shear of a ring weld, leg 8 mm on 50 mm, under 3 kN·m of torque", 135.068,
                 stress.torsion),
         shigley("weld.ring.bending", "the same weld under 1 kN·m of bending", 90.0452, stress.bending),
         shigley("weld.ring.axial", "the same weld under 50 kN", 56.2783, stress.axial),
         shigley("weld.ring.all", "all three together", 199.133, Megapascal{std::hypot(torsion, across)})});
}

// Torque that a ring fillet carries per MPa of throat shear, N mm.
double torque_per_stress(Millimetre radius, Millimetre throat_size)
{
    return 1 / ring_throat_stress(radius, throat_size, {NewtonMillimetre{1}, NewtonMillimetre{0}, Newton{0}})
                   .value.torsion.value();
}

CheckGroup textbook_welds()
{
    const double capacity = 80 * torque_per_stress(Millimetre{25}, Millimetre{0.707 * 10});
    const double throat_needed = 2.5e6 / (140 * torque_per_stress(Millimetre{25}, Millimetre{1}));
    return closed_form_group(
        "weld.textbook",
        {row("weld.textbook.khurmi", "torque of a 10 mm fillet around 50 mm at 80 MPa, by 2.83 T/(pi s d^2)", 2.22e6,
             "N·mm", digits_printed(3, 2.22e6),
             "Khurmi & Gupta, A Textbook of Machine Design, welded joints [Khurmi2005]", SourceKind::worked_example,
             Provenance::from_memory, capacity),
         row("weld.textbook.bhandari", "leg of a fillet around 50 mm for 2.5 kN·m at 140 MPa", 6.43, "mm",
             digits_printed(3, 6.43), "Bhandari, Design of Machine Elements, ch. 8 [Bhandari2010]",
             SourceKind::worked_example, Provenance::from_memory, throat_needed / 0.707)});
}

// Equal legs with the given throat; only the throat matters here.
FilletWeld fillet_of(double throat_mm)
{
    const Millimetre leg{throat_mm * std::numbers::sqrt2};
    return {leg, leg, Millimetre{50}};
}

// Throat 5 mm, 100 mm long, 10 kN across it at 45 degrees to the throat, S355 with fu 470 MPa.
CheckGroup eurocode_directional()
{
    const char* source = "EN 1993-1-8:2005, 4.5.3.2, eq. 4.1 [Eurocode3Joints2005]";
    const ThroatPlaneStress stress = throat_plane_stress(fillet_of(5), {100, 0, 0}).value;
    const WeldCheck check = directional_check(stress, Megapascal{470}, 0.9).value;
    const auto worked = [&](std::string name, std::string claim, double expected, std::string unit, double computed)
    {
        return row(std::move(name), std::move(claim), expected, std::move(unit), digits_printed(6, expected), source,
                   SourceKind::worked_example, Provenance::derived, computed);
    };
    return closed_form_group(
        "weld.ec3.directional",
        {worked("weld.ec3.directional.normal", "stress across the throat, 10 kN on 100 mm of 5 mm throat", 14.1421,
                "MPa", stress.normal.value()),
         worked("weld.ec3.directional.demand", "sqrt(s^2 + 3 t^2)", 28.2843, "MPa", check.demand.value()),
         worked("weld.ec3.directional.capacity", "fu/(beta_w gamma_M2), S355", 417.778, "MPa", check.capacity.value()),
         worked("weld.ec3.directional.utilisation", "the worse of both conditions", 0.0677017, "-",
                check.utilisation)});
}

// Design resistance of a line of weld by the simplified method, kN/mm.
double simplified_resistance(double throat_mm, double tensile, double beta_w)
{
    return simplified_check(fillet_of(throat_mm), {0, 0, 1}, Megapascal{tensile}, beta_w).value.capacity.value() *
           throat_mm / 1000;
}

// The same across the weld by the directional method.
double transverse_resistance(double throat_mm, double tensile, double beta_w)
{
    const ThroatPlaneStress stress = throat_plane_stress(fillet_of(throat_mm), {1, 0, 0}).value;
    return 1 / directional_check(stress, Megapascal{tensile}, beta_w).value.utilisation / 1000;
}

CheckGroup blue_book()
{
    const auto printed = [](std::string name, std::string claim, double expected, double computed)
    {
        return row(std::move(name), std::move(claim), expected, "kN/mm", decimals_printed(2),
                   "SCI P363, Steel Building Design: Design Data, 2013, fillet welds [SCI2013]",
                   SourceKind::published_table, Provenance::from_memory, computed);
    };
    return closed_form_group(
        "weld.table",
        {printed("weld.table.S275.6.along", "S275, leg 6 mm, throat 4.2 mm, along the weld", 0.94,
                 simplified_resistance(4.2, 410, 0.85)),
         printed("weld.table.S275.6.across", "the same across the weld", 1.15, transverse_resistance(4.2, 410, 0.85)),
         printed("weld.table.S355.6.along", "S355, leg 6 mm, throat 4.2 mm, along the weld", 1.01,
                 simplified_resistance(4.2, 470, 0.9)),
         printed("weld.table.S355.6.across", "the same across the weld", 1.24, transverse_resistance(4.2, 470, 0.9)),
         printed("weld.table.S355.8.along", "S355, leg 8 mm, throat 5.6 mm, along the weld", 1.35,
                 simplified_resistance(5.6, 470, 0.9)),
         printed("weld.table.S355.8.across", "the same across the weld", 1.65, transverse_resistance(5.6, 470, 0.9))});
}

}  // namespace

std::vector<CheckGroup> weld_checks()
{
    return {ring_as_a_line(), textbook_welds(), eurocode_directional(), blue_book()};
}

}  // namespace splicewright
