// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>
#include <cmath>
#include <string>

#include "cases/problem.h"
#include "post/check_groups.h"
#include "post/check_shapes.h"
#include "post/press_fit.h"
#include "post/section_strength.h"

namespace splicewright
{
namespace
{

constexpr const char* lame =
    "Timoshenko & Goodier, Theory of Elasticity, 3rd ed. 1970, art. 28 [TimoshenkoGoodier1970]";
constexpr const char* statics = "Shigley, 9th ed. 2011, sec. 3-12, twist of shafts in parallel [Shigley2011]";
constexpr double quarter = 300;  // mm, of the long sleeve: half-way between joint and weld

using Row = AnsweredCheck<MeridianAnswer>;

// A long sleeve that hangs on one weld carries no axial force: plane stress far from weld and joint, which disturb
// over a few times sqrt(radius x wall) = 31 mm.
MeridianAnswer solved_press_fit(const SleevedShape& shape)
{
    Scenario hanging;
    hanging.name = "left sleeve weld lost";
    hanging.sleeve_weld_fused[0] = false;
    return reference_answer(sleeved_case(shape), hanging, {9, 9, 0.3, 1});
}

// Recovered press stress, MPa, row `component` (0 radial, 1 hoop), of one region at a radius, half-way along.
double press_stress(const MeridianAnswer& answer, const std::string& region, double radius, int component)
{
    const SolvedFields& fields = answer.fields;
    double nearest = INFINITY, stress = 0;
    for (std::size_t i = 0; i < fields.region_nodes.node.size(); ++i)
    {
        const auto place = fields.mesh.node.col(fields.region_nodes.node[i]);
        if (fields.mesh.region[static_cast<std::size_t>(fields.region_nodes.region[i])] != region) continue;
        const double away = std::hypot(place(0) - quarter, 100 * (place(1) - radius));
        if (away >= nearest) continue;
        nearest = away;
        stress = fields.press.value(component, static_cast<Eigen::Index>(i));
    }
    EXPECTS(nearest < quarter / 4);
    return stress;
}

double sleeve_outside_hoop(const MeridianAnswer& answer)
{
    const SiteStress& site = site_of(answer, "sleeve-mid").brackets.front();
    Eigen::Index place = 0;
    (site.z.array() - quarter).abs().minCoeff(&place);
    return site.press.hoop(place);
}

Row fitted(std::string name, std::string claim, double expected, std::function<double(const MeridianAnswer&)> number)
{
    return {{std::move(name), std::move(claim), expected, "MPa",
             discretisation(0.005, expected, "0.5 % asked of stress recovered below a surface"), lame,
             SourceKind::exact_theory, Provenance::theory},
            std::move(number)};
}

// Bar 50 mm, sleeve 100 mm, interference 0.05 mm, E 210000 MPa, nu 0.3.
const SleevedShape pressed{50, 100, 1200, 0, 0.05, SlitState::press, 210000, 210000};

CheckGroup press_fit_by_elements()
{
    return check_group<MeridianAnswer>(
        "press-fit.fe", [] { return solved_press_fit(pressed); },
        {fitted("press-fit.fe.pressure", "pressure of a long sleeve 100/50 mm pressed by 0.05 mm", 78.75,
                [](const auto& a) { return a.fit_pressure.value; }),
         fitted("press-fit.fe.sleeve-bore", "hoop stress at its bore", 131.25,
                [](const auto& a) { return press_stress(a, "sleeve.right", 25, 1); }),
         fitted("press-fit.fe.sleeve-outside", "hoop stress on its outside", 52.5, sleeve_outside_hoop),
         fitted("press-fit.fe.bar", "radial stress at the surface of the bar", -78.75,
                [](const auto& a) { return press_stress(a, "bar.right", 25, 0); })});
}

CheckGroup press_fit_variant(const std::string& name, const std::string& claim, const SleevedShape& shape,
                             double expected)
{
    return check_group<MeridianAnswer>(
        name, [shape] { return solved_press_fit(shape); },
        {fitted(name, claim, expected, [](const auto& a) { return a.fit_pressure.value; })});
}

ClosedFormCheck closed(std::string name, std::string claim, double expected, std::string unit, const char* source,
                       double computed)
{
    return {{std::move(name), std::move(claim), expected, std::move(unit), round_off(expected), source,
             SourceKind::exact_theory, Provenance::theory},
            computed};
}

CheckGroup press_fit_in_closed_form()
{
    const PressFit fit{Millimetre{50},   Millimetre{0},      Millimetre{100},
                       Millimetre{0.05}, Megapascal{210000}, Megapascal{210000}};
    const PressFitStress stress = press_fit_stress(fit).value;
    ClosedFormCheck slip =
        closed("press-fit.closed.slip", "torque at which 60 mm of it slips, friction 0.12", 2226603.8, "N·mm",
               "Shigley, 9th ed. 2011, sec. 7-8 [Shigley2011]", slip_torque(fit, Millimetre{60}, 0.12).value.value());
    slip.check.allowed = digits_printed(8, slip.check.expected);
    return closed_form_group(
        "press-fit.closed",
        {closed("press-fit.closed.pressure", "pressure of the same fit by the formula of the program", 78.75, "MPa",
                lame, stress.pressure.value()),
         closed("press-fit.closed.sleeve-bore", "hoop stress at the bore", 131.25, "MPa", lame,
                stress.sleeve_hoop_at_bore.value()),
         closed("press-fit.closed.sleeve-outside", "hoop stress on the outside", 52.5, "MPa", lame,
                stress.sleeve_hoop_outside.value()),
         closed("press-fit.closed.mises", "von Mises stress at the bore, plane stress", 183.75, "MPa", lame,
                stress.sleeve_von_mises_at_bore.value()),
         slip});
}

Row shared(std::string name, std::string claim, double expected, std::string unit,
           std::function<double(const MeridianAnswer&)> number)
{
    return {{std::move(name), std::move(claim), expected, std::move(unit),
             discretisation(0.002, expected, "far from the ends; 0.2 % left for what the ends still disturb"), statics,
             SourceKind::exact_theory, Provenance::theory},
            std::move(number)};
}

double sleeve_outside_shear(const MeridianAnswer& answer)
{
    const SiteStress& site = site_of(answer, "sleeve-mid").brackets.front();
    Eigen::Index place = 0;
    (site.z.array() - 60).abs().minCoeff(&place);
    return 3e6 * std::abs(site.torsion.shear(place));
}

// Bar 50 mm in a bonded sleeve 70 mm, 500 mm long.
CheckGroup shared_by_elements()
{
    return check_group<MeridianAnswer>(
        "sharing.fe",
        [] {
            return meridian_answer(sleeved_case({50, 70, 500, 0, 0, SlitState::bonded, 210000, 210000}), {}, {1});
        },
        {shared("sharing.fe.torsion", "share of the torque in a bonded sleeve 70/50 mm at its middle, by G J",
                0.73969180, "-", [](const auto& a) { return a.share.torsion.value; }),
         shared("sharing.fe.bending", "share of the bending, by E I", 0.73969180, "-",
                [](const auto& a) { return a.share.bending.value; }),
         shared("sharing.fe.axial", "share of the pull, by E A", 0.48979592, "-",
                [](const auto& a) { return a.share.axial.value; }),
         shared("sharing.fe.shear", "shear on the outside of the sleeve under 3 kN·m", 44.544824, "MPa",
                sleeve_outside_shear)});
}

CheckGroup shared_with_aluminium()
{
    return check_group<MeridianAnswer>(
        "sharing.aluminium",
        [] {
            return meridian_answer(sleeved_case({50, 70, 500, 0, 0, SlitState::bonded, 210000, 70000}), {}, {1});
        },
        {shared("sharing.aluminium", "share of the torque in the same sleeve of a third of the modulus", 0.48644207,
                "-", [](const auto& a) { return a.share.torsion.value; })});
}

CheckGroup shared_in_closed_form()
{
    const ParallelMember sleeve{{Millimetre{70}, Millimetre{50}}, Megapascal{210000}};
    const ParallelMember bar{{Millimetre{50}, Millimetre{0}}, Megapascal{210000}};
    ClosedFormCheck stiff = closed("sharing.closed.torsion", "share of the torque by the formula of the program",
                                   0.73969180, "-", statics, sleeve_share(sleeve, bar).value.torsion);
    ClosedFormCheck welded =
        closed("sharing.closed.end-welds", "share of a sleeve held only by end welds of 5e9 N·mm/rad, 120 mm apart",
               0.659147, "-", "equal twist of both parts between the welds; derived",
               torsion_share_with_end_welds(sleeve, bar, Millimetre{120}, 5e9).value);
    stiff.check.allowed = digits_printed(8, stiff.check.expected);
    welded.check.allowed = digits_printed(6, welded.check.expected);
    welded.check.kind = SourceKind::derived;
    welded.check.provenance = Provenance::derived;
    return closed_form_group("sharing.closed", {stiff, welded});
}

}  // namespace

std::vector<CheckGroup> fit_checks()
{
    SleevedShape two_metals = pressed, hollow = pressed;
    two_metals.sleeve_modulus = 70000;
    hollow.bore_mm = 20;
    return {press_fit_by_elements(),
            press_fit_variant("press-fit.two-metals", "pressure of the same sleeve in a third of the modulus",
                              two_metals, 31.818182),
            press_fit_variant("press-fit.hollow-bar", "pressure of the same sleeve on a bar bored to 20 mm", hollow,
                              68.90625),
            press_fit_in_closed_form(),
            shared_by_elements(),
            shared_with_aluminium(),
            shared_in_closed_form()};
}

}  // namespace splicewright
