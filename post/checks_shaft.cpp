// SPDX-License-Identifier: GPL-2.0-or-later
#include <cmath>

#include "post/check_groups.h"
#include "post/check_shapes.h"
#include "post/section_strength.h"
#include "solver/sites.h"

namespace splicewright
{
namespace
{

constexpr double torque = 2e6, bending = 1e6, pull = 5e4;  // N*mm, N*mm, N
constexpr const char* timoshenko =
    "Timoshenko & Goodier, Theory of Elasticity, 3rd ed. 1970, art. 101-104 [TimoshenkoGoodier1970]";
constexpr const char* shigley_twist = "Shigley, 9th ed. 2011, eq. 3-35 [Shigley2011]";
constexpr const char* combined_source = "Shigley, 9th ed. 2011, sec. 5-5 [Shigley2011]; von Mises 1913 [Mises1913]";

using Row = AnsweredCheck<MeridianAnswer>;

// Quadratic elements hold the linear stress of a plain bar exactly.
Row plain(std::string name, std::string claim, double expected, std::string unit, const char* source,
          std::function<double(const MeridianAnswer&)> number)
{
    return {{std::move(name), std::move(claim), expected, std::move(unit),
             discretisation(1e-5, expected, "the elements hold this field exactly; six digits stated"), source,
             SourceKind::exact_theory, Provenance::theory},
            std::move(number)};
}

MeridianAnswer solved_shaft(double diameter, double length, double bore)
{
    return meridian_answer(
        shaft_case({{Millimetre{length}, Millimetre{diameter}, Millimetre{0}}}, {}, Millimetre{bore}), {}, {0.5});
}

SitePeak combined_peak(const MeridianAnswer& answer)
{
    return site_peak(site_of(answer, "bar.left").brackets.front(), {torque, bending, pull, 0});
}

// 60 mm, 500 mm long, E 210000 MPa, nu 0.3, 2 kN m, 1 kN m, 50 kN.
CheckGroup solid_shaft()
{
    const auto bar = [](const MeridianAnswer& answer) -> const SiteAnswer& { return site_of(answer, "bar.left"); };
    return check_group<MeridianAnswer>(
        "shaft.solid", [] { return solved_shaft(60, 500, 0); },
        {plain("shaft.solid.torsion", "surface shear of a 60 mm bar under 2 kN·m by finite elements", 47.157020, "MPa",
               timoshenko, [=](const auto& a) { return torque * bar(a).torsion.shear.value; }),
         plain("shaft.solid.bending", "outer-fibre stress of a 60 mm bar under 1 kN·m by finite elements", 47.157020,
               "MPa", timoshenko, [=](const auto& a) { return bending * bar(a).bending.principal.value; }),
         plain("shaft.solid.axial", "stress of a 60 mm bar under 50 kN by finite elements", 17.683883, "MPa",
               timoshenko, [=](const auto& a) { return pull * bar(a).axial.principal.value; }),
         plain("shaft.solid.twist", "twist of a 60 mm bar 500 mm long under 2 kN·m by finite elements", 9.730814e-3,
               "rad", shigley_twist, [](const auto& a) { return torque * a.twist.value; }),
         plain("shaft.solid.rotation", "rotation between the ends of the same bar under 1 kN·m, M L/(E I)", 3.742621e-3,
               "rad", timoshenko, [](const auto& a) { return bending * a.end_rotation.value; }),
         plain("shaft.solid.extension", "extension of the same bar under 50 kN", 4.210448e-2, "mm", timoshenko,
               [](const auto& a) { return pull * a.extension.value; }),
         plain("shaft.solid.combined.principal", "largest principal stress, torque, bending and pull together",
               89.646933, "MPa", combined_source, [](const auto& a) { return combined_peak(a).principal; }),
         plain("shaft.solid.combined.mises", "von Mises stress, torque, bending and pull together", 104.286607, "MPa",
               combined_source, [](const auto& a) { return combined_peak(a).von_mises; })});
}

// Shear at the bore, MPa per N*mm, one diameter and more from the ends.
double bore_shear(const MeridianAnswer& answer, double bore_radius, double length)
{
    double most = 0;
    const SolvedFields& fields = answer.fields;
    for (std::size_t i = 0; i < fields.region_nodes.node.size(); ++i)
    {
        const auto place = fields.mesh.node.col(fields.region_nodes.node[i]);
        if (std::abs(place(1) - bore_radius) > 1e-6 || std::abs(std::abs(place(0)) - length / 2) > length / 4) continue;
        most = std::max(most, std::abs(fields.torsion.value(4, static_cast<Eigen::Index>(i))));
    }
    return most;
}

CheckGroup hollow_shaft()
{
    const auto bar = [](const MeridianAnswer& answer) -> const SiteAnswer& { return site_of(answer, "bar.left"); };
    return check_group<MeridianAnswer>(
        "shaft.hollow", [] { return solved_shaft(60, 500, 40); },
        {plain("shaft.hollow.torsion", "surface shear of a 60/40 mm tube under 2 kN·m by finite elements", 58.764902,
               "MPa", timoshenko, [=](const auto& a) { return torque * bar(a).torsion.shear.value; }),
         plain("shaft.hollow.bore", "shear at the bore of the same tube", 39.176602, "MPa", timoshenko,
               [](const auto& a) { return torque * bore_shear(a, 20, 500); }),
         plain("shaft.hollow.bending", "outer-fibre stress of the same tube under 1 kN·m", 58.764902, "MPa", timoshenko,
               [=](const auto& a) { return bending * bar(a).bending.principal.value; }),
         plain("shaft.hollow.axial", "stress of the same tube under 50 kN", 31.830989, "MPa", timoshenko,
               [=](const auto& a) { return pull * bar(a).axial.principal.value; }),
         plain("shaft.hollow.twist", "twist of the same tube, 500 mm long, under 2 kN·m", 1.2126091e-2, "rad",
               shigley_twist, [](const auto& a) { return torque * a.twist.value; })});
}

// Stress spreads into a larger part at about 30 degrees; the idle metal beside that cone softens the shaft of
// stepped_shaft() by 0.9 % in tension and 1.5 % in bending, less in torsion, which spreads faster.
Row stepped(std::string name, std::string claim, double expected, std::string unit, const char* source, double most_pct,
            std::function<double(const MeridianAnswer&)> number)
{
    return {{std::move(name), std::move(claim), expected, std::move(unit),
             idealisation(-0.1, most_pct, expected,
                          "the sum leaves out that metal beside a step is idle: stress spreads at about 30 degrees"),
             source, SourceKind::exact_theory, Provenance::theory},
            std::move(number)};
}

// 40 mm over 200 mm, 60 over 300, 50 over 250, fillets of 2 mm.
CheckGroup stepped_shaft()
{
    return check_group<MeridianAnswer>(
        "shaft.stepped",
        []
        {
            return meridian_answer(shaft_case({{Millimetre{200}, Millimetre{40}, Millimetre{0}},
                                               {Millimetre{300}, Millimetre{60}, Millimetre{2}},
                                               {Millimetre{250}, Millimetre{50}, Millimetre{2}}},
                                              {}, Millimetre{0}),
                                   {}, {0.5});
        },
        {stepped("shaft.stepped.twist", "twist of a shaft of three diameters under 1 kN·m, sum of T L/(G J)",
                 1.7816147e-2, "rad", shigley_twist, 1, [](const auto& a) { return 1e6 * a.twist.value; }),
         stepped("shaft.stepped.rotation", "rotation between its ends under 1 kN·m, sum of M L/(E I)", 1.3704728e-2,
                 "rad", timoshenko, 2.5, [](const auto& a) { return 1e6 * a.end_rotation.value; }),
         stepped("shaft.stepped.extension", "its extension under 50 kN, sum of N L/(E A)", 9.347195e-2, "mm",
                 timoshenko, 2, [](const auto& a) { return pull * a.extension.value; })});
}

ClosedFormCheck plastic(std::string name, std::string claim, double expected, const RoundSection& section,
                        Provenance provenance)
{
    const Megapascal yield{400};
    return {{std::move(name), std::move(claim), expected, "-", digits_printed(7, expected),
             "Timoshenko, Strength of Materials, part II, 3rd ed. 1956, plastic torsion [Timoshenko1956]",
             SourceKind::exact_theory, provenance},
            fully_plastic_torque(section, yield).value / first_yield_torque(section, yield).value};
}

CheckGroup plastic_torque()
{
    return closed_form_group(
        "shaft.plastic", {plastic("shaft.plastic.solid", "fully plastic over first-yield torque of a solid shaft, 4/3",
                                  1.333333333, {Millimetre{37}, Millimetre{0}}, Provenance::theory),
                          plastic("shaft.plastic.hollow", "the same of a 60/40 mm tube, 4/3 (1 - k^3)/(1 - k^4)",
                                  1.169230769, {Millimetre{60}, Millimetre{40}}, Provenance::theory)});
}

}  // namespace

std::vector<CheckGroup> shaft_checks() { return {solid_shaft(), hollow_shaft(), stepped_shaft(), plastic_torque()}; }

}  // namespace splicewright
